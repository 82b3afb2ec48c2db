import { describe, expect, it } from 'vitest';
import { kindsIn, saidIn } from './said.ts';

describe('bind off, said in a pattern,', () => {
  it('is read in US and UK words', () => {
    expect(saidIn('Bind off rem 24 sts in pattern')).toEqual([{ is: 'bind off', stitches: 24, rest: true }]);
    expect(saidIn('Cast off all sts loosely')).toEqual([{ is: 'bind off', rest: true }]);
  });

  it('is not read where the row goes on', () => {
    expect(kindsIn('Bind off 5 sts, k to end')).toEqual(['row']);
    expect(kindsIn('Bind off 5 sts at beg of next 2 rows')).toEqual(['groups']);
  });
});
