import { describe, expect, it } from 'vitest';
import { type Finished, finished, neckWorn } from '../../../src/knit/making-up/finished.ts';
import { makingUpOf } from '../../../src/knit/making-up/making-up.ts';
import type { Recipe } from '../../../src/knit/piece/recipe.ts';
import { standing } from './by-hand.ts';
import { armholeBand, back, front, neckband, sleeve } from './pullover.ts';
import { cardigan, cardiganBands, drop, fromTheTop, indented, raglan, raglanBand } from './shapes.ts';

/*
 * Measures of small garments, reckoned on paper: a stitch is 4 mm wide and a row 3 mm high, in rib 2 mm by 5 mm; a seam takes
 * a stitch of each edge. A decrease in every second row is a slant of 4 by 6 mm.
 */
const SLANT = Math.hypot(4, 6);

const measured = (pieces: readonly Recipe[]): Finished => {
  const garment = standing(...pieces);
  return finished(makingUpOf(garment).worked, garment);
};

/** Each side of the straight front's neck: a slant and two plain rows; four stitches between them, six behind. */
const smallNeck = 2 * (SLANT + 2 * 3) + 4 * 4 + 6 * 4;

const pullover = {
  // 30 less 2 of each
  chest: 2 * 28 * 4,
  // four rows of rib, sixteen above
  length: 4 * 5 + 16 * 3,
  // of 30 stitches 20 are left between the armholes; of the sleeve two rows of rib and fourteen
  napeToCuff: (18 * 4) / 2 + 2 * 5 + 14 * 3,
  // 12 and 4 more; 12 in rib
  upperArm: 14 * 4,
  wrist: 10 * 2,
  // three stitches level, two slants and four rows, in back and front
  armhole: 2 * (3 * 4 + 2 * SLANT + 4 * 3),
};

describe('what a garment measures', () => {
  it.each<[string, readonly Recipe[], Partial<Finished>]>([
    ['a pullover with its band', [back, front, sleeve, neckband], { ...pullover, neckWithBand: 22 * 2 }],
    [
      'a dropped sleeve',
      drop,
      {
        chest: 2 * 18 * 4,
        length: 12 * 3,
        napeToCuff: (18 * 4) / 2 + 6 * 3,
        upperArm: 8 * 4,
        wrist: 6 * 4,
        neck: smallNeck,
        // half of its top, 20 mm, is five rows of each
        armhole: 2 * 5 * 3,
      },
    ],
    [
      'an armhole with a corner of two stitches',
      indented,
      {
        chest: 2 * 22 * 4,
        length: 12 * 3,
        napeToCuff: (18 * 4) / 2 + 6 * 3,
        upperArm: 8 * 4,
        wrist: 6 * 4,
        neck: smallNeck,
        armhole: 2 * (2 * 4 + 6 * 3),
      },
    ],
    [
      // of 22 stitches ten go on the lines; the band is 36 in rib
      'a raglan with its band',
      [...raglan, raglanBand],
      {
        chest: 2 * 20 * 4,
        length: 12 * 3,
        napeToCuff: (10 * 4) / 2 + 12 * 3,
        upperArm: 12 * 4,
        wrist: 12 * 4,
        neckWithBand: 36 * 2,
      },
    ],
    [
      'an open front: each half is sewn at one side',
      cardigan,
      { chest: 18 * 4 + 2 * 9 * 4, length: 12 * 3, upperArm: 8 * 4, armhole: 2 * 5 * 3 },
    ],
    [
      'and with bands, of which one lies between the fronts',
      [...cardigan, ...cardiganBands],
      { chest: 18 * 4 + 2 * 9 * 4 + 3 * 5, neckWithBand: 12 * 2 },
    ],
    [
      // 6 stitches, four more and six at the underarms; four fewer at the wrist
      'a sleeve from the top down',
      [fromTheTop],
      { upperArm: 14 * 4, wrist: 10 * 4, chest: undefined, length: undefined, napeToCuff: undefined },
    ],
    [
      'armholes that are left free, round back and front',
      [back, front],
      { chest: pullover.chest, length: pullover.length, armhole: pullover.armhole, napeToCuff: undefined },
    ],
    [
      'armholes with bands: the edge that the bands are picked up along, not that of the bands',
      [back, front, armholeBand],
      { chest: pullover.chest, length: pullover.length, armhole: pullover.armhole, napeToCuff: undefined },
    ],
    [
      'a back alone has no chest',
      [back],
      {
        chest: undefined,
        napeToCuff: undefined,
        upperArm: undefined,
        wrist: undefined,
        length: pullover.length,
      },
    ],
  ])('%s', (_, pieces, wanted) => {
    const found = measured(pieces);
    for (const [name, mm] of Object.entries(wanted)) {
      const is = found[name as keyof Finished];
      if (mm === undefined) expect(is, name).toBeUndefined();
      else expect(is, name).toBeCloseTo(mm, 6);
    }
  });

  it('a neck without a band is the neck itself, as it is worn too; with one its edge is worn', () => {
    const bare = measured([back, front, sleeve]);
    expect(bare.neckWithBand).toBe(bare.neck);
    expect(neckWorn(bare)).toBe(bare.neck);
    expect(neckWorn(measured([back, front, sleeve, neckband]))).toBeCloseTo(44, 6);
    expect(neckWorn({ neck: 90, neckWithBand: undefined })).toBe(90);
  });
});
