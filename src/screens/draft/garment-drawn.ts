import type { Draft } from '../../knit/garment/draft.ts';
import type { PieceOutline } from '../../knit/garment/outlines.ts';
import type { Measure } from '../../knit/garment/roundings.ts';
import type { Point } from '../../knit/shape/curve.ts';

/** An edge that is touched to change its shape. */
export type EdgeName = 'neck' | 'armhole' | 'side' | 'sleeve' | 'hem' | 'band';

export interface DrawnEdge {
  readonly name: EdgeName;
  readonly line: readonly Point[];
}

/** A garment as it lies on the table: the body, its front up, and one sleeve beside it. All points in mm, y down. */
export interface DrawnGarment {
  readonly width: number;
  readonly height: number;
  /** x of the body's middle, and what the body ends at on the right */
  readonly middle: number;
  readonly bodyWidth: number;
  readonly sleeve: { readonly left: number; readonly right: number } | undefined;
  /** closed; the back first, which lies below */
  readonly cloth: readonly (readonly Point[])[];
  readonly asked: readonly (readonly Point[])[];
  readonly openings: readonly (readonly Point[])[];
  readonly edges: readonly DrawnEdge[];
  /** y of the shoulder's outer end and of the underarm */
  readonly shoulderY: number;
  readonly underarmY: number;
}

const mirrored = (points: readonly Point[]): Point[] => points.map(([x, y]): Point => [-x, y]).reverse();

/** mm; in whole stitches and rows, 0 where the garment has no such measure */
export const madeMm = ({ roundings }: Draft, ...measures: readonly Measure[]): number =>
  roundings.find(({ measure }) => measures.includes(measure))?.madeMm ?? 0;

/** @param gapMm between body and sleeve */
export function garmentDrawn(draft: Draft, gapMm: number): DrawnGarment {
  const of = (piece: string) => draft.outlines.find((outline) => outline.piece === piece);
  const [back, front, sleeve] = [of('Back'), of('Front'), of('Sleeve')];
  const body = [back, front].flatMap((one) => one?.made ?? []);
  const half = Math.max(0, ...body.map(([x]) => x));
  const arm = Math.max(0, ...(sleeve?.made ?? []).map(([x]) => x));
  const height = Math.max(0, ...[...body, ...(sleeve?.made ?? [])].map(([, y]) => y));
  const armX = 2 * half + gapMm + arm;
  const lay = (points: readonly Point[], x: number): Point[] =>
    points.map(([px, y]): Point => [px + x, height - y]);
  // half a front lies on both sides of the body
  const isOpen = front !== undefined && !front.made.some(([x]) => x < 0);
  const fronts = (points: readonly Point[]) =>
    isOpen ? [lay(points, half), lay(mirrored(points), half)] : [lay(points, half)];
  const shoulder = madeMm(draft, 'length') - madeMm(draft, 'shoulder drop');
  const underarm = shoulder - madeMm(draft, 'armhole depth', 'raglan depth');
  const edges = front ? edgesOf(front, { underarm, shoulder, isOpen }) : [];
  return {
    width: sleeve ? armX + arm : 2 * half,
    height,
    middle: half,
    bodyWidth: 2 * half,
    sleeve: sleeve && { left: armX - arm, right: armX + arm },
    cloth: [
      ...(back ? [lay(back.made, half)] : []),
      ...fronts(front?.made ?? []),
      ...(sleeve ? [lay(sleeve.made, armX)] : []),
    ],
    asked: [...fronts(front?.asked ?? []), ...(sleeve ? [lay(sleeve.asked, armX)] : [])],
    openings: [...(back?.openings ?? []), ...(front?.openings ?? [])].map((line) => lay(line, half)),
    edges: [
      ...edges.map(({ name, line }) => ({ name, line: lay(line, half) })),
      ...(sleeve ? [{ name: 'sleeve' as const, line: lay(sleeveEdge(sleeve), armX) }] : []),
    ],
    shoulderY: height - shoulder,
    underarmY: height - underarm,
  };
}

interface Levels {
  readonly underarm: number;
  readonly shoulder: number;
  readonly isOpen: boolean;
}

/** The right half's edges, walked up from the hem, and their mirror images. */
function edgesOf({ made }: PieceOutline, { underarm, shoulder, isOpen }: Levels): DrawnEdge[] {
  const half = cutAt(isOpen ? made : made.slice(0, made.length / 2), underarm);
  const top = Math.max(...half.map(([, y]) => y));
  const neckFrom = half.reduce((found, [, y], i) => (y > top - LEVEL ? i : found), 0);
  const armFrom = Math.max(
    0,
    half.findIndex(([, y]) => y > underarm - LEVEL),
  );
  const armTo = Math.max(
    armFrom,
    half.findIndex(([, y]) => y > Math.min(shoulder, top) - LEVEL),
  );
  const neckTo = isOpen ? half.length - 1 : half.length;
  const side = half.slice(0, armFrom + 1);
  const armhole = half.slice(armFrom, armTo + 1);
  const neck = half.slice(neckFrom, neckTo);
  const low = half[0] ?? [0, 0];
  const twice = (name: EdgeName, line: readonly Point[]): DrawnEdge[] => [
    { name, line },
    { name, line: mirrored(line) },
  ];
  const inner = made.at(-1) ?? [0, 0];
  return [
    ...(isOpen ? twice('neck', neck) : [{ name: 'neck' as const, line: [...neck, ...mirrored(neck)] }]),
    ...twice('armhole', armhole),
    ...twice('side', side),
    ...(isOpen ? twice('hem', [inner, low]) : [{ name: 'hem' as const, line: [low, ...mirrored([low])] }]),
    ...(isOpen ? twice('band', shortened(half.slice(-2))) : []),
  ];
}

/** With a corner at the underarm, where a straight side runs on past it. */
function cutAt(line: readonly Point[], level: number): Point[] {
  return line.flatMap(([x, y], i): Point[] => {
    const [x0, y0] = line[i - 1] ?? [x, y];
    const isPast = y0 < level - LEVEL && y > level + LEVEL;
    return isPast
      ? [
          [x0 + ((x - x0) * (level - y0)) / (y - y0), level],
          [x, y],
        ]
      : [[x, y]];
  });
}

/** A front's edge without its ends, which belong to the neck's and the hem's. */
function shortened(line: readonly Point[]): Point[] {
  const [[x, y0] = [0, 0], [, y1] = [0, 0]] = line;
  const off = 0.15 * (y1 - y0);
  return [
    [x, y0 + off],
    [x, y1 - off],
  ];
}

/** mm within which a corner lies on a level */
const LEVEL = 0.5;

/** From the cuff up, over the top and down again. */
const sleeveEdge = ({ made }: PieceOutline): readonly Point[] => made;

/** mm (or px, as they are given) from a point to the nearest of a line */
export function farFrom([x, y]: Point, line: readonly Point[]): number {
  let nearest = Number.POSITIVE_INFINITY;
  let [[x0, y0] = [x, y]] = line;
  for (const [x1, y1] of line) {
    const dx = x1 - x0;
    const dy = y1 - y0;
    const long = dx * dx + dy * dy;
    const share = long === 0 ? 0 : Math.min(1, Math.max(0, ((x - x0) * dx + (y - y0) * dy) / long));
    const [besideX, besideY] = [x - x0 - share * dx, y - y0 - share * dy];
    nearest = Math.min(nearest, besideX * besideX + besideY * besideY);
    x0 = x1;
    y0 = y1;
  }
  return Math.sqrt(nearest);
}
