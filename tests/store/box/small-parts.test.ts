import { afterEach, describe, expect, it, vi } from 'vitest';
import { fault, ok, refuse } from '../../../src/knit/fault.ts';
import { backupFile } from '../../../src/store/backup/export.ts';
import { photoToText, textToPhoto } from '../../../src/store/backup/photo-text.ts';
import { type Change, openChanges } from '../../../src/store/box/changes.ts';
import { inTime, pause } from '../../../src/store/box/in-time.ts';
import { askToKeep, isKept, roomLeft } from '../../../src/store/box/persist.ts';
import { newestVersion } from '../../../src/store/box/schema.ts';
import { setSetting } from '../../../src/store/box/set-setting.ts';
import { each, together } from '../../../src/store/box/together.ts';
import { finalFault, mayStill, nameOf, noneWhenRefused, Refusal } from '../../../src/store/faults.ts';
import { addPhoto, deletePhoto, photosOf } from '../../../src/store/garment/photos.ts';
import { entryId, randomId } from '../../../src/store/ids.ts';
import { dot, knittedBox } from '../knitted-box.ts';
import { codesOf, freshStore, given, scarf } from '../scenario.ts';

afterEach(() => vi.unstubAllGlobals());

/** Windows of one device: what one posts the others hear. */
class Wire {
  static all = new Set<Wire>();
  heard: ((event: { data: unknown }) => void)[] = [];
  constructor(readonly name: string) {
    Wire.all.add(this);
  }
  addEventListener(_message: string, listener: (event: { data: unknown }) => void) {
    this.heard.push(listener);
  }
  postMessage(data: unknown) {
    for (const other of Wire.all)
      if (other !== this && other.name === this.name) for (const listener of other.heard) listener({ data });
  }
  close() {
    Wire.all.delete(this);
  }
}

describe('what has changed', () => {
  const heardBy = (changes: ReturnType<typeof openChanges>) => {
    const heard: [Change, boolean][] = [];
    const stop = changes.listen((change, fromElsewhere) => heard.push([change, fromElsewhere]));
    return { heard, stop };
  };

  it('is told to this window and to every other one of the same box', () => {
    vi.stubGlobal('BroadcastChannel', Wire);
    const [one, two, other] = [openChanges('box'), openChanges('box'), openChanges('other')];
    const [a, b, c] = [heardBy(one), heardBy(two), heardBy(other)];
    one.tell({ kind: 'garment', id: 'scarf' });
    one.tellHere({ kind: 'state' });
    expect(a.heard).toEqual([
      [{ kind: 'garment', id: 'scarf' }, false],
      [{ kind: 'state' }, false],
    ]);
    expect(b.heard).toEqual([[{ kind: 'garment', id: 'scarf' }, true]]);
    expect(c.heard).toEqual([]);
    b.stop();
    one.tell({ kind: 'all' });
    expect(b.heard).toHaveLength(1);
    one.close();
    one.tell({ kind: 'all' });
    expect(a.heard).toHaveLength(3);
    for (const changes of [two, other]) changes.close();
    expect(Wire.all.size).toBe(0);
  });

  it('is understood where another version of the app tells it, and passed over where it is none', () => {
    vi.stubGlobal('BroadcastChannel', Wire);
    const changes = openChanges('box');
    const { heard } = heardBy(changes);
    const wire = new Wire('box');
    const told: unknown[] = [
      { kind: 'place', key: 'g/p/0/1', more: 1 },
      { kind: 'garment', id: 'g' },
      { kind: 'settings' },
      { kind: 'all' },
    ];
    const odd = [
      null,
      'all',
      { kind: 'place' },
      { kind: 'place', key: 3 },
      { kind: 'garment', id: 3 },
      { kind: 'state' },
      {},
    ];
    for (const data of [...odd, ...told]) wire.postMessage(data);
    expect(heard.map(([change]) => change)).toEqual([
      { kind: 'place', key: 'g/p/0/1' },
      { kind: 'garment', id: 'g' },
      { kind: 'settings' },
      { kind: 'all' },
    ]);
    changes.close();
    wire.close();
  });

  it('is told here where the browser knows no other window', () => {
    vi.stubGlobal('BroadcastChannel', undefined);
    const changes = openChanges('box');
    const { heard } = heardBy(changes);
    changes.tell({ kind: 'all' });
    expect(heard).toEqual([[{ kind: 'all' }, false]]);
    changes.close();
  });
});

