import { beforeEach, describe, expect, it } from 'vitest';
import {
  designFrom,
  form,
  openDesign,
  setMeasure,
  setOwn,
} from '../../../../src/app/drafts/design/designer.ts';
import { type DesignForm, newForm } from '../../../../src/app/drafts/design/form.ts';
import { makeGarment } from '../../../../src/app/drafts/design/make-garment.ts';
import { fault, refuse } from '../../../../src/knit/fault.ts';
import { codesOf } from '../../../store/scenario.ts';
import { told } from '../../../told.ts';
import { type OpenApp, openApp, openEmptyApp } from '../../open-app.ts';

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

  it('is not taken up where it cannot be kept, or what was left cannot be read', async () => {
    let refused = '';
    const full = refuse(fault('storage-full'));
    await openEmptyApp((store) => ({
      ...store,
      setSetting: async (name, value) => (refused === 'to write' ? full : store.setSetting(name, value)),
      settings: async () => (refused === 'to read' ? full : store.settings()),
    }));
    form.value = undefined;
    refused = 'to read';
    expect(await designFrom(chosen, false)).toBe('not kept');
    expect(form.value).toBeUndefined();
    refused = 'to write';
    expect(await designFrom(chosen, false)).toBe('not kept');
    refused = '';
    expect(await designFrom(chosen, false)).toBe('taken');
  });

  it('nothing is made where none is designed, and why is said where it cannot be drafted', async () => {
    expect(codesOf(await makeGarment('Unnamed', (name) => name))).toEqual(['nothing to save']);
    expect(await designFrom(chosen, true)).toBe('taken');
    setMeasure('chest', 0);
    const refused = codesOf(await makeGarment('Unnamed', (name) => name));
    expect(refused).not.toEqual([]);
    expect(refused).not.toEqual(['nothing to save']);
    expect(form.value?.name).toBe('Heather');
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
