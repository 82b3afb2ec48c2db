import type { Step } from './step.ts';

/**
 * How many stitch steps working a row may take at most, with so many stitches on the needle: a few nested repeats
 * can ask for more than a lifetime of them in very little text.
 */
export function stepWeight(steps: readonly Step[], onNeedle: number): number {
  let weight = 0;
  for (const step of steps) {
    if ('work' in step) weight += 1;
    else
      weight +=
        (1 + stepWeight(step.repeat, onNeedle)) * ('times' in step ? step.times : Math.max(1, onNeedle));
  }
  return weight;
}
