import { createHash } from 'node:crypto';
import { expect, it } from 'vitest';
import { fileKeeper, type KeptFile } from '../../src/worker/keep-file.ts';
import { keepWhole } from '../../src/worker/keep-whole.ts';
import { cachesInMemory } from './caches-in-memory.ts';

const scope = 'https://copy.example/ridgeline/';
const keptName = `workbox-precache-v2-${scope}`;
const integrityOf = (text: string) => `sha384-${createHash('sha384').update(text).digest('base64')}`;
const files: readonly KeptFile[] = [
  { url: 'assets/reader.js', integrity: integrityOf('read()'), revision: null },
  { url: 'index.html', integrity: integrityOf('<p>'), revision: 'r1' },
];

/** The worker over such caches, and a host that answers so; tells it something and gives its answer. */
function workerOver(caches: CacheStorage, host: (url: string, how?: RequestInit) => Promise<Response>) {
  let heard: ((event: object) => void) | undefined;
  const worker = {
    caches,
    registration: { scope },
    fetch: host,
    addEventListener: (_: string, listener: (event: object) => void) => {
      heard = listener;
    },
  };
  keepWhole(worker as never, files, fileKeeper(worker as never));
  return async (data: string): Promise<boolean | undefined> => {
    let answer: boolean | undefined;
    const works: Promise<unknown>[] = [];
    heard?.({
      data,
      ports: [{ postMessage: (whole: boolean) => (answer = whole) }],
      waitUntil: (work: Promise<unknown>) => works.push(work),
    });
    await Promise.all(works);
    return answer;
  };
}

const noNetwork = () => Promise.reject(new TypeError('no network'));

it('what earlier versions kept apart is dropped, and nothing of another copy of the app', async () => {
  const { all, caches } = cachesInMemory();
  all.set(`later-${scope}`, new Map([[`${scope}assets/reader.js`, 'read()']]));
  all.set(
    'later',
    new Map([
      [`${scope}assets/reader.js`, 'read()'],
      ['https://copy.example/other/assets/parts.js', 'parts()'],
    ]),
  );
  await workerOver(caches, noNetwork)('keep whole');
  expect(all.has(`later-${scope}`)).toBe(false);
  expect([...(all.get('later')?.keys() ?? [])]).toEqual(['https://copy.example/other/assets/parts.js']);
});

it('a file that is missing or garbled is asked for again, past every store of answers; once a day, or at once', async () => {
  const { all, caches } = cachesInMemory();
  const reader = `${scope}assets/reader.js`;
  const page = `${scope}index.html?__WB_REVISION__=r1`;
  all.set(keptName, new Map([[reader, '<!doctype html>']]));
  const asked: unknown[] = [];
  const tell = workerOver(caches, async (url, how) => {
    asked.push([url, how?.cache, how?.integrity !== undefined]);
    return new Response(url === reader ? 'read()' : '<p>');
  });
  const kept = () => [...(all.get(keptName) ?? [])];
  const whole = [
    [reader, 'read()'],
    [page, '<p>'],
  ];
  expect(await tell('keep whole')).toBe(true);
  expect(kept()).toEqual(whole);
  expect(asked).toEqual([
    [reader, 'reload', true],
    [`${scope}index.html`, 'reload', true],
  ]);
  all.get(keptName)?.set(reader, '');
  await tell('keep whole');
  expect(kept()[0]).toEqual([reader, '']);
  expect(await tell('mend')).toBe(true);
  expect(kept()).toEqual(whole);
  expect(asked).toHaveLength(3);
});

it('without a network all stays as it is', async () => {
  const { all, caches } = cachesInMemory();
  all.set(keptName, new Map([[`${scope}assets/reader.js`, 'half']]));
  expect(await workerOver(caches, noNetwork)('mend')).toBe(false);
  expect([...(all.get(keptName)?.values() ?? [])]).toEqual(['half']);
});
