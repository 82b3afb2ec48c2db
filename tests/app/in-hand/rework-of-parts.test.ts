import { afterEach, describe, expect, it } from 'vitest';
import { inHandAsItStands } from '../../../src/app/garments/as-it-stands.ts';
import { latestKnitted, nextOf } from '../../../src/app/in-hand/next-place.ts';
import { draftFrom, openSections, proposed, wishKinds } from '../../../src/app/in-hand/rework-draft.ts';
import { type GarmentView, garmentInHand, type InHand } from '../../../src/app/state.ts';
import { plan } from '../../../src/knit/piece/plan.ts';
import type { PlannedPart } from '../../../src/knit/piece/planned.ts';
import type { PartRecipe, Recipe } from '../../../src/knit/piece/recipe.ts';
import { given } from '../../store/scenario.ts';

const part = (name: string, castOn: number, rows: number): PartRecipe => ({
  name,
  from: { castOn },
  sections: [
    { name: 'Welt', rows: 4, fabric: 'garter', needle: 3.5, shaping: [] },
    { name: 'Body', rows, fabric: 'stocking', needle: 4, shaping: [] },
    { name: 'Edge', rows: 2, fabric: 'garter', needle: 4, shaping: [] },
  ],
  end: 'bind off',
});

/** Two cuffs, each of two parts. */
const recipe: Recipe = { name: 'Cuff', makes: 2, parts: [part('Lower', 20, 10), part('Upper', 24, 8)] };
const planned = given(plan(recipe)).parts as unknown as readonly [PlannedPart, PlannedPart];
const longer = given(plan({ ...recipe, parts: [part('Lower', 20, 14), part('Upper', 24, 12)] })).parts;
const ownPart = (index: 0 | 1): PlannedPart =>
  ({
    ...(longer[index] as PlannedPart),
    recipe: part(index === 0 ? 'Lower' : 'Upper', 20 + 4 * index, 14 - 2 * index),
  }) as PlannedPart;

const placeOf = (make: number, at: number, rows: number, total: number) =>
  ({
    id: `g/cuff/${at}/${make}`,
    garment: 'g',
    piece: 'cuff',
    part: at,
    make,
    plan: `g/cuff/${at}/s/1`,
    rows,
    total,
    seq: rows,
    at: 0,
    touched: 0,
  }) as never;

const hand = (of: PlannedPart, make: number, at: number, rows: number): InHand =>
  ({
    make: `g/cuff/${at}/${make}`,
    part: of,
    place: placeOf(make, at, rows, of.rows.length),
    garment: { id: 'g' },
  }) as never;

const view = (makes: readonly (readonly PlannedPart[])[], id = 'g'): GarmentView =>
  ({
    garment: { id, pieces: [{ id: 'cuff', recipe }] },
    pieces: [
      { id: 'sleeve', name: 'Sleeve', makes: [] },
      {
        id: 'cuff',
        name: 'Cuff',
        makes: makes.map((parts, i) => ({
          make: i + 1,
          parts,
          places: parts.map((one, at) => placeOf(i + 1, at, 0, one.rows.length)),
        })),
      },
    ],
  }) as never;

afterEach(() => {
  garmentInHand.value = undefined;
});

describe('stretches that are not knitted to their end', () => {
  it('have all of their rows, and what is only bound off is none', () => {
    const now = (rows: number) => openSections(hand(planned[0], 1, 0, rows));
    expect(now(0)).toEqual([
      { index: 0, name: 'Welt', rows: 4 },
      { index: 1, name: 'Body', rows: 10 },
      { index: 2, name: 'Edge', rows: 2 },
    ]);
    expect(now(3).map(({ index }) => index)).toEqual([0, 1, 2]);
    expect(now(4).map(({ index }) => index)).toEqual([1, 2]);
    expect(now(16)).toEqual([]);
  });
});

describe('what can be wished', () => {
  it('before the first row is the plan of the other make, where that was reworked, and the plain one where this was', () => {
    garmentInHand.value = view([[...planned], [ownPart(0), planned[1]]]);
    expect(wishKinds(hand(planned[0], 1, 0, 0))).toEqual(['accept', 'rows', 'first']);
    expect(wishKinds(hand(planned[1], 1, 1, 0))).toEqual(['accept', 'rows']);
    expect(wishKinds(hand(ownPart(0), 2, 0, 0))).toEqual(['accept', 'rows', 'plain']);
    expect(wishKinds(hand(planned[0], 1, 0, 2))).toEqual(['accept', 'measured', 'rows']);
  });

  it('is of the neck where the part is divided', () => {
    expect(wishKinds(hand({ ...planned[0], end: 'split' }, 1, 0, 2))).toContain('neck');
  });
});

