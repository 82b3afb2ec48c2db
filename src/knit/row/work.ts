import { type Fault, fault, ok, type Result, refuse } from '../fault.ts';
import { type StitchName, stitches } from '../stitch.ts';
import type { Step } from './step.ts';
import { caseOf, type StepCases } from './walk-step.ts';

/** What working a row does to the needle, in stitches. */
export interface Worked {
  readonly before: number;
  /** on the needle when the row is done */
  readonly after: number;
  readonly boundOff: number;
  readonly castOn: number;
  readonly held: number;
}

interface Needle {
  /** on the left needle, still to be worked */
  left: number;
  /** on the right needle */
  right: number;
  boundOff: number;
  castOn: number;
  held: number;
}

/**
 * Works a row over the stitches on the needle: it must use up every one of them.
 * @param onNeedle stitches on the left needle at the start
 * @returns the counts, or a fault with the step that cannot be worked ('not enough stitches',
 *   'repeat does not come out', 'stitches left over', 'endless repeat', 'bad count')
 */
export function workRow(steps: readonly Step[], onNeedle: number): Result<Worked> {
  if (!Number.isSafeInteger(onNeedle) || onNeedle < 0) {
    return refuse(fault('bad count'));
  }
  const needle: Needle = { left: onNeedle, right: 0, boundOff: 0, castOn: 0, held: 0 };
  const trouble = workSteps(steps, workingOn(needle));
  if (trouble) return refuse(trouble);
  if (needle.left > 0) {
    return refuse(fault('stitches left over', { leftStitches: needle.left, onNeedleStitches: onNeedle }));
  }
  const { right: after, boundOff, castOn, held } = needle;
  return ok({ before: onNeedle, after, boundOff, castOn, held });
}

function workSteps(steps: readonly Step[], working: Working): Fault | undefined {
  for (const step of steps) {
    const trouble = caseOf(step, working);
    if (trouble) return trouble;
  }
  return undefined;
}

type Working = StepCases<Fault | undefined>;

/** What each kind of step does to this needle. */
function workingOn(needle: Needle): Working {
  const working: Working = {
    works: (work, times) => notWhole(times) ?? apply(work, times, needle),
    worksUntil: (work, left) => workUntil(work, left, needle),
    repeats: (inner, times) => notWhole(times) ?? repeatTimes(inner, times, working),
    repeatsUntil: (inner, left) => repeatUntil(inner, left, needle, working),
  };
  return working;
}

function workUntil(work: StitchName, left: number, needle: Needle): Fault | undefined {
  const { takes } = stitches[work];
  const span = needle.left - left;
  if (span < 0) return tooFew(left, needle.left);
  if (takes === 0) return endless();
  if (span % takes !== 0) return doesNotComeOut(takes, span);
  return apply(work, span / takes, needle);
}

function apply(work: StitchName, times: number, needle: Needle): Fault | undefined {
  const { takes, makes } = stitches[work];
  const need = takes * times;
  if (need > needle.left) return tooFew(need, needle.left);
  needle.left -= need;
  needle.right += makes * times;
  if (work === 'bo') needle.boundOff += times;
  if (work === 'hold') needle.held += times;
  if (work === 'co' || work === 'pu' || work === 'take') needle.castOn += times;
  return undefined;
}

function repeatTimes(inner: readonly Step[], times: number, working: Working): Fault | undefined {
  for (let i = 0; i < times; i += 1) {
    const trouble = workSteps(inner, working);
    if (trouble) return trouble;
  }
  return undefined;
}

function repeatUntil(
  inner: readonly Step[],
  left: number,
  needle: Needle,
  working: Working,
): Fault | undefined {
  if (needle.left < left) return tooFew(left, needle.left);
  if (inner.every(takesNone)) return endless();
  const span = needle.left - left;
  let once = 0;
  while (needle.left > left) {
    const start = needle.left;
    const trouble = workSteps(inner, working);
    if (trouble) return trouble;
    once = start - needle.left;
    if (once === 0) return endless();
  }
  return needle.left === left ? undefined : doesNotComeOut(once, span);
}

/** What uses up no stitch can never be worked up to a place: not even where it happens to be reached already. */
const takesNone = (step: Step): boolean => caseOf(step, takingNone);

const stitchTakesNone = (work: StitchName): boolean => stitches[work].takes === 0;
const allTakeNone = (inner: readonly Step[]): boolean => inner.every(takesNone);
const takingNone: StepCases<boolean> = {
  works: stitchTakesNone,
  worksUntil: stitchTakesNone,
  repeats: allTakeNone,
  repeatsUntil: allTakeNone,
};

/** Longest run that a row may ask for; keeps a mistyped repeat from running for ever. */
const LONGEST = 100_000;

const notWhole = (times: number): Fault | undefined =>
  Number.isSafeInteger(times) && times >= 0 && times <= LONGEST ? undefined : fault('bad count');

const tooFew = (need: number, have: number): Fault =>
  fault('not enough stitches', { needStitches: need, haveStitches: have });

const doesNotComeOut = (by: number, span: number): Fault =>
  fault('repeat does not come out', { byStitches: by, spanStitches: span });

const endless = (): Fault => fault('endless repeat');
