import { readFileSync, writeFileSync } from 'node:fs';
import { join, resolve } from 'node:path';
import { makeChanges } from './change.ts';
import { copyProject } from './copy.ts';
import type { Planted } from './planted.ts';
import { openRunner } from './runner.ts';

/** How long a named test may take in a run of its own, ms. */
const LONGEST = 180_000;

/** Plants each fault in turn in one copy, runs the test that is named for it, and says of which it stayed green. */
export async function greenUnder(faults: readonly Planted[], copy: string): Promise<string[]> {
  copyProject(copy);
  const runner = openRunner(copy, { RIDGELINE_MUTANT: '1' });
  const green: string[] = [];
  try {
    for (const { name, changes, red } of faults) {
      const paths = [...new Set(changes.map(({ file }) => join(copy, file)))];
      const before = paths.map((path) => readFileSync(path, 'utf8'));
      makeChanges(copy, changes);
      const outcome = await runner.run({
        ms: LONGEST,
        changed: paths.map((path) => resolve(path)),
        asked: [{ file: red.file, tests: [red.test] }],
      });
      for (const [index, path] of paths.entries()) writeFileSync(path, before[index] ?? '');
      if (typeof outcome === 'string') green.push(`${name}: ${red.test} does not end`);
      else if (!outcome.failed.some((failed) => failed.name === red.test))
        green.push(`${name}: ${red.test} ${outcome.passed > 0 ? 'stays green' : 'is not in its file'}`);
    }
  } finally {
    runner.close();
  }
  return green;
}
