/** Runs in plain Node, bundled by build.ts: measures the craft without a page and prints the times as JSON. */

import type { Result } from '../../src/knit/fault.ts';
import { draft } from '../../src/knit/garment/draft.ts';
import { startingDesign } from '../../src/knit/garment/start.ts';
import { readPattern } from '../../src/knit/pattern/read-pattern.ts';
import { plan } from '../../src/knit/piece/plan.ts';
import type { Plan } from '../../src/knit/piece/planned.ts';
import { told } from '../told.ts';
import { median } from './statistics.ts';
import { bodyOf, longPanel, longPattern } from './workload.ts';

export interface NodeTimes {
  /** ms a time */
  readonly draftAndPlan: number;
  readonly stringify: number;
  readonly plan2000: number;
  readonly plan200: number;
  readonly read2000: number;
  readonly read200: number;
}

const rounds = Number(process.argv[2] ?? 15);

function must<T>(result: Result<T>): T {
  if (!result.ok) throw new Error(JSON.stringify(result.faults[0]));
  return result.value;
}

const design = startingDesign(
  { kind: 'pullover', armhole: 'set-in', neck: 'round', fit: 'standard' },
  bodyOf,
  'stocking',
  { stitches: 22, rows: 30 },
);

/** `plan` works every row of what it has spelled out: what comes back is verified. */
const draftAndPlan = (): Plan[] => must(draft(design)).recipes.map((recipe) => must(plan(recipe)));

/** Reads a text whole, with the plans of its pieces, and sees that every row of it was understood. */
function read(text: string, rows: number): void {
  const { pieces, lines } = readPattern(text);
  const made = pieces
    .flatMap((piece) => must(piece.plan).parts)
    .reduce((sum, part) => sum + part.rows.length, 0);
  const faults = lines.flatMap((line) => line.faults);
  if (made !== rows || faults.length > 0)
    throw new Error(`${made} of ${rows} rows were read. ${told(faults)}`);
}

/** Calls it so often that the clock's step and a single pause do not count; ms for one call. */
function timed(work: () => unknown, least: number): number {
  let calls = 0;
  const start = performance.now();
  let end = start;
  while (end - start < least) {
    work();
    calls += 1;
    end = performance.now();
  }
  return (end - start) / calls;
}

const plans = draftAndPlan();
const [panel200, panel2000] = [longPanel(200), longPanel(2000)];
const [text200, text2000] = [longPattern(200), longPattern(2000)];

const works: Readonly<Record<keyof NodeTimes, () => unknown>> = {
  draftAndPlan,
  stringify: () => JSON.stringify(plans),
  plan2000: () => must(plan(panel2000)),
  plan200: () => must(plan(panel200)),
  read2000: () => read(text2000, 2000),
  read200: () => read(text200, 200),
};

const names = Object.keys(works) as (keyof NodeTimes)[];
const LEAST_MS = 60;
for (const name of names) timed(works[name], 4 * LEAST_MS);
const times: Record<string, number[]> = {};
for (let round = 0; round < rounds; round += 1) {
  for (const name of round % 2 === 0 ? names : names.toReversed()) {
    times[name] = [...(times[name] ?? []), timed(works[name], LEAST_MS)];
  }
}
console.log(JSON.stringify(Object.fromEntries(names.map((name) => [name, median(times[name] ?? [])]))));
