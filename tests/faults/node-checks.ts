import { spawnSync } from 'node:child_process';
import { readFileSync, rmSync } from 'node:fs';
import { join } from 'node:path';
import { seed } from '../seed.ts';
import type { Figure } from './figure.ts';

/** Checks of the store that need no browser, run with the large numbers. */

interface Told {
  readonly passed: number;
  readonly failed: number;
  readonly said: string;
  /** the first failed test's name and message */
  readonly why: string;
}

interface Report {
  readonly success: boolean;
  readonly numPassedTests: number;
  readonly numFailedTests: number;
  readonly testResults: readonly {
    readonly message: string;
    readonly assertionResults: readonly {
      readonly status: string;
      readonly fullName: string;
      readonly failureMessages: readonly string[];
    }[];
  }[];
}

/** Runs a test file of the project in `cwd`, only tests whose name holds `named` where it is given. */
export function runTests(
  file: string,
  { env = {}, named, cwd = '.' }: { env?: Record<string, string>; named?: string; cwd?: string } = {},
): Told {
  const report = join(process.cwd(), '.cache/faults/report.json');
  rmSync(report, { force: true });
  const vitest = join(process.cwd(), 'node_modules/vitest/vitest.mjs');
  const only = named === undefined ? [] : ['-t', named];
  const reporters = ['--reporter=json', `--outputFile.json=${report}`, '--reporter=default'];
  const { stdout, stderr } = spawnSync(
    process.execPath,
    [vitest, 'run', '--project=unit', file, ...only, ...reporters],
    { cwd, env: { ...process.env, ...env }, encoding: 'utf8', maxBuffer: 1 << 28 },
  );
  try {
    return { ...tell(JSON.parse(readFileSync(report, 'utf8')) as Report), said: stdout };
  } catch {
    return { passed: 0, failed: 1, said: stdout, why: `no report: ${stderr.slice(-300)}` };
  }
}

function tell({ success, numPassedTests, numFailedTests, testResults }: Report): Omit<Told, 'said'> {
  const failed = testResults
    .flatMap(({ assertionResults }) => assertionResults)
    .find(({ status }) => status === 'failed');
  const why = failed
    ? `${failed.fullName}: ${failed.failureMessages[0]?.slice(0, 200)}`
    : (testResults.find(({ message }) => message !== '')?.message.slice(0, 200) ?? '');
  return { passed: numPassedTests, failed: success ? numFailedTests : Math.max(1, numFailedTests), why };
}

export function everyFaultOnEveryPath(): Figure {
  const { failed, said, why } = runTests('tests/store/box/fault-at-every-step.test.ts', {
    env: { RIDGELINE_FAULTS: 'all' },
  });
  const injected = Number(/faults injected into writes: (\d+)/.exec(said)?.[1] ?? 0);
  return {
    name: 'each injected fault × each step of each write path',
    measured: failed === 0 ? `${injected} faults, done but not stored 0` : `${failed} paths failed: ${why}`,
    bar: 'done but not stored 0',
    met: failed === 0 && injected > 0,
  };
}

export function hostileFiles(files: number): Figure {
  const { failed, passed, why } = runTests('tests/store/backup/hostile-files.test.ts', {
    env: { RIDGELINE_FUZZ: String(files) },
  });
  return {
    name: `${files} mutated and random import files`,
    measured: failed === 0 ? 'crashes 0, changed databases 0, each with a sentence' : why,
    bar: 'crashes 0, changed databases 0',
    met: failed === 0 && passed > 0,
  };
}

export function mergedHistories(): Figure {
  const { failed, passed, why } = runTests('tests/store/backup/merge.test.ts');
  return {
    name: '1000 random histories merged in random orders',
    measured: failed === 0 ? 'differing outcomes 0' : why,
    bar: 'differing outcomes 0',
    met: failed === 0 && passed > 0,
  };
}

/** Lives that are lived through in one go: a process for each, so that what it says comes while the others wait. */
const LIVES_AT_ONCE = 25;

/** Whole lives of two devices with two windows each, of whatever can be done on them; each lot by a seed of its own. */
export function livesOnTwoDevices(lives: number): Figure {
  const start = performance.now();
  let lived = 0;
  let trouble = '';
  for (let lot = 0; lived < lives && trouble === ''; lot += 1) {
    const most = Math.min(LIVES_AT_ONCE, lives - lived);
    const lotSeed = seed + lot;
    const { failed, passed, why, said } = runTests('tests/model/model.test.ts', {
      env: { RIDGELINE_MODEL_RUNS: String(most), RIDGELINE_SEED: String(lotSeed) },
    });
    // what was lived through, not what was asked for
    const more = Number(/lives lived: (\d+)/.exec(said)?.[1] ?? 0);
    lived += more;
    if (failed > 0 || passed === 0) trouble = `seed ${lotSeed}: ${why}`;
    else if (more === 0) trouble = 'no life was lived through';
    const seconds = ((performance.now() - start) / 1000).toFixed(0);
    console.log(`  ${lived} of ${lives} lives, ${seconds} s${trouble && `, ${trouble}`}`);
  }
  return {
    name: `${lived} random lives of two devices with two windows each`,
    measured: trouble || 'lost 0, shown but not stored 0, without a backup 0',
    bar: 'lost 0, shown but not stored 0, without a backup 0',
    met: trouble === '' && lived >= lives,
  };
}
