/**
 * `npm test`: the checks, then the tests in Node, then those in a real browser. All of them run, whatever fails
 * first; the last line counts the checks and the tests that were really made.
 */
import { mkdirSync, rmSync, writeFileSync } from 'node:fs';
import { seed } from '../seed.ts';
import { add, printTally, type Tally, tallyReport } from './results.ts';
import { checks, printStep, runStep, type Step } from './steps.ts';

const projects = ['unit', 'browser'] as const;

/** No unit test leans on one before it: they run in an order of their own, that of the seed (which is printed). */
const order = {
  unit: ['--sequence.shuffle.files', '--sequence.shuffle.tests', `--sequence.seed=${seed}`],
  browser: [],
} as const;

const reportPath = (project: string) => `.cache/results/${project}.json`;

const testStep = (project: (typeof projects)[number]): Step => ({
  name: `${project} tests`,
  command: [
    process.execPath,
    'node_modules/vitest/vitest.mjs',
    'run',
    `--project=${project}`,
    ...order[project],
    '--reporter=default',
    '--reporter=json',
    `--outputFile.json=${reportPath(project)}`,
  ],
});

rmSync('.cache/results', { recursive: true, force: true });
mkdirSync('.cache/results', { recursive: true });
const checked = checks.map(runStep);
const tested = projects.map((project) => runStep(testStep(project)));

const passed = checked.filter((step) => step.passed).length;
const inChecks: Tally = { passed, failed: checked.length - passed };
const inTests = tested.map((step, index) => {
  const tally = tallyReport(reportPath(projects[index] ?? ''));
  return step.passed || tally.failed > 0 ? tally : add(tally, { passed: 0, failed: 1 });
});
const total = [inChecks, ...inTests].reduce(add);

console.log(`\n${[...checked, ...tested].map(printStep).join('\n')}\n`);
console.log(printTally(total));
writeFileSync('.cache/results/tally.txt', `${printTally(total)}\n`);
if (total.failed > 0) process.exitCode = 1;
