import { vi } from 'vitest';
import { imports } from '../closure.ts';
import type { ReachedByFile, ReachedByTest } from '../reach.ts';
import { LIMIT, spent } from './spent.ts';
import type { Written } from './stand-in.ts';
import { makeReady, read, workOne } from './work.ts';

declare global {
  var __reached: Uint8Array;
  /** a source begins to be read, all that it imports being read; it has been read to its end */
  var __begins: () => void;
  var __isRead: (source: string) => void;
}

/** So many files of tests have their modules in common, since to read those costs more than to work most tests. */
const IN_COMMON = 30;

/** What is reached while a source is read, by the source: whoever imports it later reaches that as well. */
const whileRead = new Map<string, readonly number[]>();

/** Works all tests of some files, and takes down the marks that each reached. */
export async function* reachOfAll(
  root: string,
  files: readonly string[],
  marks: number,
): AsyncGenerator<ReachedByFile> {
  globalThis.__reached = new Uint8Array(marks);
  let before: readonly number[] = [];
  globalThis.__begins = () => {
    before = taken();
  };
  globalThis.__isRead = (source) => {
    const hits = taken();
    whileRead.set(source, hits);
    for (const mark of [...before, ...hits]) globalThis.__reached[mark] = 1;
  };
  const importedBy = imports(root);
  let common = 0;
  for (const file of files) {
    if (common % IN_COMMON === 0) vi.resetModules();
    common += 1;
    const reached = await reachOf(root, file, importedBy(file));
    const isSound = reached.tests.every(({ red }) => red === undefined);
    if (isSound) yield reached;
    else {
      // what a test left behind may have made it red: it is read by itself, and leaves nothing to the next
      vi.resetModules();
      yield await reachOf(root, file, importedBy(file));
      common = 0;
    }
  }
}

async function reachOf(root: string, file: string, imported: readonly string[]): Promise<ReachedByFile> {
  let tests: readonly Written[] = [];
  taken();
  try {
    ({ tests } = await read(`${root}/${file}`));
    for (const { group } of tests) await makeReady(group);
  } catch (error) {
    return { file, whole: [], tests: [{ name: 'cannot be read', ms: 0, red: String(error), hits: [] }] };
  }
  const whole = [...new Set([...taken(), ...imported.flatMap((source) => whileRead.get(source) ?? [])])];
  const reached: ReachedByTest[] = [];
  for (const test of tests) {
    const began = spent();
    const red = await workOne(test, LIMIT);
    reached.push({ name: test.name, ms: Math.ceil(spent() - began), red, hits: taken() });
  }
  return { file, whole, tests: reached };
}

function taken(): number[] {
  const hits: number[] = [];
  const reached = globalThis.__reached;
  // asked for each source that is read and each test: most of the marks are not set
  for (let mark = reached.indexOf(1); mark >= 0; mark = reached.indexOf(1, mark + 1)) hits.push(mark);
  reached.fill(0);
  return hits;
}
