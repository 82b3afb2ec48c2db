import { describe, expect, it } from 'vitest';
import { demoGarment } from '../../../src/knit/garment/demo.ts';
import { sampleGarment } from '../../../src/knit/garment/sample.ts';
import { consequences } from '../../../src/knit/making-up/consequences.ts';
import { asPlanned } from '../../../src/knit/piece/as-planned.ts';
import type { Garment } from '../../../src/knit/piece/garment.ts';
import type { Recipe } from '../../../src/knit/piece/recipe.ts';
import { told } from '../../told.ts';

function stands(garment: Garment) {
  const planned = asPlanned(garment);
  if (!planned.ok) throw new Error(told(planned.faults));
  return planned.value;
}

/** The garment with a section of one of its pieces so many rows longer, in whichever part it is. */
function longer(garment: Garment, piece: string, section: string, by: number): Garment {
  const change = (recipe: Recipe): Recipe => ({
    ...recipe,
    parts: recipe.parts.map((part) => ({
      ...part,
      sections: part.sections.map((one) => (one.name === section ? { ...one, rows: one.rows + by } : one)),
    })),
  });
  return { ...garment, pieces: garment.pieces.map((one) => (one.name === piece ? change(one) : one)) };
}

const broken = (garment: Garment, piece: string, section: string, by: number) =>
  consequences(stands(garment), stands(longer(garment, piece, section, by)));

const cardigan = (() => {
  const made = demoGarment('cardigan');
  if (!made.ok) throw new Error(told(made.faults));
  return made.value;
})();

describe.each([
  ['proposed', sampleGarment],
  ['stated', cardigan],
])('one change, all consequences (joints %s)', (_, garment) => {
  it('a back sixteen rows longer is sixteen rows longer than the front at the side, in rows and mm', () => {
    const found = broken(garment, 'Back', 'body', 16);
    expect(found).toContainEqual(
      expect.objectContaining({ kind: 'seam', of: 'side', unit: 'rows', piece: 'Back', to: 'Front' }),
    );
    const side = found.find((one) => one.kind === 'seam' && one.of === 'side');
    if (side?.kind !== 'seam') throw new Error('no side seam');
    expect(side.now - side.other).toBe(16);
    const rows = garment.pieces[0]?.gauge?.rows ?? 0;
    expect(side.longerMm).toBeCloseTo(1600 / rows, 6);
  });

  it('nothing is told where nothing changes, nor once the front is as long too', () => {
    expect(consequences(stands(garment), stands(garment))).toEqual([]);
    const both = longer(longer(garment, 'Back', 'body', 16), 'Front', 'body', 16);
    const seams = consequences(stands(garment), stands(both)).filter(({ kind }) => kind === 'seam');
    expect(seams).toEqual([]);
  });
});

describe('a neck that is deeper than it was', () => {
  it('has room for more of its band: told edge by edge, with how many to pick up', () => {
    const found = broken(sampleGarment, 'Front', 'neck', 20);
    const bands = found.flatMap((one) => (one.kind === 'pick up' ? [one] : []));
    expect(bands.map(({ band, along }) => [band, along])).toEqual([
      ['Neckband', 0],
      ['Neckband', 2],
    ]);
    for (const { stitches, fit, longerMm } of bands) {
      // twenty rows at 28 to 10 cm; three stitches for four rows as before, to one either way
      expect(longerMm).toBeGreaterThan(68);
      expect(longerMm).toBeLessThan(72);
      expect(Math.abs(fit - stitches - 15)).toBeLessThanOrEqual(1);
    }
  });
});

describe('an edge that is sewn to another by its length', () => {
  it('an armhole much deeper than its sleeve is told, in mm', () => {
    const found = broken(sampleGarment, 'Back', 'armholes', 40);
    expect(found).toContainEqual(
      expect.objectContaining({ kind: 'seam', of: 'armhole', unit: 'mm', to: 'Sleeve' }),
    );
  });
});
