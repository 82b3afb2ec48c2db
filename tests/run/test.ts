/**
 * `npm test`: the checks, then the tests in Node and beside them those in a real browser. All of them run, whatever
 * fails first; the last line counts the checks and the tests that were really made. `npm run test:unit` makes those in
 * Node alone, `npm test -- PATH` those in whose path PATH is found, in Node or in a browser.
 */
import { mkdirSync, rmSync, writeFileSync } from 'node:fs';
import { parseArgs } from 'node:util';
import { seed } from '../seed.ts';
import { add, failuresOf, printTally, type Tally, tallyReport } from './results.ts';
import { checks, printStep, runStep, runTogether, type Step } from './steps.ts';

const { values, positionals: paths } = parseArgs({
  allowPositionals: true,
  options: { project: { type: 'string', multiple: true } },
});

/**
 * No unit test leans on one before it: they run in an order of their own, that of the seed (which is printed). In a
 * browser the longest file begins.
 */
const order: Readonly<Record<string, readonly string[]>> = {
  unit: ['--sequence.shuffle.files', '--sequence.shuffle.tests', `--sequence.seed=${seed}`],
};

const reportPath = (project: string) => `.cache/results/${project}.json`;

const testStep = (project: string): Step => ({
  name: `${project} tests`,
  command: [
    process.execPath,
    'node_modules/vitest/vitest.mjs',
    'run',
    ...paths,
    `--project=${project}`,
    ...(order[project] ?? []),
    // what has no test for a path has nothing to do; that some test was made is asked below
    '--passWithNoTests',
    '--reporter=default',
    '--reporter=json',
    `--outputFile.json=${reportPath(project)}`,
  ],
});

rmSync('.cache/results', { recursive: true, force: true });
mkdirSync('.cache/results', { recursive: true });
const { project: projects = ['unit', 'browser'] } = values;
const isWhole = paths.length === 0 && values.project === undefined;
const checked = isWhole ? checks.map(runStep) : [];
const tested = await runTogether(projects.map(testStep));

const passed = checked.filter((step) => step.passed).length;
const inChecks: Tally = { passed, failed: checked.length - passed };
const inTests = tested.map((step, index) => {
  const tally = tallyReport(reportPath(projects[index] ?? ''));
  return step.passed || tally.failed > 0 ? tally : add(tally, { passed: 0, failed: 1 });
});
const total = [inChecks, ...inTests].reduce(add);

const failures = projects.flatMap((project) => failuresOf(reportPath(project)));
if (failures.length > 0) console.log(`\n${failures.join('\n\n')}`);
console.log(`\n${[...checked, ...tested].map(printStep).join('\n')}\n`);
if (total.passed + total.failed === 0) console.log(`No test has ${paths.join(' or ')} in its path.`);
console.log(printTally(total));
writeFileSync('.cache/results/tally.txt', `${printTally(total)}\n`);
if (total.failed > 0 || total.passed === 0) process.exitCode = 1;
