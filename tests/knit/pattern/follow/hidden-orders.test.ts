import { describe, expect, it } from 'vitest';
import { readPattern } from '../../../../src/knit/pattern/read-pattern.ts';
import { rowsOf } from './rows-of.ts';

const marked = (...text: readonly string[]): readonly number[] =>
  readPattern(text.join('\n')).lines.flatMap(({ line, faults }) => (faults.length > 0 ? [line] : []));

const begun = ['BACK', 'Cast on 40 sts.', 'Knit 2 rows.'];

describe('an order in a sentence that was not understood', () => {
  it('is never passed over as talk, though nothing else of it speaks of knitting', () => {
    expect(
      marked(...begun, 'Minding the front band and the lapel, work to correspond with the drawing.'),
    ).toEqual([4]);
    expect(marked(...begun, 'Minding the front band and the lapel, look at the drawing.')).toEqual([]);
  });
});

describe('what stitches of a row are called, in brackets behind their number,', () => {
  it('says nothing of how they are worked', () => {
    const row = 'Next row: K 12 (right shoulder), bind off 16 sts, k 6 (front), p 6 (garter st border).';
    expect(rowsOf(...begun, row).at(-1)).toBe('RS k12, bind off 16 sts, k6, p6 24');
    expect(marked(...begun, row)).toEqual([]);
  });
  it('but a side, or work, does', () => {
    expect(marked(...begun, 'Work 2 rows in st st.', 'K 1 row (wrong side).')).toEqual([5]);
    expect(marked(...begun, 'Next row: K 12 (dec for sleeve), k 28.')).toEqual([4]);
  });
});

describe('a piece that nobody named', () => {
  const one = ['Cast on 40 sts.', 'Knit 4 rows.', 'Bind off.'];
  it('is the back that another one is worked as', () => {
    expect(rowsOf(...one, 'FRONT', 'Work as for back.').length).toBe(10);
  });
  it('but not where it has a name, or there are two', () => {
    expect(marked('SLEEVE', ...one, 'FRONT', 'Work as for back.')).toEqual([6]);
    expect(marked(...one, 'STRAP', ...one, 'FRONT', 'Work as for back.')).toEqual([9]);
  });
  it.each(['begin', 'beginning', 'beg'])('is bound off at the %s of rows', (word) => {
    expect(rowsOf(...begun, `Bind off 2 sts at ${word} of next 2 rows.`).at(-1)).toMatch(
      /^WS bind off 2 sts.* 36$/,
    );
  });
});

it('a numbered row that is knitted plain is worked again by its number', () => {
  const text = [
    'BACK',
    'Cast on 40 sts.',
    '1st row: Knit plain.',
    '2nd row: Purl.',
    'Repeat the first and second rows twice more.',
  ];
  expect(marked(...text)).toEqual([]);
  expect(rowsOf(...text).map((row) => row.slice(0, 2))).toEqual(['RS', 'WS', 'RS', 'WS', 'RS', 'WS']);
  expect(rowsOf(...text).at(-1)).toBe('WS purl 40');
});

describe('what stands in short words', () => {
  it.each(['Next: follow directions for the edge', 'Repeat above to make the second half.'])(
    'is no talk where it orders: %s',
    (words) => {
      expect(marked('FIRST SIDE', 'Cast on 40 sts.', 'Knit 4 rows.', words)).toEqual([4]);
      expect(marked('FIRST SIDE', 'Cast on 40 sts.', 'Knit 4 rows.', 'Bind off.', words)).toEqual([5]);
    },
  );
  it.each(['Bobbles (make 3)', 'Bobbles—Make 3', 'BOBBLES - make three.'])(
    'says how many are made: %s',
    (heading) => {
      for (const before of [[], ['BACK', 'Cast on 40 sts.', 'Knit 4 rows.', 'Bind off.']]) {
        const [last] = readPattern(
          [...before, heading, 'Cast on 10 sts.', 'Knit 2 rows.'].join('\n'),
        ).pieces.slice(-1);
        expect([last?.recipe.name, last?.recipe.makes]).toEqual(['Bobbles', 3]);
      }
    },
  );
});

describe('sides', () => {
  it('a purl row before a row that begins with a knit stitch begins on the wrong side (common practice, no published source)', () => {
    const sides = (row: string) =>
      rowsOf('BACK', 'Cast on 40 sts.', 'Purl 1 row.', row).map((one) => one.slice(0, 2));
    expect(sides('Next: k20, inc, k19.')).toEqual(['WS', 'RS']);
    expect(sides('Next row (WS): k20, p20.')).toEqual(['RS', 'WS']);
    expect(sides('Next row: p20, k20.')).toEqual(['RS', 'WS']);
  });
  it('a length that was not understood ends so that the next row is on the side that it says', () => {
    const text = ['BACK', 'Cast on 28 sts.', 'Work in wibble until piece measures about 12 in long.'];
    expect(marked(...text, 'Next row (RS): k9, bind off 10 sts, k9.')).toEqual([3]);
    expect(marked(...text, 'Next row (WS): k9, bind off 10 sts, k9.')).toEqual([3]);
    // one row of it is one row
    expect(
      marked(...text.slice(0, 2), 'Work 1 row in wibble.', 'Next row (RS): k9, bind off 10 sts, k9.').length,
    ).toBe(2);
  });
});
