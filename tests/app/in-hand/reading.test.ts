import { effect, type ReadonlySignal } from '@preact/signals';
import { describe, expect, it } from 'vitest';
import { finishRow, lookAtRow, openMake } from '../../../src/app/in-hand/knit.ts';
import { keyInHand } from '../../../src/app/in-hand/make-in-hand.ts';
import {
  atEnd,
  atStart,
  isLooking,
  noSuchMake,
  partInHand,
  reading,
  summaryInHand,
  toWork,
} from '../../../src/app/in-hand/reading.ts';
import { openApp } from '../open-app.ts';

/** How often each is heard of while something is done, beyond the first time. */
async function heard(of: Readonly<Record<string, ReadonlySignal<unknown>>>, doing: () => Promise<unknown>) {
  const times: Record<string, number> = {};
  const stops = Object.entries(of).map(([name, signal]) =>
    effect(() => {
      void signal.value;
      times[name] = (times[name] ?? -1) + 1;
    }),
  );
  await doing();
  for (const stop of stops) stop();
  return times;
}

describe('a row finished', () => {
  it('is heard of once by what it changes, and by nothing else', async () => {
    const { back } = await openApp();
    await openMake(back);
    await finishRow();
    const all = { keyInHand, noSuchMake, partInHand, summaryInHand, atStart, atEnd, isLooking };
    expect(await heard({ ...all, reading, toWork }, finishRow)).toEqual({
      keyInHand: 0,
      noSuchMake: 0,
      partInHand: 0,
      summaryInHand: 0,
      atStart: 0,
      atEnd: 0,
      isLooking: 0,
      reading: 1,
      toWork: 1,
    });
  });
});

describe('the row that is read', () => {
  it('is the one looked at, else the one in hand', async () => {
    const { back } = await openApp();
    await openMake(back);
    expect(reading.value?.row.n).toBe(1);
    lookAtRow(7);
    expect(isLooking.value).toBe(true);
    expect(reading.value?.row).toBe(partInHand.value?.rows[6]);
    lookAtRow(undefined);
    expect(reading.value?.row.n).toBe(1);
    expect(atStart.value).toBe(true);
    expect(atEnd.value).toBe(false);
  });
});
