import { beforeEach, describe, expect, it } from 'vitest';
import {
  type DesignForm,
  designOf,
  isUsualSwatch,
  newForm,
  readSwatch,
  type SwatchForm,
  usualSwatch,
} from '../../../../src/app/drafts/design/form.ts';
import { inWords } from '../../../../src/app/drafts/design/make-garment.ts';
import { whole } from '../../../../src/app/drafts/kept/kept-shapes.ts';
import { bodyOfSize } from '../../../../src/knit/garment/bodies.ts';
import { draft } from '../../../../src/knit/garment/draft.ts';
import { startingDesign } from '../../../../src/knit/garment/start.ts';
import { plan } from '../../../../src/knit/piece/plan.ts';
import { words as german } from '../../../../src/words/de/draft.ts';
import { lengthToType } from '../../../../src/words/measures.ts';
import { plainSpeech, speech } from '../../../../src/words/settings.ts';
import { told } from '../../../told.ts';

const child = bodyOfSize('children', '8');
if (!child) throw new Error('children have a size 8');

beforeEach(() => {
  speech.value = plainSpeech;
});

describe('the swatch that a design begins with', () => {
  it('is the usual one until a figure of it is hers', () => {
    const usual = usualSwatch('stocking');
    expect(isUsualSwatch(usual)).toBe(true);
    // over her own length she counted nothing yet
    expect(isUsualSwatch({ ...usual, widthMm: 100, heightMm: 100 })).toBe(true);
    const own = [
      { stitches: 22 },
      { rows: 27 },
      { needle: 3.5 },
      { inRidges: true },
      { before: { stitches: 20, rows: 26 } },
      { weighed: { grams: 10, stitches: null, rows: null } },
    ];
    for (const one of own) expect(isUsualSwatch({ ...usual, ...one })).toBe(false);
    expect(isUsualSwatch(usualSwatch('garter'))).toBe(true);
  });
});

