import { describe, expect, it } from 'vitest';
import {
  blankGarment,
  type GarmentForm,
  garmentToForm,
  withGauge,
} from '../../../../src/app/drafts/editor/garment-form.ts';
import { toSave } from '../../../../src/app/drafts/editor/save.ts';
import { sampleGarment } from '../../../../src/knit/garment/sample.ts';
import type { PieceForm } from '../../../../src/knit/piece/form/form.ts';
import type { GarmentRecord } from '../../../../src/store/records.ts';

const { pieces, ...rest } = sampleGarment;
const stored: GarmentRecord = {
  ...rest,
  id: 'g1',
  createdAt: 5,
  changedAt: 6,
  pieces: pieces.map((recipe, i) => ({ id: `p${i}`, recipe })),
  design: { drafted: true },
};

/** Of the stored garment, or of another; `null` for one that is new. */
const wish = (form: GarmentForm, begun: readonly string[] = [], old: GarmentRecord | null = stored) => ({
  form,
  id: 'g1',
  now: 9,
  old: old ?? undefined,
  begun: new Set(begun),
});

const changePiece = (
  form: GarmentForm,
  index: number,
  change: (piece: PieceForm) => PieceForm,
): GarmentForm => ({
  ...form,
  pieces: form.pieces.map((entry, i) => (i === index ? { ...entry, form: change(entry.form) } : entry)),
});

const longer =
  (rows: string) =>
  (piece: PieceForm): PieceForm => ({
    ...piece,
    parts: piece.parts.map((part) => ({
      ...part,
      sections: part.sections.map((section) => ({ ...section, rows })),
    })),
  });

describe('saving a garment that was typed', () => {
  it('a garment opened and saved unchanged is the same garment, with a plan for every part', () => {
    const saved = toSave(wish(garmentToForm(stored)));
    expect(saved?.garment).toEqual({ ...stored, changedAt: 9 });
    expect(saved?.plans.map(({ piece, part }) => `${piece}/${part}`)).toEqual(
      pieces.flatMap((recipe, i) => recipe.parts.map((_, part) => `p${i}/${part}`)),
    );
    expect(saved?.waiting).toEqual([]);
  });

  it('a begun piece keeps its rows and gets no new plan, whatever was typed; its name changes', () => {
    const form = changePiece(garmentToForm(stored), 0, (piece) => ({ ...longer('2')(piece), name: 'Rear' }));
    const saved = toSave(wish(form, ['p0']));
    expect(saved?.garment.pieces[0]).toEqual({ id: 'p0', recipe: { ...pieces[0], name: 'Rear' } });
    expect(saved?.plans.some((plan) => plan.piece === 'p0')).toBe(false);
  });

  it('a begun piece that was taken out of the form is still there, with its place', () => {
    const form = garmentToForm(stored);
    const saved = toSave(wish({ ...form, pieces: form.pieces.slice(1) }, ['p0']));
    expect(saved?.garment.pieces.map((piece) => piece.id)).toContain('p0');
  });

  it('a piece that is not begun takes its new rows', () => {
    const form = changePiece(garmentToForm(stored), 3, (piece) => longer('8')(piece));
    const saved = toSave(wish(form, ['p0']));
    expect(saved?.garment.pieces[3]?.recipe.parts[0]?.sections[0]?.rows).toBe(8);
  });

  it('a piece with a fault stays as it was saved and waits; a new one with a fault is left out', () => {
    const form = changePiece(garmentToForm(stored), 1, longer(''));
    const added = { id: 'p9', form: longer('x')(form.pieces[0]?.form as PieceForm) };
    const saved = toSave(wish({ ...form, pieces: [...form.pieces, added] }));
    expect(saved?.garment.pieces).toEqual(stored.pieces);
    expect(saved?.waiting).toEqual(['p1', 'p9']);
  });

  it('nothing is saved without a name, nor without a piece that can be knitted', () => {
    const form = garmentToForm(stored);
    expect(toSave(wish({ ...form, name: ' ' }))).toBeUndefined();
    expect(toSave(wish({ ...blankGarment, name: 'Vest' }, [], null))).toBeUndefined();
  });

  it('what the form does not ask stays: swatches, credits, the draft it came from', () => {
    const saved = toSave(wish({ ...garmentToForm(stored), notes: '' }));
    expect(saved?.garment.swatches).toEqual(stored.swatches);
    expect(saved?.garment.design).toEqual(stored.design);
    expect(saved?.garment).not.toHaveProperty('notes');
  });

  it('pieces that had the garment’s gauge take the new one, a piece with a gauge of its own keeps it', () => {
    const own = { stitches: '30', rows: '42' };
    const form = changePiece(garmentToForm(stored), 3, (piece) => ({ ...piece, gauge: own }));
    const gauged = withGauge(form, { stitches: '22', rows: '' });
    expect(gauged.pieces.map(({ form: piece }) => piece.gauge?.stitches)).toEqual(['22', '22', '22', '30']);
    expect(withGauge(gauged, { stitches: '', rows: '' }).pieces[0]?.form).not.toHaveProperty('gauge');
  });

  it('a mirrored piece gets plans for its mirror image too', () => {
    const form = changePiece(garmentToForm(stored), 1, (piece) => ({ ...piece, makes: '2', mirrored: true }));
    const plans = toSave(wish(form))?.plans.filter((plan) => plan.piece === 'p1');
    expect(plans?.map(({ part, mirror }) => [part, mirror])).toEqual([
      [0, false],
      [1, false],
      [2, false],
      [0, true],
      [1, true],
      [2, true],
    ]);
  });
});

