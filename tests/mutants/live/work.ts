import { setImmediate, setTimeout } from 'node:timers/promises';
import { type Group, groupOf, type TestFile, type Written } from './stand-in.ts';

/** Reads files of tests and works single tests of theirs, in the process that this runs in. */

const atOnce = setImmediate;
const later = setTimeout;

/** What nobody waited for went wrong: it makes the test red that it came up in. */
const strays: unknown[] = [];
process.on('unhandledRejection', (reason) => strays.push(reason));

/** Reads a file anew or for the first time: its tests, or what is thrown while it is read. */
export async function read(path: string): Promise<TestFile> {
  globalThis.__file = { group: groupOf(''), tests: [] };
  const file = globalThis.__file;
  await import(/* @vite-ignore */ path);
  return file;
}

/** Works a test, with what its groups do before and after it; what was thrown, or undefined. */
export async function workOne(test: Written, ms: number): Promise<string | undefined> {
  strays.length = 0;
  const tooLong = new AbortController();
  const { signal } = tooLong;
  const thrown = await Promise.race([
    workWithin(test),
    later(ms, `not done after ${ms} ms`, { signal }).catch(() => undefined),
  ]);
  tooLong.abort();
  await atOnce();
  const [stray] = strays;
  return thrown ?? (stray === undefined ? undefined : `outside of the test: ${said(stray)}`);
}

const groupsOf = (group: Group): Group[] =>
  group.above === undefined ? [group] : [...groupsOf(group.above), group];

async function workWithin({ group, work }: Written): Promise<string | undefined> {
  const groups = groupsOf(group);
  const ends: unknown[] = [];
  let thrown: string | undefined;
  try {
    await makeReady(group);
    for (const { beforeEach } of groups) for (const before of beforeEach) ends.push(await before());
    await work();
  } catch (error) {
    thrown = said(error);
  }
  const afters = [...groups].reverse().flatMap(({ afterEach }) => afterEach);
  for (const end of [...afters, ...ends])
    try {
      if (typeof end === 'function') await end();
    } catch (error) {
      thrown ??= said(error);
    }
  return thrown;
}

/** What is done once for all tests of a group, if it is not yet. */
export async function makeReady(group: Group): Promise<void> {
  for (const one of groupsOf(group)) {
    if (one.ready) continue;
    for (const before of one.beforeAll) await before();
    one.ready = true;
  }
}

const said = (error: unknown): string =>
  error instanceof Error ? `${error.name}: ${error.message}` : String(error);
