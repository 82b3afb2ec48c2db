import type { Recipe } from '../../../src/knit/piece/recipe.ts';
import { groups, part, piece, section, slant } from './by-hand.ts';

/** Small pieces of the shapes that are told apart: 4 mm a stitch, 3 mm a row. What their sections are called tells nothing. */

const straightBack = piece('Back', 'back', [part('Back', 20, [section('a', 12)])]);
const straightFront = piece('Front', 'front', [
  part('Body', 20, [section('a', 8)], 'split'),
  part('Right', { part: 'Body', stitches: 8, edge: 'right' }, [section('b', 4, slant('left', -1, 1))]),
  part('Middle', { part: 'Body', stitches: 4, edge: 'middle' }, [], 'hold'),
  part('Left', { part: 'Body', stitches: 8, edge: 'left' }, [section('b', 4, slant('right', -1, 1))]),
]);
/** 10 stitches at its top, 40 mm: 20 mm down each armhole are seven rows, to the nearest. */
const straightSleeve = piece(
  'Sleeve',
  'sleeve',
  [part('Sleeve', 8, [section('a', 6, slant('both', 1, 3))])],
  {
    makes: 2,
  },
);
export const drop: readonly Recipe[] = [straightBack, straightFront, straightSleeve];

const corner = (name: string, rows: number) => section(name, rows, ...groups(1, 2));
/** Two stitches, 8 mm, go at each underarm: three rows of the sleeve's sides, to the nearest. */
export const indented: readonly Recipe[] = [
  piece('Back', 'back', [part('Back', 24, [section('a', 6), corner('b', 6)])]),
  piece('Front', 'front', [
    part('Body', 24, [section('a', 6), corner('b', 2)], 'split'),
    ...straightFront.parts.slice(1),
  ]),
  straightSleeve,
];

const raglanRows = (rows: number, ...at: readonly number[]) =>
  section('b', rows, ...groups(1, 2), slant('both', -1, ...at));
export const raglan: readonly Recipe[] = [
  piece('Back', 'back', [part('Back', 22, [section('a', 4), raglanRows(8, 3, 5, 7)])]),
  piece('Front', 'front', [
    part('Body', 22, [section('a', 4), raglanRows(4, 3)], 'split'),
    part('Right', { part: 'Body', stitches: 7, edge: 'right' }, [
      section('b', 4, slant('both', -1, 1), slant('right', -1, 3)),
    ]),
    part('Middle', { part: 'Body', stitches: 2, edge: 'middle' }, [], 'hold'),
    part('Left', { part: 'Body', stitches: 7, edge: 'left' }, [
      section('b', 4, slant('both', -1, 1), slant('left', -1, 3)),
    ]),
  ]),
  piece('Sleeve', 'sleeve', [part('Sleeve', 14, [section('a', 4), raglanRows(8, 3, 5, 7)])], { makes: 2 }),
];

/** Half fronts of one piece: the first make is the left one, its side at the right edge. */
const halfFront = piece(
  'Front',
  'front',
  [part('Front', 10, [section('a', 8), section('b', 4, slant('left', -1, 1, 3))])],
  { makes: 2, mirrored: true },
);
export const cardigan: readonly Recipe[] = [straightBack, halfFront, straightSleeve];

/** A cap that is begun at its top, with three stitches cast on at each underarm; a set-in armhole of 14 rows for it. */
const cast = (edge: 'right' | 'left', row: number) =>
  ({ kind: 'cast on', edge, groups: [{ row, stitches: 3 }] }) as const;
export const fromTheTop = piece(
  'Sleeve',
  'sleeve',
  [
    part('Sleeve', 6, [
      section('a', 6, slant('both', 1, 2, 4), cast('right', 5), cast('left', 6)),
      section('b', 8, slant('both', -1, 3, 7)),
    ]),
  ],
  { makes: 2 },
);

/** A back whose shoulders are worked in short rows: two turns of three stitches on each side, then all are held. */
const turns = (edge: 'right' | 'left', ...rows: readonly number[]) =>
  ({ kind: 'turn', edge, groups: rows.map((row) => ({ row, stitches: 3 })) }) as const;
export const shortRows = piece('Back', 'back', [
  part(
    'Back',
    20,
    [section('a', 8), section('b', 4, turns('left', 1, 3), turns('right', 2, 4)), section('c', 2)],
    'hold',
  ),
]);

/** Bands in rib, 2 mm a stitch and 5 mm a row. */
const band = (
  name: string,
  role: 'neckband' | 'front band',
  along: Readonly<Record<string, number>>,
): Recipe =>
  piece(name, role, [
    part(name, { pickUp: Object.entries(along).map(([edge, stitches]) => ({ along: edge, stitches })) }, [
      section('rib', 3),
    ]),
  ]);
export const raglanBand = band('Neckband', 'neckband', {
  'left sleeve top': 4,
  'left front neck': 7,
  'centre front': 2,
  'right front neck': 7,
  'right sleeve': 4,
  'back neck': 12,
});
export const cardiganBands: readonly Recipe[] = [
  band('Neckband', 'neckband', { 'right front neck': 4, 'back neck': 4, 'left front neck': 4 }),
  band('Buttons', 'front band', { 'left front edge': 12 }),
  band('Holes', 'front band', { 'right front edge': 12 }),
];
