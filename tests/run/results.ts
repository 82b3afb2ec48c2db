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
  readonly testResults: readonly { readonly status: string; readonly assertionResults: readonly unknown[] }[];
}

/** Counts a report; a file that could not even be loaded, or a run without a report, is a failure too. */
export function tallyReport(path: string): Tally {
  if (!existsSync(path)) return { passed: 0, failed: 1 };
  const report = JSON.parse(readFileSync(path, 'utf8')) as Report;
  const unloaded = report.testResults.filter(
    ({ status, assertionResults }) => status === 'failed' && assertionResults.length === 0,
  ).length;
  const failed = report.numFailedTests + unloaded;
  return { passed: report.numPassedTests, failed: failed === 0 && !report.success ? 1 : failed };
}

export const add = (a: Tally, b: Tally): Tally => ({
  passed: a.passed + b.passed,
  failed: a.failed + b.failed,
});

/** The last line of `npm test`. */
export const printTally = ({ passed, failed }: Tally): string => `${passed} passed, ${failed} failed`;
