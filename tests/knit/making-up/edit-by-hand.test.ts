import { describe, expect, it } from 'vitest';
import {
  type Edit,
  edited,
  editedBy,
  editedRecipe,
  nothingKnitted,
} from '../../../src/knit/making-up/edit.ts';
import { holeRows, holesIn } from '../../../src/knit/piece/hole-rows.ts';
import type { PartRecipe, PickUp, Recipe, Section, Shaping } from '../../../src/knit/piece/recipe.ts';
import { part, piece, section, slant, standing } from './by-hand.ts';
import { back, front, neckband, sleeve } from './pullover.ts';

/* Everything here is counted by hand; how holes are spread anew is common practice, no published source. */

const rows = (more: Partial<Extract<Edit, { kind: 'rows' }>>): Edit => ({
  kind: 'rows',
  piece: 'Back',
  makes: [1],
  part: 'Back',
  section: 1,
  called: 'body',
  by: 4,
  ...more,
});

const rowsOf = (recipe: Recipe | undefined) =>
  recipe?.parts.map(({ sections }) => sections.map((one) => one.rows));

describe('a section of other length', () => {
  it.each([
    ['four rows more', back, {}, [[4, 10, 8, 2]]],
    ['six rows fewer: none is left', back, { by: -6 }, [[4, 0, 8, 2]]],
    ['seven fewer', back, { by: -7 }, undefined],
    ['of another name there', back, { called: 'rib' }, undefined],
    ['where no section is', back, { section: 4 }, undefined],
    ['of a part that is not there', back, { part: 'Front' }, undefined],
    [
      'too short for the stitches bound off in its second row',
      back,
      { section: 3, called: 'shoulders', by: -1 },
      undefined,
    ],
    ['the first of all', back, { section: 0, called: 'rib', by: 1 }, [[5, 6, 8, 2]]],
    [
      'of another part',
      front,
      { part: 'Left', section: 1, called: 'shoulder', by: 1 },
      [[4, 6, 4], [4, 2], [], [4, 4]],
    ],
  ] as const)('%s', (_, recipe, more, counts) => {
    const made = editedRecipe(recipe, rows(more));
    expect(rowsOf(made)).toEqual(counts);
    if (!made) return;
    // all else is as it was
    const same = ({ parts, ...rest }: Recipe) => ({
      ...rest,
      parts: parts.map((one) => ({ ...one, sections: one.sections.map((own) => ({ ...own, rows: 0 })) })),
    });
    expect(same(made)).toEqual(same(recipe));
  });
});

