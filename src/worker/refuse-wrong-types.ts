/**
 * Runs first in the service worker: a host that answers a script with a page, or under a type that no browser runs,
 * must not have it stored as a part of the app. The installation fails then, and the installed version stays.
 * What was answered wrongly may lie in the browser's own store of answers, for long if the host says so: what must be
 * this version's and is not is asked for once more, past that store.
 * Put into the worker as text (src/build/worker.ts), so it can use nothing from outside itself.
 */
export function refuseWrongTypes(worker: { fetch: typeof fetch }): void {
  const ask = worker.fetch.bind(worker);
  worker.fetch = (input, init) => {
    const first = asked(input, init);
    const mustBe = input instanceof Request && input.integrity !== '' && input.cache !== 'reload';
    return mustBe ? first.catch(() => asked(new Request(input, { cache: 'reload' }))) : first;
  };

  async function asked(input: RequestInfo | URL, init?: RequestInit): Promise<Response> {
    const response = await ask(input, init);
    const path = new URL(response.url || String(input instanceof Request ? input.url : input)).pathname;
    const type = response.headers.get('Content-Type') ?? '';
    const wrong =
      (path.endsWith('.js') && !/^(?:text|application)\/(?:x-)?javascript\b/.test(type)) ||
      (path.endsWith('.css') && !/^text\/css\b/.test(type));
    if (response.ok && wrong) throw new TypeError(`${path} came as ${type}`);
    return response;
  }
}
