import { IDBFactory } from 'fake-indexeddb';
import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { openedFiles } from '../../../src/app/backup/opened-files.ts';
import { startLater } from '../../../src/app/start/later.ts';
import { forgetStore, giveStore, store } from '../../../src/app/store.ts';
import { ASIDE } from '../../../src/store/backup/own-settings.ts';
import { openStore } from '../../../src/store/store.ts';
import { memoryKeep } from '../../store/beside/memory-keep.ts';
import { given, scarf } from '../../store/scenario.ts';
import { openApp } from '../open-app.ts';

/** What the app listens for once it stands, on a page of its own. */
let listens: string[] = [];
let address = '';

function page(search: string): void {
  listens = [];
  address = `https://ridgeline.test/app/${search}`;
  vi.stubGlobal('document', {
    baseURI: 'https://ridgeline.test/app/',
    visibilityState: 'visible',
    addEventListener: (name: string) => listens.push(name),
    querySelectorAll: () => [],
  });
  vi.stubGlobal('matchMedia', () => ({ addEventListener: () => undefined }));
  vi.stubGlobal('window', {});
  vi.stubGlobal('location', {
    search,
    pathname: '/app/',
    get hash() {
      return new URL(address).hash;
    },
    set hash(to: string) {
      address = new URL(to, address).href;
    },
  });
  const write = (_state: unknown, _title: string, to: string) => {
    address = new URL(to, address).href;
  };
  vi.stubGlobal('history', { state: null, replaceState: write, pushState: write });
}

beforeEach(async () => {
  await openApp();
});
afterEach(() => vi.unstubAllGlobals());

describe('the app that stands', () => {
  it('listens for being put away, and leaves its address as it is', async () => {
    page('');
    startLater();
    expect(listens).toContain('visibilitychange');
    expect(address).toBe('https://ridgeline.test/app/');
  });

  it.each([
    ['its address', '?url=https%3A%2F%2Fother.test%2F%23%2Fopen%2Fabc.-_9'],
    ['its text', '?text=Look%3A+https%3A%2F%2Fother.test%2F%23%2Fopen%2Fabc.-_9+at+that'],
    ['its text, beside another address', '?url=https%3A%2F%2Fx.test&text=%23%2Fopen%2Fabc.-_9%21'],
  ])('opens a link of ours that another app shared as %s, and takes it off the address', (_, search) => {
    page(search);
    startLater();
    expect(address).toBe('https://ridgeline.test/app/#/open/abc.-_9');
  });

  it('goes to the backups with a file that the system opens it with', async () => {
    page('');
    let open: (launched: object) => void = () => undefined;
    const setConsumer = (take: typeof open) => {
      open = take;
    };
    vi.stubGlobal('window', { launchQueue: { setConsumer } });
    startLater();
    expect(address).toBe('https://ridgeline.test/app/');
    open({ files: [{ getFile: async () => new File(['{}'], 'ridgeline.json') }] });
    await vi.waitFor(() => expect(address).toBe('https://ridgeline.test/app/#/backup'));
    // taken, so that it waits for no other test
    openedFiles(() => undefined)();
  });

  it('leaves an address alone that has nothing of ours in its query, and goes nowhere for a link of nothing', () => {
    page('?text=hello');
    startLater();
    expect(address).toBe('https://ridgeline.test/app/?text=hello');
    page('?text=%23%2Fopen%2F%3F');
    startLater();
    expect(address).toBe('https://ridgeline.test/app/');
  });

  it('knows again of garments that the device forgot of, so that they are missed where the box vanishes', async () => {
    const factory = new IDBFactory();
    const keep = memoryKeep();
    const options = { factory: () => factory, keep, spareFactory: async () => undefined };
    const first = given(await openStore(options));
    const { garment, plans } = scarf();
    given(await first.saveGarment(garment, plans));
    first.close();
    keep.removeItem('ridgeline.sentinel');

    const open = given(await openStore(options));
    forgetStore();
    giveStore(open);
    page('');
    startLater();
    await vi.waitFor(() => expect(open.box.sentinel.read().garments).toBe(1));
    open.close();
    const emptied = given(await openStore({ ...options, factory: () => new IDBFactory() }));
    expect(emptied.missing()?.garments).toBe(1);
    emptied.close();
  });

  it('clears what a backup that was cut off has left behind', async () => {
    const open = await store();
    const cut = { id: 'import', garments: ['gone'] };
    const now = async () => given(await open.settings())[ASIDE];
    page('');
    given(await open.setSetting(ASIDE, cut));
    startLater();
    await new Promise((resolve) => setTimeout(resolve, 50));
    // the box had none when it was opened: nobody looks
    expect(await now()).toEqual(cut);
    Object.assign(open.atOpening, { [ASIDE]: cut });
    startLater();
    await vi.waitFor(async () => expect(await now()).toBeUndefined(), 30_000);
  });
});
