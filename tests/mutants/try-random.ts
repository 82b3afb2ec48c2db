import { readFileSync } from 'node:fs';
import { refusedByTypes } from './by-types.ts';
import { copyProject } from './copy.ts';
import { equivalents } from './equivalent.ts';
import { findReach } from './find-reach.ts';
import { type Mutant, mutantsOf } from './plant.ts';
import { draw, random } from './random.ts';
import { printRates, type Tried } from './rates.ts';
import { openRunner } from './runner.ts';
import { folderOf, sourcesIn } from './sources.ts';
import { tryMutant, tryNothing } from './try-mutant.ts';

interface Wish {
  readonly seed: number;
  /** parts of paths; all sources where there is none */
  readonly paths: readonly string[];
  /** how many in all, or of each folder */
  readonly count?: number;
  readonly each?: number;
}

const copy = '.cache/mutants/copy';

/** Draws mutants, tries each and prints what became of them; whether every folder came up to its bar. */
export async function tryRandom(wish: Wish): Promise<boolean> {
  const mutants = chosen(wish);
  console.log(`${mutants.length} mutants, seed ${wish.seed}. What the unit tests reach is looked up first.`);
  const reach = await findReach();
  copyProject(copy);
  const runner = openRunner(copy, undefined, { RIDGELINE_MUTANT: '1' });
  const began = performance.now();
  const tried: Tried[] = [];
  await tryNothing(copy, runner, mutants, reach);
  for (const mutant of mutants) {
    const fate = await tryMutant(copy, runner, mutant, reach);
    tried.push({ mutant, fate });
    const { file, line, before, after } = mutant;
    const said = fate.killed ? `killed by ${fate.by}` : `SURVIVES, ${fate.why}`;
    console.log(`${file}:${line} ${short(before)} -> ${short(after)}: ${said}`);
  }
  runner.close();
  const each = (performance.now() - began) / 1000 / Math.max(1, tried.length);
  const alive = tried.filter(({ fate }) => !fate.killed).map(({ mutant }) => mutant);
  const refused = refusedByTypes(copy, alive);
  const { text, missed } = printRates(tried.filter(({ mutant }) => !refused.has(mutant)));
  console.log(`\n${text}\n${refused.size} more are refused by the compiler and do not count.`);
  console.log(`${each.toFixed(1)} s a mutant, seed ${wish.seed}.`);
  return !missed;
}

function chosen({ seed, paths, count = 0, each }: Wish): Mutant[] {
  const all = sourcesIn('.')
    .filter((file) => paths.length === 0 || paths.some((name) => file.includes(name)))
    .flatMap((file) => withoutEquivalent(file, readFileSync(file, 'utf8')));
  const next = random(seed);
  if (each === undefined) return draw(all, count, next);
  const folders = [...new Set(all.map(({ file }) => folderOf(file)))];
  return folders.flatMap((folder) =>
    draw(
      all.filter(({ file }) => folderOf(file) === folder),
      each,
      next,
    ),
  );
}

function withoutEquivalent(file: string, source: string): Mutant[] {
  const lines = source.split('\n');
  return mutantsOf(file, source).filter(
    (mutant) =>
      !equivalents.some(
        (one) =>
          one.file === file &&
          one.line === lines[mutant.line - 1]?.trim() &&
          one.before === mutant.before &&
          one.after === mutant.after,
      ),
  );
}

function short(text: string): string {
  const line = text.replace(/\s+/g, ' ');
  return line.length > 60 ? `${line.slice(0, 57)}...` : line;
}
