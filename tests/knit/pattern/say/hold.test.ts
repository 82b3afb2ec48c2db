import { describe, expect, it } from 'vitest';
import { kindsIn, saidIn } from './said.ts';

describe('hold, said in a pattern,', () => {
  it('is read with what is laid by', () => {
    expect(saidIn('Place rem 24 sts on holder')).toEqual([{ is: 'hold', which: 'rest', stitches: 24 }]);
    expect(saidIn('Leave centre 17 sts on a holder')).toEqual([
      { is: 'hold', which: 'centre', stitches: 17 },
    ]);
  });

  it('is not read of a marker, nor of slipped stitches', () => {
    expect(kindsIn('Place marker at each end of row')).toEqual(['note']);
    expect(kindsIn('Slip 5 sts')).toEqual(['row']);
  });
});
