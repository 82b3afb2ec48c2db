import { beforeEach, describe, expect, it } from 'vitest';
import {
  drafted,
  forgetDesign,
  forgetPerson,
  form,
  keepPerson,
  openDesign,
  overrule,
  people,
  setMeasure,
  setOwn,
  startAgain,
} from '../../../../src/app/drafts/design/designer.ts';
import { newForm } from '../../../../src/app/drafts/design/form.ts';
import { readFault } from '../../../../src/app/state.ts';
import { store } from '../../../../src/app/store.ts';
import { fault } from '../../../../src/knit/fault.ts';
import { bodyOfSize } from '../../../../src/knit/garment/bodies.ts';
import type { Store } from '../../../../src/store/store.ts';
import { given } from '../../../store/scenario.ts';
import { openApp } from '../../open-app.ts';

/** The design in the making and the people whose measures are kept, over a box of its own. */

/** Where the box takes no setting. */
let isFull = false;
const wrap = (open: Store): Store => ({
  ...open,
  setSetting: async (name, value) =>
    isFull ? { ok: false, faults: [fault('storage-full')] } : open.setSetting(name, value),
});

beforeEach(async () => {
  isFull = false;
  form.value = undefined;
  people.value = [];
  await openApp(wrap);
  // what another test typed last is written a moment later: after this nothing of it comes
  await forgetDesign();
  await openDesign();
});

const stored = async (name: string) => given(await (await store()).settings())[name];
/** What was typed is kept a moment later. */
const kept = async (name: string, is: (value: unknown) => boolean) => {
  await expect.poll(async () => is(await stored(name)), { timeout: 30_000 }).toBe(true);
};

describe('a design in the making', () => {
  it('is drafted in steps as it is opened, there being no draft until the last of them', async () => {
    form.value = undefined;
    const seen: unknown[] = [];
    const stop = form.subscribe((now) => now && seen.push(drafted.peek()));
    await openDesign();
    stop();
    expect(seen).toEqual([undefined]);
    expect(drafted.value?.ok).toBe(true);
    const inSteps = drafted.value;
    // the same figures once more, as if they were typed
    form.value = structuredClone(form.value);
    expect(drafted.value).toEqual(inSteps);
  });

  it('that is typed in meanwhile is drafted at once, and its steps are left', async () => {
    form.value = undefined;
    const seen: unknown[] = [];
    const stop = form.subscribe((now) => {
      if (now === undefined || seen.length > 0) return;
      seen.push(drafted.peek());
      queueMicrotask(() => {
        setOwn('lengthMm', 610);
        seen.push(drafted.value?.ok && drafted.value.value.targets.length);
      });
    });
    await openDesign();
    stop();
    expect(seen).toEqual([undefined, 610]);
    expect(drafted.value?.ok && drafted.value.value.targets.length).toBe(610);
  });

  it('begins with the usual one, and is there again as it was left', async () => {
    expect(form.value).toEqual(newForm());
    setOwn('lengthMm', 610);
    await kept('design new', (value) => (value as { own?: object })?.own !== undefined);
    const left = form.value;
    form.value = undefined;
    await openDesign();
    expect(form.value).toEqual(left);
    expect(drafted.value?.ok).toBe(true);
  });

  it('begins again with nothing of what was typed', () => {
    setOwn('lengthMm', 610);
    overrule('ease', true);
    startAgain();
    expect(form.value).toEqual(newForm());
  });

  it('is gone once its garment is made', async () => {
    setOwn('lengthMm', 610);
    await kept('design new', (value) => value !== null && value !== undefined);
    await forgetDesign();
    expect(form.value).toBeUndefined();
    expect(await stored('design new')).toBeNull();
    await openDesign();
    expect(form.value).toEqual(newForm());
  });

  it('asks no more of what she means, each once, until she takes that back', () => {
    overrule('ease', true);
    overrule('depth', true);
    overrule('ease', true);
    expect(form.value?.overruled).toEqual(['ease', 'depth']);
    overrule('ease', false);
    expect(form.value?.overruled).toEqual(['depth']);
  });

  it('is of nobody’s body once a measure was typed; an emptied one is no number', () => {
    expect(form.value?.person).toEqual({ table: 'women', size: 'M' });
    setMeasure('chest', 1000);
    expect(form.value?.person).toEqual({});
    expect(form.value?.body).toEqual({ ...newForm().body, chest: 1000 });
    setMeasure('chest', null);
    expect(form.value?.body.chest).toBeNaN();
  });
});

describe('people whose measures are kept', () => {
  it('are those that were, each once by her name, and the design is of the one just kept', async () => {
    expect(await keepPerson('Ada')).toBe(true);
    setMeasure('chest', 1000);
    expect(await keepPerson('Bea')).toBe(true);
    expect(form.value?.person).toEqual({ name: 'Bea' });
    setMeasure('chest', 1100);
    expect(await keepPerson('Ada')).toBe(true);
    const list = [
      { name: 'Bea', body: { ...newForm().body, chest: 1000 } },
      { name: 'Ada', body: { ...newForm().body, chest: 1100 } },
    ];
    expect(people.value).toEqual(list);
    expect(await stored('people')).toEqual(list);
    people.value = [];
    await openDesign();
    expect(people.value).toEqual(list);
  });

  it('can be taken off the list, and the design is of nobody then', async () => {
    await keepPerson('Ada');
    await keepPerson('Bea');
    expect(await forgetPerson('Ada')).toBe(true);
    expect(people.value.map(({ name }) => name)).toEqual(['Bea']);
    expect(form.value?.person).toEqual({});
  });

  it('stay as they were where the box is full, which is said', async () => {
    await keepPerson('Ada');
    isFull = true;
    expect(await keepPerson('Bea')).toBe(false);
    expect(people.value.map(({ name }) => name)).toEqual(['Ada']);
    expect(form.value?.person).toEqual({ name: 'Ada' });
    expect(readFault.value?.code).toBe('storage-full');
    expect(await forgetPerson('Ada')).toBe(false);
    expect(people.value.map(({ name }) => name)).toEqual(['Ada']);
  });

  it('are none of a design that is not read yet', async () => {
    form.value = undefined;
    expect(await keepPerson('Ada')).toBe(false);
    expect(await stored('people')).toBeUndefined();
  });
});

it('a body of a table is kept as it is: what she is called is hers', async () => {
  const child = bodyOfSize('children', '8');
  if (child === undefined || form.value === undefined) throw new Error('no size 8');
  form.value = { ...form.value, body: child };
  await keepPerson('Kit');
  expect(people.value).toEqual([{ name: 'Kit', body: child }]);
});
