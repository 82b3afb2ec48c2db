import { ok, type Result } from '../../fault.ts';
import type { Said } from '../count/advice.ts';
import { plan } from '../plan.ts';
import type { PlannedPart, ProvenPart } from '../planned.ts';
import { provePart } from '../prove.ts';
import type { PartRecipe, Recipe } from '../recipe.ts';

/** A new plan for a make; what is worked of it is the old one's, row for row. */
export interface Rework {
  /** the parts that change: the one in hand first, later ones with it where the wish reaches into them */
  readonly parts: readonly ReworkedPart[];
  /** how it is brought about; the sentence is made in src/words */
  readonly how: Said;
}

export interface ReworkedPart {
  /** its index in the recipe */
  readonly index: number;
  /** the plan, with its own `recipe` in it */
  readonly part: ProvenPart;
  readonly rows: { readonly was: number; readonly now: number };
}

/** What a rework starts from. */
export interface Job {
  readonly recipe: Recipe;
  readonly index: number;
  readonly part: PlannedPart;
  readonly worked: number;
  readonly base: PartRecipe;
}

/** Plans the make with the changed parts, puts the worked rows as they were under the new ones, and works all of it. */
export function replan(
  { recipe, index, part, worked }: Job,
  changed: ReadonlyMap<number, PartRecipe>,
  how: Said,
): Result<Rework> {
  const parts = recipe.parts.map((one, i) => changed.get(i) ?? one);
  const planned = plan({ ...recipe, makes: 1, mirrored: false, parts });
  if (!planned.ok) return planned;
  const out: ReworkedPart[] = [];
  for (const [i, own] of changed) {
    const fresh = planned.value.parts[i];
    if (!fresh) continue;
    const rows = i === index ? [...part.rows.slice(0, worked), ...fresh.rows.slice(worked)] : fresh.rows;
    const made: PlannedPart = { ...fresh, rows, recipe: own };
    const proven = provePart(made);
    if (!proven.ok) return proven;
    const was = i === index ? part.rows.length : recipe.parts[i] ? rowsOfRecipe(recipe.parts[i]) : 0;
    out.push({ index: i, part: proven.value, rows: { was, now: rows.length } });
  }
  return ok({ parts: out, how });
}

const rowsOfRecipe = (part: PartRecipe | undefined): number =>
  (part?.sections ?? []).reduce((sum, section) => sum + section.rows, part?.end === 'bind off' ? 1 : 0);
