import { describe, expect, it } from 'vitest';
import type { Recipe, Shaping } from '../../../../src/knit/piece/recipe.ts';
import { regauge } from '../../../../src/knit/piece/regauge/regauge.ts';
import { roundLike, roundParts } from '../../../../src/knit/piece/regauge/round-to.ts';
import { told } from '../../../told.ts';
import { recipeSaid } from '../../garment/spelled.ts';
import { gauge, part, piece, section } from '../../making-up/by-hand.ts';
import { back, front, neckband, sleeve } from '../../making-up/pullover.ts';

const inGauge = (recipe: Recipe, stitches: number, rows: number): Recipe => {
  const made = regauge(recipe, { stitches: gauge.stitches * stitches, rows: gauge.rows * rows });
  if (!made.ok) throw new Error(told(made.faults));
  return made.value;
};

const widening = piece('Skirt', 'other', [
  part('Skirt', 20, [
    section('rib', 4),
    section('a', 8, { kind: 'across', row: 1, by: 6 }),
    section(
      'b',
      6,
      { kind: 'cast on', edge: 'right', groups: [{ row: 1, stitches: 4 }] },
      { kind: 'turn', edge: 'left', groups: [3, 5].map((row) => ({ row, stitches: 3 })) },
    ),
  ]),
]);

/* Reckoned by hand from the pullover of `pullover.ts`: as wide and as high as before, counts as even or odd as they were. */
describe('twice as many stitches, as many rows', () => {
  it.each<[Recipe, readonly string[]]>([
    [
      back,
      [
        'Back: back, 1',
        'Back = 60; rib 4 rib 2x2 4; body 6 stocking 4; armhole 8 stocking 4, bind off R 1:6, bind off L 2:6, RL-1 in 3-7/2,8 inset 1; shoulders 2 stocking 4, bind off R 1:6, bind off L 2:6; bind off',
      ],
    ],
    [
      front,
      [
        'Front: front, 1',
        'Body = 60; rib 4 rib 2x2 4; body 6 stocking 4; armhole 4 stocking 4, bind off R 1:6, bind off L 2:6, RL-1 in 3,4 inset 1; split',
        'Right = 18 of Body right; neck 4 stocking 4, R-1 in 1,3 inset 1, L-1 in 1-4/1 inset 1; shoulder 2 stocking 4, bind off R 1:6; bind off',
        'Middle = 8 of Body middle; hold',
        'Left = 18 of Body left; neck 4 stocking 4, L-1 in 1,3 inset 1, R-1 in 1-4/1 inset 1; shoulder 3 stocking 4, bind off L 2:6; bind off',
      ],
    ],
    [
      neckband,
      [
        'Neckband: neckband, 1',
        'Neckband = 10 left front neck + 8 middle of the front neck + 10 right front neck + 16 back neck; rib 3 rib 2x2 4; bind off',
      ],
    ],
  ])('%#', (recipe, lines) => {
    expect(recipeSaid(inGauge(recipe, 2, 1))).toEqual(lines);
  });

  it('other fabrics’ gauges change as the main one does, and hers is kept', () => {
    const made = inGauge(back, 2, 1);
    expect(made.gauges).toEqual({ 'rib 2x2': { stitches: 100, rows: 20 } });
    expect(made.gauge).toEqual({ stitches: 50, rows: gauge.rows });
  });
});

/* The 22 stitches before the neck are 28.6, so 28, of which 12 are each side; a sleeve of 16 is 20.8, so 20, and its top of 6 is 8. */
describe('three stitches for ten more, nine rows for ten', () => {
  it.each<[Recipe, readonly string[]]>([
    [
      back,
      [
        'Back: back, 1',
        'Back = 40; rib 4 rib 2x2 4; body 6 stocking 4; armhole 8 stocking 4, bind off R 1:4, bind off L 2:4, RL-1 in 3-7/2 inset 1; shoulders 2 stocking 4, bind off R 1:4, bind off L 2:4; bind off',
      ],
    ],
    [
      front,
      [
        'Front: front, 1',
        'Body = 40; rib 4 rib 2x2 4; body 6 stocking 4; armhole 4 stocking 4, bind off R 1:4, bind off L 2:4, RL-1 in 3,4 inset 1; split',
        'Right = 12 of Body right; neck 4 stocking 4, R-1 in 1 inset 1, L-1 in 1-3/1 inset 1; shoulder 2 stocking 4, bind off R 1:4; bind off',
        'Middle = 4 of Body middle; hold',
        'Left = 12 of Body left; neck 4 stocking 4, L-1 in 1 inset 1, R-1 in 1-3/1 inset 1; shoulder 3 stocking 4, bind off L 2:4; bind off',
      ],
    ],
    [
      sleeve,
      [
        'Sleeve: sleeve, 2',
        'Sleeve = 16; rib 2 rib 2x2 4; sleeve 8 stocking 4, RL+1 in 3,5 inset 1; cap 6 stocking 4, bind off R 1:4, bind off L 2:4, RL-1 in 3,5 inset 1; bind off',
      ],
    ],
    [
      neckband,
      [
        'Neckband: neckband, 1',
        'Neckband = 7 left front neck + 5 middle of the front neck + 7 right front neck + 11 back neck; rib 3 rib 2x2 4; bind off',
      ],
    ],
    [
      widening,
      [
        'Skirt: other, 1',
        'Skirt = 26; rib 4 rib 2x2 4; a 8 stocking 4, +8 across 1; b 6 stocking 4, cast on R 1:5, turn L 3:4 5:4; bind off',
      ],
    ],
  ])('%#', (recipe, lines) => {
    expect(recipeSaid(inGauge(recipe, 1.3, 0.9))).toEqual(lines);
  });
});