describe('a sleeve of another width', () => {
  const arm = (castOn: number | PartRecipe['from'], ...sections: readonly Section[]) =>
    piece('Arm', 'sleeve', [part('Arm', castOn, sections)]);
  const wide = (recipe: Recipe, by: number, more: { readonly fromTop?: true } = {}) => {
    const name = recipe.parts[0]?.name ?? '';
    const made = editedRecipe(recipe, { kind: 'width', piece: 'Arm', part: name, by, ...more });
    const [one] = made?.parts ?? [];
    const shaped = one?.sections.map(({ shaping }) =>
      shaping.map((own) => ('rows' in own ? own.rows : own.kind)),
    );
    return one && { from: one.from, shaped };
  };
  const up = arm(12, section('a', 10, slant('both', 1, 3)), section('b', 12, slant('both', 1, 3, 7)));
  const down = arm(20, section('a', 12, slant('both', -1, 3, 7)), section('b', 6, slant('both', -1, 3)));
  const from = (castOn: number) => ({ castOn });

  it.each([
    // its last increase was in row 7 of 12: as many plain rows stay above it
    ['two stitches: one increase more, in the section that has most', up, 2, from(12), [[[3]], [[3, 5, 7]]]],
    [
      'four stitches: two more, for which the plain rows above are needed',
      up,
      4,
      from(12),
      [[[3]], [[3, 7, 9, 11]]],
    ],
    ['two fewer: the first increase stays where it was', up, -2, from(12), [[[3]], [[3]]]],
    ['four fewer: none is left', up, -4, from(12), [[[3]], []]],
    ['six fewer', up, -6, undefined, undefined],
    ['an odd number, which has no halves', up, 3, undefined, undefined],
    ['more than its rows hold', up, 12, undefined, undefined],
    [
      'from the top down two more are cast on, and one decrease more takes them',
      down,
      2,
      from(22),
      [[[3, 5, 7]], [[3]]],
    ],
    ['from the top down four fewer: cast on, and no decrease', down, -4, from(16), [[], [[3]]]],
  ] as const)('%s', (_, recipe, by, start, shaped) => {
    expect(wide(recipe, by)).toEqual(start && { from: start, shaped });
  });

  it('only where both edges are shaped alike, a stitch at a time', () => {
    expect(wide(arm(12, section('a', 10, slant('right', 1, 3), slant('left', 1, 3))), 2)).toBeUndefined();
    const double: Shaping = { kind: 'edge', edge: 'both', by: 2, rows: [3], inset: 1, lean: 'mirrored' };
    expect(wide(arm(12, section('a', 10, double)), 2)).toBeUndefined();
    // the other shaping of the section stays, in its place
    const mixed = arm(
      12,
      section('a', 10, slant('right', -1, 9), slant('both', 1, 3, 5), slant('left', -1, 9)),
    );
    expect(wide(mixed, 2)?.shaped).toEqual([[[9], [3, 7, 9], [9]]]);
    expect(wide(mixed, -4)?.shaped).toEqual([[[9], [9]]]);
  });

  it('one that runs straight gets its slant in its longest section, on right-side rows from end to end', () => {
    const straight = arm(12, section('rib', 4), section('a', 12));
    expect(wide(straight, 4)).toEqual({ from: from(12), shaped: [[], [[3, 11]]] });
    expect(wide(straight, -2)).toEqual({ from: from(12), shaped: [[], [[3]]] });
    // of thirteen rows the last is one of the right side too: a row stays plain above the slant
    expect(wide(arm(12, section('a', 13)), 4)?.shaped).toEqual([[[3, 11]]]);
    // from the top down it is begun wider
    const down = arm(12, section('a', 12), section('rib', 4));
    expect(wide(down, 4, { fromTop: true })).toEqual({ from: from(16), shaped: [[[3, 11]], []] });
    expect(wide(arm(12, section('a', 12, slant('right', 1, 3))), 2)).toBeUndefined();
  });

  it('what is picked up has no stitches to cast on for decreases, but for increases it needs none', () => {
    const pickUp = { pickUp: [{ along: 'armhole', stitches: 20 }] };
    expect(wide(arm(pickUp, section('a', 12, slant('both', -1, 3, 7))), 2)).toBeUndefined();
    expect(wide(arm(pickUp, section('a', 12, slant('both', 1, 3, 7))), 2)).toEqual({
      from: pickUp,
      shaped: [[[3, 5, 7]]],
    });
  });
});

