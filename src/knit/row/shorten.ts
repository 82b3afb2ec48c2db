import { type StitchName, stitches } from '../stitch.ts';
import type { Step } from './step.ts';

/** So many of one stitch in a row. */
export interface Run {
  readonly work: StitchName;
  readonly times: number;
}

/** Longest repeat looked for, in runs: k, p, k2tog, yo ... beyond it a knitter reads faster than she counts. */
const LONGEST_PERIOD = 12;

/**
 * The shortest wording of a row: repeats are folded, and what covers most of the row runs 'to end' or
 * 'to last n stitches', so that she need not count it.
 */
export function shorten(runs: readonly Run[]): Step[] {
  const steps = fold(joinRuns(runs));
  return openEnded(steps);
}

/** Adds a run, joining it with the one before where both are the same stitch. */
export function addRun(runs: Run[], work: StitchName, times: number): void {
  if (times <= 0) return;
  const last = runs[runs.length - 1];
  if (last?.work === work) runs[runs.length - 1] = { work, times: last.times + times };
  else runs.push({ work, times });
}

function joinRuns(runs: readonly Run[]): Run[] {
  const out: Run[] = [];
  for (const run of runs) addRun(out, run.work, run.times);
  return out;
}

function fold(runs: readonly Run[]): Step[] {
  const best = bestRepeat(runs);
  if (!best) return runs.map(({ work, times }) => ({ work, times }));
  const { start, period, times } = best;
  const inner = runs.slice(start, start + period).map(({ work, times: n }): Step => ({ work, times: n }));
  return [
    ...fold(runs.slice(0, start)),
    { repeat: inner, times },
    ...fold(runs.slice(start + period * times)),
  ];
}

interface Found {
  readonly start: number;
  readonly period: number;
  readonly times: number;
}

/** The repeat that saves most runs; the earliest and shortest of equals. */
function bestRepeat(runs: readonly Run[]): Found | undefined {
  let best: Found | undefined;
  let saved = 1;
  const longest = Math.min(LONGEST_PERIOD, Math.floor(runs.length / 2));
  for (let period = 2; period <= longest; period += 1) {
    let same = 0;
    for (let j = period; j <= runs.length; j += 1) {
      if (j < runs.length && alike(runs[j], runs[j - period])) {
        same += 1;
        continue;
      }
      const times = Math.floor(same / period) + 1;
      const saves = (times - 1) * period;
      if (times >= 2 && saves > saved) {
        saved = saves;
        const from = j - same - period;
        const spare = same + period - times * period;
        best = { start: spare > 0 && isMade(runs[from]) ? from + 1 : from, period, times };
      }
      same = 0;
    }
  }
  return best;
}

/** A repeat reads better from the stitches to the increase than the other way round: '[k2, m1] 19 times'. */
const isMade = (run: Run | undefined): boolean => run !== undefined && stitches[run.work].takes === 0;

const alike = (a: Run | undefined, b: Run | undefined): boolean =>
  a?.work === b?.work && a?.times === b?.times;

/** What the steps take from and leave on the needle; all have a fixed number of times. */
function takenBy(steps: readonly Step[]): { takes: number; makes: number } {
  let takes = 0;
  let makes = 0;
  for (const step of steps) {
    const times = 'times' in step ? step.times : 0;
    const one = 'work' in step ? stitches[step.work] : takenBy(step.repeat);
    takes += one.takes * times;
    makes += one.makes * times;
  }
  return { takes, makes };
}

/** Turns the widest plain stretch or repeat of the row into 'to end' or 'to last n stitches'. */
function openEnded(steps: readonly Step[]): Step[] {
  let widest = -1;
  let width = 0;
  steps.forEach((step, i) => {
    const { takes, makes } = takenBy([step]);
    if (canRunToEnd(step, takes === makes, steps.length) && takes > width) {
      widest = i;
      width = takes;
    }
  });
  const step = steps[widest];
  if (!step) return [...steps];
  const left = takenBy(steps.slice(widest + 1)).takes;
  const open: Step =
    'work' in step ? { work: step.work, until: { left } } : { repeat: step.repeat, until: { left } };
  return [...steps.slice(0, widest), open, ...steps.slice(widest + 1)];
}

/** Repeats that change the count keep their number of times: it is what she checks herself by. */
function canRunToEnd(step: Step, evenCount: boolean, length: number): boolean {
  if (!('times' in step)) return false;
  if (!('work' in step)) return evenCount;
  if (step.work === 'bo') return length === 1;
  return step.work === 'k' || step.work === 'p' ? step.times > 1 || length === 1 : false;
}
