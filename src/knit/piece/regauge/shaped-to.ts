import type { Shaping } from '../recipe.ts';
import { roundLike } from './round-to.ts';
import type { Scale } from './scale.ts';

/** How often each shaping of a section is worked, or for groups how many stitches they are in all. */
export type Amounts = readonly number[];

/** Stitches that were so many: the same in every piece, so that what met still meets. */
export const scaledCount = (old: number, { stitches }: Scale): number =>
  old === 0 ? 0 : Math.max(1, Math.round(old * stitches));

const isGroups = (shaping: Shaping) => shaping.kind === 'bind off' || shaping.kind === 'cast on';

/** Stitches that one time, or one stitch of a group, adds. */
export function perTime(shaping: Shaping): number {
  if (shaping.kind === 'edge') return shaping.by * (shaping.edge === 'both' ? 2 : 1);
  return shaping.kind === 'bind off' ? -1 : shaping.kind === 'cast on' ? 1 : 0;
}

/** How often it is worked, or for groups how many stitches they are in all. */
export function amountOf(shaping: Shaping): number {
  if (shaping.kind === 'edge') return shaping.rows.length;
  return isGroups(shaping) && 'groups' in shaping ? shaping.groups.reduce((n, g) => n + g.stitches, 0) : 0;
}

/** By its own figure alone. */
export function scaledAmount(one: Shaping, scale: Scale): number {
  const old = amountOf(one);
  return one.kind === 'edge' ? Math.round(old * scale.stitches) : scaledCount(old, scale);
}

/** Stitches that a section adds at one edge. */
export const changeAt = (shaping: readonly Shaping[], edge: 'right' | 'left'): number =>
  shaping.reduce((sum, one) => {
    if (!('edge' in one) || one.kind === 'turn') return sum;
    if (one.edge === 'both') return sum + (perTime(one) / 2) * amountOf(one);
    return one.edge === edge ? sum + perTime(one) * amountOf(one) : sum;
  }, 0);

/**
 * Each shaping's share of the change from the stitches on the needle to those that the old count comes to. What rounding
 * leaves over goes to the edges' own shaping, the longest first; where there is none, to a group that stands alone.
 * @param before stitches on the needle when the section begins; `oldAfter` those that the old plan had at its end
 */
export function shapedTo(
  shaping: readonly Shaping[],
  scale: Scale,
  { before, oldAfter, rows }: { readonly before: number; readonly oldAfter: number; readonly rows: number },
): Amounts {
  const amounts = shaping.map((one) => scaledAmount(one, scale));
  if (shaping.some(({ kind }) => kind === 'across' || kind === 'middle')) return amounts;
  const isEven = changeAt(shaping, 'right') === changeAt(shaping, 'left');
  const target = isEven
    ? Math.max(1, roundLike(oldAfter * scale.stitches, before))
    : scaledCount(oldAfter, scale);
  const edges = shaping.flatMap((one, i) => (one.kind === 'edge' ? [i] : []));
  const groups = shaping.flatMap((one, i) => (isGroups(one) ? [i] : []));
  const [only] = groups;
  // the middle of a neck is taken off with one of its sides, which is then as its twin
  const isMiddle = groups.length === 1 && only !== undefined && (amounts[only] ?? 0) > before / 3;
  const takers = edges.length > 0 && !isMiddle ? edges : groups.length === 1 ? groups : [];
  const most = takers === edges ? rows : Number.POSITIVE_INFINITY;
  const moved = shaping.map(() => 0);
  let rest = target - shaping.reduce((sum, one, i) => sum + perTime(one) * (amounts[i] ?? 0), before);
  while (rest !== 0) {
    const step = (i: number) => Math.sign(rest) * Math.sign(perTime(shaping[i] as Shaping));
    const [best] = takers
      .filter((i) => {
        const next = (amounts[i] ?? 0) + step(i);
        return Math.abs(perTime(shaping[i] as Shaping)) <= Math.abs(rest) && next >= 0 && next <= most;
      })
      .sort((i, j) => (moved[i] ?? 0) - (moved[j] ?? 0) || (amounts[j] ?? 0) - (amounts[i] ?? 0));
    if (best === undefined) break;
    const by = step(best);
    amounts[best] = (amounts[best] ?? 0) + by;
    moved[best] = (moved[best] ?? 0) + 1;
    rest -= by * perTime(shaping[best] as Shaping);
  }
  return amounts;
}
