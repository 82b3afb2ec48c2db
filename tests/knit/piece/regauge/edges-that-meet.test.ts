import { describe, expect, it } from 'vitest';
import type { Recipe, Section, Shaping } from '../../../../src/knit/piece/recipe.ts';
import { regauge } from '../../../../src/knit/piece/regauge/regauge.ts';
import { recipeSaid } from '../../garment/spelled.ts';
import { atEdge, boundOff } from '../shapings.ts';

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

describe('a shoulder of which the body binds off the first stitches', () => {
  const section = (name: string, rows: number, ...shaping: readonly Shaping[]): Section => ({
    name,
    rows,
    fabric: 'stocking',
    needle: 4,
    shaping,
  });
  const from = (edge: 'right' | 'middle' | 'left', stitches: number) => ({ part: 'body', edge, stitches });

  it('has as many as the whole of it: twelve are eighteen, five of them below and thirteen above', () => {
    const body = section('slope', 2, boundOff('right', [1, 3]), boundOff('left', [2, 3]));
    const recipe: Recipe = {
      name: 'Back',
      makes: 1,
      gauge: { stitches: 20, rows: 20 },
      parts: [
        { name: 'body', from: { castOn: 44 }, sections: [section('a', 4), body], end: 'split' },
        {
          name: 'right',
          from: from('right', 11),
          sections: [
            section('neck', 4, atEdge('left', -1, 1, 3)),
            section('slope', 3, boundOff('right', [1, 4], [3, 5])),
          ],
          end: 'bind off',
        },
        { name: 'middle', from: from('middle', 16), sections: [], end: 'bind off' },
        {
          name: 'left',
          from: from('left', 11),
          sections: [
            section('neck', 4, atEdge('right', -1, 1, 3)),
            section('slope', 4, boundOff('left', [2, 4], [4, 5])),
          ],
          end: 'bind off',
        },
      ],
    };
    const made = regauge(recipe, { stitches: 30, rows: 20 });
    expect(made.ok ? recipeSaid(made.value).slice(1) : made.faults).toEqual([
      'body = 66; a 4 stocking 4; slope 2 stocking 4, bind off R 1:5, bind off L 2:5; split',
      'right = 17 of body right; neck 4 stocking 4, L-1 in 1-4/1 inset 1; slope 3 stocking 4, bind off R 1:6 3:7; bind off',
      'middle = 22 of body middle; bind off',
      'left = 17 of body left; neck 4 stocking 4, R-1 in 1-4/1 inset 1; slope 4 stocking 4, bind off L 2:6 4:7; bind off',
    ]);
  });
});

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
      // row 121 of 124 is 73.8 of 76 by the share of the rows, and 62.2 twelve rows sooner
      'twelve rows sooner, where eight do not do: 48 less 27 and 19 are two, the last of the neck in row 63',
      half(52, 124, atEdge('right', -1, ...every(4, 29)), atEdge('left', -1, ...every(6, 21))),
      0.93,
      0.61,
      'half = 48; top 76 stocking 4, R-1 in 1-33/4,35-69/2 inset 1, L-1 in 1-53/4,55-63/2 inset 1; bind off',
    ],
    [
      'in the last row: 11 less two and six are the three that were left',
      { ...half(7, 11, atEdge('right', -1, 1), atEdge('left', -1, 3, 7, 11)) },
      1.5,
      1,
      'half = 11; top 11 stocking 4, R-1 in 1,3 inset 1, L-1 in 3-9/2,10,11 inset 1; bind off',
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
