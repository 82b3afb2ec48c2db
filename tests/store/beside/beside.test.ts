import { IDBFactory } from 'fake-indexeddb';
import { afterEach, describe, expect, it, vi } from 'vitest';
import { fault, ok, type Result, refuse } from '../../../src/knit/fault.ts';
import { clearAside } from '../../../src/store/backup/aside.ts';
import { openBeside } from '../../../src/store/beside/beside.ts';
import { sentinelIn } from '../../../src/store/beside/sentinel.ts';
import { openDoor } from '../../../src/store/box/door.ts';
import { migrations, storeNames } from '../../../src/store/box/schema.ts';
import { lastSeenIn } from '../../../src/store/place/last-seen.ts';
import type { Wish } from '../../../src/store/place/write-log.ts';
import { garmentToLink, linkToGarment } from '../../../src/store/share/link.ts';
import { dot } from '../knitted-box.ts';
import { codesOf, freshStore, given, LONG, nextName, planOf, scarf } from '../scenario.ts';
import { memoryKeep } from './memory-keep.ts';

afterEach(() => vi.useRealTimers());

const place = {
  id: LONG,
  garment: 'scarf',
  piece: 'long',
  part: 0,
  make: 1,
  plan: planOf('scarf', 'long', 30).id,
  rows: 5,
  total: 30,
  seq: 5,
  at: 100,
  touched: 100,
} as const;
const wish = (id: string, make: Wish['make'] = LONG): Wish => ({ id, make, at: 200, kind: 'row' });

/** Beside a box that answers so; what was told, and how often it was asked. */
function beside(answer: () => Result<unknown>) {
  const keep = memoryKeep();
  const seen = lastSeenIn(keep, 'box');
  seen.saw(place);
  const told: unknown[] = [];
  let asked = 0;
  const door = {
    write: async () => {
      asked += 1;
      return answer();
    },
  } as never;
  const sentinel = sentinelIn(keep, 'box');
  const opened = openBeside({ door, keep, name: 'box', sentinel, tell: (change) => told.push(change), seen });
  return { opened, told, asked: () => asked, sentinel, seen };
}

describe('taps that the box does not take', () => {
  it('are offered to it every three seconds, until it takes them', async () => {
    vi.useFakeTimers();
    let answer: Result<unknown> = refuse(fault('store-not-answering'));
    const { opened, told, asked, sentinel, seen } = beside(() => answer);
    expect(opened.hold([wish('a')])?.[0]?.rows).toBe(6);
    expect(told).toEqual([{ kind: 'place', key: LONG }]);
    await vi.advanceTimersByTimeAsync(2999);
    expect(asked()).toBe(0);
    await vi.advanceTimersByTimeAsync(1);
    expect(asked()).toBe(1);
    await vi.advanceTimersByTimeAsync(3000);
    expect([asked(), opened.count()]).toEqual([2, 1]);
    const moved = { ...place, rows: 6, seq: 6 };
    answer = ok({ places: [moved], entries: 1, refused: undefined });
    await vi.advanceTimersByTimeAsync(3000);
    expect([asked(), opened.count(), seen.place(LONG)]).toEqual([3, 0, moved]);
    expect(sentinel.read().entries).toBe(1);
    expect(told.at(-1)).toEqual({ kind: 'all' });
    await vi.advanceTimersByTimeAsync(30_000);
    expect(asked()).toBe(3);
  });

  it('are not offered any more once the window is closed', async () => {
    vi.useFakeTimers();
    const { opened, asked } = beside(() => refuse(fault('store-not-answering')));
    opened.hold([wish('a')]);
    opened.stop();
    await vi.advanceTimersByTimeAsync(30_000);
    expect(asked()).toBe(0);
  });

  it('are held all or none', () => {
    const { opened, told } = beside(() => ok(undefined));
    expect(opened.hold([wish('a'), wish('b', 'scarf/cuff/0/1')])).toBeUndefined();
    expect([opened.count(), told]).toEqual([0, []]);
  });

  it('wait while the box has lost its garments, and one refused is told once', async () => {
    let answer: Result<unknown> = ok(undefined);
    const { opened, told } = beside(() => answer);
    expect(await opened.drain()).toBeUndefined();
    opened.hold([wish('a')]);
    opened.stop();
    expect(await opened.drain()).toBeUndefined();
    expect(told).toHaveLength(1);
    answer = ok({ places: [], entries: 0, refused: fault('plan-moved') });
    await opened.drain();
    expect(opened.dropped()?.code).toBe('plan-moved');
    expect(opened.dropped()).toBeUndefined();
    answer = refuse(fault('storage-full'));
    opened.hold([wish('b')]);
    opened.stop();
    expect((await opened.drain())?.code).toBe('storage-full');
  });
});

