import 'fake-indexeddb/auto';
import { beforeEach, describe, expect, it } from 'vitest';
import type { GarmentForm as Form } from '../../../../src/app/drafts/editor/garment-form.ts';
import type { StraightShape } from '../../../../src/knit/piece/form/straight.ts';
import type { GarmentRecord } from '../../../../src/store/records.ts';
import { openApp } from '../../open-app.ts';

const words = new Proxy({}, { get: (_, name) => String(name) }) as never;
const gauge = { stitches: 20, rows: 40, fabric: 'garter', needle: 4 } as const;
const hers: StraightShape = { neck: 'boat', given: { width: { mm: 550 }, length: { mm: 620 } } };

/** A garter pullover that was made by its numbers, with the yarn that she has of it. */
async function straightGarment(): Promise<GarmentRecord> {
  const { formToRecipe } = await import('../../../../src/knit/piece/form/read-piece.ts');
  const { straightCounts, straightPieces } = await import('../../../../src/knit/piece/form/straight.ts');
  const counts = straightCounts(hers, gauge);
  if (!counts) throw new Error('a figure is missing');
  const pieces = straightPieces(hers, counts, { gauge, needle: 4, words }).map((form, i) => {
    const read = formToRecipe(form);
    if (!read.ok) throw new Error(JSON.stringify(read.faults));
    return { id: `p${i}`, recipe: read.value };
  });
  const yarns = [{ name: 'Moor', grams: 50, metres: 110, balls: 9, dyeLot: '12' }];
  return { id: 'g', name: 'Garter', createdAt: 1, changedAt: 1, notes: 'for Ann', pieces, yarns };
}

