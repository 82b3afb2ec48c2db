import { describe, expect, it } from 'vitest';
import { asMade, asPassedOn } from '../../../src/app/garments/as-made.ts';
import { oldShoulders } from '../../../src/app/garments/old-shoulders.ts';
import type { GarmentView } from '../../../src/app/state.ts';
import { plan } from '../../../src/knit/piece/plan.ts';
import type { PlannedPart } from '../../../src/knit/piece/planned.ts';
import type { PartRecipe, Recipe } from '../../../src/knit/piece/recipe.ts';
import { oldShoulder } from '../../knit/piece/old-shoulder.ts';
import { given } from '../../store/scenario.ts';

const part = (name: string, rows: number): PartRecipe => ({
  name,
  from: { castOn: 20 },
  sections: [{ name: 'Body', rows, fabric: 'stocking', needle: 4, shaping: [] }],
  end: 'bind off',
});
const mitten: Recipe = { name: 'Mitten', makes: 2, parts: [part('Cuff', 10), part('Hand', 20)] };
const scarf: Recipe = { name: 'Scarf', makes: 1, parts: [part('Long', 40)] };

/** The part as it was planned anew with so many rows. */
const reworked = (name: string, rows: number): PlannedPart => {
  const recipe = part(name, rows);
  return { ...(given(plan({ ...mitten, parts: [recipe] })).parts[0] as PlannedPart), recipe };
};

const view = (pieces: readonly object[]): GarmentView =>
  ({
    garment: {
      id: 'g',
      name: 'Set',
      notes: 'soft',
      createdAt: 1,
      changedAt: 1,
      pieces: [
        { id: 'scarf', recipe: scarf },
        { id: 'mitten', recipe: mitten },
      ],
    },
    pieces,
  }) as never;

describe('a garment as it was made', () => {
  const plain = given(plan(mitten)).parts;

  it('has each part as its first make was knitted, the others as its recipe has them, under the name given', () => {
    const made = asMade(
      view([
        {
          id: 'mitten',
          makes: [{ parts: [plain[0], reworked('Hand', 26)] }, { parts: [reworked('Cuff', 14)] }],
        },
        { id: 'scarf', makes: [] },
      ]),
      'Set, as made',
    );
    expect(made).toMatchObject({ name: 'Set, as made', notes: 'soft' });
    expect(made.pieces).toEqual([scarf, { ...mitten, parts: [part('Cuff', 10), part('Hand', 26)] }]);
    expect(made).not.toHaveProperty('id');
  });

  it('is its recipe where nothing was read of a piece', () => {
    expect(asMade(view([]), 'Set').pieces).toEqual([scarf, mitten]);
  });
});

describe('a garment that is passed on', () => {
  it('has the pieces that were planned anew as they are knitted now, under its ids, or its pattern’s lengths would not meet', () => {
    const long = { id: 'scarf', makes: [{ parts: [reworked('Long', 64)] }] };
    const passed = asPassedOn(view([long]));
    expect(passed).toMatchObject({ id: 'g', name: 'Set', notes: 'soft' });
    expect(passed.pieces).toEqual([
      { id: 'scarf', recipe: { ...scarf, parts: [part('Long', 64)] } },
      { id: 'mitten', recipe: mitten },
    ]);
  });

  it('is as it was planned where nothing was planned anew, or where that could not be knitted by others', () => {
    const plainly = view([{ id: 'scarf', makes: [{ parts: given(plan(scarf)).parts }] }]);
    expect(asPassedOn(plainly)).toBe(plainly.garment);
    const off = { ...reworked('Long', 64), recipe: { ...part('Long', 64), from: { castOn: 0 } } };
    const broken = view([{ id: 'scarf', makes: [{ parts: [off] }] }]);
    expect(asPassedOn(broken)).toBe(broken.garment);
  });
});

describe('shoulders that cannot be finished as they were planned', () => {
  const place = (id: string, at: number, rows: number) => ({ id, part: at, rows });

  it('are found in every make that has not come past them, each with its piece, make and part', () => {
    const other = given(plan(scarf)).parts[0] as PlannedPart;
    const parts = [other, oldShoulder()];
    const make = (no: number, rows: number) => ({
      make: no,
      parts,
      places: [place(`a/${no}`, 0, 3), place(`b/${no}`, 1, rows)],
    });
    const makes = [make(1, 13), make(2, 14), make(3, 0)];
    const back = { id: 'back', makes };
    const found = oldShoulders({ pieces: [{ id: 'scarf', makes: [] }, back] } as never);
    expect(found).toEqual([
      { key: 'b/1', piece: back, make: makes[0], part: 'Back' },
      { key: 'b/3', piece: back, make: makes[2], part: 'Back' },
    ]);
  });

  it('are none in a part that is not read', () => {
    const makes = [{ make: 1, parts: [], places: [place('a/1', 0, 0)] }];
    expect(oldShoulders({ pieces: [{ makes }] } as never)).toEqual([]);
  });
});
