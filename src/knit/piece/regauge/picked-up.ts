import type { PickUp } from '../recipe.ts';
import { roundParts } from './round-to.ts';
import type { Scale } from './scale.ts';

/** Stitches that rested on a holder, and how many they are now: a band takes them up one by one. */
export type Resting = Map<number, number>;

/** A point of one or two stitches stays as it is; the last edge takes up what the rib's multiple asks for. */
export function pickedUp(
  old: readonly PickUp[],
  scale: Scale,
  resting: Resting,
  fitted: (sum: number) => number,
): PickUp[] {
  const scaled = roundParts(old.map((p) => (p.stitches <= 2 ? p.stitches : p.stitches * scale.stitches)));
  const counts = old.map((p, i) => (p.stitches <= 2 ? p.stitches : Math.max(1, scaled[i] ?? 1)));
  old.forEach((p, i) => {
    const twin = old.findIndex((q, j) => j < i && q.stitches === p.stitches);
    if (twin >= 0) counts[i] = counts[twin] ?? counts[i] ?? 1;
  });
  old.forEach((p, i) => {
    if (p.held) counts[i] = resting.get(p.stitches) ?? counts[i] ?? 1;
  });
  const sum = counts.reduce((a, b) => a + b, 0);
  // what rests on a holder is counted there
  const last = old.reduce((found, { held }, i) => (held ? found : i), 0);
  counts[last] = Math.max(1, (counts[last] ?? 1) + fitted(sum) - sum);
  return old.map((p, i) => ({ ...p, stitches: counts[i] ?? 1 }));
}
