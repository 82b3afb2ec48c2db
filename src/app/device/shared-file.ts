/** A file that another app shared: the worker has kept it (src/worker/take-shared.ts); it is handed out once. */
export async function takeSharedFile(): Promise<File | undefined> {
  if (!('caches' in globalThis)) return undefined;
  const kept = await caches.match('file', { cacheName: 'shared' });
  if (kept === undefined) return undefined;
  await (await caches.open('shared')).delete('file');
  return new File([await kept.blob()], 'shared');
}
