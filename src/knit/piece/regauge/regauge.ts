import { assumedGauge, type FabricName } from '../../fabric.ts';
import { fault, ok, placed, type Result, refuse } from '../../fault.ts';
import type { Gauge } from '../../gauge.ts';
import { fabricOfGauge, type MeasuredGauge } from '../../measured-gauge.ts';
import { plan } from '../plan.ts';
import type { PlannedPart } from '../planned.ts';
import type { PartRecipe, Recipe } from '../recipe.ts';
import type { WorkBudget } from '../work-budget.ts';
import { type Means, type Nudge, PartInNewGauge, type Worked } from './part-in-gauge.ts';
import type { Resting } from './picked-up.ts';
import type { Scale } from './scale.ts';

/**
 * The same piece in another gauge: as wide and as high as before (or by `size` wider and higher), with her stitches
 * and rows. Ribs keep to their multiples, rows to their sides, splits and shoulders to their symmetry.
 * @param to stitches and rows per 100 mm; counted in another fabric than the recipe's, they are compared by the usual ratio
 * @param budget how much may be worked for it, where several pieces share it
 * @param resting what rests on holders of the garment's pieces so far; what rests here is written into it
 * @param nudges what some of its sections have more of than by the scale
 * @returns faults where the recipe has no gauge, cannot be knitted, or its shaping has no room in the new rows
 */
export function regauge(
  recipe: Recipe,
  to: MeasuredGauge,
  size: { readonly width: number; readonly height: number } = { width: 1, height: 1 },
  budget?: WorkBudget,
  resting: Resting = new Map(),
  nudges: readonly Nudge[] = [],
): Result<Recipe> {
  const { gauge } = recipe;
  if (!gauge) return refuse(fault('no gauge', { pieceName: recipe.name }));
  const fabric = to.fabric ?? gauge.fabric;
  const like = assumedGauge(fabricOfGauge(gauge), to, fabric);
  const scale: Scale = {
    stitches: (like.stitches / gauge.stitches) * size.width,
    rows: (like.rows / gauge.rows) * size.height,
  };
  if (!(scale.stitches > 0.05 && scale.stitches < 20 && scale.rows > 0.05 && scale.rows < 20)) {
    return refuse(fault('bad gauge'));
  }
  const before = plan(recipe, budget);
  if (!before.ok) return before;
  if (scale.stitches === 1 && scale.rows === 1) return ok(recipe);
  const hers: MeasuredGauge = fabric === undefined ? to : { ...to, fabric };
  const rest = { gauge: hers, ...otherGauges(recipe, gauge, like) };
  let first: Result<Recipe> | undefined;
  for (const sooner of SOONER) {
    const parts = partsOf(recipe, before.value.parts, scale, { resting, nudges, sooner });
    const made: Result<Recipe> = parts.ok ? ok({ ...recipe, ...rest, parts: parts.value }) : parts;
    const proven = made.ok ? plan(made.value, budget) : made;
    if (made.ok && proven.ok) return made;
    const faults = proven.ok ? [] : proven.faults;
    first ??= refuse(...faults);
    if (!faults.every(({ code }) => code === 'shaping needs more stitches')) break;
  }
  return first ?? refuse(fault('bad gauge'));
}

/** Where two edges come together too soon for their decreases, the neck's is begun and ended so many rows sooner. */
const SOONER = [0, 2, 4, 6, 8, 12];

function partsOf(
  recipe: Recipe,
  planned: readonly PlannedPart[],
  scale: Scale,
  means: Means,
): Result<PartRecipe[]> {
  const parts: PartRecipe[] = [];
  const left = new Map<string, Worked>();
  for (const part of recipe.parts) {
    const old = planned.find((p) => p.name === part.name);
    if (!old) continue;
    const made = new PartInNewGauge(part, old, scale, recipe, left, means).make();
    if (!made.ok)
      return refuse(...made.faults.map((f) => placed(f, { piece: recipe.name, part: part.name })));
    parts.push(made.value.part);
    left.set(part.name, made.value);
    if (part.end === 'hold') means.resting.set(old.left, made.value.left);
  }
  return ok(parts);
}

/** Other fabrics' gauges are taken to change as the main one does. */
function otherGauges({ gauges }: Recipe, from: Gauge, to: Gauge): Pick<Recipe, 'gauges'> {
  if (!gauges) return {};
  const scaled = Object.entries(gauges).map(([fabric, g]) => [
    fabric,
    { stitches: (g.stitches * to.stitches) / from.stitches, rows: (g.rows * to.rows) / from.rows },
  ]);
  return { gauges: Object.fromEntries(scaled) as Partial<Record<FabricName, Gauge>> };
}
