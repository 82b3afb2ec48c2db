import { describe, expect, it } from 'vitest';
import { linesOf, partOf, said } from './rows-by-hand.ts';

/**
 * Rows as a leaflet says them: what is repeated once and then by its rows, a shaping by how often it comes and to how many
 * stitches, the count where it changes. Common practice, no published source.
 */

const DEC = 'k1, ssk, k to last 3 sts, k2tog, k1';
const INC = 'k1, m1l, k to last st, m1r, k1';

/** A case: what holds, the rows (`inc` and `dec` on both edges), and below it all that is said of them. */
const cases = (text: string): readonly (readonly [string, string, readonly string[]])[] =>
  text
    .trimEnd()
    .split(/\n {4}(?! )/)
    .slice(1)
    .map((one) => {
      const [head = '', ...lines] = one.split('\n').map((line) => line.trim());
      const [, holds = '', rows = ''] = /^(.*?): (.*)$/.exec(head) ?? [];
      return [holds, rows, lines] as const;
    });

function expectLines(holds: string, rows: string, wanted: readonly string[]): void {
  const spelled = rows.split('; ').map((row) => {
    if (row === 'inc') return `${INC} > by 2`;
    return row === 'dec' ? `${DEC} > by -2` : row;
  });
  const lines = said(20, spelled, holds.endsWith('[WS]') ? 'WS' : 'RS');
  const short = lines.map((line) =>
    line.replace(INC.replace(/\bk(?= to)/, 'knit'), 'INC').replace(DEC.replace(/\bk(?= to)/, 'knit'), 'DEC'),
  );
  expect(short).toEqual(wanted);
}

describe('rows that are alike', () => {
  it.each(
    cases(`
    two rows are said as they are: k; p
      Row 1 (RS): knit.
      Row 2 (WS): purl.
    three rows of one kind make no repeat: k x 3
      Row 1 (RS): knit.
      Row 2 (WS): knit.
      Row 3 (RS): knit.
    a pair is repeated, what is over stands behind it: k; p; k; p; k
      Row 1 (RS): knit.
      Row 2 (WS): purl.
      Rep rows 1 and 2 once more.
      Row 5 (RS): knit.
    a pair several times: k; p; k; p; k; p; k; p
      Row 1 (RS): knit.
      Row 2 (WS): purl.
      Rep rows 1 and 2, 3 times more.
    a wrong-side row that comes first stands by itself, the pairs from the right side on [WS]: p; k; p; k; p; k
      Row 1 (WS): purl.
      Row 2 (RS): knit.
      Row 3 (WS): purl.
      Rep rows 2 and 3 once more.
      Row 6 (RS): knit.
    a pair from the wrong side on where none goes on from the right side [WS]: p; k; p; k; k1, p to end
      Row 1 (WS): purl.
      Row 2 (RS): knit.
      Rep rows 1 and 2 once more.
      Row 5 (WS): k1, purl to end.
    four rows from the wrong side on are repeated as they stand [WS]: p; k; k; k; p; k; k; k
      Row 1 (WS): purl.
      Row 2 (RS): knit.
      Row 3 (WS): knit.
      Row 4 (RS): knit.
      Rep rows 1–4 once more.
    the block that saves most is repeated, not the first pair in it: k; p; k; p; k; k; k; p; k; p; k; k
      Row 1 (RS): knit.
      Row 2 (WS): purl.
      Row 3 (RS): knit.
      Row 4 (WS): purl.
      Row 5 (RS): knit.
      Row 6 (WS): knit.
      Rep rows 1–6 once more.
    of two that save as much the shorter one is repeated: k; p; k; p; k; p; k; p; k; k
      Row 1 (RS): knit.
      Row 2 (WS): purl.
      Rep rows 1 and 2, 3 times more.
      Row 9 (RS): knit.
      Row 10 (WS): knit.
    the count stands behind the row that changes it, and behind the repeat as it is then: dec; p; dec; p; dec; p; dec; p
      Row 1 (RS): DEC. (18 sts)
      Row 2 (WS): purl.
      Rep rows 1 and 2, 3 times more. (12 sts)
    `),
  )('%s', expectLines);

  it('24 rows are repeated as a block, more are said row by row', () => {
    const block = (rows: number) => Array.from({ length: rows }, (_, i) => `k${i + 1}, p to end`);
    const spelled = (rows: number) =>
      block(rows).map((_, i) => `Row ${i + 1} (${i % 2 === 0 ? 'RS' : 'WS'}): k${i + 1}, purl to end.`);
    expect(said(60, [...block(24), ...block(24)])).toEqual([...spelled(24), 'Rep rows 1–24 once more.']);
    const twice = said(60, [...block(26), ...block(26)]);
    expect(twice).toHaveLength(52);
    expect(twice.slice(0, 26)).toEqual(spelled(26));
  });
});

