import { expect, it } from 'vitest';
import { type DesignName, designs } from './designs.ts';
import { drafted, even, recipeSaid } from './spelled.ts';

/*
 * Whole drafts, row by row, as `recipeSaid` has them: counts, rows, ends and totals are reckoned by hand from the even
 * figures of `spelled.ts`. In which rows single stitches of a curve go is held as it is, so that nothing moves unseen.
 */
const back1 = [
  'Back: back, 1',
  'Back = 78; hem 10 rib 2x2 3; body 74 stocking 4, +2 across 1; armhole 50 stocking 4, bind off R 1:3, bind off L 2:3, RL-1 in 3,7,13 inset 1; split',
  'right shoulder = 21 of Back right; shoulder 6 stocking 4, bind off R 1:5 3:5 5:4, bind off L 4:2, L-1 in 5 inset 1; bind off',
  'left shoulder = 47 of Back left; shoulder 7 stocking 4, bind off R 1:26 3:2, bind off L 2:5 4:5 6:4, R-1 in 5 inset 1; bind off',
] as const;
const sleeve1 = [
  'Sleeve: sleeve, 2',
  'Sleeve = 38; cuff 10 rib 2x2 3; sleeve 96 stocking 4, +2 across 1, RL+1 in 7-27/10,35-55/10,63-83/10,91 inset 1; cap 30 stocking 4, bind off R 1:3 3:2 5:2 29:2, bind off L 2:3 4:2 6:2 30:2, RL-1 in 7-27/2 inset 1; bind off',
] as const;
const neckband1 = [
  'Neckband: neckband, 1',
  'Neckband WS = 20 left front neck + 14 middle of the front neck + 20 right front neck + 40 back neck; band 6 rib 2x2 3; bind off',
] as const;
const sleeve2 = [
  'Sleeve: sleeve, 2',
  'Sleeve = 38; cuff 10 rib 2x2 3; sleeve 96 stocking 4, +2 across 1, RL+1 in 7-27/10,35-55/10,63-83/10,91 inset 1; raglan 56 stocking 4, bind off R 1:6, bind off L 2:6, RL-1 in 5-11/2,15-21/2,25-29/2,33-39/2,43-49/2,53,55 inset 1; bind off',
] as const;

