import { vi } from 'vitest';
import type { ReachedByFile, ReachedByTest } from '../reach.ts';
import { LIMIT, spent } from './spent.ts';
import type { Written } from './stand-in.ts';
import { makeReady, read, workOne } from './work.ts';

declare global {
  var __reached: Uint8Array;
}

/** Works all tests of a file in fresh modules, and takes down the marks that each reached. */
export async function reachOf(root: string, file: string, marks: number): Promise<ReachedByFile> {
  globalThis.__reached = new Uint8Array(marks);
  vi.resetModules();
  let tests: readonly Written[] = [];
  try {
    ({ tests } = await read(`${root}/${file}`));
    for (const { group } of tests) await makeReady(group);
  } catch (error) {
    return { file, whole: [], tests: [{ name: 'cannot be read', ms: 0, red: String(error), hits: [] }] };
  }
  const whole = taken();
  const reached: ReachedByTest[] = [];
  for (const test of tests) {
    const began = spent();
    const red = await workOne(test, LIMIT);
    reached.push({ name: test.name, ms: Math.ceil(spent() - began), red, hits: taken() });
  }
  return { file, whole, tests: reached };
}

function taken(): number[] {
  const hits = [...globalThis.__reached.keys()].filter((mark) => globalThis.__reached[mark] === 1);
  globalThis.__reached.fill(0);
  return hits;
}
