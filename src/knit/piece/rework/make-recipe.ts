import { mirrorRecipe } from '../mirror.ts';
import type { PlannedPart } from '../planned.ts';
import type { PartRecipe, Recipe, Section, Shaping } from '../recipe.ts';
import { put } from './put.ts';

/**
 * The recipe of one make (from 1) as it is planned now: the mirror image for every second one of a mirrored piece, with
 * what was reworked in place. `plans` are the make's parts in the recipe's order, as far as they are known.
 */
export function recipeOfMake(
  recipe: Recipe,
  make: number,
  plans: readonly (PlannedPart | undefined)[] = [],
): Recipe {
  const own = recipe.mirrored && make % 2 === 0 ? mirrorRecipe(recipe) : recipe;
  const parts = own.parts.map(
    (part, i) => plans[i]?.recipe ?? asPlannedThen(recipe.parts[i], plans[i]) ?? part,
  );
  return { ...own, makes: 1, mirrored: false, parts };
}

/** Rows in words were once left as they are in a mirror image: what was planned so goes on so. */
function asPlannedThen(
  part: PartRecipe | undefined,
  planned: PlannedPart | undefined,
): PartRecipe | undefined {
  if (!part || !planned || part.sections.every(({ words }) => words === undefined)) return undefined;
  const isSaid = planned.sections.every(({ first, last }, i) => {
    const words = part.sections[i]?.words;
    const rows = planned.rows.slice(first - 1, last);
    return (
      words === undefined ||
      rows.every(({ steps }, row) => JSON.stringify(steps) === JSON.stringify(words[row % words.length]))
    );
  });
  return isSaid ? part : undefined;
}

/**
 * The part as the first make was really knitted, for a second one that is to match it: reworked rows stay, and where
 * stitches were counted anew the difference becomes shaping of its own in the last rows before the count, where a
 * knitter would have put it.
 * @returns undefined where the part was never reworked, or where no row is left for the difference
 */
export function asReallyKnitted(part: PlannedPart): PartRecipe | undefined {
  const { recipe } = part;
  if (!recipe) return undefined;
  let sections: readonly Section[] = recipe.sections;
  for (let i = 0; i < sections.length; i += 1) {
    const section = sections[i] as Section;
    if (section.onNeedle === undefined) continue;
    const first = part.sections[i]?.first ?? 1;
    const off = section.onNeedle - (part.rows[first - 2]?.after ?? part.start);
    const { onNeedle: _counted, ...plain } = section;
    sections = put(sections, i, plain);
    if (off === 0) continue;
    const at = i === 0 ? 0 : i - 1;
    const changed = withChange(sections[at] as Section, off);
    if (!changed) return undefined;
    sections = put(sections, at, changed);
  }
  return { ...recipe, sections };
}

/** Leaves out shaping rows that account for the difference, the last ones first; else adds a row of its own, where one is free. */
function withChange(section: Section, off: number): Section | undefined {
  const i = section.shaping.findIndex(
    (one) => one.kind === 'edge' && perRow(one) * off < 0 && off % perRow(one) === 0,
  );
  const edge = section.shaping[i];
  if (edge?.kind === 'edge') {
    const times = Math.abs(off / perRow(edge));
    if (times <= edge.rows.length) {
      const rows = edge.rows.slice(0, edge.rows.length - times);
      const shaping =
        rows.length === 0
          ? section.shaping.filter((one) => one !== edge)
          : put(section.shaping, i, { ...edge, rows });
      return { ...section, shaping };
    }
  }
  const taken = new Set(section.shaping.flatMap(rowsOf));
  for (let row = section.rows; row >= 1; row -= 1) {
    if (!taken.has(row))
      return { ...section, shaping: [...section.shaping, { kind: 'across', row, by: off }] };
  }
  return undefined;
}

const perRow = (one: Extract<Shaping, { kind: 'edge' }>): number =>
  one.edge === 'both' ? 2 * one.by : one.by;

function rowsOf(shaping: Shaping): readonly number[] {
  if (shaping.kind === 'across') return [shaping.row];
  return 'rows' in shaping ? shaping.rows : shaping.groups.map((group) => group.row);
}
