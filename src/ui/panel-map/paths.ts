import type { Notch, PartShape, RowShape } from './outline-of.ts';

/** Shapes as SVG path data, mm to two digits; straight edges of any number of rows become one line. */

export type Point = readonly [x: number, y: number];

/** The cloth of rows `first` to `last` (row numbers from 1) as one closed path; empty for no rows. */
export function clothPath(shape: PartShape, first = 1, last = shape.rows.length): string {
  const rows = shape.rows.slice(first - 1, last).filter((row) => row.top !== row.bottom);
  if (rows.length === 0) return '';
  const right = rows.flatMap((row): Point[] => [
    [row.right0, row.bottom],
    [row.right1, row.top],
  ]);
  const left = rows.flatMap((row): Point[] => [
    [row.left0, row.bottom],
    [row.left1, row.top],
  ]);
  return `${polyline(withoutMiddles([...right, ...left.reverse()]))}z`;
}

/** An open line through the points. */
export const polyline = (points: readonly Point[]): string =>
  points.map(([x, y], i) => `${i === 0 ? 'M' : 'L'}${short(x)} ${short(y)}`).join('');

const short = (value: number): string => String(Math.round(value * 100) / 100);

/** Without the points that lie on the straight line between their neighbours. */
export function withoutMiddles(points: readonly Point[]): Point[] {
  const kept: Point[] = [];
  for (const point of points) {
    while (
      kept.length >= 2 &&
      isBetween(kept[kept.length - 2] as Point, kept[kept.length - 1] as Point, point)
    )
      kept.pop();
    kept.push(point);
  }
  return kept;
}

const isBetween = (a: Point, b: Point, c: Point): boolean => {
  const [abX, abY, bcX, bcY] = [b[0] - a[0], b[1] - a[1], c[0] - b[0], c[1] - b[1]];
  return (
    Math.abs(abX * bcY - abY * bcX) < 0.001 * (Math.hypot(abX, abY) * Math.hypot(bcX, bcY) + 0.001) &&
    abX * bcX + abY * bcY >= 0
  );
};

/**
 * Notches as triangles of `size` mm: cut into the cloth where stitches go, standing out where they come.
 * Of notches at the same edge closer than a triangle is high every second or third is drawn.
 */
export function notchPath(notches: readonly Notch[], size: number): string {
  const lastY: Record<Notch['at'], number> = { left: Infinity, right: Infinity, within: Infinity };
  let path = '';
  for (const notch of notches) {
    if (Math.abs(lastY[notch.at] - notch.y) < size * 0.95) continue;
    lastY[notch.at] = notch.y;
    path += triangle(notch, size);
  }
  return path;
}

function triangle({ x, y, at, turn }: Notch, size: number): string {
  const half = size / 2;
  if (at === 'within') {
    const tip = turn < 0 ? y - half : y + half;
    const foot = turn < 0 ? y + half : y - half;
    return `M${short(x - half)} ${short(foot)}L${short(x + half)} ${short(foot)}L${short(x)} ${short(tip)}z`;
  }
  const inward = at === 'right' ? -1 : 1;
  // fewer stitches: the foot on the edge, the tip inside; more stitches: the tip outside
  const tip = turn < 0 ? x + inward * size : x - inward * size;
  return `M${short(x)} ${short(y - half)}L${short(x)} ${short(y + half)}L${short(tip)} ${short(y)}z`;
}

/** One row's band, at least `least` mm high so that it can be seen. */
export function rowPath(row: RowShape, least: number): string {
  const extra = Math.max(0, (least - (row.bottom - row.top)) / 2);
  const [y0, y1] = [row.bottom + extra, row.top - extra];
  return `${polyline([
    [row.right0, y0],
    [row.right1, y1],
    [row.left1, y1],
    [row.left0, y0],
  ])}z`;
}
