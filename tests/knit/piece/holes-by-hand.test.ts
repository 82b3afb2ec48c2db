import { describe, expect, it } from 'vitest';
import { holesIn, movedHoles, scaledHoles } from '../../../src/knit/piece/hole-rows.ts';
import type { Step } from '../../../src/knit/row/step.ts';

/* Button holes of three stitches at 4, 12 and 20 of a band of 27, in single rib: every place is even, so that a hole begins on a knit stitch. */
const holes = { places: [4, 12, 20], stitches: 3 };

describe('button holes over another count', () => {
  it('of twice as many stitches lie twice as far from the edge and are as odd as they were', () => {
    // three become six, of odd ones seven
    expect(scaledHoles(holes, 'rib 1x1', 27, 54)).toEqual({ places: [8, 24, 40], stitches: 7 });
  });

  it('of as many are what they were', () => {
    expect(scaledHoles(holes, 'rib 1x1', 27, 27)).toEqual(holes);
  });

  it('take three stitches at the least where they are odd, two where they are even', () => {
    expect(scaledHoles({ places: [10, 40], stitches: 3 }, 'garter', 60, 30)).toEqual({
      places: [5, 20],
      stitches: 3,
    });
    expect(scaledHoles({ places: [10, 40], stitches: 2 }, 'garter', 60, 30)).toEqual({
      places: [5, 20],
      stitches: 2,
    });
  });

  it('have no room where two of them would touch', () => {
    expect(scaledHoles(holes, 'rib 1x1', 27, 9)).toBeUndefined();
  });
});

describe('button holes in another part of a band', () => {
  const band = (from: number, to: number) => ({ from, to });

  it('keep the first and the last as far from its ends, those between them even', () => {
    expect(movedHoles(holes, 'rib 1x1', band(0, 27), band(0, 35))).toEqual({
      places: [4, 16, 28],
      stitches: 3,
    });
    expect(movedHoles(holes, 'garter', band(0, 27), band(0, 30))).toEqual({
      places: [4, 14, 23],
      stitches: 3,
    });
    // begun ten stitches further on
    expect(movedHoles(holes, 'rib 1x1', band(0, 27), band(10, 37))).toEqual({
      places: [14, 22, 30],
      stitches: 3,
    });
  });

  it('keep to the columns of the rib that look alike', () => {
    // a stitch more: the last one would begin on a purl stitch
    const moved = movedHoles(holes, 'rib 1x1', band(0, 27), band(0, 28));
    expect(moved?.places.map((place) => place % 2)).toEqual([0, 0, 0]);
    expect(
      movedHoles({ places: [4, 12, 20], stitches: 2 }, 'rib 2x2', band(0, 26), band(0, 34))?.places,
    ).toEqual([4, 16, 28]);
  });

  it('leave a stitch at each end of it', () => {
    expect(movedHoles({ places: [0], stitches: 3 }, 'garter', band(0, 20), band(0, 20))?.places).toEqual([1]);
    expect(movedHoles({ places: [17], stitches: 3 }, 'garter', band(0, 20), band(0, 20))?.places).toEqual([
      16,
    ]);
    expect(movedHoles({ places: [1], stitches: 3 }, 'garter', band(0, 20), band(0, 4))).toBeUndefined();
  });

  it('have no room where they touch', () => {
    // three of three stitches, one between each: four apart
    expect(
      movedHoles({ places: [1, 5, 9], stitches: 3 }, 'garter', band(0, 13), band(0, 13))?.places,
    ).toEqual([1, 5, 9]);
    expect(
      movedHoles({ places: [1, 5, 9], stitches: 3 }, 'garter', band(0, 13), band(0, 11)),
    ).toBeUndefined();
  });
});

describe('rows that are read as button holes', () => {
  const k = (times: number): Step => ({ work: 'k', times });
  const bo = (times: number): Step => ({ work: 'bo', times });
  const co = (times: number): Step => ({ work: 'co', times });

  it('bind off as many at each place, and cast on in one row more', () => {
    const back = [k(4), co(3), k(5), co(3), k(4)];
    expect(holesIn([[k(4), bo(3), k(5), bo(3), k(4)], back], 19)).toEqual({ places: [4, 12], stitches: 3 });
  });

  it('are none where two holes differ, a stitch is shaped, or there is another row', () => {
    const back = [k(4), co(3), k(5), co(2), k(4)];
    expect(holesIn([[k(4), bo(3), k(5), bo(2), k(4)], back], 18)).toBeUndefined();
    expect(holesIn([[k(4), bo(3), k(10), { work: 'k2tog', times: 1 }], [k(15)]], 19)).toBeUndefined();
    expect(holesIn([[k(4), bo(3), k(12)], [k(12), co(3), k(4)], [k(19)]], 19)).toBeUndefined();
    expect(holesIn([[k(4), bo(3), k(12)]], 19)).toBeUndefined();
    expect(holesIn([[k(19)], [k(19)]], 19)).toBeUndefined();
    // a stitch is slipped beside the hole, or a row ends before all are worked
    const slipped: Step = { work: 'sl', times: 1 };
    expect(
      holesIn(
        [
          [slipped, k(3), bo(3), k(12)],
          [k(12), co(3), k(4)],
        ],
        19,
      ),
    ).toBeUndefined();
    expect(
      holesIn(
        [
          [k(4), bo(3), k(10)],
          [k(12), co(3), k(4)],
        ],
        19,
      ),
    ).toBeUndefined();
  });
});
