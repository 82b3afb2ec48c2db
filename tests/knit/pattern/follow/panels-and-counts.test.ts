import { describe, expect, it } from 'vitest';
import { readPattern } from '../../../../src/knit/pattern/read-pattern.ts';
import { rowsOf } from './rows-of.ts';

const linesOf = (...text: readonly string[]) => readPattern(text.join('\n')).lines;

/** Lines with a mark, each with its code; those that hang on another one. */
const told = (...text: readonly string[]): readonly string[] =>
  linesOf(...text).flatMap(({ line, faults, follows }) => [
    ...faults.map(({ code }) => `${line} ${code}`),
    ...(follows === undefined ? [] : [`${line} from ${follows}`]),
  ]);

const begun = ['BACK', 'Cast on 40 sts.'];

describe('a panel over so many stitches of a row', () => {
  it.each([
    'Next row: K13, cable pattern on next 14 sts, k13.',
    'Next row: K13, cable panel across next 14 sts, k13.',
    'Next row: K13, row 1 of cable panel over 14 sts, k to end.',
    'Next row: K13, work chart A over next 14 sts, k to end.',
    'K13, work row 3 of cable pattern on next 14 sts, k13.',
  ])('keeps its words and the count: %s', (line) => {
    const [row] = linesOf(...begun, line)[2]?.rows ?? [];
    expect(row?.own).toMatch(/K13/);
    expect(row?.after).toBe(40);
    expect(row?.steps).toEqual([
      { work: 'k', times: 13 },
      { work: 'patt', times: 14 },
      ...(line.endsWith('k13.') ? [{ work: 'k', times: 13 }] : [{ work: 'k', until: { left: 0 } }]),
    ]);
  });
  it('is told where the text gives no pattern, and what goes on in it hangs on that line', () => {
    const rows = [
      'Next row: K13, cable pattern on next 14 sts, k13.',
      'Next row: P13, cable pattern on next 14 sts, p13.',
    ];
    expect(told(...begun, ...rows, 'Work in pattern as set for 4 rows.', 'Knit 2 rows.')).toEqual([
      '3 fabric not known',
      '4 from 3',
      '5 from 3',
    ]);
  });
  it('is not where it gives one', () => {
    const panel = ['Cable panel', 'Row 1: p2, k10, p2.', 'Row 2: k2, p10, k2.'];
    expect(told(...panel, ...begun, 'Next row: K13, cable panel over next 14 sts, k13.')).toEqual([]);
  });
  it('is none without a number of stitches, nor where no pattern is called so', () => {
    expect(told(...begun, 'Next row: K13, cable pattern on the next sts, k13.')).toEqual([
      '3 stitch or repeat expected',
    ]);
    expect(told(...begun, 'Next row: K13, hearts over next 14 sts, k13.')).toEqual([
      '3 stitch or repeat expected',
    ]);
    expect(rowsOf(...begun, 'Next row: patt 20, k20.')).toEqual(['RS knit 40']);
  });
  it('takes no more than there is', () => {
    expect(told(...begun, 'Next row: K13, cable pattern on next 34 sts, k13.')).toEqual([
      '3 not enough stitches',
    ]);
  });
});

describe('moss stitch to the last stitches of a row', () => {
  it('is spelled, each stitch the other way round than it looks', () => {
    expect(
      rowsOf(
        ...begun,
        'Next row: k3, work in moss st to last 3 sts, k3.',
        'Next row: k3, work in moss st to last 3 sts, k3.',
      ),
    ).toEqual(['RS k3, [k1, p1] 17 times, k3 40', 'WS k3, [p1, k1] 17 times, k3 40']);
    expect(rowsOf('BACK', 'Cast on 13 sts.', 'Next row: work in moss st to last 2 sts, k2.')).toEqual([
      'RS k1, p1, k1, p1, k1, p1, k1, p1, k1, p1, k1, k2 13',
    ]);
    expect(rowsOf('BACK', 'Cast on 13 sts.', 'Next row: work in moss st to end.')).toEqual([
      'RS [k1, p1] 6 times, k1 13',
    ]);
    expect(rowsOf('BACK', 'Cast on 14 sts.', 'Next row: work 12 sts in moss st, k2.')).toEqual([
      'RS k1, p1, k1, p1, k1, p1, k1, p1, k1, p1, k1, p1, k2 14',
    ]);
  });
});

describe('a count that is stated', () => {
  it.each([
    '– 41 sts at the end of this row',
    '– 41 sts at end of row',
    '– 41 sts when all increases have been completed',
    '(41 sts when all increases have been worked)',
  ])('behind a row: %s', (count) => {
    const row = `Next row: k1, kfb, k to end ${count}.`;
    expect(told(...begun, row)).toEqual([]);
    expect(told(...begun, row.replace('41', '42'))).toEqual(['3 count contradicts']);
  });
  it('behind rows that are worked again', () => {
    const rows = ['Row 1: k1, kfb, k to end.', 'Row 2: knit.'];
    const again = 'Rep last 2 rows 4 more times – 45 sts at the end of this row.';
    expect(told(...begun, ...rows, again)).toEqual([]);
    expect(rowsOf(...begun, ...rows, again).length).toBe(10);
    expect(told(...begun, ...rows, again.replace('45', '46'))).toEqual(['5 count contradicts']);
  });
});

describe('what is cast on at the beginning of rows', () => {
  it.each([
    'Cast on 4 sts beg of next 2 rows.',
    'Cast on 4 sts beginning of the next 2 rows.',
    'Cast on 4 sts at the beg of the next 2 rows for the sleeves.',
  ])('is cast on beside what is there: %s', (line) => {
    expect(rowsOf(...begun, 'Knit 2 rows.', line).slice(2)).toEqual([
      'RS cast on 4 sts, knit to end 44',
      'WS cast on 4 sts, purl to end 48',
    ]);
    expect(told(...begun, 'Knit 2 rows.', line)).toEqual([]);
  });
  it('but begins a piece where no rows are named', () => {
    expect(
      linesOf('BACK', 'Cast on 30 sts, beginning with a knit row work 2 rows in st st.').at(-1)?.after,
    ).toBe(30);
  });
});
