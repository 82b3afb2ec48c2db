import { describe, expect, it } from 'vitest';
import {
  piecesUnseen,
  planForMakes,
  planNamesOf,
  plansNamedBy,
  plansOfGarment,
  slotsOf,
} from '../../../src/store/garment/plan-versions.ts';
import { type NewPlan, type PieceRecord, type PlanRecord, planIdOf } from '../../../src/store/records.ts';
import { planOf, scarf } from '../scenario.ts';

const { garment } = scarf();
const [long, cuff] = garment.pieces as [PieceRecord, PieceRecord];

const version = (rows: number, n: number, of: Partial<NewPlan> = {}): PlanRecord => {
  const plan = { ...planOf('scarf', 'cuff', rows), version: n, ...of };
  return { ...plan, id: planIdOf(plan) };
};
/** One that was made for one make alone: the recipe of that make lies in it. */
const own = (rows: number, n: number): PlanRecord => {
  const plan = version(rows, n);
  const { recipe } = cuff;
  const part = recipe.parts[0] as (typeof recipe.parts)[number];
  return version(rows, n, { plan: { ...plan.plan, recipe: part } as never });
};

describe('the plan of makes that are not begun', () => {
  const [one, two] = [version(12, 1), version(14, 2)];
  const chosen = (piece: PieceRecord, ...plans: PlanRecord[]) =>
    planForMakes('scarf', piece, 0, false, plansOfGarment(plans))?.id;

  it('is the newest, in whichever order they are read', () => {
    expect(chosen(cuff, one, two)).toBe(two.id);
    expect(chosen(cuff, two, one)).toBe(two.id);
  });

  it('is of two with one number the one whose id is higher, the same on each device', () => {
    const other = version(16, 2);
    const higher = two.id > other.id ? two : other;
    expect(chosen(cuff, two, other)).toBe(higher.id);
    expect(chosen(cuff, other, two)).toBe(higher.id);
  });

  it('is not one that is one make’s own, unless there is no other', () => {
    const later = own(18, 3);
    expect(chosen(cuff, two, later)).toBe(two.id);
    expect(chosen(cuff, later, two)).toBe(two.id);
    expect(chosen(cuff, later)).toBe(later.id);
  });

  it('is the one that the piece names, if it is there', () => {
    expect(chosen({ ...cuff, plans: [one.id] }, one, two)).toBe(one.id);
    expect(chosen({ ...cuff, plans: [version(90, 9).id] }, one, two)).toBe(two.id);
    expect(chosen({ ...cuff, plans: [planOf('scarf', 'long', 12).id] }, one, two)).toBe(two.id);
  });

  it('is of its own piece, part and side', () => {
    const mirrored = version(14, 5, { mirror: true });
    const second = version(14, 6, { part: 1 });
    const plans = plansOfGarment([one, mirrored, second]);
    expect(planForMakes('scarf', cuff, 0, false, plans)).toBe(one);
    expect(planForMakes('scarf', cuff, 0, true, plans)).toBe(mirrored);
    expect(planForMakes('scarf', cuff, 1, false, plans)).toBe(second);
    expect(planForMakes('scarf', long, 0, false, plans)).toBeUndefined();
  });
});

describe('the parts of a piece that are planned', () => {
  const [part] = cuff.recipe.parts;
  const twoParts = { ...cuff, recipe: { ...cuff.recipe, parts: part ? [part, part] : [] } };
  const straight = [
    { part: 0, mirror: false },
    { part: 1, mirror: false },
  ];

  it('are mirrored too where there are two makes of which one is the other’s mirror image', () => {
    expect(slotsOf({ ...twoParts, recipe: { ...twoParts.recipe, mirrored: true } })).toEqual([
      { part: 0, mirror: false },
      { part: 0, mirror: true },
      { part: 1, mirror: false },
      { part: 1, mirror: true },
    ]);
    expect(slotsOf(twoParts)).toEqual(straight);
    expect(slotsOf({ ...twoParts, recipe: { ...twoParts.recipe, mirrored: true, makes: 1 } })).toEqual(
      straight,
    );
  });

  it('are named as far as there is a plan', () => {
    const one = version(12, 1);
    expect(planNamesOf('scarf', twoParts, plansOfGarment([one]))).toEqual([one.id]);
    expect(planNamesOf('scarf', long, plansOfGarment([one]))).toEqual([]);
  });
});

describe('plans that a garment names', () => {
  it('are those of its pieces, of those taken out, and of versions of other devices', () => {
    const named = (piece: PieceRecord, n: number): PieceRecord => ({ ...piece, plans: [version(12, n).id] });
    const stamp = '0000001jk.00000.aa';
    const marked = {
      ...garment,
      pieces: [named(cuff, 1), long],
      marks: {
        base: stamp,
        seen: [stamp],
        gone: [{ stamp, piece: named(cuff, 2) }],
        also: [
          { name: 'pieces/cuff', stamp, of: { pieces: [named(cuff, 3)] } },
          { name: 'notes', stamp, of: { notes: 'x' } },
          { name: 'name', stamp },
        ],
      },
    };
    expect(plansNamedBy(marked)).toEqual([1, 2, 3].map((n) => version(12, n).id));
    expect(piecesUnseen(marked)).toEqual([named(cuff, 2), named(cuff, 3)]);
    expect(plansNamedBy(garment)).toEqual([]);
  });
});
