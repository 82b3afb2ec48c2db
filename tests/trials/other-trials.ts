import fc from 'fast-check';
import { countAt } from '../../src/knit/piece/count/count-at.ts';
import { findPlace } from '../../src/knit/piece/find-place.ts';
import { plan } from '../../src/knit/piece/plan.ts';
import type { PlannedPart } from '../../src/knit/piece/planned.ts';
import type { Recipe } from '../../src/knit/piece/recipe.ts';
import { rework } from '../../src/knit/piece/rework.ts';
import { ripBack } from '../../src/knit/piece/rip-back.ts';
import { workRow } from '../../src/knit/row/work.ts';
import { knittableRecipe } from '../arbitraries/knittable-recipe.ts';
import { shapedPanel } from '../arbitraries/shaped-panel.ts';
import { trueObservations } from '../arbitraries/true-observations.ts';

/** A random planned piece with one of its parts and a row of it; every one can be found again by its number. */
export function randomPlace(
  seed: number,
): { recipe: Recipe; index: number; part: PlannedPart; rows: number } | undefined {
  const recipes: fc.Arbitrary<Recipe> =
    seed % 2 === 0 ? shapedPanel() : knittableRecipe().map(({ recipe }) => recipe);
  const [recipe] = fc.sample(recipes, { seed, numRuns: 1 });
  const planned = recipe ? plan(recipe) : undefined;
  if (!recipe || !planned?.ok) return undefined;
  const index = seed % planned.value.parts.length;
  const part = planned.value.parts[index] as PlannedPart;
  if (part.rows.length < 4) return undefined;
  const [rows] = fc.sample(fc.integer({ min: 0, max: part.rows.length }), { seed, numRuns: 1 });
  return { recipe, index, part, rows: rows ?? 0 };
}

export interface PlaceTrials {
  readonly trials: number;
  /** the true row was not among those found */
  readonly missed: number;
  /** rows left on average after one, two, three ... observations */
  readonly left: readonly number[];
}

export function placeTrials(count: number, seed: number): PlaceTrials {
  let trials = 0;
  let missed = 0;
  const sums: number[] = [];
  const times: number[] = [];
  for (let i = 0; trials < count; i += 1) {
    const place = randomPlace(seed + i);
    if (!place) continue;
    const [seen] = fc.sample(trueObservations(place.part, place.rows), { seed: seed + i, numRuns: 1 });
    const found = findPlace(place.part, seen ?? []);
    trials += 1;
    if (!found.rows.includes(place.rows)) missed += 1;
    found.narrowed.forEach((left, at) => {
      sums[at] = (sums[at] ?? 0) + left;
      times[at] = (times[at] ?? 0) + 1;
    });
  }
  return { trials, missed, left: sums.map((sum, i) => sum / (times[i] ?? 1)) };
}

export interface ReworkTrials {
  readonly trials: number;
  readonly met: number;
  readonly refused: number;
  /** worked rows changed, a row that cannot be worked, or another end than planned */
  readonly broken: number;
  readonly why: Readonly<Record<string, number>>;
}

export function reworkTrials(count: number, seed: number): ReworkTrials {
  let trials = 0;
  let met = 0;
  let broken = 0;
  const why: Record<string, number> = {};
  for (let i = 0; trials < count; i += 1) {
    const place = randomPlace(seed + i);
    const off = [-3, -2, -1, 1, 2, 3][i % 6] ?? 1;
    if (!place || place.rows >= place.part.rows.length - 1) continue;
    const { recipe, index, part, rows } = place;
    const stitches = (countAt(part, rows) ?? 0) + off;
    if (stitches < 1) continue;
    trials += 1;
    const made = rework(recipe, index, part, rows, { kind: 'accept', stitches });
    if (!made.ok) {
      const code = made.faults[0]?.code ?? '';
      why[code] = (why[code] ?? 0) + 1;
    } else if (isSound(part, made.value.parts[0]?.part, rows, stitches)) met += 1;
    else broken += 1;
  }
  return { trials, met, refused: trials - met - broken, broken, why };
}

/** Worked rows identical, the rest worked from the stitches really there to the end that was planned. */
function isSound(
  before: PlannedPart,
  after: PlannedPart | undefined,
  worked: number,
  stitches: number,
): boolean {
  if (!after || JSON.stringify(after.rows.slice(0, worked)) !== JSON.stringify(before.rows.slice(0, worked)))
    return false;
  let onNeedle = stitches;
  for (const row of after.rows.slice(worked)) {
    const done = workRow(row.steps, onNeedle);
    if (!done.ok || row.before !== onNeedle || done.value.after !== row.after) return false;
    onNeedle = row.after;
  }
  const end = (part: PlannedPart) => part.rows.findLast((row) => row.after > 0)?.after;
  return end(before) === end(after) && countAt(after, worked) === stitches;
}

/** Rips back and knits on again, row by row: counts that differ from those at first. */
export function ripTrials(count: number, seed: number): { trials: number; differing: number } {
  let trials = 0;
  let differing = 0;
  for (let i = 0; trials < count; i += 1) {
    const place = randomPlace(seed + i);
    if (!place || place.rows < 2) continue;
    const { part, rows } = place;
    const to = (i * 7919) % rows;
    const ripped = ripBack(part, rows, { to });
    trials += 1;
    if (!ripped.ok || !sameForward(part, ripped.value.count, to, rows)) differing += 1;
  }
  return { trials, differing };
}

function sameForward(part: PlannedPart, count: number, to: number, rows: number): boolean {
  let onNeedle = count;
  for (const row of part.rows.slice(to, rows)) {
    const worked = workRow(row.steps, onNeedle);
    if (!worked.ok) return false;
    onNeedle = worked.value.after;
    if (onNeedle !== countAt(part, row.n)) return false;
  }
  return true;
}
