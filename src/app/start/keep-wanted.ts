import type { Language } from '../../words/languages.ts';

/**
 * What is kept for offline use when it is wanted: a language, what reads a kind of file, what publishes a design or draws
 * codes, what mends one, what says and reads how one is made up.
 */
export type Wanted = Language | 'pdf' | 'docx' | 'publishing' | 'mends' | 'print' | 'sewing';

/**
 * Has the worker keep something for offline use (src/worker/keep-wanted.ts). Gives whether it is kept: not where
 * there is no worker, no network, or no room.
 */
export function keepWanted(worker: ServiceWorker | undefined, wanted: Wanted): Promise<boolean> {
  if (worker === undefined) return Promise.resolve(false);
  const { port1, port2 } = new MessageChannel();
  worker.postMessage(`keep wanted ${wanted}`, [port2]);
  return new Promise((resolve) => {
    port1.onmessage = ({ data }) => {
      resolve(data === true);
      port1.close();
    };
  });
}

/** Has it kept from now on, once a worker runs; at a first visit that is a moment later. */
export async function keepFromNowOn(wanted: Wanted): Promise<void> {
  const registered = await globalThis.navigator?.serviceWorker?.ready;
  if (registered) await keepWanted(registered.active ?? undefined, wanted);
}
