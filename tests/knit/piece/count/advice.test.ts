import { describe, expect, it } from 'vitest';
import { signFor } from '../../../../src/knit/piece/count/advice.ts';
import type { Slip } from '../../../../src/knit/piece/count/slip.ts';

describe('the sign of a slip', () => {
  const slip = (by: number): Slip => ({
    cause: 'cast-on miscounted',
    rows: [],
    times: Math.abs(by),
    by,
    weight: 1,
    lie: () => {
      throw new Error('where it lies is not asked');
    },
  });

  it('of a cast-on that was miscounted is whether there were too many or too few', () => {
    expect(signFor(slip(2), [1, 2, 3, 4, 5, 6, 7], [0, 9])).toEqual({
      code: 'cast-on miscounted',
      figures: { rows: '1, 2, 3, 4, 5, 6', more: 1, row: 0, times: 2, from: 1, to: 9, way: 'many' },
    });
    expect(signFor(slip(-1), [], [4, 9]).figures).toEqual({
      rows: '',
      more: 0,
      row: 0,
      times: 1,
      from: 5,
      to: 9,
      way: 'few',
    });
  });
});
