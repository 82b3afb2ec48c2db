import { describe, expect, it } from 'vitest';
import { kindsIn, saidIn } from './said.ts';

describe('turn, said in a pattern,', () => {
  it('is read by itself', () => {
    expect(saidIn('Turn')).toEqual([{ is: 'turn' }]);
  });

  it('is not read within a row', () => {
    expect(kindsIn('K 20, turn')).toEqual(['row']);
  });
});
