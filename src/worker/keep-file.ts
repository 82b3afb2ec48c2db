/** What the worker's own scope gives; its types are not among the page's. */
interface WorkerScope {
  readonly registration: { readonly scope: string };
  readonly fetch: typeof fetch;
}

/** A file of this version: its address below the app's folder, and what it is, byte for byte. */
export interface KeptFile {
  readonly url: string;
  /** 'sha384-…' */
  readonly integrity: string;
  /** behind its address in the list of what is kept; null where the name says it already */
  readonly revision: string | null;
}

/** Sees to it that a cache has a file, byte for byte; rejects where it has not, and it cannot be fetched. */
export type KeepFile = (cache: Cache, file: KeptFile) => Promise<void>;

/**
 * Runs in the service worker: a file that is missing, empty or garbled is asked for again, and replaced only by the
 * right one. Put into the worker as text (src/build/worker.ts), so it can use nothing from outside itself.
 */
export function fileKeeper(worker: WorkerScope): KeepFile {
  return async (cache, { url, integrity, revision }) => {
    const address = new URL(url, worker.registration.scope).href;
    const key = address + (revision === null ? '' : `?__WB_REVISION__=${revision}`);
    const response = await cache.match(key);
    if (response !== undefined && (await integrityOf(response)) === integrity) return;
    // refused by the browser where it is not this file, whatever the host answers
    const fresh = await worker.fetch(address, { integrity, cache: 'reload' });
    if (!fresh.ok) throw new Error(`${url}: ${fresh.status}`);
    await cache.put(key, fresh);
  };

  async function integrityOf(response: Response): Promise<string> {
    const digest = new Uint8Array(await crypto.subtle.digest('SHA-384', await response.arrayBuffer()));
    return `sha384-${btoa(String.fromCharCode(...digest))}`;
  }
}
