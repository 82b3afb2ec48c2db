import type { TestModule } from 'vitest/node';
import { createVitest, type Vitest } from 'vitest/node';

/** The unit tests of a copy of the project, kept open, so that a run costs no start of the runner. */

export interface Asked {
  /** from the copy's root */
  readonly file: string;
  /** full names; all of the file's where none is given */
  readonly tests?: readonly string[];
}

export interface Red {
  readonly file: string;
  /** the test's full name, its groups before it */
  readonly name: string;
  readonly said: string;
}

export interface Told {
  readonly passed: number;
  readonly failed: readonly Red[];
}

/** The tests of the copy at `root`; `worker` is the one file of them that works the others. */
export async function openTests(root: string, worker?: string): Promise<Vitest> {
  const vitest = await createVitest(
    'test',
    {
      root,
      config: false,
      watch: false,
      include: [worker ?? 'tests/**/*.test.{ts,tsx}'],
      exclude: ['tests/browser/**'],
      setupFiles: ['tests/setup.ts'],
      environment: 'node',
      isolate: false,
      pool: 'threads',
      maxWorkers: 1,
      testTimeout: 120_000,
      bail: 1,
      reporters: [{}],
      sequence: { sequencer: AsGiven },
      // a fresh start of all modules is one of the database too
      server: { deps: { inline: ['fake-indexeddb', 'idb'] } },
    },
    {
      oxc: { jsx: { runtime: 'automatic', importSource: 'preact' } },
      define: { __VERSION__: '"0.0.0"' },
      server: { watch: null },
      logLevel: 'error',
    },
  );
  await vitest.standalone();
  return vitest;
}

class AsGiven {
  sort<T>(specifications: T): T {
    return specifications;
  }
  shard<T>(specifications: T): T {
    return specifications;
  }
}

/** Runs the tests asked for, in their order, to the first that fails. */
export async function runAsked(vitest: Vitest, asked: readonly Asked[]): Promise<Told> {
  const project = vitest.projects[0];
  if (project === undefined) throw new Error('The tests have no project.');
  const specifications = asked.map(({ file, tests }) =>
    project.createSpecification(
      `${vitest.config.root}/${file}`,
      tests === undefined
        ? undefined
        : { testNamePattern: new RegExp(`^(${tests.map(escaped).join('|')})$`) },
    ),
  );
  const { testModules, unhandledErrors } = await vitest.runTestSpecifications(specifications);
  const failed = testModules.flatMap(failedIn);
  const errors = unhandledErrors.map((error) => ({
    file: '',
    name: 'outside of a test',
    said: String(error),
  }));
  const passed = testModules.flatMap((module) => [...module.children.allTests('passed')]).length;
  return { passed, failed: failed.length > 0 ? failed : errors };
}

function failedIn(module: TestModule): Red[] {
  const file = module.relativeModuleId;
  const tests = [...module.children.allTests('failed')].map((test) => ({
    file,
    name: test.fullName.replaceAll(' > ', ' '),
    said: test.result().errors?.[0]?.message ?? '',
  }));
  const errors = module.errors().map(({ message }) => ({ file, name: 'cannot be read', said: message }));
  return [...tests, ...errors];
}

const escaped = (name: string): string => name.replace(/[.*+?^${}()|[\]\\]/g, '\\$&');
