/**
 * A test in a browser stands on a machine that the tests in Node keep busy: a page may answer later than its test
 * waits. A file that fails is tried once more when nothing runs beside it. What fails then too has failed; what passes
 * is counted, and told by name, since it is a test to be mended.
 */
import { add, failuresOf, passedIn, type Tally, tallyReport } from './results.ts';
import { printStep, runStep, type Step, type StepResult } from './steps.ts';

/** With more files than these it is no matter of a busy machine. */
const mostFiles = 3;

interface Tried {
  readonly step: StepResult;
  readonly tally: Tally;
  readonly failures: readonly string[];
}

/**
 * The result of a project's tests, after the files that failed were tried again.
 *
 * @param again the step that runs those files alone and writes its report at `againPath`
 */
export function onceMore(
  step: StepResult,
  path: string,
  failedFiles: readonly string[],
  again: Step,
  againPath: string,
): Tried {
  const first = tallyReport(path);
  const failures = failuresOf(path);
  if (failedFiles.length === 0 || failedFiles.length > mostFiles) return { step, tally: first, failures };
  console.log(`\nTried once more, with nothing beside them: ${failedFiles.join(', ')}`);
  const second = runStep(again);
  console.log(`${printStep(second)}\n`);
  const others = { passed: first.passed - passedIn(path, failedFiles), failed: 0 };
  const tally = add(others, tallyReport(againPath));
  if (!second.passed) return { step, tally, failures: failuresOf(againPath) };
  console.log(`Passed only when tried once more; mend these tests:\n${failures.join('\n\n')}`);
  return { step: { ...step, passed: true }, tally, failures: [] };
}

/**
 * What failed in Node, told with the lines of the sources: the few files are run once more by `anew`, whose verdict does not
 * count. Where it finds nothing, or in so many files that no line matters, it is told as it failed.
 */
export function toldByLines(
  path: string,
  files: readonly string[],
  anew: Step & { readonly report: string },
): readonly string[] {
  if (files.length === 0 || files.length > mostFiles) return failuresOf(path);
  runStep(anew);
  const told = failuresOf(anew.report);
  return told.length > 0 ? told : failuresOf(path);
}