describe('what a draft begins with', () => {
  const from = (query: string) => draftFrom(hand(planned[0], 1, 0, 5), new URLSearchParams(query));

  it('is the count that was found, and the edge at which it was missed', () => {
    expect(from('stitches=18&edge=left')).toMatchObject({
      kind: 'accept',
      stitches: 18,
      missing: 'left',
      section: 1,
    });
    expect(from('edge=right')).toMatchObject({ stitches: 20, missing: 'right' });
    expect(from('edge=top')).toMatchObject({ stitches: 20, missing: '' });
  });
});

describe('a plan proposed', () => {
  const draft = (now: InHand) => draftFrom(now, new URLSearchParams());

  it('as the other make is that part as it was made there, and the others as the recipe has them', () => {
    garmentInHand.value = view([[...planned], [ownPart(0), planned[1]]]);
    const now = hand(planned[0], 1, 0, 0);
    const made = proposed(now, { ...draft(now), kind: 'first' });
    const [changed] = given(made as NonNullable<typeof made>).parts;
    expect(changed?.index).toBe(0);
    expect(changed?.rows).toEqual({ was: 17, now: 21 });
    expect(changed?.part.recipe?.sections[1]?.rows).toBe(14);
  });

  it('plain is as the recipe has it, without one of its own', () => {
    garmentInHand.value = view([[...planned], [planned[0], ownPart(1)]]);
    const now = hand(ownPart(1), 2, 1, 0);
    const made = proposed(now, { ...draft(now), kind: 'plain' });
    const [changed] = given(made as NonNullable<typeof made>).parts;
    expect([changed?.index, changed?.rows]).toEqual([1, { was: 19, now: 15 }]);
    expect(changed?.part.recipe).toBeUndefined();
  });

  it('is none while too little is filled in', () => {
    garmentInHand.value = view([[...planned], [...planned]]);
    const now = hand(planned[0], 1, 0, 5);
    const none = [
      { kind: 'accept', stitches: undefined },
      { kind: 'accept', stitches: 20 },
      { kind: 'measured', height: undefined },
      { kind: 'rows', rows: undefined },
      { kind: 'neck', neck: undefined },
      { kind: 'neck', neck: 0 },
    ] as const;
    for (const some of none) expect(proposed(now, { ...draft(now), ...some } as never)).toBeUndefined();
    garmentInHand.value = undefined;
    expect(proposed(now, { ...draft(now), kind: 'rows', rows: 12 })).toBeUndefined();
  });

  it('of a stretch has as many rows in it as she says', () => {
    garmentInHand.value = view([[...planned], [...planned]]);
    const now = hand(planned[0], 1, 0, 5);
    const made = proposed(now, { ...draft(now), kind: 'rows', section: 1, rows: 12 });
    const [changed] = given(made as NonNullable<typeof made>).parts;
    expect(changed?.part.rows).toHaveLength(19);
  });
});

describe('the make in hand as it stands', () => {
  const other = longer[0] as PlannedPart;

  it('has the part of its garment, piece, make and plan, and is else as it was planned', () => {
    const now = hand(planned[0], 1, 0, 5);
    expect(inHandAsItStands(now, view([[other, planned[1]], [...planned]])).part).toBe(other);
    expect(inHandAsItStands(now, undefined)).toBe(now);
    expect(inHandAsItStands(now, view([[other, planned[1]]], 'h'))).toBe(now);
    expect(inHandAsItStands(now, view([]))).toBe(now);
    const moved = { ...now, place: { ...now.place, plan: 'g/cuff/0/s/2' as const } };
    expect(inHandAsItStands(moved, view([[other, planned[1]]]))).toBe(moved);
    const elsewhere = { ...now, place: { ...now.place, piece: 'hood' } };
    expect(inHandAsItStands(elsewhere, view([[other, planned[1]]]))).toBe(elsewhere);
  });
});

describe('of places that were knitted alike', () => {
  const place = (id: string, touched: number, rows = 1): never => ({ id, touched, rows, total: 9 }) as never;

  it('the first is meant', () => {
    const [a, b, c] = [place('a', 5), place('b', 7), place('c', 7)];
    expect(latestKnitted([a, b, c])).toBe(b);
    expect(latestKnitted([place('x', 0)])).toBeUndefined();
    expect(nextOf([{ places: [b] }, { places: [c] }])).toBe(b);
  });
});
