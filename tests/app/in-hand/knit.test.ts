import { effect } from '@preact/signals';
import { afterEach, describe, expect, it, vi } from 'vitest';
import { finishRow, goToRow, lookAtRow, openMake, undoRow } from '../../../src/app/in-hand/knit.ts';
import { toWork } from '../../../src/app/in-hand/reading.ts';
import { tryAgain } from '../../../src/app/in-hand/taps.ts';
import {
  inHand,
  locked,
  looking,
  rowNow,
  saving,
  storedRows,
  tapFault,
  waiting,
} from '../../../src/app/state.ts';
import { fault, refuse } from '../../../src/knit/fault.ts';
import type { Store } from '../../../src/store/store.ts';
import { openApp } from '../open-app.ts';

afterEach(() => {
  locked.value = false;
  vi.useRealTimers();
});

/** A store whose row writes wait until they are let through, one by one. */
function held() {
  const gates: (() => void)[] = [];
  const wrap = (store: Store): Store => ({
    ...store,
    finishRow: async (key, row) => {
      await new Promise<void>((resolve) => gates.push(resolve));
      return store.finishRow(key, row);
    },
  });
  const letThrough = async (rows: number) => {
    for (let i = 0; i < rows; i += 1) {
      await vi.waitFor(() => expect(gates.length).toBeGreaterThan(0));
      gates.shift()?.();
    }
  };
  return { wrap, letThrough };
}

/** A store with no room for a row, until some is made. */
function full() {
  let isFull = true;
  const noRoom = fault('storage-full');
  const wrap = (store: Store): Store => ({
    ...store,
    finishRow: async (key, row) => (isFull ? refuse(noRoom) : store.finishRow(key, row)),
  });
  const makeRoom = () => {
    isFull = false;
  };
  return { wrap, makeRoom };
}

const rowsShown = () => inHand.value?.place.rows;
/** the row whose words are read */
const rowToWork = () => toWork.value?.row.n;

