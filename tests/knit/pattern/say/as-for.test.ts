import { describe, expect, it } from 'vitest';
import { kindsIn, saidIn } from './said.ts';

describe('as for, said in a pattern,', () => {
  it('is read with how far it is followed', () => {
    expect(saidIn('Work as for back to armhole')).toEqual([
      {
        is: 'as for',
        piece: { words: 'back', name: 'back' },
        reversing: false,
        to: { is: 'place', place: 'armhole' },
      },
    ]);
    expect(saidIn('Work as for left front until 60 sts remain, reversing shaping')).toEqual([
      {
        is: 'as for',
        piece: { words: 'left front', name: 'left front' },
        reversing: true,
        to: { is: 'count', stitches: 60 },
      },
    ]);
  });

  it('is not read of the pattern in hand, nor of a row', () => {
    expect(kindsIn('Work as set for 6 rows')).toEqual(['even']);
    expect(kindsIn('Next row: as row 2')).toEqual(['row']);
  });
});
