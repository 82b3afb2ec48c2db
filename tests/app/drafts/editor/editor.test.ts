import { IDBFactory } from 'fake-indexeddb';
import 'fake-indexeddb/auto';
import { beforeEach, describe, expect, it } from 'vitest';
import { draftKey } from '../../../../src/app/drafts/editor/draft.ts';
import { drafts, openDrafts } from '../../../../src/app/drafts/editor/drafts.ts';
import {
  change,
  editor,
  garmentForm,
  keeping,
  openEditor,
  throwAway,
  undo,
} from '../../../../src/app/drafts/editor/editor.ts';
import type { GarmentForm } from '../../../../src/app/drafts/editor/garment-form.ts';
import { saveGarment } from '../../../../src/app/drafts/editor/save-garment.ts';
import { openGarment } from '../../../../src/app/garments/open-garments.ts';
import { garmentShown } from '../../../../src/app/state.ts';
import { forgetStore, giveStore } from '../../../../src/app/store.ts';
import type { PieceForm } from '../../../../src/knit/piece/form/form.ts';
import { type GarmentId, type MakeKey, makeKey } from '../../../../src/progress/log.ts';
import { openStore, type Store } from '../../../../src/store/store.ts';
import { given } from '../../../store/scenario.ts';
import { told } from '../../../told.ts';

/** The page goes away and comes back: what is only in memory is gone. */
async function reload(garment?: string): Promise<void> {
  editor.value = undefined;
  await openEditor(garment);
}

const stored = async () => {
  while (keeping.value === 'keeping') await new Promise((resolve) => setTimeout(resolve, 1));
  expect(keeping.value).toBe('kept');
};

