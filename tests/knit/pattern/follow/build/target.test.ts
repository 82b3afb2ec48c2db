import { describe, expect, it } from 'vitest';
import { newPart, newPiece, setMark } from '../../../../../src/knit/pattern/follow/build/part.ts';
import { evenRows } from '../../../../../src/knit/pattern/follow/build/run-rows.ts';
import {
  countedRows,
  endingOn,
  endSideOf,
  pieceNamed,
  roundTo,
  targetOf,
} from '../../../../../src/knit/pattern/follow/build/target.ts';
import type { Until } from '../../../../../src/knit/pattern/say/how-far.ts';
import type { Side } from '../../../../../src/knit/row/step.ts';
import { castOn } from './in-hand.ts';

/** Rows until an end that the text names: worked out by hand, 10 rows to 50 mm. */
function sleeve(rows: number, firstSide: Side = 'RS') {
  const hand = castOn(20, firstSide, 'sleeve');
  hand.build.gauge = { stitches: 20, rows: 20 };
  evenRows(hand.build, hand.part, rows, 'even');
  return hand;
}

describe('the number of rows after which a row of the pattern is the last', () => {
  it.each([
    [4, 8, 0, 4, 8],
    [4, 9, 0, 4, 8],
    [4, 10, 0, 4, 8],
    [4, 11, 0, 4, 12],
    [4, 7, 0, 4, 8],
    [1, 8, 0, 4, 9],
    [2, 8, 0, 4, 6],
    [2, 8, 1, 4, 9],
    [2, 2, 0, 4, 2],
    [2, 1, 0, 4, 2],
    [3, 1, 0, 4, 3],
    [4, 1, 0, 4, 0],
    [4, 2, 0, 4, 0],
    [1, 0, 0, 4, 1],
    [3, 0, 3, 4, 0],
    [2, 1, 2, 4, 0],
    [2, 4, 0, 5, 2],
    [2, 5, 0, 5, 7],
  ])('row %i, about %i, %i worked of %i: %i', (endRow, rows, done, period, wanted) => {
    expect(endingOn(endRow, rows, done, period)).toBe(wanted);
  });
});

describe('the nearest number of rows that ends on a side', () => {
  it.each<[number, number, Side | undefined, number]>([
    [0, 4, 'WS', 4],
    [0, 5, 'WS', 6],
    [0, 5.2, 'WS', 6],
    [0, 4.8, 'WS', 4],
    [0, 4.5, 'RS', 5],
    [0, 4.4, 'RS', 5],
    [0, 3.6, 'RS', 3],
    [0, 4.4, undefined, 4],
    [0, 4.5, undefined, 5],
    [0, 0, 'RS', 1],
    [0, 0.3, 'RS', 1],
    [0, 0, 'WS', 0],
    [0, 0.9, 'WS', 0],
    [1, 0, 'RS', 0],
    [1, 0, 'WS', 1],
    [1, 4, 'RS', 4],
    [1, 4, 'WS', 5],
  ])('%i worked, %f more, ends on %s: %i', (worked, exact, end, rows) => {
    expect(roundTo(sleeve(worked).part, exact, end)).toBe(rows);
  });
});

