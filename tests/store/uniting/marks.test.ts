import { describe, expect, it } from 'vitest';
import type { GarmentRecord, PieceRecord } from '../../../src/store/records.ts';
import { begunIn, hasParts, withMakes } from '../../../src/store/uniting/begun.ts';
import { joinedNotes } from '../../../src/store/uniting/joined-notes.ts';
import { stampedChange, withoutPhotos } from '../../../src/store/uniting/stamped-change.ts';
import { stateOf } from '../../../src/store/uniting/state.ts';
import { uniteGarments } from '../../../src/store/uniting/unite-garments.ts';
import { scarf } from '../scenario.ts';

const { garment } = scarf();
const [long, cuff] = garment.pieces as [PieceRecord, PieceRecord];
const none = () => undefined;

const baseOf = (record: GarmentRecord): string => [...stateOf(record).seen.values()][0] ?? '';
const base = baseOf(garment);
/** 2000 is 1jk in base 36, 3000 is 2bc */
const AT_2000 = '0000001jk.00000.aa';
const AT_3000 = '0000002bc.00000.bb';
const change = (was: GarmentRecord, part: Partial<GarmentRecord>, at = 2000, device = 'aa') =>
  stampedChange(was, { ...was, ...part }, { device, at });

describe('the marks of a garment', () => {
  it('name the one field that was changed, and who was heard of', () => {
    expect(change(garment, { notes: 'soft' }).marks).toEqual({
      base,
      seen: [base, AT_2000],
      at: { notes: AT_2000 },
    });
  });

  it('are none where nothing is another, and stay as they were', () => {
    expect('marks' in change(garment, {})).toBe(false);
    const once = change(garment, { notes: 'soft' });
    expect(change(once, {}, 3000, 'bb').marks).toBe(once.marks);
    // what comes from a screen says nothing of marks: they are the box's own
    const { marks: _unsaid, ...shown } = once;
    expect(stampedChange(once, shown, { device: 'bb', at: 3000 }).marks).toBe(once.marks);
  });

  it('are above all that was heard of, whoever said it, and whatever this device’s clock says', () => {
    const first = change(garment, { notes: 'soft' }, 2000, 'aa');
    const second = change(first, { name: 'Wind' }, 3000, 'bb');
    const third = change(second, { licence: 'free' }, 2500, 'cc');
    // 2500 is earlier than what bb said: its time, counted on
    expect(third.marks?.at).toMatchObject({ licence: '0000002bc.00001.cc' });
    expect(third.marks?.seen).toEqual([base, AT_2000, AT_3000, '0000002bc.00001.cc']);
    const fourth = change(third, { credits: 'her aunt' }, 10, 'aa');
    expect(fourth.marks?.at).toMatchObject({ credits: '0000002bc.00002.aa' });
  });

  it('name an order of pieces that was laid, until another is', () => {
    const laid = change(garment, { pieces: [cuff, long] });
    expect(laid.pieces.map(({ id }) => id)).toEqual(['cuff', 'long']);
    expect(laid.marks).toEqual({
      base,
      seen: [base, AT_2000],
      order: { pieces: { stamp: AT_2000, names: ['pieces/cuff', 'pieces/long'] } },
    });
    const other = change(laid, { pieces: [long, cuff] }, 3000, 'bb');
    expect(other.marks?.order).toEqual({ pieces: { stamp: AT_3000, names: ['pieces/long', 'pieces/cuff'] } });
  });

  it('keep a piece that was taken out, and the order of what is left', () => {
    const without = change(garment, { pieces: [long] });
    expect(without.marks).toEqual({
      base,
      seen: [base, AT_2000],
      gone: [{ stamp: AT_2000, piece: cuff }],
      order: { pieces: { stamp: AT_2000, names: ['pieces/long'] } },
    });
  });

  it('name photos that were taken away, and make the garment later than it was', () => {
    const without = withoutPhotos(garment, ['two', 'one'], { device: 'aa', at: 2000 });
    expect(without.marks?.photosGone).toEqual([
      { stamp: AT_2000, id: 'one' },
      { stamp: AT_2000, id: 'two' },
    ]);
    expect(without.changedAt).toBe(2000);
    expect(withoutPhotos(garment, ['one'], { device: 'aa', at: 5 }).changedAt).toBe(garment.changedAt + 1);
  });

  it('say once what most parts bear, also where that is not what came first', () => {
    const all = change(garment, {
      name: 'Hat',
      notes: 'soft',
      pieces: [{ ...long, recipe: { ...long.recipe, name: 'Crown' } }, cuff],
    });
    expect(all.marks?.base).toBe(AT_2000);
    expect(all.marks?.at).toEqual({ 'pieces/cuff': base });
  });
});

