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

const wish = (form: GarmentForm, begun: readonly string[] = [], old: GarmentRecord | undefined = stored) => ({
  form,
  id: 'g1',
  now: 9,
  old,
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
    expect(toSave(wish({ ...blankGarment, name: 'Vest' }, [], undefined))).toBeUndefined();
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