describe('saving onto a garment that was changed meanwhile', () => {
  const begunWith = (over: Partial<PieceForm>, recipe: object = {}) => {
    const [first, ...others] = stored.pieces;
    const old = {
      ...stored,
      pieces: [{ id: 'p0', recipe: { ...first?.recipe, ...recipe } }, ...others],
    } as GarmentRecord;
    const form = changePiece(garmentToForm(old), 0, (piece) => ({ ...piece, ...over }));
    return toSave(wish(form, ['p0'], old));
  };

  it('a begun piece keeps the recipe that it was planned anew by, with the name that was typed', () => {
    const anew = { ...pieces[0], makes: 3 } as (typeof pieces)[0];
    const was = { ...stored, pieces: stored.pieces.map((p) => (p.id === 'p0' ? { ...p, recipe: anew } : p)) };
    const onto = (name: string) => begunWith({ name })?.onto(was).pieces[0]?.recipe;
    expect(onto('Rear')).toMatchObject({ name: 'Rear', makes: 3 });
    expect(onto(' ')).toMatchObject({ name: pieces[0]?.name, makes: 3 });
  });

  it('a piece that is not begun is as it was typed, whatever stands there', () => {
    const anew = { ...pieces[3], makes: 7 } as (typeof pieces)[0];
    const was = { ...stored, pieces: stored.pieces.map((p) => (p.id === 'p3' ? { ...p, recipe: anew } : p)) };
    expect(toSave(wish(garmentToForm(stored)))?.onto(was).pieces[3]?.recipe.makes).toBe(pieces[3]?.makes);
  });

  it('a begun piece takes what it is, and what its tension was measured in where nobody said', () => {
    const gauge = { stitches: 22, rows: 30 };
    const said = { stitches: '22', rows: '30', fabric: 'garter', needle: '4' } as const;
    const saved = (form: Partial<PieceForm>, recipe: object) =>
      begunWith(form, recipe)?.garment.pieces[0]?.recipe;
    expect(saved({ role: 'front' }, {})).toMatchObject({ role: 'front' });
    expect(saved({ gauge: said }, { gauge })?.gauge).toMatchObject({ ...gauge, fabric: 'garter' });
    // another tension changes no row of it, nor does another fabric
    expect(saved({ gauge: { ...said, stitches: '23' } }, { gauge })?.gauge).toEqual(gauge);
    expect(saved({ gauge: { ...said, rows: '31' } }, { gauge })?.gauge).toEqual(gauge);
    const known = { ...gauge, fabric: 'stocking' };
    expect(saved({ gauge: said }, { gauge: known })?.gauge).toEqual(known);
  });
});

describe('the yarns of a garment that is saved', () => {
  const yarns = [
    { name: 'Hollin', colour: 'moss', grams: 50, weight: 'DK' },
    { name: 'Alder', grams: 100 },
  ] as unknown as NonNullable<GarmentRecord['yarns']>;
  const saved = (yarn: Partial<GarmentForm['yarn']>, of: typeof yarns | null = yarns) => {
    const { yarns: _none, ...bare } = stored;
    const old = { ...bare, ...(of && { yarns: of }) } as GarmentRecord;
    const form = garmentToForm(old);
    return toSave(wish({ ...form, yarn: { ...form.yarn, ...yarn } }, [], old))?.garment.yarns;
  };
  const blank = { name: '', fibre: '', colour: '', dyeLot: '', grams: '', metres: '', balls: '' };

  it('are as stored where the fields are as they were', () => {
    expect(saved({})).toBe(yarns);
    expect(saved({}, null)).toBeUndefined();
  });

  it('are the first as typed, with what no field shows of it, and the others', () => {
    expect(saved({ colour: 'sand' })).toEqual([
      { name: 'Hollin', colour: 'sand', grams: 50, weight: 'DK' },
      { name: 'Alder', grams: 100 },
    ]);
    expect(saved({ name: 'Reed', grams: '25' }, null)).toEqual([{ name: 'Reed', grams: 25 }]);
  });

  it('are the others where the first is blank, and none where there is no other', () => {
    expect(saved(blank)).toEqual(yarns.slice(1));
    expect(saved(blank, yarns.slice(0, 1))).toBeUndefined();
  });
});

describe('the notes and the name of a garment that is saved', () => {
  const noted = (notes: string | undefined, typed: string) => {
    const { notes: _none, ...bare } = stored;
    const old = { ...bare, ...(notes !== undefined && { notes }) } as GarmentRecord;
    return toSave(wish({ ...garmentToForm(old), notes: typed }, [], old))?.garment.notes;
  };

  it('are to the last blank as stored where she left them so', () => {
    expect(noted('soft \n', 'soft \n')).toBe('soft \n');
    expect(noted(undefined, '')).toBeUndefined();
    expect(noted('soft', 'warm ')?.trim()).toBe('warm');
    const old = { ...stored, name: 'Wren ' };
    expect(toSave(wish(garmentToForm(old), [], old))?.garment.name).toBe('Wren ');
    expect(toSave(wish({ ...garmentToForm(old), name: ' Robin ' }, [], old))?.garment.name).toBe('Robin');
  });

  it('have of a new garment when it was made', () => {
    const made = toSave(wish(garmentToForm(stored), [], null))?.garment;
    expect(made).toMatchObject({ id: 'g1', createdAt: 9, changedAt: 9 });
  });
});
