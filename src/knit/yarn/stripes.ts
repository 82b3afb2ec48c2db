import type { PlannedPart } from '../piece/planned.ts';
import { rowLoops, setUpLoops } from './loops.ts';

/** A stripe: so many rows in a colour; the stripes repeat in turn. */
export interface Stripe {
  readonly colour: string;
  readonly rows: number;
}

/** The colour of a row (from 1). Stripes without rows have no colour to give. */
export function colourOf(stripes: readonly Stripe[], row: number): string | undefined {
  const period = stripes.reduce((sum, s) => sum + s.rows, 0);
  if (period <= 0) return undefined;
  let at = (row - 1) % period;
  for (const stripe of stripes) {
    if (at < stripe.rows) return stripe.colour;
    at -= stripe.rows;
  }
  return undefined;
}

/** Loops of a part by colour; the set-up goes with row 1. They add up to the loops of the whole part. */
export function loopsByColour(part: PlannedPart, stripes: readonly Stripe[]): ReadonlyMap<string, number> {
  const loops = new Map<string, number>();
  const add = (colour: string | undefined, count: number): void => {
    if (colour !== undefined) loops.set(colour, (loops.get(colour) ?? 0) + count);
  };
  add(colourOf(stripes, 1), setUpLoops(part));
  for (const row of part.rows) add(colourOf(stripes, row.n), rowLoops(row));
  return loops;
}
