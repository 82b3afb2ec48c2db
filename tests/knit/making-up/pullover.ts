import type { Recipe } from '../../../src/knit/piece/recipe.ts';
import { groups, off, part, piece, section, slant } from './by-hand.ts';

/*
 * A doll's pullover with set-in sleeves, reckoned in the head: a stitch is 4 mm wide and a row 3 mm high, in rib 2 mm by
 * 5 mm. Back and front have 30 stitches; 3 and 2 go at each armhole, 6 at each shoulder, 8 at the neck.
 */
const below = [section('rib', 4), section('body', 6)];

export const back = piece('Back', 'back', [
  part('Back', 30, [
    ...below,
    section('armhole', 8, ...groups(1, 3), slant('both', -1, 3, 5)),
    section('shoulders', 2, ...groups(1, 3)),
  ]),
]);

export const front = piece('Front', 'front', [
  part('Body', 30, [...below, section('armhole', 4, ...groups(1, 3), slant('both', -1, 3))], 'split'),
  part('Right', { part: 'Body', stitches: 9, edge: 'right' }, [
    section('neck', 4, slant('right', -1, 1), slant('left', -1, 1, 3)),
    section('shoulder', 2, off('right', 1, 3)),
  ]),
  part('Middle', { part: 'Body', stitches: 4, edge: 'middle' }, [], 'hold'),
  part('Left', { part: 'Body', stitches: 9, edge: 'left' }, [
    section('neck', 4, slant('left', -1, 1), slant('right', -1, 1, 3)),
    section('shoulder', 3, off('left', 2, 3)),
  ]),
]);

export const sleeve = piece(
  'Sleeve',
  'sleeve',
  [
    part('Sleeve', 12, [
      section('rib', 2),
      section('sleeve', 8, slant('both', 1, 3, 5)),
      section('cap', 6, ...groups(1, 3), slant('both', -1, 3, 5)),
    ]),
  ],
  { makes: 2 },
);

/** Its 22 stitches go round: 5 along each side of the neck, 4 at the middle, 8 behind. */
export const neckband: Recipe = piece('Neckband', 'neckband', [
  part(
    'Neckband',
    {
      pickUp: [
        { along: 'left front neck', stitches: 5 },
        { along: 'middle of the front neck', stitches: 4 },
        { along: 'right front neck', stitches: 5 },
        { along: 'back neck', stitches: 8 },
      ],
    },
    [section('rib', 3)],
  ),
]);

/** Fourteen stitches go round each armhole. */
export const armholeBand = piece(
  'Armhole band',
  'armhole band',
  [
    part(
      'Band',
      {
        pickUp: [
          { along: 'left front armhole', stitches: 6 },
          { along: 'left back armhole', stitches: 8 },
        ],
      },
      [section('rib', 3)],
    ),
  ],
  { makes: 2 },
);
