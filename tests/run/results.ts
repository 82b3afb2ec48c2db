import { existsSync, readFileSync } from 'node:fs';

export interface Tally {
  readonly passed: number;
  readonly failed: number;
}

/** The part of the test runner's JSON report that is counted. */
interface Report {
  readonly success: boolean;
  readonly numPassedTests: number;
  readonly numFailedTests: number;
  readonly testResults: readonly FileResult[];
}

interface FileResult {
  readonly name: string;
  readonly status: string;
  /** Why the file could not be loaded. */
  readonly message?: string;
  readonly assertionResults: readonly {
    readonly status: string;
    readonly fullName: string;
    readonly failureMessages?: readonly string[] | null;
  }[];
}

const readReport = (path: string) => JSON.parse(readFileSync(path, 'utf8')) as Report;

/** Counts a report; a file that could not even be loaded, or a run without a report, is a failure too. */
export function tallyReport(path: string): Tally {
  if (!existsSync(path)) return { passed: 0, failed: 1 };
  const report = readReport(path);
  const unloaded = report.testResults.filter(
    ({ status, assertionResults }) => status === 'failed' && assertionResults.length === 0,
  ).length;
  const failed = report.numFailedTests + unloaded;
  return { passed: report.numPassedTests, failed: failed === 0 && !report.success ? 1 : failed };
}

const fileName = (name: string) => name.replace(`${process.cwd()}/`, '');

/** The files of a report. */
export const filesIn = (path: string): string[] =>
  existsSync(path) ? readReport(path).testResults.map(({ name }) => fileName(name)) : [];

/** The files of a report in which something failed. */
export const failedFiles = (path: string): string[] =>
  existsSync(path)
    ? readReport(path).testResults.flatMap(({ name, status }) =>
        status === 'failed' ? [fileName(name)] : [],
      )
    : [];

/** How many tests passed in these files of a report. */
export const passedIn = (path: string, files: readonly string[]): number =>
  readReport(path)
    .testResults.filter(({ name }) => files.includes(fileName(name)))
    .flatMap(({ assertionResults }) => assertionResults)
    .filter(({ status }) => status === 'passed').length;

/** So many lines of a failure are told at the end: what was expected, what came, and where in our own files. */
const linesTold = 12;

/** Each test that failed, by file and name, with the first lines of why: what a long run printed far above. */
export function failuresOf(path: string): string[] {
  if (!existsSync(path)) return [];
  return readReport(path).testResults.flatMap(({ name, status, message, assertionResults }) => {
    const file = fileName(name);
    const failed = assertionResults.filter((test) => test.status === 'failed');
    if (status === 'failed' && failed.length === 0) return [tellFailure(file, message ?? '')];
    return failed.map((test) =>
      tellFailure(`${file} > ${test.fullName}`, test.failureMessages?.join('\n') ?? ''),
    );
  });
}

const ownLines = (why: string) =>
  why
    .split('\n')
    .filter((line) => !line.includes('node_modules'))
    .slice(0, linesTold);

const tellFailure = (what: string, why: string): string => [`FAILED ${what}`, ...ownLines(why)].join('\n  ');

export const add = (a: Tally, b: Tally): Tally => ({
  passed: a.passed + b.passed,
  failed: a.failed + b.failed,
});

/** The last line of `npm test`. */
export const printTally = ({ passed, failed }: Tally): string => `${passed} passed, ${failed} failed`;
