import { describe, expect, it } from 'vitest';
import { kindsIn, saidIn } from './said.ts';

describe('note, said in a pattern,', () => {
  it('is read of what makes no row', () => {
    expect(saidIn('Sew side seams')).toEqual([{ is: 'note', about: 'making up' }]);
    expect(saidIn('Break yarn')).toEqual([{ is: 'note', about: 'yarn' }]);
    expect(saidIn('Place marker at each end of row')).toEqual([{ is: 'note', about: 'marker' }]);
  });

  it('is not read of stitches that are placed on a holder', () => {
    expect(kindsIn('Place rem 24 sts on holder')).toEqual(['hold']);
    expect(kindsIn('These 2 rows form rib')).toEqual(['named rows']);
  });
});
