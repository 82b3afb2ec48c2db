import { describe, expect, it } from 'vitest';
import { kindsIn, saidIn } from './said.ts';

describe('cast on, said in a pattern,', () => {
  it('is read in US and UK spelling', () => {
    expect(saidIn('Cast on 92 sts')).toEqual([{ is: 'cast on', stitches: 92 }]);
    expect(saidIn('CO 92 stitches')).toEqual([{ is: 'cast on', stitches: 92 }]);
  });

  it('is not read where stitches are cast on at an edge', () => {
    expect(kindsIn('Cast on 5 sts at beg of next 2 rows')).toEqual(['groups']);
  });
});
