import { describe, expect, it } from 'vitest';
import { mirrorRecipe } from '../../../../src/knit/piece/mirror.ts';
import type { PlannedPart } from '../../../../src/knit/piece/planned.ts';
import type { PartRecipe, Recipe, Section, Shaping } from '../../../../src/knit/piece/recipe.ts';
import { waysToAbsorb } from '../../../../src/knit/piece/rework/absorb.ts';
import { layAnew, withRows } from '../../../../src/knit/piece/rework/lay-anew.ts';
import { asReallyKnitted, recipeOfMake } from '../../../../src/knit/piece/rework/make-recipe.ts';
import { mitten, section } from '../count/mitten.ts';
import { atEdge as edges, boundOff as off } from '../shapings.ts';

describe('shaping rows laid over other rows, reckoned by hand', () => {
  it.each<[string, number[], number, number, number, number[]]>([
    ['as many rows: the same', [3, 7, 11, 15], 20, 20, 4, [3, 7, 11, 15]],
    ['in whatever order they are given', [15, 3, 11, 7], 20, 20, 4, [3, 7, 11, 15]],
    // 5 plain rows stay behind the last: from 3 to 23 ten pairs, 4 + 3 + 3
    [
      'eight more: the longer first, as many plain rows after the last',
      [3, 7, 11, 15],
      20,
      28,
      4,
      [3, 11, 17, 23],
    ],
    // 11 and 12 pairs: the shorter ones stay first
    ['shorter ones first where they were', [1, 3, 7, 11], 12, 22, 4, [1, 7, 13, 21]],
    ['no room for the plain rows after the last', [3, 7, 11, 15], 20, 9, 4, [3, 5, 7, 9]],
    ['no room after the first either', [3, 7, 11, 15], 20, 8, 4, [1, 3, 5, 7]],
    ['on wrong side rows, where they were', [2, 6, 10], 12, 6, 3, [2, 4, 6]],
    ['from the second row on, where only that leaves room', [4, 8, 12], 12, 7, 3, [2, 4, 6]],
    ['on any row, where they were', [1, 2, 4], 4, 3, 3, [1, 2, 3]],
    ['one row more than there were', [3, 7], 8, 8, 3, [3, 5, 7]],
    ['where there were none: from the first row on', [], 10, 10, 2, [1, 9]],
    ['none', [3, 7], 8, 8, 0, []],
  ])('%s', (_, old, oldRows, rows, times, laid) => {
    expect(layAnew(old, oldRows, rows, times)).toEqual({ ok: true, value: laid });
  });

  it.each<[number[], number, number, number, number]>([
    [[3, 7, 11, 15], 20, 6, 4, 3],
    [[2, 6, 10], 12, 5, 3, 2],
    [[1, 2, 4], 4, 2, 3, 2],
    [[3, 7], 8, 0, 2, 0],
  ])(
    '%j of %i rows do not go into %i rows %i times: there is room for %i',
    (old, oldRows, rows, times, mostTimes) => {
      expect(layAnew(old, oldRows, rows, times)).toMatchObject({
        ok: false,
        faults: [{ code: 'shaping to come does not fit', figures: { times, rows, mostTimes } }],
      });
    },
  );
});

describe('a section with other rows', () => {
  const laid = (shaping: Shaping, rows: number, now: number, keep?: 'what fits') => {
    const made = withRows(section({ rows, shaping: [shaping] }), now, keep);
    return made.ok
      ? [made.value.rows, made.value.shaping[0]]
      : made.faults.map(({ code, figures }) => [code, figures]);
  };
  const along = edges('both', -1, 3, 7, 11, 15);

  it('lays shaping that runs along it anew, and leaves what lies at its beginning', () => {
    expect(laid(along, 20, 28)).toEqual([28, edges('both', -1, 3, 11, 17, 23)]);
    // two of its longest intervals after the last: it lay at the beginning
    expect(laid(along, 22, 28)).toEqual([28, edges('both', -1, 3, 9, 15, 21)]);
    expect(laid(along, 23, 30)).toEqual([30, along]);
    expect(laid(edges('left', -1, 5), 8, 12)).toEqual([12, edges('left', -1, 5)]);
    const mitre: Shaping = { kind: 'middle', rows: [2, 4], from: 7 };
    expect(laid(mitre, 5, 9)).toEqual([9, { ...mitre, rows: [2, 8] }]);
  });

  it('where only what does not fit is to move, moves that', () => {
    expect(laid(along, 20, 28, 'what fits')).toEqual([28, along]);
    expect(laid(along, 20, 15, 'what fits')).toEqual([15, along]);
    expect(laid(along, 20, 14, 'what fits')).toEqual([14, edges('both', -1, 3, 5, 7, 9)]);
  });

  it('lays what lay at its beginning anew where it has no room any more', () => {
    expect(laid(edges('right', -1, 3, 5, 7), 40, 50)).toEqual([50, edges('right', -1, 3, 5, 7)]);
    expect(laid(edges('right', -1, 3, 5, 7), 40, 7)).toEqual([7, edges('right', -1, 3, 5, 7)]);
    expect(laid(edges('right', -1, 3, 5, 7), 40, 6)).toEqual([6, edges('right', -1, 1, 3, 5)]);
  });

  it('keeps groups and spread rows where they are, and is refused where they have no row', () => {
    const spread: Shaping = { kind: 'across', row: 5, by: 4 };
    expect(laid(spread, 8, 5)).toEqual([5, spread]);
    expect(laid(spread, 8, 4)).toEqual([['too few rows for its shaping', { row: 5, rows: 4 }]]);
    const groups = off('right', [3, 4], [1, 2]);
    expect(laid(groups, 8, 3)).toEqual([3, groups]);
    expect(laid(groups, 8, 2)).toEqual([['too few rows for its shaping', { row: 3, rows: 2 }]]);
    expect(laid(off('right'), 8, 0)).toEqual([0, off('right')]);
  });
});

