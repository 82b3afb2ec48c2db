import { describe, expect, it } from 'vitest';
import { FoundSide } from '../../../src/knit/making-up/found-side.ts';
import { outerEdge } from '../../../src/knit/making-up/outer-edge.ts';
import type { PartRecipe, Section, Shaping } from '../../../src/knit/piece/recipe.ts';
import { groups, lineSaid, off, part, piece, section, slant, standing } from './by-hand.ts';

const makeOf = (...parts: readonly PartRecipe[]) => {
  const made = standing(piece('Back', 'back', parts)).pieces[0]?.makes[0];
  if (!made) throw new Error('no make');
  return made;
};
const rightOf = (...parts: readonly PartRecipe[]) =>
  new FoundSide('Back', 1, makeOf(...parts).parts, 'right');
const side = (...sections: readonly Section[]) => rightOf(part('Back', 60, sections));
const cast = (row: number, stitches: number): Shaping => ({
  kind: 'cast on',
  edge: 'right',
  groups: [{ row, stitches }],
});

describe('where a shoulder’s slope begins', () => {
  it.each<[string, readonly Section[], number]>([
    ['without a group: at the end', [section('a', 8)], 8],
    [
      'at the first of the groups that lead up to the top',
      [section('a', 8), section('b', 6, off('right', 1, 5, 5, 5))],
      8,
    ],
    [
      'a group six rows before the next one belongs to something else',
      [section('a', 12, off('right', 5, 5), off('right', 11, 5))],
      11,
    ],
    ['one five rows before it does not', [section('a', 5, off('right', 1, 5))], 0],
    ['nor one with six rows above it', [section('a', 6, off('right', 1, 5))], 6 + 1],
    ['stitches that are cast on are no slope', [section('a', 8, cast(7, 3))], 9],
    ['nor is a decrease', [section('a', 8, slant('right', -1, 7))], 8],
    [
      'short rows: at their first turn',
      [
        section('a', 8),
        section('b', 4, {
          kind: 'turn',
          edge: 'right',
          groups: [
            { row: 2, stitches: 5 },
            { row: 4, stitches: 5 },
          ],
        }),
        section('c', 2),
      ],
      9,
    ],
  ])('%s', (_, sections, at) => {
    expect(side(...sections).slope()).toBe(at);
  });
});

