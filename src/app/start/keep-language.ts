import type { Language } from '../../words/languages.ts';

/**
 * Has the worker keep a language for offline use (src/worker/keep-languages.ts). Gives whether it is kept: not where
 * there is no worker, no network, or no room.
 */
export function keepLanguage(worker: ServiceWorker | undefined, language: Language): Promise<boolean> {
  if (worker === undefined) return Promise.resolve(false);
  const { port1, port2 } = new MessageChannel();
  worker.postMessage(`keep language ${language}`, [port2]);
  return new Promise((resolve) => {
    port1.onmessage = ({ data }) => {
      resolve(data === true);
      port1.close();
    };
  });
}
