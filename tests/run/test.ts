/**
 * `npm test`: the tests in a real browser, and beside them those in Node and the checks. All of them run, whatever
 * fails first; a file that failed in a browser is tried once more by itself. The last line counts the checks and the tests that were really made. `npm run test:unit` makes those in
 * Node alone, `npm test -- PATH` those in whose path PATH is found, in Node or in a browser.
 */
import { mkdirSync, rmSync, writeFileSync } from 'node:fs';
import { parseArgs } from 'node:util';
import { seed } from '../seed.ts';
import { onceMore } from './once-more.ts';
import { resting } from './resting.ts';
import { add, failedFiles, failuresOf, printTally, type Tally, tallyReport } from './results.ts';
import { checks, printStep, runInTurn, runTogether, type Step } from './steps.ts';

const { values, positionals: paths } = parseArgs({
  allowPositionals: true,
  options: { project: { type: 'string', multiple: true } },
});

const isWhole = paths.length === 0 && values.project === undefined;

/** No unit test leans on one before it: they run in an order of their own, that of the seed, as their files do (`FileOrder`). */
const order: Readonly<Record<string, readonly string[]>> = {
  unit: ['--sequence.shuffle.tests', `--sequence.seed=${seed}`],
};

/**
 * A unit test's code runs for seconds: what Node compiles once more, and better, for code that runs for long took a third of
 * their work, so a function is to have run eight times as much before (in bytes of its code; 132 KB by default).
 */
const shortLived = (project: string) => (project === 'unit' ? ['--interrupt-budget=1000000'] : []);

const reportPath = (project: string) => `.cache/results/${project}.json`;

const testStep = (
  project: string,
  files: readonly string[],
  report: string,
  name = `${project} tests`,
): Step => ({
  name,
  command: [
    process.execPath,
    ...shortLived(project),
    'node_modules/vitest/vitest.mjs',
    'run',
    ...files,
    `--project=${project}`,
    ...(order[project] ?? []),
    ...(isWhole ? resting.map((file) => `--exclude=${file}`) : []),
    // what has no test for a path has nothing to do; that some test was made is asked below
    '--passWithNoTests',
    '--reporter=default',
    '--reporter=json',
    `--outputFile.json=${reportPath(report)}`,
  ],
  // a page that waits for a processor may answer later than its test waits; what only counts has time
  yields: project !== 'browser',
});

rmSync('.cache/results', { recursive: true, force: true });
mkdirSync('.cache/results', { recursive: true });
const { project: projects = ['unit', 'browser'] } = values;
const [ran, checked] = await Promise.all([
  runTogether(projects.map((project) => testStep(project, paths, project))),
  runInTurn(isWhole ? checks.map((check) => ({ ...check, yields: true })) : []),
]);

const tried = ran.map((step, index) => {
  const project = projects[index] ?? '';
  const report = reportPath(project);
  if (project !== 'browser' || step.passed)
    return { step, tally: tallyReport(report), failures: failuresOf(report) };
  const files = failedFiles(report);
  const again = testStep(project, files, 'again', 'once more');
  return onceMore(step, report, files, again, reportPath('again'));
});
const tested = tried.map(({ step }) => step);

const passed = checked.filter((step) => step.passed).length;
const inChecks: Tally = { passed, failed: checked.length - passed };
const inTests = tried.map(({ step, tally }) =>
  step.passed || tally.failed > 0 ? tally : add(tally, { passed: 0, failed: 1 }),
);
const total = [inChecks, ...inTests].reduce(add);

const failures = tried.flatMap((one) => one.failures);
if (failures.length > 0) console.log(`\n${failures.join('\n\n')}`);
console.log(`\n${[...checked, ...tested].map(printStep).join('\n')}\n`);
if (isWhole && resting.length > 0)
  console.log(
    `${resting.length} files are left to another turn (RIDGELINE_LOOKS=all for all): ${resting.map((file) => file.slice('tests/'.length, -'.test.ts'.length)).join(', ')}\n`,
  );
if (total.passed + total.failed === 0) console.log(`No test has ${paths.join(' or ')} in its path.`);
console.log(printTally(total));
writeFileSync('.cache/results/tally.txt', `${printTally(total)}\n`);
if (total.failed > 0 || total.passed === 0) process.exitCode = 1;
