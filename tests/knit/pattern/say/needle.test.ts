import { describe, expect, it } from 'vitest';
import { kindsIn, saidIn } from './said.ts';

describe('needle, said in a pattern,', () => {
  it('is read with its millimetres, or without a number', () => {
    expect(saidIn('Change to 4 mm needles')).toEqual([{ is: 'needle', mm: 4 }]);
    expect(saidIn('Change to larger ndls')).toEqual([{ is: 'needle' }]);
  });

  it('is not read in a side that faces, nor does it take what is cast on with it', () => {
    expect(kindsIn('with RS facing')).toEqual(['note']);
    expect(kindsIn('With larger needles, cast on 60 sts')).toEqual(['needle', 'cast on']);
  });
});
