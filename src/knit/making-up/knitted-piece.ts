import type { FabricName } from '../fabric.ts';
import type { Gauge } from '../gauge.ts';
import { gaugeIn, type PlannedPart } from '../piece/planned.ts';
import type { PieceRole, Recipe } from '../piece/recipe.ts';
import { alike, type StandingPiece } from '../piece/standing.ts';
import { wornSide } from '../piece/worn-side.ts';
import type { Worn } from './piece-edges.ts';
import { roleOf } from './role.ts';
import { sewnMm } from './seam-stitch.ts';

/** Makes of a piece that came out alike, to be sewn in one way. */
export interface KnittedPiece {
  /** of the first of them, as it was really knitted */
  readonly recipe: Recipe;
  readonly role: PieceRole;
  /** where it is widest, and from its beginning to its highest row, mm */
  readonly size: { readonly widthMm: number; readonly heightMm: number };
  /** how many they are */
  readonly makes: number;
  /** which ones, where others of the piece came out differently */
  readonly nos?: readonly number[];
  /** of a single half of a front: the side that it is worn on */
  readonly worn?: Worn;
  /** what the ids of their steps end with: nothing where the first make is among them */
  readonly mark: string;
  /** the fabric that edges are picked up along, and its gauge: those of the piece's top */
  readonly top: { readonly fabric: FabricName; readonly gauge: Gauge };
}

export function knittedPieces({ recipe, makes }: StandingPiece): KnittedPiece[] {
  const groups = alike(makes);
  return groups.flatMap((group): KnittedPiece[] => {
    const [first] = group;
    if (!first) return [];
    const nos = group.map(({ make }) => make);
    const worn = group.length === 1 ? wornSide(recipe, first.make) : undefined;
    return [
      {
        recipe: first.recipe,
        role: roleOf(recipe),
        size: sizeOf(first.parts),
        makes: group.length,
        ...(groups.length > 1 ? { nos } : {}),
        ...(worn !== undefined && { worn }),
        mark: nos.includes(1) ? '' : ` ${nos.join(' ')}`,
        top: topOf(first.parts[0]),
      },
    ];
  });
}

/** Its first part goes across it all; the others lie above that. */
function sizeOf(parts: readonly PlannedPart[]): KnittedPiece['size'] {
  const [whole] = parts;
  const across = (stitches: number, section: number) =>
    sewnMm(stitches, 0, whole?.cells[section]?.width ?? 0);
  const widths = whole
    ? [across(whole.start, 0), ...whole.rows.map(({ after, section }) => across(after, section))]
    : [];
  const heights = parts.map(({ rows, base }) => rows.at(-1)?.height ?? base);
  return { widthMm: Math.max(...widths), heightMm: Math.max(...heights) };
}

const UNKNOWN_TOP = { fabric: 'stocking', gauge: { stitches: 1, rows: 1 } } as const;

/** The row in which all is bound off is no fabric. */
function topOf(body: PlannedPart | undefined): KnittedPiece['top'] {
  if (!body) return UNKNOWN_TOP;
  const knitted = body.sections.filter((_, i) => body.rows.some((row) => row.section === i && row.after > 0));
  const at = Math.max(0, body.sections.indexOf(knitted[knitted.length - 1] ?? (body.sections[0] as never)));
  return { fabric: body.sections[at]?.fabric ?? 'stocking', gauge: gaugeIn(body, at) };
}