const pieces: Readonly<Record<DesignName, readonly string[]>> = {
  'set in': [
    ...back1,
    'Front: front, 1',
    'Front = 78; hem 10 rib 2x2 3; body 74 stocking 4, +2 across 1; armhole 36 stocking 4, bind off R 1:3, bind off L 2:3, RL-1 in 3,7,13 inset 1; split',
    'left shoulder = 27 of Front right; armhole 14 stocking 4, bind off L 4:3 6:2, L-1 in 7-11/2 inset 1; shoulder 6 stocking 4, bind off R 1:5 3:5 5:4, L-1 in 1 inset 1; bind off',
    'right shoulder = 41 of Front left; armhole 14 stocking 4, bind off R 1:14 3:3 5:2, R-1 in 7-11/2 inset 1; shoulder 7 stocking 4, bind off L 2:5 4:5 6:4, R-1 in 1 inset 1; bind off',
    ...sleeve1,
    ...neckband1,
  ],
  drop: [
    'Back: back, 1',
    'Back = 78; hem 10 rib 2x2 3; body 80 stocking 4, +2 across 1; armhole 44 stocking 4; split',
    'right shoulder = 27 of Back right; armhole 6 stocking 4, bind off L 4:2, L-1 in 5 inset 1; bind off',
    'left shoulder = 53 of Back left; armhole 6 stocking 4, bind off R 1:26 3:2, R-1 in 5 inset 1; bind off',
    'Front: front, 1',
    'Front = 78; hem 10 rib 2x2 3; body 80 stocking 4, +2 across 1; armhole 30 stocking 4; split',
    'left shoulder = 24 of Front right; armhole 20 stocking 4; bind off',
    'right shoulder = 56 of Front left; armhole 20 stocking 4, bind off R 1:32; bind off',
    'Sleeve: sleeve, 2',
    'Sleeve = 38; cuff 10 rib 2x2 3; sleeve 116 stocking 4, +2 across 1, RL+1 in 5-35/6,39-63/6,67-97/6,101-113/6 inset 1; bind off',
    'Neckband: neckband, 1',
    'Neckband WS = 17 left front neck + 32 middle of the front neck + 17 right front neck + 40 back neck; band 6 rib 2x2 3, mitre at 16 in 2-6/2, mitre at 49 in 2-6/2; bind off',
  ],
  indented: [
    'Back: back, 1',
    'Back = 86; hem 10 rib 2x2 3; body 74 stocking 4, +2 across 1, RL-1 in 17-65/16 inset 1; armhole 50 stocking 4, bind off R 1:7, bind off L 2:7; split',
    'right shoulder = 20 of Back right; shoulder 6 stocking 4, bind off R 1:5 3:4 5:4, bind off L 4:2, L-1 in 5 inset 1; bind off',
    'left shoulder = 46 of Back left; shoulder 7 stocking 4, bind off R 1:26 3:2, bind off L 2:5 4:4 6:4, R-1 in 5 inset 1; bind off',
    'Front: front, 1',
    'Front = 86; hem 10 rib 2x2 3; body 74 stocking 4, +2 across 1, RL-1 in 17-65/16 inset 1; armhole 36 stocking 4, bind off R 1:7, bind off L 2:7; split',
    'left shoulder = 22 of Front right; armhole 14 stocking 4, L-1 in 3-9/2,13 inset 1; shoulder 6 stocking 4, bind off R 1:5 3:4 5:4; bind off',
    'right shoulder = 44 of Front left; armhole 14 stocking 4, bind off R 1:22, R-1 in 3-9/2,13 inset 1; shoulder 7 stocking 4, bind off L 2:5 4:4 6:4; bind off',
    'Sleeve: sleeve, 2',
    'Sleeve = 38; cuff 10 rib 2x2 3; sleeve 116 stocking 4, +2 across 1, RL+1 in 7-79/6,83-107/4 inset 1; top 8 stocking 4; bind off',
    'Neckband: neckband, 1',
    'Neckband WS = 17 left front neck + 22 middle of the front neck + 17 right front neck + 38 back neck; band 6 rib 2x2 3; bind off',
  ],
  raglan: [
    'Back: back, 1',
    'Back = 86; hem 10 rib 2x2 3; body 74 stocking 4, +2 across 1, RL-1 in 5-19/2,23-29/2 inset 1, RL+1 in 33-45/6,49-61/6,65,71 inset 1; raglan 56 stocking 4, bind off R 1:6, bind off L 2:6, RL-1 in 5,7,11,13,17,19,23,25,29-33/2,37,39,43,45,49,51,55 inset 1; bind off',
    'Front: front, 1',
    'Front = 86; hem 10 rib 2x2 3; body 74 stocking 4, +2 across 1, RL-1 in 5-19/2,23-29/2 inset 1, RL+1 in 33-45/6,49-61/6,65,71 inset 1; raglan 36 stocking 4, bind off R 1:6, bind off L 2:6, RL-1 in 5,7,11,13,17,19,23,25,29-33/2 inset 1; split',
    'left front = 17 of Front right; raglan 20 stocking 4, bind off L 4:3, R-1 in 1,3,13,19 inset 1, L-1 in 5,11 inset 1, RL-1 in 7,9 inset 1, RL-1 in 15 inset 0; bind off',
    'right front = 29 of Front left; raglan 20 stocking 4, bind off R 1:12 3:3, L-1 in 1,3,13,19 inset 1, R-1 in 5,11 inset 1, RL-1 in 7,9 inset 1, RL-1 in 15 inset 0; bind off',
    ...sleeve2,
    'Neckband: neckband, 1',
    'Neckband WS = 6 left sleeve top + 19 left front neck + 12 middle of the front neck + 19 right front neck + 6 right sleeve top + 32 back neck; band 6 rib 2x2 3; bind off',
  ],
  'raglan with a V': [
    'Back: back, 1',
    'Back = 78; hem 10 rib 2x2 3; body 74 stocking 4, +2 across 1; raglan 56 stocking 4, bind off R 1:6, bind off L 2:6, RL-1 in 5-37/4,39-55/2 inset 1; bind off',
    'Front: front, 1',
    'Front = 78; hem 10 rib 2x2 3; body 74 stocking 4, +2 across 1; raglan 16 stocking 4, bind off R 1:6, bind off L 2:6, RL-1 in 5-13/4 inset 1; split',
    'left front = 31 of Front right; raglan 40 stocking 4, R-1 in 1,9,23,29,37 inset 1, L-1 in 3-11/4,19 inset 1, RL-1 in 5,13-25/4,27,31-35/2 inset 1, RL-1 in 39 inset 0; bind off',
    'right front = 31 of Front left; raglan 40 stocking 4, L-1 in 1,9,23,29,37 inset 1, R-1 in 3-11/4,19 inset 1, RL-1 in 5,13-25/4,27,31-35/2 inset 1, RL-1 in 39 inset 0; bind off',
    'Sleeve: sleeve, 2',
    'Sleeve = 38; cuff 10 rib 2x2 3; sleeve 96 stocking 4, +2 across 1, RL+1 in 11-31/10,39-87/8 inset 1; raglan 56 stocking 4, bind off R 1:6, bind off L 2:6, RL-1 in 5-25/4,27-55/2 inset 1; bind off',
    'Neckband: neckband, 1',
    'Neckband WS = 6 left sleeve top + 35 left front neck + 1 point of the V + 35 right front neck + 6 right sleeve top + 31 back neck; band 6 rib 2x2 3, mitre at 41 in 2-6/2; bind off',
  ],
  cardigan: [
    ...back1,
    'Front: front, 2 mirrored',
    'Front = 38; hem 10 rib 2x2 3; body 74 stocking 4; armhole 50 stocking 4, bind off R 1:3, bind off L 38:6 40:3, R-1 in 3,7,13 inset 1, L-1 in 41-47/2 inset 1; shoulder 6 stocking 4, bind off R 1:5 3:5 5:4, L-1 in 1 inset 1; bind off',
    ...sleeve1,
    'Neckband: neckband, 1',
    'Neckband WS = 26 right front neck + 38 back neck + 26 left front neck; band 6 rib 2x2 3; bind off',
    'Button band: front band, 1',
    'Button band WS = 101 left front edge; band 5 rib 1x1 matched 3; bind off',
    'Buttonhole band: front band, 1',
    'Buttonhole band WS = 101 right front edge; band 1 rib 1x1 matched 3; button holes 2 rib 1x1 matched 3, in words; band 2 rib 1x1 matched 3; bind off',
  ],
  'cardigan with a V': [
    ...back1,
    'Front: front, 2 mirrored',
    'Front = 38; hem 10 rib 2x2 3; body 74 stocking 4; armhole 50 stocking 4, bind off R 1:3, R-1 in 3,7,13 inset 1, L-1 in 19-23/2,27,29,33-37/2,41,43,47,49 inset 1; shoulder 6 stocking 4, bind off R 1:5 3:5 5:4, L-1 in 1,5 inset 1; bind off',
    ...sleeve1,
    'Front band: front band, 1',
    'Front band WS = 82 right front edge + 34 right front neck + 39 back neck + 34 left front neck + 82 left front edge; band 1 rib 1x1 matched 3; button holes 2 rib 1x1 matched 3, in words; band 2 rib 1x1 matched 3; bind off',
  ],
  vest: [
    'Back: back, 1',
    'Back = 78; hem 10 rib 2x2 3; body 74 stocking 4, +2 across 1; armhole 50 stocking 4, bind off R 1:3, bind off L 2:3, RL-1 in 3,7,13 inset 1; shoulder 4 stocking 4, turn R 2:6 4:6, turn L 1:6 3:6; shoulder 2 stocking 4; hold',
    'Front: front, 1',
    'Front = 78; hem 10 rib 2x2 3; body 74 stocking 4, +2 across 1; armhole 50 stocking 4, bind off R 1:3, bind off L 2:3, RL-1 in 3,7,13 inset 1; shoulder 4 stocking 4, turn R 2:6 4:6, turn L 1:6 3:6; shoulder 2 stocking 4; hold',
    'Neckband: neckband, 1',
    'Neckband WS = 32 front neck + 34 back neck; band 6 rib 2x2 3; bind off',
    'Armhole band: armhole band, 2',
    'Armhole band WS = 43 front armhole + 43 back armhole; band 4 rib 2x2 3; bind off',
  ],
  'from the top down': [
    'Back: back, 1',
    'Back = 78; hem 10 rib 2x2 3; body 74 stocking 4, +2 across 1; armhole 50 stocking 4, bind off R 1:3, bind off L 2:3, RL-1 in 3,7,13 inset 1; split',
    'right shoulder = 21 of Back right; shoulder 4 stocking 4, turn R 2:6 4:6, bind off L 4:2; shoulder 2 stocking 4, L-1 in 1 inset 1; bind off',
    'left shoulder = 47 of Back left; shoulder 4 stocking 4, bind off R 1:26 3:2, turn L 1:6 3:6; shoulder 2 stocking 4, R-1 in 1 inset 1; bind off',
    'Front: front, 1',
    'Front = 78; hem 10 rib 2x2 3; body 74 stocking 4, +2 across 1; armhole 36 stocking 4, bind off R 1:3, bind off L 2:3, RL-1 in 3,7,13 inset 1; split',
    'left shoulder = 27 of Front right; armhole 14 stocking 4, bind off L 4:3 6:2, L-1 in 7-11/2 inset 1; shoulder 4 stocking 4, turn R 2:6 4:6, L-1 in 1 inset 1; shoulder 2 stocking 4; bind off',
    'right shoulder = 41 of Front left; armhole 14 stocking 4, bind off R 1:14 3:3 5:2, R-1 in 7-11/2 inset 1; shoulder 4 stocking 4, turn L 1:6 3:6, R-1 in 1 inset 1; shoulder 2 stocking 4; bind off',
    'Sleeve: sleeve, 2',
    'Sleeve = 20; cap 30 stocking 4, cast on R 3:2 27:2 29:2, cast on L 4:2 28:2 30:2, RL+1 in 5-25/2 inset 1; sleeve 94 stocking 4, cast on R 1:3, cast on L 2:3; sleeve 2 stocking 4, -22 across 1; cuff 10 rib 2x2 3; bind off',
    ...neckband1,
  ],
  'without borders': [
    'Back: back, 1',
    'Back = 80; body 84 stocking 4; armhole 50 stocking 4, bind off R 1:3, bind off L 2:3, RL-1 in 3,7,13 inset 1; split',
    'right shoulder = 21 of Back right; shoulder 6 stocking 4, bind off R 1:5 3:5 5:4, bind off L 4:2, L-1 in 5 inset 1; bind off',
    'left shoulder = 47 of Back left; shoulder 7 stocking 4, bind off R 1:26 3:2, bind off L 2:5 4:5 6:4, R-1 in 5 inset 1; bind off',
    'Front: front, 1',
    'Front = 80; body 84 stocking 4; armhole 36 stocking 4, bind off R 1:3, bind off L 2:3, RL-1 in 3,7,13 inset 1; split',
    'left shoulder = 27 of Front right; armhole 14 stocking 4, bind off L 4:3 6:2, L-1 in 7-11/2 inset 1; shoulder 6 stocking 4, bind off R 1:5 3:5 5:4, L-1 in 1 inset 1; bind off',
    'right shoulder = 41 of Front left; armhole 14 stocking 4, bind off R 1:14 3:3 5:2, R-1 in 7-11/2 inset 1; shoulder 7 stocking 4, bind off L 2:5 4:5 6:4, R-1 in 1 inset 1; bind off',
    'Sleeve: sleeve, 2',
    'Sleeve = 60; sleeve 100 stocking 4; cap 30 stocking 4, bind off R 1:3 3:2 5:2 29:2, bind off L 2:3 4:2 6:2 30:2, RL-1 in 7-27/2 inset 1; bind off',
  ],
  'square raglan cardigan': [
    'Back: back, 1',
    'Back = 78; hem 10 rib 2x2 3; body 74 stocking 4, +2 across 1; raglan 56 stocking 4, bind off R 1:6, bind off L 2:6, RL-1 in 5,7,11,13,17,19,23,25,29-33/2,37,39,43,45,49,51,55 inset 1; bind off',
    'Front: front, 2 mirrored',
    'Front = 38; hem 10 rib 2x2 3; body 74 stocking 4; raglan 56 stocking 4, bind off R 1:6, bind off L 38:12, R-1 in 5,7,11,13,17,19,23,25,29-33/2,37,39,43,45,49,51,55 inset 1; bind off',
    ...sleeve2,
    'Neckband: neckband, 1',
    'Neckband WS = 28 right front neck + 6 right sleeve top + 34 back neck + 6 left sleeve top + 28 left front neck; band 6 rib 2x2 3, mitre at 16 in 2-6/2, mitre at 85 in 2-6/2; bind off',
    'Button band: front band, 1',
    'Button band WS = 101 right front edge; band 5 rib 1x1 matched 3; bind off',
    'Buttonhole band: front band, 1',
    'Buttonhole band WS = 101 left front edge; band 1 rib 1x1 matched 3; button holes 2 rib 1x1 matched 3, in words; band 2 rib 1x1 matched 3; bind off',
  ],
};

