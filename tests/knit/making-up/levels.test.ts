import { describe, expect, it } from 'vitest';
import type { LaidLine } from '../../../src/knit/making-up/boundary-of.ts';
import { levelsOf } from '../../../src/knit/making-up/levels.ts';
import { makingUpOf } from '../../../src/knit/making-up/making-up.ts';
import type { Recipe } from '../../../src/knit/piece/recipe.ts';
import { standing } from './by-hand.ts';
import { back, front, neckband, sleeve } from './pullover.ts';
import { cardigan, cardiganBands, drop, indented, raglan } from './shapes.ts';

/*
 * Edges that are worn level though no seam joins them, counted on paper: above the underarm the front is as high as the back,
 * through the parts that go on from it; a button band is as high as the one it lies on.
 */

const lineSaid = ({ laid, rows, stitches }: LaidLine): string => {
  const stretches = laid.map(({ stretch }) => {
    const { piece, make, part, edge, rows: of } = stretch;
    return `${piece} ${make} ${part} ${edge}${of ? ` ${of.first}-${of.last}` : ''}`;
  });
  return `${stretches.join(' + ')} = ${rows} rows, ${stitches} stitches`;
};

function levels(...pieces: readonly Recipe[]): readonly string[] {
  const garment = standing(...pieces);
  return levelsOf(garment, makingUpOf(garment).worked).map(
    ({ of, lines: [a, b] }) => `${of}: ${lineSaid(a)}; ${lineSaid(b)}`,
  );
}

const straight = [
  'above the underarm: Front 1 Front right 8-12 = 5 rows, 0 stitches; Back 1 Back left 8-12 = 5 rows, 0 stitches',
  'above the underarm: Front 2 Front left 8-12 = 5 rows, 0 stitches; Back 1 Back right 8-12 = 5 rows, 0 stitches',
];
const band = 'bands: Buttons 1 Buttons right = 3 rows, 0 stitches; Holes 1 Holes right = 3 rows, 0 stitches';

describe('edges that are worn level', () => {
  it.each<[string, readonly Recipe[], readonly string[]]>([
    [
      // four rows of armhole, four of neck, two or three of shoulder; three bound off at the underarm, three at the shoulder
      'from a shaped underarm to the shoulder',
      [back, front, sleeve, neckband],
      [
        'above the underarm: Front 1 Body right 11-14 + Front 1 Right right = 10 rows, 6 stitches; Back 1 Back left 11-20 = 10 rows, 6 stitches',
        'above the underarm: Front 1 Body left 11-14 + Front 1 Left left = 11 rows, 6 stitches; Back 1 Back right 11-20 = 10 rows, 6 stitches',
      ],
    ],
    [
      // half of the sleeve's top, seven rows, are below the shoulder
      'from where a dropped sleeve begins',
      drop,
      [
        'above the underarm: Front 1 Body right 8-8 + Front 1 Right right = 5 rows, 0 stitches; Back 1 Back left 8-12 = 5 rows, 0 stitches',
        'above the underarm: Front 1 Body left 8-8 + Front 1 Left left = 5 rows, 0 stitches; Back 1 Back right 8-12 = 5 rows, 0 stitches',
      ],
    ],
    [
      'from where two stitches are bound off',
      indented,
      [
        'above the underarm: Front 1 Body right 7-8 + Front 1 Right right = 6 rows, 2 stitches; Back 1 Back left 7-12 = 6 rows, 2 stitches',
        'above the underarm: Front 1 Body left 7-8 + Front 1 Left left = 6 rows, 2 stitches; Back 1 Back right 7-12 = 6 rows, 2 stitches',
      ],
    ],
    ['none of a raglan, whose lines go up to the neck', raglan, []],
    ['of two fronts, each beside its own side of the back', cardigan, straight],
    ['and their two bands', [...cardigan, ...cardiganBands], [...straight, band]],
    ['not of one band alone', [...cardigan, ...cardiganBands.slice(0, 2)], straight],
    ['none where nothing is joined at the sides', [back], []],
  ])('%s', (_, pieces, wanted) => {
    expect(levels(...pieces)).toEqual(wanted);
  });

  it.each([
    ['is worked from the top down, so that its underarm is its end', { reversed: true }],
    ['lies along no side', { edge: 'top' }],
  ])('none where the side seam %s', (_, over) => {
    const garment = standing(...drop);
    const worked = makingUpOf(garment).worked.map((one) => ({
      ...one,
      lines: one.lines.map((line) =>
        line && one.joint.kind === 'seam' && one.joint.of === 'side'
          ? { ...line, laid: line.laid.map((laid) => ({ ...laid, stretch: { ...laid.stretch, ...over } })) }
          : line,
      ),
    }));
    expect(levelsOf(garment, worked as ReturnType<typeof makingUpOf>['worked'])).toEqual([]);
  });
});
