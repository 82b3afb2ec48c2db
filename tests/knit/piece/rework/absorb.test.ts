import { describe, expect, it } from 'vitest';
import type { PartRecipe, Recipe, Section } from '../../../../src/knit/piece/recipe.ts';
import { waysToAbsorb } from '../../../../src/knit/piece/rework/absorb.ts';
import { layAnew } from '../../../../src/knit/piece/rework/lay-anew.ts';
import { rework } from '../../../../src/knit/piece/rework.ts';
import type { Side } from '../../../../src/knit/row/step.ts';
import { recipeSaid } from '../../garment/spelled.ts';
import { groups, part, section, slant } from '../../making-up/by-hand.ts';
import { partsOf } from '../parts-by-hand.ts';

/** Each way: how, with its figures, and the sections still to come. */
function ways(rest: readonly Section[], off: number, side: Side = 'RS', at?: 'right' | 'left'): string[] {
  return waysToAbsorb(rest, off, at, side).map(({ how, rest: made }) => {
    const [, line = ''] = recipeSaid({ name: 'P', makes: 1, parts: [part('P', 1, made)] });
    const figures = Object.values(how.figures ?? {}).join(' ');
    return `${how.code} ${figures}: ${line.replace('P = 1; ', '').replace('; bind off', '').replaceAll(' stocking 4', '')}`;
  });
}

/* Ways to take up stitches too many or too few; common practice, no published source. */
describe('what is off is taken up', () => {
  const both = [section('a', 20, slant('both', -1, 3, 7, 11, 15))];

  it.each<[string, number, 'right' | 'left' | undefined, string]>([
    ['two too many: one decrease more on either side', 2, undefined, 'RL-1 in 3-11/4,13,15 inset 1'],
    ['two too few: one fewer', -2, undefined, 'RL-1 in 3-15/6 inset 1'],
    ['one too many: at the right edge', 1, undefined, 'R-1 in 3 inset 1, RL-1 in 7,11-15/2 inset 1'],
    ['where it was left out at the right', 1, 'right', 'R-1 in 3 inset 1, RL-1 in 7,11-15/2 inset 1'],
    ['or at the left', 1, 'left', 'L-1 in 3 inset 1, RL-1 in 7,11-15/2 inset 1'],
  ])('by the edges: %s', (_, off, at, shaping) => {
    expect(ways(both, off, 'RS', at)[0]).toBe(`edges a: a 20, ${shaping}`);
  });

  it('all of the decreases may be left out, and no more than all', () => {
    expect(ways(both, -8)[0]).toBe('edges a: a 20');
    expect(ways(both, -10)[0]).toBe('one row a 10: a 20, RL-1 in 3-15/4 inset 1, +10 across 1');
  });

  it('at the one edge that is shaped, whichever lacks it; increases the other way round', () => {
    const left = [section('a', 20, slant('left', 1, 3, 7, 11))];
    expect(ways(left, 1)[0]).toBe('edges a: a 20, L+1 in 3,11 inset 1');
    expect(ways(left, -1, 'WS', 'right')[0]).toBe('edges a: a 20, L+1 in 3,7-11/2 inset 1');
  });

  it('by the row that is spread, while it keeps its way; left out where nothing of it stays', () => {
    const spread = [section('a', 3, { kind: 'across', row: 2, by: 6 }), section('b', 4)];
    expect(ways(spread, 2)).toEqual([
      'spread row a: a 3, +4 across 2; b 4',
      'one row a 2: a 3, +6 across 2, -2 across 1; b 4',
      'one row a 2: a 3, +6 across 2, -2 across 3; b 4',
      'one row b 2: a 3, +6 across 2; b 4, -2 across 2',
      'one row b 2: a 3, +6 across 2; b 4, -2 across 4',
      'one row b 2: a 3, +6 across 2; b 4, -2 across 1',
      'one row b 2: a 3, +6 across 2; b 4, -2 across 3',
    ]);
    expect(ways(spread, 6)[0]).toBe('spread row a: a 3; b 4');
    expect(ways(spread, 8, 'WS')[0]).toBe('one row b 8: a 3, +6 across 2; b 4, -8 across 1');
  });

  it('by a row that spreads none so far, either way', () => {
    const none = [section('a', 3, { kind: 'across', row: 2, by: 0 })];
    expect([ways(none, 2)[0], ways(none, -2)[0]]).toEqual([
      'spread row a: a 3, -2 across 2',
      'spread row a: a 3, +2 across 2',
    ]);
  });

  it('else by a row of its own within twelve, RS rows first, none that is shaped', () => {
    const armhole = [section('a', 2, ...groups(1, 3)), section('b', 20)];
    expect(ways(armhole, -3).map((way) => way.slice(way.lastIndexOf('+3')))).toEqual(
      [1, 3, 5, 7, 9, 2, 4, 6, 8, 10].map((row) => `+3 across ${row}`),
    );
    expect(ways([section('b', 3)], 1, 'WS').map((way) => way.slice(-10))).toEqual([
      '1 across 2',
      '1 across 1',
      '1 across 3',
    ]);
  });
});

