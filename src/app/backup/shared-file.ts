/** A file that another app shared: the worker has kept it (src/worker/take-shared.ts); it is handed out once. */
export async function takeSharedFile(): Promise<File | undefined> {
  if (!('caches' in globalThis)) return undefined;
  // of this copy of the app: another one may stand under the same host
  const cacheName = `shared-${new URL('./', document.baseURI).href}`;
  const kept = await caches.match('file', { cacheName });
  if (kept === undefined) return undefined;
  await (await caches.open(cacheName)).delete('file');
  return new File([await kept.blob()], 'shared');
}
