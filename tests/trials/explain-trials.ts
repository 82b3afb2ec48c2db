import fc from 'fast-check';
import { countAt } from '../../src/knit/piece/count/count-at.ts';
import { seenAt } from '../../src/knit/piece/count/look.ts';
import { type Explanation, explainCount } from '../../src/knit/piece/explain-count.ts';
import { plan } from '../../src/knit/piece/plan.ts';
import type { PlannedPart } from '../../src/knit/piece/planned.ts';
import type { Recipe } from '../../src/knit/piece/recipe.ts';
import { knittableRecipe } from '../arbitraries/knittable-recipe.ts';
import { shapedPanel } from '../arbitraries/shaped-panel.ts';
import {
  type KnownSlip,
  knitWithSlip,
  type SlipKind,
  type SlipTrial,
  slipIn,
  slipKinds,
} from '../arbitraries/slip.ts';

/** What came of one simulated slip. */
export interface TrialResult {
  readonly kind: SlipKind;
  readonly fabric: string;
  /** the count shows it at all */
  readonly shows: boolean;
  /** the true cause stood among the first three; and first, after the look that was asked for */
  readonly amongThree: boolean;
  readonly firstAfterLook: boolean;
  readonly firstBefore: boolean;
  readonly asked: string;
  /** enough to run it again */
  readonly told: string;
}

const causes: Readonly<Record<Exclude<SlipKind, 'missed tap' | 'doubled tap'>, Explanation['cause']>> = {
  'missed shaping': 'shaping missed',
  'doubled shaping': 'shaping doubled',
  'one edge only': 'one edge only',
  'dropped stitch': 'stitch dropped',
  'stray yarn-over': 'stray yarn-over',
  'spread short': 'spread short',
  'worked together': 'worked together',
  'cast-on miscounted': 'cast-on miscounted',
};

/** What the explanation has to say: who follows the screen after a wrong tap works a row twice, or never. */
function truthOf(slip: KnownSlip, tapped: number): { cause: Explanation['cause']; row: number | undefined } {
  switch (slip.kind) {
    case 'missed tap':
      return slip.follows === 'screen'
        ? { cause: 'shaping doubled', row: slip.row }
        : { cause: 'place behind', row: tapped + 1 };
    case 'doubled tap':
      return slip.follows === 'screen'
        ? { cause: 'shaping missed', row: slip.row }
        : { cause: 'place ahead', row: tapped - 1 };
    case 'dropped stitch':
    case 'stray yarn-over':
    case 'worked together':
    case 'cast-on miscounted':
      return { cause: causes[slip.kind], row: undefined };
    case 'missed shaping':
    case 'doubled shaping':
    case 'one edge only':
    case 'spread short':
      return { cause: causes[slip.kind], row: slip.row };
  }
}

/** Whether the explanation names what really happened: the cause, the row, the edge, how many. */
function isTrue(found: Explanation | undefined, slip: KnownSlip, tapped: number): boolean {
  const truth = truthOf(slip, tapped);
  if (found === undefined || found.cause !== truth.cause) return false;
  if (found.edge !== undefined && found.edge !== slip.edge) return false;
  if (truth.row !== undefined && !found.rows.includes(truth.row)) return false;
  return slip.kind === 'spread short' || slip.kind === 'cast-on miscounted'
    ? found.times === Math.abs(slip.times ?? 0)
    : truth.row !== undefined || found.times === 1;
}

export function runTrial(part: PlannedPart, trial: SlipTrial): TrialResult {
  const { slip, tapped, firm } = trial;
  const real = knitWithSlip(part, trial);
  const checks = firm === 0 ? [] : [{ row: firm, count: countAt(part, firm) ?? 0 }];
  const found = explainCount(part, tapped, real.onNeedle, { checks });
  const ask = found[0]?.ask;
  const after = ask
    ? explainCount(part, tapped, real.onNeedle, {
        checks,
        answers: [
          {
            look: ask,
            seen: seenAt(ask, {
              rows: real.rows.slice(ask.landmark),
              trace: real.trace,
              castOn: real.castOn,
            }),
          },
        ],
      })
    : found;
  return {
    kind: slip.kind,
    fabric: part.sections[part.rows[slip.row - 1]?.section ?? 0]?.fabric ?? '',
    shows: real.onNeedle !== countAt(part, tapped),
    amongThree: found.slice(0, 3).some((one) => isTrue(one, slip, tapped)),
    firstBefore: isTrue(found[0], slip, tapped),
    firstAfterLook: isTrue(after[0], slip, tapped),
    asked: ask?.code ?? '-',
    told: JSON.stringify({
      ...trial,
      counted: real.onNeedle,
      planned: countAt(part, tapped),
      found: found.map((f) => [f.cause, f.rows, f.likelihood.toFixed(2)]),
      after: after.map((f) => [f.cause, f.rows, f.likelihood.toFixed(2)]),
    }),
  };
}

/** `count` trials over random plans; kinds of slip in turn, as far as each plan has rows for them. */
export function explainTrials(count: number, seed: number): TrialResult[] {
  const results: TrialResult[] = [];
  for (let round = 0; results.filter((one) => one.shows).length < count; round += 1) {
    const part = randomPart(seed + round, round % 2 === 0);
    for (const [i, kind] of slipKinds.entries()) {
      const slips = part ? slipIn(part, kind) : null;
      if (!part || !slips) continue;
      const [trial] = fc.sample(slips, { seed: seed + 1000 * round + i, numRuns: 1 });
      if (trial) results.push(runTrial(part, trial));
    }
  }
  return results;
}

/** A part of a random plan: half of them panels of garments, half anything that can be knitted. */
export function randomPart(seed: number, isPanel: boolean): PlannedPart | undefined {
  const recipes: fc.Arbitrary<Recipe> = isPanel
    ? shapedPanel()
    : knittableRecipe().map(({ recipe }) => recipe);
  const [recipe] = fc.sample(recipes, { seed, numRuns: 1 });
  const planned = recipe ? plan(recipe) : undefined;
  if (!planned?.ok) return undefined;
  const long = planned.value.parts.filter((part) => part.rows.length >= 8);
  return long[seed % Math.max(1, long.length)];
}
