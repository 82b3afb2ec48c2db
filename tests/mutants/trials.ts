import { basename, dirname } from 'node:path';
import { placeName, type Reach } from './find-reach.ts';
import type { Step, Trial } from './live/orders.ts';
import type { Mutant } from './plant.ts';

/** Makes of mutants and of what the tests reach the list of what is to be tried, the most promising first. */
export function trialsOf(mutants: ReadonlyMap<number, Mutant>, reach: Reach): Trial[] {
  const testsAt = new Map<string, Step[]>();
  const filesAt = new Map<string, { file: string; steps: Step[] }[]>();
  const at = <T>(map: Map<string, T[]>, hit: number): T[] => {
    const name = reach.names[hit] ?? '';
    const list = map.get(name) ?? [];
    map.set(name, list);
    return list;
  };
  for (const { file, whole, tests } of reach.files) {
    const steps = tests.map(({ ms }, test) => ({ file, test, ms }));
    const green = steps.filter(({ test }) => tests[test]?.red === undefined);
    for (const hit of whole) at(filesAt, hit).push({ file, steps: green });
    for (const step of green)
      for (const hit of tests[step.test]?.hits ?? [])
        if (startsAfresh(file) || isModule(reach.names[hit])) at(filesAt, hit).push({ file, steps: [step] });
        else at(testsAt, hit).push(step);
  }
  const trials = [...mutants].map(([id, mutant]) => {
    const place = placeName(mutant.file, mutant.within);
    const anew = byFile((filesAt.get(place) ?? []).flatMap(({ steps }) => steps));
    const steps = testsAt.get(place) ?? [];
    return {
      id,
      source: mutant.file,
      steps: byPromise(steps, mutant).slice(0, MOST),
      fresh: anew
        .map(([file, steps]) => ({ file, steps: byPromise(steps, mutant), ms: sum(steps) }))
        .sort((a, b) => costOf(a, mutant) - costOf(b, mutant))
        .map(({ file, steps }) => ({ file, steps })),
    };
  });
  // in rounds through all folders, so that a run that is stopped tells of each; in a round what lies together
  return trials.sort(
    (a, b) =>
      roundOf(a.id) - roundOf(b.id) || (a.source < b.source ? -1 : a.source > b.source ? 1 : a.id - b.id),
  );
}

const ROUNDS = 4;
const roundOf = (id: number): number => id % ROUNDS;

/** So many tests are tried for a mutant at most. */
const MOST = 10_000;

/** A file whose tests load the modules themselves cannot be kept loaded beside others. */
const startsAfresh = (file: string): boolean =>
  file === 'tests/app/two-screens.test.ts' || file.includes('/every-fault/');

/** What stands in a module itself is done once, when it is first imported, be it in the midst of a test. */
const isModule = (name = ''): boolean => name.endsWith(' -1');

/** The steps of each file, each once. */
function byFile(steps: readonly Step[]): [string, Step[]][] {
  const files = new Map<string, Map<number, Step>>();
  for (const step of steps) {
    const known = files.get(step.file) ?? new Map<number, Step>();
    files.set(step.file, known.set(step.test, step));
  }
  return [...files].map(([file, tests]) => [file, [...tests.values()]]);
}

const sum = (steps: readonly Step[]): number => steps.reduce((all, { ms }) => all + ms, 0);

const byPromise = (steps: readonly Step[], mutant: Mutant): Step[] =>
  [...steps].sort((a, b) => costOf(a, mutant) - costOf(b, mutant));

/** What a test costs, ms; one that is named for the source, or lies in its folder, is worth a longer one elsewhere. */
function costOf({ file, ms }: { file: string; ms: number }, mutant: Mutant): number {
  const [own = '', named = ''] = [mutant.file, file].map((path) => basename(path).split('.')[0]);
  const sameName = named === own || named.startsWith(`${own}-`) || named.startsWith(`${own}s-`);
  const sameFolder = dirname(file).replace('tests', 'src') === dirname(mutant.file);
  return (ms + 1) * (sameName ? 0.02 : sameFolder ? 0.2 : 1);
}
