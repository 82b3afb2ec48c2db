import { beforeEach, describe, expect, it } from 'vitest';
import * as designer from '../../../../src/app/drafts/design/designer.ts';
import { newForm } from '../../../../src/app/drafts/design/form.ts';
import { drafts, openDrafts } from '../../../../src/app/drafts/editor/drafts.ts';
import * as editing from '../../../../src/app/drafts/editor/editor.ts';
import { garmentToForm } from '../../../../src/app/drafts/editor/garment-form.ts';
import { type KeptName, whole } from '../../../../src/app/drafts/kept/kept-shapes.ts';
import { readKept, textIn } from '../../../../src/app/drafts/kept/read-kept.ts';
import { emptyDraft } from '../../../../src/app/drafts/pattern/draft.ts';
import * as reader from '../../../../src/app/drafts/pattern/reader.ts';
import { type OpenApp, openApp } from '../../open-app.ts';
import { choices, full, good, record } from './kept-values.ts';

const names = Object.keys(good) as KeptName[];

/** Every value that is the same but for one field, of another kind or that nobody knows; a design's own figures have any key. */
function* spoiled(value: unknown): Generator<unknown> {
  if (typeof value !== 'object' || value === null) return;
  for (const [key, inner] of Object.entries(value)) {
    const others = (other: unknown) =>
      Array.isArray(value) ? value.with(Number(key), other) : { ...value, [key]: other };
    yield others([[inner]]);
    if (!Array.isArray(value) && !key.includes('.')) yield { ...value, [`${key} of tomorrow`]: inner };
    for (const worse of spoiled(inner)) yield others(worse);
  }
}

/** The value with another at a path of it. */
function withAt(value: unknown, [key, ...rest]: readonly string[], other: unknown): unknown {
  if (key === undefined) return other;
  const inner = withAt((value as Record<string, unknown>)[key], rest, other);
  return Array.isArray(value) ? value.with(Number(key), inner) : { ...(value as object), [key]: inner };
}

describe('what is kept while it is typed', () => {
  it.each(names)('is read back as it was written: %s', async (name) => {
    const read = await readKept(name, good[name]);
    expect(read).toEqual({ ok: true, value: JSON.parse(JSON.stringify(good[name])) });
  });

  it.each(names)('is refused whole where any field of it is of another kind: %s', (name) => {
    let tried = 0;
    for (const bad of spoiled(good[name])) {
      expect(whole(name, bad), JSON.stringify(bad).slice(0, 200)).toBeUndefined();
      tried += 1;
    }
    expect(tried).toBeGreaterThan(5);
  });

  it.each(Object.keys(choices))('has a word of its list where it has a choice, and no other: %s', (path) => {
    const words = choices[path] ?? [];
    const [name, ...fields] = path.split('.') as [KeptName, ...string[]];
    const is = (word: unknown) => whole(name, withAt(full[name], fields, word)) !== undefined;
    expect(words.filter(is)).toEqual(words);
    // the words of the other choices, what is near a word, and what is none
    const others = [...new Set(Object.values(choices).flat()), 'rigt', 'Both', '', 0, 9, true].filter(
      (word) => !words.includes(word),
    );
    expect(others.filter(is)).toEqual([]);
  });

  it('is whole in every kind that a choice may have', () => {
    for (const name of Object.keys(full) as KeptName[])
      expect(whole(name, full[name]), name).toEqual(JSON.parse(JSON.stringify(full[name])));
  });

  it('is read back however long its texts are, as long as they could be kept', async () => {
    const form = { ...garmentToForm(record), notes: 'So soft. '.repeat(50_000) };
    const draft = { version: 2, garment: 'g1', at: 5, form };
    expect(await readKept('editorDraft', draft)).toMatchObject({ ok: true });
  });

  it('may be a measure that was emptied', () => {
    const emptied = { ...newForm(), body: { ...newForm().body, chest: Number.NaN } };
    expect(whole('designForm', emptied)).toEqual(emptied);
    expect(whole('designForm', JSON.parse(JSON.stringify(emptied)))).toEqual(emptied);
  });
});

describe('what was kept and cannot be read', () => {
  let app: OpenApp;
  beforeEach(async () => {
    app = await openApp();
    designer.form.value = undefined;
    reader.pattern.value = undefined;
    editing.editor.value = undefined;
  });
  const setting = async (name: string) => {
    const read = await app.store.settings();
    return read.ok ? read.value[name] : undefined;
  };

  it('of a copied pattern is told, and begun anew with its text', async () => {
    await app.store.setSetting('pattern new', { ...emptyDraft, text: 'Cast on 40 sts.', gauge: null });
    await reader.openPattern();
    expect([reader.pattern.value, reader.unread.value?.fault?.code]).toEqual([undefined, 'kept-unreadable']);
    reader.beginAnew();
    expect(reader.pattern.value).toEqual({ ...emptyDraft, text: 'Cast on 40 sts.' });
    expect(reader.unread.value).toBeUndefined();
  });

  it('of a design is told, and begun anew with its name', async () => {
    await app.store.setSetting('design new', { ...newForm(), name: 'Heather', body: { chest: 'wide' } });
    await app.store.setSetting('people', [good.person, { name: 'Bo', body: { chest: 900 } }, 7]);
    await designer.openDesign();
    expect([designer.form.value, designer.unread.value?.fault?.code]).toEqual([undefined, 'kept-unreadable']);
    expect(designer.people.value.map(({ name }) => name)).toEqual(['Ada']);
    designer.beginAnew();
    expect(designer.form.value).toEqual({ ...newForm(), name: 'Heather' });
  });

  it('of the editor is told, stays until she begins anew, and leaves the garment as it was saved', async () => {
    const bad = {
      version: 1,
      garment: 'sample',
      at: 5,
      form: { name: 'New name', notes: 'So soft.', pieces: [{}] },
    };
    await app.store.setSetting('draft sample', bad);
    await openDrafts();
    expect(drafts.value).toEqual([{ garment: 'sample', name: 'New name', at: 5, isNew: false }]);
    await editing.openEditor('sample');
    expect([editing.editor.value, editing.unread.value?.fault?.code]).toEqual([undefined, 'kept-unreadable']);
    expect(await setting('draft sample')).toEqual(bad);
    await editing.beginAnew('sample');
    const form = editing.garmentForm.value;
    expect([form?.name, form?.notes, form?.pieces.length]).toEqual(['New name', 'So soft.', 4]);
  });
});

describe('a text in what could not be read', () => {
  it('is found by its path, and is empty where there is none', () => {
    const stored = { form: { name: 'Wren', rows: 3 }, list: null };
    expect(textIn(stored, 'form', 'name')).toBe('Wren');
    expect(textIn('Wren')).toBe('Wren');
    for (const path of [['form'], ['form', 'rows'], ['form', 'other'], ['list', 'name'], ['none', 'name']])
      expect(textIn(stored, ...path), path.join()).toBe('');
    expect(textIn(undefined, 'form', 'name')).toBe('');
    expect(textIn(null, 'form')).toBe('');
  });
});
