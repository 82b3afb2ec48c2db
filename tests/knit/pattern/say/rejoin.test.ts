import { describe, expect, it } from 'vitest';
import { kindsIn, saidIn } from './said.ts';

describe('rejoin, said in a pattern,', () => {
  it('is read with its stitches', () => {
    expect(saidIn('Rejoin yarn to rem 28 sts')).toEqual([{ is: 'rejoin', stitches: 28 }]);
  });

  it('is not read of seams', () => {
    expect(kindsIn('Join shoulder seams')).toEqual(['note']);
  });
});
