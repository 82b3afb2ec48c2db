import { describe, expect, it } from 'vitest';
import { kindsIn, saidIn } from './said.ts';

describe('repeat rows, said in a pattern,', () => {
  it('are read from one number to another, or counted back', () => {
    expect(saidIn('Rep rows 1 to 4 until piece measures 10 cm')).toEqual([
      { is: 'repeat rows', from: 1, to: 4, until: { is: 'length', mm: 100, from: 'start' } },
    ]);
    expect(saidIn('Repeat last 2 rows 5 times more')).toEqual([{ is: 'repeat rows', last: 2, times: 5 }]);
  });

  it.each([
    ['repeat 4 times', 4],
    ['repeat them 4 more times', 4],
    ['repeat a further 4 times', 4],
    ['repeat 4 times in all', 3],
    // said to be more, they are so however they are counted
    ['repeat a further 4 times in all', 4],
    ['repeat 4 times more in all', 4],
    ['repeat 1 time in all', 0],
  ])('are those that were just named: %s', (said, times) => {
    expect(saidIn(`These 2 rows form rib, ${said}`).at(-1)).toEqual({ is: 'repeat rows', last: 2, times });
  });

  it('are not read in a row that repeats its stitches, nor in a row that has a name', () => {
    expect(kindsIn('*K1, p1; rep from * to end')).toEqual(['row']);
    expect(kindsIn('Rep dec row every 4th row 3 times')).toEqual(['repeat named']);
  });
});
