import type { StitchName } from '../stitch.ts';
import type { Step } from './step.ts';

/** What is done in each of the four cases of a step; a case that is missing does not compile. */
export interface StepCases<T> {
  readonly works: (work: StitchName, times: number) => T;
  readonly worksUntil: (work: StitchName, left: number) => T;
  readonly repeats: (inner: readonly Step[], times: number) => T;
  readonly repeatsUntil: (inner: readonly Step[], left: number) => T;
}

/** The one place where the cases of a step are told apart. */
export function caseOf<T>(step: Step, cases: StepCases<T>): T {
  if ('work' in step) {
    return 'times' in step
      ? cases.works(step.work, step.times)
      : cases.worksUntil(step.work, step.until.left);
  }
  return 'times' in step
    ? cases.repeats(step.repeat, step.times)
    : cases.repeatsUntil(step.repeat, step.until.left);
}
