import { describe, expect, it } from 'vitest';
import { type GarmentForm, garmentToForm } from '../../../../src/app/drafts/editor/garment-form.ts';
import {
  andThen,
  changedElsewhere,
  isNothing,
  nothingElsewhere,
  ontoStored,
} from '../../../../src/app/drafts/editor/onto-stored.ts';
import type { Recipe } from '../../../../src/knit/piece/recipe.ts';
import type { GarmentRecord } from '../../../../src/store/records.ts';

/** A garment that was opened, what she typed since, and what another window stored meanwhile. */

const recipe = (id: string, name: string): Recipe => ({
  name,
  makes: 1,
  parts: [
    {
      name: id,
      from: { castOn: 20 },
      end: 'bind off',
      sections: [{ name: 'body', rows: 12, fabric: 'stocking', needle: 4, shaping: [] }],
    },
  ],
});
const piece = (id: string, name = id) => ({ id, recipe: recipe(id, name) });
const opened = {
  id: 'g',
  name: 'Wren',
  notes: 'soft',
  yarns: [{ name: 'Hollin', colour: 'moss', grams: 50 }],
  pieces: [piece('back'), piece('front'), piece('sleeve')],
} as unknown as GarmentRecord;

const stored = (over: Partial<GarmentRecord>): GarmentRecord => ({ ...opened, ...over });
const typed = (over: (form: GarmentForm) => Partial<GarmentForm> = () => ({})): GarmentForm => {
  const form = garmentToForm(opened);
  return { ...form, ...over(form) };
};
const called = (form: GarmentForm) => form.pieces.map((entry) => [entry.id, entry.form.name]);
/** Her form with a piece called otherwise. */
const renamed = (id: string, name: string) =>
  typed(({ pieces }) => ({
    pieces: pieces.map((entry) => (entry.id === id ? { id, form: { ...entry.form, name } } : entry)),
  }));
const without = (id: string) => typed(({ pieces }) => ({ pieces: pieces.filter((one) => one.id !== id) }));

describe('a form laid onto what is stored by now', () => {
  it('is as it was where nothing was stored, and as it is stored where she typed nothing', () => {
    const mine = typed(() => ({ name: 'Robin', needle: '5' }));
    expect(ontoStored(mine, opened, opened)).toEqual(mine);
    const now = stored({ name: 'Rook', notes: 'warm', pieces: [piece('back', 'Grey'), piece('cuff')] });
    expect(ontoStored(typed(), opened, now)).toEqual(garmentToForm(now));
  });

  it('takes field by field what was stored, of the yarn too; what she typed holds', () => {
    const mine = typed(({ yarn }) => ({ name: 'Robin', yarn: { ...yarn, colour: 'heather' } }));
    const now = stored({
      name: 'Rook',
      yarns: [{ name: 'Alder', colour: 'slate', grams: 100 }],
    });
    const after = ontoStored(mine, opened, now);
    expect(after.name).toBe('Robin');
    expect(after.yarn).toMatchObject({ name: 'Alder', colour: 'heather', grams: '100' });
    expect(after.notes).toBe('soft');
  });

  it('has of notes both', () => {
    const mine = typed(() => ({ notes: 'soft, and mine' }));
    expect(ontoStored(mine, opened, stored({ notes: 'warm' })).notes.split('\n')).toEqual([
      'warm',
      ', and mine',
    ]);
    expect(ontoStored(mine, opened, opened).notes).toBe('soft, and mine');
    expect(ontoStored(typed(), opened, stored({ notes: 'warm' })).notes).toBe('warm');
  });

  it('has a piece as it was changed elsewhere, unless she changed it here', () => {
    const now = stored({ pieces: [piece('back', 'Grey'), piece('front', 'Blue'), piece('sleeve')] });
    expect(called(ontoStored(renamed('front', 'Red'), opened, now))).toEqual([
      ['back', 'Grey'],
      ['front', 'Red'],
      ['sleeve', 'sleeve'],
    ]);
  });

  it('loses a piece that was taken out elsewhere, unless she changed it here; one that she made stays', () => {
    const now = stored({ pieces: [piece('front')] });
    const mine = renamed('sleeve', 'Arm');
    const [first] = mine.pieces;
    if (first === undefined) throw new Error('no piece');
    const more = { ...mine, pieces: [...mine.pieces, { id: 'hood', form: first.form }] };
    expect(called(ontoStored(more, opened, now)).map(([id]) => id)).toEqual(['front', 'sleeve', 'hood']);
  });

  it('has a piece that was made elsewhere, and one that she took out only where it was changed there', () => {
    const now = stored({ pieces: [piece('back'), piece('front', 'Blue'), piece('sleeve'), piece('cuff')] });
    expect(called(ontoStored(without('back'), opened, now))).toEqual([
      ['front', 'Blue'],
      ['sleeve', 'sleeve'],
      ['cuff', 'cuff'],
    ]);
    expect(called(ontoStored(without('front'), opened, now)).map(([id]) => id)).toEqual([
      'back',
      'sleeve',
      'front',
      'cuff',
    ]);
  });
});

