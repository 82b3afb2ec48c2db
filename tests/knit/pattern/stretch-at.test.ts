import { describe, expect, it } from 'vitest';
import { readPattern } from '../../../src/knit/pattern/read-pattern.ts';
import { canEndHere, stretchAt, stretchesOf } from '../../../src/knit/pattern/stretch-at.ts';

/** How patterns are usually worded: common practice, no published source. 20 × 28 to 10 cm: 2 cm are 5.6 rows, 6 to a WS row. */
const text = `Cast on 20 sts.
K 2 rows.
Work in st st for 2 cm.
K 2 rows.
Work even for 3 cm.
Bind off.`;

function partOf() {
  const [piece] = readPattern(text, { gauge: { stitches: 20, rows: 28 } }).pieces;
  const part = piece?.plan.ok ? piece.plan.value.parts[0] : undefined;
  if (part === undefined) throw new Error('the text has one part');
  return part;
}

describe('a stretch of a length', () => {
  it.each([
    [0, undefined],
    [1, undefined],
    [2, { id: 'piece/1', first: 3, last: 8, worked: 0, left: 6, ends: false }],
    [3, { id: 'piece/1', first: 3, last: 8, worked: 1, left: 5, ends: false }],
    [4, { id: 'piece/1', first: 3, last: 8, worked: 2, left: 4, ends: true }],
    [6, { id: 'piece/1', first: 3, last: 8, worked: 4, left: 2, ends: true }],
    [8, { id: 'piece/1', first: 3, last: 8, worked: 6, left: 0, ends: false }],
    [9, undefined],
    [10, { id: 'piece/2', first: 11, last: 18, worked: 0, left: 8, ends: false }],
    [18, { id: 'piece/2', first: 11, last: 18, worked: 8, left: 0, ends: false }],
  ] as const)('after row %i is told with where she is in it', (worked, wanted) => {
    const here = stretchAt(partOf(), worked);
    if (wanted === undefined) {
      expect(here).toBeUndefined();
      return;
    }
    const { ends, ...place } = wanted;
    expect(here).toMatchObject(place);
    expect(here && canEndHere(here)).toBe(ends);
  });

  it('has its rows by its name', () => {
    expect(stretchesOf([partOf()])).toEqual({ 'piece/1': 6, 'piece/2': 8 });
  });
});
