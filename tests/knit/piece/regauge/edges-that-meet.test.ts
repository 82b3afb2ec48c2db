import { describe, expect, it } from 'vitest';
import type { Recipe, Section, Shaping } from '../../../../src/knit/piece/recipe.ts';
import { regauge } from '../../../../src/knit/piece/regauge/regauge.ts';
import { recipeSaid } from '../../garment/spelled.ts';
import { atEdge } from '../shapings.ts';

/*
 * Half a front whose armhole (its right edge) and neck meet in a tip of two or three stitches. The armhole keeps to
 * its share of the rows; where both would end in the same rows, so that the last few stitches are too few for two
 * decreases in a row, those of the neck end two rows sooner, or as many as it takes.
 */

const every = (second: number, times: number) => Array.from({ length: times }, (_, i) => 1 + second * i);

const half = (castOn: number, rows: number, ...shaping: readonly Shaping[]): Recipe => {
  const section: Section = { name: 'top', rows, fabric: 'stocking', needle: 4, shaping };
  return {
    name: 'Front',
    role: 'left front',
    makes: 1,
    gauge: { stitches: 20, rows: 20 },
    parts: [{ name: 'half', from: { castOn }, sections: [section], end: 'bind off' }],
  };
};

function again(recipe: Recipe, stitches: number, rows: number): string | undefined {
  const made = regauge(recipe, { stitches: 20 * stitches, rows: 20 * rows });
  return made.ok ? recipeSaid(made.value)[1] : made.faults.map(({ code }) => code).join();
}

describe('two edges that meet in another gauge', () => {
  it.each<[string, Recipe, stitches: number, rows: number, wanted: string]>([
    [
      'have room: one decrease at the armhole, three at the neck',
      half(8, 10, atEdge('right', -1, 1), atEdge('left', -1, ...every(2, 5))),
      0.75,
      0.75,
      'half = 6; top 8 stocking 4, R-1 in 1 inset 1, L-1 in 1,5,7 inset 1; bind off',
    ],
    [
      'two rows sooner: 12 less four and five are three, the last of the neck in row 5 and not in 7',
      half(10, 8, atEdge('right', -1, ...every(2, 3)), atEdge('left', -1, ...every(2, 4))),
      1.25,
      0.9,
      'half = 12; top 8 stocking 4, R-1 in 1-7/2 inset 1, L-1 in 1-5/1 inset 1; bind off',
    ],
    [
      'four rows sooner: 7 less two and three are two, the last of the neck in row 13 and not in 17',
      half(13, 14, atEdge('right', -1, ...every(2, 4)), atEdge('left', -1, ...every(2, 7))),
      0.5,
      1.25,
      'half = 7; top 18 stocking 4, R-1 in 1,9 inset 1, L-1 in 1-13/6 inset 1; bind off',
    ],
    [
      'six rows sooner: 30 less twelve and sixteen are two, the last of the neck in row 19 and not in 25',
      half(20, 20, atEdge('right', -1, ...every(2, 8)), atEdge('left', -1, ...every(2, 10))),
      1.5,
      1.25,
      'half = 30; top 26 stocking 4, R-1 in 1-23/2 inset 1, L-1 in 1-7/2,8-19/1 inset 1; bind off',
    ],
    [
      'eight rows sooner: 14 less six and six are two, the last of the neck in row 13 and not in 21',
      half(28, 28, atEdge('right', -1, ...every(2, 12)), atEdge('left', -1, ...every(2, 14))),
      0.5,
      0.75,
      'half = 14; top 22 stocking 4, R-1 in 1-13/4,15,17 inset 1, L-1 in 1,5-13/2 inset 1; bind off',
    ],
    [
      'and are told where no row sooner helps: four stitches in row 1, which takes six',
      half(8, 10, atEdge('right', -1, 1), atEdge('left', -1, ...every(2, 5))),
      0.5,
      0.5,
      'shaping needs more stitches',
    ],
    [
      'or where there are not rows enough: seven decreases in six',
      half(8, 10, atEdge('right', -1, 1), atEdge('left', -1, ...every(2, 5))),
      1.25,
      0.5,
      'shaping does not fit',
    ],
  ])('%s', (_, recipe, stitches, rows, wanted) => {
    expect(again(recipe, stitches, rows)).toBe(wanted);
  });
});
