import type { Step } from './step.ts';
import { caseOf, type StepCases } from './walk-step.ts';

/**
 * How many stitch steps working a row may take at most, with so many stitches on the needle: a few nested repeats
 * can ask for more than a lifetime of them in very little text.
 */
export function stepWeight(steps: readonly Step[], onNeedle: number): number {
  const round = (inner: readonly Step[]): number => 1 + weigh(inner);
  const itsWeight: StepCases<number> = {
    works: () => 1,
    worksUntil: () => 1,
    repeats: (inner, times) => round(inner) * times,
    repeatsUntil: (inner) => round(inner) * Math.max(1, onNeedle),
  };
  const weigh = (list: readonly Step[]): number =>
    list.reduce((sum, step) => sum + caseOf(step, itsWeight), 0);
  return weigh(steps);
}
