import { expect, it } from 'vitest';
import type { MeasuredGauge } from '../../../../src/knit/measured-gauge.ts';
import { formToRecipe } from '../../../../src/knit/piece/form/read-piece.ts';
import { starterSizes } from '../../../../src/knit/piece/form/starter-sizes.ts';
import { type StarterName, type StarterWords, starter } from '../../../../src/knit/piece/form/starters.ts';
import { recipeSaid } from '../../garment/spelled.ts';

const words = new Proxy({}, { get: (_, name) => String(name) }) as StarterWords;

/*
 * Reckoned by hand from our own sizes: 540 mm wide, rib 60, body 340, armhole 220 high and 50 in, shoulders 110; a sleeve
 * of 230 and 420 mm over 400; a band of 25. Ribs over two more than a multiple of four.
 */
it.each<[MeasuredGauge, StarterName, readonly string[]]>([
  [
    { stitches: 20, rows: 25 },
    'back',
    [
      'back: back, 1',
      'back = 110; rib 16 rib 2x2 3.5; body 86 stocking 4; armholes 56 stocking 4, bind off R 1:5, bind off L 2:5, RL-1 in 3-11/2 inset 2; shoulders 6 stocking 4, bind off R 1:8 3:7 5:7, bind off L 2:8 4:7 6:7; hold',
    ],
  ],
  [
    { stitches: 20, rows: 25 },
    'front',
    [
      'front: front, 1',
      'body = 110; rib 16 rib 2x2 3.5; body 86 stocking 4; armholes 12 stocking 4, bind off R 1:5, bind off L 2:5, RL-1 in 3-11/2 inset 2; split',
      'leftShoulder RS = 45 of body right; neck 44 stocking 4, L-1 in 1-43/2,44 inset 2; shoulders 4 stocking 4, bind off R 1:8 3:7; bind off',
      'rightShoulder RS = 45 of body left; neck 44 stocking 4, R-1 in 1-43/2,44 inset 2; shoulders 5 stocking 4, bind off L 2:8 4:7; bind off',
    ],
  ],
  [
    { stitches: 20, rows: 25 },
    'sleeve',
    [
      'sleeve: sleeve, 2',
      'sleeve = 46; cuff 16 rib 2x2 3.5; sleeve 100 stocking 4, RL+1 in 5-53/6,57-93/4 inset 2; bind off',
    ],
  ],
  [
    { stitches: 20, rows: 25 },
    'neckband',
    [
      'neckband: neckband, 1',
      'neckband WS = 33 leftNeck + 1 point + 33 rightNeck + 46 backNeck; band 6 rib 1x1 matched 3.5, mitre at 33 in 2-6/2; bind off',
    ],
  ],
  // ten stitches of garter are 10.5 of stocking stitch, fifteen rows of it 10.7
  [
    { stitches: 10, rows: 15, fabric: 'garter' },
    'back',
    [
      'back: back, 1',
      'back = 54; rib 6 rib 2x2 3.5; body 52 garter 4; armholes 34 garter 4, bind off R 1:3, bind off L 2:3, RL-1 in 3,5 inset 2; shoulders 6 garter 4, bind off R 1:4 3:4 5:3, bind off L 2:4 4:4 6:3; hold',
    ],
  ],
  [
    { stitches: 10, rows: 15, fabric: 'garter' },
    'neckband',
    [
      'neckband: neckband, 1',
      'neckband WS = 21 leftNeck + 1 point + 21 rightNeck + 22 backNeck; band 2 rib 1x1 matched 3.5, mitre at 21 in 2; bind off',
    ],
  ],
])('%j, a %s to begin with', (gauge, name, lines) => {
  const read = formToRecipe(starter(name, { gauge, needle: 4, words }));
  expect(read.ok && recipeSaid(read.value)).toEqual(lines);
});

it('its ribs are half a millimetre thinner, and never thinner than two', () => {
  const [rib] =
    starter('back', { gauge: { stitches: 30, rows: 40 }, needle: 2.25, words }).parts[0]?.sections ?? [];
  expect(rib?.needle).toBe('2');
});

it('a sleeve that would widen more often than it has rows widens on each from the fifth to the sixth before the last', () => {
  // 57 stitches at either edge over 40 rows
  const read = formToRecipe(starter('sleeve', { gauge: { stitches: 60, rows: 10 }, needle: 4, words }));
  const sleeve = read.ok ? read.value.parts[0]?.sections[1] : undefined;
  expect(sleeve?.rows).toBe(40);
  expect(sleeve?.shaping).toMatchObject([
    { edge: 'both', by: 1, rows: Array.from({ length: 30 }, (_, i) => i + 5) },
  ]);
});

/* 91.8 and 39.1 stitches are 90 and 38, two more than a multiple of four; 8.5 are nine, 18.7 nineteen, 71.4 of a sleeve over a cuff of 38 are 34 more; 39.1 pairs of rows are 39. */
it('halves of stitches and of rows are rounded to the nearest', () => {
  expect(starterSizes({ stitches: 17, rows: 23 })).toMatchObject({
    width: 90,
    armholeGroup: 5,
    armholeSingles: 4,
    shoulder: 19,
    top: 72,
    backNeck: 34,
    cuff: 38,
    sleeveTop: 72,
    bodyRows: 78,
    armholeRows: 50,
    shapedRows: 10,
    neckRows: 40,
    sleeveRows: 92,
    steps: 3,
  });
  // 230 mm are 39.9, nearer to 38 than to 42
  expect(starterSizes({ stitches: 17.35, rows: 24 }).cuff).toBe(38);
  // 50.4 mm of ten stitches are five, 80 mm of shoulder at 7.2 to 100 mm eight: two steps
  expect(starterSizes({ stitches: 7.2, rows: 10 })).toMatchObject({
    armholeGroup: 2,
    armholeSingles: 2,
    shoulder: 8,
    steps: 2,
  });
});

it('on the finest needles has every length to the millimetre: a stitch of 1 mm, a pair of rows of 1 mm', () => {
  expect(starterSizes({ stitches: 100, rows: 200 })).toMatchObject({
    // 540 mm are 134.5 fours and two
    width: 542,
    armholeRows: 440,
    bodyRows: 680,
    sleeveRows: 800,
    // 50 mm at either armhole: half of them at once, the others one by one after a pair of rows
    armholeGroup: 25,
    armholeSingles: 25,
    shapedRows: 52,
    neckRows: 388,
    top: 442,
    shoulder: 110,
    backNeck: 222,
    steps: 3,
    cuff: 230,
    sleeveTop: 420,
  });
});
