import { type Fault, fault, ok, type Result, refuse } from '../fault.ts';
import { type StitchName, stitches } from '../stitch.ts';
import type { Step } from './step.ts';

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
  const trouble = workSteps(steps, needle);
  if (trouble) return refuse(trouble);
  if (needle.left > 0) {
    return refuse(fault('stitches left over', { leftStitches: needle.left, onNeedleStitches: onNeedle }));
  }
  const { right: after, boundOff, castOn, held } = needle;
  return ok({ before: onNeedle, after, boundOff, castOn, held });
}

function workSteps(steps: readonly Step[], needle: Needle): Fault | undefined {
  for (const step of steps) {
    const trouble = 'work' in step ? workStitches(step, needle) : workRepeat(step, needle);
    if (trouble) return trouble;
  }
  return undefined;
}

function workStitches(step: Extract<Step, { work: StitchName }>, needle: Needle): Fault | undefined {
  const { takes } = stitches[step.work];
  if ('times' in step) {
    const bad = notWhole(step.times);
    return bad ?? apply(step.work, step.times, needle);
  }
  const span = needle.left - step.until.left;
  if (span < 0) return tooFew(step.until.left, needle.left);
  if (takes === 0) return endless();
  if (span % takes !== 0) return doesNotComeOut(takes, span);
  return apply(step.work, span / takes, needle);
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

function workRepeat(step: Extract<Step, { repeat: readonly Step[] }>, needle: Needle): Fault | undefined {
  if ('times' in step) {
    const bad = notWhole(step.times);
    if (bad) return bad;
    for (let i = 0; i < step.times; i += 1) {
      const trouble = workSteps(step.repeat, needle);
      if (trouble) return trouble;
    }
    return undefined;
  }
  const { left } = step.until;
  if (needle.left < left) return tooFew(left, needle.left);
  while (needle.left > left) {
    const start = needle.left;
    const trouble = workSteps(step.repeat, needle);
    if (trouble) return trouble;
    if (needle.left === start) return endless();
  }
  return needle.left === left ? undefined : doesNotComeOut(left - needle.left, left);
}

/** Longest run that a row may ask for; keeps a mistyped repeat from running for ever. */
const LONGEST = 100_000;

const notWhole = (times: number): Fault | undefined =>
  Number.isSafeInteger(times) && times >= 0 && times <= LONGEST ? undefined : fault('bad count');

const tooFew = (need: number, have: number): Fault =>
  fault('not enough stitches', { needStitches: need, haveStitches: have });

const doesNotComeOut = (by: number, span: number): Fault =>
  fault('repeat does not come out', { byStitches: by, spanStitches: span });

const endless = (): Fault => fault('endless repeat');