describe('an answer that is waited for', () => {
  it('is had in time, or a TimeoutError, and what comes too late is handed on', async () => {
    const late: number[] = [];
    expect(await inTime(Promise.resolve(3), 1000, (n) => late.push(n))).toBe(3);
    let answer: (n: number) => void = () => undefined;
    const slow = new Promise<number>((done) => {
      answer = done;
    });
    await expect(inTime(slow, 0, (n) => late.push(n))).rejects.toMatchObject({
      name: 'TimeoutError',
      message: 'no answer',
    });
    expect(late).toEqual([]);
    answer(5);
    await pause(0);
    await slow;
    await Promise.resolve();
    expect(late).toEqual([5]);
    await expect(inTime(Promise.reject(new RangeError('no')), 1000, () => {})).rejects.toThrow(RangeError);
  });

  it('of several is had of all at once, a call that throws being a refusal like any other', async () => {
    expect(
      await together(
        async () => 1,
        async () => 'b',
      ),
    ).toEqual([1, 'b']);
    const throws = () => {
      throw new RangeError('no');
    };
    await expect(together(async () => 1, throws)).rejects.toThrow(RangeError);
    expect(await each([1, 2], async (n) => n * 2)).toEqual([2, 4]);
  });
});

describe('whether the browser keeps the box', () => {
  it('is as it says, and unknown where it says nothing', async () => {
    for (const [ask, name] of [
      [askToKeep, 'persist'],
      [isKept, 'persisted'],
    ] as const) {
      const says = (answer: () => Promise<boolean>) => ask({ [name]: answer });
      expect(await says(async () => true)).toBe('kept');
      expect(await says(async () => false)).toBe('not kept');
      expect(await says(() => Promise.reject(new Error('no')))).toBe('unknown');
      expect(await ask({})).toBe('unknown');
    }
    vi.stubGlobal('navigator', { storage: { persist: async () => true, persisted: async () => false } });
    expect([await askToKeep(), await isKept()]).toEqual(['kept', 'not kept']);
    vi.stubGlobal('navigator', undefined);
    expect(await askToKeep()).toBe('unknown');
  });

  it('and how much it may still take, which is never less than nothing', async () => {
    const room = (usage?: number, quota?: number) =>
      roomLeft({
        estimate: async () => ({
          ...(usage !== undefined && { usage }),
          ...(quota !== undefined && { quota }),
        }),
      });
    expect(await room(30, 100)).toEqual({ used: 30, free: 70 });
    expect(await room(130, 100)).toEqual({ used: 130, free: 0 });
    expect(await room(30)).toBeUndefined();
    expect(await room(undefined, 100)).toBeUndefined();
    expect(await roomLeft({})).toBeUndefined();
    expect(await roomLeft({ estimate: () => Promise.reject(new Error('no')) })).toBeUndefined();
  });
});

describe('a refusal of the box', () => {
  it('is one that another try may mend, or not', () => {
    expect(mayStill(ok(1))).toBeUndefined();
    expect(mayStill(refuse(fault('storage-full')))).toMatchObject({ code: 'storage-full' });
    for (const code of [
      'nothing-to-undo',
      'plan-moved',
      'no-such-make',
      'no-such-plan',
      'no-such-entry',
    ] as const)
      expect(mayStill(refuse(fault(code)))).toBeUndefined();
    expect(mayStill(refuse(fault('at-the-end', { rows: 1 })))).toBeUndefined();
  });

  it('is told by the name of the error that no new connection mends', () => {
    const of = (name: string) => finalFault(new DOMException('x', name));
    expect(of('QuotaExceededError')?.code).toBe('storage-full');
    expect([of('SecurityError')?.code, of('NotAllowedError')?.code]).toEqual([
      'storage-refused',
      'storage-refused',
    ]);
    expect(of('VersionError')?.code).toBe('database-newer');
    for (const name of ['DataCloneError', 'DataError', 'ConstraintError'])
      expect(of(name)).toMatchObject({ code: 'not-storable', figures: { detailText: name } });
    expect([of('AbortError'), of('TimeoutError')]).toEqual([undefined, undefined]);
    const own = fault('no-such-make');
    expect(finalFault(new Refusal(own))).toBe(own);
    expect(new Refusal(own).message).toBe('no-such-make');
  });

  it('has a name whatever was thrown', () => {
    expect([nameOf(new RangeError('x')), nameOf(null), nameOf('x'), nameOf({})]).toEqual([
      'RangeError',
      'AbortError',
      'AbortError',
      'AbortError',
    ]);
    expect(noneWhenRefused(new Refusal(fault('no-such-make')))).toBeUndefined();
    expect(() => noneWhenRefused(new RangeError('x'))).toThrow(RangeError);
  });
});

describe('ids', () => {
  it('are random letters and digits, and tell the device', () => {
    const ids = Array.from({ length: 200 }, () => randomId(14));
    expect(ids.every((id) => /^[0-9a-z]{14}$/.test(id))).toBe(true);
    expect(new Set(ids).size).toBe(200);
    // each of the 36 signs comes, and none much more than the others: 2,800 signs, 78 of each on the average
    expect(new Set(ids.join('')).size).toBe(36);
    expect(randomId(0)).toBe('');
    expect(entryId('aa')).toMatch(/^aa-[0-9a-z]{14}$/);
  });
});

describe('versions of the box', () => {
  const run = () => undefined;
  it('are numbered from 1 without a gap', () => {
    expect(
      newestVersion([
        { to: 1, run },
        { to: 2, run },
      ]),
    ).toBe(2);
    expect(() =>
      newestVersion([
        { to: 1, run },
        { to: 3, run },
      ]),
    ).toThrow('migration 2 says it makes version 3');
    expect(() => newestVersion([{ to: 0, run }])).toThrow('migration 1 says it makes version 0');
  });
});