describe('the door of the box', () => {
  it('says when it is open and when it is closed, each once', async () => {
    const factory = new IDBFactory();
    const states: string[] = [];
    const door = openDoor({
      factory: () => factory,
      name: nextName(),
      migrations,
      patienceMs: () => 1000,
      longPatienceMs: () => 1000,
      onState: (state) => states.push(state),
    });
    expect(door.state()).toBe('closed');
    const count = () => door.read(['garments'], (tx) => tx.objectStore('garments').count());
    expect(given(await count())).toBe(0);
    expect(given(await count())).toBe(0);
    expect(door.state()).toBe('open');
    door.close();
    expect(door.state()).toBe('closed');
    expect(states).toEqual(['open', 'closed']);
  });
});

describe('what an import that was cut off has left', () => {
  it('is cleared away, but nothing of a garment that is shown', async () => {
    const store = await freshStore({ keep: undefined });
    const { garment, plans } = scarf();
    given(await store.saveGarment(garment, plans));
    const lying = async () =>
      given(
        await store.box.door.read(storeNames, async (tx) =>
          Promise.all(storeNames.map(async (name) => (await tx.objectStore(name).getAllKeys()).length)),
        ),
      );
    const before = await lying();
    given(
      await store.box.door.write(['settings', 'plans', 'log', 'photos'], async (tx) => {
        await tx.objectStore('plans').put(planOf('hat', 'long', 9));
        await tx
          .objectStore('log')
          .put({ id: 'e', make: 'hat/long/0/1', seq: 1, at: 1, kind: 'row', row: 1 });
        await tx.objectStore('photos').put({ id: 'p', garment: 'hat', at: 1, image: dot() });
        await tx.objectStore('settings').put({ id: 'x', garments: ['hat', 'scarf'] }, 'aside');
      }),
    );
    given(await clearAside(store.box));
    expect(await lying()).toEqual(before);
    expect(given(await store.place(LONG)).total).toBe(30);
    store.close();
  });
});

describe('a link', () => {
  it('is of letters that an address can hold, and of no others', async () => {
    const { id: _id, createdAt: _created, changedAt: _changed, ...rest } = scarf().garment;
    const garment = { ...rest, pieces: rest.pieces.map(({ recipe }) => recipe) };
    const links = await Promise.all(
      Array.from({ length: 40 }, (_, i) => garmentToLink({ ...garment, name: `Scarf ${i}` })),
    );
    for (const link of links) expect(link).toMatch(/^1\.[\w-]+$/);
    const [dashed] = links.filter((link) => /[-_]/.test(link));
    const plain = dashed?.replaceAll('-', '+').replaceAll('_', '/') ?? '';
    expect((await linkToGarment(dashed ?? '')).ok).toBe(true);
    expect(codesOf(await linkToGarment(plain))).toEqual(['link damaged']);
    expect(codesOf(await linkToGarment('1.'))).toEqual(['link damaged']);
    expect(codesOf(await linkToGarment('.abc'))).toEqual(['link damaged']);
    expect(codesOf(await linkToGarment('x.abc'))).toEqual(['link damaged']);
    expect(codesOf(await linkToGarment('12345.abc'))).toEqual(['link damaged']);
    expect(await linkToGarment('4.abc')).toMatchObject({
      faults: [{ code: 'link version', figures: { version: '4' } }],
    });
    expect(await linkToGarment('1'.repeat(50_001))).toMatchObject({
      faults: [{ code: 'link too long', figures: { characters: 50_001, mostCharacters: 50_000 } }],
    });
    expect(codesOf(await linkToGarment('1'.repeat(50_000)))).toEqual(['link damaged']);
  });

  it('unfolds to the whole of a garment, also where it comes in many pieces', async () => {
    const { id: _id, createdAt: _created, changedAt: _changed, ...rest } = scarf().garment;
    const notes = Array.from({ length: 6000 }, (_, i) => i).join(' ');
    const garment = { ...rest, pieces: rest.pieces.map(({ recipe }) => recipe), notes };
    expect(given(await linkToGarment(await garmentToLink(garment, { withNotes: true })))).toEqual(garment);
    expect('notes' in given(await linkToGarment(await garmentToLink(garment)))).toBe(false);
  });
});
