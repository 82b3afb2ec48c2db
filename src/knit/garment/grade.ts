import type { PlannedPart } from '../piece/planned.ts';
import type { Recipe } from '../piece/recipe.ts';
import type { Body, Design } from './design.ts';

/** What is told of a piece beside those of other sizes. */
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

/** The same design for another body: every figure moves with the measure that drives it; borders and choices stay. */
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
