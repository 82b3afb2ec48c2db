import { type Fault, ok, type Result, refuse } from '../fault.ts';
import type { Garment } from '../piece/garment.ts';
import { plan } from '../piece/plan.ts';
import type { PlannedPart } from '../piece/planned.ts';
import type { Recipe } from '../piece/recipe.ts';
import { yarnFor } from '../yarn/need.ts';
import type { SizedBody } from './bodies.ts';
import type { Body, Design } from './design.ts';
import { draft } from './draft.ts';

/** One size of a garment, for someone who passes a pattern on. */
export interface GradedSize {
  readonly size: string;
  readonly design: Design;
  /** why this size cannot be knitted as designed; then it has no pieces */
  readonly faults: readonly Fault[];
  readonly pieces: readonly GradedPiece[];
  /** m of yarn for all pieces, margin included */
  readonly metres: number;
}

export interface GradedPiece {
  readonly name: string;
  readonly makes: number;
  readonly castOn: number;
  /** of all its parts that lie above one another; the bind-off is not counted */
  readonly rows: number;
  readonly widest: number;
  /** stitches that each part ends with */
  readonly ends: readonly { readonly part: string; readonly stitches: number }[];
  /** rows with shaping, by what is done */
  readonly shapings: { readonly increases: number; readonly decreases: number; readonly boundOff: number };
}

/** The same garment in several sizes: every figure moves with the measure that drives it; borders and choices stay. */
export function grade(
  design: Design,
  sizes: readonly SizedBody[],
  extra: Pick<Garment, 'swatches' | 'yarns'> = {},
): readonly GradedSize[] {
  return sizes.map(({ size, body }) => {
    const own = resized(design, body);
    const made = gradedPieces(own, extra);
    return made.ok
      ? { size, design: own, faults: [], ...made.value }
      : { size, design: own, faults: made.faults, pieces: [], metres: 0 };
  });
}

function gradedPieces(
  design: Design,
  extra: Pick<Garment, 'swatches' | 'yarns'>,
): Result<Pick<GradedSize, 'pieces' | 'metres'>> {
  const drafted = draft(design);
  if (!drafted.ok) return drafted;
  const { recipes } = drafted.value;
  const pieces: GradedPiece[] = [];
  for (const recipe of recipes) {
    const planned = plan(recipe);
    if (!planned.ok) return planned;
    pieces.push(gradedPiece(recipe, planned.value.parts));
  }
  const yarn = yarnFor({ name: '', pieces: recipes, ...extra });
  return yarn.ok ? ok({ pieces, metres: yarn.value.metresToBuy }) : refuse(...yarn.faults);
}

/** What is told of a piece beside those of other sizes. */
export function gradedPiece({ name, makes }: Recipe, parts: readonly PlannedPart[]): GradedPiece {
  const rows = parts.flatMap((part) => part.rows);
  const worked = (part: PlannedPart): number => part.rows.length - (part.end === 'bind off' ? 1 : 0);
  const longest = parts.slice(1).reduce((most, part) => Math.max(most, worked(part)), 0);
  const first = parts[0] as PlannedPart;
  const marks = rows.flatMap((row) => row.shaping);
  const sum = (of: (by: number) => boolean, kinds: readonly string[]): number =>
    marks.reduce((n, mark) => n + (of(mark.by) && kinds.includes(mark.kind) ? Math.abs(mark.by) : 0), 0);
  return {
    name,
    makes,
    castOn: first.start,
    rows: worked(first) + longest,
    widest: Math.max(first.start, ...rows.map((row) => row.after)),
    ends: parts.map((part) => ({ part: part.name, stitches: lastCount(part) })),
    shapings: {
      increases: sum((by) => by > 0, ['edge', 'across', 'cast on']),
      decreases: sum((by) => by < 0, ['edge', 'across', 'middle']),
      boundOff: sum((by) => by < 0, ['bind off']),
    },
  };
}

/** Stitches before they are bound off. */
const lastCount = (part: PlannedPart): number =>
  part.end === 'bind off' ? (part.rows[part.rows.length - 1]?.before ?? part.start) : part.left;

/** The measure that drives each figure of a design. */
export function resized(design: Design, body: Body): Design {
  const by = (name: keyof Body, mm: number): number => Math.round((mm * body[name]) / design.body[name]);
  const { neck, sleeve } = design;
  return {
    ...design,
    body,
    lengthMm: by('napeToWaist', design.lengthMm),
    neck: {
      ...neck,
      widthMm: by('crossBack', neck.widthMm),
      depthMm: by('armholeDepth', neck.depthMm),
      backDepthMm: by('armholeDepth', neck.backDepthMm),
      ...(neck.openingMm === undefined ? {} : { openingMm: by('armholeDepth', neck.openingMm) }),
    },
    shoulderDropMm: by('crossBack', design.shoulderDropMm),
    ...(design.underarmMm === undefined ? {} : { underarmMm: by('chest', design.underarmMm) }),
    sleeve: {
      ...sleeve,
      ...(sleeve.lengthMm === undefined ? {} : { lengthMm: by('arm', sleeve.lengthMm) }),
      ...(sleeve.capTopMm === undefined ? {} : { capTopMm: by('upperArm', sleeve.capTopMm) }),
    },
  };
}
