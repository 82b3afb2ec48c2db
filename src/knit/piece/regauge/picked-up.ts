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
  let rest = fitted(sum) - sum;
  // edges that are alike take an equal share of it
  for (const [i, p] of old.entries()) {
    const alike = old.flatMap((q, j) => (q.stitches === p.stitches ? [j] : []));
    if (alike.length !== 2 || alike[0] !== i || p.held || p.stitches <= 2 || Math.abs(rest) <= alike.length)
      continue;
    for (const j of alike) counts[j] = (counts[j] ?? 1) + Math.sign(rest);
    rest -= 2 * Math.sign(rest);
  }
  // what rests on a holder is counted there
  const last = old.reduce((found, { held }, i) => (held ? found : i), 0);
  counts[last] = Math.max(1, (counts[last] ?? 1) + rest);
  return old.map((p, i) => ({ ...p, stitches: counts[i] ?? 1 }));
}
