import { describe, expect, it } from 'vitest';
import { kindsIn, saidIn } from './said.ts';

describe('shape, said in a pattern,', () => {
  it('is read with its edge and its beats', () => {
    expect(saidIn('Dec 1 st at each end of next and every foll 4th row to 60 sts')).toEqual([
      {
        is: 'shape',
        change: -1,
        edge: 'both',
        beats: [
          { first: 1, every: 1, times: 1 },
          { every: 4, toCount: 60 },
        ],
      },
    ]);
    expect(saidIn('Decrease 1 stitch at neck edge on next 3 rows')).toEqual([
      { is: 'shape', change: -1, edge: 'neck', beats: [{ first: 1, every: 1, times: 3 }] },
    ]);
  });

  it('is not read within a row, nor where it is spread over one', () => {
    expect(kindsIn('Inc in next st, k2')).toEqual(['row']);
    expect(kindsIn('Dec 6 sts evenly across next row')).toEqual(['evenly']);
  });
});
