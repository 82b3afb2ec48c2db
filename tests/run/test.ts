/**
 * `npm test`: the tests in a real browser, and beside them those in Node and the checks. All of them run, whatever
 * fails first; a file that failed in a browser is tried once more by itself. The last line counts the checks and the tests that were really made. `npm run test:unit` makes those in
 * Node alone, `npm test -- PATH` those in whose path PATH is found, in Node or in a browser.
 */
import { mkdirSync, rmSync, writeFileSync } from 'node:fs';
import { parseArgs } from 'node:util';
import { onceMore, toldByLines } from './once-more.ts';
import { resting } from './resting.ts';
import { add, failedFiles, filesIn, printTally, type Tally, tallyReport } from './results.ts';
import { checks, printStep, runInTurn, runTogether } from './steps.ts';
import { inBrowser, inNode, toldAnew } from './test-steps.ts';

const { values, positionals: paths } = parseArgs({
  allowPositionals: true,
  options: { project: { type: 'string', multiple: true } },
});

const isWhole = paths.length === 0 && values.project === undefined;

rmSync('.cache/results', { recursive: true, force: true });
mkdirSync('.cache/results', { recursive: true });
const { project: projects = ['unit', 'browser'] } = values;
const asked = { paths, leftOut: isWhole ? resting : [] };
const steps = [
  ...(projects.includes('unit') ? inNode(asked) : []),
  ...(projects.includes('browser') ? [inBrowser(asked)] : []),
];
const [ran, checked] = await Promise.all([
  runTogether(steps),
  runInTurn(isWhole ? checks.map((check) => ({ ...check, yields: true })) : []),
]);

const tried = steps.flatMap(({ report, isTriedAgain }, index) => {
  const step = ran[index];
  if (step === undefined) return [];
  if (step.passed) return [{ step, tally: tallyReport(report), failures: [] }];
  const files = failedFiles(report);
  if (!isTriedAgain)
    return [{ step, tally: tallyReport(report), failures: toldByLines(report, files, toldAnew(files)) }];
  const again = inBrowser({ paths: files, leftOut: [] }, 'once more', 'again');
  return [onceMore(step, report, files, again, again.report)];
});
const tested = tried.map(({ step }) => step);

// a runner that no longer understands what to leave out would only take longer
const inspite = steps.flatMap(({ report }) => filesIn(report)).filter((file) => asked.leftOut.includes(file));

const passed = checked.filter((step) => step.passed).length;
const inChecks: Tally = { passed, failed: checked.length - passed };
const inTests = tried.map(({ step, tally }) =>
  step.passed || tally.failed > 0 ? tally : add(tally, { passed: 0, failed: 1 }),
);
const leftOut: Tally = { passed: 0, failed: inspite.length };
const total = [inChecks, leftOut, ...inTests].reduce(add);

const failures = tried.flatMap((one) => one.failures);
if (inspite.length > 0) console.log(`\nTried though they were to rest: ${inspite.join(', ')}`);
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
