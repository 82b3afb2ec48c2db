import { expect } from 'vitest';
import { type BodyTable, bodyOfSize } from '../../src/knit/garment/bodies.ts';
import type { Body, Design } from '../../src/knit/garment/design.ts';
import { type Draft, draft } from '../../src/knit/garment/draft.ts';
import type { Gauge } from '../../src/knit/gauge.ts';
import { plan } from '../../src/knit/piece/plan.ts';
import type { PlannedPart } from '../../src/knit/piece/planned.ts';
import type { Recipe } from '../../src/knit/piece/recipe.ts';
import { told } from '../told.ts';

export const inch = (n: number): number => n * 25.4;
/** Stitches and rows to the inch. */
export const perInch = (stitches: number, rows: number): Gauge => ({
  stitches: stitches / 0.254,
  rows: rows / 0.254,
});

export function bodyOf(table: BodyTable, size: string): Body {
  const body = bodyOfSize(table, size);
  if (!body) throw new Error(`no ${size} among ${table}`);
  return body;
}

/** Drafted once for all that is asked of it. */
export function drafted(design: Design): Draft {
  const form = JSON.stringify(design);
  const known = drafts.get(form);
  if (known) return known;
  const made = draft(design);
  if (!made.ok) throw new Error(told(made.faults));
  drafts.set(form, made.value);
  return made.value;
}

const drafts = new Map<string, Draft>();

export function mainPart({ recipes }: Draft, name: string): PlannedPart {
  const recipe = recipes.find((r) => r.name === name);
  const planned = recipe && (plans.get(recipe) ?? plan(recipe));
  if (recipe && planned) plans.set(recipe, planned);
  const part = planned?.ok ? planned.value.parts[0] : undefined;
  if (!part) throw new Error(`no ${name}`);
  return part;
}

const plans = new WeakMap<Recipe, ReturnType<typeof plan>>();

/** Stitches at the end of a section. */
export function countAtEnd(part: PlannedPart, section: string): number {
  const { last } = part.sections.find((s) => s.name === section) ?? { last: 0 };
  return part.rows[last - 1]?.after ?? Number.NaN;
}

/** Ours against what is printed: `by` is what the rib's repeat, a pair of rows or the quarter inch of a tape make of it. */
export function near(found: number, printed: number, by: number, what: string): void {
  expect(Math.abs(found - printed), `${what}: ${found}, printed ${printed}`).toBeLessThanOrEqual(by + 1e-9);
}
