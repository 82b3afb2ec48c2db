import { describe, expect, it } from 'vitest';
import { kindsIn, saidIn } from './said.ts';

describe('named rows, said in a pattern,', () => {
  it('are read with their number and their name', () => {
    expect(saidIn('These 2 rows form rib')).toEqual([{ is: 'named rows', name: 'rib', rows: 2 }]);
  });

  it('are not read where they are only worked again', () => {
    expect(kindsIn('Rep these 2 rows')).toEqual(['repeat rows']);
  });
});
