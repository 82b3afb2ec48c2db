import { heightOf, widthOf } from '../gauge.ts';
import { gaugeOf } from './gauges.ts';
import { partWidths, rightEdgeShift } from './part-shape.ts';
import type { PlannedPart, PlannedRow } from './planned.ts';
import type { PartRecipe, Recipe } from './recipe.ts';

/**
 * The plans of a make laid on top of each other as they now are: a part begins where the one below it ends, also where
 * that one was planned anew, and stitches and rows are as large as the tension says in the fabric that it was measured
 * in. No row changes: steps, counts and shaping are the plans' own.
 * @param parts plans in force, in the recipe's order
 * @param recipe of this make (`recipeOfMake`)
 */
export function laidOut(parts: readonly PlannedPart[], recipe: Recipe): readonly PlannedPart[] {
  const before = new Map(parts.map((part) => [part.name, part]));
  const done = new Map<string, PlannedPart>();
  return parts.map((part) => {
    const parent = part.parent === undefined ? undefined : done.get(part.parent);
    const was = part.parent === undefined ? undefined : before.get(part.parent);
    const own = recipe.parts.find(({ name }) => name === part.name);
    const laid = laidOn(part, own, recipe, parent && was && { parent, was });
    done.set(part.name, laid);
    return laid;
  });
}

interface Below {
  /** as it lies now, and as it lay when the part was planned */
  readonly parent: PlannedPart;
  readonly was: PlannedPart;
}

function laidOn(part: PlannedPart, own: PartRecipe | undefined, recipe: Recipe, below: Below | undefined) {
  if (own === undefined || !belongs(part, own)) return part;
  const cells = cellsOf(part, own, recipe, below?.parent.cells.at(-1));
  const base = below ? topOf(below.parent) : part.base;
  const offset = below ? offsetOn(part, below) : part.offset;
  return { ...part, base, offset, cells, rows: raised(part.rows, { own, base, cells }) };
}

/** The one section that a plan may have more is the row in which all is bound off. */
const belongs = (part: PlannedPart, { sections }: PartRecipe): boolean =>
  part.sections.length === sections.length || part.sections.length === sections.length + 1;

type Cells = PlannedPart['cells'];

/**
 * A tension that names no fabric has nothing to set right; what was measured on the piece itself goes before it.
 * @param resting what a part without rows of its own rests on
 */
function cellsOf(
  part: PlannedPart,
  own: PartRecipe,
  recipe: Recipe,
  resting: Cells[number] | undefined,
): Cells {
  if (recipe.gauge?.fabric === undefined) return part.cells;
  const known = own.sections.map(({ fabric, measured }) => {
    const gauge = gaugeOf(recipe, fabric);
    return { width: widthOf(1, gauge), height: measured?.rowMm ?? heightOf(1, gauge) };
  });
  const plain = gaugeOf(recipe, 'stocking');
  const last = known.at(-1) ?? resting ?? { width: widthOf(1, plain), height: heightOf(1, plain) };
  return part.cells.map((_, i) => known[i] ?? last);
}

const topOf = (part: PlannedPart): number => part.rows.at(-1)?.height ?? part.base;

const rightOf = (part: PlannedPart): number => part.offset + rightEdgeShift(part, partWidths(part));

/** As many stitches from the right edge of the part below as before. */
function offsetOn(part: PlannedPart, { parent, was }: Below): number {
  const [now, then] = [parent, was].map(({ cells }) => cells.at(-1)?.width ?? 0) as [number, number];
  const stitches = then > 0 ? (part.offset - rightOf(was)) / then : 0;
  return rightOf(parent) + stitches * now;
}

interface Heights {
  readonly own: PartRecipe;
  readonly base: number;
  readonly cells: Cells;
}

function raised(rows: readonly PlannedRow[], { own, base, cells }: Heights): readonly PlannedRow[] {
  let height = base;
  let section = -1;
  return rows.map((row) => {
    const begins = row.section !== section;
    section = row.section;
    if (begins) height = own.sections[section]?.measured?.atMm ?? height;
    if (section < own.sections.length) height += cells[section]?.height ?? 0;
    return { ...row, height };
  });
}
