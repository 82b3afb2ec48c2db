import { createHash } from 'node:crypto';
import { writeFileSync } from 'node:fs';
import { join, relative } from 'node:path';
import { afterAll, afterEach, beforeEach, expect, type TestContext } from 'vitest';
import type { Reached } from './reach.ts';

/** Writes down which of the marks in the copied sources each test reached (reach.ts sets them). */

declare global {
  var __reached: Uint8Array;
}

const marks = Number(process.env.RIDGELINE_MARKS);
globalThis.__reached = new Uint8Array(marks);
const seen: Reached[] = [];
let began = 0;

const file = relative(process.env.RIDGELINE_ROOT ?? '', expect.getState().testPath ?? '');

function take(test: string | undefined): void {
  const places = [...globalThis.__reached.keys()].filter((mark) => globalThis.__reached[mark] === 1);
  globalThis.__reached.fill(0);
  // a test that calls nothing itself may look at what was made while its file was read
  if (places.length > 0 || test !== undefined)
    seen.push({ file, test, ms: Math.round(performance.now() - began), places });
}

/** As the runner matches names: those of the groups and of the test itself, with a space between. */
function fullName({ task }: TestContext): string {
  const names = [task.name];
  for (let { suite } = task; suite !== undefined; suite = suite.suite as typeof suite)
    names.unshift(suite.name);
  return names.join(' ');
}

beforeEach(() => {
  take(undefined);
  began = performance.now();
});
afterEach((context) => take(fullName(context)));
afterAll(() => {
  take(undefined);
  const name = createHash('sha1').update(file).digest('hex');
  writeFileSync(join(process.env.RIDGELINE_REACH ?? '', `${name}.json`), JSON.stringify(seen));
});