describe('another number picked up', () => {
  const edges = (...now: readonly number[]) => {
    const was = [5, 4, 5, 8];
    const at = now.flatMap((count, i) => (count === was[i] ? [] : [i]));
    return at.map((i) => ({ at: i, along: '', was: was[i] ?? 0, now: now[i] ?? 0 }));
  };
  const pickedUp = (recipe: Recipe, ...now: readonly number[]) =>
    editedRecipe(recipe, { kind: 'pick up', piece: recipe.name, edges: edges(...now) })?.parts[0];
  const counts = (made: PartRecipe | undefined) =>
    made && 'pickUp' in made.from
      ? made.from.pickUp.map(({ along, stitches }) => `${stitches} ${along}`)
      : undefined;

  it('edge by edge, in their places; one stitch at least', () => {
    expect(counts(pickedUp(neckband, 11, 4, 5, 9))).toEqual([
      '11 left front neck',
      '4 middle of the front neck',
      '5 right front neck',
      '9 back neck',
    ]);
    expect(counts(pickedUp(neckband, 5, 1, 5, 8))).toHaveLength(4);
    expect(pickedUp(neckband, 5, 0, 5, 8)).toBeUndefined();
    expect(pickedUp(back, 6, 4, 5, 8)).toBeUndefined();
    expect(pickedUp(neckband, 11, 4, 5, 9)?.sections).toEqual(neckband.parts[0]?.sections);
  });

  /** Edges of 5, 4, 5 and 8: stitches 0-4, 5-8, 9-13 and 14-21. With 11, 4, 5 and 9: 0-10, 11-14, 15-19, 20-28. */
  it.each([
    ['within the first edge', 2, 2],
    ['the last but one of the first edge', 3, 3],
    ['the last stitch of the first edge', 4, 10],
    ['the first stitch of the second', 5, 11],
    ['within the second', 6, 12],
    ['the last stitch of the second', 8, 14],
    ['the last stitch of the third', 13, 19],
    ['the first stitch of the last: from its end', 14, 21],
    ['the last stitch of all', 21, 28],
  ])('a mitre’s corner: %s', (_, was, now) => {
    const middle = { kind: 'middle', rows: [2], from: was } as const;
    const band = {
      ...neckband,
      parts: neckband.parts.map((one) => ({ ...one, sections: [section('rib', 3, middle)] })),
    };
    const [shaping] = pickedUp(band, 11, 4, 5, 9)?.sections[0]?.shaping ?? [];
    expect(shaping).toEqual({ ...middle, from: now });
  });

  describe('with button holes of two stitches', () => {
    const held = (places: readonly number[], ...along: readonly number[]): Recipe => {
      const pickUp: PickUp[] = along.map((stitches, i) => ({ along: `edge ${i}`, stitches }));
      const total = along.reduce((sum, n) => sum + n, 0);
      const words = holeRows({ places, stitches: 2 }, 'rib 2x2', total, 3);
      return piece('Band', 'front band', [
        part('Band', { pickUp }, [section('rib', 3), { ...section('rib', 2), words }, section('rib', 3)]),
      ]);
    };
    const holes = (recipe: Recipe, ...now: readonly number[]) => {
      const made = editedRecipe(recipe, {
        kind: 'pick up',
        piece: 'Band',
        edges: now.map((count, at) => ({ at, along: '', was: 0, now: count })),
      })?.parts[0];
      const words = made?.sections[1]?.words;
      return (
        words &&
        holesIn(
          words,
          now.reduce((sum, n) => sum + n, 0),
        )
      );
    };

    it.each([
      ['three along 22, over 30: first and last 2 from the ends', [2, 10, 18], [22], [30], [2, 14, 26]],
      ['over 14 they have 4 stitches from one to the next', [2, 10, 18], [22], [14], [2, 6, 10]],
      [
        'along the second edge they move with the first, which grows by 4',
        [10, 18],
        [8, 14],
        [12, 14],
        [14, 22],
      ],
      ['along the second edge that grows by 8 they part', [10, 18], [8, 14], [8, 22], [10, 26]],
      ['along the first edge they stay where the second grows', [2, 10], [14, 8], [14, 12], [2, 10]],
    ] as const)('%s', (_, was, along, now, is) => {
      expect(holes(held(was, ...along), ...now)).toEqual({ places: is, stitches: 2 });
    });

    it.each([
      ['along both edges', [2, 18], [8, 14], [12, 14]],
      ['that end at the corner, begun before it', [6, 18], [8, 14], [8, 18]],
      ['without room', [2, 6, 10, 14, 18], [22], [10]],
    ] as const)('not %s', (_, was, along, now) => {
      expect(holes(held(was, ...along), ...now)).toBeUndefined();
    });

    it('but not of other rows in words', () => {
      const other = held([2], 22);
      const [one] = other.parts;
      if (!one) throw new Error('a band');
      const [first, second] = one.sections[1]?.words ?? [];
      const words = [first ?? [], second ?? [], first ?? []];
      const sections = one.sections.map((own, i) => (i === 1 ? { ...own, words } : own));
      const twice = { ...other, parts: [{ ...one, sections }] };
      expect(holes(twice, 30)).toBeUndefined();
    });
  });
});