describe('a tap', () => {
  it('is announced once it is stored, whichever way it moves; one that is refused is not', async () => {
    const { back } = await openApp();
    await openMake(back);
    const announced = async (tap: () => Promise<void>) => {
      const before = storedRows.value;
      await tap();
      return storedRows.value - before;
    };
    expect(await announced(finishRow)).toBe(1);
    expect(await announced(undoRow)).toBe(1);
    expect(await announced(() => goToRow(5))).toBe(1);
    expect(await announced(() => goToRow(100_000))).toBe(0);
  });

  it('changes the words in its own task, and is written in the next: a frame that is due comes between', async () => {
    let writes = 0;
    const { back } = await openApp((store) => ({
      ...store,
      finishRow: (key, row) => {
        writes += 1;
        return store.finishRow(key, row);
      },
    }));
    await openMake(back);
    const done = finishRow();
    // what a task has still to do is promises; there are fewer than so many
    for (let n = 0; n < 50; n += 1) await Promise.resolve();
    expect([rowToWork(), writes]).toEqual([2, 0]);
    await done;
    expect([rowsShown(), writes]).toEqual([1, 1]);
  });

  it('is shown only after the store has answered', async () => {
    const { wrap, letThrough } = held();
    const { back, store } = await openApp(wrap);
    await openMake(back);
    const done = finishRow();
    await vi.waitFor(() => expect(saving.value).toBe('saving'));
    expect(rowsShown()).toBe(0);
    await letThrough(1);
    await done;
    expect(rowsShown()).toBe(1);
    const place = await store.place(back);
    expect(place.ok && place.value.rows).toBe(1);
  });

  it('waits in line behind those before it, and none is lost', async () => {
    const { wrap, letThrough } = held();
    const { back, store } = await openApp(wrap);
    await openMake(back);
    const taps = Promise.all([finishRow(), finishRow(), finishRow(), finishRow(), finishRow()]);
    expect(waiting.value).toBe(5);
    expect(rowsShown()).toBe(0);
    await letThrough(2);
    await vi.waitFor(() => expect(rowsShown()).toBe(2));
    expect(waiting.value).toBe(3);
    await letThrough(3);
    await taps;
    expect([rowsShown(), waiting.value, saving.value]).toEqual([5, 0, 'saved']);
    const entries = await store.entriesOf(back);
    expect(entries.ok && entries.value.map((entry) => entry.row)).toEqual([1, 2, 3, 4, 5]);
  });

  it('that takes so long that she feels it is shown as taken, after a second it is said to be not saved yet', async () => {
    const { wrap, letThrough } = held();
    const { back } = await openApp(wrap);
    await openMake(back);
    vi.useFakeTimers({ toFake: ['setTimeout', 'clearTimeout'] });
    const done = finishRow();
    await vi.advanceTimersByTimeAsync(59);
    expect(saving.value).toBe('saving');
    await vi.advanceTimersByTimeAsync(1);
    expect(saving.value).toBe('felt');
    await vi.advanceTimersByTimeAsync(939);
    expect(saving.value).toBe('felt');
    await vi.advanceTimersByTimeAsync(1);
    expect(saving.value).toBe('slow');
    vi.useRealTimers();
    await letThrough(1);
    await done;
    expect(saving.value).toBe('saved');
  });

  it('that the store refuses stays in line with those behind it, until it is tried again', async () => {
    const { wrap, makeRoom } = full();
    const { back } = await openApp(wrap);
    await openMake(back);
    await finishRow();
    await finishRow();
    expect([rowsShown(), waiting.value, saving.value, tapFault.value?.code]).toEqual([
      0,
      2,
      'failed',
      'storage-full',
    ]);
    makeRoom();
    await tryAgain();
    expect([rowsShown(), waiting.value, saving.value, tapFault.value]).toEqual([2, 0, 'saved', undefined]);
  });

  it('too many at the end of the part does nothing and holds nothing up', async () => {
    const { back } = await openApp();
    await openMake(back);
    await goToRow(192);
    await Promise.all([finishRow(), finishRow(), finishRow()]);
    expect([rowsShown(), waiting.value, saving.value, rowNow.value]).toEqual([192, 0, 'saved', undefined]);
    await undoRow();
    expect(rowNow.value?.n).toBe(192);
  });

  it('does nothing while the screen is locked or another row is read', async () => {
    const { back } = await openApp();
    await openMake(back);
    locked.value = true;
    await finishRow();
    await undoRow();
    locked.value = false;
    lookAtRow(40);
    await finishRow();
    expect(rowsShown()).toBe(0);
  });
});

describe('the words of the next row', () => {
  it('come with the tap, while the row before is not yet shown as done', async () => {
    const { wrap, letThrough } = held();
    const { back } = await openApp(wrap);
    await openMake(back);
    const taps = Promise.all([finishRow(), finishRow()]);
    expect([rowToWork(), rowNow.value?.n]).toEqual([3, 1]);
    await letThrough(1);
    await vi.waitFor(() => expect(rowNow.value?.n).toBe(2));
    expect(rowToWork()).toBe(3);
    await letThrough(1);
    await taps;
    expect([rowToWork(), rowNow.value?.n]).toEqual([3, 3]);
  });

  it('are heard of once for each row, not again when it is stored', async () => {
    const { back } = await openApp();
    await openMake(back);
    const heard: (number | undefined)[] = [];
    const stop = effect(() => void heard.push(toWork.value?.row.n));
    await finishRow();
    await finishRow();
    stop();
    expect(heard).toEqual([1, 2, 3]);
  });

  it('go back to the row on disk when the store refuses, and come again with what is tried again', async () => {
    const { wrap, makeRoom } = full();
    const { back } = await openApp(wrap);
    await openMake(back);
    const refused = finishRow();
    expect(rowToWork()).toBe(2);
    await refused;
    expect([rowToWork(), saving.value]).toEqual([1, 'failed']);
    makeRoom();
    await tryAgain();
    expect([rowToWork(), rowNow.value?.n]).toEqual([2, 2]);
  });

  it('never say that the part is at its end before its last row is stored', async () => {
    const { wrap, letThrough } = held();
    const { back } = await openApp(wrap);
    await openMake(back);
    await goToRow(191);
    const taps = Promise.all([finishRow(), finishRow(), finishRow()]);
    expect(rowToWork()).toBe(192);
    await letThrough(2);
    await vi.waitFor(() => expect(rowNow.value).toBeUndefined());
    expect(rowToWork()).toBeUndefined();
    await letThrough(1);
    await taps;
    expect(rowToWork()).toBeUndefined();
  });

  it('wait for an undo that was tapped first, and for another make they do not come', async () => {
    const { wrap, letThrough } = held();
    const { back } = await openApp(wrap);
    await openMake(back);
    const first = finishRow();
    await letThrough(1);
    await first;
    const taps = Promise.all([undoRow(), finishRow()]);
    expect(rowToWork()).toBe(2);
    await letThrough(1);
    await taps;
    expect([rowToWork(), rowNow.value?.n]).toEqual([2, 2]);
    const slow = finishRow();
    await openMake('sample/front/0/1');
    expect(rowToWork()).toBe(1);
    await letThrough(1);
    await slow;
    expect(rowToWork()).toBe(1);
  });

  it('are those of the row looked at, whatever is tapped', async () => {
    const { wrap, letThrough } = held();
    const { back } = await openApp(wrap);
    await openMake(back);
    const slow = finishRow();
    lookAtRow(117);
    expect(rowToWork()).toBe(117);
    lookAtRow(undefined);
    expect(rowToWork()).toBe(2);
    await letThrough(1);
    await slow;
  });
});

