import { type FabricName, fabrics, fitsSeamed } from '../fabric.ts';
import type { Gauge } from '../gauge.ts';

/** Stitches in a width, not rounded. */
export const stitchesIn = (mm: number, gauge: Gauge): number => (mm * gauge.stitches) / 100;

/** Whole pairs of rows (an RS row and a WS row) nearest to a height; `atLeast` where the height is not nothing. */
export function pairsIn(mm: number, gauge: Gauge, atLeast = 0): number {
  return Math.max(mm > 0 ? atLeast : 0, Math.round((mm * gauge.rows) / 200));
}

/** Whether a border's repeat asks for an even or an odd count; undefined where any will do. */
export function parityOf(fabric: FabricName): Parity | undefined {
  const { multiple, seamed = multiple.plus } = fabrics[fabric];
  if (multiple.of % 2 === 1) return undefined;
  return (seamed[0] ?? 0) % 2 === 0 ? 'even' : 'odd';
}

export type Parity = 'even' | 'odd';

/**
 * Whole counts for widths that lie symmetrically on one another: all even or all odd, whichever is nearer to what was
 * asked at its worst, or as the rib below them has it. None is more than one stitch off.
 */
export function sameParity(asked: readonly number[], parity?: Parity): readonly number[] {
  const even = asked.map((n) => 2 * Math.round(n / 2));
  const odd = asked.map((n) => 2 * Math.round((n - 1) / 2) + 1);
  if (parity !== undefined) return parity === 'even' ? even : odd;
  return worstOf(even, asked) <= worstOf(odd, asked) ? even : odd;
}

const worstOf = (counts: readonly number[], asked: readonly number[]): number =>
  counts.reduce((worst, n, i) => Math.max(worst, Math.abs(n - (asked[i] ?? n))), 0);

/** The count nearest to `count` with which the fabric goes on across the seam; the smaller of two equally near. */
export function fitted(fabric: FabricName, count: number): number {
  const { below, above } = fitsSeamed(fabric, Math.max(1, count));
  return below > 0 && count - below <= above - count ? below : above;
}

/** `total` in `parts` whole groups that differ by at most one, the bigger ones first. */
export function groupsOf(total: number, parts: number): readonly number[] {
  const small = Math.floor(total / parts);
  const bigger = total - small * parts;
  return Array.from({ length: parts }, (_, i) => small + (i < bigger ? 1 : 0));
}