describe('counts that do not come out', () => {
  const tab = (from: number, ...first: readonly Shaping[]) =>
    piece('Tab', 'other', [part('Tab', from, [section('rib', 4, ...first)])]);
  const across = (by: number): Shaping => ({ kind: 'across', row: 1, by });
  const said = (recipe: Recipe, stitches: number) => recipeSaid(inGauge(recipe, stitches, 1)).slice(1);

  // 21 stitches, spread to 22 in the first row: an odd count stands for it until the rib's own is nearest
  it('go to the nearest that the rib takes, of two as near to the smaller', () => {
    // 31.5 is 31, between 30 and 32
    expect(said(tab(21, across(1)), 1.5)).toEqual(['Tab = 32; rib 4 rib 2x2 4, +2 across 1; bind off']);
    // 63 is as near to 62 as to 64, and a twenty-first of 62 is 3: 65 is none, 66 is
    expect(said(tab(21, across(1)), 3)).toEqual(['Tab = 62; rib 4 rib 2x2 4, +4 across 1; bind off']);
  });

  it('are two at the least in a rib, however few they would be', () => {
    expect(said(tab(4), 0.1)).toEqual(['Tab = 2; rib 4 rib 2x2 4; bind off']);
  });

  it('of one or two stitches picked up stay, of three they grow', () => {
    const band = (...stitches: readonly number[]) =>
      piece('Band', 'other', [
        part('Band', { pickUp: stitches.map((count, i) => ({ along: `edge ${i}`, stitches: count })) }, [
          section('a', 3),
        ]),
      ]);
    const counts = (...stitches: readonly number[]) => {
      const { from } = inGauge(band(...stitches), 2, 1).parts[0] ?? {};
      return from && 'pickUp' in from ? from.pickUp.map((edge) => edge.stitches) : [];
    };
    expect(counts(10, 1, 12)).toEqual([20, 1, 24]);
    expect(counts(10, 2, 12)).toEqual([20, 2, 24]);
    expect(counts(10, 3, 11)).toEqual([20, 6, 22]);
    // edges that were alike are alike
    expect(counts(7, 1, 7, 9)).toEqual([14, 1, 14, 19]);
  });

  it('after short rows all stitches are there, to be shared', () => {
    const share = (name: string, edge: 'right' | 'left') =>
      part(name, { part: 'Body', edge, stitches: 20 }, [section('top', 4)]);
    const turn: Shaping = { kind: 'turn', edge: 'left', groups: [{ row: 1, stitches: 6 }] };
    const body = part('Body', 40, [section('slope', 2, turn), section('plain', 2)], 'split');
    const halves = piece('Back', 'back', [body, share('Right', 'right'), share('Left', 'left')]);
    expect(said(halves, 1.5)).toEqual([
      'Body = 60; slope 2 stocking 4, turn L 1:9; plain 2 stocking 4; split',
      'Right = 30 of Body right; top 4 stocking 4; bind off',
      'Left = 30 of Body left; top 4 stocking 4; bind off',
    ]);
  });

  it('are one at the least in plain fabric', () => {
    expect(said(piece('Tab', 'other', [part('Tab', 3, [section('a', 2)], 'hold')]), 0.1)).toEqual([
      'Tab = 1; a 2 stocking 4; hold',
    ]);
  });

  it('before a corner are those of the edges before it, one of a stitch among them', () => {
    const band = (corner: number) =>
      piece('Band', 'other', [
        part('Band', { pickUp: [10, 1, 13].map((stitches, i) => ({ along: `edge ${i}`, stitches })) }, [
          section('a', 3, { kind: 'middle', rows: [2], from: corner }),
        ]),
      ]);
    const corners = (corner: number) =>
      inGauge(band(corner), 2, 1).parts.flatMap(({ sections }) =>
        sections.flatMap(({ shaping }) => shaping.map((one) => (one.kind === 'middle' ? one.from : []))),
      );
    expect(corners(10)).toEqual([20]);
    expect(corners(11)).toEqual([21]);
    // between two edges of a kind it goes by its share
    expect(corners(5)).toEqual([10]);
  });

  it('without a section are as they would be in plain fabric', () => {
    const bare = piece('Cord', 'other', [part('Cord', 5, [], 'hold')]);
    expect(said(bare, 2.2)).toEqual(['Cord = 11; hold']);
  });
});

describe('whole numbers', () => {
  it('are as odd or even as what they come from', () => {
    expect([4.9, 5.1, 6.9, 7.1].map((value) => roundLike(value, 2))).toEqual([4, 6, 6, 8]);
    expect([3.9, 4.1, 5.9, 6.1].map((value) => roundLike(value, 3))).toEqual([3, 5, 5, 7]);
    expect(roundLike(-5.9, -3)).toBe(-5);
  });

  it('add up to their rounded sum, each as near as that allows', () => {
    expect(roundParts([1.4, 1.4, 1.4])).toEqual([1, 2, 1]);
    expect(roundParts([2.5, 2.5])).toEqual([3, 2]);
    expect(roundParts([])).toEqual([]);
  });
});
