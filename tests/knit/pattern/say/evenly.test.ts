import { describe, expect, it } from 'vitest';
import { kindsIn, saidIn } from './said.ts';

describe('evenly, said in a pattern,', () => {
  it('is read with its row', () => {
    expect(saidIn('Inc 6 sts evenly across next row')).toEqual([{ is: 'evenly', change: 6, on: 'next' }]);
    expect(saidIn('Dec 6 sts evenly in last row of rib')).toEqual([{ is: 'evenly', change: -6, on: 'last' }]);
  });

  it('is not read at an edge', () => {
    expect(kindsIn('Inc 1 st at each end of next row')).toEqual(['shape']);
  });
});
