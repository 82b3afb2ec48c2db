/**
 * Runs first in the service worker: a host that answers a script with a page, or under a type that no browser runs,
 * must not have it stored as a part of the app. The installation fails then, and the installed version stays.
 * Put into the worker as text (vite.config.ts), so it can use nothing from outside itself.
 */
export function refuseWrongTypes(worker: { fetch: typeof fetch }): void {
  const ask = worker.fetch.bind(worker);
  worker.fetch = async (input, init) => {
    const response = await ask(input, init);
    const path = new URL(response.url || String(input instanceof Request ? input.url : input)).pathname;
    const type = response.headers.get('Content-Type') ?? '';
    const wrong =
      (path.endsWith('.js') && !/^(?:text|application)\/(?:x-)?javascript\b/.test(type)) ||
      (path.endsWith('.css') && !/^text\/css\b/.test(type));
    if (response.ok && wrong) throw new TypeError(`${path} came as ${type}`);
    return response;
  };
}
