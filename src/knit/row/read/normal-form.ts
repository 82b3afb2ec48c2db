import type { Step } from '../step.ts';
import { runOf } from '../stitches-of-steps.ts';
import { caseOf } from '../walk-step.ts';

/**
 * Steps in the one form in which a row says them: nothing worked no times, no repeat that goes round once,
 * no repeat of a single stitch ('[k2tog] 3 times' is k2tog, three times).
 */
export function normalForm(steps: readonly Step[]): Step[] {
  return steps.flatMap((step) =>
    caseOf<readonly Step[]>(step, {
      works: (_, times) => (times === 0 ? [] : [step]),
      worksUntil: () => [step],
      repeats: (inner, times) => (times === 0 ? [] : repeated(normalForm(inner), times)),
      repeatsUntil: (inner, left) => repeatedUntil(normalForm(inner), left),
    }),
  );
}

function repeated(inner: readonly Step[], times: number): readonly Step[] {
  const only = onlyRun(inner);
  if (only) return [{ work: only.work, times: only.times * times }];
  return inner.length === 0 || times === 1 ? inner : [{ repeat: inner, times }];
}

function repeatedUntil(inner: readonly Step[], left: number): readonly Step[] {
  const only = onlyRun(inner);
  if (only?.times === 1) return [{ work: only.work, until: { left } }];
  return inner.length === 0 ? inner : [{ repeat: inner, until: { left } }];
}

const onlyRun = ([first, ...more]: readonly Step[]) =>
  first !== undefined && more.length === 0 ? runOf(first) : undefined;
