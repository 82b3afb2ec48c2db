import { describe, expect, it } from 'vitest';
import { kindsIn, saidIn } from './said.ts';

describe('row, said in a pattern,', () => {
  it('is read with its number, its side and what it is like', () => {
    expect(saidIn('Row 3 (RS): k2, k2tog')).toEqual([
      {
        is: 'row',
        label: { rows: [3], side: 'RS' },
        items: [
          { is: 'stitches', work: 'k', times: 2 },
          { is: 'stitches', work: 'k2tog', times: 1 },
        ],
      },
    ]);
    expect(saidIn('Next row: as row 2')).toEqual([{ is: 'row', label: { rows: [] }, items: [], like: 2 }]);
  });

  it('is not read where a labelled row is shaped over several', () => {
    expect(kindsIn('Row 4: dec 1 st at each end of this and every 3rd row 14 times more')).toEqual(['shape']);
    expect(kindsIn('These 2 rows form rib')).toEqual(['named rows']);
  });
});
