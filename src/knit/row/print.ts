import { englishRowWords, type RowWords } from './row-words.ts';
import type { Step } from './step.ts';

/** A row in words: 'k2, k2tog, knit to end'. `parseRow` reads it back to the same steps. */
export function printRow(steps: readonly Step[], words: RowWords = englishRowWords()): string {
  const only = steps.length === 1 ? steps[0] : undefined;
  if (only && 'work' in only && 'until' in only && only.until.left === 0) return words.wholeRow(only.work);
  return printSteps(steps, words, false);
}

const printSteps = (steps: readonly Step[], words: RowWords, nested: boolean): string =>
  steps.map((step) => printStep(step, words, nested)).join(words.comma);

function printStep(step: Step, words: RowWords, nested: boolean): string {
  if ('work' in step) {
    return 'times' in step
      ? words.stitches(step.work, step.times)
      : words.stitchesTo(step.work, step.until.left);
  }
  const inner = printSteps(step.repeat, words, true);
  if ('times' in step) return words.group(inner, step.times);
  return nested ? words.groupTo(inner, step.until.left) : words.repeatTo(inner, step.until.left);
}
