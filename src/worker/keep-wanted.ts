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
 * Runs in the service worker: most of the app is kept for offline use from the first visit on. What not everybody wants
 * is kept when she does: a language but English, what reads a PDF ('keep wanted fr', answered with whether it is); it is
 * looked through each time that is asked. A newer version fetches its own files of all that is kept before it is
 * installed at all: what works without a network before an update does so after it. Put into the worker as text
 * (src/build/worker.ts), so it can use nothing from outside itself.
 */
export function keepWanted(
  worker: WorkerScope,
  sets: Readonly<Record<string, readonly KeptFile[]>>,
  keepFile: KeepFile,
): void {
  const { scope } = worker.registration;
  const cacheName = `wanted-${scope}`;
  const addresses = new Set(
    Object.values(sets)
      .flat()
      .map(({ url }) => new URL(url, scope).href),
  );

  worker.addEventListener('install', (event) => event.waitUntil(bringAlong()));
  worker.addEventListener('activate', (event) => event.waitUntil(dropOlder()));
  worker.addEventListener('fetch', (event) => {
    if (addresses.has(event.request.url)) event.respondWith(give(event.request));
  });
  worker.addEventListener('message', (event) => {
    const [, name] = /^keep wanted (\w+)$/.exec(String(event.data)) ?? [];
    if (name === undefined) return;
    const [answerTo] = event.ports;
    event.waitUntil(
      keep(name).then(
        () => answerTo?.postMessage(true),
        () => answerTo?.postMessage(false),
      ),
    );
  });

  async function keep(name: string): Promise<void> {
    const files = sets[name] ?? [];
    // nothing is opened where nothing is kept: a cache would be there that holds nothing
    if (files.length === 0) return;
    const cache = await worker.caches.open(cacheName);
    for (const file of files) await keepFile(cache, file);
  }

  async function give(request: Request): Promise<Response> {
    const cache = await worker.caches.open(cacheName);
    return (await cache.match(request.url)) ?? worker.fetch(request);
  }

  /** Earlier versions kept every language among all their files. */
  async function bringAlong(): Promise<void> {
    const kept = [...(await keptIn(cacheName)), ...(await keptIn(`workbox-precache-v2-${scope}`))];
    const stems = new Set(kept.map((url) => stemOf(new URL(url).pathname)));
    for (const [name, files] of Object.entries(sets))
      if (files.some(({ url }) => stems.has(stemOf(new URL(url, scope).pathname)))) await keep(name);
  }

  /** The name of a file without what tells its versions apart. */
  function stemOf(path: string): string {
    return path.replace(/-[\w-]{8}\.js$/, '');
  }

  async function keptIn(name: string): Promise<readonly string[]> {
    if (!(await worker.caches.has(name))) return [];
    return (await (await worker.caches.open(name)).keys()).map(({ url }) => url);
  }

  /** Files of the version before this one: no window shows it any more, or it has read them. */
  async function dropOlder(): Promise<void> {
    if (!(await worker.caches.has(cacheName))) return;
    const cache = await worker.caches.open(cacheName);
    for (const { url } of await cache.keys()) if (!addresses.has(url)) await cache.delete(url);
  }
}
