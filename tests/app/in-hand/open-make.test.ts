import { afterEach, describe, expect, it, vi } from 'vitest';
import { openMake, rereadMake } from '../../../src/app/in-hand/open-make.ts';
import { inHand, looking, readFault } from '../../../src/app/state.ts';
import { fault, refuse } from '../../../src/knit/fault.ts';
import { makeKey } from '../../../src/progress/log.ts';
import type { Store } from '../../../src/store/store.ts';
import { given } from '../../store/scenario.ts';
import { openApp } from '../open-app.ts';

const FRONT = makeKey({ garment: 'sample', piece: 'front', part: 0, make: 1 });

afterEach(() => {
  inHand.value = undefined;
  looking.value = undefined;
  readFault.value = undefined;
});

describe('a make that is opened', () => {
  it('is in hand, with the part and the garment; nothing is looked at any more where another was before', async () => {
    const { back } = await openApp();
    expect(await openMake(back)).toBe(back);
    expect(inHand.value).toMatchObject({ make: back, place: { rows: 0 }, garment: { id: 'sample' } });
    looking.value = 5;
    expect(await openMake(back)).toBe(back);
    expect(looking.value).toBe(5);
    expect(await openMake(FRONT)).toBe(FRONT);
    expect([inHand.value?.make, looking.value]).toEqual([FRONT, undefined]);
  });

  it('is, where none is named, the one last knitted; none while nothing was', async () => {
    const { store, back } = await openApp();
    expect(await openMake()).toBeUndefined();
    expect(inHand.value).toBeNull();
    given(await store.finishRow(back, 1));
    expect(await openMake()).toBe(back);
    expect(inHand.value?.place.rows).toBe(1);
  });

  it('is the same object where the same is read again, and another once something has changed', async () => {
    let same: ReturnType<Store['inHand']> | undefined;
    const { store, back } = await openApp((open) => ({
      ...open,
      inHand: (key) => (same ??= open.inHand(key)),
    }));
    await openMake(back);
    const shown = inHand.value;
    await openMake(back);
    expect(inHand.value).toBe(shown);
    given(await store.finishRow(back, 1));
    same = undefined;
    await openMake(back);
    expect(inHand.value?.place.rows).toBe(1);
  });
});

describe('a make that cannot be opened', () => {
  const refusing = (code: 'no-such-make' | 'no-such-garment' | 'no-such-plan' | 'store-not-answering') => {
    let refuses = true;
    const wrap = (store: Store): Store => ({
      ...store,
      inHand: async (key) => (refuses ? refuse(fault(code)) : store.inHand(key)),
    });
    return { wrap, mend: () => (refuses = false) };
  };

  it.each(['no-such-make', 'no-such-garment', 'no-such-plan'] as const)(
    'since there is none (%s) is said to be none, and no fault is; it may come back',
    async (code) => {
      const { wrap, mend } = refusing(code);
      const { back } = await openApp(wrap);
      expect(await openMake(back)).toBeUndefined();
      expect([inHand.value, readFault.value]).toEqual([null, undefined]);
      mend();
      rereadMake();
      await vi.waitFor(() => expect(inHand.value?.make).toBe(back));
    },
  );

  it('since the store fails is said so, and not to be none', async () => {
    const { wrap } = refusing('store-not-answering');
    const { back } = await openApp(wrap);
    expect(await openMake(back)).toBeUndefined();
    expect(inHand.value).toBeUndefined();
    expect(readFault.value?.code).toBe('store-not-answering');
  });
});
