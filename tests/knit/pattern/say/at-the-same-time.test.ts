import { describe, expect, it } from 'vitest';
import { kindsIn, saidIn } from './said.ts';

describe('at the same time, said in a pattern,', () => {
  it('is read with when it begins, before what is shaped', () => {
    expect(saidIn('At the same time, when armhole measures 5 cm, dec 1 st at neck edge every row')).toEqual([
      { is: 'at the same time', after: { is: 'length', mm: 50, from: 'armhole' } },
      { is: 'shape', change: -1, edge: 'neck', beats: [{ first: 1, every: 1 }] },
    ]);
  });

  it('is not read of a time that is counted', () => {
    expect(kindsIn('Rep last 2 rows 5 times')).toEqual(['repeat rows']);
  });
});
