import { createHash } from 'node:crypto';
import { mkdirSync, readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join, resolve } from 'node:path';
import { hashes } from './closure.ts';
import { copyForWork } from './copy.ts';
import type { Order } from './live/orders.ts';
import { PROCESSES, partsOf, workOrders } from './live/work-order.ts';
import { markSources, type ReachedByFile } from './reach.ts';
import { sourcesIn } from './sources.ts';

const keptIn = '.cache/mutants/reach.json';

export interface Reach {
  /** places by their names (file and where they begin): the numbers of the hits count in it */
  readonly names: readonly string[];
  readonly files: readonly ReachedByFile[];
}

type Kept = Reach & { readonly hashes: Readonly<Record<string, string>> };

/**
 * What every unit test reaches: found by working them all once in a marked copy, and kept for each file of tests until
 * it changes or one that it imports. Tests that are red there are said.
 * @param under folders or files: only the tests there
 */
export async function findReach(under: readonly string[] = ['tests']): Promise<Reach> {
  const known = readKept();
  const hashOf = hashes();
  const isAsked = (file: string) => under.some((folder) => file.startsWith(folder));
  const all = testFiles().filter(isAsked);
  const unknown = all.filter((file) => known.hashes[file] !== hashOf(file));
  const still = known.files.filter(({ file }) => known.hashes[file] === hashOf(file));
  const reach = unknown.length === 0 ? known : joined({ ...known, files: still }, await reachedBy(unknown));
  const hashed = Object.fromEntries(reach.files.map(({ file }) => [file, hashOf(file)]));
  const kept: Kept = { ...reach, hashes: hashed };
  mkdirSync('.cache/mutants', { recursive: true });
  writeFileSync(keptIn, JSON.stringify(kept));
  const files = reach.files.filter(({ file }) => isAsked(file));
  for (const { file, tests } of files)
    for (const { name, red } of tests)
      if (red !== undefined) console.log(`Red without any mutant, and left out: ${file} ${name}: ${red}`);
  return { ...reach, files };
}

function readKept(): Kept {
  try {
    return JSON.parse(readFileSync(keptIn, 'utf8')) as Kept;
  } catch {
    return { names: [], files: [], hashes: {} };
  }
}

async function reachedBy(files: readonly string[]): Promise<Reach> {
  const root = resolve('.cache/mutants/marked');
  // what was begun and stopped goes on, as long as nothing changes
  const version = createHash('sha1');
  for (const path of [...sourcesIn('.'), ...testFiles()]) version.update(readFileSync(path));
  const out = resolve(`.cache/mutants/reached-${version.digest('hex').slice(0, 8)}.jsonl`);
  copyForWork(root);
  const names = markSources(root).map(({ file, within }) => placeName(file, within));
  let done = 0;
  const orders = partsOf(files, PROCESSES).map(
    (some, part): Order => ({
      kind: 'reach',
      root,
      out: `${out}-${part}`,
      files: some,
      marks: names.length,
    }),
  );
  const lines = await workOrders(orders, () => {
    done += 1;
    if (done % 20 === 0)
      console.log(`What is reached by ${done} of ${files.length} files of tests is known.`);
  });
  return { names, files: lines.flatMap((line) => ('reached' in line ? [line.reached] : [])) };
}

/** One list of names for both. */
function joined(one: Reach, other: Reach): Reach {
  const names = [...one.names];
  const numbers = new Map(names.map((name, number) => [name, number]));
  const renumbered = other.names.map((name) => {
    const number = numbers.get(name) ?? names.push(name) - 1;
    numbers.set(name, number);
    return number;
  });
  const again = (hits: readonly number[]) => hits.map((hit) => renumbered[hit] ?? 0);
  const files = other.files.map(({ file, whole, tests }) => ({
    file,
    whole: again(whole),
    tests: tests.map((test) => ({ ...test, hits: again(test.hits) })),
  }));
  return { names, files: [...one.files, ...files] };
}

export const placeName = (file: string, within: number): string => `${file} ${within}`;

/** The unit tests that work the sources; those that read them as text see no mutant. */
const testFiles = (): string[] =>
  readdirSync('tests', { recursive: true, encoding: 'utf8' })
    .map((name) => join('tests', name))
    .filter(
      (name) =>
        /\.test\.tsx?$/.test(name) && !/^tests\/(browser|run|mutants|faults|[\w-]+\.test)\b/.test(name),
    )
    .sort();
