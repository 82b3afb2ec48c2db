import { expect, it } from 'vitest';
import type { Bit } from '../../../src/knit/making-up/boundary.ts';
import { restOfEnd, restOfSide } from '../../../src/knit/making-up/rest-stretch.ts';

/** Rows of a side from below: '2=' is what lies level in row 2, '2' the row itself. */
const side = (text: string): readonly Bit[] =>
  text
    .split(' ')
    .map((one) => ({ row: Number.parseInt(one, 10), level: one.endsWith('='), by: 0 }) as unknown as Bit);

/* A row that binds off has what lies level, and above it its own height: a stretch can be either of them, or both. */
it.each<[string, from: number, to: number, ReturnType<typeof restOfSide>]>([
  ['1 2= 2 3', 0, 4, {}],
  ['1 2= 2 3', 0, 1, { rows: { first: 1, last: 1 } }],
  ['1 2= 2 3', 3, 4, { rows: { first: 3, last: 3 } }],
  ['1 2= 2 3', 1, 4, { rows: { first: 2, last: 3 } }],
  ['1 2= 2 3', 0, 3, { rows: { first: 1, last: 2 } }],
  ['1 2= 2 3', 1, 2, { rows: { first: 2, last: 2 }, level: 'only' }],
  ['1 2= 2 3', 2, 3, { rows: { first: 2, last: 2 }, level: 'without' }],
  ['1 2= 2 3', 2, 4, { rows: { first: 2, last: 3 }, level: 'without' }],
  // up to what lies level, and no more, no stretch can say
  ['1 2= 2 3', 0, 2, undefined],
  ['1= 1 2= 2 3', 0, 1, { rows: { first: 1, last: 1 }, level: 'only' }],
  ['1= 1 2= 2 3', 1, 4, { rows: { first: 1, last: 2 }, level: 'without' }],
  ['1= 1 2= 2 3', 1, 3, undefined],
  ['1= 1 2= 2 3', 2, 3, { rows: { first: 2, last: 2 }, level: 'only' }],
  // two parts with rows of the same number: a row of one of them alone is none of the stretch’s
  ['1 2 1 2', 1, 2, undefined],
  ['1 1= 1 2', 2, 3, undefined],
])('of %s those from %i to %i', (bits, from, to, rest) => {
  expect(restOfSide(side(bits), from, to)).toEqual(rest);
});

it('of an end it is its stitches, unless it is all of them', () => {
  expect(restOfEnd(20, 0, 20)).toEqual({});
  expect(restOfEnd(20, 0, 8)).toEqual({ stitches: { from: 0, to: 8 } });
  expect(restOfEnd(20, 8, 20)).toEqual({ stitches: { from: 8, to: 20 } });
});
