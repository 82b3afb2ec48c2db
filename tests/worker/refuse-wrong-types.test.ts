import { expect, it } from 'vitest';
import { refuseWrongTypes } from '../../src/worker/refuse-wrong-types.ts';

const address = 'https://copy.example/ridgeline/assets/reader.js';
const integrity = `sha384-${'A'.repeat(64)}`;

type Answer = 'a page' | 'a script' | 'nothing';

/** A host and the browser's own store of answers: what each request was answered by the one or the other. */
function workerWith(stored: Answer, host: Answer) {
  const asked: string[] = [];
  const worker = {
    fetch: async (input: RequestInfo | URL) => {
      const { cache } = input as Request;
      asked.push(cache);
      const answer = cache === 'reload' ? host : stored;
      if (answer === 'nothing') throw new TypeError('no network');
      const type = answer === 'a page' ? 'text/html' : 'text/javascript';
      const response = new Response(answer, { headers: { 'Content-Type': type } });
      Object.defineProperty(response, 'url', { value: address });
      return response;
    },
  };
  refuseWrongTypes(worker);
  const ask = (how: RequestInit) =>
    worker.fetch(new Request(address, how)).then(
      (response) => response.text(),
      () => 'refused',
    );
  return { ask, asked };
}

it('a page in the place of a script is refused', async () => {
  expect(await workerWith('a page', 'a page').ask({})).toBe('refused');
  expect(await workerWith('a script', 'a page').ask({})).toBe('a script');
});

it('a wrong answer that the browser has stored is not the last word on a file that must be this version’s', async () => {
  for (const stored of ['a page', 'nothing'] as const) {
    const { ask, asked } = workerWith(stored, 'a script');
    expect(await ask({ integrity })).toBe('a script');
    expect(asked).toEqual(['default', 'reload']);
  }
  const wrong = workerWith('a page', 'a page');
  expect(await wrong.ask({ integrity })).toBe('refused');
  expect(wrong.asked).toHaveLength(2);
  expect(await workerWith('a script', 'nothing').ask({ integrity })).toBe('a script');
});

it('asked for past that store already, or with no bytes named, it is asked for once', async () => {
  const past = workerWith('a script', 'a page');
  expect(await past.ask({ integrity, cache: 'reload' })).toBe('refused');
  expect(past.asked).toEqual(['reload']);
  const any = workerWith('a page', 'a script');
  expect(await any.ask({})).toBe('refused');
  expect(any.asked).toEqual(['default']);
});
