/** A file that another app shared: the worker has kept it (src/worker/take-shared.ts); it is handed out once. */
export async function takeSharedFile(): Promise<File | undefined> {
  const kept = await takeShared('file');
  return kept && new File([await kept.blob()], 'shared');
}

/** The same of a text that is no link of ours. */
export const takeSharedText = async (): Promise<string | undefined> => (await takeShared('text'))?.text();

async function takeShared(what: 'file' | 'text'): Promise<Response | undefined> {
  if (!('caches' in globalThis)) return undefined;
  // of this copy of the app: another one may stand under the same host
  const cacheName = `shared-${new URL('./', document.baseURI).href}`;
  const kept = await caches.match(what, { cacheName });
  if (kept !== undefined) await (await caches.open(cacheName)).delete(what);
  return kept;
}
