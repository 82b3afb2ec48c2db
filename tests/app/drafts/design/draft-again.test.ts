import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { draftAgain, isAsDrafted, setByHand } from '../../../../src/app/drafts/design/draft-again.ts';
import { type DesignForm, designOf, newForm } from '../../../../src/app/drafts/design/form.ts';
import { inWords } from '../../../../src/app/drafts/design/make-garment.ts';
import { adjustablePaths, adjusted } from '../../../../src/knit/garment/adjust.ts';
import { bodyTableNames, bodyTables } from '../../../../src/knit/garment/bodies.ts';
import { draft } from '../../../../src/knit/garment/draft.ts';
import { fits } from '../../../../src/knit/garment/ease.ts';
import { resized } from '../../../../src/knit/garment/grade.ts';
import { armholeKinds } from '../../../../src/knit/garment/kinds/armholes.ts';
import { type GarmentKind, garmentKinds } from '../../../../src/knit/garment/kinds/garments.ts';
import { neckShapes } from '../../../../src/knit/garment/kinds/necks.ts';
import { told } from '../../../told.ts';

const someForm = () =>
  fc
    .record({
      choices: fc.record({
        kind: fc.constantFrom(...(Object.keys(garmentKinds) as GarmentKind[])),
        armhole: fc.constantFrom(...armholeKinds),
        neck: fc.constantFrom(...neckShapes),
        fit: fc.constantFrom(...fits),
      }),
      version: fc.constantFrom(1 as const, 3 as const, 5 as const),
      own: fc.record(
        {
          lengthMm: fc.integer({ min: 450, max: 700 }),
          'neck.depthMm': fc.integer({ min: 60, max: 120 }),
          'hem.fabric': fc.constantFrom('garter', 'rib 1x1'),
          seamStitch: fc.constantFrom('seam stitch', 'no seam stitch'),
        },
        { requiredKeys: [] },
      ),
    })
    .map((one): DesignForm => ({ ...newForm(), ...one }) as DesignForm);

const fitting = () =>
  fc
    .record({
      table: fc.constantFrom(...bodyTableNames),
      nth: fc.nat(4),
      stitches: fc.integer({ min: 14, max: 30 }),
      rows: fc.integer({ min: 20, max: 42 }),
    })
    .map(({ table, nth, stitches, rows }) => {
      const { size, body } = bodyTables[table][nth] ??
        bodyTables.women[2] ?? { size: '', body: newForm().body };
      return { person: { table, size }, body, swatch: { stitches, rows, overMm: 100 } };
    });

describe('another’s design', () => {
  it('keeps what was set for her size or for all; without a size, what was set for a design without sizes', () => {
    const { body } = newForm();
    const all = [
      { path: 'lengthMm', mm: 600 },
      { path: 'lengthMm', mm: 610, size: 'M' },
      { path: 'lengthMm', mm: 620, size: '' },
    ] as const;
    const kept = (size: string | undefined) => {
      const made = draftAgain(newForm(), all, {
        person: { table: 'women', ...(size !== undefined && { size }) } as DesignForm['person'],
        body,
      });
      return made.ok ? made.value.kept.map(({ mm }) => mm) : made.faults;
    };
    expect(kept('M')).toEqual([600, 610]);
    expect(kept('L')).toEqual([600]);
    expect(kept(undefined)).toEqual([600, 620]);
  });

  it('in a size and a swatch of hers is the same design by the rules, and its form drafts it again to the last stitch', () => {
    let drafted = 0;
    fc.assert(
      fc.property(someForm(), fitting(), (form, hers) => {
        const again = draftAgain(form, [], hers);
        if (!again.ok) return;
        drafted += 1;
        const swatched = {
          ...form,
          swatches: [{ ...form.swatches[0], ...hers.swatch, widthMm: 100, heightMm: 100 }],
        };
        const wished = draft(resized(designOf(swatched as DesignForm), hers.body));
        if (!wished.ok) throw new Error(told(wished.faults));
        expect(isAsDrafted(again.value.draft.recipes, wished.value)).toBe(true);
        const own = draft(designOf(again.value.form));
        if (!own.ok) throw new Error(told(own.faults));
        expect(own.value.recipes).toEqual(again.value.draft.recipes);
      }),
      { numRuns: 60, endOnFailure: true },
    );
    expect(drafted).toBeGreaterThan(20);
  });

  it('of its own size and swatch is what it was', () => {
    const form = newForm();
    const again = draftAgain(form, [], {
      person: form.person,
      body: form.body,
      swatch: { stitches: 21, rows: 28, overMm: 100 },
    });
    const was = draft(designOf(form));
    if (!again.ok || !was.ok) throw new Error('not drafted');
    expect(isAsDrafted(was.value.recipes, again.value.draft)).toBe(true);
    // in another language too, and not where a row was added by hand
    const words = was.value.recipes.map((recipe) => inWords(recipe, (name) => `${name}!`));
    expect(isAsDrafted(words, again.value.draft)).toBe(true);
    const [back, ...others] = words;
    const [body, ...parts] = back?.parts ?? [];
    const [hem, ...sections] = body?.sections ?? [];
    if (!back || !body || !hem) throw new Error('no back');
    const longer = {
      ...back,
      parts: [{ ...body, sections: [{ ...hem, rows: hem.rows + 2 }, ...sections] }, ...parts],
    };
    expect(isAsDrafted([longer, ...others], again.value.draft)).toBe(false);
  });

  it('keeps what its maker set for that size or for all, and gives back what cannot be knitted in it', () => {
    const form = newForm();
    const [size, body] = ['L', bodyTables.women[3]?.body ?? form.body];
    const set = [
      { path: 'lengthMm', mm: 650 },
      { path: 'neck.widthMm', mm: 5000, size: 'L' },
      { path: 'hem.heightMm', mm: 70, size: 'S' },
    ] as const;
    const again = draftAgain(form, set, {
      person: { table: 'women', size },
      body,
      swatch: { stitches: 20, rows: 28, overMm: 100 },
    });
    if (!again.ok) throw new Error(told(again.faults));
    expect(again.value.kept).toEqual([set[0]]);
    expect(again.value.dropped).toEqual([set[1]]);
    expect(designOf(again.value.form).lengthMm).toBe(650);
  });

  it.each(adjustablePaths)('has %s as it was set', (path) => {
    const form = newForm();
    const design = designOf(form);
    const again = draftAgain(form, [{ path, mm: 40 }], {
      person: form.person,
      body: form.body,
      swatch: { stitches: 21, rows: 28, overMm: 100 },
    });
    if (!again.ok) throw new Error(told(again.faults));
    if (again.value.dropped.length > 0) return;
    const wished = draft(adjusted(design, [{ path, mm: 40 }], ''));
    if (!wished.ok) throw new Error(told(wished.faults));
    expect(isAsDrafted(wished.value.recipes, again.value.draft)).toBe(true);
  });
});

describe('what her maker set in the form itself', () => {
  const set = (own: DesignForm['own']) => {
    const form: DesignForm = { ...newForm(), own };
    return setByHand(form, designOf(form));
  };

  it('is each figure with what came of it, mm; a choice that is none of a figure is not among them', () => {
    expect(set({ lengthMm: 612, 'neck.depthMm': 85, 'hem.fabric': 'garter' })).toEqual([
      { path: 'lengthMm', mm: 612 },
      { path: 'neck.depthMm', mm: 85 },
    ]);
    expect(set({})).toEqual([]);
  });
});