describe('another garment like one that was made by its numbers', () => {
  beforeEach(async () => {
    await openApp();
  });

  it('begins with the figures of its straight panels, to be asked anew, and not with her balls', async () => {
    const { formLike } = await import('../../../../src/app/drafts/editor/another-like.ts');
    const form = formLike(await straightGarment(), 'Garter, again');
    expect(form).toMatchObject({
      name: 'Garter, again',
      notes: 'for Ann',
      gauge: { stitches: '20', rows: '40', fabric: 'garter', needle: '4' },
      pieces: [],
      shape: { neck: 'boat', given: { width: { mm: 550 }, length: { mm: 620 } } },
      yarn: { name: 'Moor', grams: '50', balls: '', dyeLot: '' },
    });
  });

  it('has every other piece as it is, under ids of its own', async () => {
    const { formLike } = await import('../../../../src/app/drafts/editor/another-like.ts');
    const garment = await straightGarment();
    const [back] = garment.pieces;
    const form = formLike({ ...garment, pieces: garment.pieces.slice(0, 1) }, 'Again');
    expect(form.shape).toBeUndefined();
    expect(form.pieces.map(({ form: { name } }) => name)).toEqual([back?.recipe.name]);
    expect(form.pieces[0]?.id).not.toBe(back?.id);
  });

  it('has every yarn and its stripes when it is saved, laid in its own rows, and is told what has no row there', async () => {
    const { formLike } = await import('../../../../src/app/drafts/editor/another-like.ts');
    const { toSave } = await import('../../../../src/app/drafts/editor/save.ts');
    const { whole } = await import('../../../../src/app/drafts/kept/kept-shapes.ts');
    const stripes = [{ colour: 'woad', rows: 2 }];
    const garment: GarmentRecord = {
      ...(await straightGarment()),
      yarns: [
        { name: 'Moor', grams: 50, metres: 110, balls: 9, dyeLot: '12', strands: 2 },
        { name: 'Fell', colour: 'woad', balls: 1, dyeLot: '7' },
      ],
      swatches: [{ fabric: 'garter', stitches: 20, widthMm: 100, rows: 40, heightMm: 100, needle: 4 }],
      stripes,
      // 14 rows of rib (50 mm of 28.6 in 100 mm, in pairs)
      striped: { p0: { first: 25, at: 1 }, p1: { first: 1, at: 1 } },
      restriped: [
        { piece: 'p0', make: 1, part: 0, row: 115, at: 1, stripes: [{ colour: 'sand', rows: 4 }] },
        { piece: 'p2', make: 2, part: 0, row: 155, at: 1, stripes: [] },
      ],
    };
    const made = async (shape: StraightShape, change: Partial<Form> = {}) => {
      const form = { ...formLike(garment, 'Garter, again'), ...change };
      const counts = straightCounts(shape, gauge);
      if (!counts) throw new Error('a figure is missing');
      const pieces = straightPieces(shape, counts, { gauge, needle: 4, words }).map((one, i) => ({
        id: `n${i}` as never,
        form: one,
      }));
      const typed = { ...form, pieces };
      // kept and read again, as after a night
      const kept = whole('editorDraft', { version: 2, garment: 'h', at: 1, form: typed });
      if (!kept) throw new Error('it was not kept');
      const saved = toSave({ form: kept.form, id: 'h', now: 2, old: undefined, begun: new Set() });
      if (!saved) throw new Error('nothing to save');
      return saved;
    };
    const { straightCounts, straightPieces } = await import('../../../../src/knit/piece/form/straight.ts');
    const rib = garment.pieces[0]?.recipe.parts[0]?.sections[0]?.rows ?? 0;
    const higher = await made({ ...hers, given: { ...hers.given, border: { count: rib + 6 } } });
    expect(higher.lost).toEqual([]);
    expect(higher.garment).toMatchObject({
      yarns: [
        { name: 'Moor', grams: 50, metres: 110, strands: 2 },
        { name: 'Fell', colour: 'woad' },
      ],
      swatches: garment.swatches,
      stripes,
      striped: { n0: { first: 31, at: 1 }, n1: { first: 1, at: 1 } },
      restriped: [
        { piece: 'n0', make: 1, part: 0, row: 121, at: 1 },
        { piece: 'n2', make: 2, part: 0, row: 161, at: 1, stripes: [] },
      ],
    });
    expect(JSON.stringify(higher.garment.yarns)).not.toMatch(/balls|dyeLot/);
    expect(higher.garment.ticked).toBeUndefined();
    // in another yarn the swatch of the first says nothing
    const { yarn } = formLike(garment, 'x');
    const other = await made(hers, { yarn: { ...yarn, name: 'Tarn' } });
    expect(other.garment.swatches).toBeUndefined();
    expect(other.garment.yarns?.map(({ name }) => name)).toEqual(['Tarn', 'Fell']);
    const short = await made({ ...hers, given: { ...hers.given, sleeveLength: { mm: 250 } } });
    expect(short.lost).toEqual([{ piece: 'sleeve', row: 155 }]);
    expect(short.garment.restriped?.map(({ piece }) => piece)).toEqual(['n0']);
  });

  it('is the new garment that is being typed; one that is begun stays unless it shall be replaced', async () => {
    const { beginLike, formLike } = await import('../../../../src/app/drafts/editor/another-like.ts');
    const at = await import('../../../../src/app/drafts/editor/editor.ts');
    const garment = await straightGarment();
    expect(await beginLike(formLike(garment, 'First'), false)).toBe('taken');
    await at.openEditor(undefined);
    expect(at.garmentForm.value?.name).toBe('First');
    // begun just now: it is nothing that she left and comes back to
    expect(at.editor.value?.foundAt).toBeUndefined();
    const first = at.editor.value?.garment;
    expect(await beginLike(formLike(garment, 'Second'), false)).toBe('another is begun');
    await at.openEditor(undefined);
    expect(at.garmentForm.value?.name).toBe('First');
    expect(await beginLike(formLike(garment, 'Second'), true)).toBe('taken');
    await at.openEditor(undefined);
    expect(at.garmentForm.value?.name).toBe('Second');
    expect(at.editor.value?.garment).not.toBe(first);
  });
});

describe('a text that a garment was read from', () => {
  beforeEach(async () => {
    await openApp();
  });

  it('is read again for another size; a text that is begun stays unless it shall be replaced', async () => {
    const at = await import('../../../../src/app/drafts/pattern/reader.ts');
    const again = { version: 1, name: 'Vest, again', text: 'Cast on 20 sts.', size: 1, gauge: {} } as const;
    expect(await at.readAgain(again, false)).toBe('taken');
    expect(at.pattern.value).toEqual(again);
    // the same text is no other
    expect(await at.readAgain({ ...again, size: 0 }, false)).toBe('taken');
    const other = { ...again, text: 'Cast on 30 sts.' };
    expect(await at.readAgain(other, false)).toBe('another is begun');
    expect(at.pattern.value?.text).toBe(again.text);
    expect(await at.readAgain(other, true)).toBe('taken');
    expect(at.pattern.value?.text).toBe(other.text);
  });
});
