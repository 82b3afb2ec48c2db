/**
 * Edges in mm, y upwards. A curve is a chain of straight lines and cubic Bézier arcs, each beginning where the
 * last one ended; along an edge y never falls, so that a row meets the edge in one place.
 */
export type Point = readonly [x: number, y: number];
export type Segment = readonly [Point, Point] | readonly [Point, Point, Point, Point];
export type Curve = readonly Segment[];

export const line = (from: Point, to: Point): Segment => [from, to];

/** A straight chain through the points. */
export const chain = (points: readonly Point[]): Curve =>
  points.slice(1).map((to, i) => line(points[i] ?? to, to));

/**
 * Share of a radius at which the handles of a quarter circle lie: 4/3 (√2 − 1). The arc is then never more than
 * 0.03 % of the radius off a circle (standard construction of computer graphics).
 */
const QUARTER = (4 / 3) * (Math.SQRT2 - 1);

/** A quarter of an ellipse that leaves `from` level and reaches `to` upright. */
export const levelThenUpright = (from: Point, to: Point): Segment => [
  from,
  [from[0] + (to[0] - from[0]) * QUARTER, from[1]],
  [to[0], to[1] - (to[1] - from[1]) * QUARTER],
  to,
];

/** A point of a segment, t from 0 to 1. */
export function pointAt(segment: Segment, t: number): Point {
  const u = 1 - t;
  if (segment.length === 2) {
    const [a, b] = segment;
    return [u * a[0] + t * b[0], u * a[1] + t * b[1]];
  }
  const [a, b, c, d] = segment;
  const at = (i: 0 | 1): number =>
    u * u * u * a[i] + 3 * u * u * t * b[i] + 3 * u * t * t * c[i] + t * t * t * d[i];
  return [at(0), at(1)];
}

export const startOf = (segment: Segment): Point => segment[0];
export const endOf = (segment: Segment): Point => (segment.length === 2 ? segment[1] : segment[3]);

/**
 * Where the edge is at height y, in mm from the same line as its points. At a level stretch: its far end, as the row
 * above it has it. Below the start and above the end: the start and the end.
 */
export function xAt(curve: Curve, y: number): number {
  const last = curve[curve.length - 1];
  const first = curve[0];
  if (!first || !last) return 0;
  if (y < startOf(first)[1]) return startOf(first)[0];
  for (const segment of curve) {
    if (y < endOf(segment)[1]) return pointAt(segment, solve(segment, y))[0];
  }
  return endOf(last)[0];
}

/** t at which a segment that rises beyond height y reaches it, by halving: 40 times leaves less than 1e-12. */
function solve(segment: Segment, y: number): number {
  if (segment.length === 2) {
    const [from, to] = segment;
    return (y - from[1]) / (to[1] - from[1]);
  }
  const [[, a], [, b], [, c], [, d]] = segment;
  const cubic = d - 3 * c + 3 * b - a;
  const square = 3 * (c - 2 * b + a);
  const linear = 3 * (b - a);
  let low = 0;
  let high = 1;
  for (let i = 0; i < 40; i += 1) {
    const t = (low + high) / 2;
    if (((cubic * t + square) * t + linear) * t + a <= y) low = t;
    else high = t;
  }
  return low;
}

/** Length of a curve, mm. */
export const lengthOf = (curve: Curve): number =>
  curve.reduce((sum, segment) => sum + segmentLength(segment), 0);

/** Gauss and Legendre's five points on [−1, 1] (Abramowitz and Stegun, Handbook, 1964, table 25.4; from memory). */
const GAUSS: readonly (readonly [at: number, weight: number])[] = [
  [0, 128 / 225],
  [Math.sqrt(5 - 2 * Math.sqrt(10 / 7)) / 3, (322 + 13 * Math.sqrt(70)) / 900],
  [-Math.sqrt(5 - 2 * Math.sqrt(10 / 7)) / 3, (322 + 13 * Math.sqrt(70)) / 900],
  [Math.sqrt(5 + 2 * Math.sqrt(10 / 7)) / 3, (322 - 13 * Math.sqrt(70)) / 900],
  [-Math.sqrt(5 + 2 * Math.sqrt(10 / 7)) / 3, (322 - 13 * Math.sqrt(70)) / 900],
];

const PIECES = 8;

function segmentLength(segment: Segment): number {
  if (segment.length === 2) return Math.hypot(segment[1][0] - segment[0][0], segment[1][1] - segment[0][1]);
  let sum = 0;
  for (let piece = 0; piece < PIECES; piece += 1) {
    for (const [at, weight] of GAUSS) sum += weight * speed(segment, (piece + (at + 1) / 2) / PIECES);
  }
  return sum / (2 * PIECES);
}

function speed([a, b, c, d]: readonly [Point, Point, Point, Point], t: number): number {
  const u = 1 - t;
  const along = (i: 0 | 1): number =>
    3 * (u * u * (b[i] - a[i]) + 2 * u * t * (c[i] - b[i]) + t * t * (d[i] - c[i]));
  return Math.hypot(along(0), along(1));
}

/** The curve as points, `each` chords to an arc: for drawings. */
export function pointsOf(curve: Curve, each = 16): Point[] {
  const first = curve[0];
  if (!first) return [];
  const points: Point[] = [startOf(first)];
  for (const segment of curve) {
    const chords = segment.length === 2 ? 1 : each;
    for (let i = 1; i <= chords; i += 1) points.push(pointAt(segment, i / chords));
  }
  return points;
}