describe('what she is told of it', () => {
  const told = (form: GarmentForm, over: Partial<GarmentRecord>) =>
    changedElsewhere(form, opened, stored(over));

  it('is nothing where nothing was stored, and nothing of what both did alike', () => {
    expect(
      told(
        typed(() => ({ name: 'Robin' })),
        {},
      ),
    ).toEqual(nothingElsewhere);
    expect(
      told(
        typed(() => ({ name: 'Robin' })),
        { name: 'Robin' },
      ),
    ).toEqual(nothingElsewhere);
    const now = { pieces: [piece('back', 'Grey'), piece('front'), piece('sleeve')] };
    expect(told(renamed('back', 'Grey'), now)).toEqual(nothingElsewhere);
    expect(told(without('sleeve'), { pieces: [piece('back'), piece('front')] })).toEqual(nothingElsewhere);
  });

  it('is which fields were taken over, and which she has typed otherwise; notes are always united', () => {
    const mine = typed(() => ({ name: 'Robin', notes: 'mine' }));
    expect(told(mine, { name: 'Rook', notes: 'warm', yarns: [] })).toEqual({
      fields: ['notes', 'yarn'],
      pieces: [],
      both: ['name'],
    });
  });

  it('is which pieces came, were changed or went, by the name that they have there, else here', () => {
    const now = { pieces: [piece('back', 'Grey'), piece('front'), piece('cuff', 'Cuff')] };
    expect(told(typed(), now)).toEqual({ fields: [], pieces: ['Grey', 'sleeve', 'Cuff'], both: [] });
  });

  it('is which pieces she has changed here as well, by the name that she gave them', () => {
    const now = { pieces: [piece('back', 'Grey'), piece('front')] };
    const mine = {
      ...renamed('back', 'Red'),
      pieces: [...renamed('back', 'Red').pieces.slice(0, 2), ...renamed('sleeve', 'Arm').pieces.slice(2)],
    };
    expect(told(mine, now)).toEqual({ fields: [], pieces: [], both: ['Red', 'Arm'] });
  });

  it('is also that a piece which she took out was changed there', () => {
    const now = { pieces: [piece('back'), piece('front', 'Blue'), piece('sleeve')] };
    expect(told(without('front'), now)).toEqual({ fields: [], pieces: ['Blue'], both: [] });
  });

  it('is said once of what happened twice', () => {
    const one = { fields: ['name'], pieces: ['Back'], both: [] } as const;
    const two = { fields: ['name', 'notes'], pieces: ['Front', 'Back'], both: ['needle'] } as const;
    expect(andThen(one, two)).toEqual({
      fields: ['name', 'notes'],
      pieces: ['Back', 'Front'],
      both: ['needle'],
    });
    expect(isNothing(andThen(nothingElsewhere, nothingElsewhere))).toBe(true);
    for (const some of [
      { ...nothingElsewhere, fields: ['name'] as const },
      { ...nothingElsewhere, pieces: ['x'] },
      { ...nothingElsewhere, both: ['x'] },
    ])
      expect(isNothing(some)).toBe(false);
  });
});
