import 'fake-indexeddb/auto';
import { beforeEach, describe, expect, it } from 'vitest';
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
