import { type StitchName, stitches } from '../stitch.ts';
import type { Step } from './step.ts';
import { caseOf, type StepCases } from './walk-step.ts';

const nothing = (): undefined => undefined;

const itsStitch: StepCases<StitchName | undefined> = {
  works: (work) => work,
  worksUntil: (work) => work,
  repeats: nothing,
  repeatsUntil: nothing,
};

/** The stitch that a step is worked in; undefined for a repeat. */
export const stitchOf = (step: Step): StitchName | undefined => caseOf(step, itsStitch);

type Run = Extract<Step, { readonly work: StitchName; readonly times: number }>;

const itsRun: StepCases<Run | undefined> = {
  works: (work, times) => ({ work, times }),
  worksUntil: nothing,
  repeats: nothing,
  repeatsUntil: nothing,
};

/** A step that is so many of one stitch; undefined for a repeat, and for what goes on until a count is left. */
export const runOf = (step: Step): Run | undefined => caseOf(step, itsRun);

const itsStitches: StepCases<readonly StitchName[]> = {
  works: (work) => [work],
  worksUntil: (work) => [work],
  repeats: (inner) => stitchesNamed(inner),
  repeatsUntil: (inner) => stitchesNamed(inner),
};

/** The stitches that a row asks for, each once, in the order in which they come. */
export const stitchesNamed = (steps: readonly Step[]): readonly StitchName[] => [
  ...new Set(steps.flatMap((step) => caseOf(step, itsStitches))),
];

const isUnworked = (work: StitchName): boolean => work === 'unworked';

const itsUnworked: StepCases<boolean> = {
  works: isUnworked,
  worksUntil: isUnworked,
  repeats: (inner) => leavesUnworked(inner),
  repeatsUntil: (inner) => leavesUnworked(inner),
};

/** Whether a row leaves stitches as they are; asked of every row, so that it stops at the first. */
export const leavesUnworked = (steps: readonly Step[]): boolean =>
  steps.some((step) => caseOf(step, itsUnworked));

/** Stitches that steps take from the left needle and leave on the right one. */
export interface TakenAndMade {
  readonly takes: number;
  readonly makes: number;
}

const timesOver = (one: TakenAndMade | undefined, times: number): TakenAndMade | undefined =>
  one && { takes: one.takes * times, makes: one.makes * times };

const itsCount: StepCases<TakenAndMade | undefined> = {
  works: (work, times) => timesOver(stitches[work], times),
  worksUntil: nothing,
  repeats: (inner, times) => timesOver(takenAndMade(inner), times),
  repeatsUntil: nothing,
};

/** What steps do to the count, in stitches; undefined where that hangs on how many are on the needle. */
export function takenAndMade(steps: readonly Step[]): TakenAndMade | undefined {
  let takes = 0;
  let makes = 0;
  for (const step of steps) {
    const one = caseOf(step, itsCount);
    if (one === undefined) return undefined;
    takes += one.takes;
    makes += one.makes;
  }
  return { takes, makes };
}
