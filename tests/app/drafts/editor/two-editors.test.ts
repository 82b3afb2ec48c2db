import { IDBFactory } from 'fake-indexeddb';
import 'fake-indexeddb/auto';
import { beforeEach, describe, expect, it } from 'vitest';
import {
  change,
  editor,
  garmentForm,
  keeping,
  openEditor,
  undo,
} from '../../../../src/app/drafts/editor/editor.ts';
import type { GarmentForm } from '../../../../src/app/drafts/editor/garment-form.ts';
import { saveGarment } from '../../../../src/app/drafts/editor/save-garment.ts';
import { forgetStore, giveStore } from '../../../../src/app/store.ts';
import type { PieceForm } from '../../../../src/knit/piece/form/form.ts';
import { openStore, type Store } from '../../../../src/store/store.ts';
import { given, planOf } from '../../../store/scenario.ts';

/** One editor here, and another window that saves the same garment meanwhile, begun pieces, notes and all. */

const square = (name: string, rows = '12'): PieceForm => ({
  name,
  makes: '1',
  parts: [
    {
      name,
      start: { kind: 'cast on', stitches: '20' },
      sections: [{ name: '', rows, fabric: 'garter', needle: '4', shaping: [] }],
      end: 'bind off',
    },
  ],
});

const withPiece = (id: string, piece: PieceForm) => (form: GarmentForm) => ({
  ...form,
  pieces: [...form.pieces.filter((entry) => entry.id !== id), { id, form: piece }],
});
const typed = (field: 'name' | 'notes', text: string) =>
  change((form) => ({ ...form, [field]: text }), 'typed');
const written = async () => {
  while (keeping.value === 'keeping') await new Promise((resolve) => setTimeout(resolve, 1));
};

/** Read through a call: the compiler remembers what was last put in. */
const now = () => editor.value;

let store: Store;
let id: string;

beforeEach(async () => {
  const factory = new IDBFactory();
  store = given(
    await openStore({ factory: () => factory, keep: undefined, spareFactory: async () => undefined }),
  );
  forgetStore();
  giveStore(store);
  editor.value = undefined;
  await openEditor(undefined);
  id = now()?.garment ?? '';
  typed('name', 'Squares');
  change(withPiece('p1', square('One')), 'added');
  change(withPiece('p2', square('Two')), 'added');
  given(await saveGarment());
  await openEditor(id);
});

/** What the other window does: a piece, begun or not, and notes. */
async function hood(begun: boolean) {
  const [one] = given(await store.garment(id)).pieces;
  if (one === undefined) throw new Error('no piece');
  given(
    await store.changeGarment(
      id,
      (was) => ({
        ...was,
        notes: 'soft',
        pieces: [...was.pieces, { id: 'hood', recipe: { ...one.recipe, name: 'Hood' } }],
      }),
      [planOf(id, 'hood', 13)],
    ),
  );
  if (begun) given(await store.finishRow(`${id}/hood/0/1` as const, 1));
}

const garment = async () => given(await store.garment(id));
const pieces = async () => (await garment()).pieces.map((piece) => piece.id);

describe.each([true, false])('a piece that another window added meanwhile (begun: %s)', (begun) => {
  it('is saved along, and told', async () => {
    typed('name', 'Two squares');
    await hood(begun);
    const { elsewhere } = given(await saveGarment());
    expect(elsewhere).toEqual({ fields: ['notes'], pieces: ['Hood'], both: [] });
    expect(await pieces()).toEqual(expect.arrayContaining(['p1', 'p2', 'hood']));
    expect(await garment()).toMatchObject({ name: 'Two squares', notes: 'soft' });
  });

  it('is there in a draft that was left before, and when that is saved', async () => {
    change((form) => ({ ...form, pieces: form.pieces.filter((one) => one.id !== 'p2') }), 'removed');
    await written();
    await hood(begun);
    editor.value = undefined;
    await openEditor(id);
    expect(garmentForm.value?.pieces.map((one) => one.id).sort()).toEqual(['hood', 'p1']);
    expect(now()?.elsewhere).toEqual({ fields: ['notes'], pieces: ['Hood'], both: [] });
    given(await saveGarment());
    expect((await pieces()).sort()).toEqual(['hood', 'p1']);
  });

  it('is shown when the editor hears of it, and stays through an undo', async () => {
    typed('name', 'Two squares');
    await hood(begun);
    await openEditor(id);
    expect(garmentForm.value).toMatchObject({ name: 'Two squares', notes: 'soft' });
    expect(now()?.elsewhere?.pieces).toEqual(['Hood']);
    undo();
    expect(garmentForm.value?.name).toBe('Squares');
    given(await saveGarment());
    expect(await pieces()).toEqual(expect.arrayContaining(['p1', 'p2', 'hood']));
  });
});

describe('what both windows changed', () => {
  it('is told: her own typing holds, and of notes both are kept', async () => {
    typed('notes', 'mine');
    change(withPiece('p1', square('One', '20')), 'typed');
    const [one, ...others] = (await garment()).pieces;
    if (one === undefined) throw new Error('no piece');
    given(
      await store.changeGarment(id, (was) => ({
        ...was,
        notes: 'theirs',
        pieces: [{ ...one, recipe: { ...one.recipe, name: 'Uno' } }, ...others],
      })),
    );
    const { elsewhere } = given(await saveGarment());
    expect(elsewhere).toEqual({ fields: ['notes'], pieces: [], both: ['One'] });
    const { notes, pieces: saved } = await garment();
    expect(notes).toContain('mine');
    expect(notes).toContain('theirs');
    expect(saved.find((piece) => piece.id === 'p1')?.recipe.parts[0]?.sections[0]).toMatchObject({
      rows: 20,
    });
  });

  it('a piece that she took out and that was changed elsewhere stays, with that change', async () => {
    change((form) => ({ ...form, pieces: form.pieces.filter((one) => one.id !== 'p2') }), 'removed');
    given(
      await store.changeGarment(id, (was) => ({
        ...was,
        pieces: was.pieces.map((piece) =>
          piece.id === 'p2' ? { ...piece, recipe: { ...piece.recipe, name: 'Due' } } : piece,
        ),
      })),
    );
    expect(given(await saveGarment()).elsewhere?.pieces).toEqual(['Due']);
    expect(await pieces()).toEqual(expect.arrayContaining(['p1', 'p2']));
  });
});

it('a piece added in the moment of saving, after the garment was read, is not removed', async () => {
  typed('name', 'Two squares');
  let isFirst = true;
  const { changeGarment } = store;
  forgetStore();
  giveStore({
    ...store,
    changeGarment: async (...asked) => {
      if (isFirst) {
        isFirst = false;
        await hood(false);
      }
      return changeGarment(...asked);
    },
  });
  given(await saveGarment());
  expect(await pieces()).toEqual(expect.arrayContaining(['p1', 'p2', 'hood']));
  expect((await garment()).name).toBe('Two squares');
});
