import { expect, it } from 'vitest';
import { freshColumns, grownLeft, grownRight, pushedOut, without } from '../../../src/knit/piece/needle.ts';

/* Columns are where stitches stand in the fabric, from the right edge. */

it('columns are counted from the right edge, and go on outward at either edge', () => {
  expect(freshColumns(4)).toEqual([0, 1, 2, 3]);
  expect(grownRight([3, 4], 2)).toEqual([1, 2, 3, 4]);
  expect(grownLeft([3, 4], 2)).toEqual([3, 4, 5, 6]);
  expect(grownRight([], 2)).toEqual([-2, -1]);
  expect(grownLeft([], 2)).toEqual([0, 1]);
});

it('some are taken out of their midst', () => {
  expect(without([5, 6, 7, 8, 9], 1, 2)).toEqual([5, 8, 9]);
  expect(without([5, 6], 0, 2)).toEqual([]);
});

it('what is made beside the inset pushes that outward: the fabric goes on from the body without a gap', () => {
  // the column of the inset had been closed up to 3 and 9; it stands beside the new ones now
  expect(pushedOut([3, 5, 6, 7], 'right', 1, 2)).toEqual([2, 3, 4, 5, 6, 7]);
  expect(pushedOut([5, 6, 7, 9], 'left', 1, 2)).toEqual([5, 6, 7, 8, 9, 10]);
  expect(pushedOut([5, 6], 'right', 0, 1)).toEqual([4, 5, 6]);
  expect(pushedOut([5, 6], 'left', 0, 1)).toEqual([5, 6, 7]);
});
