import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { expandRow } from '../../../src/knit/row/expand.ts';
import { printRow } from '../../../src/knit/row/print.ts';
import { addRun, type Run, shorten } from '../../../src/knit/row/shorten.ts';
import { workRow } from '../../../src/knit/row/work.ts';
import { stitches } from '../../../src/knit/stitch.ts';
import { share } from '../../by-turns.ts';

const runsOf = (text: string): Run[] => {
  const runs: Run[] = [];
  for (const one of text.split(' ')) {
    const found = /^(k|p|sl)(\d+)$/.exec(one);
    addRun(runs, (found ? found[1] : one) as Run['work'], found ? Number(found[2]) : 1);
  }
  return runs;
};

const said = (text: string) => printRow(shorten(runsOf(text)));

describe('the shortest wording of a row', () => {
  it('says the same stitches in the same order', () => {
    const run = fc.record({
      work: fc.constantFrom('k', 'p', 'k2tog', 'ssk', 'yo', 'm1', 'sl'),
      times: fc.integer({ min: 1, max: 5 }),
    });
    fc.assert(
      fc.property(fc.array(run, { minLength: 1, maxLength: 40 }), (list) => {
        const runs = list as Run[];
        const flat = runs.flatMap((r) => Array.from({ length: r.times }, () => r.work));
        const count = flat.reduce((sum, s) => sum + stitches[s].takes, 0);
        const steps = shorten(runs);
        expect(workRow(steps, count).ok).toBe(true);
        expect(expandRow(steps, count)).toEqual(flat);
      }),
      { numRuns: share(2000) },
    );
  });

  it('says what runs to the end or to the last stitches', () => {
    expect(said('k50')).toBe('knit');
    expect(said('k2 k2tog k46')).toBe('k2, k2tog, knit to end');
    expect(said('k2 ssk k42 k2tog k2')).toBe('k2, ssk, knit to last 4 sts, k2tog, k2');
    expect(said('p44 ssp p2')).toBe('purl to last 4 sts, ssp, p2');
  });

  it('says of the last stitches that they run to the end where they are two and none are wider; one is counted', () => {
    expect(said('p1 k2')).toBe('p1, knit to end');
    expect(said('p1 k1')).toBe('p1, k1');
    expect(said('k2 p2')).toBe('k2, purl to end');
    expect(said('k3 p2')).toBe('k3, p2');
    // before the last ones eight are as far as is looked for from the end
    expect(said('k8 p2')).toBe('knit to last 2 sts, p2');
    expect(said('k7 p2')).toBe('k7, p2');
    expect(said('k1')).toBe('knit');
    expect(said('k2tog')).toBe('k2tog');
  });

  it('folds ribs, and says what is left of the last repeat', () => {
    expect(said('k2 p2 k2 p2 k2 p2 k2')).toBe('*k2, p2; repeat from * to last 2 sts, k2');
    expect(said('k1 p1 k1 p1 k1')).toBe('*k1, p1; repeat from * to last st, k1');
  });

  it('counts the repeats that change the count', () => {
    expect(said('k1 m1 k2 m1 k2 m1 k2 m1 k1')).toBe('k1, m1, [k2, m1] 3 times, k1');
  });

  it('folds what saves most, the earliest and shortest of equals', () => {
    expect(said('k1 p1 k1 p1 k2 p3 k2 p3 k2 p3')).toBe('[k1, p1] 2 times, *k2, p3; repeat from * to end');
    expect(said('k1 p1 k1 p1 k3 k2tog k1 p1 k1 p1 k9')).toBe(
      '[k1, p1] 2 times, k3, k2tog, [k1, p1] 2 times, knit to end',
    );
    expect(said('k2tog yo k2tog yo k2tog yo')).toBe('*k2tog, yo; repeat from * to end');
    expect(said('k5 p5')).toBe('k5, purl to end');
    expect(said('k5 ssk')).toBe('k5, ssk');
    expect(said('k8 ssk')).toBe('knit to last 2 sts, ssk');
    expect(said('k7 ssk')).toBe('k7, ssk');
    expect(said('k2tog')).toBe('k2tog');
    expect(said('sl9')).toBe('sl9');
  });

  it('says the rib between button holes as a repeat of its own, whatever the gaps are', () => {
    const rib = (pairs: number) => `${'p1 k1 '.repeat(pairs)}p1`;
    const holes = (...gaps: number[]) =>
      said(`k1 p1 bo ${gaps.map((gap) => `${rib(gap)} bo`).join(' ')} ${'p1 k1 '.repeat(20).trim()}`);
    const gap = (pairs: number) => `[p1, k1] ${pairs} times, p1, bind off 1 st`;
    expect(holes(6, 6, 5, 5, 6)).toBe(
      `k1, p1, bind off 1 st, ${[6, 6, 5, 5, 6].map(gap).join(', ')}, *p1, k1; repeat from * to end`,
    );
    expect(holes(4, 4, 4)).toBe(
      'k1, [p1, bind off 1 st, [p1, k1] 4 times] 3 times, p1, bind off 1 st, *p1, k1; repeat from * to end',
    );
  });

  it('takes two of a pair for no repeat of its own, three for one', () => {
    const twice = (pairs: number) => said(`${`${'p1 k1 '.repeat(pairs)}k2tog yo `.repeat(2)}k1`.trim());
    expect(twice(1)).toBe('*p1, k1, k2tog, yo; repeat from * to last st, k1');
    expect(twice(2)).toBe('*p1, k1, p1, k1, k2tog, yo; repeat from * to last st, k1');
    expect(twice(3)).toBe(
      '*p1, k1; repeat from * to last 11 sts, k2tog, yo, [p1, k1] 3 times, k2tog, yo, k1',
    );
  });

  it('looks for repeats of twelve runs at the most', () => {
    const runs = ['k1', 'p2', 'k3', 'p4', 'k5', 'p6', 'k7', 'p8', 'k9', 'p10', 'k11', 'p12', 'k13', 'p14'];
    const twice = (of: number) => said([...runs.slice(0, of), ...runs.slice(0, of)].join(' '));
    expect(twice(12)).toMatch(/^\*k1, p2, .* p12; repeat from \* to end$/);
    expect(twice(14)).not.toContain('repeat');
  });

  it('a turn ends it: what lies beyond is left, and counted where the row runs up to it', () => {
    const turned = (text: string, beyond: number) =>
      printRow(shorten([...runsOf(text), { work: 'unworked', times: beyond }]));
    expect(turned('k30', 5)).toBe('knit to last 5 sts, turn');
    expect(turned('k2 ssk k30', 5)).toBe('k2, ssk, knit to last 5 sts, turn');
    expect(printRow(shorten([{ work: 'unworked', times: 5 }]))).toBe('leave 5 sts unworked');
  });

  it('runs are joined, and none of no stitches added', () => {
    const runs: Run[] = [];
    addRun(runs, 'p', 0);
    addRun(runs, 'k', 2);
    addRun(runs, 'k', 3);
    addRun(runs, 'p', -1);
    addRun(runs, 'p', 1);
    expect(runs).toEqual([
      { work: 'k', times: 5 },
      { work: 'p', times: 1 },
    ]);
  });
});
