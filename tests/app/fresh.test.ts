import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { keepFresh, whenSavedElsewhere } from '../../src/app/fresh.ts';
import { forgetStore, giveStore } from '../../src/app/store.ts';
import type { MakeKey } from '../../src/progress/log.ts';
import type { Change, Listener } from '../../src/store/box/changes.ts';
import type { Store } from '../../src/store/store.ts';

/** A store of which nothing is asked but what changes in it. */
const listeners = new Set<Listener>();
const open = {
  onChange: (listener: Listener) => {
    listeners.add(listener);
    return () => listeners.delete(listener);
  },
} as Partial<Store> as Store;

const tell = (change: Change, fromElsewhere = false) => {
  for (const listener of listeners) listener(change, fromElsewhere);
};
/** What is waited for in turn is done. */
const done = () => new Promise((resolve) => setTimeout(resolve));

const place = (key: MakeKey): Change => ({ kind: 'place', key });
const garment = (id: string): Change => ({ kind: 'garment', id });
const everything: readonly Change[] = [
  place('scarf/left/0/1'),
  place('scarf/left/0/2'),
  place('scarfs/left/0/1'),
  garment('scarf'),
  garment('scarfs'),
  { kind: 'settings' },
  { kind: 'state' },
  { kind: 'all' },
];
const named = (change: Change) =>
  change.kind === 'place' ? change.key : change.kind === 'garment' ? change.id : change.kind;

beforeEach(() => {
  listeners.clear();
  forgetStore();
});
afterEach(forgetStore);

describe('what a screen shows', () => {
  /** Which changes it is read again for. */
  async function heard(of?: string, own?: MakeKey): Promise<string[]> {
    giveStore(open);
    let reads = 0;
    const stop = keepFresh(async () => (reads += 1), of, own);
    await done();
    expect(reads).toBe(1);
    const found: string[] = [];
    for (const change of everything) {
      const before = reads;
      tell(change);
      await done();
      if (reads > before) found.push(named(change));
    }
    stop();
    expect(listeners.size).toBe(0);
    return found;
  }

  it('is read again with every tap and change of its garment, and of no other', async () => {
    expect(await heard('scarf')).toEqual(['scarf/left/0/1', 'scarf/left/0/2', 'scarf', 'all']);
  });

  it('is not read again for taps of which the screen hears by itself', async () => {
    expect(await heard('scarf', 'scarf/left/0/1')).toEqual(['scarf/left/0/2', 'scarf', 'all']);
  });

  it('of all garments is read again with each of them, not with a setting', async () => {
    const all = everything.map(named).filter((name) => name !== 'settings' && name !== 'state');
    expect(await heard()).toEqual(all);
  });

  it('is read once more for all that changes while it is read, and never twice at once', async () => {
    giveStore(open);
    const ends: (() => void)[] = [];
    const stop = keepFresh(() => new Promise<void>((end) => ends.push(end)));
    await done();
    tell(garment('one'));
    tell(garment('two'));
    await done();
    expect(ends).toHaveLength(1);
    ends[0]?.();
    await done();
    expect(ends).toHaveLength(2);
    ends[1]?.();
    await done();
    expect(ends).toHaveLength(2);
    tell(garment('one'));
    await done();
    expect(ends).toHaveLength(3);
    stop();
  });

  it('is not read any more once the screen is left: before the box is open, or in the midst of reading', async () => {
    let reads = 0;
    keepFresh(async () => (reads += 1))();
    giveStore(open);
    await done();
    expect([reads, listeners.size]).toEqual([0, 0]);
    const ends: (() => void)[] = [];
    const stop = keepFresh(() => new Promise<void>((end) => ends.push(end)));
    await done();
    tell(garment('one'));
    stop();
    ends[0]?.();
    await done();
    expect([ends.length, listeners.size]).toEqual([1, 0]);
  });
});

describe('whoever has a garment open', () => {
  it('hears when another window has changed it, and when anything may be different', async () => {
    giveStore(open);
    const told: string[] = [];
    let now = '';
    const stop = whenSavedElsewhere('scarf', () => told.push(now));
    await done();
    for (const fromElsewhere of [true, false])
      for (const change of everything) {
        now = `${named(change)} ${fromElsewhere}`;
        tell(change, fromElsewhere);
      }
    expect(told).toEqual([
      'scarf/left/0/1 true',
      'scarf/left/0/2 true',
      'scarf true',
      'all true',
      'all false',
    ]);
    stop();
    expect(listeners.size).toBe(0);
  });

  it('and has closed it before the box was open hears nothing', async () => {
    whenSavedElsewhere('scarf', () => expect.unreachable())();
    giveStore(open);
    await done();
    expect(listeners.size).toBe(0);
  });
});
