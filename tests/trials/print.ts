import type { TrialResult } from './explain-trials.ts';

const share = (n: number, of: number): string =>
  of === 0 ? '    –' : `${((100 * n) / of).toFixed(1).padStart(5)}`;

/** A table of shares in per cent, one line for each value of `by`. */
export function tableBy(results: readonly TrialResult[], by: 'kind' | 'fabric' | 'asked'): string {
  const names = [...new Set(results.map((result) => result[by]))];
  return [
    `${by.padEnd(18)}  trials  no count shows  first  among three  first after look`,
    ...names.map((name) =>
      lineOf(
        name,
        results.filter((result) => result[by] === name),
      ),
    ),
    lineOf('all', results),
  ].join('\n');
}

function lineOf(name: string, results: readonly TrialResult[]): string {
  const shown = results.filter((result) => result.shows);
  const of = (test: (result: TrialResult) => boolean) => share(shown.filter(test).length, shown.length);
  return [
    name.padEnd(18),
    String(results.length).padStart(6),
    share(results.length - shown.length, results.length).padStart(14),
    of((one) => one.firstBefore).padStart(5),
    of((one) => one.amongThree).padStart(11),
    of((one) => one.firstAfterLook).padStart(16),
  ].join('  ');
}
