import { createHash } from 'node:crypto';
import { expect, it } from 'vitest';
import { fileKeeper, type KeptFile } from '../../src/worker/keep-file.ts';
import { keepWanted } from '../../src/worker/keep-wanted.ts';
import { cachesInMemory } from './caches-in-memory.ts';

const scope = 'https://copy.example/ridgeline/';
const cacheName = `wanted-${scope}`;
const precache = `workbox-precache-v2-${scope}`;
const integrityOf = (text: string) => `sha384-${createHash('sha384').update(text).digest('base64')}`;

/** What the host has of a version: the two files of each language, and those that read a PDF. */
const textOf = (url: string) => `says(${url.split('/').at(-1)})`;
const file = (url: string): KeptFile => ({ url, integrity: integrityOf(textOf(url)), revision: null });
const filesOf = (version: string) => ({
  de: [file(`assets/first-words-de-${version}.js`), file(`assets/words-de-${version}.js`)],
  fr: [file(`assets/first-words-fr-${version}.js`), file(`assets/words-fr-${version}.js`)],
  pdf: [file(`assets/wanted-pdf-${version}.js`), file(`assets/wanted-pdf.worker.min-${version}.js`)],
});

/** The worker of a version over such caches, with a network or none; what it asked the host for. */
function worker(caches: CacheStorage, version: string, { network = true } = {}) {
  const heard = new Map<string, (event: object) => void>();
  const asked: string[] = [];
  const scopeOfWorker = {
    caches,
    registration: { scope },
    fetch: async (from: string | Request) => {
      const url = typeof from === 'string' ? from : from.url;
      asked.push(url);
      if (!network) throw new TypeError('no network');
      return new Response(textOf(url));
    },
    addEventListener: (type: string, listener: (event: object) => void) => heard.set(type, listener),
  };
  keepWanted(scopeOfWorker as never, filesOf(version), fileKeeper(scopeOfWorker as never));
  const lasting = async (type: string, event: object = {}) => {
    const works: Promise<unknown>[] = [];
    heard.get(type)?.({ ...event, waitUntil: (work: Promise<unknown>) => works.push(work) });
    await Promise.all(works);
  };
  return {
    asked,
    install: () => lasting('install'),
    activate: () => lasting('activate'),
    tell: async (data: unknown): Promise<boolean | undefined> => {
      let answer: boolean | undefined;
      await lasting('message', { data, ports: [{ postMessage: (kept: boolean) => (answer = kept) }] });
      return answer;
    },
    get: async (url: string): Promise<string | undefined> => {
      let given: Promise<Response> | undefined;
      heard.get('fetch')?.({
        request: new Request(url),
        respondWith: (answer: Promise<Response>) => (given = answer),
      });
      return given && (await given).text();
    },
  };
}

const keptUrls = (all: ReturnType<typeof cachesInMemory>['all']) =>
  [...(all.get(cacheName)?.keys() ?? [])].map((url) => url.slice(scope.length)).sort();

it('a language is kept when she chooses it, whole, and then needs no network; English needs nothing', async () => {
  const { all, caches } = cachesInMemory();
  const online = worker(caches, 'version1');
  expect(await online.tell('keep wanted en')).toBe(true);
  expect(keptUrls(all)).toEqual([]);
  expect(await online.tell('keep wanted fr')).toBe(true);
  expect(keptUrls(all)).toEqual(['assets/first-words-fr-version1.js', 'assets/words-fr-version1.js']);
  const offline = worker(caches, 'version1', { network: false });
  expect(await offline.tell('keep wanted fr')).toBe(true);
  expect(await offline.get(`${scope}assets/words-fr-version1.js`)).toBe('says(words-fr-version1.js)');
  expect(offline.asked).toEqual([]);
});

it('one that is not kept is not promised without a network, and any other file is left to others', async () => {
  const { all, caches } = cachesInMemory();
  const offline = worker(caches, 'version1', { network: false });
  expect(await offline.tell('keep wanted de')).toBe(false);
  await expect(offline.get(`${scope}assets/words-de-version1.js`)).rejects.toThrow('no network');
  expect(await offline.get(`${scope}assets/parts-version1.js`)).toBeUndefined();
  expect(await offline.tell('keep whole')).toBeUndefined();
  expect(keptUrls(all)).toEqual([]);
});

it('a file that was garbled is asked for again at the next start', async () => {
  const { all, caches } = cachesInMemory();
  await worker(caches, 'version1').tell('keep wanted de');
  all.get(cacheName)?.set(`${scope}assets/words-de-version1.js`, 'says(');
  expect(await worker(caches, 'version1').tell('keep wanted de')).toBe(true);
  expect(all.get(cacheName)?.get(`${scope}assets/words-de-version1.js`)).toBe('says(words-de-version1.js)');
});

it('a newer version brings along each language that is kept, and no other; the older files stay until it is taken', async () => {
  const { all, caches } = cachesInMemory();
  await worker(caches, 'version1').tell('keep wanted de');
  const newer = worker(caches, 'version2');
  await newer.install();
  expect(keptUrls(all)).toEqual([
    'assets/first-words-de-version1.js',
    'assets/first-words-de-version2.js',
    'assets/words-de-version1.js',
    'assets/words-de-version2.js',
  ]);
  await newer.activate();
  expect(keptUrls(all)).toEqual(['assets/first-words-de-version2.js', 'assets/words-de-version2.js']);
});

it('a newer version whose language cannot be fetched is not installed', async () => {
  const { caches } = cachesInMemory();
  await worker(caches, 'version1').tell('keep wanted de');
  await expect(worker(caches, 'version2', { network: false }).install()).rejects.toThrow('no network');
});

it('what a version kept that kept every language comes along too', async () => {
  const { all, caches } = cachesInMemory();
  all.set(precache, new Map([[`${scope}assets/words-de-version0.js`, 'older']]));
  await worker(caches, 'version1').install();
  expect(keptUrls(all)).toEqual(['assets/first-words-de-version1.js', 'assets/words-de-version1.js']);
});

it('what reads a PDF is kept as a language is, and goes with none', async () => {
  const { all, caches } = cachesInMemory();
  await worker(caches, 'version1').tell('keep wanted pdf');
  expect(keptUrls(all)).toEqual([
    'assets/wanted-pdf-version1.js',
    'assets/wanted-pdf.worker.min-version1.js',
  ]);
  await worker(caches, 'version2').install();
  await worker(caches, 'version2').activate();
  expect(keptUrls(all)).toEqual([
    'assets/wanted-pdf-version2.js',
    'assets/wanted-pdf.worker.min-version2.js',
  ]);
});
