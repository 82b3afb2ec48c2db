import { describe, expect, it } from 'vitest';
import { kindsIn, saidIn } from './said.ts';

describe('stated, said in a pattern,', () => {
  it('is read in brackets and in words', () => {
    expect(saidIn('(24 sts)')).toEqual([{ is: 'stated', stitches: 24 }]);
    expect(saidIn('There are now 24 stitches')).toEqual([{ is: 'stated', stitches: 24 }]);
  });

  it('is not read in what a row changes or works', () => {
    expect(kindsIn('Dec 24 sts')).toEqual(['row']);
    expect(kindsIn('K 24 sts')).toEqual(['row']);
  });
});
