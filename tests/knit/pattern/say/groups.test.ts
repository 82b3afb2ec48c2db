import { describe, expect, it } from 'vitest';
import { kindsIn, saidIn } from './said.ts';

describe('groups, said in a pattern,', () => {
  it('are read with their edge, their rows and their rhythm', () => {
    expect(saidIn('Bind off 5 sts at beg of next 2 rows')).toEqual([
      { is: 'groups', work: 'bo', edge: 'beginning', groups: [{ stitches: 5, rows: 2, every: 1 }] },
    ]);
    expect(saidIn('Cast on 5 sts at beg of next 2 rows')).toEqual([
      { is: 'groups', work: 'co', edge: 'beginning', groups: [{ stitches: 5, rows: 2, every: 1 }] },
    ]);
  });

  it('are not read in a row, nor where all is bound off', () => {
    expect(kindsIn('Bind off 5 sts, k to end')).toEqual(['row']);
    expect(kindsIn('Bind off rem 24 sts')).toEqual(['bind off']);
  });
});