describe('the way that is taken', () => {
  // 4 rows over 20; 18 counted when the second section began, and ripped back since; 14 after the last row
  const narrowed = section('b', 4, { kind: 'across', row: 4, by: -4 });
  const sections = [section('a', 4), { ...narrowed, onNeedle: 18 }];

  it.each<PartRecipe['end']>(['hold', 'bind off'])(
    'leads to as many as planned; where a later count stands, what comes behind it takes nothing up: %s',
    (end) => {
      const recipe: Recipe = { name: 'P', makes: 1, parts: [part('P', 20, sections, end)] };
      const [planned] = partsOf(...recipe.parts);
      if (!planned) throw new Error('no plan');
      const made = rework(recipe, 0, planned, 2, { kind: 'accept', stitches: 21 });
      expect(made.ok && made.value.how).toEqual({
        code: 'one row',
        figures: { section: 'a', off: 1, stitches: 21 },
      });
      const rows = made.ok ? (made.value.parts[0]?.part.rows ?? []) : [];
      expect(rows.map(({ before }) => before).slice(2, 6)).toEqual([21, 20, 18, 18]);
      expect(end === 'hold' ? rows.at(-1)?.after : rows.at(-1)?.before).toBe(14);
    },
  );
});

describe('shaping laid anew', () => {
  it.each<[string, readonly number[], number, number, number, readonly number[]]>([
    ['over more rows, as many plain ones above it', [3, 7, 11], 14, 20, 3, [3, 11, 17]],
    ['more of it over as many', [3, 7, 11], 14, 14, 5, [3, 5, 7, 9, 11]],
    ['up to the end where there is no other room', [3, 7, 11], 14, 8, 3, [3, 5, 7]],
    ['shorter intervals first, as they were', [1, 3, 7], 10, 16, 4, [1, 5, 9, 13]],
    ['on any row where it was', [2, 3, 4], 6, 12, 4, [2, 5, 8, 10]],
    ['from the first row where nothing tells', [], 6, 12, 2, [1, 11]],
    ['none', [5], 6, 12, 0, []],
    ['on WS rows where it was', [4, 8], 12, 4, 2, [2, 4]],
  ])('%s', (_, old, oldRows, rows, times, laid) => {
    expect(layAnew(old, oldRows, rows, times)).toEqual({ ok: true, value: laid });
  });

  it('is refused with the most that the rows can hold', () => {
    const most = (old: readonly number[], rows: number, times: number) => {
      const laid = layAnew(old, 14, rows, times);
      return laid.ok ? undefined : laid.faults[0]?.figures;
    };
    expect(most([3, 7, 11], 6, 5)).toEqual({ times: 5, rows: 6, mostTimes: 3 });
    expect(most([4, 8], 4, 3)).toEqual({ times: 3, rows: 4, mostTimes: 2 });
    expect(most([4, 5], 4, 5)).toEqual({ times: 5, rows: 4, mostTimes: 4 });
  });
});
