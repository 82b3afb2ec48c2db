import { describe, expect, it } from 'vitest';
import { asPlanned } from '../../../src/knit/piece/as-planned.ts';
import type { Garment } from '../../../src/knit/piece/garment.ts';
import { ballsOf, shareKnitted } from '../../../src/knit/yarn/balls.ts';
import { yarnOf } from '../../../src/knit/yarn/need.ts';
import { told } from '../../told.ts';

/** 20 stitches cast on and 9 rows: 200 loops. */
const square: Garment['pieces'][number] = {
  name: 'square',
  makes: 2,
  gauge: { stitches: 20, rows: 28 },
  parts: [
    {
      name: 'square',
      from: { castOn: 20 },
      end: 'hold',
      sections: [{ name: 'plain', rows: 9, fabric: 'stocking', needle: 4, shaping: [] }],
    },
  ],
};

/** A swatch of 20 stitches and 9 rows (the cast-on is a row of loops too) that weighs 10 g of 2 m each: 100 mm a loop. */
const garment: Garment = {
  name: 'squares',
  pieces: [square],
  yarns: [{ name: 'Hollin', grams: 50, metres: 100 }],
  swatches: [
    {
      fabric: 'stocking',
      stitches: 20,
      widthMm: 100,
      rows: 28,
      heightMm: 100,
      needle: 4,
      weighed: { grams: 10, stitches: 20, rows: 10 },
    },
  ],
};

const standing = (() => {
  const planned = asPlanned(garment);
  if (!planned.ok) throw new Error(told(planned.faults));
  return planned.value;
})();

const need = (() => {
  const found = yarnOf(standing);
  if (!found.ok) throw new Error(told(found.faults));
  return found.value;
})();

const parts = standing.pieces[0]?.makes[0]?.parts ?? [];

describe('a garment in balls', () => {
  it('counts the loops of the cast-on and of the rows that are knitted', () => {
    expect(shareKnitted(parts, [0])).toBe(0);
    expect(shareKnitted(parts, [1])).toBeCloseTo(40 / 200, 9);
    expect(shareKnitted(parts, [9])).toBe(1);
    expect(shareKnitted([], [])).toBe(0);
  });

  it('is used, left and kept in reserve, together as many balls as it needs', () => {
    const [yarn] = garment.yarns ?? [];
    const balls = ballsOf(need, yarn, [1, 0.5]);
    // each square is need.metres / 2; a ball is 100 m
    expect(balls?.used).toBeCloseTo((0.75 * need.metres) / 100, 9);
    expect(balls?.left).toBeCloseTo((0.25 * need.metres) / 100, 9);
    expect((balls?.used ?? 0) + (balls?.left ?? 0) + (balls?.reserve ?? 0)).toBeCloseTo(need.balls ?? 0, 9);
    expect(balls?.reserve).toBeGreaterThan(0);
  });

  it('held two strands together it takes twice the balls', () => {
    const yarn = { name: 'Hollin', grams: 50, metres: 100, strands: 2 };
    expect(ballsOf(need, yarn, [1, 1])?.used).toBeCloseTo((2 * need.metres) / 100, 9);
  });

  it('is nothing to draw while a ball has no length', () => {
    expect(ballsOf(need, { name: 'Hollin' }, [])).toBeUndefined();
    expect(ballsOf(need, undefined, [])).toBeUndefined();
  });
});
