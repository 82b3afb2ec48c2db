/** The test runner's runs that `npm test` makes: in a browser, and in Node. */
import { seed } from '../seed.ts';
import { byNodeItself } from './in-node/by-node.ts';
import { byTheRunner } from './in-node/by-the-runner.ts';
import type { Step } from './steps.ts';

export interface TestStep extends Step {
  /** what it counted, for each test that failed the reason */
  readonly report: string;
  /** a file that fails in it is tried once more when nothing runs beside it */
  readonly isTriedAgain: boolean;
}

type Project = 'browser' | 'unit';

/** No unit test leans on one before it: they run in an order of their own, that of the seed, as their files do (`FileOrder`). */
const order = ['--sequence.shuffle.tests', `--sequence.seed=${seed}`];

/**
 * A unit test's code runs for seconds: what Node compiles once more, and better, for code that runs for long took a third of
 * their work, so a function is to have run eight times as much before (in bytes of its code; 132 KB by default).
 */
const shortLived = '--interrupt-budget=1000000';

const without = (files: readonly string[]) => files.map((file) => `--exclude=${file}`);

const runner = (project: Project, report: string, flags: readonly string[], node: readonly string[] = []) => [
  process.execPath,
  ...node,
  'node_modules/vitest/vitest.mjs',
  'run',
  `--project=${project}`,
  ...flags,
  // what has no test for a path has nothing to do; that some test was made is asked in the end
  '--passWithNoTests',
  '--reporter=default',
  '--reporter=json',
  `--outputFile.json=${report}`,
];

const reportAt = (name: string) => `.cache/results/${name}.json`;

/** Which files a run makes: those in whose path one of `paths` is found, all where none is given, but for those `leftOut`. */
export interface Asked {
  readonly paths: readonly string[];
  readonly leftOut: readonly string[];
}

/** The tests in a browser. */
export const inBrowser = (
  { paths, leftOut }: Asked,
  name = 'browser tests',
  report = 'browser',
): TestStep => ({
  name,
  report: reportAt(report),
  command: runner('browser', reportAt(report), [...paths, ...without(leftOut)]),
  isTriedAgain: true,
});

const inUnit = (name: string, report: string, flags: readonly string[]): TestStep => ({
  name,
  report: reportAt(report),
  command: runner('unit', reportAt(report), [...flags, ...order], [shortLived]),
  isTriedAgain: false,
  // a page that waits for a processor may answer later than its test waits; what only counts has time
  yields: true,
});

/** These files in Node once more, loaded by the runner: it knows where a line stood in its source. */
export const toldAnew = (files: readonly string[]): TestStep => inUnit('told once more', 'told', files);

/** The same in Node: those whose modules Node loads, and those that the test runner loads. */
export function inNode({ paths, leftOut }: Asked): TestStep[] {
  const begun = byTheRunner
    .filter((file) => !leftOut.includes(file))
    .filter((file) => paths.length === 0 || paths.some((path) => file.includes(path)));
  return [
    {
      ...inUnit('unit tests', 'unit', [...paths, ...without([...leftOut, ...byTheRunner])]),
      env: byNodeItself,
    },
    ...(begun.length > 0 ? [inUnit('unit tests loaded by the runner', 'by-runner', begun)] : []),
  ];
}
