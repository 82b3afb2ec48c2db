import type { StitchName } from '../stitch.ts';
import { stitches } from '../stitch.ts';
import type { Step } from './step.ts';
import { caseOf, type StepCases } from './walk-step.ts';

/**
 * The row stitch by stitch, in the order worked. Only for rows that `workRow` accepts:
 * what is left of a row that does not fit is not spelled out.
 */
export function expandRow(steps: readonly Step[], onNeedle: number): StitchName[] {
  const out: StitchName[] = [];
  let left = onNeedle;
  const take = (work: StitchName): boolean => {
    if (stitches[work].takes > left) return false;
    left -= stitches[work].takes;
    out.push(work);
    return true;
  };
  const often = (times: number, once: () => boolean): boolean => {
    for (let i = 0; i < times; i += 1) if (!once()) return false;
    return true;
  };
  const until = (goal: number, once: () => boolean): boolean => {
    while (left > goal) {
      const start = left;
      if (!once() || left === start) return false;
    }
    return left === goal;
  };
  const spelled: StepCases<boolean> = {
    works: (work, times) => often(times, () => take(work)),
    worksUntil: (work, goal) => until(goal, () => take(work)),
    repeats: (inner, times) => often(times, () => walk(inner)),
    repeatsUntil: (inner, goal) => until(goal, () => walk(inner)),
  };
  const walk = (list: readonly Step[]): boolean => list.every((step) => caseOf(step, spelled));
  walk(steps);
  return out;
}
