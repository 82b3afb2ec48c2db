import { afterEach, describe, expect, it } from 'vitest';
import { inHandAsItStands } from '../../../src/app/garments/as-it-stands.ts';
import { latestKnitted, nextOf } from '../../../src/app/in-hand/next-place.ts';
import { draftFrom, openSections, proposed, wishKinds } from '../../../src/app/in-hand/rework-draft.ts';
import { type GarmentView, garmentInHand, type InHand } from '../../../src/app/state.ts';
import { plan } from '../../../src/knit/piece/plan.ts';
import type { PlannedPart } from '../../../src/knit/piece/planned.ts';
import type { PartRecipe, Recipe } from '../../../src/knit/piece/recipe.ts';
import { oldShoulder } from '../../knit/piece/old-shoulder.ts';
import { codesOf, given } from '../../store/scenario.ts';

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

const view = (makes: readonly (readonly PlannedPart[])[], id = 'g', of = recipe): GarmentView =>
  ({
    garment: { id, pieces: [{ id: 'cuff', recipe: of }] },
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
    expect(wishKinds(hand(planned[0], 1, 0, 0))).toEqual(['accept', 'rows', 'section', 'stripes', 'first']);
    expect(wishKinds(hand(planned[1], 1, 1, 0))).toEqual(['accept', 'rows', 'section', 'stripes']);
    expect(wishKinds(hand(ownPart(0), 2, 0, 0))).toEqual(['accept', 'rows', 'section', 'stripes', 'plain']);
    expect(wishKinds(hand(planned[0], 1, 0, 2))).toEqual([
      'accept',
      'measured',
      'rows',
      'section',
      'stripes',
    ]);
  });

  it('is of no stretch where all of them are knitted to their end', () => {
    const wished = wishKinds(hand(planned[0], 1, 0, 16));
    expect(wished).toEqual(expect.arrayContaining(['accept', 'measured']));
    expect(wished.filter((kind) => kind === 'rows' || kind === 'section')).toEqual([]);
  });

  it('is of a shoulder while it cannot be finished as it was planned, as the page that says so asks', () => {
    const old = oldShoulder();
    expect(wishKinds(hand(old, 1, 0, 13))).toContain('shoulder');
    expect(wishKinds(hand(old, 1, 0, 14))).not.toContain('shoulder');
    const from = (query: string) => draftFrom(hand(old, 1, 0, 12), new URLSearchParams(query)).kind;
    expect([from('wish=shoulder'), from('wish=neck'), from('')]).toEqual(['shoulder', undefined, undefined]);
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
    expect(given(made as NonNullable<typeof made>).how).toEqual({ code: 'first', figures: {} });
  });

  it('plain is as the recipe has it, without one of its own', () => {
    garmentInHand.value = view([[...planned], [planned[0], ownPart(1)]]);
    const now = hand(ownPart(1), 2, 1, 0);
    const made = proposed(now, { ...draft(now), kind: 'plain' });
    const [changed] = given(made as NonNullable<typeof made>).parts;
    expect([changed?.index, changed?.rows]).toEqual([1, { was: 19, now: 15 }]);
    expect(given(made as NonNullable<typeof made>).how).toEqual({ code: 'plain', figures: {} });
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

describe('a plan proposed for what she wishes', () => {
  const wished = (of: PlannedPart, rows: number, wish: object) => {
    const now = hand(of, 1, 0, rows);
    const made = proposed(now, { ...draftFrom(now, new URLSearchParams()), ...wish } as never);
    if (made === undefined) throw new Error('too little is filled in');
    return made;
  };

  it('of a height is by what she measured above the landmark, in her own unit', () => {
    garmentInHand.value = view([[...planned], [...planned]]);
    // nobody said a tension, so no height can be met
    expect(codesOf(wished(planned[0], 5, { kind: 'measured', height: 20, above: 2 }))).not.toEqual([]);
    const gauge = { stitches: 20, rows: 40, fabric: 'stocking' } as const;
    const tensed: Recipe = { ...recipe, gauge, parts: [part('Lower', 20, 80)] };
    const lower = given(plan(tensed)).parts[0] as PlannedPart;
    garmentInHand.value = view([[lower], [lower]], 'g', tensed);
    const rows = (height: number, above: number) =>
      given(wished(lower, 44, { kind: 'measured', height, above })).parts[0]?.rows;
    // forty rows of the body, 100 mm at 40 to 100 mm, measure 8 cm: the 100 mm left and the 20 mm that are missing are
    // 60 rows at 2 mm, instead of forty; the two rows of the edge are 20 % more as well
    const { was = 0, now = 0 } = rows(8, 4) ?? {};
    expect(was).toBe(87);
    expect(now - was).toBeGreaterThanOrEqual(20);
    expect(now - was).toBeLessThanOrEqual(22);
    // with the welt below it the same measure is of more rows, which are tighter still
    expect(rows(8, 0)?.now).toBeGreaterThan(now);
  });

  it('of a shoulder closes its turns before it is bound off', () => {
    const old = oldShoulder();
    garmentInHand.value = view([[old], [old]], 'g', { ...recipe, parts: [old.recipe as PartRecipe] });
    const made = wished(old, 12, { kind: 'shoulder' });
    expect(given(made).how.code).toBe('shoulder');
  });

  it('of a count leaves out decreases at the edge where the stitches are missing, as far as that is known', () => {
    const sides = (['right', 'left'] as const).map(
      (edge) => ({ kind: 'edge', edge, by: -1, inset: 1, lean: 'mirrored', rows: [5, 7, 9] }) as const,
    );
    const lower = part('Lower', 20, 10);
    const narrowed: Recipe = {
      ...recipe,
      parts: [{ ...lower, sections: lower.sections.map((s, i) => (i === 1 ? { ...s, shaping: sides } : s)) }],
    };
    const body = given(plan(narrowed)).parts[0] as PlannedPart;
    garmentInHand.value = view([[body], [body]], 'g', narrowed);
    const decreases = (missing: string) => {
      const [made] = given(wished(body, 5, { kind: 'accept', stitches: 19, missing })).parts;
      const edges = made?.part.rows.flatMap(({ shaping }) => shaping.map(({ edge }) => edge)) ?? [];
      return {
        right: edges.filter((e) => e === 'right').length,
        left: edges.filter((e) => e === 'left').length,
      };
    };
    expect(decreases('right')).toEqual({ right: 2, left: 3 });
    expect(decreases('left')).toEqual({ right: 3, left: 2 });
  });

  it('of a neck lays its beginning so many rows lower', () => {
    const divided: Recipe = {
      ...recipe,
      makes: 1,
      parts: [
        { ...part('Lower', 20, 10), end: 'split' },
        ...(['right', 'left'] as const).map(
          (edge): PartRecipe => ({
            name: edge,
            from: { part: 'Lower', stitches: 10, edge },
            sections: [{ name: 'Top', rows: 8, fabric: 'stocking', needle: 4, shaping: [] }],
            end: 'bind off',
          }),
        ),
      ],
    };
    const parts = given(plan(divided)).parts as readonly PlannedPart[];
    garmentInHand.value = view([parts], 'g', divided);
    const made = given(wished(parts[0] as PlannedPart, 5, { kind: 'neck', neck: 2 }));
    const [lower] = made.parts;
    expect(lower?.rows).toEqual({ was: parts[0]?.rows.length, now: (parts[0]?.rows.length ?? 0) - 2 });
  });
});

describe('the other of two copies', () => {
  const shaped = (edge: 'right' | 'left', rows = 10): PartRecipe => ({
    ...part('Lower', 20, rows),
    sections: part('Lower', 20, rows).sections.map((section, i) =>
      i === 1
        ? { ...section, shaping: [{ kind: 'edge', edge, by: -1, inset: 1, lean: 'mirrored', rows: [3, 5] }] }
        : section,
    ),
  });
  const edgesOf = (made: ReturnType<typeof proposed>): readonly string[] =>
    made?.ok
      ? [...new Set(made.value.parts[0]?.part.rows.flatMap(({ shaping }) => shaping.map(({ edge }) => edge)))]
      : [];
  const asFirst = (mirrored: boolean, make: number, makes = 2) => {
    const of: Recipe = { ...recipe, mirrored, makes, parts: [shaped('right')] };
    const { parts, mirrorParts = parts } = given(plan(of));
    const own = given(plan({ ...of, parts: [shaped('right', 14)] }));
    const reworked = { ...(own.parts[0] as PlannedPart), recipe: shaped('right', 14) } as PlannedPart;
    const other = parts[0] as PlannedPart;
    // the first one was planned anew, the others were not begun
    garmentInHand.value = view([[reworked], ...Array.from({ length: makes - 1 }, () => [other])], 'g', of);
    const now = hand(make % 2 === 0 ? (mirrorParts[0] as PlannedPart) : other, make, 0, 0);
    return proposed(now, { ...draftFrom(now, new URLSearchParams()), kind: 'first' });
  };

  it('is the mirror image of the first one where the piece is mirrored, else the same', () => {
    expect(edgesOf(asFirst(true, 2))).toEqual(['left', 'across']);
    expect(edgesOf(asFirst(false, 2))).toEqual(['right', 'across']);
  });

  it('that is knitted as the first one is no mirror image of it', () => {
    expect(edgesOf(asFirst(true, 3, 3))).toEqual(['right', 'across']);
  });

  it('is none where no other was planned anew', () => {
    garmentInHand.value = view([[...planned], [...planned]]);
    const now = hand(planned[0], 2, 0, 0);
    const made = proposed(now, { ...draftFrom(now, new URLSearchParams()), kind: 'first' });
    expect(made && codesOf(made)).toEqual(['nothing left']);
  });

  it('is told why where its plan does not come out', () => {
    const broken: Recipe = { ...recipe, parts: [{ ...part('Lower', 20, 10), from: { castOn: 0 } }] };
    garmentInHand.value = view([[planned[0]], [ownPart(0)]], 'g', broken);
    const now = hand(ownPart(0), 2, 0, 0);
    const made = proposed(now, { ...draftFrom(now, new URLSearchParams()), kind: 'plain' });
    expect(made && codesOf(made)).not.toEqual([]);
    expect(made && codesOf(made)).not.toEqual(['nothing left']);
    // a recipe that has that part no more
    garmentInHand.value = view([[planned[0]], [ownPart(0)]], 'g', { ...recipe, parts: [] });
    const none = proposed(now, { ...draftFrom(now, new URLSearchParams()), kind: 'plain' });
    expect(none?.ok).toBe(false);
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
    const makes = [{ places: [b] }, { places: [c] }];
    expect(nextOf({ pieces: [{ makes }] } as never)).toBe(b);
  });
});