/* The row that binds off is a section of its own, and so is what is worked of one that is planned anew. */
describe('in a garment as it stands', () => {
  const garment = standing(back, front, sleeve, neckband);
  const makesOf = (name: string, made: typeof garment | undefined) =>
    made?.pieces.find(({ recipe }) => recipe.name === name)?.makes;
  const spans = (name: string, made: typeof garment | undefined) =>
    makesOf(name, made)?.map(({ parts }) =>
      parts.map(({ sections }) => sections.map((one) => `${one.first}-${one.last}`).join(' ')),
    );
  const begun = (name: string, ...worked: readonly (readonly number[])[]) =>
    new Map([[name, { isBegun: true, rows: worked }]]);
  const body = rows({ piece: 'Front', part: 'Body' });
  const arm = (makes: readonly number[], by: number) =>
    rows({ piece: 'Sleeve', part: 'Sleeve', called: 'sleeve', makes, by });

  it('not begun: its recipe is another, planned anew; all other pieces are the same', () => {
    const made = edited(garment, body, nothingKnitted);
    expect(rowsOf(made?.pieces[1]?.recipe)).toEqual([[4, 10, 4], [4, 2], [], [4, 3]]);
    expect(spans('Front', made)).toEqual([['1-4 5-14 15-18', '1-4 5-6 7-7', '', '1-4 5-7 8-8']]);
    expect(made?.pieces.map((one, i) => one === garment.pieces[i])).toEqual([true, false, true, true]);
  });

  it.each([
    ['five rows in, four more', 5, 4, '1-4 5-5 6-14 15-18'],
    ['five rows in, four fewer', 5, -4, '1-4 5-5 6-6 7-10'],
    ['nothing worked yet of a piece that is called begun', 0, 2, '1-4 5-12 13-16'],
    ['all ten worked, none fewer', 10, -2, undefined],
  ])('begun: its recipe stands: %s', (_, worked, by, now) => {
    const made = edited(garment, { ...body, by } as Edit, begun('Front', [worked, 0, 0, 0]));
    expect(spans('Front', made)?.[0]?.[0]).toBe(now);
    if (made) expect(made.pieces[1]?.recipe).toBe(front);
  });

  it('one sleeve of two is worked otherwise, the other stands', () => {
    for (const [makes, is] of [
      [[1], [12, 8]],
      [[2], [8, 12]],
    ] as const) {
      const made = edited(garment, arm(makes, 4), nothingKnitted);
      expect(makesOf('Sleeve', made)?.map(({ parts }) => (parts[0]?.sections[1]?.last ?? 0) - 2)).toEqual(is);
      expect(made?.pieces[2]?.recipe).toBe(garment.pieces[2]?.recipe);
      const other = 2 - (makes[0] ?? 1);
      expect(makesOf('Sleeve', made)?.[other]).toBe(garment.pieces[2]?.makes[other]);
      // the other one follows: both have rows of their own, and the recipe stands
      const both = edited(made ?? garment, arm([1, 2], 2), nothingKnitted);
      expect(makesOf('Sleeve', both)?.map(({ parts }) => (parts[0]?.sections[1]?.last ?? 0) - 2)).toEqual(
        is.map((count) => count + 2),
      );
      expect(both?.pieces[2]?.recipe).toBe(garment.pieces[2]?.recipe);
    }
    expect(rowsOf(edited(garment, arm([1, 2], 4), nothingKnitted)?.pieces[2]?.recipe)).toEqual([[2, 12, 6]]);
  });

  it('of two sleeves the one that is past the section cannot follow, the other can', () => {
    const knitted = begun('Sleeve', [12], [3]);
    expect(edited(garment, arm([1], -2), knitted)).toBeUndefined();
    expect(edited(garment, arm([1, 2], -2), knitted)).toBeUndefined();
    expect(spans('Sleeve', edited(garment, arm([2], -2), knitted))).toEqual([
      ['1-2 3-10 11-16 17-17'],
      ['1-2 3-3 4-8 9-14 15-15'],
    ]);
  });

  it.each([
    ['a piece that is not there', rows({ piece: 'Hood' }), nothingKnitted],
    ['a section of another name', { ...body, called: 'neck' } as Edit, begun('Front', [5, 0, 0, 0])],
    ['a part that is not there', { ...body, part: 'Hood' } as Edit, begun('Front', [5, 0, 0, 0])],
    [
      'the width of a sleeve on the needles',
      { kind: 'width', piece: 'Sleeve', part: 'Sleeve', by: 2 },
      begun('Sleeve', [1], [0]),
    ],
    [
      'a count already picked up',
      { kind: 'pick up', piece: 'Neckband', edges: [{ at: 0, along: '', was: 5, now: 9 }] },
      begun('Neckband', [1]),
    ],
  ] as const)('not %s', (_, edit, knitted) => {
    expect(edited(garment, edit as Edit, knitted)).toBeUndefined();
  });

  it('several, one after the other; none where one of them cannot be', () => {
    const made = editedBy(garment, [body, body], nothingKnitted);
    expect(spans('Front', made)?.[0]?.[0]).toBe('1-4 5-18 19-22');
    expect(editedBy(garment, [body, rows({ piece: 'Hood' }), body], nothingKnitted)).toBeUndefined();
    expect(editedBy(garment, [], nothingKnitted)).toBe(garment);
  });
});
