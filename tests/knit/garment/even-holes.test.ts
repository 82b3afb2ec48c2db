import { describe, expect, it } from 'vitest';
import { evenPlaces } from '../../../src/knit/garment/even-holes.ts';

/* A stitch is 5 mm wide: 10 to 15 mm are two or three stitches, as near to 12.5 mm the one as the other. Holes of three. */
describe('holes at one distance', () => {
  const wish = {
    fabric: 'stocking',
    gauge: { stitches: 20, rows: 25 },
    stitches: 90,
    over: 80,
    buttonMm: 18,
  } as const;
  it.each([
    ['four', 'right', 4, 0, [2, 26, 50, 74]],
    ['at the left end of the band', 'left', 4, 0, [12, 36, 60, 84]],
    ['five, over 72 stitches again', 'right', 5, 0, [2, 20, 38, 56, 74]],
    ['two take the first margins', 'right', 2, 0, [2, 75]],
    ['one lies in the middle', 'right', 1, 0, [38]],
    ['at the left end it lies in the middle of that', 'left', 1, 0, [48]],
    ['none', 'right', 0, 0, undefined],
    // (80 - 3 - 2 - 2) / 12 = 6.1 stitches from one to the next: three of the hole, three between
    ['thirteen', 'right', 13, 0, [2, 8, 14, 20, 26, 32, 38, 44, 50, 56, 62, 68, 74]],
    ['fourteen do not fit', 'right', 14, 0, undefined],
  ] as const)('%s', (_, at, buttons, looks, places) => {
    expect(evenPlaces({ ...wish, at, buttons }, 3, looks)).toEqual(places);
  });

  /* In rib 2x2 each begins in the third column of four: 2, 6, ... 74, 18 repeats. */
  it.each([
    [4, [2, 26, 50, 74]],
    // 18 repeats in four: the two wider ones first
    [5, [2, 22, 42, 58, 74]],
    [1, [38]],
  ] as const)('%i in a rib', (buttons, places) => {
    expect(evenPlaces({ ...wish, fabric: 'rib 2x2', at: 'right', buttons }, 3, 2)).toEqual(places);
  });

  it('where no column lies so near the ends the nearest is taken', () => {
    // 4 stitches, 20 mm, from one end and one stitch, 5 mm, from the other: 7.5 mm off each; five would be 12.5 off
    expect(evenPlaces({ ...wish, fabric: 'rib 2x2', at: 'right', buttons: 2 }, 3, 0)).toEqual([4, 76]);
  });
});
