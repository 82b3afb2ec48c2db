import { afterEach, describe, expect, it } from 'vitest';
import { draftKey } from '../../../../src/app/drafts/editor/draft.ts';
import { change, editor, openEditor, withBegun } from '../../../../src/app/drafts/editor/editor.ts';
import {
  blankGarment,
  type GarmentForm,
  garmentToForm,
} from '../../../../src/app/drafts/editor/garment-form.ts';
import { saveGarment } from '../../../../src/app/drafts/editor/save-garment.ts';
import { fault, refuse } from '../../../../src/knit/fault.ts';
import type { PieceForm } from '../../../../src/knit/piece/form/form.ts';
import type { GarmentRecord } from '../../../../src/store/records.ts';
import type { Store } from '../../../../src/store/store.ts';
import { codesOf, given, planOf, scarf } from '../../../store/scenario.ts';
import { openEmptyApp } from '../../open-app.ts';

/** What saving answers where it cannot: nothing stored is changed, and what was typed stays. */

afterEach(() => {
  editor.value = undefined;
});

const full = refuse(fault('storage-full'));

/** The scarf in the editor under another name, over a store of which the test spoils something. */
async function renamed(wrap: (store: Store) => Store = (store) => store, form?: object) {
  const spoiled: { on: boolean } = { on: false };
  const store = await openEmptyApp((open) => {
    const bad = wrap(open);
    return new Proxy(open, { get: (_, name: keyof Store) => (spoiled.on ? bad[name] : open[name]) });
  });
  const { garment, plans } = scarf();
  given(await store.saveGarment(garment, plans));
  editor.value = undefined;
  await openEditor('scarf');
  change((was) => ({ ...was, name: 'Renamed', ...form }), 'typed');
  spoiled.on = true;
  return store;
}

describe('a garment that cannot be saved', () => {
  it('is not there where nothing is typed, or nothing of it can be knitted', async () => {
    const store = await openEmptyApp();
    editor.value = undefined;
    expect(codesOf(await saveGarment())).toEqual(['nothing to save']);
    await openEditor(undefined);
    change((form) => ({ ...form, name: 'Nothing yet' }), 'name');
    expect(codesOf(await saveGarment())).toEqual(['nothing to save']);
    expect(given(await store.list())).toEqual([]);
    expect(editor.value).toBeDefined();
  });

  const doors: readonly (readonly [string, (store: Store) => Store])[] = [
    ['its places cannot be read', (store) => ({ ...store, placesOf: async () => full })],
    ['it cannot be read itself', (store) => ({ ...store, garment: async () => full })],
    ['it cannot be written', (store) => ({ ...store, changeGarment: async () => full })],
  ];
  it.each(doors)('is told why where %s', async (_, wrap) => {
    const store = await renamed(wrap);
    expect(await saveGarment()).toEqual(full);
    expect(editor.value?.history.now.name).toBe('Renamed');
    expect(given(await store.garment('scarf')).name).toBe('Moorland scarf');
  });

  it('is not made anew where another window has deleted it', async () => {
    const store = await renamed();
    given(await store.deleteGarment('scarf'));
    expect(codesOf(await saveGarment())).toEqual(['no-such-garment']);
    expect(given(await store.list())).toEqual([]);
  });

  it('is refused where it is changed by another window each time it is tried, and not tried for ever', async () => {
    let tried = 0;
    await renamed((open) => ({
      ...open,
      changeGarment: async (id, by, plans) => {
        tried += 1;
        given(await open.changeGarment(id, (was) => ({ ...was, notes: `${tried} times` })));
        return open.changeGarment(id, by, plans);
      },
    }));
    expect(codesOf(await saveGarment())).toEqual(['store-not-answering']);
    expect(tried).toBe(4);
  });

  it('with new plans for pieces on the needles is refused where those cannot be made any more', async () => {
    const mends = [
      { kind: 'rows', piece: 'Scarf', makes: [1], part: 'Body', section: 0, called: 'Garter', by: -40 },
    ];
    const store = await renamed(undefined, { mends });
    given(await store.finishRow('scarf/long/0/1', 1));
    expect(codesOf(await saveGarment())).toEqual(['plan-moved']);
    expect(given(await store.garment('scarf')).name).toBe('Moorland scarf');
  });
});

describe('a piece that another window made', () => {
  const piece = (name: string, rows = 4): GarmentRecord['pieces'][number]['recipe'] => ({
    name,
    makes: 1,
    parts: [
      {
        name,
        from: { castOn: 20 },
        sections: [{ name: 'all', rows, fabric: 'garter', needle: 4, shaping: [] }],
        end: 'bind off',
      },
    ],
  });

  it('after an old draft was typed, which does not tell what there was, is no piece that she took out', async () => {
    const store = await openEmptyApp();
    const { garment, plans } = scarf();
    given(await store.saveGarment(garment, plans));
    const form: GarmentForm = { ...garmentToForm(garment), name: 'Typed' };
    given(await store.setSetting(draftKey('scarf'), { version: 1, garment: 'scarf', at: 5, form }));
    given(
      await store.changeGarment(
        'scarf',
        (was) => ({ ...was, pieces: [...was.pieces, { id: 'new', recipe: piece('Tassel') }] }),
        [planOf('scarf', 'new', 4)],
      ),
    );
    await openEditor('scarf');
    const now = editor.value?.history.now;
    expect(now?.name).toBe('Typed');
    expect(now?.pieces.map(({ id }) => id)).toEqual(['long', 'cuff', 'new']);
  });

  it('on the needles stands as it is knitted, under the name that was typed; one that is left out comes first', () => {
    const entry = (id: string, name: string, rows: string) => ({
      id,
      form: garmentToForm({ pieces: [{ id, recipe: piece(name, Number(rows)) }] } as unknown as GarmentRecord)
        .pieces[0]?.form as PieceForm,
    });
    const old = {
      pieces: [
        { id: 'a', recipe: piece('A', 4) },
        { id: 'b', recipe: piece('B', 6) },
        { id: 'c', recipe: piece('C', 8) },
      ],
    } as unknown as GarmentRecord;
    const form = { ...blankGarment, pieces: [entry('b', 'Bee', '60'), entry('c', 'See', '80')] };
    const rows = (made: GarmentForm) =>
      made.pieces.map(({ id, form: { name, parts } }) => `${id} ${name} ${parts[0]?.sections[0]?.rows}`);
    expect(rows(withBegun(form, old, new Set(['a', 'b'])))).toEqual(['a A 4', 'b Bee 6', 'c See 80']);
    expect(rows(withBegun(form, old, new Set()))).toEqual(['b Bee 60', 'c See 80']);
    expect(rows(withBegun(form, undefined, new Set(['a'])))).toEqual(['b Bee 60', 'c See 80']);
  });
});
