import type { KeepFile, KeptFile } from './keep-file.ts';

/** What the worker's own scope gives; its types are not among the page's. */
interface WorkerScope {
  readonly caches: CacheStorage;
  readonly registration: { readonly scope: string };
  addEventListener(type: 'message', heard: (event: Told) => void): void;
}

interface Told {
  readonly data: unknown;
  readonly ports: readonly MessagePort[];
  waitUntil(work: Promise<unknown>): void;
}

/**
 * Runs in the service worker: sees to it that what is kept for offline use is this version's, byte for byte. All of it
 * is looked through once a day when a page says that it stands, or at once where it says that something did not load. A
 * file that is missing, empty or garbled is asked for again, and replaced only by the right one; without a network all
 * stays as it is. Put into the worker as text (src/build/worker.ts), so it can use nothing from outside itself.
 */
export function keepWhole(worker: WorkerScope, files: readonly KeptFile[], keepFile: KeepFile): void {
  const { scope } = worker.registration;
  const keptName = `workbox-precache-v2-${scope}`;
  // the copy of the app in another folder has a day of its own
  const lookedName = `looked-through-${scope}`;
  const stamp = `${scope}looked-through`;
  const DAY_MS = 86_400_000;

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

  async function look(atOnce: boolean): Promise<void> {
    await dropOlder();
    const looked = await worker.caches.open(lookedName);
    const at = Number(await (await looked.match(stamp))?.text());
    if (!atOnce && Date.now() - at < DAY_MS) return;
    const cache = await worker.caches.open(keptName);
    for (const file of files) await keepFile(cache, file);
    await looked.put(stamp, new Response(String(Date.now())));
  }

  /** Earlier versions kept some files apart: in a cache of this copy's own, before that in one that all copies shared. */
  async function dropOlder(): Promise<void> {
    await worker.caches.delete(`later-${scope}`);
    if (!(await worker.caches.has('later'))) return;
    const shared = await worker.caches.open('later');
    for (const { url } of await shared.keys())
      if (url.startsWith(`${scope}assets/`)) await shared.delete(url);
    if ((await shared.keys()).length === 0) await worker.caches.delete('later');
  }
}
