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
  // one look at the table for all of a run: rows are mostly that
  const take = (work: StitchName, times: number): boolean => {
    const { takes } = stitches[work];
    const fits = takes === 0 ? times : Math.min(times, Math.floor(left / takes));
    for (let i = 0; i < fits; i += 1) out.push(work);
    left -= fits * takes;
    return fits === times;
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
    works: take,
    worksUntil: (work, goal) => {
      const { takes } = stitches[work];
      if (takes > 0 && left > goal) take(work, Math.ceil((left - goal) / takes));
      return left === goal;
    },
    repeats: (inner, times) => often(times, () => walk(inner)),
    repeatsUntil: (inner, goal) => until(goal, () => walk(inner)),
  };
  const walk = (list: readonly Step[]): boolean => list.every((step) => caseOf(step, spelled));
  walk(steps);
  return out;
}