describe('a design in the making', () => {
  it('can be made as it begins, without a caution', () => {
    const made = draft(designOf(newForm()));
    expect(made.ok && made.value.warnings).toEqual([]);
  });

  it('figures that she has not touched follow the body; those that she has stay', () => {
    const typed: DesignForm = { ...newForm(), own: { lengthMm: 580 } };
    const small = designOf({ ...typed, body: child });
    expect(small.lengthMm).toBe(580);
    expect(small.neck.widthMm).toBeLessThan(designOf(typed).neck.widthMm);
    expect(small.neck.depthMm).not.toBe(designOf(typed).neck.depthMm);
  });

  it('has a stitch for the seam or none as she chooses; without a word from her as its gauge asks', () => {
    const withSeam = designOf({ ...newForm(), own: { seamStitch: 'seam stitch' } });
    const without = designOf({ ...newForm(), own: { seamStitch: 'no seam stitch' } });
    const widest = (design: typeof withSeam): number => {
      const made = draft(design);
      const back = made.ok && made.value.recipes[0] ? plan(made.value.recipes[0]) : undefined;
      return back?.ok ? Math.max(...(back.value.parts[0]?.rows.map(({ after }) => after) ?? [])) : Number.NaN;
    };
    expect([withSeam.seamStitch, without.seamStitch]).toEqual([true, false]);
    expect(widest(withSeam) - widest(without)).toBe(2);
  });

  it('the top of the cap is hers to widen: so much is bound off last, to three stitches', () => {
    const own = { 'sleeve.capTopMm': 120 };
    const made = draft(designOf({ ...newForm(), own }));
    if (!made.ok) throw new Error(told(made.faults));
    const sleeve = made.value.recipes.find(({ role }) => role === 'sleeve');
    const planned = sleeve && plan(sleeve);
    const part = planned?.ok ? planned.value.parts[0] : undefined;
    const last = part?.rows.at(-1);
    const mm = (last?.before ?? 0) * (part?.cells.at(-1)?.width ?? 0);
    expect(Math.abs(mm - 120)).toBeLessThanOrEqual(3 * (part?.cells.at(-1)?.width ?? 0));
  });

  it('an emptied field is refused at that field, and is read back empty', () => {
    const emptied: DesignForm = { ...newForm(), own: { 'neck.widthMm': null } };
    const made = draft(designOf(emptied));
    expect(made.ok ? [] : made.faults.map((f) => f.at.field)).toContain('neck.widthMm');
    expect(whole('designForm', structuredClone(emptied))).toEqual(emptied);
  });

  it('ridges of garter are two rows each', () => {
    expect(readSwatch({ ...usualSwatch('garter'), rows: 20, inRidges: true })?.rows).toBe(40);
    expect(readSwatch({ ...usualSwatch('garter'), rows: 20, inRidges: false })?.rows).toBe(20);
  });

  it('a swatch with a figure missing is none, and the draft says so at its fabric', () => {
    const swatch = { ...usualSwatch('stocking'), rows: null };
    expect(readSwatch(swatch)).toBeUndefined();
    const made = draft(designOf({ ...newForm(), swatches: [swatch] }));
    expect(made.ok ? [] : made.faults.map((f) => f.at.field)).toContain('gauges.stocking');
  });

  it.each(['stitches', 'widthMm', 'rows', 'heightMm', 'needle'] as const)(
    'a swatch whose %s is not typed, or nothing, cannot be reckoned with',
    (field) => {
      expect(readSwatch({ ...usualSwatch('stocking'), [field]: null })).toBeUndefined();
      expect(readSwatch({ ...usualSwatch('stocking'), [field]: 0 })).toBeUndefined();
    },
  );

  it('a swatch counted before it was washed has that beside it, once both figures are typed', () => {
    const swatch = { ...usualSwatch('garter'), rows: 20, inRidges: true };
    const read = (before: SwatchForm['before']) =>
      readSwatch({ ...swatch, ...(before && { before }) })?.before;
    expect(read({ stitches: 22, rows: 19 })).toEqual({ stitches: 22, widthMm: 100, rows: 38, heightMm: 100 });
    expect(read({ stitches: null, rows: 19 })).toBeUndefined();
    expect(read({ stitches: 22, rows: null })).toBeUndefined();
    expect(read({ stitches: 22, rows: 0 })).toBeUndefined();
    expect(read(undefined)).toBeUndefined();
  });

  it('a swatch that was weighed has its grams and all of its stitches and rows, once each is typed', () => {
    const weighed = { grams: 7, stitches: 30, rows: 40 };
    const read = (over: Partial<NonNullable<SwatchForm['weighed']>>) =>
      readSwatch({ ...usualSwatch('stocking'), weighed: { ...weighed, ...over } })?.weighed;
    expect(read({})).toEqual(weighed);
    for (const field of ['grams', 'stitches', 'rows']) {
      expect(read({ [field]: null }), field).toBeUndefined();
      expect(read({ [field]: 0 }), field).toBeUndefined();
    }
    expect(readSwatch(usualSwatch('stocking'))).not.toHaveProperty('weighed');
  });

  it('a usual swatch is one of garter in ridges, else of stocking stitch in rows, over 10 cm', () => {
    expect(usualSwatch('garter')).toMatchObject({ stitches: 20, rows: 20, inRidges: true, widthMm: 100 });
    expect(usualSwatch('stocking')).toMatchObject({ stitches: 21, rows: 28, inRidges: false, heightMm: 100 });
  });

  it('where she measures in inches a usual swatch is over four of them, as leaflets there have it', () => {
    const was = speech.value;
    speech.value = { ...was, units: 'in' };
    const { widthMm, heightMm } = usualSwatch('stocking');
    const shown = lengthToType(widthMm ?? 0);
    speech.value = was;
    expect({ widthMm, heightMm, shown }).toEqual({ widthMm: 101.6, heightMm: 101.6, shown: 4 });
  });

  it('the tension is that of the swatch in the panels’ own fabric; others are beside it', () => {
    const rib = { ...usualSwatch('rib 1x1'), stitches: 26, needle: 3 };
    const design = designOf({ ...newForm(), swatches: [rib, usualSwatch('stocking')] });
    expect(design.gauges).toMatchObject({
      stocking: { stitches: 21, rows: 28 },
      'rib 1x1': { stitches: 26 },
    });
    expect(design.needles.panels).toBe(4);
  });

  it('borders are on the needle of their own swatch, else on the thickest sold half a millimetre thinner', () => {
    const borders = (needle: number, more: Partial<DesignForm> = {}) =>
      designOf({ ...newForm(), swatches: [{ ...usualSwatch('stocking'), needle }], ...more }).needles.borders;
    // sizes sold (Craft Yarn Council, metric and US: 2.25, 2.75, 3.25, 3.5, 3.75, 4 ...)
    expect(borders(4)).toBe(3.5);
    expect(borders(3.75)).toBe(3.25);
    expect(borders(2)).toBe(2);
    expect(borders(4, { version: 1 })).toBe(3.5);
    expect(borders(3.75, { version: 1 })).toBe(3.25);
    expect(borders(2, { version: 1 })).toBe(2);
    // no 8.5 mm is sold: what is drafted today takes 8; what was drafted once stays as it was
    expect(borders(9)).toBe(8);
    expect(borders(9, { version: 1 })).toBe(8.5);
    const own = { ...usualSwatch(designOf(newForm()).hem.fabric), needle: 3 };
    const made = designOf({ ...newForm(), swatches: [usualSwatch('stocking'), own] });
    expect(made.needles).toEqual({ panels: 4, borders: 3 });
  });

  it('men’s button holes are in the left front, women’s in the right; a form of version 1 says nothing of it', () => {
    const holes = (table: 'men' | 'women', version: 1 | 2 = 2) =>
      designOf({ ...newForm(), version, person: { table, size: 'M' } }).frontBand.holesIn;
    expect(holes('men')).toBe('left front');
    expect(holes('women')).toBe(
      startingDesign(newForm().choices, newForm().body, 'stocking', { stitches: 21, rows: 28 }).frontBand
        .holesIn,
    );
    expect(holes('women')).not.toBe('left front');
    expect(holes('men', 1)).toBeUndefined();
    expect(designOf({ ...newForm(), version: 1 })).toMatchObject({ tapers: 'blended' });
    expect(designOf({ ...newForm(), version: 1 }).frontBand).not.toHaveProperty('buttonMm');
  });

  it('what she has set herself stands where its path says, beside what she has not', () => {
    const begun = designOf(newForm());
    const made = designOf({ ...newForm(), own: { 'hem.rows': 8, lengthMm: 600 }, overruled: ['ease'] });
    expect(made.hem).toEqual({ ...begun.hem, rows: 8 });
    expect(made.lengthMm).toBe(600);
    expect(made.overruled).toEqual(['ease']);
    expect(designOf({ ...newForm(), own: { lengthMm: null } }).lengthMm).toBeNaN();
  });

  it('recipes plan as well with their names in German, for every kind of garment', () => {
    const words = german as Readonly<Record<string, unknown>>;
    const word = (name: string): string => {
      expect(typeof words[name], name).toBe('string');
      return String(words[name]);
    };
    for (const kind of ['pullover', 'cardigan', 'vest', 'buttoned vest'] as const) {
      for (const armhole of ['drop', 'indented', 'set-in', 'raglan'] as const) {
        for (const neck of ['V', 'round', 'square', 'boat'] as const) {
          // a raglan without sleeves has no shoulder: it is refused
          if (armhole === 'raglan' && kind.endsWith('vest')) continue;
          const made = draft(designOf({ ...newForm(), choices: { kind, armhole, neck, fit: 'standard' } }));
          if (!made.ok) throw new Error(told(made.faults));
          for (const recipe of made.value.recipes) expect(plan(inWords(recipe, word)).ok).toBe(true);
        }
      }
    }
  }, 60_000);
});

