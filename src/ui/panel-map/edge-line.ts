import type { PartShape } from './outline-of.ts';
import { type Point, polyline, withoutMiddles } from './paths.ts';

/** A stretch of a part's boundary as it is drawn: steps of a side, or a share of a beginning or a top. */
export type DrawnEdge =
  | {
      readonly edge: 'right' | 'left';
      /** row of the part, from 1; `level`: what is bound off or cast on there at once, else the row's own height */
      readonly bits: readonly { readonly row: number; readonly level: boolean }[];
    }
  | {
      readonly edge: 'start' | 'top';
      /** counted from the right edge: from 0 to 1 of its stitches */
      readonly from: number;
      readonly to: number;
    };

/** The runs of points that a stretch is drawn through, mm as in the part's shape; none for a stretch without length. */
export function edgeRuns(shape: PartShape, drawn: DrawnEdge): readonly (readonly Point[])[] {
  return 'bits' in drawn ? sideRuns(shape, drawn) : endRun(shape, drawn);
}

export const edgePath = (runs: readonly (readonly Point[])[]): string => runs.map(polyline).join('');

function sideRuns(
  { rows, base }: PartShape,
  { edge, bits }: Extract<DrawnEdge, { bits: unknown }>,
): readonly (readonly Point[])[] {
  const [x0, x1] = edge === 'right' ? (['right0', 'right1'] as const) : (['left0', 'left1'] as const);
  const runs: Point[][] = [];
  let run: Point[] = [];
  const flush = () => {
    if (run.length > 1) runs.push(withoutMiddles(run));
    run = [];
  };
  for (const { row, level } of bits) {
    const own = rows[row - 1];
    if (!own) continue;
    const bottom: Point = [own[x0], own.bottom];
    if (level) {
      const before = rows[row - 2];
      flush();
      run.push(before ? [before[x1], own.bottom] : [own[x0], base], bottom);
      flush();
      continue;
    }
    run.push(bottom, [own[x1], own.top]);
  }
  flush();
  return runs;
}

function endRun(
  { rows }: PartShape,
  { edge, from, to }: Extract<DrawnEdge, { from: number }>,
): readonly (readonly Point[])[] {
  const row = edge === 'start' ? rows[0] : rows.at(-1);
  if (!row || from === to) return [];
  const [right, left, y] =
    edge === 'start' ? [row.right0, row.left0, row.bottom] : [row.right1, row.left1, row.top];
  const at = (share: number): Point => [right + (left - right) * share, y];
  return [[at(from), at(to)]];
}

interface Segment {
  readonly from: Point;
  readonly to: Point;
  readonly length: number;
}

/** The straight bits of what is drawn, those without a length left out. */
export const segmentsOf = (runs: readonly (readonly Point[])[]): readonly Segment[] =>
  runs
    .flatMap((run) =>
      run.slice(1).map((to, i): Segment => {
        const from = run[i] ?? to;
        return { from, to, length: Math.hypot(to[0] - from[0], to[1] - from[1]) };
      }),
    )
    .filter(({ length }) => length > 0);

/** The point at such a share of a bit. */
export const between = ({ from, to }: Segment, share: number): Point => [
  from[0] + (to[0] - from[0]) * share,
  from[1] + (to[1] - from[1]) * share,
];

/** Where a sign for the stretch is put: on the line, as near as can be to the middle of all that is drawn, in whatever order. */
export function middleOf(runs: readonly (readonly Point[])[]): Point | undefined {
  const all = segmentsOf(runs);
  const long = all.reduce((sum, { length }) => sum + length, 0);
  const mean = (i: 0 | 1): number =>
    all.reduce((sum, { from, to, length }) => sum + ((from[i] + to[i]) / 2) * length, 0) / long;
  const [x, y] = [mean(0), mean(1)];
  const nearest = all.map((one): Point => {
    const { from, to, length } = one;
    const share = ((x - from[0]) * (to[0] - from[0]) + (y - from[1]) * (to[1] - from[1])) / length ** 2;
    return between(one, Math.min(1, Math.max(0, share)));
  });
  return nearest.sort((a, b) => Math.hypot(a[0] - x, a[1] - y) - Math.hypot(b[0] - x, b[1] - y))[0];
}
