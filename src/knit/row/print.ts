import { englishRowWords, type RowWords } from './row-words.ts';
import type { Step } from './step.ts';
import { caseOf } from './walk-step.ts';

/** A row in words: 'k2, k2tog, knit to end'. `parseRow` reads it back to the same steps. */
export function printRow(steps: readonly Step[], words: RowWords = englishRowWords()): string {
  return printSteps(steps, words, steps.length === 1, false);
}

/** A row as it is said to somebody who has the needle in hand: after a turn she is where it goes on. `printRow` says all. */
export const sayRow = (steps: readonly Step[], words: RowWords = englishRowWords()): string =>
  printSteps(steps, words, steps.length === 1, false, true);

/** `alone`: the one step of its row; `nested`: within a repeat; `said`: without what lies before the yarn. */
const printSteps = (
  steps: readonly Step[],
  words: RowWords,
  alone: boolean,
  nested: boolean,
  said = false,
): string => {
  const inside = (inner: readonly Step[]): string => printSteps(inner, words, false, true);
  return steps
    .map((step, i) =>
      caseOf(step, {
        works: (work, times) => (said && i === 0 && work === 'unworked' ? '' : words.stitches(work, times)),
        worksUntil: (work, left) =>
          alone && left === 0 ? words.wholeRow(work) : words.stitchesTo(work, left),
        repeats: (inner, times) => words.group(inside(inner), times),
        repeatsUntil: (inner, left) => words[nested ? 'groupTo' : 'repeatTo'](inside(inner), left),
      }),
    )
    .filter(Boolean)
    .join(words.comma);
};
