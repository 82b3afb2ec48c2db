import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type FabricName, fabrics } from '../../../src/knit/fabric.ts';
import { buttonholePlaces, holeStitches } from '../../../src/knit/garment/buttonholes.ts';
import { holeRows, holesIn, movedHoles, scaledHoles } from '../../../src/knit/piece/hole-rows.ts';
import { workRow } from '../../../src/knit/row/work.ts';

/*
 * Holes alike in the rib, spread evenly, first and last at a fixed distance from the ends: K. Buss, Big Book of Knitting (by its
 * look; zanotowane.pl/713/7815), single rib, 3 or 5 stitches beginning and ending on a knit stitch; the margin is common
 * practice, no published source.
 */
const wishes = fc.record({
  fabric: fc.constantFrom<FabricName>('rib 1x1', 'rib 2x2', 'garter', 'rib 1x1 matched'),
  stitches: fc.integer({ min: 40, max: 160 }),
  buttons: fc.integer({ min: 1, max: 7 }),
  at: fc.constantFrom('right' as const, 'left' as const),
  buttonMm: fc.constantFrom(undefined, 13, 18),
});

function holesOf(wish: typeof wishes extends fc.Arbitrary<infer T> ? T : never) {
  const whole = { ...wish, over: wish.stitches, gauge: { stitches: 20, rows: 28 } };
  const places = buttonholePlaces(whole);
  return places && { places, stitches: holeStitches(whole) };
}

const isKnit = (fabric: FabricName, column: number): boolean => {
  const face = fabrics[fabric].rows[0] ?? 'k';
  return face[column % face.length] === 'k';
};

describe('the rows of button holes', () => {
  it('are read from their words as they were laid, and come out even', () => {
    fc.assert(
      fc.property(wishes, (wish) => {
        const holes = holesOf(wish);
        if (!holes) return;
        const rows = holeRows(holes, wish.fabric, wish.stitches, 3);
        expect(holesIn(rows, wish.stitches)).toEqual(holes);
        const taken = holes.places.length * holes.stitches;
        expect(workRow(rows[0] ?? [], wish.stitches)).toMatchObject({
          value: { after: wish.stitches - taken },
        });
        expect(workRow(rows[1] ?? [], wish.stitches - taken)).toMatchObject({
          value: { after: wish.stitches },
        });
      }),
      { endOnFailure: true },
    );
  });

  it('are no others: decreases, or a row alone', () => {
    expect(holesIn([[{ work: 'k2tog', times: 2 }], [{ work: 'p', until: { left: 0 } }]], 4)).toBeUndefined();
    expect(holesIn([[{ work: 'k', until: { left: 0 } }]], 4)).toBeUndefined();
    expect(
      holesIn([[{ work: 'k', until: { left: 0 } }], [{ work: 'p', until: { left: 0 } }]], 4),
    ).toBeUndefined();
  });
});

describe('button holes of a band that is made longer or shorter', () => {
  it('stay as many and as wide, look alike, as far from both ends to a repeat, and evenly apart to one', () => {
    let moved = 0;
    fc.assert(
      fc.property(wishes, fc.integer({ min: -24, max: 40 }), (wish, by) => {
        const holes = holesOf(wish);
        const { fabric, stitches } = wish;
        if (!holes || stitches + by < 2) return;
        const now = movedHoles(holes, fabric, { from: 0, to: stitches }, { from: 0, to: stitches + by });
        if (!now) return;
        moved += 1;
        const period = fabrics[fabric].rows[0]?.length ?? 1;
        expect(now.places.length).toBe(holes.places.length);
        expect(now.stitches).toBe(holes.stitches);
        for (const place of now.places)
          expect(isKnit(fabric, place)).toBe(isKnit(fabric, holes.places[0] ?? 0));
        expect(Math.abs((now.places[0] ?? 0) - (holes.places[0] ?? 0))).toBeLessThanOrEqual(period);
        if (now.places.length > 1) {
          const left = (one: typeof now, all: number) => all - (one.places.at(-1) ?? 0) - one.stitches;
          expect(Math.abs(left(now, stitches + by) - left(holes, stitches))).toBeLessThanOrEqual(period);
          const gaps = now.places.slice(1).map((place, i) => place - (now.places[i] ?? 0));
          expect(Math.max(...gaps) - Math.min(...gaps)).toBeLessThanOrEqual(period);
          expect(Math.min(...gaps)).toBeGreaterThan(now.stitches);
        }
      }),
      { endOnFailure: true },
    );
    expect(moved).toBeGreaterThan(40);
  });

  it('have no room in a band that is too short', () => {
    const holes = { places: [4, 14, 24], stitches: 3 };
    expect(movedHoles(holes, 'garter', { from: 0, to: 32 }, { from: 0, to: 12 })).toBeUndefined();
    expect(movedHoles(holes, 'garter', { from: 0, to: 32 }, { from: 0, to: 52 })).toEqual({
      places: [4, 24, 44],
      stitches: 3,
    });
  });

  it('in another gauge are as wide in its measure: 3 of 20 stitches to 10 cm are 5 of 30', () => {
    expect(scaledHoles({ places: [4, 24, 44], stitches: 3 }, 'rib 1x1', 60, 90)).toEqual({
      places: [6, 36, 66],
      stitches: 5,
    });
  });
});
