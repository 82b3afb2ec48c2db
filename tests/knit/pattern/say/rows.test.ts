import { describe, expect, it } from 'vitest';
import { kindsIn, saidIn } from './said.ts';

describe('rows, said in a pattern,', () => {
  it('are read with their number, a ridge as two', () => {
    expect(saidIn('Knit 6 rows')).toEqual([
      { is: 'rows', n: 6, items: [{ is: 'stitches to', work: 'k', goal: { left: 'what follows' } }] },
    ]);
    expect(saidIn('K 3 ridges')).toEqual([
      { is: 'rows', n: 6, items: [{ is: 'stitches to', work: 'k', goal: { left: 'what follows' } }] },
    ]);
  });

  it('are not read in stitches', () => {
    expect(kindsIn('K 6 sts')).toEqual(['row']);
    expect(kindsIn('Purl 6')).toEqual(['row']);
  });
});
