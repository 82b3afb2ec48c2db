import { describe, expect, it } from 'vitest';
import { asPlanned } from '../../../src/knit/piece/as-planned.ts';
import type { Recipe } from '../../../src/knit/piece/recipe.ts';
import { type Taken, yarnOf } from '../../../src/knit/yarn/need.ts';
import { beyondTheRows } from '../../../src/knit/yarn/small-garments.ts';
import { told } from '../../told.ts';
import { section } from '../piece/count/mitten.ts';
import { part } from '../piece/parts-by-hand.ts';

/** A back so many stitches of 5 mm wide, of 28 rows to 10 cm. */
const back = (stitches: number, role: 'back' | 'front' = 'back'): Recipe => ({
  name: 'Piece',
  role,
  makes: 1,
  gauge: { stitches: 20, rows: 28, fabric: 'stocking' },
  parts: [part('p', { castOn: stitches }, { sections: [section({ rows: 60 })] })],
});

const standing = (recipe: Recipe, weighed = false) => {
  const swatch = {
    fabric: 'stocking',
    stitches: 20,
    widthMm: 100,
    rows: 28,
    heightMm: 100,
    needle: 4,
  } as const;
  const made = asPlanned({
    name: 'Vest',
    pieces: [recipe],
    yarns: [{ name: 'Hollin', grams: 50, metres: 120 }],
    ...(weighed ? { swatches: [{ ...swatch, weighed: { grams: 6, stitches: 20, rows: 28 } }] } : {}),
  });
  if (!made.ok) throw new Error(told(made.faults));
  return made.value;
};

const marginOf = (recipe: Recipe, weighed = false, taken: readonly Taken[] = []) => {
  const need = yarnOf(standing(recipe, weighed), taken);
  if (!need.ok) throw new Error(told(need.faults));
  return need.value;
};

/** A swatch of 150 mm to each side: 30 stitches on 42 rows, each of 10 √(21.6 / 5.6) mm (Munden's relation, from memory). */
const SWATCH_M = (30 * 42 * 10 * Math.sqrt(21.6 / 5.6)) / 1000;

describe('what is bought beyond the rows while only the gauge is known', () => {
  it('is the swatch, and of a back up to 340 mm two fifths of the yarn, up to 420 mm less and less', () => {
    const beyond = (stitches: number) => beyondTheRows(standing(back(stitches)));
    expect(beyond(68).swatch).toBeCloseTo(SWATCH_M, 9);
    const shares = [40, 68, 72, 76, 80, 84, 100].map((stitches) => beyond(stitches).share.toFixed(6));
    expect(shares).toEqual([0.4, 0.4, 0.3, 0.2, 0.1, 0, 0].map((share) => share.toFixed(6)));
    expect(beyondTheRows(standing(back(68, 'front')))).toEqual({ swatch: 0, share: 0 });
  });

  it('is by the widest row of the back, wherever that lies', () => {
    const shaping = [{ kind: 'across', row: 3, by: -20 }] as const;
    const narrowing: Recipe = {
      ...back(84),
      parts: [part('p', { castOn: 84 }, { sections: [section({ rows: 60, shaping: [...shaping] })] })],
    };
    expect(beyondTheRows(standing(narrowing)).share).toBeCloseTo(0, 9);
  });

  it('comes to the reserve for the loop length and the twentieth for the making up', () => {
    const need = marginOf(back(76));
    expect(need.margin).toBeCloseTo(0.2 + 0.05 + 0.2 + SWATCH_M / need.metres, 9);
  });

  it('is nothing where a swatch or a finished make was weighed', () => {
    expect(marginOf(back(76), true).margin).toBeCloseTo(0.05 + 0.05, 9);
    expect(marginOf(back(76), false, [{ piece: 'Piece', make: 1, grams: 40 }]).margin).toBeCloseTo(
      0.2 + 0.05,
      9,
    );
    expect(marginOf(back(76), true, [{ piece: 'Piece', make: 1, grams: 40 }]).margin).toBeCloseTo(0.1, 9);
  });
});
