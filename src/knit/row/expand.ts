import type { StitchName } from '../stitch.ts';
import { stitches } from '../stitch.ts';
import type { Step } from './step.ts';

/**
 * The row stitch by stitch, in the order worked. Only for rows that `workRow` accepts:
 * what is left of a row that does not fit is not spelled out.
 */
export function expandRow(steps: readonly Step[], onNeedle: number): StitchName[] {
  const out: StitchName[] = [];
  let left = onNeedle;
  const take = (work: StitchName): boolean => {
    if (stitches[work].takes > left) return false;
    left -= stitches[work].takes;
    out.push(work);
    return true;
  };
  const walk = (list: readonly Step[]): boolean => list.every((step) => walkOne(step));
  const walkOne = (step: Step): boolean => {
    const once = 'work' in step ? () => take(step.work) : () => walk(step.repeat);
    if ('times' in step) {
      for (let i = 0; i < step.times; i += 1) if (!once()) return false;
      return true;
    }
    while (left > step.until.left) {
      const start = left;
      if (!once() || left === start) return false;
    }
    return left === step.until.left;
  };
  walk(steps);
  return out;
}
