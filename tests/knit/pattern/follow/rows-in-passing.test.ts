import { describe, expect, it } from 'vitest';
import { readPattern } from '../../../../src/knit/pattern/read-pattern.ts';
import { rowsOf } from './rows-of.ts';

/** Lines with a mark, each with its code; those that follow from another one. */
const told = (...text: readonly string[]): readonly string[] =>
  readPattern(text.join('\n')).lines.flatMap(({ line, faults, follows }) => [
    ...faults.map(({ code }) => `${line} ${code}`),
    ...(follows === undefined ? [] : [`${line} from ${follows}`]),
  ]);

const begun = ['BACK', 'Cast on 30 sts.'];
const last = (line: string): readonly string[] => rowsOf(...begun, 'Purl 2 rows.', line).slice(2);

describe('a row that begins with a slipped stitch, said behind it,', () => {
  it.each([
    'Next row: K back, slipping the 1st st.',
    'Next row: K back, slipping first st.',
    'Next row: knit across, slipping the first st.',
    'K to end, slipping 1st st.',
    'Next row: k2, p to end, slipping the first st.',
  ])('is told, and slips no last one: %s', (line) => {
    expect(told(...begun, line)).toEqual(['3 stitch or repeat expected']);
  });
  it('slips at its end where it says so', () => {
    expect(last('Next row: knit to last st, sl 1.')).toEqual(['RS knit to last st, sl1 30']);
  });
});

describe('a row across the whole of it', () => {
  it.each([
    'across entire row',
    'across the entire row',
    'across the whole row',
    'across this row',
    'across row',
  ])('k %s', (words) => {
    expect(last(`Next row: K ${words}.`)).toEqual(['RS knit 30']);
  });
});

describe('rows by all their numbers', () => {
  const four = ['Row 1: knit.', 'Row 2: purl.', 'Row 3: k1, p to end.', 'Row 4: p1, k to end.'];
  it.each([
    'Repeat 1st, 2nd, 3rd and 4th rows twice.',
    'Repeat rows 1, 2, 3 and 4 twice.',
    'Repeat 1st to 4th rows twice.',
  ])('%s', (line) => {
    expect(rowsOf(...begun, ...four, line).length).toBe(12);
    expect(told(...begun, ...four, line)).toEqual([]);
  });
  it('for the whole garment they are its pattern', () => {
    for (const of of ['for entire sweater', 'throughout the entire piece'])
      expect(told(...begun, ...four, `Repeat these 4 rows ${of}.`)).toEqual([]);
  });
});

it('stocking stitch is spelled in brackets', () => {
  const line = 'Cont in (1 row k, 1 row p), inc 1 st at both ends of next row and foll 4th row.';
  expect(told(...begun, line)).toEqual([]);
  expect(last(line).map((row) => row.slice(0, 2))).toEqual(['RS', 'WS', 'RS', 'WS', 'RS']);
  expect(last(line)[1]).toBe('WS purl 32');
});

it('how many pieces are worked is no row of so many stitches', () => {
  for (const line of ['Now work two backs for the pockets.', 'Work 2 backs.', 'Work 3 back.'])
    expect(rowsOf(...begun, line).filter((row) => !row.includes('own'))).toEqual([]);
  expect(rowsOf(...begun, 'Next row: work 28, k2.')).toEqual(['RS knit 30']);
});

describe('rows of a piece whose cast-on was not understood', () => {
  const unread = ['BACK', 'With 1 strand each colour [doubled throughout] cast on [84 sts] 88 sts [92 sts].'];
  it('are told to follow from it', () => {
    expect(told(...unread, 'Row 1: k2, p2 across row.')).toContain('3 from 2');
    expect(told(...unread, 'Row 1: k2, p2 across row.')).toContain('3 nothing on the needle');
  });
  it('but not where another cast-on begins them', () => {
    expect(told(...unread, 'Cast on 40 sts.', 'Row 1: *k2, p2; rep from * to end.')).not.toContain(
      '4 from 2',
    );
    expect(told('Lace', 'Row 1: k2, p2.', 'Row 2: k2, p2.', ...begun)).toEqual([]);
  });
});

describe('behind a cast-on that was not understood', () => {
  const unread = ['BACK', 'With 1 strand each colour [doubled throughout] cast on [84 sts] 88 sts [92 sts].'];
  it.each([
    'On next row K 20, bind off 24 sts loosely, K 20.',
    'On next purled row, P 31, K 2, P 31.',
    'Fasten thread at beg of the other shoulder and work in same manner.',
  ])('nothing that speaks of work is passed over: %s', (line) => {
    expect(told(...unread, line)).toContain('3 stitch or repeat expected');
  });
  it('until stitches are on the needle', () => {
    expect(
      told(
        ...unread,
        'Cast on 40 sts.',
        'Knit 2 rows.',
        'Bind off.',
        'All pieces are worked in the same yarn.',
      ),
    ).toEqual(['2 stitch or repeat expected']);
  });
});

describe('what was not known before the shaping of another piece', () => {
  const text = [
    'BACK',
    'Cast on 40 sts.',
    'Work in st st for 4 rows.',
    'Shape armholes',
    'Bind off 3 sts at beg of next 2 rows.',
    'Work 6 rows. Bind off.',
    'FRONT',
    'Cast on 40 sts.',
  ];
  it('is not known behind it', () => {
    const rows = rowsOf(...text, 'Twiddle in waves 4 rows.', 'Shape armholes as for back.', 'Work 2 rows.');
    expect(rows.at(-1)).toBe('WS work in pattern 34');
    const known = rowsOf(...text, 'Work 4 rows in garter st.', 'Shape armholes as for back.', 'Work 2 rows.');
    expect(known.at(-1)).toBe('WS purl 34');
  });
});

it('the last row of the other side lies on the side that is said, or it is told', () => {
  const neck = (n: number) => [
    ...begun,
    'Work in st st for 10 rows.',
    `Next row: K10, bind off 10, k10. Work over these last 10 sts for ${n} rows. Break off.`,
    'Attach yarn to opposite side of neck edge, and work other shoulder to correspond, ending with a p row.',
  ];
  expect(told(...neck(5))).toEqual([]);
  expect(told(...neck(6))).toEqual(['5 side differs']);
});
