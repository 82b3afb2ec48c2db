import { spawn, spawnSync } from 'node:child_process';
import { once } from 'node:events';
import { setPriority } from 'node:os';
import { join } from 'node:path';

/** One check that a command makes: a name for the list, and the command. */
export interface Step {
  readonly name: string;
  readonly command: readonly string[];
  /** set beside what the environment has */
  readonly env?: Readonly<Record<string, string>>;
  /** true: takes what the others leave of the processors */
  readonly yields?: boolean;
}

export interface StepResult {
  readonly name: string;
  readonly passed: boolean;
  readonly seconds: number;
}

const script = (name: string) => [process.execPath, 'tests/run/run.mjs', `tests/run/${name}.ts`];
const tool = (path: string, ...args: string[]) => [process.execPath, join('node_modules', path), ...args];

/** What `npm run check` looks at, quickest to name a mistake first. */
export const checks: readonly Step[] = [
  // one checker: several, on two processors that others want too, look at much of the sources twice
  { name: 'types', command: tool('typescript/bin/tsc', '-b', '--checkers', '1') },
  { name: 'format and lint', command: tool('@biomejs/biome/bin/biome', 'check', '--error-on-warnings') },
  {
    name: 'no promise left unawaited',
    command: tool('oxlint/bin/oxlint', '--type-aware', '--deny-warnings'),
  },
  { name: 'nothing unused', command: tool('knip/bin/knip.js', '--no-progress') },
  // without the tests: what only they use is used by nobody, but for the instruments that say what they are for
  {
    name: 'nothing that only tests use',
    command: tool(
      'knip/bin/knip.js',
      '--no-progress',
      '--production',
      '--exclude=dependencies',
      '--tags=-proof,-instrument',
    ),
  },
  { name: 'licences and lock file', command: script('packages') },
  { name: 'known faults of packages', command: script('advisories') },
];

/** Runs one step, its output straight on the screen. */
export function runStep({ name, command, env }: Step): StepResult {
  const [program = '', ...args] = command;
  const start = performance.now();
  const { status } = spawnSync(program, args, { env: { ...process.env, ...env }, stdio: 'inherit' });
  return { name, passed: status === 0, seconds: (performance.now() - start) / 1000 };
}

/** How far a step that yields stands back: for two seconds that both want it has half a one. */
const YIELDING = 5;

/** Runs steps side by side. What the first prints is on the screen at once, what the others do when they are done. */
export const runTogether = (steps: readonly Step[]): Promise<StepResult[]> =>
  Promise.all(steps.map((step, index) => runBeside(step, index === 0)));

/** Runs steps one after the other beside whatever else runs, and prints what each prints when it is done. */
export async function runInTurn(steps: readonly Step[]): Promise<StepResult[]> {
  const results: StepResult[] = [];
  for (const step of steps) results.push(await runBeside(step, false));
  return results;
}

async function runBeside({ name, command, env, yields }: Step, isShown: boolean): Promise<StepResult> {
  const [program = '', ...args] = command;
  const start = performance.now();
  const child = spawn(program, args, {
    env: { ...process.env, ...env },
    stdio: isShown ? 'inherit' : ['ignore', 'pipe', 'pipe'],
  });
  if (yields && child.pid !== undefined) standBack(child.pid);
  const printed: Buffer[] = [];
  for (const stream of [child.stdout, child.stderr]) stream?.on('data', (data: Buffer) => printed.push(data));
  const [status] = (await once(child, 'close')) as [number | null];
  process.stdout.write(Buffer.concat(printed));
  return { name, passed: status === 0, seconds: (performance.now() - start) / 1000 };
}

function standBack(pid: number): void {
  try {
    setPriority(pid, YIELDING);
  } catch {
    // done already, or a machine that lets nobody choose: then it takes its share as all do
  }
}

/** 'ok    types (3.1 s)' */
export const printStep = ({ name, passed, seconds }: StepResult): string =>
  `${passed ? 'ok    ' : 'FAILED'} ${name} (${seconds.toFixed(1)} s)`;