describe('what is off, taken up at the edge that lacks it', () => {
  it('though it is shaped only once there', () => {
    const rest = [
      section({ name: 'a', rows: 20, shaping: [edges('right', -1, 5), edges('left', -1, 5, 9)] }),
    ];
    const [way] = waysToAbsorb(rest, 2, 'right', 'RS');
    expect(way?.rest[0]?.shaping).toEqual([edges('right', -1, 5), edges('both', -1, 7, 9)]);
  });
});

/** A first make as it was knitted: 8 rows, then so many stitches counted on the needle, then 4 rows more. */
function knitted(shaping: readonly Shaping[], onNeedle: number, after: number, rows = 8): PlannedPart {
  const sections: Section[] = [
    section({ name: 'a', rows, shaping }),
    section({ name: 'b', onNeedle, shaping: [edges('right', -1, 1)] }),
  ];
  const recipe: PartRecipe = { name: 'hand', from: { castOn: 20 }, end: 'hold', sections };
  const planned = [{ first: 1 }, { first: rows + 1 }].map((one) => ({ ...mitten.sections[0], ...one }));
  const worked = Array.from({ length: rows + 4 }, () => ({ ...mitten.rows[0], after }));
  return { ...mitten, recipe, sections: planned, rows: worked, start: 20 } as PlannedPart;
}

describe('the second make, to match what the first really is', () => {
  const first = (shaping: readonly Shaping[], onNeedle: number, after: number, rows?: number) => {
    const made = asReallyKnitted(knitted(shaping, onNeedle, after, rows));
    expect(made?.sections[1]).not.toHaveProperty('onNeedle');
    expect(made?.sections[1]?.shaping ?? [edges('right', -1, 1)]).toEqual([edges('right', -1, 1)]);
    return made?.sections[0]?.shaping;
  };
  const both = edges('both', -1, 3, 5);

  it.each<[string, readonly Shaping[], number, number, readonly Shaping[]]>([
    ['a count that was right changes nothing', [both], 16, 16, [both]],
    ['two too many: the last decrease row is left out', [both], 18, 16, [edges('both', -1, 3)]],
    ['four too many: both are', [both], 20, 16, []],
    ['at one edge alone each counts one', [edges('right', -1, 3, 5)], 19, 18, [edges('right', -1, 3)]],
    [
      'two too few where it is widened: the last increase row is left out',
      [edges('both', 1, 3, 5)],
      22,
      24,
      [edges('both', 1, 3)],
    ],
    [
      'more than they make: a row of its own, the last that is plain',
      [both],
      22,
      16,
      [both, { kind: 'across', row: 8, by: 6 }],
    ],
    ['too few: no row can be left out for that', [both], 14, 16, [both, { kind: 'across', row: 8, by: -2 }]],
    [
      'one too many: half of a row can not be left out',
      [both],
      17,
      16,
      [both, { kind: 'across', row: 8, by: 1 }],
    ],
    [
      'a row of its own where no other shaping lies',
      [{ kind: 'across', row: 8, by: 2 }, off('left', [6, 2]), { kind: 'middle', rows: [7], from: 9 }],
      19,
      18,
      [
        { kind: 'across', row: 8, by: 2 },
        off('left', [6, 2]),
        { kind: 'middle', rows: [7], from: 9 },
        { kind: 'across', row: 5, by: 1 },
      ],
    ],
  ])('%s', (_, shaping, onNeedle, after, made) => {
    expect(first(shaping, onNeedle, after)).toEqual(made);
  });

  it('has no recipe where no row is left for it, nor where the first was knitted as planned', () => {
    const full = [edges('both', -1, 1, 2)];
    expect(asReallyKnitted(knitted(full, 14, 16, 2))).toBeUndefined();
    expect(asReallyKnitted(knitted(full, 20, 16, 2))).toBeDefined();
    expect(asReallyKnitted(mitten)).toBeUndefined();
  });

  it('what was counted when it began is held against what was cast on', () => {
    const recipe: PartRecipe = {
      name: 'hand',
      from: { castOn: 20 },
      end: 'hold',
      sections: [section({ name: 'a', onNeedle: 22 })],
    };
    expect(asReallyKnitted({ ...mitten, recipe })?.sections[0]?.shaping).toEqual([
      { kind: 'across', row: 4, by: 2 },
    ]);
  });
});