describe('going back', () => {
  it('takes one row back by undo, and the going back itself too', async () => {
    const { back } = await openApp();
    await openMake(back);
    for (let i = 0; i < 6; i += 1) await finishRow();
    await goToRow(3);
    expect(rowNow.value?.n).toBe(3);
    await undoRow();
    expect(rowNow.value?.n).toBe(7);
    await undoRow();
    expect(rowNow.value?.n).toBe(6);
  });
});

describe('a row that is only read', () => {
  it('leaves the place where it is', async () => {
    const { back, store } = await openApp();
    await openMake(back);
    lookAtRow(117);
    expect([looking.value, rowNow.value?.n]).toEqual([117, 1]);
    const place = await store.place(back);
    expect(place.ok && place.value.seq).toBe(0);
  });

  it('is the row in hand itself, or a row that the part has not: then nothing is read aside', async () => {
    const { back } = await openApp();
    await openMake(back);
    for (const row of [1, 0, -3, 193, Number.NaN]) {
      lookAtRow(row);
      expect(looking.value).toBeUndefined();
    }
  });
});

describe('opening', () => {
  it('tells a make that is not there from a store that cannot be read', async () => {
    await openApp();
    expect(await openMake('sample/hood/0/1')).toBeUndefined();
    expect(inHand.value).toBeNull();
  });

  it('without a key opens the make last knitted', async () => {
    const { back } = await openApp();
    await openMake('sample/sleeve/0/2');
    await finishRow();
    await openMake(back);
    await finishRow();
    await openMake('sample/sleeve/0/1');
    expect(await openMake()).toBe(back);
  });

  it('a second time, as it was known at the first, draws nothing anew', async () => {
    let known: ReturnType<Store['inHand']> | undefined;
    const { back } = await openApp((store) => ({
      ...store,
      inHand: (key) => (known ??= store.inHand(key)),
    }));
    const shown: unknown[] = [];
    const stop = effect(() => void shown.push(inHand.value));
    await openMake(back);
    expect(await openMake(back)).toBe(back);
    stop();
    expect(shown).toHaveLength(2);
    expect(shown[1]).toMatchObject({ make: back });
  });

  it('never shows an older place than one that was stored meanwhile', async () => {
    let answer: (() => void) | undefined;
    const { back } = await openApp((store) => ({
      ...store,
      inHand: async (key) => {
        const read = await store.inHand(key);
        if (answer !== undefined) await new Promise<void>((resolve) => (answer = resolve));
        return read;
      },
    }));
    await openMake(back);
    answer = () => undefined;
    const late = openMake(back);
    await new Promise((resolve) => setTimeout(resolve, 20));
    await finishRow();
    // it reads once more, since only that can tell which of the two is newer
    const go = answer;
    answer = undefined;
    go();
    await late;
    expect(rowsShown()).toBe(1);
  });
});
