import type { Step } from './step.ts';

/**
 * Steps in the one form in which a row says them: nothing worked no times, no repeat that goes round once,
 * no repeat of a single stitch ('[k2tog] 3 times' is k2tog, three times).
 */
export function normalForm(steps: readonly Step[]): Step[] {
  return steps.flatMap((step): Step[] => {
    if ('work' in step) return 'times' in step && step.times === 0 ? [] : [step];
    const inner = normalForm(step.repeat);
    if (inner.length === 0 || ('times' in step && step.times === 0)) return [];
    const only = inner.length === 1 ? inner[0] : undefined;
    if (only && 'work' in only && 'times' in only) {
      if ('times' in step) return [{ work: only.work, times: only.times * step.times }];
      if (only.times === 1) return [{ work: only.work, until: step.until }];
    }
    if ('times' in step) return step.times === 1 ? inner : [{ repeat: inner, times: step.times }];
    return [{ repeat: inner, until: step.until }];
  });
}
