import { describe, expect, it } from 'vitest';
import { kindsIn, saidIn } from './said.ts';

describe('multiple, said in a pattern,', () => {
  it('is read with its edge stitches and its name', () => {
    expect(saidIn('Basket pattern (multiple of 8 plus 4)')).toEqual([
      { is: 'multiple', of: 8, plus: 4, name: 'basket' },
    ]);
  });

  it('is not read in what is done several times', () => {
    expect(kindsIn('Knit 6 rows')).toEqual(['rows']);
  });
});
