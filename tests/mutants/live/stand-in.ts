/**
 * What the tests of a copy import in the place of vitest: its `expect` and `vi` as they are; groups and tests are only
 * written down, to be worked as often and in such an order as they are asked for (work.ts).
 */
export { expect, vi } from 'vitest';

type Work = (...given: unknown[]) => unknown;

export interface Group {
  readonly name: string;
  readonly above: Group | undefined;
  readonly beforeAll: Work[];
  readonly beforeEach: Work[];
  readonly afterEach: Work[];
  ready: boolean;
}

export interface Written {
  readonly name: string;
  readonly group: Group;
  readonly work: () => unknown;
}

export interface TestFile {
  group: Group;
  readonly tests: Written[];
}

declare global {
  /** the file that is being read; it outlives a fresh start of all modules */
  var __file: TestFile;
}

export const groupOf = (name: string, above?: Group): Group => ({
  name,
  above,
  beforeAll: [],
  beforeEach: [],
  afterEach: [],
  ready: false,
});

function describeIt(name: string, body: Work, given: readonly unknown[] = []): void {
  const { group } = globalThis.__file;
  globalThis.__file.group = groupOf(name, group);
  body(...given);
  globalThis.__file.group = group;
}

function write(name: string, work: Work, given: readonly unknown[] = []): void {
  const { group, tests } = globalThis.__file;
  const names = [name];
  for (let over: Group | undefined = group; over?.above !== undefined; over = over.above)
    names.unshift(over.name);
  tests.push({ name: names.join(' '), group, work: () => work(...given) });
}

type Take = (name: string, work: Work, given?: readonly unknown[]) => void;

/** As `it.each` does: a list in a list gives its entries one by one. */
const each = (take: Take) => (cases: readonly unknown[]) => (name: string, work: Work) => {
  for (const one of cases) take(name, work, Array.isArray(one) ? one : [one]);
};

/** A time limit may stand before or after the work; it is not the test's own here. */
const plain = (take: Take) => (name: string, work: Work | object, other?: Work | number) =>
  take(name, (typeof work === 'function' ? work : other) as Work);

export const describe = Object.assign(plain(describeIt), { each: each(describeIt) });
export const it = Object.assign(plain(write), { each: each(write) });

export const beforeAll = (work: Work, _ms?: number) => void globalThis.__file.group.beforeAll.push(work);
export const beforeEach = (work: Work) => void globalThis.__file.group.beforeEach.push(work);
export const afterEach = (work: Work) => void globalThis.__file.group.afterEach.unshift(work);
/** What is done after all of a file's tests: they may be asked for again. */
export const afterAll = (_work: Work): void => undefined;
