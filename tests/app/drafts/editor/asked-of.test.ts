import { describe, expect, it } from 'vitest';
import type { Editor } from '../../../../src/app/drafts/editor/editor.ts';
import {
  type GarmentForm,
  garmentToForm,
  type PieceEntry,
} from '../../../../src/app/drafts/editor/garment-form.ts';
import { askedOf } from '../../../../src/app/drafts/editor/mending.ts';
import type { GarmentView, PieceView } from '../../../../src/app/state.ts';
import { readPiece } from '../../../../src/knit/piece/form/read-piece.ts';
import { recipeToForm } from '../../../../src/knit/piece/form/write-piece.ts';
import { plan } from '../../../../src/knit/piece/plan.ts';
import type { Recipe } from '../../../../src/knit/piece/recipe.ts';
import type { GarmentRecord } from '../../../../src/store/records.ts';
import { given } from '../../../store/scenario.ts';

/** What of a typed garment is asked of the making up: the pieces as they stand, and as they would be saved. */

/** As the editor has stored it. */
const recipe = (name: string, rows = 12, makes = 1): Recipe =>
  readPiece(recipeToForm(raw(name, rows, makes))).recipe;

const raw = (name: string, rows: number, makes: number): Recipe => ({
  name,
  makes,
  parts: [
    {
      name: 'Body',
      from: { castOn: 20 },
      end: 'bind off',
      sections: [{ name: 'body', rows, fabric: 'stocking', needle: 4, shaping: [] }],
    },
  ],
});

const stored: GarmentRecord = {
  id: 'g',
  name: 'Wren',
  createdAt: 1,
  changedAt: 1,
  pieces: [
    { id: 'back', recipe: recipe('Back') },
    { id: 'front', recipe: recipe('Front') },
  ],
};

const viewed = (id: string, of: Recipe): PieceView => {
  const { parts } = given(plan(of));
  const makes = Array.from({ length: of.makes }, (_, i) => ({ make: i + 1, recipe: of, parts, places: [] }));
  return { id, name: of.name, recipe: of, makes } as unknown as PieceView;
};
const view: GarmentView = {
  garment: stored,
  pieces: stored.pieces.map((piece) => viewed(piece.id, piece.recipe)),
};

const form = garmentToForm(stored);
/** Her form with another recipe of a piece. */
const typed = (id: string, of: Recipe): GarmentForm => {
  const { pieces } = garmentToForm({ ...stored, pieces: [{ id, recipe: of }] });
  return { ...form, pieces: form.pieces.map((entry) => (entry.id === id ? (pieces[0] ?? entry) : entry)) };
};
/** The same with its rows left out. */
const spoilt = (entry: PieceEntry): PieceEntry => ({
  ...entry,
  form: {
    ...entry.form,
    parts: entry.form.parts.map((part) => ({
      ...part,
      sections: part.sections.map((section) => ({ ...section, rows: '' })),
    })),
  },
});
const [back, front] = form.pieces as [PieceEntry, PieceEntry];
const withPieces = (...pieces: readonly PieceEntry[]): GarmentForm => ({ ...form, pieces });

const asked = (now: GarmentForm, over: Partial<Editor> = {}, inHand?: string) =>
  askedOf(
    { old: stored, begun: new Set(), history: { now }, ...over } as unknown as Editor,
    view,
    inHand as never,
  );
/** Rows before the one that binds off, of each part of each copy. */
const rowsOf = (found: ReturnType<typeof asked>) =>
  found?.after.pieces.map(({ recipe: of, makes }) => [
    of.name,
    makes.map(({ parts }) => parts.map(({ rows }) => rows.length - 1)),
  ]);

describe('what is asked of the making up', () => {
  it('is nothing where nothing is another, a name only, or nothing is stored', () => {
    expect(asked(form)).toBeUndefined();
    expect(asked(typed('back', recipe('Rear')))).toBeUndefined();
    expect(asked(typed('back', recipe('Back', 20)), { old: undefined })).toBeUndefined();
    expect(asked(typed('back', recipe('Back', 20)), { old: { ...stored, id: 'other' } })).toBeUndefined();
  });

  it('is the piece as it is typed, by its stored name, beside the others as they stand', () => {
    const found = asked(typed('back', recipe('Rear', 20)), {}, 'back');
    expect(rowsOf(found)).toEqual([
      ['Back', [[20]]],
      ['Front', [[12]]],
    ]);
    expect(found?.after.pieces[1]).toBe(view.pieces[1]);
    expect(found?.before.pieces.map(({ makes }) => makes[0]?.parts[0]?.rows.length)).toEqual([13, 13]);
    expect(found?.inHand).toBe('Back');
    expect(asked(typed('back', recipe('Back', 20)))?.inHand).toBeUndefined();
    expect(asked(typed('back', recipe('Back', 20)), {}, 'none')?.inHand).toBeUndefined();
  });

  it('is each copy, also where only their number is another', () => {
    expect(rowsOf(asked(typed('front', recipe('Front', 12, 2))))).toEqual([
      ['Back', [[12]]],
      ['Front', [[12], [12]]],
    ]);
  });

  it('has a piece that was begun, or that has faults, as it stands', () => {
    const longer = typed('back', recipe('Back', 20));
    expect(asked(longer, { begun: new Set(['back' as never]) })).toBeUndefined();
    expect(asked(withPieces(spoilt(back), front))).toBeUndefined();
    const longFront = typed('front', recipe('Front', 16)).pieces[1] ?? front;
    expect(rowsOf(asked(withPieces(spoilt(back), longFront)))).toEqual([
      ['Back', [[12]]],
      ['Front', [[16]]],
    ]);
  });

  it('is without a piece that was taken out, with one that is new, and in the order typed', () => {
    expect(rowsOf(asked(withPieces(front)))).toEqual([['Front', [[12]]]]);
    expect(rowsOf(asked(withPieces(front, back)))).toEqual([
      ['Front', [[12]]],
      ['Back', [[12]]],
    ]);
    const hood = { id: 'hood', form: typed('back', recipe('Hood', 8)).pieces[0]?.form } as PieceEntry;
    expect(rowsOf(asked(withPieces(back, front, hood)))).toEqual([
      ['Back', [[12]]],
      ['Front', [[12]]],
      ['Hood', [[8]]],
    ]);
    expect(asked(withPieces(back, front, spoilt(hood)))).toBeUndefined();
  });
});