describe('a backup that is too long for a file', () => {
  it('is refused with how long it is and may be, in millions of characters', async () => {
    const store = await knittedBox();
    const refused = await backupFile(store.box, 1000);
    expect(refused).toMatchObject({
      faults: [{ code: 'backup-too-full', figures: { sizeMillions: 1, mostMillions: 0 } }],
    });
    const { text } = given(await backupFile(store.box));
    expect((await backupFile(store.box, text.length)).ok).toBe(true);
    expect((await backupFile(store.box, text.length - 1)).ok).toBe(false);
    store.close();
  });

  it('says whole millions: what it is is rounded up, what it may be down', async () => {
    const store = await freshStore({ keep: undefined });
    const { garment, plans } = scarf();
    given(await store.saveGarment(garment, plans));
    given(await store.setSetting('wool', ''));
    const { text } = given(await backupFile(store.box));
    given(await store.setSetting('wool', 'x'.repeat(1_000_001 - text.length)));
    const millions = async (most: number) => {
      const made = await backupFile(store.box, most);
      return made.ok ? made.value.text.length : made.faults[0]?.figures;
    };
    expect(await millions(2_000_000)).toBe(1_000_001);
    expect(await millions(1_000_000)).toEqual({ sizeMillions: 2, mostMillions: 1 });
    expect(await millions(999_999)).toEqual({ sizeMillions: 2, mostMillions: 0 });
    store.close();
  });

  it('has the day on which it was made in its name', async () => {
    const store = await knittedBox(() => Date.UTC(2026, 2, 9, 23));
    expect(given(await backupFile(store.box)).name).toBe('backup-2026-03-09.ridgeline.json');
    store.close();
  });
});

describe('a picture as text', () => {
  it('is a data URL of it, and the picture again', async () => {
    const bytes = Uint8Array.from({ length: 20_000 }, (_, i) => (i * 7) % 256);
    const photo = {
      id: 'p',
      garment: 'scarf',
      at: 1,
      caption: 'x',
      image: new Blob([bytes], { type: 'image/png' }),
    };
    const text = await photoToText(photo);
    expect(text).toMatchObject({ id: 'p', garment: 'scarf', at: 1, caption: 'x' });
    expect(text.image).toBe(`data:image/png;base64,${Buffer.from(bytes).toString('base64')}`);
    const back = textToPhoto(text);
    expect(back.image.type).toBe('image/png');
    expect(new Uint8Array(await back.image.arrayBuffer())).toEqual(bytes);
  });
});

describe('pictures of a garment', () => {
  it('are kept up to so many bytes together, one that comes in another’s stead not counting it', async () => {
    const store = await freshStore({ keep: undefined });
    const { garment, plans } = scarf();
    given(await store.saveGarment(garment, plans));
    const { size } = dot();
    const first = given(await addPhoto(store.box, 'scarf', dot(), { most: size }));
    expect(codesOf(await addPhoto(store.box, 'scarf', dot(), { most: 2 * size - 1 }))).toEqual([
      'photos-full',
    ]);
    const second = given(
      await addPhoto(store.box, 'scarf', dot(), { most: size, instead: first.id, caption: 'two' }),
    );
    expect(given(await photosOf(store.box, 'scarf'))).toMatchObject([{ id: second.id, caption: 'two' }]);
    expect('caption' in first).toBe(false);
    expect(given(await store.garment('scarf')).marks?.photosGone?.map(({ id }) => id)).toEqual([first.id]);
    expect(codesOf(await addPhoto(store.box, 'hat', dot()))).toEqual(['no-such-garment']);
    expect(codesOf(await addPhoto(store.box, 'scarf', new Blob(['x'], { type: 'text/plain' })))).toEqual([
      'not-storable',
    ]);
    given(await deletePhoto(store.box, second.id));
    given(await deletePhoto(store.box, second.id));
    expect(given(await photosOf(store.box, 'scarf'))).toEqual([]);
    store.close();
  });
});

describe('a setting', () => {
  it('is kept where a backup can carry it, and where it is the device’s own whatever it is', async () => {
    const store = await freshStore({ keep: undefined });
    const set = (name: string, value: unknown) => setSetting(store.box, name, value);
    given(await set('hand', 'left'));
    given(await set('odd', { a: undefined }));
    given(await set('gone', undefined));
    given(await set('backup file', new Date(5)));
    const refused = await set('', 1);
    expect(codesOf(refused)).toEqual(['not-storable']);
    expect(codesOf(await set('n'.repeat(201), 1))).toEqual(['not-storable']);
    expect(codesOf(await set('bad', { constructor: 1 }))).toEqual(['not-storable']);
    expect(given(await store.settings())).toMatchObject({ hand: 'left', 'backup file': new Date(5) });
    store.close();
  });
});
