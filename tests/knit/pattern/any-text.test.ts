import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { readPattern } from '../../../src/knit/pattern/read-pattern.ts';
import { parseRow } from '../../../src/knit/row/read/parse.ts';
import { workRow } from '../../../src/knit/row/work.ts';
import { loadFaults, saysFault } from '../../../src/words/fault.ts';
import { mutated, scrambledLine } from '../../arbitraries/pattern-lines.ts';
import { countingWork } from '../../counted-work.ts';
import { told } from '../../told.ts';

await loadFaults();

/** Lines tried in all; RIDGELINE_FUZZ=100000 for the long run. */
const lines = Number(process.env.RIDGELINE_FUZZ ?? 800);
const LONG = 600_000;

const garment = `Sizes: S (M, L)
Gauge: 20 sts and 28 rows = 10 cm in st st
BACK
Cast on 92 (100, 108) sts. Work in k2, p2 rib for 5 cm, inc 4 sts evenly across last row. (96 (104, 112) sts)
Row 1 (RS): *k1, p1; rep from * to last 2 sts, k2.
Row 2 and every alternate row: purl.
Row 3: k2, [yo, k2tog] 3 times, k to end. Rep rows 1-4 until piece measures 38 cm, ending with a WS row.
Shape armholes: BO 5 sts at beg of next 2 rows. Dec 1 st at each end of next and every foll alt row to 70 (78, 86) sts.
Next row: K 25, BO 20 (28, 36), k to end. Working on last 25 sts, dec 1 st at neck edge on next 3 rows. BO.
Rejoin yarn to rem sts and complete to match first side, reversing shaping.
LEFT FRONT
CO 46 (50, 54) sts. Work as for back to armhole, AT THE SAME TIME dec 1 st at neck edge every 4th row until 20 sts remain.`;

describe('any text', () => {
  it(
    'never makes the row reader throw, and what it reads can be worked or refused',
    () => {
      fc.assert(
        fc.property(scrambledLine, (line) => {
          const row = parseRow(line);
          if (row.ok) workRow(row.value, 40);
          else for (const found of row.faults) expect(saysFault(found)).not.toMatch(/^$|[{}]|NaN|undefined/);
        }),
        { numRuns: lines / 2, seed: 41 },
      );
    },
    LONG,
  );

  it(
    'never makes the pattern reader throw, and every row it plans comes out',
    () => {
      fc.assert(
        fc.property(fc.array(scrambledLine, { maxLength: 12 }), (list) => {
          const read = readPattern(`Cast on 24 sts.\n${list.join('\n')}`, { size: 1 });
          for (const { rows } of read.lines) {
            for (const { steps, before, after } of rows)
              expect(workRow(steps, before)).toMatchObject({ ok: true, value: { after } });
          }
        }),
        { numRuns: Math.ceil(lines / 24), seed: 42 },
      );
    },
    LONG,
  );

  it(
    'mutated never makes the pattern reader throw, and every piece it finds is a plan',
    () => {
      fc.assert(
        fc.property(mutated(garment), fc.nat(2), (text, size) => {
          const read = readPattern(text, { size });
          for (const { plan } of read.pieces) expect(plan.ok ? '' : `${told(plan.faults)}\n${text}`).toBe('');
        }),
        { numRuns: Math.ceil(lines / 48), seed: 43 },
      );
    },
    LONG,
  );
});

describe('what is done to read', () => {
  const countedWork = countingWork();

  /** How much more is done for a text of twice the length. */
  const forTwice = async (read: (n: number) => void, n: number): Promise<number> => {
    const work = (many: number) =>
      countedWork(
        () => read(many),
        () => read(10),
      );
    return (await work(2 * n)) / (await work(n));
  };

  const shapes: readonly (readonly [string, (n: number) => string])[] = [
    ['one long row', (n) => `k1, ${'p2, k2tog, yo, '.repeat(n)}k1`],
    ['stars without end', (n) => '*k1, p1; rep from * 2 times, '.repeat(n)],
    ['brackets that never close', (n) => '(k1, '.repeat(n)],
    ['words that nobody knows', (n) => 'wibble wobble, '.repeat(n)],
    ['numbers', (n) => '12 (13, 14) '.repeat(n)],
  ];
  it.each(shapes)('%s grows no faster than the text', async (_, make) => {
    expect(await forTwice((n) => parseRow(make(n)), 600)).toBeLessThanOrEqual(2.2);
  });

  it.each(shapes)('a pattern with %s grows no faster than the text', async (_, make) => {
    expect(await forTwice((n) => readPattern(`Cast on 20 sts.\n${make(n)}\n`), 300)).toBeLessThanOrEqual(2.2);
  });

  it('twice as many lines is at most 2.2 times as much', async () => {
    const lines = 'Row 1: *k2, p2; rep from * to end.\nNext row: k to last 2 sts, k2tog, m1.\n';
    expect(await forTwice((n) => readPattern(`Cast on 60 sts.\n${lines.repeat(n)}`), 60)).toBeLessThanOrEqual(
      2.2,
    );
  });
});
