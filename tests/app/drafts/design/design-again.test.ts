import { beforeEach, describe, expect, it } from 'vitest';
import { designFrom, form, openDesign, setOwn } from '../../../../src/app/drafts/design/designer.ts';
import { type DesignForm, newForm } from '../../../../src/app/drafts/design/form.ts';
import { makeGarment } from '../../../../src/app/drafts/design/make-garment.ts';
import { told } from '../../../told.ts';
import { type OpenApp, openApp } from '../../open-app.ts';

let app: OpenApp;
beforeEach(async () => {
  app = await openApp();
  form.value = undefined;
});

const chosen: DesignForm = { ...newForm(), name: 'Heather', own: { lengthMm: 610 } };

const kept = async () => {
  const settings = await app.store.settings();
  return settings.ok ? settings.value['design new'] : undefined;
};

describe('to design another garment from the figures of one', () => {
  it('a made garment gives back what it was drafted from, and a different length can be drafted', async () => {
    expect(await designFrom(chosen, false)).toBe('taken');
    const first = await makeGarment('Unnamed', (name) => name);
    if (!first.ok) throw new Error(told(first.faults));
    expect(await kept()).toBeNull();
    const read = await app.store.garment(first.value);
    expect(read.ok && read.value.design).toEqual(chosen);

    expect(await designFrom(chosen, false)).toBe('taken');
    setOwn('lengthMm', 660);
    const second = await makeGarment('Unnamed', (name) => name);
    if (!second.ok) throw new Error(told(second.faults));
    const rows = async (id: string) => {
      const one = await app.store.garment(id);
      const part = one.ok ? one.value.pieces[0]?.recipe.parts[0] : undefined;
      return part?.sections.reduce((sum, section) => sum + section.rows, 0) ?? 0;
    };
    // 50 mm at the usual swatch of 28 rows in 10 cm
    expect((await rows(second.value)) - (await rows(first.value))).toBeCloseTo(14, -1);
  });

  it('another design that is begun stays until she lets it go', async () => {
    await openDesign();
    setOwn('lengthMm', 500);
    const begun = form.value;
    expect(await designFrom(chosen, false)).toBe('another is begun');
    expect(form.value).toBe(begun);
    expect(await designFrom(chosen, true)).toBe('taken');
    expect(await kept()).toEqual(chosen);
  });
});
