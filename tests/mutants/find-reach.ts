import { createHash } from 'node:crypto';
import { mkdirSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { join, resolve } from 'node:path';
import { copyProject } from './copy.ts';
import { markSources, type Place, type Reached } from './reach.ts';
import { openRunner } from './runner.ts';

export interface Reach {
  readonly places: readonly Place[];
  readonly reached: readonly Reached[];
}

const kept = '.cache/mutants/reach.json';
const HOUR = 3_600_000;

/** What every unit test reaches: found by running them all once in a marked copy, kept until a file changes. */
export async function findReach(): Promise<Reach> {
  const version = versionOf(['src', 'tests']);
  try {
    const found = JSON.parse(readFileSync(kept, 'utf8')) as Reach & { version: string };
    if (found.version === version) return found;
  } catch {
    // there is none yet
  }
  const copy = '.cache/mutants/marked';
  const out = resolve('.cache/mutants/reached');
  rmSync(out, { recursive: true, force: true });
  mkdirSync(out, { recursive: true });
  copyProject(copy);
  const places = markSources(copy);
  const runner = openRunner(copy, 'tests/mutants/reach-setup.ts', {
    RIDGELINE_MARKS: String(places.length),
    RIDGELINE_REACH: out,
    RIDGELINE_ROOT: resolve(copy),
  });
  const asked = testFiles().map((file) => ({ file }));
  const outcome = await runner.run({ ms: HOUR, changed: [], asked });
  runner.close();
  rmSync(copy, { recursive: true });
  if (typeof outcome === 'string') throw new Error(`The unit tests could not be run: ${outcome}.`);
  const red = new Set(outcome.failed.map(({ file, name }) => `${file} ${name}`));
  for (const test of red) console.log(`Red without any mutant, and left out: ${test}`);
  const reached = readdirSync(out)
    .flatMap((name) => JSON.parse(readFileSync(join(out, name), 'utf8')) as Reached[])
    .filter(({ file, test }) => !red.has(`${file} ${test}`));
  writeFileSync(kept, JSON.stringify({ version, places, reached }));
  return { places, reached };
}

const filesIn = (folder: string): string[] =>
  readdirSync(folder, { recursive: true, encoding: 'utf8' })
    .filter((name) => /\.(tsx?|json)$/.test(name))
    .map((name) => join(folder, name))
    .sort();

/** The unit tests that work the sources; those that read them as text see no mutant. */
const testFiles = (): string[] =>
  filesIn('tests').filter(
    (name) => /\.test\.tsx?$/.test(name) && !/^tests\/(browser|run|mutants|faults|[\w-]+\.test)\b/.test(name),
  );

function versionOf(folders: readonly string[]): string {
  const hash = createHash('sha1');
  for (const path of folders.flatMap(filesIn)) hash.update(path).update(readFileSync(path));
  return hash.digest('hex');
}
