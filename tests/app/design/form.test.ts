import { describe, expect, it } from 'vitest';
import { type DesignForm, designOf, newForm, readSwatch, usualSwatch } from '../../../src/app/design/form.ts';
import { inWords } from '../../../src/app/design/make-garment.ts';
import { whole } from '../../../src/app/kept/kept-shapes.ts';
import { bodyOfSize } from '../../../src/knit/garment/bodies.ts';
import { draft } from '../../../src/knit/garment/draft.ts';
import { plan } from '../../../src/knit/piece/plan.ts';
import { words as german } from '../../../src/words/de/draft.ts';
import { told } from '../../told.ts';

const child = bodyOfSize('children', '8');
if (!child) throw new Error('children have a size 8');

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
