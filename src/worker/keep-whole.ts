/** What the worker's own scope gives; its types are not among the page's. */
interface WorkerScope {
  readonly caches: CacheStorage;
  readonly registration: { readonly scope: string };
  readonly fetch: typeof fetch;
  addEventListener(type: 'fetch', heard: (event: FetchAsked) => void): void;
  addEventListener(type: 'message', heard: (event: Told) => void): void;
}

interface FetchAsked {
  readonly request: Request;
  respondWith(answer: Promise<Response>): void;
}

interface Told {
  readonly data: unknown;
  readonly ports: readonly MessagePort[];
  waitUntil(work: Promise<unknown>): void;
}

/** A file of this version: its address below the app's folder, and what it is, byte for byte. */
export interface KeptFile {
  readonly url: string;
  /** 'sha384-…' */
  readonly integrity: string;
  /** behind its address in the list of what is kept first; null where the name says it already */
  readonly revision: string | null;
  /** fetched when the first screen stands, not when the worker is installed */
  readonly later: boolean;
}

/**
 * Runs in the service worker: sees to it that what is kept for offline use is this version's, byte for byte. What
 * comes later is fetched when a page says so, and given from what is kept; everything else is looked through once a
 * day, or at once where a page says that something did not load. A file that is missing, empty or garbled is asked for
 * again, and replaced only by the right one; without a network all stays as it is. Put into the worker as text
 * (vite.config.ts), so it can use nothing from outside itself.
 */
export function keepWhole(worker: WorkerScope, files: readonly KeptFile[]): void {
  const { scope } = worker.registration;
  // the copy of the app in another folder has caches of its own
  const laterName = `later-${scope}`;
  const firstName = `workbox-precache-v2-${scope}`;
  const stamp = `${scope}looked-through`;
  const DAY_MS = 86_400_000;
  const addressOf = ({ url }: KeptFile): string => new URL(url, scope).href;
  const laterAddresses = new Set(files.filter((file) => file.later).map(addressOf));

  worker.addEventListener('fetch', (event) => {
    if (laterAddresses.has(event.request.url)) event.respondWith(kept(event.request));
  });
  worker.addEventListener('message', (event) => {
    const { data } = event;
    if (data !== 'keep whole' && data !== 'mend') return;
    const [answerTo] = event.ports;
    event.waitUntil(
      look(data === 'mend').then(
        () => answerTo?.postMessage(true),
        () => answerTo?.postMessage(false),
      ),
    );
  });

  async function kept(request: Request): Promise<Response> {
    const cache = await worker.caches.open(laterName);
    return (await cache.match(request.url)) ?? worker.fetch(request);
  }

  async function look(all: boolean): Promise<void> {
    const later = await worker.caches.open(laterName);
    const due = all || !(await lookedToday(later));
    await takeOver(later);
    for (const file of files) if (file.later) await mend(later, file, addressOf(file));
    for (const { url } of await later.keys())
      if (url !== stamp && !laterAddresses.has(url)) await later.delete(url);
    if (!due) return;
    const first = await worker.caches.open(firstName);
    for (const file of files) {
      const behind = file.revision === null ? '' : `?__WB_REVISION__=${file.revision}`;
      if (!file.later) await mend(first, file, addressOf(file) + behind);
    }
    await later.put(stamp, new Response(String(Date.now())));
  }

  async function lookedToday(later: Cache): Promise<boolean> {
    const at = Number(await (await later.match(stamp))?.text());
    return Date.now() - at < DAY_MS;
  }

  async function mend(cache: Cache, file: KeptFile, key: string): Promise<void> {
    const response = await cache.match(key);
    if (response !== undefined && (await integrityOf(response)) === file.integrity) return;
    // refused by the browser where it is not this file, whatever the host answers
    const fresh = await worker.fetch(addressOf(file), { integrity: file.integrity, cache: 'reload' });
    if (fresh.ok) await cache.put(key, fresh);
  }

  async function integrityOf(response: Response): Promise<string> {
    const digest = new Uint8Array(await crypto.subtle.digest('SHA-384', await response.arrayBuffer()));
    return `sha384-${btoa(String.fromCharCode(...digest))}`;
  }

  /** Until now all copies of the app under one host shared a cache: what is this one's moves into its own. */
  async function takeOver(later: Cache): Promise<void> {
    if (!(await worker.caches.has('later'))) return;
    const shared = await worker.caches.open('later');
    for (const request of await shared.keys()) {
      if (!request.url.startsWith(`${scope}assets/`)) continue;
      const response = await shared.match(request);
      const file = files.find((one) => one.later && addressOf(one) === request.url);
      // a garbled one is not taken over: it would be given until there is a network
      if (file && response && (await integrityOf(response.clone())) === file.integrity)
        await later.put(request, response);
      await shared.delete(request);
    }
    if ((await shared.keys()).length === 0) await worker.caches.delete('later');
  }
}
