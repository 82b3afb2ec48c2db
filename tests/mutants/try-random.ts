import { createHash } from 'node:crypto';
import { existsSync, mkdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { join, resolve } from 'node:path';
import { refusedByTypes } from './by-types.ts';
import { copyForWork, copyProject } from './copy.ts';
import { equivalents } from './equivalent.ts';
import { findReach } from './find-reach.ts';
import type { Fate, Line, Order } from './live/orders.ts';
import { linesIn, PROCESSES, partsOf, workOrders } from './live/work-order.ts';
import { type Mutant, mutantsOf, plantPrograms } from './plant.ts';
import { draw, random } from './random.ts';
import { printRates, type Tried } from './rates.ts';
import { folderOf, isIn, sourcesIn } from './sources.ts';
import { trialsOf } from './trials.ts';

interface Wish {
  readonly seed: number;
  /** folders by their names in the report, or paths; all sources where there is none */
  readonly paths: readonly string[];
  /** how many in all, or of each folder */
  readonly count?: number;
  readonly each?: number;
  /** folders or files of tests that are to find them; all unless said */
  readonly by?: readonly string[];
  /** which part of those drawn is tried, of how many */
  readonly share: number;
  readonly shares: number;
}

type Numbered = ReadonlyMap<number, Mutant>;

/** Draws mutants, tries each and prints what became of them; whether every folder came up to its bar. */
export async function tryRandom(wish: Wish): Promise<boolean> {
  const { seed, share, shares } = wish;
  const began = performance.now();
  const place = `.cache/mutants/share-${share}-of-${shares}`;
  const all = drawn(wish, `${place}-types`);
  console.log(`${all.length} mutants, seed ${seed}. What the unit tests reach is looked up first.`);
  const reach = await findReach(wish.by);
  const mutants: Numbered = new Map(
    all.map((mutant, index) => [index + 1, mutant] as const).filter(([id]) => id % shares === share % shares),
  );
  const root = resolve(place);
  copyForWork(root);
  plantInto(root, mutants);
  const trials = trialsOf(mutants, reach);
  const out = resultsOf(wish, trials);
  const orders = partsOf(trials, PROCESSES).map(
    (some, part): Order => ({ kind: 'mutants', root, out: `${out}-${part}`, trials: some }),
  );
  for (const line of orders.flatMap((order) => linesIn(order.out))) tell(line, mutants);
  const lines = await workOrders(orders, (line) => tell(line, mutants));
  const { text, missed } = printRates(triedBy(lines, mutants));
  const minutes = (performance.now() - began) / 60_000;
  console.log(`\n${text}\nSeed ${seed}, part ${share} of ${shares}, ${minutes.toFixed(1)} minutes.`);
  console.log('One that no test has found within 80 s of the processor is counted as a survivor.');
  return !missed;
}

/** What is written down of a wish: it goes on where it was stopped, as long as nothing changes. */
function resultsOf({ seed, share, shares }: Wish, trials: unknown): string {
  const hash = createHash('sha1').update(JSON.stringify(trials));
  for (const file of sourcesIn('.')) hash.update(readFileSync(file));
  const folder = '.cache/mutants/results';
  mkdirSync(folder, { recursive: true });
  return resolve(folder, `${seed}-${share}-of-${shares}-${hash.digest('hex').slice(0, 8)}.jsonl`);
}

function plantInto(root: string, mutants: Numbered): void {
  for (const file of new Set([...mutants.values()].map((mutant) => mutant.file))) {
    const path = join(root, file);
    const here = new Map([...mutants].filter(([, mutant]) => mutant.file === file));
    writeFileSync(path, plantPrograms(file, readFileSync(path, 'utf8'), here));
  }
}

/** The mutants that a wish draws, those left out that the compiler refuses. */
function drawn({ seed, paths, count = 0, each }: Wish, place: string): Mutant[] {
  const all = sourcesIn('.')
    .filter((file) => paths.length === 0 || paths.some((wish) => isIn(file, wish)))
    .flatMap((file) => withoutEquivalent(file, readFileSync(file, 'utf8')));
  const next = random(seed);
  const folders = each === undefined ? [undefined] : [...new Set(all.map(({ file }) => folderOf(file)))];
  const wanted = each ?? count;
  // more than enough, since the compiler refuses some
  const lists = folders.map((folder) =>
    draw(
      all.filter(({ file }) => folder === undefined || folderOf(file) === folder),
      wanted * 2,
      next,
    ),
  );
  const refused = refusedOf(lists.flat(), place);
  const chosen = lists.flatMap((list) => list.filter((mutant) => !refused.has(mutant)).slice(0, wanted));
  return chosen;
}

/** Which the compiler refuses: asked once, since it takes long, and kept until a source changes. */
function refusedOf(mutants: readonly Mutant[], place: string): ReadonlySet<Mutant> {
  const version = createHash('sha1').update(JSON.stringify(mutants));
  for (const file of sourcesIn('.')) version.update(readFileSync(file));
  const kept = `.cache/mutants/refused-${version.digest('hex').slice(0, 8)}.json`;
  if (existsSync(kept)) {
    const refused = new Set(JSON.parse(readFileSync(kept, 'utf8')) as number[]);
    return new Set(mutants.filter((_, index) => refused.has(index)));
  }
  copyProject(place);
  const refused = refusedByTypes(place, mutants);
  rmSync(place, { recursive: true });
  writeFileSync(
    kept,
    JSON.stringify([...mutants.keys()].filter((index) => refused.has(mutants[index] as Mutant))),
  );
  return refused;
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

const NOT_TRIED: Fate = { killed: false, why: 'unknown: not tried', unknown: true };

/** Every mutant that was drawn, with what became of it. */
function triedBy(lines: readonly Line[], mutants: Numbered): Tried[] {
  const fates = new Map(lines.flatMap((line) => ('killed' in line ? [[line.id, line]] : [])));
  return [...mutants].map(([id, mutant]) => ({ mutant, fate: fates.get(id) ?? NOT_TRIED }));
}

function tell(line: Line, mutants: Numbered): void {
  if (!('killed' in line)) return;
  const mutant = mutants.get(line.id);
  if (mutant === undefined) return;
  const said = line.killed ? `killed by ${line.by}` : `${line.unknown ? '' : 'SURVIVES, '}${line.why}`;
  const { file, before, after } = mutant;
  console.log(`${file}:${mutant.line} ${short(before)} -> ${short(after)}: ${said} (${line.ms} ms)`);
}

function short(text: string): string {
  const line = text.replace(/\s+/g, ' ');
  return line.length > 60 ? `${line.slice(0, 57)}...` : line;
}