it.each(Object.entries(pieces))('the pieces of a draft: %s', (name, lines) => {
  expect(drafted(designs[name as DesignName]).recipes.flatMap(recipeSaid)).toEqual(lines);
});

/** Designs that differ in one thing from one above: the lines that are others. */
it.each<[string, Parameters<typeof drafted>[0], readonly string[]]>([
  [
    // 25 mm are five stitches, of six at either side
    'a vest whose underarm is bound off first',
    { kind: 'vest', underarmMm: 25 },
    [
      'Back = 78; hem 10 rib 2x2 3; body 74 stocking 4, +2 across 1; armhole 50 stocking 4, bind off R 1:5, bind off L 2:5, RL-1 in 5 inset 1; split',
      'Front = 78; hem 10 rib 2x2 3; body 74 stocking 4, +2 across 1; armhole 36 stocking 4, bind off R 1:5, bind off L 2:5, RL-1 in 5 inset 1; split',
      'Armhole band WS = 45 front armhole + 45 back armhole; band 4 rib 2x2 3; bind off',
    ],
  ],
  [
    // 14 of 16 stitches of each front lie level beside the band; 98 stitches have their corners as far from either end
    'a cardigan with a square neck',
    { kind: 'cardigan', neck: { ...even.neck, shape: 'square' } },
    [
      'Front = 38; hem 10 rib 2x2 3; body 74 stocking 4; armhole 50 stocking 4, bind off R 1:3, bind off L 38:14, R-1 in 3,7,13 inset 1; shoulder 6 stocking 4, bind off R 1:5 3:5 5:4; bind off',
      'Neckband WS = 30 right front neck + 38 back neck + 30 left front neck; band 6 rib 2x2 3, mitre at 16 in 2-6/2, mitre at 81 in 2-6/2; bind off',
    ],
  ],
  [
    // one pair of rows of cuff, then all 22 stitches at once
    'a cuff of two rows, widened at once',
    { cuff: { ...even.cuff, heightMm: 8 }, sleeve: { ...even.sleeve, shape: 'after cuff' } },
    [
      'Sleeve = 38; cuff 2 rib 2x2 3; sleeve 104 stocking 4, +22 across 1; cap 30 stocking 4, bind off R 1:3 3:2 5:2 29:2, bind off L 2:3 4:2 6:2 30:2, RL-1 in 7-27/2 inset 1; bind off',
    ],
  ],
  [
    'a square neck in garter stitch, which has no columns to fit',
    { neck: { ...even.neck, shape: 'square' }, neckband: { ...even.neckband, fabric: 'garter' } },
    [
      'Neckband WS = 17 left front neck + 32 middle of the front neck + 17 right front neck + 38 back neck; band 8 garter 3, mitre at 16 in 2-8/2, mitre at 49 in 2-8/2; bind off',
    ],
  ],
])('the pieces of a draft: %s', (_, changes, lines) => {
  const said = drafted(changes).recipes.flatMap(recipeSaid);
  expect(lines.filter((line) => !said.includes(line))).toEqual([]);
});

