import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { PieceForm, ShapingForm } from '../../../../src/knit/piece/form/form.ts';
import { formToRecipe } from '../../../../src/knit/piece/form/read-piece.ts';
import { recipeToForm } from '../../../../src/knit/piece/form/write-piece.ts';
import type { Recipe, Shaping } from '../../../../src/knit/piece/recipe.ts';
import { writtenRecipe } from '../../../arbitraries/written-recipe.ts';
import { share } from '../../../by-turns.ts';

const oneSection = (shaping: readonly ShapingForm[], firstSide?: 'RS' | 'WS'): PieceForm => ({
  name: 'Front',
  makes: '1',
  parts: [
    {
      name: 'Body',
      start: { kind: 'cast on', stitches: '80' },
      ...(firstSide === undefined ? {} : { firstSide }),
      sections: [{ name: 'Armhole', rows: '30', fabric: 'stocking', needle: '3,75', shaping }],
      end: 'bind off',
    },
  ],
});

function shapingOf(form: PieceForm): readonly Shaping[] {
  const read = formToRecipe(form);
  if (!read.ok) throw new Error(JSON.stringify(read.faults));
  return read.value.parts[0]?.sections[0]?.shaping ?? [];
}

const groupsAtBoth: ShapingForm = {
  kind: 'bind off',
  edge: 'both',
  first: '1',
  every: '2',
  groups: '4, 3 2+2',
};

describe('form ↔ recipe', () => {
  it('a recipe written into a form and read again is the same recipe', () => {
    fc.assert(
      fc.property(writtenRecipe(), (recipe) => {
        expect(formToRecipe(recipeToForm(recipe))).toStrictEqual({ ok: true, value: recipe });
      }),
      { numRuns: share(200) },
    );
  }, 30_000);

  it('a form that was written from a recipe comes back as it was', () => {
    fc.assert(
      fc.property(writtenRecipe(), (recipe) => {
        const form = recipeToForm(recipe);
        const read = formToRecipe(form);
        expect(read.ok && recipeToForm(read.value)).toStrictEqual(form);
      }),
    );
  }, 30_000);

  it('carries what a newer recipe says and this form does not know', () => {
    const section = { name: 'a', rows: 4, fabric: 'stocking', needle: 4, shaping: [], later: 1 } as const;
    const starts = [
      { castOn: 20, later: 'cast on' },
      { part: 'p0', edge: 'right', stitches: 5, later: 'split' },
      { pickUp: [{ along: 'neck', stitches: 12, later: 'edge' }], later: 'pick up' },
    ] as const;
    const recipe = {
      name: 'Front',
      makes: 1,
      later: 'recipe',
      parts: starts.map((from, i) => ({ name: `p${i}`, from, sections: [section], end: 'hold', later: i })),
    } as unknown as Recipe;
    const form = recipeToForm(recipe);
    expect(form).toMatchObject({ later: 'recipe' });
    expect(form.parts).toMatchObject([
      { later: 0, start: { kind: 'cast on', stitches: '20', later: 'cast on' }, sections: [{ later: 1 }] },
      { later: 1, start: { kind: 'split', part: 'p0', edge: 'right', stitches: '5', later: 'split' } },
      {
        later: 2,
        start: {
          kind: 'pick up',
          later: 'pick up',
          edges: [{ along: 'neck', stitches: '12', later: 'edge' }],
        },
      },
    ]);
  });

  it('keeps a pattern’s own words with the rows that there are', () => {
    const own = { 2: 'as before', 5: 'as you like' };
    const ownOf = (rows: string) => {
      const form = oneSection([]);
      const parts = form.parts.map((part) => ({
        ...part,
        sections: part.sections.map((section) => ({ ...section, rows, own })),
      }));
      const read = formToRecipe({ ...form, parts });
      if (!read.ok) throw new Error(JSON.stringify(read.faults));
      return read.value.parts[0]?.sections[0]?.own;
    };
    expect(ownOf('5')).toEqual(own);
    expect(ownOf('4')).toEqual({ 2: 'as before' });
    expect(ownOf('2')).toEqual({ 2: 'as before' });
    expect(ownOf('1')).toBeUndefined();
  });

  it('reads a decimal comma and a decimal point alike', () => {
    const read = formToRecipe(oneSection([]));
    expect(read.ok && read.value.parts[0]?.sections[0]?.needle).toBe(3.75);
  });
});

describe('shaping as a knitter says it', () => {
  it('first on row 5, every 6th row 3 times, then every 4th row twice: rows 5, 11, 17, 21, 25', () => {
    const rhythm = [
      { every: '6', times: '3' },
      { every: '4', times: '2' },
    ];
    const [edge] = shapingOf(
      oneSection([
        {
          kind: 'edge',
          edge: 'both',
          change: 'decrease',
          by: '1',
          inset: '2',
          lean: 'mirrored',
          first: '5',
          rhythm,
        },
      ]),
    );
    expect(edge).toEqual({
      kind: 'edge',
      edge: 'both',
      by: -1,
      rows: [5, 11, 17, 21, 25],
      inset: 2,
      lean: 'mirrored',
    });
  });

  it('groups at both edges: the left one comes a row later, since it starts WS rows', () => {
    expect(shapingOf(oneSection([groupsAtBoth]))).toEqual([
      {
        kind: 'bind off',
        edge: 'right',
        groups: [4, 3, 2, 2].map((stitches, i) => ({ row: 1 + 2 * i, stitches })),
      },
      {
        kind: 'bind off',
        edge: 'left',
        groups: [4, 3, 2, 2].map((stitches, i) => ({ row: 2 + 2 * i, stitches })),
      },
    ]);
  });

  it('groups at both edges that begin on a WS row: the left edge goes first', () => {
    const edges = shapingOf(oneSection([groupsAtBoth], 'WS')).map(
      (s) => 'groups' in s && [s.edge, s.groups[0]?.row],
    );
    expect(edges).toEqual([
      ['left', 1],
      ['right', 2],
    ]);
  });

  it('a 0 in the list of groups leaves that turn out', () => {
    const [groups] = shapingOf(oneSection([{ ...groupsAtBoth, edge: 'right', groups: '3, 0, 2' }]));
    expect(groups).toMatchObject({
      groups: [
        { row: 1, stitches: 3 },
        { row: 5, stitches: 2 },
      ],
    });
  });

  it('groups that the recipe lists edge by edge are said as one entry for both edges', () => {
    const recipe: Recipe = {
      name: 'Front',
      makes: 1,
      parts: [
        {
          name: 'Body',
          from: { castOn: 80 },
          sections: [
            {
              name: 'Armhole',
              rows: 30,
              fabric: 'stocking',
              needle: 4,
              shaping: shapingOf(oneSection([groupsAtBoth])),
            },
          ],
          end: 'bind off',
        },
      ],
    };
    expect(recipeToForm(recipe).parts[0]?.sections[0]?.shaping).toEqual([
      { ...groupsAtBoth, groups: '4, 3, 2, 2' },
    ]);
  });
});