describe('devices that change a garment without each other', () => {
  const one = change(garment, { notes: 'blue marker', name: 'Of one' });
  const two = change(garment, { notes: 'red marker', name: 'Of two' }, 3000, 'bb');
  const both = uniteGarments(one, two, none);

  it('keep both names, and show the later one', () => {
    expect(both.name).toBe('Of two');
    expect(both.marks?.also?.filter(({ name }) => name === 'name')).toEqual([
      { name: 'name', stamp: AT_2000, of: { name: 'Of one' } },
    ]);
    expect(uniteGarments(two, one, none)).toEqual(both);
  });

  it('keep both notes, the earlier first, and show them as one text', () => {
    expect(both.notes).toBe('blue marker\nred marker');
    expect(both.marks?.also?.filter(({ name }) => name === 'notes')).toEqual([
      { name: 'notes', stamp: AT_2000, of: { notes: 'blue marker' } },
      { name: 'notes', stamp: AT_3000, of: { notes: 'red marker' } },
    ]);
    expect(both.marks?.at?.notes).toBeUndefined();
  });

  it('have a version that is the same as the one shown without its text', () => {
    const same = uniteGarments(
      change(garment, { name: 'Alike' }),
      change(garment, { name: 'Alike' }, 3000, 'bb'),
      none,
    );
    expect(same.marks?.also).toEqual([{ name: 'name', stamp: AT_2000 }]);
    expect(uniteGarments(same, same, none)).toEqual(same);
  });

  it('are over once one of them changes what both have changed', () => {
    const settled = change(both, { name: 'Of both' }, 4000, 'aa');
    expect(settled.marks?.also?.map(({ name }) => name)).toEqual(['notes', 'notes']);
    expect(uniteGarments(settled, two, none).name).toBe('Of both');
    expect(uniteGarments(one, settled, none)).toEqual(settled);
  });

  it('leave out what one of them took out, but not where it was begun', () => {
    const without = change(garment, { pieces: [long] });
    expect(uniteGarments(without, garment, none).pieces.map(({ id }) => id)).toEqual(['long']);
    const begun = uniteGarments(without, garment, (piece) =>
      piece === 'cuff' ? { makes: 3, parts: 1 } : undefined,
    );
    expect(begun.pieces.map(({ id, recipe }) => [id, recipe.makes])).toEqual([
      ['long', 1],
      ['cuff', 3],
    ]);
    expect(begun.marks?.shown).toEqual(['cuff']);
    expect(begun.marks?.gone).toEqual([{ stamp: AT_2000, piece: cuff }]);
  });

  it('show a piece whose second part was begun with that part, also once something else is changed', () => {
    const [part] = long.recipe.parts;
    const hooded = { ...long, recipe: { ...long.recipe, parts: [part, { ...part, name: 'Hood' }] } };
    const stole = { ...long, recipe: { ...long.recipe, name: 'Stole' } };
    const first = change(garment, { pieces: [hooded, cuff] as PieceRecord[] }, 2000, 'aa');
    const second = change(garment, { pieces: [stole, cuff] }, 3000, 'bb');
    const shown = (record: GarmentRecord) =>
      record.pieces.map(({ recipe }) => [recipe.name, recipe.parts.length]);
    const begun = uniteGarments(first, second, (piece) =>
      piece === 'long' ? { makes: 1, parts: 2 } : undefined,
    );
    expect(shown(begun)).toEqual([
      ['Scarf', 2],
      ['Cuff', 1],
    ]);
    expect(shown(change(begun, { notes: 'soft' }, 4000, 'aa'))).toEqual(shown(begun));
    expect(shown(uniteGarments(first, second, none))).toEqual([
      ['Stole', 1],
      ['Cuff', 1],
    ]);
  });

  it('have it begun by the earlier one and changed by the later one', () => {
    expect(uniteGarments({ ...one, createdAt: 400 }, two, none)).toMatchObject({
      createdAt: 400,
      changedAt: 1000,
    });
    expect(uniteGarments(one, { ...two, createdAt: 300, changedAt: 7000 }, none)).toMatchObject({
      createdAt: 300,
      changedAt: 7000,
    });
  });
});

describe('what a log asks of a piece', () => {
  const begun = begunIn(
    ['g/p/0/1', 'g/p/2/3', 'g/p/1/21', 'g/q/0/20', 'g/r/0/21', 'h/p/4/1', 'nonsense'].map((make) => ({
      make: make as never,
    })),
  );

  it('is its highest make and part, more than twenty makes no recipe having', () => {
    expect([...begun]).toEqual([
      ['g/p', { makes: 3, parts: 3 }],
      ['g/q', { makes: 20, parts: 1 }],
      ['g/r', { makes: 1, parts: 1 }],
      ['h/p', { makes: 1, parts: 5 }],
    ]);
  });

  it('is held against the parts and the makes that the piece has', () => {
    expect(hasParts(long, { makes: 9, parts: 1 })).toBe(true);
    expect(hasParts(long, { makes: 1, parts: 2 })).toBe(false);
    expect(withMakes(cuff, { makes: 2, parts: 1 })).toBe(cuff);
    expect(withMakes(cuff, { makes: 1, parts: 1 })).toBe(cuff);
    expect(withMakes(cuff, { makes: 3, parts: 1 })).toEqual({
      ...cuff,
      recipe: { ...cuff.recipe, makes: 3 },
    });
  });
});

describe('notes of two devices as one text', () => {
  it('hold each line once, in the order of the versions', () => {
    expect(joinedNotes(['a\nb', 'c\na\nd'])).toBe('a\nb\nc\nd');
    expect(joinedNotes(['a\na'])).toBe('a\na');
    expect(joinedNotes([])).toBe('');
  });

  it('leave out a version that makes them longer than 100,000 characters', () => {
    const longest = 'x'.repeat(100_000);
    expect(joinedNotes([longest])).toBe(longest);
    expect(joinedNotes(['a', longest, 'b'])).toBe('a\nb');
    expect(joinedNotes(['a', 'x'.repeat(99_998)]).length).toBe(100_000);
    expect(joinedNotes(['a', 'x'.repeat(99_999), 'b'])).toBe('a\nb');
  });
});
