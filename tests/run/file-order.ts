import { createHash } from 'node:crypto';
import { readFileSync } from 'node:fs';
import { BaseSequencer, type TestSpecification } from 'vitest/node';
import { seed } from '../seed.ts';

/** Files that take long in a browser, the longest first: begun last, one would run on alone at the end. */
const longest = [
  'every-screen',
  'update',
  'walk',
  'count',
  'to-device',
  'faults',
  'offline',
  'languages',
  'hand',
  'editor',
  'speech',
  'draft',
  'kept-whole',
  'in-sizes',
];

const place = (path: string): number => {
  const at = longest.findIndex((name) => path.endsWith(`/${name}.test.ts`));
  return at === -1 ? longest.length : at;
};

const shuffled = (path: string): string =>
  createHash('sha1')
    .update(`${seed} ${path.slice(path.lastIndexOf('/tests/'))}`)
    .digest('hex');

/** To count calls goes through all that the process holds, and slows whatever runs in it: least where little has been run. */
const countsWork = (path: string): boolean => readFileSync(path, 'utf8').includes('counted-work.ts');

const by = <T>(files: readonly T[], keyOf: (file: T) => string | number): T[] =>
  files
    .map((file) => ({ file, key: keyOf(file) }))
    .sort((a, b) => (a.key < b.key ? -1 : a.key > b.key ? 1 : 0))
    .map(({ file }) => file);

/** In a browser the longest file begins; in Node they run in an order of their own, that of the seed, those first that count work: none leans on one before it. */
export class FileOrder extends BaseSequencer {
  override async sort(files: TestSpecification[]): Promise<TestSpecification[]> {
    const inBrowser = files.filter(({ project }) => project.name === 'browser');
    const inNode = files.filter(({ project }) => project.name !== 'browser');
    return [
      ...by(inNode, ({ moduleId }) => `${countsWork(moduleId) ? 0 : 1} ${shuffled(moduleId)}`),
      ...by(await super.sort(inBrowser), ({ moduleId }) => place(moduleId)),
    ];
  }
}
