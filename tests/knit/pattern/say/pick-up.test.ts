import { describe, expect, it } from 'vitest';
import { kindsIn, saidIn } from './said.ts';

describe('pick up, said in a pattern,', () => {
  it('is read with the edge in the words of the pattern', () => {
    expect(saidIn('Pick up and k 72 sts along neck edge')).toEqual([
      {
        is: 'pick up',
        items: [{ is: 'stitches', work: 'pu', times: 72 }],
        edges: [{ stitches: 72, along: 'neck edge' }],
      },
    ]);
  });

  it('is not read where stitches only come from a holder', () => {
    expect(kindsIn('K 12 from holder')).toEqual(['row']);
  });
});
