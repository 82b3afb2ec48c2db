import type { Yarn } from '../piece/garment.ts';
import type { StandingMake } from '../piece/standing.ts';
import { loopsUpTo } from './loops.ts';
import type { YarnNeed } from './need.ts';

/** A garment's yarn in balls, fractions of a ball and all; together they are the balls that it needs. */
export interface Balls {
  /** knitted up */
  readonly used: number;
  /** for the rows that are left */
  readonly left: number;
  /** kept for seams, ends and what the estimate cannot know */
  readonly reserve: number;
}

/** How much of a make's yarn its first rows have taken, from 0 to 1. `rows`: knitted rows of each part. */
export function shareKnitted(parts: StandingMake['parts'], rows: readonly number[]): number {
  const sum = (of: (i: number) => number) =>
    parts.reduce((loops, part, i) => loops + loopsUpTo(part, of(i)), 0);
  const all = sum((i) => parts[i]?.rows.length ?? 0);
  return all === 0 ? 0 : sum((i) => rows[i] ?? 0) / all;
}

/**
 * What is knitted up, what the rest takes and what stays in reserve.
 * @param knitted share of each make that is knitted, in the order of `need.makes`
 * @returns undefined while a ball's length is not known
 */
export function ballsOf(
  { balls, metres, makes }: YarnNeed,
  yarn: Yarn | undefined,
  knitted: readonly number[],
): Balls | undefined {
  if (balls === undefined || !yarn?.metres) return undefined;
  const perMetre = (yarn.strands ?? 1) / yarn.metres;
  const used = makes.reduce((sum, make, i) => sum + make.metres * (knitted[i] ?? 0), 0) * perMetre;
  const all = metres * perMetre;
  return { used, left: all - used, reserve: balls - all };
}