describe('what lies on a side', () => {
  it('the first and last of its groups, and what they take', () => {
    const one = side(section('a', 4), section('b', 12, off('right', 1, 6), off('right', 5, 3), cast(9, 2)));
    expect([one.firstLevel(one.end, -1), one.firstLevel(4, -1), one.firstLevel(5, -1)]).toEqual([4, -1, 4]);
    expect([one.firstLevel(one.end, 1), one.lastLevel(1), one.lastLevel(-1)]).toEqual([14, 14, 9]);
    expect(one.levelAt(4)).toEqual({ stitches: 6, mm: 24 });
    expect(one.levelAt(14)).toEqual({ stitches: 2, mm: 8 });
    expect([one.levelAt(3), one.levelAt(99), one.levelAt(-1)]).toEqual([undefined, undefined, undefined]);
    expect([one.takenFrom(0), one.takenFrom(5), one.takenFrom(10)]).toEqual([7, 1, -2]);
    expect(side(section('a', 4)).lastLevel(-1)).toBe(-1);
  });

  it.each<[string, readonly Section[], number]>([
    ['three decreases', [section('a', 8, slant('right', -1, 3, 5, 7))], 2],
    ['two are a slant of the side', [section('a', 8, slant('right', -1, 3, 5))], -1],
    [
      'after all that widens',
      [section('a', 12, slant('right', -1, 1, 2), slant('right', 1, 3), slant('right', -1, 5, 7, 9))],
      4,
    ],
    ['nothing after that', [section('a', 8, slant('right', -1, 1, 2, 3), slant('right', 1, 7))], -1],
    ['none at all', [section('a', 8)], -1],
  ])('it narrows where its last decreases begin: %s', (_, sections, at) => {
    const one = side(...sections);
    expect(one.narrows(one.end)).toBe(at);
  });

  it('and only below a place, where one is given', () => {
    const one = side(section('a', 8, slant('right', -1, 3, 5, 7)));
    expect([one.narrows(7), one.narrows(6)]).toEqual([2, -1]);
    const widened = side(section('a', 10, slant('right', -1, 1, 3, 5), slant('right', 1, 9)));
    expect([widened.narrows(8), widened.narrows(10)]).toEqual([0, -1]);
  });

  it('rows without a decrease at its top', () => {
    expect(side(section('a', 8, slant('right', -1, 3, 5))).plainAtTop()).toBe(3);
    expect(side(section('a', 8)).plainAtTop()).toBe(8);
    expect(side(section('a', 8, off('right', 7, 3))).plainAtTop()).toBe(2);
  });

  it('mm up and down, to the nearest row; what lies level has no height', () => {
    const one = side(section('a', 4), section('b', 4, off('right', 1, 3)));
    // rows of 3 mm, the group between the fourth and the fifth
    expect([0, 1.4, 1.6, 6, 12, 13.6].map((mm) => one.below(one.end, mm))).toEqual([9, 9, 8, 7, 4, 3]);
    expect(one.below(4, 6)).toBe(2);
    expect(one.below(4, 100)).toBe(0);
    expect([0, 1.4, 1.6, 6, 13.4, 13.6].map((mm) => one.above(mm))).toEqual([0, 0, 1, 2, 4, 6]);
    expect(one.above(100)).toBe(9);
  });

  it('stretches from one place to another, part by part, whole ones without their rows', () => {
    const one = rightOf(
      part('Low', 30, [section('a', 4)], 'split'),
      part('High', { part: 'Low', stitches: 20, edge: 'right' }, [section('b', 6)]),
      part('Other', { part: 'Low', stitches: 10, edge: 'left' }, [section('b', 2)]),
    );
    expect(one.end).toBe(10);
    expect(lineSaid(one.between(0, 10))).toBe('Low right, High right');
    expect(lineSaid(one.between(1, 6))).toBe('Low right rows 2-4, High right rows 1-2');
    expect(lineSaid(one.between(4, 10))).toBe('High right');
    expect(lineSaid(one.between(3, 3))).toBe('');
  });

  it('where groups begin that take just so many stitches up to its end', () => {
    const one = side(section('a', 4), section('b', 6, off('right', 1, 5, 5, 5)));
    expect([5, 10, 15].map((stitches) => one.taking(stitches))).toEqual([10, 7, 4]);
    expect([0, 7, 20].map((stitches) => one.taking(stitches))).toEqual([undefined, undefined, undefined]);
  });

  it('so many rows from its beginning, before a group, and from its end, with the group below them', () => {
    // four rows, five stitches, two rows, five stitches, two rows, five stitches, two rows
    const one = side(section('a', 4), section('b', 6, off('right', 1, 5, 5, 5)));
    expect(one.end).toBe(13);
    expect([0, 3, 4, 5, 6, 7, 100].map((rows) => one.behindRows(rows))).toEqual([0, 3, 4, 6, 7, 9, 13]);
    expect([0, 1, 2, 3, 4, 6, 100].map((rows) => one.beforeRows(rows))).toEqual([13, 12, 10, 9, 7, 4, 0]);
  });

  it('short rows above a parting begin at their first turn, or with the pair of rows that it belongs to', () => {
    const turns: Shaping = {
      kind: 'turn',
      edge: 'right',
      groups: [2, 4].map((row) => ({ row, stitches: 5 })),
    };
    const one = rightOf(
      part('Low', 40, [section('a', 8)], 'split'),
      part('High', { part: 'Low', stitches: 20, edge: 'right' }, [section('b', 4, turns), section('c', 2)]),
      part('Other', { part: 'Low', stitches: 20, edge: 'left' }, [section('d', 6)]),
    );
    expect([one.slope(), one.slope(true)]).toEqual([9, 8]);
    const later = (...rows: readonly number[]) =>
      side(
        section('a', 4),
        section('b', 8, { kind: 'turn', edge: 'right', groups: rows.map((row) => ({ row, stitches: 5 })) }),
      );
    // row 8 of all turns first, at index 7; its pair begins with row 7
    expect([later(4, 6).slope(), later(4, 6).slope(true)]).toEqual([7, 6]);
  });

  it('behind the last rows of a name, and before the first', () => {
    const one = side(section('a', 4), section('b', 2), section('a', 3), section('c', 2));
    expect([one.begins(['a']), one.begins(['b', 'c']), one.begins(['d'])]).toEqual([0, 4, undefined]);
    expect([one.ends(['a']), one.ends(['b']), one.ends(['c', 'b']), one.ends(['d'])]).toEqual([
      9,
      6,
      11,
      undefined,
    ]);
  });

  it('whether it is shaped at all', () => {
    expect(side(section('a', 8)).isShaped()).toBe(false);
    expect(side(section('a', 8, slant('left', -1, 3))).isShaped()).toBe(false);
    expect(side(section('a', 8, slant('right', 1, 3))).isShaped()).toBe(false);
    expect(side(section('a', 8, slant('right', -1, 3))).isShaped()).toBe(true);
  });
});

describe('the edge of half a front that lies at the side of the body', () => {
  const outer = (...sections: readonly Section[]) => outerEdge('Front', makeOf(part('Front', 60, sections)));
  it.each<[string, readonly Section[], 'right' | 'left']>([
    [
      'where its shoulder slopes, right',
      [section('a', 8, slant('left', -1, 1)), section('b', 6, off('right', 1, 5, 5, 5))],
      'right',
    ],
    ['left', [section('a', 8, slant('right', -1, 1)), section('b', 6, off('left', 2, 5, 5, 5))], 'left'],
    ['the steeper of two', [section('b', 6, off('right', 1, 2, 2, 2), off('left', 2, 5, 5, 5))], 'left'],
    ['straight, where the other has the neck: right', [section('a', 8, slant('left', -1, 1, 3))], 'right'],
    ['left', [section('a', 8, slant('right', -1, 1, 3))], 'left'],
    [
      'where something is bound off first: right',
      [section('a', 20, off('right', 3, 5), slant('left', -1, 1), off('left', 10, 5))],
      'right',
    ],
    ['left', [section('a', 20, off('left', 2, 5), slant('right', -1, 1), off('right', 9, 5))], 'left'],
    [
      'where only one has something bound off',
      [section('a', 20, off('left', 2, 5), slant('right', -1, 1))],
      'left',
    ],
    ['in one pair of rows: right', [section('a', 20, ...groups(1, 5))], 'right'],
  ])('%s', (_, sections, edge) => {
    expect(outer(...sections)).toBe(edge);
  });
});

describe('rows without a decrease at the top', () => {
  it.each<[string, readonly Section[], number]>([
    ['after the last decrease', [section('a', 8, slant('right', -1, 5))], 3],
    ['none after one in the last row', [section('a', 8, slant('right', -1, 8))], 0],
    ['all where nothing narrows', [section('a', 8)], 8],
    ['what is cast on is no row', [section('a', 8, slant('right', -1, 3), cast(7, 3))], 5],
  ])('%s', (_, sections, rows) => {
    expect(side(...sections).plainAtTop()).toBe(rows);
  });
});
