import type { KeepFile, KeptFile } from './keep-file.ts';

/** What the worker's own scope gives; its types are not among the page's. */
interface WorkerScope {
  readonly caches: CacheStorage;
  readonly registration: { readonly scope: string };
  readonly fetch: typeof fetch;
  addEventListener(type: 'install' | 'activate', heard: (event: Lasting) => void): void;
  addEventListener(type: 'fetch', heard: (event: Asked) => void): void;
  addEventListener(type: 'message', heard: (event: Told) => void): void;
}

interface Lasting {
  waitUntil(work: Promise<unknown>): void;
}

interface Asked {
  readonly request: Request;
  respondWith(answer: Promise<Response>): void;
}

interface Told extends Lasting {
  readonly data: unknown;
  readonly ports: readonly MessagePort[];
}

/**
 * Runs in the service worker: English is kept for offline use with the rest of the app, any other language when she
 * chooses it ('keep language fr', answered with whether it is), and looked through at each start. A newer version
 * fetches its own file of every language that is kept before it is installed at all: what starts without a network
 * before an update does so after it. Put into the worker as text (src/build/worker.ts), so it can use nothing from
 * outside itself.
 */
export function keepLanguages(
  worker: WorkerScope,
  languages: Readonly<Record<string, readonly KeptFile[]>>,
  keepFile: KeepFile,
): void {
  const { scope } = worker.registration;
  const cacheName = `languages-${scope}`;
  const addresses = new Set(
    Object.values(languages)
      .flat()
      .map(({ url }) => new URL(url, scope).href),
  );

  worker.addEventListener('install', (event) => event.waitUntil(bringAlong()));
  worker.addEventListener('activate', (event) => event.waitUntil(dropOlder()));
  worker.addEventListener('fetch', (event) => {
    if (addresses.has(event.request.url)) event.respondWith(give(event.request));
  });
  worker.addEventListener('message', (event) => {
    const [, language] = /^keep language (\w+)$/.exec(String(event.data)) ?? [];
    if (language === undefined) return;
    const [answerTo] = event.ports;
    event.waitUntil(
      keep(language).then(
        () => answerTo?.postMessage(true),
        () => answerTo?.postMessage(false),
      ),
    );
  });

  async function keep(language: string): Promise<void> {
    const cache = await worker.caches.open(cacheName);
    for (const file of languages[language] ?? []) await keepFile(cache, file);
  }

  async function give(request: Request): Promise<Response> {
    const cache = await worker.caches.open(cacheName);
    return (await cache.match(request.url)) ?? worker.fetch(request);
  }

  /** Earlier versions kept every language among all their files. */
  async function bringAlong(): Promise<void> {
    const kept = [...(await keptIn(cacheName)), ...(await keptIn(`workbox-precache-v2-${scope}`))];
    for (const language of Object.keys(languages))
      if (kept.some((url) => url.includes(`/words-${language}-`))) await keep(language);
  }

  async function keptIn(name: string): Promise<readonly string[]> {
    if (!(await worker.caches.has(name))) return [];
    return (await (await worker.caches.open(name)).keys()).map(({ url }) => url);
  }

  /** Files of the version before this one: no window shows it any more, or it has read them. */
  async function dropOlder(): Promise<void> {
    const cache = await worker.caches.open(cacheName);
    for (const { url } of await cache.keys()) if (!addresses.has(url)) await cache.delete(url);
  }
}
