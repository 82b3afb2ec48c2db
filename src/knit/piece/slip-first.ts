import type { Run } from '../row/shorten.ts';

/** A slipped selvedge: the row's first stitch is slipped, unless shaping needs it. */
export function slipFirst(runs: Run[]): void {
  const first = runs[0];
  if (!first || (first.work !== 'k' && first.work !== 'p')) return;
  runs.splice(0, 1);
  if (first.times > 1) runs.unshift({ work: first.work, times: first.times - 1 });
  runs.unshift({ work: 'sl', times: 1 });
}
