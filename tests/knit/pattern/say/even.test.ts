import { describe, expect, it } from 'vitest';
import { kindsIn, saidIn } from './said.ts';

describe('even, said in a pattern,', () => {
  it('is read with its fabric, its end and the side of its last row', () => {
    expect(saidIn('Work in st st until piece measures 38 cm, ending with a WS row')).toEqual([
      {
        is: 'even',
        fabric: { is: 'named', name: 'stocking' },
        until: { is: 'length', mm: 380, from: 'start', end: 'WS' },
      },
    ]);
    expect(saidIn('Knit even for 6 rows')).toEqual([
      { is: 'even', fabric: { is: 'knit on' }, until: { is: 'rows', n: 6 } },
    ]);
  });

  it('is not read in a row, nor in rows that are counted', () => {
    expect(kindsIn('K 3, p 2')).toEqual(['row']);
    expect(kindsIn('Work 28 sts')).toEqual(['row']);
    expect(kindsIn('Knit 6 rows')).toEqual(['rows']);
  });
});
