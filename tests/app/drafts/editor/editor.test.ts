import { IDBFactory } from 'fake-indexeddb';
import 'fake-indexeddb/auto';
import { beforeEach, describe, expect, it } from 'vitest';
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
import { type MakeKey, makeKey } from '../../../../src/progress/log.ts';
import { openStore, type Store } from '../../../../src/store/store.ts';
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

describe('a new garment', () => {
  it('half typed, wrong and all, is there again after a reload', async () => {
    await openEditor(undefined);
    change(named('Cowl'), 'name', 'name');
    change(withPiece('p1', square('Cowl', 'tw')), 'added');
    await stored();
    await reload();
    expect(garmentForm.value).toMatchObject({
      name: 'Cowl',
      pieces: [{ id: 'p1', form: square('Cowl', 'tw') }],
    });
    expect(editor.value?.foundAt).toBeGreaterThan(0);
  });

  it('takes back step by step, and the draft follows', async () => {
    await openEditor(undefined);
    change(named('C'), 'name', 'name');
    change(named('Co'), 'name', 'name');
    change(withPiece('p1', square('Cowl', '12')), 'added');
    undo();
    undo();
    await stored();
    await reload();
    expect(garmentForm.value).toMatchObject({ name: '', pieces: [] });
  });

  it('is saved with a place for every part, and its draft goes', async () => {
    await openEditor(undefined);
    const id = editor.value?.garment ?? '';
    change(named('Cowl'), 'name');
    change(withPiece('p1', square('Cowl', '12')), 'added');
    expect(await saveGarment()).toEqual({ ok: true, value: { garment: id, waiting: [] } });
    const places = await store.placesOf(id);
    expect(places.ok && places.value.map(({ piece, total, rows }) => [piece, total, rows])).toEqual([
      ['p1', 13, 0],
    ]);
    await openDrafts();
    expect(drafts.value).toEqual([]);
    await reload();
    expect(garmentForm.value).toMatchObject({ name: '', pieces: [] });
  });

  it('with a piece that is not ready is saved without it; the draft goes on beside the garment', async () => {
    await openEditor(undefined);
    const id = editor.value?.garment ?? '';
    change(named('Two squares'), 'name');
    change(withPiece('p1', square('One', '12')), 'added');
    change(withPiece('p2', square('Other', '')), 'added');
    expect(await saveGarment()).toEqual({ ok: true, value: { garment: id, waiting: ['Other'] } });
    await openDrafts();
    expect(drafts.value.map(({ garment, isNew }) => [garment, isNew])).toEqual([[id, false]]);
    await reload(id);
    change(withPiece('p2', square('Other', '8')), 'typed');
    expect(await saveGarment()).toEqual({ ok: true, value: { garment: id, waiting: [] } });
    const garment = await store.garment(id);
    expect(garment.ok && garment.value.pieces.map((piece) => piece.id)).toEqual(['p1', 'p2']);
  });
});

describe('a garment that is being knitted', () => {
  const square12 = withPiece('p1', square('One', '12'));

  async function savedAndKnitted(): Promise<{ id: string; key: MakeKey }> {
    await openEditor(undefined);
    const id = editor.value?.garment ?? '';
    change(named('Squares'), 'name');
    change(square12, 'added');
    await saveGarment();
    return { id, key: makeKey({ garment: id, piece: 'p1', part: 0, make: 1 }) };
  }

  it('a piece begun while its rows were being changed keeps its rows and its place', async () => {
    const { id, key } = await savedAndKnitted();
    await openEditor(id);
    change(withPiece('p1', square('Uno', '40')), 'typed');
    await store.finishRow(key, 1);
    await store.finishRow(key, 2);
    await saveGarment();
    const place = await store.place(key);
    expect(place.ok && [place.value.rows, place.value.total]).toEqual([2, 13]);
    const garment = await store.garment(id);
    expect(garment.ok && garment.value.pieces[0]?.recipe).toMatchObject({
      name: 'Uno',
      parts: [{ sections: [{ rows: 12 }] }],
    });
  });

  it('takes only what was typed onto the garment as it now is', async () => {
    const { id } = await savedAndKnitted();
    await openEditor(id);
    change(withPiece('p1', square('Uno', '12')), 'typed');
    // another window meanwhile
    await store.changeGarment(id, (garment) => ({
      ...garment,
      name: 'Renamed',
      notes: 'So soft.',
      ticked: ['ends'],
    }));
    await saveGarment();
    const garment = await store.garment(id);
    expect(garment.ok && garment.value).toMatchObject({
      name: 'Renamed',
      notes: 'So soft.',
      ticked: ['ends'],
      pieces: [{ recipe: { name: 'Uno' } }],
    });
  });

  it('its page has the new name as soon as it is saved', async () => {
    const { id } = await savedAndKnitted();
    await openGarment(id);
    await openEditor(id);
    change(withPiece('p1', square('Uno', '12')), 'typed');
    await saveGarment();
    expect(garmentShown.value?.pieces.map((piece) => piece.name)).toEqual(['Uno']);
  });

  it('an older draft does not bring back other rows for a piece on the needles, nor leave it out', async () => {
    const { id, key } = await savedAndKnitted();
    await openEditor(id);
    change((form) => ({ ...form, pieces: [] }), 'removed');
    await stored();
    await store.finishRow(key, 1);
    await reload(id);
    expect(garmentForm.value?.pieces.map((entry) => entry.id)).toEqual(['p1']);
  });

  it('thrown away, the draft is gone and the garment as it was', async () => {
    const { id } = await savedAndKnitted();
    await openEditor(id);
    change(named('Other name'), 'name');
    await stored();
    await throwAway();
    await reload(id);
    expect(garmentForm.value?.name).toBe('Squares');
  });

  it('one that is not on this phone is told from one that is not read yet', async () => {
    await openEditor('nowhere');
    expect(editor.value).toBeNull();
  });
});
