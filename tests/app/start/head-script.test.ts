import { afterEach, describe, expect, it, vi } from 'vitest';
import { whenNotStarted } from '../../../src/app/start/not-started.ts';
import { askEarly } from '../../../src/pace/ask-early.ts';

afterEach(() => {
  vi.useRealTimers();
  vi.unstubAllGlobals();
});

const files = {
  files: ['a.js', 'b.js', 'a.css', 'c.js', 'c.css'],
  screens: { '': [0, 1, 2], draft: [0, 3, 4] },
  words: {
    en: ['en.js', 'en-rest.js'],
    de: ['de.js', 'de-rest.js'],
    fr: ['fr.js', 'fr-rest.js'],
  } as const,
  font: 'font.woff2',
};

interface Asked {
  readonly rel: string;
  readonly as: string;
  readonly href: string;
  readonly crossOrigin: string;
}

interface Device {
  readonly hash?: string;
  readonly search?: string;
  readonly languages?: readonly string[];
  readonly onLine?: boolean;
  /** what a worker answers that is asked to mend; undefined: there is none */
  readonly mends?: unknown;
  readonly version?: string;
  readonly indexedDB?: object;
}

/** A page whose head the script stands in; what it asked for, and what became of the page. */
function page(device: Device = {}) {
  const { hash = '', search = '', languages = ['en-GB'], onLine = true, mends, version } = device;
  const asked: Asked[] = [];
  const replaced: string[] = [];
  const told: unknown[] = [];
  const window = new EventTarget();
  const notice = {
    hidden: true,
    removeAttribute: (name: string) => {
      if (name === 'hidden') notice.hidden = false;
    },
  };
  const dataset: Record<string, string> = version === undefined ? {} : { version };
  const controller = {
    postMessage: (what: string, [port]: readonly MessagePort[]) => {
      told.push(what);
      port?.postMessage(mends);
      port?.close();
    },
  };
  vi.stubGlobal('addEventListener', window.addEventListener.bind(window));
  vi.stubGlobal('document', {
    documentElement: { dataset },
    head: { append: (link: Asked) => asked.push(link) },
    createElement: () => ({}),
    getElementById: (id: string) => (id === 'not-started' ? notice : null),
  });
  vi.stubGlobal('location', {
    href: `https://example.org/app/${search}${hash}`,
    hash,
    replace: (to: URL) => replaced.push(String(to)),
  });
  vi.stubGlobal('navigator', {
    languages,
    onLine,
    ...('mends' in device ? { serviceWorker: { controller } } : {}),
  });
  vi.stubGlobal('indexedDB', device.indexedDB ?? { databases: async () => [] });
  whenNotStarted();
  askEarly(files);
  const fire = (name: string) => window.dispatchEvent(new Event(name));
  return { asked, replaced, told, notice, dataset, fire };
}

const hrefs = (asked: readonly Asked[]) => asked.map(({ href }) => href);

