import { describe, expect, it } from 'vitest';
import { readPattern } from '../../../src/knit/pattern/read-pattern.ts';
import { stripesTold } from '../../../src/knit/written/read-stripes.ts';

const text = (lines: readonly string[]) =>
  [
    'Sizes: S (M, L)',
    '',
    ...lines,
    '',
    'BACK',
    'With 4 mm needles, cast on 40 (44, 48) sts.',
    'Row 1 (RS): knit.',
    'Row 2 (WS): purl.',
    'Rep rows 1 and 2, 6 (7, 8) times more.',
    'Row 15 (17, 19) (RS): Bind off all sts.',
    '',
    'SLEEVE (make 2)',
    'With 4 mm needles, cast on 20 sts.',
    'Row 1 (RS): knit.',
    'Row 2 (WS): purl.',
    'Rep rows 1 and 2, 6 times more.',
    'Row 15 (RS): Bind off all sts.',
  ].join('\n');

const told = (size: number, ...lines: readonly string[]) => {
  const read = readPattern(text(lines), { size });
  expect(read.lines.flatMap(({ faults }) => faults)).toEqual([]);
  return stripesTold(read).map(
    ({ piece, make, part, row, stripes }) =>
      `${piece}.${make}.${part} from ${row}: ${stripes.map((one) => `${one.rows} ${one.colour}`).join(' ')}`,
  );
};

describe('which rows are in which colours, in a pattern as it is written here', () => {
  it('in each size by its own rows', () => {
    const line =
      'Stripes, Back: rows 1 to 2 in Sea; rows 3 to 14 (16, 18): 3 rows in red, dark, 2 rows in Sea, in turn; bind off in Sea.';
    for (const size of [0, 2])
      expect(told(size, line)).toEqual(['0.1.0 from 1: 1 Sea', '0.1.0 from 3: 3 red, dark 2 Sea']);
  });

  it('only in the sizes and the copies that they are told for', () => {
    const lines = [
      'Sizes M and L only: Stripes, Sleeve, no. 2: row 5 in A.',
      'Size S only: Stripes, Sleeve: rows 1 to 14 in B; cast off in B.',
    ];
    expect(told(0, ...lines)).toEqual(['1.1.0 from 1: 1 B', '1.2.0 from 1: 1 B']);
    expect(told(1, ...lines)).toEqual(['1.2.0 from 5: 1 A']);
  });

  it('only in sizes that have those rows', () => {
    const line = 'Stripes, Back: rows 1 to 2 in Sea; rows – (15, 17) to – (16, 18) in red.';
    expect(told(0, line)).toEqual(['0.1.0 from 1: 1 Sea']);
    expect(told(2, line)).toEqual(['0.1.0 from 1: 1 Sea', '0.1.0 from 3: ', '0.1.0 from 17: 1 red']);
    expect(told(0, 'Stripes, Back: rows – (15, 17) to – (16, 18) in red.')).toEqual([]);
    expect(told(1, 'Stripes, Back: rows – (15, 17) to – (16, 18) in red.')).toEqual(['0.1.0 from 15: 1 red']);
  });
  it('rows between them have none', () => {
    expect(told(0, 'Stripes, Back: rows 1 to 2 in A; rows 9 to 10 in A.')).toEqual([
      '0.1.0 from 1: 1 A',
      '0.1.0 from 3: ',
      '0.1.0 from 9: 1 A',
    ]);
  });

  it('of a piece that there is none of they are left', () => {
    expect(told(0, 'Stripes, Collar: rows 1 to 2 in A.')).toEqual([]);
  });
});
