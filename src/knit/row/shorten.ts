import { type StitchName, stitches } from '../stitch.ts';
import type { Step } from './step.ts';
import { runOf, type TakenAndMade, takenAndMade } from './stitches-of-steps.ts';
import { caseOf } from './walk-step.ts';

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
  const joined = joinRuns(runs);
  const last = joined.at(-1);
  if (last?.work !== 'unworked' || joined.length === 1) return openEnded(fold(joined), 0);
  const worked = openEnded(fold(joined.slice(0, -1)), last.times);
  return [...worked, { work: 'unworked', until: { left: 0 } }];
}

/** The shortest wording of a row that is known stitch by stitch, in the order worked. */
export function shortenWorks(works: readonly StitchName[]): Step[] {
  const runs: Run[] = [];
  for (const work of works) addRun(runs, work, 1);
  return shorten(runs);
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
  const once = runs.slice(start, start + period);
  const inner = holdsRepeat(once) ? fold(once) : once.map(({ work, times: n }): Step => ({ work, times: n }));
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

/**
 * The repeat that saves most runs; the earliest and shortest of equals. Two of a long one are not joined where that
 * tears a shorter repeat within them: between two button holes lie '[p1, k1] 6 times', whatever the next gap is.
 */
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
        const earliest = j - same - period;
        const spare = same + period - times * period;
        const from = untorn(runs, { start: earliest, period, times }, spare);
        if (from !== undefined) {
          saved = saves;
          best = { start: spare > 0 && isMade(runs[from]) ? from + 1 : from, period, times };
        }
      }
      same = 0;
    }
  }
  return best;
}

/** Where it begins, `spare` runs later at most, so that it breaks off no shorter repeat within it. */
function untorn(runs: readonly Run[], { start, period, times }: Found, spare: number): number | undefined {
  const goesOn = (at: number): boolean =>
    [1, 2].every((n) => runs[at - n] !== undefined && alike(runs[at - n], runs[at - n + 2]));
  for (let from = start; from <= start + spare; from += 1) {
    if (!holdsRepeat(runs.slice(from, from + period))) return from;
    if (times > 2 && !goesOn(from) && !goesOn(from + period * times)) return from;
  }
  return undefined;
}

/** A pair that is worked three times or more: 'p1, k1, p1, k1, p1, k1' is sooner read as a repeat of its own. */
function holdsRepeat(runs: readonly Run[]): boolean {
  const alikeFrom = (i: number): boolean => [0, 1, 2, 3].every((n) => alike(runs[i + n], runs[i + n + 2]));
  return runs.some((_, i) => alikeFrom(i));
}

/** A repeat reads better from the stitches to the increase than the other way round: '[k2, m1] 19 times'. */
const isMade = (run: Run | undefined): boolean => run !== undefined && stitches[run.work].takes === 0;

const alike = (a: Run | undefined, b: Run | undefined): boolean =>
  a?.work === b?.work && a?.times === b?.times;

/** Turns the widest stretch of the row, where it is plain or a repeat, into 'to end' or 'to last n stitches'; `behind` lie beyond a turn. */
function openEnded(steps: readonly Step[], behind: number): Step[] {
  const spans = steps.map((step) => fixedCount([step]));
  const width = Math.max(...spans.map(({ takes }) => takes));
  const alone = behind > 0 ? 2 : steps.length;
  const widest = steps.findIndex((step, i) => {
    const { takes, makes } = spans[i] ?? { takes: 0, makes: 0 };
    const worthIt = !runOf(step) || takes >= WORTH_RUNNING || i === steps.length - 1;
    return takes === width && worthIt && canRunToEnd(step, takes === makes, alone);
  });
  const step = steps[widest];
  if (!step) return [...steps];
  const left = behind + fixedCount(steps.slice(widest + 1)).takes;
  return [...steps.slice(0, widest), goingOn(step, left), ...steps.slice(widest + 1)];
}

/** Fewer stitches than this before the row's last are sooner counted than looked for from the end. */
const WORTH_RUNNING = 8;

/** Folded runs have a fixed number of times, all of them. */
const fixedCount = (steps: readonly Step[]): TakenAndMade => takenAndMade(steps) ?? { takes: 0, makes: 0 };

/** The step, worked until `left` stitches are left. */
function goingOn(step: Step, left: number): Step {
  const stitch = (work: StitchName): Step => ({ work, until: { left } });
  const repeat = (inner: readonly Step[]): Step => ({ repeat: inner, until: { left } });
  return caseOf(step, { works: stitch, worksUntil: stitch, repeats: repeat, repeatsUntil: repeat });
}

/** Repeats that change the count keep their number of times: it is what she checks herself by. */
const canRunToEnd = (step: Step, evenCount: boolean, length: number): boolean =>
  caseOf(step, {
    works: (work, times) =>
      length === 1
        ? work === 'bo' || work === 'k' || work === 'p'
        : times > 1 && (work === 'k' || work === 'p'),
    worksUntil: () => false,
    repeats: () => evenCount,
    repeatsUntil: () => false,
  });
