/** Where the worker looks for a language's words; the same name stands in vite.config.ts. */
const CACHE = 'languages';

/**
 * Brings the words of the other language onto this device, after the first screen stands: what is needed to knit
 * comes first and is small, and a language chosen later is still there without a network. Without one it does nothing.
 */
export async function keepLanguages(): Promise<void> {
  if (!('caches' in globalThis) || !navigator.onLine) return;
  const answer = await fetch('languages.json', { cache: 'no-cache' });
  if (!answer.ok) return;
  const files = (await answer.json()) as unknown;
  if (!Array.isArray(files)) return;
  const wanted = files.filter((file): file is string => typeof file === 'string');
  const cache = await caches.open(CACHE);
  for (const file of wanted) if (!(await cache.match(file))) await cache.add(file);
  const urls = new Set(wanted.map((file) => new URL(file, document.baseURI).href));
  for (const { url } of await cache.keys()) if (!urls.has(url)) await cache.delete(url);
}