describe('a shaping in a rhythm', () => {
  it.each(
    cases(`
    is told by its row and how often it comes again, what is over behind it: k; p; inc; p; k; p; inc; p; k; p; inc; p; k; p
      Row 1 (RS): knit.
      Row 2 (WS): purl.
      Row 3 (RS): INC. (22 sts)
      Rep row 3 on every foll 4th row to 26 sts.
      Row 12 (WS): purl.
      Row 13 (RS): knit.
      Row 14 (WS): purl.
    changes its pace in one sentence: k; p; inc; p; k; p; inc; p; k; p; inc; p; k; p; inc; p; k; p; k; p; inc; p; k; p; k; p; inc; p
      Row 1 (RS): knit.
      Row 2 (WS): purl.
      Row 3 (RS): INC. (22 sts)
      Rep row 3 on every foll 4th row to 28 sts, then on every foll 6th row to 32 sts.
      Row 28 (WS): purl.
    that comes once only at its new pace is said as it is there: k; p; inc; p; k; p; inc; p; k; p; inc; p; k; p; k; p; inc; p
      Row 1 (RS): knit.
      Row 2 (WS): purl.
      Row 3 (RS): INC. (22 sts)
      Rep row 3 on every foll 4th row to 26 sts.
      Row 12 (WS): purl.
      Row 13 (RS): knit.
      Row 14 (WS): purl.
      Rep rows 13 and 14 once more.
      Row 17 (RS): INC. (28 sts)
      Row 18 (WS): purl.
    that comes twice is none yet: k; p; inc; p; k; p; inc; p; k; p
      Row 1 (RS): knit.
      Row 2 (WS): purl.
      Row 3 (RS): INC. (22 sts)
      Row 4 (WS): purl.
      Rep rows 1–4 once more. (24 sts)
      Row 9 (RS): knit.
      Row 10 (WS): purl.
    on every right side row is repeated with its wrong side row: k; p; inc; p; inc; p; inc; p
      Row 1 (RS): knit.
      Row 2 (WS): purl.
      Row 3 (RS): INC. (22 sts)
      Row 4 (WS): purl.
      Rep rows 3 and 4, 2 times more. (26 sts)
    that begins with the first row is repeated with its rows, since nothing says yet what lies between: inc; p; k; p; inc; p; k; p; inc; p; k; p
      Row 1 (RS): INC. (22 sts)
      Row 2 (WS): purl.
      Row 3 (RS): knit.
      Row 4 (WS): purl.
      Rep rows 1–4, 2 times more. (26 sts)
    is none over rows that are worked otherwise than those before it: k; p; inc; p; k; k; inc; p; k; k; inc; p; k; k
      Row 1 (RS): knit.
      Row 2 (WS): purl.
      Row 3 (RS): INC. (22 sts)
      Row 4 (WS): purl.
      Row 5 (RS): knit.
      Row 6 (WS): knit.
      Rep rows 3–6, 2 times more. (26 sts)
    is none where the row behind it is another than that before it: k; k; inc; p; k; p; inc; p; k; p; inc; p; k; p
      Row 1 (RS): knit.
      Row 2 (WS): knit.
      Row 3 (RS): INC. (22 sts)
      Row 4 (WS): purl.
      Row 5 (RS): knit.
      Row 6 (WS): purl.
      Rep rows 3–6, 2 times more. (26 sts)
    is none over rows that are not plain: k; k1, p to end; inc; p; k; k1, p to end; inc; p; k; k1, p to end; inc; p; k; k1, p to end
      Row 1 (RS): knit.
      Row 2 (WS): k1, purl to end.
      Row 3 (RS): INC. (22 sts)
      Row 4 (WS): purl.
      Rep rows 1–4, 2 times more. (26 sts)
      Row 13 (RS): knit.
      Row 14 (WS): k1, purl to end.
    that lies in the wrong side rows is repeated with its rows: k; inc; p; k; p; inc; p; k; p; inc; p; k; p
      Row 1 (RS): knit.
      Row 2 (WS): INC. (22 sts)
      Row 3 (RS): purl.
      Row 4 (WS): knit.
      Row 5 (RS): purl.
      Rep rows 2–5, 2 times more. (26 sts)
    of another shaping between is none: k; p; inc; p; k; p; dec; p; k; p; inc; p; k; p; dec; p; k; p
      Row 1 (RS): knit.
      Row 2 (WS): purl.
      Row 3 (RS): INC. (22 sts)
      Row 4 (WS): purl.
      Row 5 (RS): knit.
      Row 6 (WS): purl.
      Row 7 (RS): DEC. (20 sts)
      Row 8 (WS): purl.
      Rep rows 1–8 once more.
      Row 17 (RS): knit.
      Row 18 (WS): purl.
    begins where it begins, the pairs before it are repeated up to it: k; p; k; p; k; p; inc; p; k; p; inc; p; k; p; inc; p
      Row 1 (RS): knit.
      Row 2 (WS): purl.
      Rep rows 1 and 2, 2 times more.
      Row 7 (RS): INC. (22 sts)
      Rep row 7 on every foll 4th row to 26 sts.
      Row 16 (WS): purl.
    `),
  )('%s', expectLines);

  const EVERY_4 = [`${INC} > by 2`, 'p', 'k', 'p'];

  it('ends with its section: the same rows in the next one are told below its name', () => {
    const part = partOf(20, [
      { name: 'hip', rows: ['k', 'p', ...EVERY_4, ...EVERY_4] },
      { name: 'chest', rows: EVERY_4 },
    ]);
    expect(linesOf(part)).toEqual([
      'Hip, in stockinette stitch, 10 rows:',
      'Row 1 (RS): knit.',
      'Row 2 (WS): purl.',
      'Row 3 (RS): k1, m1l, knit to last st, m1r, k1. (22 sts)',
      'Row 4 (WS): purl.',
      'Rep rows 1–4 once more. (24 sts)',
      'Row 9 (RS): knit.',
      'Row 10 (WS): purl.',
      'Chest, in stockinette stitch, 4 rows:',
      'Row 11 (RS): k1, m1l, knit to last st, m1r, k1. (26 sts)',
      'Row 12 (WS): purl.',
      'Row 13 (RS): knit.',
      'Row 14 (WS): purl.',
    ]);
  });
});
