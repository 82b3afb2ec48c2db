import { createHash } from 'node:crypto';
import { expect, it, vi } from 'vitest';
import { type KeptFile, keepWhole } from '../../src/worker/keep-whole.ts';

/** The browser's caches in memory, as far as the worker asks of them. */
function cachesInMemory() {
  const all = new Map<string, Map<string, string>>();
  const urlOf = (of: Request | string) => (typeof of === 'string' ? of : of.url);
  const open = async (name: string) => {
    const held = all.get(name) ?? new Map<string, string>();
    all.set(name, held);
    return {
      match: async (of: Request | string) => {
        const text = held.get(urlOf(of));
        return text === undefined ? undefined : new Response(text);
      },
      put: async (of: Request | string, response: Response) =>
        void held.set(urlOf(of), await response.text()),
      delete: async (of: Request | string) => held.delete(urlOf(of)),
      keys: async () => [...held.keys()].map((url) => new Request(url)),
    };
  };
  const caches = {
    open,
    has: async (name: string) => all.has(name),
    delete: async (name: string) => all.delete(name),
  };
  return { all, caches: caches as unknown as CacheStorage };
}

const scope = 'https://copy.example/ridgeline/';
const file = (url: string, text: string): KeptFile => ({
  url,
  integrity: `sha384-${createHash('sha384').update(text).digest('base64')}`,
  revision: null,
  later: true,
});

it('what copies of the app kept together is taken over only where it is this version’s, byte for byte', async () => {
  const { all, caches } = cachesInMemory();
  const files = [file('assets/reader.js', 'read()'), file('assets/parts.js', 'parts()')];
  all.set(
    'later',
    new Map([
      [`${scope}assets/reader.js`, 'read()'],
      [`${scope}assets/parts.js`, '<!doctype html>'],
      ['https://copy.example/other/assets/parts.js', 'parts()'],
    ]),
  );
  const heard = new Map<string, (event: never) => void>();
  const worker = {
    caches,
    registration: { scope },
    // no network: nothing is mended
    fetch: () => Promise.reject(new TypeError('no network')),
    addEventListener: (type: string, listener: (event: never) => void) => heard.set(type, listener),
  };
  keepWhole(worker as never, files);
  const answer = vi.fn<(whole: boolean) => void>();
  const works: Promise<unknown>[] = [];
  const told = {
    data: 'keep whole',
    ports: [{ postMessage: answer }],
    waitUntil: (work: Promise<unknown>) => works.push(work),
  };
  heard.get('message')?.(told as never);
  await Promise.all(works);
  expect([...(all.get(`later-${scope}`) ?? [])]).toEqual([[`${scope}assets/reader.js`, 'read()']]);
  expect([...(all.get('later')?.keys() ?? [])]).toEqual(['https://copy.example/other/assets/parts.js']);
  expect(answer).toHaveBeenCalledWith(false);
});