describe('the recipe of one make', () => {
  const recipe: Recipe = {
    name: 'Front',
    makes: 2,
    mirrored: true,
    parts: [
      {
        name: 'body',
        from: { castOn: 20 },
        end: 'split',
        sections: [section({ shaping: [edges('right', -1, 1)] })],
      },
      { name: 'neck', from: { part: 'body', edge: 'right', stitches: 9 }, end: 'hold', sections: [] },
    ],
  };

  it('is the mirror image for every second one, and for none where there is no mirror image', () => {
    const edgesOf = (make: number, over: Partial<Recipe> = {}) =>
      recipeOfMake({ ...recipe, ...over }, make).parts.flatMap(({ from, sections }) => [
        ...sections.flatMap(({ shaping }) => shaping.map((one) => 'edge' in one && one.edge)),
        ...('part' in from ? [from.edge] : []),
      ]);
    expect([1, 2, 3, 4].map((make) => edgesOf(make).join(' '))).toEqual([
      'right right',
      'left left',
      'right right',
      'left left',
    ]);
    expect(edgesOf(2, { mirrored: false })).toEqual(['right', 'right']);
    expect(recipeOfMake(recipe, 2)).toMatchObject({ name: 'Front', makes: 1, mirrored: false });
  });

  it('has the parts that were planned anew as they are planned now', () => {
    const own: PartRecipe = { name: 'body', from: { castOn: 21 }, end: 'split', sections: [] };
    const made = recipeOfMake(recipe, 1, [{ ...mitten, recipe: own }, undefined]);
    expect(made.parts).toEqual([own, recipe.parts[1]]);
    expect(recipeOfMake(recipe, 1, [mitten]).parts).toEqual(recipe.parts);
  });
});

describe('a mirror image', () => {
  const mirrored = (shaping: Shaping, rows = 4): Shaping | undefined =>
    mirrorRecipe({
      name: 'P',
      makes: 1,
      parts: [
        { name: 'p', from: { castOn: 20 }, end: 'hold', sections: [section({ rows, shaping: [shaping] })] },
      ],
    }).parts[0]?.sections[0]?.shaping[0];

  it('changes the edges, and nothing that lies at both or at none', () => {
    expect(mirrored(edges('right', -1, 1, 3))).toEqual(edges('left', -1, 1, 3));
    expect(mirrored(edges('left', -1, 1, 3))).toEqual(edges('right', -1, 1, 3));
    const mitre: Shaping = { kind: 'middle', rows: [2], from: 3 };
    const spread: Shaping = { kind: 'across', row: 2, by: 3 };
    for (const same of [edges('both', -1, 1), mitre, spread]) expect(mirrored(same)).toEqual(same);
  });

  it('lays groups a row later where the section has that row, else a row earlier', () => {
    expect(mirrored(off('right', [1, 4], [3, 2]))).toEqual(off('left', [2, 4], [4, 2]));
    expect(mirrored(off('left', [2, 4], [4, 2]))).toEqual(off('right', [1, 4], [3, 2]));
    expect(mirrored(off('right', [3, 2]), 3)).toEqual(off('left', [2, 2]));
    expect(mirrored(off('right', [3, 4], [5, 2]), 5)).toEqual(off('left', [2, 4], [4, 2]));
    for (const kind of ['cast on', 'turn'] as const)
      expect(mirrored({ kind, edge: 'left', groups: [{ row: 2, stitches: 5 }] })).toEqual({
        kind,
        edge: 'right',
        groups: [{ row: 1, stitches: 5 }],
      });
  });

  it('takes its stitches at the other edge, or in the middle as before', () => {
    const taking = (edge: 'right' | 'middle' | 'left') =>
      mirrorRecipe({
        name: 'P',
        makes: 1,
        parts: [{ name: 'p', from: { part: 'body', edge, stitches: 3 }, end: 'hold', sections: [] }],
      }).parts[0]?.from;
    expect([taking('right'), taking('middle'), taking('left')]).toEqual(
      ['left', 'middle', 'right'].map((edge) => ({ part: 'body', edge, stitches: 3 })),
    );
  });
});
