import { describe, expect, it } from 'vitest';
import type { Recipe } from '../../../../src/knit/piece/recipe.ts';
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
        'Body = 40; rib 4 rib 2x2 4; body 6 stocking 4; armhole 4 stocking 4, bind off R 1:4, bind off L 2:4, RL-1 in 3 inset 1; split',
        'Right = 12 of Body right; neck 4 stocking 4, R-1 in 1 inset 1, L-1 in 1-3/1 inset 1; shoulder 2 stocking 4, bind off R 1:4; bind off',
        'Middle = 6 of Body middle; hold',
        'Left = 12 of Body left; neck 4 stocking 4, L-1 in 1 inset 1, R-1 in 1-3/1 inset 1; shoulder 3 stocking 4, bind off L 2:4; bind off',
      ],
    ],
    [
      sleeve,
      [
        'Sleeve: sleeve, 2',
        'Sleeve = 16; rib 2 rib 2x2 4; sleeve 8 stocking 4, RL+1 in 3-7/2 inset 1; cap 6 stocking 4, bind off R 1:4, bind off L 2:4, RL-1 in 3-5/1 inset 1; bind off',
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
