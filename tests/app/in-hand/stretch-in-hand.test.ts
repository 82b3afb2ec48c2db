import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { emptyDraft } from '../../../src/app/drafts/pattern/draft.ts';
import { makeGarment } from '../../../src/app/drafts/pattern/make-garment.ts';
import * as reader from '../../../src/app/drafts/pattern/reader.ts';
import { openMake } from '../../../src/app/in-hand/open-make.ts';
import { endHere, lengthen, stretchNow } from '../../../src/app/in-hand/stretch-in-hand.ts';
import { ask } from '../../../src/app/off-thread/ask.ts';
import type { Asking } from '../../../src/app/off-thread/worker.ts';
import { garmentInHand, inHand } from '../../../src/app/state.ts';
import { fault, type Result, refuse } from '../../../src/knit/fault.ts';
import type { MakeKey } from '../../../src/progress/log.ts';
import type { Store } from '../../../src/store/store.ts';
import { codesOf, given } from '../../store/scenario.ts';
import { withWorkers } from '../off-thread/fake-worker.ts';
import { openEmptyApp } from '../open-app.ts';

const scarf = 'SCARF\nCast on 20 sts.\nWork in garter stitch until piece measures 10 cm.\nBind off.';

/** A body given as a length, divided for the neck, and two shoulders that follow it. */
const divided = [
  'BACK',
  'Cast on 20 sts.',
  'Work in garter stitch until piece measures 10 cm.',
  'Next row: K10, turn, leaving remaining sts on a holder.',
  'Work 6 rows in garter stitch.',
  'Bind off.',
  'Rejoin yarn to held sts.',
  'Work 6 rows in garter stitch.',
  'Bind off.',
].join('\n');

/** A garment of that text, and the keys of its makes; so many rows worked of the first. */
async function knitted(text: string, rows: number, wrap?: (store: Store) => Store) {
  const store = await openEmptyApp(wrap);
  garmentInHand.value = undefined;
  reader.pattern.value = { ...emptyDraft, text, gauge: { stitches: 20, rows: 30 } };
  const garment = given(await makeGarment('Scarf', (unread) => unread.join('\n')));
  const makes = given(await store.placesOf(garment));
  const [make] = makes;
  if (make === undefined) throw new Error('it has no make');
  for (let row = 1; row <= rows; row += 1) given(await store.finishRow(make.id, row));
  await openMake(make.id);
  return { store, make, makes, garment };
}

/** Something happens, once, after a worker was asked and before it answers. */
function whileItWorks(meanwhile: () => Promise<void>): void {
  withWorkers({ now: 'answers' });
  // none of an earlier test waits for the next question
  ask('link', '').stop();
  const Fake = globalThis.Worker as unknown as new () => { postMessage(asking: Asking): void };
  let next: (() => Promise<void>) | undefined = meanwhile;
  vi.stubGlobal(
    'Worker',
    class extends Fake {
      override postMessage(asking: Asking): void {
        const first = next?.() ?? Promise.resolve();
        next = undefined;
        void first.then(() => super.postMessage(asking));
      }
    },
  );
}

const taken: Result<true> = { ok: true, value: true };

describe('a stretch given as a length', () => {
  beforeEach(() => {
    garmentInHand.value = undefined;
  });
  afterEach(() => {
    vi.unstubAllGlobals();
    garmentInHand.value = undefined;
    reader.pattern.value = undefined;
  });

  it('gets two rows more while it is knitted', async () => {
    const { store, make } = await knitted(scarf, 3);
    expect(await lengthen()).toEqual(taken);
    expect(given(await store.place(make.id))).toMatchObject({ rows: 3, total: make.total + 2 });
    expect(await lengthen()).toEqual(taken);
    expect(given(await store.place(make.id))).toMatchObject({ rows: 3, total: make.total + 4 });
  });

  it('ends with the row just worked', async () => {
    const { store, make } = await knitted(scarf, 12);
    // more than are worked of it, and the row that binds off
    expect(make.total).toBeGreaterThan(30);
    expect(await endHere()).toEqual(taken);
    expect(given(await store.place(make.id))).toMatchObject({ rows: 12, total: 13 });
  });

  it('counts a row that is stored while its plan is made', async () => {
    const { store, make } = await knitted(scarf, 11);
    whileItWorks(async () => {
      given(await store.finishRow(make.id, 12));
      await openMake(make.id);
    });
    expect(await endHere()).toEqual(taken);
    expect(given(await store.place(make.id))).toMatchObject({ rows: 12, total: 13 });
  });

  it('takes the parts that follow it along, as far as they are not begun', async () => {
    const { store, makes } = await knitted(divided, 3);
    expect(makes.length).toBeGreaterThan(1);
    const plansOf = async () => {
      const places = await Promise.all(makes.map(({ id }) => store.place(id)));
      return places.map((place) => given(place).plan);
    };
    const last = makes.at(-1)?.id as MakeKey;
    given(await store.finishRow(last, 1));
    const before = await plansOf();
    expect(await lengthen()).toEqual(taken);
    const after = await plansOf();
    const isAnother = after.map((plan, i) => plan !== before[i]);
    expect(isAnother).toEqual(makes.map((_, i) => i < makes.length - 1));
  });

  it('has no other length where there is no text of it, no stretch, or nothing in hand', async () => {
    const missing = ['text missing'];
    const { store, make, garment } = await knitted(scarf, 3);
    given(await store.goTo(make.id, make.total, 'place'));
    await openMake(make.id);
    expect(stretchNow.value).toBeUndefined();
    expect(codesOf(await lengthen())).toEqual(missing);
    given(await store.goTo(make.id, 3, 'place'));
    given(
      await store.changeGarment(garment, (was) => {
        const { texts: _texts, ...rest } = was;
        return rest;
      }),
    );
    garmentInHand.value = undefined;
    await openMake(make.id);
    expect(codesOf(await lengthen())).toEqual(missing);
    expect(given(await store.place(make.id))).toMatchObject({ rows: 3, total: make.total });
    inHand.value = undefined;
    expect(codesOf(await lengthen())).toEqual(missing);
  });

  it('is not taken where another make came in hand meanwhile, or the store refuses', async () => {
    const { make, store } = await knitted(scarf, 3);
    whileItWorks(async () => {
      inHand.value = null;
    });
    expect(codesOf(await lengthen())).toEqual(['not stored']);
    vi.unstubAllGlobals();
    expect(given(await store.place(make.id)).total).toBe(make.total);
    await knitted(scarf, 3, (open) => ({ ...open, rework: async () => refuse(fault('storage-full')) }));
    expect(codesOf(await lengthen())).toEqual(['not stored']);
  });
});
