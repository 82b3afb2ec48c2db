import { expect, it, vi } from 'vitest';
import { finishRow, openMake } from '../../../src/app/in-hand/knit.ts';
import { inHand } from '../../../src/app/state.ts';
import type { MakeKey } from '../../../src/progress/log.ts';
import type { Store } from '../../../src/store/store.ts';
import { given } from '../../store/scenario.ts';
import { openApp } from '../open-app.ts';

/** What is shown is what is stored, in whatever order the answers of several reads come. */

/** The app over a store whose answers to 'what is in hand' wait until they are let go, one by one. */
async function withSlowReads() {
  const answers: (() => void)[] = [];
  let isSlow = false;
  const { store, back } = await openApp((open): Store => {
    const inHand: Store['inHand'] = async (key) => {
      const read = await open.inHand(key);
      if (isSlow) await new Promise<void>((resolve) => answers.push(resolve));
      return read;
    };
    return { ...open, inHand };
  });
  await openMake(back);
  isSlow = true;
  /** Asked, and read, but not told yet. */
  const begin = async (key: MakeKey) => {
    const many = answers.length;
    void openMake(key);
    await vi.waitFor(() => expect(answers.length).toBeGreaterThan(many));
  };
  const letAllGo = async () => {
    isSlow = false;
    for (const answer of answers) answer();
    await new Promise((resolve) => setTimeout(resolve, 30));
  };
  return { store, back, answers, begin, letAllGo };
}

it.each([
  [0, 1],
  [1, 0],
])('two reads of one make, answered in the order %i, %i: the one asked last is shown', async (...order) => {
  const { store, back, answers, begin } = await withSlowReads();
  await begin(back);
  given(await store.goTo(back, 7, 'place'));
  await begin(back);
  for (const at of order) {
    answers[at]?.();
    await new Promise((resolve) => setTimeout(resolve, 10));
  }
  expect(inHand.value?.place.rows).toBe(7);
});

it.each([
  [0, 1],
  [1, 0],
])('reads of two makes, answered in the order %i, %i: the one asked last is shown', async (...order) => {
  const { store, back, answers, begin } = await withSlowReads();
  const others = given(await store.placesOf('sample'));
  const other = others.find(({ id }) => id !== back)?.id ?? 'no/place/0/1';
  await begin(back);
  await begin(other);
  for (const at of order) {
    answers[at]?.();
    await new Promise((resolve) => setTimeout(resolve, 10));
    expect(inHand.value?.make ?? other).toBe(other);
  }
  expect(inHand.value?.make).toBe(other);
});

it('a read that began before an older state came back, and is answered after a row of that was stored', async () => {
  const { store, back, begin, letAllGo } = await withSlowReads();
  for (let row = 0; row < 4; row += 1) await finishRow();
  const before = inHand.value?.place;
  await begin(back);
  // the older state: fewer entries than are shown
  const place = given(await store.place(back));
  given(
    await store.box.door.write(['places', 'log'], async (tx) => {
      for (const { id, seq } of await tx.objectStore('log').getAll())
        if (seq > 1) await tx.objectStore('log').delete(id);
      await tx.objectStore('places').put({ ...place, rows: 1, seq: 1 });
    }),
  );
  await begin(back);
  await letAllGo();
  expect(before?.rows).toBe(4);
  await vi.waitFor(() => expect(inHand.value?.place.rows).toBe(1));
  await finishRow();
  await vi.waitFor(async () => expect(inHand.value?.place.rows).toBe(given(await store.place(back)).rows));
  expect(inHand.value?.place.rows).toBe(2);
});

it('a row stored while the make is read is shown, whichever has the higher number', async () => {
  const { store, back, begin, letAllGo } = await withSlowReads();
  await begin(back);
  await finishRow();
  await letAllGo();
  expect(inHand.value?.place).toEqual(given(await store.place(back)));
  expect(inHand.value?.place.rows).toBe(1);
});

it('the first of two answers about one make is shown before the second comes', async () => {
  const { store, back, answers, begin, letAllGo } = await withSlowReads();
  given(await store.goTo(back, 7, 'place'));
  await begin(back);
  await begin(back);
  answers[0]?.();
  await vi.waitFor(() => expect(inHand.value?.place.rows).toBe(7));
  await letAllGo();
  expect(inHand.value?.place.rows).toBe(7);
});