describe('the needle of the borders', () => {
  const bordersOf = (version: 1 | 3, needle: number) => {
    const begun = { ...newForm(), version };
    return designOf({ ...begun, swatches: begun.swatches.map((swatch) => ({ ...swatch, needle })) }).needles;
  };

  it('is half a millimetre thinner than that of the panels, and 2 mm where none is sold so thin', () => {
    expect(bordersOf(3, 4)).toEqual({ panels: 4, borders: 3.5 });
    expect(bordersOf(3, 2.25)).toEqual({ panels: 2.25, borders: 2 });
  });

  it('was in the first version half a millimetre thinner, whether it is sold or not', () => {
    expect(bordersOf(1, 4)).toEqual({ panels: 4, borders: 3.5 });
    expect(bordersOf(1, 7)).toEqual({ panels: 7, borders: 6.5 });
    expect(bordersOf(1, 2.25)).toEqual({ panels: 2.25, borders: 2 });
  });

  it('is that of the swatch of the rib, where there is one', () => {
    const begun = newForm();
    const { hem } = designOf(begun);
    const rib = { ...usualSwatch(hem.fabric), needle: 3.25 };
    expect(designOf({ ...begun, swatches: [...begun.swatches, rib] }).needles).toEqual({
      panels: 4,
      borders: 3.25,
    });
  });
});