describe('an end that the text names', () => {
  it.each<[number, Until, unknown]>([
    [0, { is: 'rows', n: 6 }, { rows: 6 }],
    [0, { is: 'rows', n: 5.6 }, { rows: 6 }],
    [0, { is: 'rows', n: -1 }, { rows: 0 }],
    [4, { is: 'rows in all', n: 10, from: 'start' }, { rows: 6 }],
    [4, { is: 'rows in all', n: 3, from: 'start' }, { rows: 0 }],
    [4, { is: 'rows in all', n: 10, from: 'armhole' }, { rows: 8 }],
    [4, { is: 'rows in all', n: 10, from: 'neck' }, { rows: 7 }],
    [4, { is: 'open', only: true, end: 'WS' }, { rows: 0 }],
    [4, { is: 'open', only: true, end: 'RS' }, { rows: 1 }],
    [4, { is: 'open' }, { rows: 2, stretch: { id: 'sleeve/1', from: 'start', open: true } }],
    [5, { is: 'open' }, { rows: 3, stretch: { id: 'sleeve/1', from: 'start', open: true } }],
    [4, { is: 'open', only: true, odd: true }, { rows: 1 }],
    [4, { is: 'open', only: true, odd: false }, { rows: 0 }],
    [4, { is: 'open', only: true, endEdge: 'neck' }, { rows: 1 }],
    [4, { is: 'open', only: true, endEdge: 'armhole' }, { rows: 0 }],
    // 'until desired length, ending with a RS row'
    [
      4,
      { is: 'open', end: 'RS' },
      { rows: 3, stretch: { id: 'sleeve/1', from: 'start', open: true, endSide: 'RS' } },
    ],
    [4, { is: 'open', endRow: 2 }, undefined],
    [
      0,
      { is: 'length', mm: 50, from: 'here' },
      { rows: 10, stretch: { id: 'sleeve/1', mm: 50, from: 'here', open: false } },
    ],
    [
      4,
      { is: 'length', mm: 50, from: 'here' },
      { rows: 10, stretch: { id: 'sleeve/1', mm: 50, from: 'here', open: false } },
    ],
    [
      4,
      { is: 'length', mm: 50, from: 'start' },
      { rows: 6, stretch: { id: 'sleeve/1', mm: 50, from: 'start', open: false } },
    ],
    [
      4,
      { is: 'length', mm: 50, from: 'armhole' },
      { rows: 8, stretch: { id: 'sleeve/1', mm: 50, from: 'armhole', open: false } },
    ],
    [
      4,
      { is: 'length', mm: 50, from: 'neck' },
      { rows: 8, stretch: { id: 'sleeve/1', mm: 50, from: 'neck', open: false } },
    ],
    [
      4,
      { is: 'length', mm: 50, from: 'section' },
      { rows: 6, stretch: { id: 'sleeve/1', mm: 50, from: 'section', open: false } },
    ],
    [
      0,
      { is: 'length', mm: 50, from: 'here', end: 'RS' },
      { rows: 11, stretch: { id: 'sleeve/1', mm: 50, from: 'here', open: false, endSide: 'RS' } },
    ],
    [
      0,
      { is: 'length', mm: 5, from: 'here' },
      { rows: 1, stretch: { id: 'sleeve/1', mm: 5, from: 'here', open: false } },
    ],
    [
      0,
      { is: 'length', mm: 9, from: 'here' },
      { rows: 2, stretch: { id: 'sleeve/1', mm: 9, from: 'here', open: false } },
    ],
    [
      0,
      { is: 'length', mm: 10, from: 'here' },
      { rows: 2, stretch: { id: 'sleeve/1', mm: 10, from: 'here', open: false } },
    ],
    [
      0,
      { is: 'length', mm: 15, from: 'here' },
      { rows: 4, stretch: { id: 'sleeve/1', mm: 15, from: 'here', open: false } },
    ],
    [
      4,
      { is: 'length', mm: 20, from: 'start' },
      { rows: 0, stretch: { id: 'sleeve/1', mm: 20, from: 'start', open: false } },
    ],
    [
      4,
      { is: 'length', mm: 15, from: 'start' },
      { rows: 0, stretch: { id: 'sleeve/1', mm: 15, from: 'start', open: false } },
    ],
    [
      4,
      { is: 'length', mm: 10, from: 'start' },
      { rows: 0, stretch: { id: 'sleeve/1', mm: 10, from: 'start', open: false }, overMm: 10 },
    ],
    [4, { is: 'same length', piece: { words: 'back' } }, { rows: 8 }],
    [4, { is: 'same length', piece: { words: 'back', name: 'back' } }, { rows: 8 }],
    [
      4,
      { is: 'same length', piece: { words: 'hood', name: 'hood' } },
      { rows: 2, stretch: { id: 'sleeve/1', from: 'start', open: true } },
    ],
    [4, { is: 'same length', piece: { words: 'hood', name: 'hood' }, lessRows: 3 }, undefined],
    [4, { is: 'same length', piece: { words: 'back' }, to: 'armhole' }, { rows: 2 }],
    [
      4,
      { is: 'same length', piece: { words: 'back' }, to: 'neck' },
      { rows: 2, stretch: { id: 'sleeve/1', from: 'start', open: true } },
    ],
    [4, { is: 'same length', piece: { words: 'back' }, to: 'shoulder' }, { rows: 8 }],
    [4, { is: 'same length', piece: { words: 'back' }, lessRows: 3 }, { rows: 5 }],
    [4, { is: 'same length', piece: { words: 'back' }, lessMm: 20 }, { rows: 4 }],
    [4, { is: 'same length', piece: { words: 'back' }, end: 'RS' }, { rows: 9 }],
    [4, { is: 'same length', piece: { words: 'back' }, lessRows: 30 }, { rows: 0 }],
  ])('%i rows worked, %j: %j', (worked, until, target) => {
    const { build, piece, part } = sleeve(0);
    setMark(piece, 'heading', part);
    evenRows(build, part, Math.min(1, worked), 'even');
    setMark(piece, 'heading', part);
    evenRows(build, part, Math.min(1, Math.max(0, worked - 1)), 'even');
    if (worked > 0) setMark(piece, 'armhole', part);
    evenRows(build, part, worked - 2, 'even');
    const back = newPiece(build, { name: 'back', makes: 1 });
    const body = newPart(build, back, { name: 'body', from: { castOn: 20 }, live: 20, firstSide: 'RS' });
    evenRows(build, body, 6, 'even');
    setMark(back, 'armhole', body);
    evenRows(build, body, 6, 'even');
    build.piece = piece;
    build.part = part;
    expect(targetOf(build, piece, part, until as never)).toEqual(target);
  });

  it('is a number of rows of her own where there is no gauge', () => {
    const { build, piece, part } = castOn(20);
    expect(targetOf(build, piece, part, { is: 'length', mm: 50, from: 'start', end: 'RS' })).toEqual({
      rows: 3,
      stretch: { id: 'back/1', mm: 50, from: 'start', open: true, endSide: 'RS' },
    });
    part.fabric = { is: 'face', name: 'moss', rows: ['k', 'p', 'k'], label: 'three rows' };
    expect(targetOf(build, piece, part, { is: 'open' })?.rows).toBe(6);
    part.fabric = { is: 'patt', label: 'pattern' };
    expect(targetOf(build, piece, part, { is: 'open' })?.rows).toBe(2);
  });

  it.each([
    [7, 7],
    [0, 0],
    [-1, 4],
    [2.5, 4],
    [undefined, 4],
  ])('is what she counted, %s, where that is a number of rows: %i', (said, rows) => {
    const { build } = castOn(20);
    const stretches = said === undefined ? {} : { 'back/1': said };
    expect(countedRows({ ...build, stretches }, { id: 'back/1', from: 'start', open: true }, 4)).toBe(rows);
  });

  it.each<[object, 'left' | 'right' | undefined, Side | undefined]>([
    [{}, undefined, undefined],
    [{ end: 'WS' }, undefined, 'WS'],
    [{ endEdge: 'neck' }, undefined, 'RS'],
    [{ endEdge: 'armhole' }, undefined, 'WS'],
    [{ endEdge: 'neck' }, 'right', 'WS'],
    [{ endEdge: 'armhole', end: 'WS' }, 'right', 'RS'],
  ])('at an edge is on a side: %j of a half %s: %s', (said, half, side) => {
    const { piece, part } = castOn(20);
    expect(endSideOf({ ...piece, half }, part, said)).toBe(side);
  });

  it.each([
    [undefined, 'left sleeve'],
    ['back', 'back'],
    ['Backs', 'back'],
    ['sleeve', 'left sleeve'],
    ['front', 'left front'],
    ['long left front', 'left front'],
    ['collar', undefined],
  ])('names a piece: %s is %s', (name, wanted) => {
    const { build } = castOn(20);
    for (const one of ['right sleeve', 'left front', 'left sleeve', 'collar']) {
      const piece = newPiece(build, { name: one, makes: 1 });
      newPart(build, piece, { name: 'body', from: { castOn: 9 }, live: 9, firstSide: 'RS' });
    }
    const said = name === undefined ? { words: 'the other' } : { words: name, name };
    expect(pieceNamed(build, said)?.name).toBe(wanted);
  });
});
