import { describe, expect, it } from 'vitest';
import { kindsIn, saidIn } from './said.ts';

describe('work on, said in a pattern,', () => {
  it('is read with the side that goes on', () => {
    expect(saidIn('Work on last 28 sts only')).toEqual([{ is: 'work on', which: 'last', stitches: 28 }]);
    expect(saidIn('Work each side separately')).toEqual([{ is: 'work on', which: 'each side' }]);
  });

  it('tells with how many stitches it goes on, where that is said before', () => {
    expect(saidIn('With 66 sts, work even')[0]).toEqual({ is: 'stated', stitches: 66 });
    expect(saidIn('Having 66 sts on needle, cont even')[0]).toEqual({ is: 'stated', stitches: 66 });
    expect(saidIn('With rem 20 sts work even')[0]).toEqual({ is: 'stated', stitches: 20 });
    // yarns and needles are counted too
    expect(saidIn('With 2 strands, k 1 row')[0]?.is).not.toBe('stated');
    expect(kindsIn('With 66½ sts, work even')).not.toContain('stated');
  });

  it('is not read in stitches of a row', () => {
    expect(kindsIn('Work 28 sts')).toEqual(['row']);
    expect(kindsIn('Work even for 6 rows')).toEqual(['even']);
    expect(kindsIn('Work across 25 sts and slip them to a holder')).toEqual(['row']);
    expect(kindsIn('Work across 25 sts, place these on a holder')).toEqual(['row']);
  });
});