it('a border has a band however low it is, and none where it has no height', () => {
  const bands = (changes: Parameters<typeof drafted>[0]) =>
    drafted(changes)
      .recipes.slice(2)
      .map(({ name }) => name);
  const low = (border: 'armholeBand' | 'neckband' | 'frontBand', heightMm: number) => ({
    [border]: { ...even[border], heightMm, ...(border === 'frontBand' ? { buttons: 0 } : {}) },
  });
  const V = { ...even.neck, shape: 'V' } as const;
  expect(bands({ kind: 'vest', ...low('armholeBand', 1) })).toEqual(['Neckband', 'Armhole band']);
  expect(bands({ kind: 'vest', ...low('armholeBand', 0) })).toEqual(['Neckband']);
  expect(bands({ kind: 'vest', ...low('neckband', 1) })).toEqual(['Neckband', 'Armhole band']);
  expect(bands({ kind: 'vest', ...low('neckband', 0) })).toEqual(['Armhole band']);
  expect(bands({ kind: 'cardigan', ...low('frontBand', 1) })).toEqual([
    'Sleeve',
    'Neckband',
    'Button band',
    'Buttonhole band',
  ]);
  expect(bands({ kind: 'cardigan', ...low('frontBand', 0) })).toEqual(['Sleeve', 'Neckband']);
  expect(bands({ kind: 'cardigan', neck: V, ...low('frontBand', 1) })).toEqual(['Sleeve', 'Front band']);
  expect(bands({ kind: 'cardigan', neck: V, ...low('frontBand', 0) })).toEqual(['Sleeve', 'Neckband']);
});

