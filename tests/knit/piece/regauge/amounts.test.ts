import { describe, expect, it } from 'vitest';
import type { Recipe, Section, Shaping } from '../../../../src/knit/piece/recipe.ts';
import type { Nudge } from '../../../../src/knit/piece/regauge/part-in-gauge.ts';
import { regauge } from '../../../../src/knit/piece/regauge/regauge.ts';
import {
  amountOf,
  changeAt,
  perTime,
  scaledAmount,
  scaledCount,
  shapedTo,
} from '../../../../src/knit/piece/regauge/shaped-to.ts';
import { told } from '../../../told.ts';
import { recipeSaid } from '../../garment/spelled.ts';

/* How often each shaping of a section comes in another gauge, and what its rows and counts become: reckoned on paper. */

const edge = (at: 'right' | 'left' | 'both', by: number, times: number): Shaping => ({
  kind: 'edge',
  edge: at,
  by,
  rows: Array.from({ length: times }, (_, i) => 2 * i + 1),
  inset: 1,
  lean: 'mirrored',
});
const groups = (
  kind: 'bind off' | 'cast on',
  at: 'right' | 'left',
  ...stitches: readonly number[]
): Shaping => ({
  kind,
  edge: at,
  groups: stitches.map((count, i) => ({ row: 2 * i + 1, stitches: count })),
});
const turn: Shaping = { kind: 'turn', edge: 'left', groups: [{ row: 1, stitches: 6 }] };
const across: Shaping = { kind: 'across', row: 1, by: 8 };

describe('a shaping', () => {
  it.each<[string, Shaping, number, number]>([
    ['a decrease at both edges, three times', edge('both', -1, 3), -2, 3],
    ['a double increase at one, twice', edge('right', 2, 2), 2, 2],
    ['groups bound off', groups('bind off', 'right', 3, 2), -1, 5],
    ['groups cast on', groups('cast on', 'left', 4), 1, 4],
    ['a turn, which leaves all stitches there', turn, 0, 0],
    ['stitches spread across', across, 0, 0],
  ])('%s: so many stitches a time, so often', (_, one, stitches, times) => {
    expect(perTime(one)).toBe(stitches);
    expect(amountOf(one)).toBe(times);
  });

  it('adds at an edge what lies there, half of what lies at both', () => {
    const all = [
      edge('both', -1, 3),
      edge('right', 2, 2),
      groups('bind off', 'right', 3, 2),
      groups('cast on', 'left', 4),
      turn,
      across,
    ];
    expect(changeAt(all, 'right')).toBe(-3 + 4 - 5);
    expect(changeAt(all, 'left')).toBe(-3 + 4);
    expect(changeAt([], 'left')).toBe(0);
  });

  it('by its own figure comes to the nearest; groups are a stitch at the least, a decrease may go', () => {
    const scale = { stitches: 1.5, rows: 1 };
    expect(scaledAmount(edge('both', -1, 3), scale)).toBe(5);
    expect(scaledAmount(groups('bind off', 'right', 3, 2), scale)).toBe(8);
    expect(scaledAmount(edge('right', -1, 1), { stitches: 0.4, rows: 1 })).toBe(0);
    expect(scaledAmount(groups('bind off', 'right', 1), { stitches: 0.4, rows: 1 })).toBe(1);
    expect(scaledCount(0, scale)).toBe(0);
  });
});

describe('the shapings of a section together', () => {
  it.each<[string, readonly Shaping[], [before: number, oldAfter: number, rows: number], readonly number[]]>([
    // 40 less 8 are 32; in half as many again 60 to 48
    ['come out by themselves', [edge('both', -1, 4)], [60, 32, 20], [6]],
    ['take one more where there is a pair too many', [edge('both', -1, 4)], [62, 32, 20], [7]],
    ['take one fewer where there is a pair too few', [edge('both', -1, 4)], [58, 32, 20], [5]],
    ['no more often than there are rows', [edge('both', -1, 4)], [70, 32, 7], [7]],
    ['never less than not at all', [edge('both', -1, 1)], [20, 18, 20], [0]],
    [
      'the longest first, each in its turn, a pair only where two are over',
      [edge('both', -1, 4), edge('right', -1, 2)],
      [63, 30, 20],
      [7, 4],
    ],
    ['a group that stands alone has what is over', [groups('bind off', 'right', 6)], [61, 34, 20], [10]],
    [
      'of two groups none does',
      [groups('bind off', 'right', 6), groups('bind off', 'left', 6)],
      [62, 28, 20],
      [9, 9],
    ],
    [
      'the edge’s own before a group beside it',
      [groups('bind off', 'right', 4), edge('right', -1, 4)],
      [61, 32, 20],
      [6, 7],
    ],
    [
      'but the middle of a neck has what is over of the side it is taken off with',
      [groups('bind off', 'right', 20), edge('right', -1, 4)],
      [61, 16, 20],
      [31, 6],
    ],
    ['spread across: each by itself', [across, edge('both', -1, 4)], [70, 32, 20], [0, 6]],
    ['none', [], [60, 40, 20], []],
  ])('%s', (_, shaping, [before, oldAfter, rows], wanted) => {
    expect(shapedTo(shaping, { stitches: 1.5, rows: 1 }, { before, oldAfter, rows })).toEqual(wanted);
  });
});

