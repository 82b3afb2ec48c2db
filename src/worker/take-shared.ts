/** What the worker's own scope gives; its types are not among the page's. */
interface WorkerScope {
  readonly caches: CacheStorage;
  readonly registration: { readonly scope: string };
  addEventListener(type: 'fetch', heard: (event: SharedEvent) => void): void;
}

interface SharedEvent {
  readonly request: Request;
  respondWith(answer: Promise<Response>): void;
}

/**
 * Runs in the service worker: what another app shares comes as a form (share_target in src/build/install.ts), which no static
 * host could take. A file and a text are kept for the page (src/app/backup/shared-file.ts), a link of ours goes on in the
 * address. Nothing leaves the device. Put into the worker as text, so it can use nothing from outside itself.
 */
export function takeShared(worker: WorkerScope): void {
  worker.addEventListener('fetch', (event) => {
    const { request } = event;
    if (request.method === 'POST' && request.mode === 'navigate') event.respondWith(goOn(request));
  });

  async function goOn(request: Request): Promise<Response> {
    const form = await request.formData();
    const start = new URL(worker.registration.scope);
    const file = form.get('file');
    if (file instanceof File) {
      const cache = await worker.caches.open(`shared-${worker.registration.scope}`);
      await cache.put('file', new Response(file));
      start.hash = '/backup';
      return Response.redirect(start.href, 303);
    }
    const said = [form.get('url'), form.get('text')].filter(
      (one): one is string => typeof one === 'string' && one !== '',
    );
    const link = said.find((one) => one.includes('#/open/'));
    if (link !== undefined) start.searchParams.set('text', link);
    else if (said.length > 0) {
      // a text may be longer than an address, and does not belong into one
      const cache = await worker.caches.open(`shared-${worker.registration.scope}`);
      await cache.put('text', new Response(said.reverse().join('\n')));
      start.hash = '/read';
    }
    return Response.redirect(start.href, 303);
  }
}
