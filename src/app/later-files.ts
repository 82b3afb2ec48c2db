/** Where the worker looks for the files that come later; the same name stands in vite.config.ts. */
const CACHE = 'later';

/**
 * Brings onto this device, after the first screen stands, what nobody needs to begin knitting: the words of the other
 * language and the reader of written patterns. What comes first is small, and all of it is there later without a
 * network. Without one now it does nothing.
 */
export async function keepLaterFiles(): Promise<void> {
  if (!('caches' in globalThis) || !navigator.onLine) return;
  const answer = await fetch('later.json');
  if (!answer.ok) return;
  const files = (await answer.json()) as unknown;
  if (!Array.isArray(files)) return;
  const wanted = files.filter((file): file is string => typeof file === 'string');
  const cache = await caches.open(CACHE);
  for (const file of wanted) if (!(await cache.match(file))) await cache.add(file);
  const urls = new Set(wanted.map((file) => new URL(file, document.baseURI).href));
  for (const { url } of await cache.keys()) if (!urls.has(url)) await cache.delete(url);
}