describe('a section that is nudged to meet what it is sewn to', () => {
  const section = (name: string, rows: number, ...shaping: readonly Shaping[]): Section => ({
    name,
    rows,
    fabric: name.startsWith('rib') ? 'rib 2x2' : 'stocking',
    needle: 4,
    shaping,
  });
  const again = (castOn: number, sections: readonly Section[], stitches: number, nudge?: Nudge) => {
    const recipe: Recipe = {
      name: 'Piece',
      makes: 1,
      gauge: { stitches: 20, rows: 20 },
      parts: [{ name: 'body', from: { castOn }, sections, end: 'bind off' }],
    };
    const made = regauge(
      recipe,
      { stitches: 20 * stitches, rows: 20 },
      undefined,
      undefined,
      undefined,
      nudge && [nudge],
    );
    if (!made.ok) throw new Error(told(made.faults));
    return recipeSaid(made.value)[1];
  };
  const body = [section('a', 10), section('b', 10, { ...edge('both', -1, 2), rows: [3, 7] } as Shaping)];
  const nudge = (at: number, rows: number, times = 0, part = 'body'): Nudge => ({
    part,
    section: at,
    rows,
    times,
  });

  it.each<[string, Nudge | undefined, string]>([
    ['by nothing', undefined, 'a 10 stocking 4; b 10 stocking 4, RL-1 in 3-9/2 inset 1'],
    [
      'by nothing where another part is',
      nudge(1, 4, 1, 'sleeve'),
      'a 10 stocking 4; b 10 stocking 4, RL-1 in 3-9/2 inset 1',
    ],
    [
      'by rows: that one alone is higher',
      nudge(0, 2),
      'a 12 stocking 4; b 10 stocking 4, RL-1 in 3-9/2 inset 1',
    ],
    [
      'by rows among which it is shaped',
      nudge(1, 4),
      'a 10 stocking 4; b 14 stocking 4, RL-1 in 5-11/2 inset 1',
    ],
    ['by rows and a time more', nudge(1, 4, 1), 'a 10 stocking 4; b 14 stocking 4, RL-1 in 3-11/2 inset 1'],
  ])('%s', (_, by, wanted) => {
    expect(again(40, body, 2, by)).toBe(`body = 80; ${wanted}; bind off`);
  });

  // 22 less 2 are 20, over which a rib of two by two comes out; 28 less 3 are 25, one more than 24
  const narrowed = section('a', 6, edge('right', -1, 2));
  it.each<[string, readonly Section[], number, string]>([
    [
      'loses a stitch in its first row',
      [section('rib', 4)],
      1.25,
      'body = 28; a 6 stocking 4, R-1 in 1-5/2 inset 1; rib 4 rib 2x2 4, -1 across 1',
    ],
    [
      'none where the count comes out',
      [section('rib', 4)],
      1.5,
      'body = 34; a 6 stocking 4, R-1 in 1-5/2,6 inset 1; rib 4 rib 2x2 4',
    ],
    [
      'none where it only goes on',
      [section('rib', 4), section('rib two', 4)],
      1.25,
      'body = 28; a 6 stocking 4, R-1 in 1-5/2 inset 1; rib 4 rib 2x2 4, -1 across 1; rib two 4 rib 2x2 4',
    ],
    [
      'before what shapes it later',
      [section('rib', 4, { ...edge('both', -1, 1), rows: [3] } as Shaping)],
      1.25,
      'body = 28; a 6 stocking 4, R-1 in 1-5/2 inset 1; rib 4 rib 2x2 4, -1 across 1, R-1 in 3 inset 1, L-1 in 3 inset 1',
    ],
    [
      'none in stocking stitch',
      [section('c', 4)],
      1.25,
      'body = 28; a 6 stocking 4, R-1 in 1-5/2 inset 1; c 4 stocking 4',
    ],
  ])('a rib above it %s', (_, above, stitches, wanted) => {
    expect(again(22, [narrowed, ...above], stitches)).toBe(`${wanted}; bind off`);
  });
});
