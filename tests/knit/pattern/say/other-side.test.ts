import { describe, expect, it } from 'vitest';
import { kindsIn, saidIn } from './said.ts';

describe('other side, said in a pattern,', () => {
  it('is read with whether its shaping is turned round', () => {
    expect(saidIn('Complete other side to match, reversing shaping')).toEqual([
      { is: 'other side', reversing: true },
    ]);
    expect(saidIn('Work second side as first')).toEqual([{ is: 'other side', reversing: false }]);
  });

  it('is not read of another piece', () => {
    expect(kindsIn('Complete as for back')).toEqual(['as for']);
  });
});
