import { afterEach, beforeEach, expect, it, vi } from 'vitest';
import type * as FirstScreen from '../../src/pace/first-screen.ts';
import { afterFirstScreen, STANDS_AT_LATEST_MS } from '../../src/pace/order.ts';

/** A visit is a page: its files are read anew for each. */
let visit: typeof FirstScreen;

beforeEach(async () => {
  vi.useFakeTimers();
  vi.resetModules();
  visit = await import('../../src/pace/first-screen.ts');
});

afterEach(() => {
  vi.useRealTimers();
});

const done: string[] = [];
const doing = (what: string) => async () => void done.push(what);

beforeEach(() => {
  done.length = 0;
});

it('what can wait comes when the first screen stands, each after its time, whichever was asked for first', async () => {
  visit.later('worker', doing('worker'));
  visit.later('sentences', doing('sentences'));
  await vi.advanceTimersByTimeAsync(STANDS_AT_LATEST_MS);
  expect(done).toEqual([]);
  visit.firstScreenStands();
  await vi.advanceTimersByTimeAsync(afterFirstScreen.sentences);
  expect(done).toEqual(['sentences']);
  await vi.advanceTimersByTimeAsync(afterFirstScreen.worker);
  expect(done).toEqual(['sentences', 'worker']);
});

it('it comes in the end where no screen ever stands', async () => {
  visit.expectFirstScreen();
  visit.later('listeners', doing('listeners'));
  await vi.advanceTimersByTimeAsync(STANDS_AT_LATEST_MS - 1);
  expect(done).toEqual([]);
  await vi.advanceTimersByTimeAsync(2 + afterFirstScreen.listeners);
  expect(done).toEqual(['listeners']);
});

it('it can be left undone, before the screen stands and after', async () => {
  const before = visit.later('rest', doing('before'));
  const after = visit.later('rest', doing('after'));
  before();
  visit.firstScreenStands();
  await vi.advanceTimersByTimeAsync(0);
  after();
  await vi.advanceTimersByTimeAsync(1000);
  expect(done).toEqual([]);
});

it('a file that does not come then is no error that nobody hears of', async () => {
  visit.later('worker', () => Promise.reject(new TypeError('no network')));
  visit.firstScreenStands();
  await vi.advanceTimersByTimeAsync(1000);
});
