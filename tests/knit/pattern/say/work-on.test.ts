import { describe, expect, it } from 'vitest';
import { kindsIn, saidIn } from './said.ts';

describe('work on, said in a pattern,', () => {
  it('is read with the side that goes on', () => {
    expect(saidIn('Work on last 28 sts only')).toEqual([{ is: 'work on', which: 'last', stitches: 28 }]);
    expect(saidIn('Work each side separately')).toEqual([{ is: 'work on', which: 'each side' }]);
  });

  it('is not read in stitches of a row', () => {
    expect(kindsIn('Work 28 sts')).toEqual(['row']);
    expect(kindsIn('Work even for 6 rows')).toEqual(['even']);
  });
});