it('button holes lie in the middle of their band, as near as rows that begin on the RS allow', () => {
  const rows = (heightMm: number) =>
    drafted({ kind: 'cardigan', frontBand: { ...even.frontBand, heightMm } })
      .recipes.find(({ name }) => name === 'Buttonhole band')
      ?.parts[0]?.sections.map((one) => one.rows);
  expect([16, 20, 24, 28, 32, 36, 40, 44, 48, 52].map(rows)).toEqual([
    [1, 2, 1],
    [1, 2, 2],
    [1, 2, 3],
    [3, 2, 2],
    [3, 2, 3],
    [3, 2, 4],
    [3, 2, 5],
    [5, 2, 4],
    [5, 2, 5],
    [5, 2, 6],
  ]);
});

it('an armhole band takes all of its edge, unless a share of it is asked for', () => {
  const band = (depth: number, percent?: number) =>
    drafted({
      kind: 'vest',
      body: { ...even.body, armholeDepth: depth },
      armholeBand: { ...even.armholeBand, fabric: 'garter', ...(percent === undefined ? {} : { percent }) },
    })
      .recipes.flatMap(recipeSaid)
      .find((line) => line.startsWith('Armhole band WS'));
  const depths = [160, 165, 170, 175, 180, 185, 190, 195, 200];
  expect(depths.map((depth) => band(depth))).toEqual(depths.map((depth) => band(depth, 100)));
  expect(depths.map((depth) => band(depth))).not.toEqual(depths.map((depth) => band(depth, 101)));
});