describe('the script in the page’s head asks early', () => {
  it.each(['', '#', '#/'])('for all of the first screen where the visit begins with it (%s)', (hash) => {
    const { asked } = page({ hash });
    expect(asked).toEqual([
      { rel: 'modulepreload', as: 'script', href: 'a.js', crossOrigin: '' },
      { rel: 'modulepreload', as: 'script', href: 'b.js', crossOrigin: '' },
      { rel: 'preload', as: 'style', href: 'a.css', crossOrigin: '' },
      { rel: 'modulepreload', as: 'script', href: 'en.js', crossOrigin: '' },
    ]);
  });

  it('for all of another screen that it begins with, and for all words of its language', () => {
    expect(hrefs(page({ hash: '#/draft', languages: ['fr'] }).asked)).toEqual([
      'a.js',
      'c.js',
      'c.css',
      'fr.js',
      'fr-rest.js',
    ]);
  });

  it('for no words where a worker has them: she may have chosen another language than the device', () => {
    expect(hrefs(page({ mends: true }).asked)).toEqual(['font.woff2', 'a.js', 'b.js', 'a.css']);
  });

  it('for nothing of it where the visit begins with another', () => {
    for (const hash of ['#/continue', '#/garment/x', '#x', '#//', '#/constructor', '#/draft/'])
      expect(page({ hash }).asked).toEqual([]);
  });

  it('for the words of the language that she has before others, English where it has none of hers', () => {
    const words = (...languages: string[]) => hrefs(page({ languages }).asked)[3];
    expect(words('de-AT', 'en')).toBe('de.js');
    expect(words('en-US', 'de')).toBe('en.js');
    expect(words('it', 'DE')).toBe('de.js');
    expect(words('fr-CA', 'de')).toBe('fr.js');
    expect(words('it', 'pl')).toBe('en.js');
    expect(words()).toBe('en.js');
    expect(words('sv-de')).toBe('en.js');
    expect(words('it', 'EN-gb', 'de')).toBe('en.js');
  });

  it('for the font only where it is on the device already', () => {
    const { asked } = page({ hash: '#/continue', mends: true });
    expect(asked).toEqual([{ rel: 'preload', as: 'font', href: 'font.woff2', crossOrigin: '' }]);
    expect(hrefs(page({ hash: '#/continue' }).asked)).toEqual([]);
  });

  it('for the names of the boxes, which opens them; a browser that has none goes on', async () => {
    let opened = 0;
    const databases = async () => {
      opened += 1;
      throw new Error('not now');
    };
    page({ indexedDB: { databases } });
    expect(opened).toBe(1);
    expect(() => page({ indexedDB: {} })).not.toThrow();
    // a refusal that nobody waits for would be red here
    await new Promise((resolve) => setTimeout(resolve, 5));
  });
});

describe('where the app does not start', () => {
  const started = (search: string | undefined) => Number(new URL(search ?? '').searchParams.get('again'));

  it('nothing is shown and nothing done when it did', async () => {
    const { fire, notice, replaced } = page({ version: '1.0' });
    fire('load');
    await vi.waitFor(() => expect(notice.hidden).toBe(true));
    expect(replaced).toEqual([]);
  });

  it('that is said, and tried once more at an address that no proxy knows, the place in it kept', async () => {
    const { fire, notice, replaced } = page({ hash: '#/continue', search: '?x=1' });
    fire('load');
    expect(notice.hidden).toBe(false);
    await vi.waitFor(() => expect(replaced).toHaveLength(1));
    expect(replaced[0]).toContain('https://example.org/app/?x=1&again=');
    expect(replaced[0]).toContain('#/continue');
    expect(Math.abs(started(replaced[0]) - Date.now())).toBeLessThan(60_000);
  });

  it('it is not tried again within a minute of the last time, and is after', async () => {
    const at = (ago: number) => page({ search: `?again=${Date.now() - ago}` });
    const soon = at(30_000);
    soon.fire('load');
    expect(soon.notice.hidden).toBe(false);
    const late = at(61_000);
    late.fire('load');
    await vi.waitFor(() => expect(late.replaced).toHaveLength(1));
    expect(soon.replaced).toEqual([]);
  });

  it('without a network and a worker there is no use in it', async () => {
    const { fire, notice, replaced } = page({ onLine: false });
    fire('load');
    await new Promise((resolve) => setTimeout(resolve, 20));
    expect(notice.hidden).toBe(false);
    expect(replaced).toEqual([]);
  });

  it('the worker mends what is kept first, also without a network; where it cannot, the page stays', async () => {
    const mended = page({ mends: true, onLine: false });
    mended.fire('load');
    await vi.waitFor(() => expect(mended.replaced).toHaveLength(1));
    expect(mended.told).toEqual(['mend']);
    for (const mends of [false, 'no', undefined]) {
      const not = page({ mends });
      not.fire('load');
      await new Promise((resolve) => setTimeout(resolve, 20));
      expect(not.told).toEqual(['mend']);
      expect(not.replaced).toEqual([]);
    }
  });

  it('a file that did not load is remembered for the app, which comes later', () => {
    const { fire, dataset } = page();
    expect(dataset.missed).toBeUndefined();
    fire('vite:preloadError');
    expect(dataset.missed).toBe('');
  });
});
