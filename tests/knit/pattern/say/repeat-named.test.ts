import { describe, expect, it } from 'vitest';
import { kindsIn, saidIn } from './said.ts';

describe('repeat named, said in a pattern,', () => {
  it('is read with its name and its rhythm', () => {
    expect(saidIn('Rep dec row every 4th row 3 times')).toEqual([
      { is: 'repeat named', name: 'dec', beats: [{ every: 4, counted: true, times: 3 }] },
    ]);
  });

  it('is read of a row that has a number, with all its rhythms', () => {
    expect(
      saidIn('Rep row 27 on every foll 8th row to 63 sts, then on every foll 6th row to 83 sts'),
    ).toEqual([
      {
        is: 'repeat named',
        name: '27',
        number: 27,
        beats: [
          { every: 8, toCount: 63 },
          { every: 6, toCount: 83 },
        ],
      },
    ]);
  });

  it('is not read where rows are counted', () => {
    expect(kindsIn('Rep last row 3 times')).toEqual(['repeat rows']);
    expect(kindsIn('Rep row 2 3 times')).toEqual(['repeat rows']);
  });
});
