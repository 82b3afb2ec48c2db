import { describe, expect, it } from 'vitest';
import type { Draft } from '../../../../src/app/drafts/editor/draft.ts';
import { garmentToForm } from '../../../../src/app/drafts/editor/garment-form.ts';
import { formOf } from '../../../../src/app/drafts/editor/older-draft.ts';
import type { Recipe, Section } from '../../../../src/knit/piece/recipe.ts';
import type { GarmentRecord } from '../../../../src/store/records.ts';

/** Drafts of the first version carried the fields alone; what no field shows comes from the garment as it is stored. */

const section = (over: Partial<Section> = {}): Section => ({
  name: 'body',
  rows: 10,
  fabric: 'stocking',
  needle: 4,
  shaping: [],
  ...over,
});

const recipe: Recipe = {
  name: 'Back',
  makes: 1,
  role: 'back',
  parts: [
    {
      name: 'lower',
      from: { castOn: 20 },
      end: 'bind off',
      sections: [section({ onNeedle: 18 } as Partial<Section>), section({ name: 'rib', fabric: 'rib 1x1' })],
    },
    {
      name: 'band',
      from: {
        pickUp: [
          { stitches: 12, along: 'the neck', held: true },
          { stitches: 8, along: 'the front' },
        ],
      },
      end: 'bind off',
      sections: [section({ name: 'band' })],
    },
  ],
} as unknown as Recipe;

const stored = { id: 'g', name: 'Wren', pieces: [{ id: 'p', recipe }] } as unknown as GarmentRecord;

/** What a draft of the first version held of the same garment. */
const bare = () => {
  const form = structuredClone(garmentToForm(stored)) as unknown as {
    pieces: { id: string; form: { role?: string; name: string; parts: Record<string, unknown>[] } }[];
  };
  for (const { form: piece } of form.pieces) {
    delete piece.role;
    for (const part of piece.parts) {
      for (const one of part.sections as Record<string, unknown>[])
        for (const field of ['own', 'length', 'onNeedle', 'measured']) delete one[field];
      const start = part.start as { edges?: Record<string, unknown>[] };
      for (const edge of start.edges ?? []) delete edge.held;
    }
  }
  return form;
};
const first = (list: unknown): object => (Array.isArray(list) ? list[0] : undefined) ?? {};
const edgesOf = (start: unknown): unknown => (start as { edges?: unknown } | undefined)?.edges;
const draftOf = (form: unknown, version: 1 | 2 = 1): Draft =>
  ({ version, garment: 'g', at: 0, form }) as unknown as Draft;

describe('a draft of the first version', () => {
  it('has what no field shows from the garment as it is stored', () => {
    expect(bare()).not.toEqual(garmentToForm(stored));
    expect(formOf(draftOf(bare()), stored)).toEqual(garmentToForm(stored));
  });

  it('keeps what she typed in it', () => {
    const form = bare();
    const [piece] = form.pieces;
    if (piece === undefined) throw new Error('no piece');
    piece.form.name = 'Rear';
    expect(formOf(draftOf(form), stored).pieces[0]?.form).toMatchObject({ name: 'Rear', role: 'back' });
  });

  it('has nothing of a part, a section or an edge that is called otherwise, nor of a piece that is not stored', () => {
    const renamed = (change: (form: ReturnType<typeof bare>) => void) => {
      const form = bare();
      change(form);
      return JSON.stringify(formOf(draftOf(form), stored));
    };
    const held = (text: string) => /"held"/.test(text);
    const onNeedle = (text: string) => /"onNeedle"/.test(text);
    const plain = renamed(() => undefined);
    expect([held(plain), onNeedle(plain)]).toEqual([true, true]);
    const parts = (form: ReturnType<typeof bare>) => form.pieces[0]?.form.parts ?? [];
    expect(onNeedle(renamed((form) => Object.assign(parts(form)[0] ?? {}, { name: 'hem' })))).toBe(false);
    expect(onNeedle(renamed((form) => Object.assign(first(parts(form)[0]?.sections), { name: 'hem' })))).toBe(
      false,
    );
    expect(
      held(renamed((form) => Object.assign(first(edgesOf(parts(form)[1]?.start)), { along: 'the hem' }))),
    ).toBe(false);
    expect(held(renamed((form) => Object.assign(form.pieces[0] ?? {}, { id: 'other' })))).toBe(false);
  });

  it('of a garment that is not stored, and any of the second version, stays as it is', () => {
    const form = bare();
    expect(formOf(draftOf(form), undefined)).toBe(form);
    expect(formOf(draftOf(form, 2), stored)).toBe(form);
  });
});