const square = (name: string, rows: string): PieceForm => ({
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

const named = (name: string) => (form: GarmentForm) => ({ ...form, name });
const withPiece = (id: string, piece: PieceForm) => (form: GarmentForm) => ({
  ...form,
  pieces: [...form.pieces.filter((entry) => entry.id !== id), { id, form: piece }],
});

let store: Store;

beforeEach(async () => {
  const factory = new IDBFactory();
  const opened = await openStore({
    factory: () => factory,
    keep: undefined,
    spareFactory: async () => undefined,
  });
  if (!opened.ok) throw new Error(told(opened.faults));
  store = opened.value;
  forgetStore();
  giveStore(store);
  editor.value = undefined;
});

/** A new garment of squares, typed and not saved. Gives its id. */
async function typed(...squares: readonly (readonly [id: string, name: string, rows: string])[]) {
  await openEditor(undefined);
  change(named('Squares'), 'name');
  for (const [id, name, rows] of squares) change(withPiece(id, square(name, rows)), 'added');
  return editor.value?.garment ?? '';
}

const saved = async (id: GarmentId) => given(await store.garment(id));

describe('a new garment', () => {
  it('half typed, wrong and all, is there again after a reload', async () => {
    await typed(['p1', 'Cowl', 'tw']);
    await stored();
    await reload();
    expect(garmentForm.value).toMatchObject({
      name: 'Squares',
      pieces: [{ id: 'p1', form: square('Cowl', 'tw') }],
    });
  });

  it('after a reload is said to be found, and of when', async () => {
    await typed();
    await stored();
    await reload();
    expect(editor.value?.foundAt).toBeGreaterThan(0);
  });

  it('takes back a piece, and then all letters of a field together', async () => {
    await openEditor(undefined);
    change(named('C'), 'name', 'name');
    change(named('Co'), 'name', 'name');
    change(withPiece('p1', square('Cowl', '12')), 'added');
    undo();
    expect(garmentForm.value).toMatchObject({ name: 'Co', pieces: [] });
    undo();
    expect(garmentForm.value).toMatchObject({ name: '', pieces: [] });
  });

  it('is kept as it is once something was taken back', async () => {
    await typed(['p1', 'Cowl', '12']);
    undo();
    await stored();
    await reload();
    expect(garmentForm.value).toMatchObject({ name: 'Squares', pieces: [] });
  });

  it('is saved under the id that it had while it was typed', async () => {
    const id = await typed(['p1', 'Cowl', '12']);
    expect(await saveGarment()).toEqual({ ok: true, value: { garment: id, waiting: [] } });
    expect((await saved(id)).name).toBe('Squares');
  });

  it('is saved with a place for every part', async () => {
    const id = await typed(['p1', 'Cowl', '12']);
    await saveGarment();
    const places = given(await store.placesOf(id));
    expect(places.map(({ piece, total, rows }) => [piece, total, rows])).toEqual([['p1', 13, 0]]);
  });

  it('has no draft any more once it is saved', async () => {
    await typed(['p1', 'Cowl', '12']);
    await saveGarment();
    await openDrafts();
    expect(drafts.value).toEqual([]);
  });

  it('once saved makes way for the next new one', async () => {
    await typed(['p1', 'Cowl', '12']);
    await saveGarment();
    await reload();
    expect(garmentForm.value).toMatchObject({ name: '', pieces: [] });
  });
});

describe('a new garment of which a piece is not ready', () => {
  const half = () => typed(['p1', 'One', '12'], ['p2', 'Other', '']);

  it('is saved without that piece, which is named', async () => {
    const id = await half();
    expect(await saveGarment()).toEqual({ ok: true, value: { garment: id, waiting: ['Other'] } });
    expect((await saved(id)).pieces.map((piece) => piece.id)).toEqual(['p1']);
  });

  it('keeps its draft beside the garment', async () => {
    const id = await half();
    await saveGarment();
    await openDrafts();
    expect(drafts.value.map(({ garment, isNew }) => [garment, isNew])).toEqual([[id, false]]);
    // with the garment as it was saved: what another window changes of it from now on is told
    expect(given(await store.settings())[draftKey(id)]).toMatchObject({ base: await saved(id) });
  });

  it('gets the piece with the next saving', async () => {
    const id = await half();
    await saveGarment();
    await reload(id);
    change(withPiece('p2', square('Other', '8')), 'typed');
    expect(await saveGarment()).toEqual({ ok: true, value: { garment: id, waiting: [] } });
    expect((await saved(id)).pieces.map((piece) => piece.id)).toEqual(['p1', 'p2']);
  });
});

describe('a garment that was saved', () => {
  it('takes only what was typed onto the garment as another window has it now', async () => {
    const { id } = await savedSquare();
    await openEditor(id);
    change(withPiece('p1', square('Uno', '12')), 'typed');
    const elsewhere = { name: 'Renamed', notes: 'So soft.', ticked: ['ends'] };
    await store.changeGarment(id, (garment) => ({ ...garment, ...elsewhere }));
    await saveGarment();
    expect(await saved(id)).toMatchObject({ ...elsewhere, pieces: [{ recipe: { name: 'Uno' } }] });
  });

  it('has the new name on its page as soon as it is saved', async () => {
    const { id } = await savedSquare();
    await openGarment(id);
    await openEditor(id);
    change(withPiece('p1', square('Uno', '12')), 'typed');
    await saveGarment();
    expect(garmentShown.value?.pieces.map((piece) => piece.name)).toEqual(['Uno']);
  });

  it('is as it was once the draft is thrown away', async () => {
    const { id } = await savedSquare();
    await openEditor(id);
    change(named('Other name'), 'name');
    await stored();
    await throwAway();
    await reload(id);
    expect(garmentForm.value?.name).toBe('Squares');
  });
});

it('a garment that is not on this phone is told from one that is not read yet', async () => {
  await openEditor('nowhere');
  expect(editor.value).toBeNull();
});

describe('a piece that is begun while its rows are being changed', () => {
  async function begunMeanwhile() {
    const { id, key } = await savedSquare();
    await openEditor(id);
    change(withPiece('p1', square('Uno', '40')), 'typed');
    await store.finishRow(key, 1);
    await store.finishRow(key, 2);
    await saveGarment();
    return { id, key };
  }

  it('keeps its place, on the rows that it was begun with', async () => {
    const { key } = await begunMeanwhile();
    expect(given(await store.place(key))).toMatchObject({ rows: 2, total: 13 });
  });

  it('keeps the numbers of its rows', async () => {
    const { id } = await begunMeanwhile();
    expect((await saved(id)).pieces[0]?.recipe.parts).toMatchObject([{ sections: [{ rows: 12 }] }]);
  });

  it('takes the new name all the same', async () => {
    const { id } = await begunMeanwhile();
    expect((await saved(id)).pieces[0]?.recipe.name).toBe('Uno');
  });
});

describe('a piece that is begun after a draft was typed', () => {
  it('is not left out by the draft that has it no more', async () => {
    const { id, key } = await savedSquare();
    await openEditor(id);
    change((form) => ({ ...form, pieces: [] }), 'removed');
    await stored();
    await store.finishRow(key, 1);
    await reload(id);
    expect(garmentForm.value?.pieces.map((entry) => entry.id)).toEqual(['p1']);
  });

  it('has the rows that it was begun with, whatever the draft says', async () => {
    const { id, key } = await savedSquare();
    await openEditor(id);
    change(withPiece('p1', square('One', '40')), 'typed');
    await stored();
    await store.finishRow(key, 1);
    await reload(id);
    expect(garmentForm.value?.pieces[0]?.form.parts[0]?.sections[0]?.rows).toBe('12');
  });
});

/** One square of twelve rows, saved and not begun, with the key of its make. */
async function savedSquare(): Promise<{ id: GarmentId; key: MakeKey }> {
  const id = await typed(['p1', 'One', '12']);
  await saveGarment();
  return { id, key: makeKey({ garment: id, piece: 'p1', part: 0, make: 1 }) };
}
