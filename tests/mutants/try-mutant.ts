import { readFileSync, writeFileSync } from 'node:fs';
import { basename, dirname, join, resolve } from 'node:path';
import type { Reach } from './find-reach.ts';
import type { Asked } from './in-vitest.ts';
import { type Mutant, plant } from './plant.ts';
import type { Reached } from './reach.ts';
import type { Runner } from './runner.ts';

/** What became of a mutant: the test that turned red, or why nothing did. */
export type Fate =
  | { readonly killed: true; readonly by: string }
  | { readonly killed: false; readonly why: 'no test reaches it' | 'all tests stay green' };

/** A quick test takes less than this, in ms: all of them are tried before any other. */
const QUICK = 300;
/** All the tests of one mutant take about this at most, in ms, by what they took before. */
const LONGEST = 30_000;
/** A mutant may never end: its run is given so many times what its tests took, and a start, ms of the processor. */
const PATIENCE = 4;
const START = 12_000;

/** Plants one mutant in the copy, runs the tests that reach it until one is red, and puts the source back. */
export async function tryMutant(root: string, runner: Runner, mutant: Mutant, reach: Reach): Promise<Fate> {
  const stages = stagesOf(mutant, reach);
  if (stages.length === 0) return { killed: false, why: 'no test reaches it' };
  const path = join(root, mutant.file);
  const source = readFileSync(path, 'utf8');
  writeFileSync(path, plant(source, mutant));
  try {
    for (const { asked, ms } of stages) {
      const outcome = await runner.run({ ms: ms * PATIENCE + START, changed: [resolve(path)], asked });
      if (typeof outcome === 'string') return { killed: true, by: outcome };
      const [red] = outcome.failed;
      if (red !== undefined) return { killed: true, by: `${red.file}: ${red.name}` };
    }
    return { killed: false, why: 'all tests stay green' };
  } finally {
    writeFileSync(path, source);
  }
}

/** Runs what would be run for the first mutant, with none planted: were that red, all would seem to be killed. */
export async function tryNothing(
  root: string,
  runner: Runner,
  mutants: readonly Mutant[],
  reach: Reach,
): Promise<void> {
  const stages = mutants.map((mutant) => stagesOf(mutant, reach)).find(([first]) => first !== undefined);
  const [first] = stages ?? [];
  if (first === undefined) return;
  const outcome = await runner.run({ ms: first.ms * PATIENCE + START, changed: [], asked: first.asked });
  if (typeof outcome === 'string' || outcome.failed.length > 0 || outcome.passed === 0)
    throw new Error(`Red though nothing is planted in ${root}: ${JSON.stringify(outcome)}`);
}

interface Stage {
  readonly asked: readonly Asked[];
  readonly ms: number;
}

/** The tests that reach a mutant, the quick ones first and those nearest to it first among them. */
function stagesOf(mutant: Mutant, reach: Reach): Stage[] {
  const tests = testsFor(mutant, reach);
  const quick = tests.filter(({ ms }) => ms < QUICK);
  const slow = tests.filter(({ ms }) => ms >= QUICK);
  return [quick, slow].map((some) => stage(some, mutant)).filter(({ asked }) => asked.length > 0);
}

function testsFor({ file, within }: Mutant, { places, reached }: Reach): Reached[] {
  const mark = places.findIndex((place) => place.file === file && place.within === within);
  const hits = reached.filter((one) => one.places.includes(mark));
  // what is done while a file is read serves all of its tests
  const whole = new Set(hits.filter(({ test }) => test === undefined).map((one) => one.file));
  return reached.filter((one) => one.test !== undefined && (whole.has(one.file) || hits.includes(one)));
}

function stage(tests: readonly Reached[], mutant: Mutant): Stage {
  const sorted = tests
    .map((one) => ({ one, far: distance(one, mutant) }))
    .sort((a, b) => a.far - b.far)
    .map(({ one }) => one);
  const byFile = new Map<string, string[]>();
  let ms = 0;
  for (const { file, test = '', ms: took } of sorted) {
    if (ms + took > LONGEST && ms > 0) continue;
    ms += took;
    byFile.set(file, [...(byFile.get(file) ?? []), test]);
  }
  return { asked: [...byFile].map(([file, names]) => ({ file, tests: names })), ms };
}

/** How far a test is from a source: of its name, of its folder, or anywhere; then by how much it does at all. */
function distance({ file, places, ms }: Reached, mutant: Mutant): number {
  const name = basename(file).split('.')[0];
  const sameName = name === basename(mutant.file).split('.')[0];
  const sameFolder = dirname(file).replace('tests', 'src') === dirname(mutant.file);
  return (sameName ? 0 : sameFolder ? 1 : 2) * 10_000 + ms + places.length;
}
