import { fits } from '../fabric.ts';
import { counts } from '../piece/counts.ts';
import type { Edge, PartRecipe, Recipe, Section, Shaping } from '../piece/recipe.ts';
import { layAnew } from '../piece/rework/lay-anew.ts';
import { put } from '../piece/rework/put.ts';

/** What gives a shoulder its stitches: the neck beside it, or the whole panel, which is cast on with so many more. */
export type ShoulderFrom = 'neck' | 'cast-on';

/**
 * A panel whose shoulders at these edges are so many stitches wider (below 0 narrower) each; undefined where it has no such
 * shoulder, or nothing that it could take them from. Whether it can be knitted so is for the planner to say.
 * @param edges of the recipe: of half a front its outer one
 */
export function withShoulder(
  recipe: Recipe,
  edges: readonly Edge[],
  by: number,
  from: ShoulderFrom,
): Recipe | undefined {
  const made =
    from === 'neck'
      ? edges.reduce<Recipe | undefined>((now, edge) => now && besideNeck(now, edge, by), recipe)
      : castOn(recipe, edges, by);
  return made && edges.reduce<Recipe | undefined>((now, edge) => now && ended(now, recipe, edge, by), made);
}

/** The part that a shoulder ends: what goes on from the body at that edge, or the body itself. */
function leafAt({ parts }: Recipe, edge: Edge): number {
  const [body] = parts;
  const at = parts.findIndex(({ from }) => 'part' in from && from.part === body?.name && from.edge === edge);
  return at < 0 && parts.length === 1 ? 0 : at;
}

/** Of half a front the other edge is its neck. */
const isHalf = ({ role, makes }: Recipe): boolean =>
  role === 'left front' || role === 'right front' || (role === 'front' && makes > 1);

const other = (edge: Edge): Edge => (edge === 'right' ? 'left' : 'right');

/** The neck is so many stitches narrower there: its middle, what is bound off first of it, or its slant. */
function besideNeck(recipe: Recipe, edge: Edge, by: number): Recipe | undefined {
  const { parts } = recipe;
  const at = leafAt(recipe, edge);
  const leaf = parts[at];
  if (!leaf || (at === 0 && !isHalf(recipe))) return undefined;
  const middle = parts.findIndex(({ from }) => 'part' in from && from.edge === 'middle');
  if ('part' in leaf.from && middle >= 0) {
    const [more, fewer] = [taking(leaf, by), taking(parts[middle], -by)];
    return more && fewer && { ...recipe, parts: put(put(parts, at, more), middle, fewer) };
  }
  const left = leafAt(recipe, 'left');
  const [body] = parts;
  // the left side begins with the middle: of another right side it takes as many fewer or more with it
  const inRow = body === leaf ? undefined : firstGroup(parts[left], 'right', by, true);
  if (inRow) {
    const moved = put(parts, left, edge === 'left' ? inRow : (taking(inRow, -by) ?? inRow));
    const own = edge === 'left' ? moved[left] : taking(moved[at], by);
    return own && { ...recipe, parts: put(moved, at, own) };
  }
  const narrower = firstGroup(leaf, other(edge), by, false) ?? slanted(leaf, other(edge), by);
  return narrower && { ...recipe, parts: put(parts, at, narrower) };
}

/** From another part so many stitches more; undefined where it takes none, or none would be left. */
function taking(part: PartRecipe | undefined, by: number): PartRecipe | undefined {
  if (!part || !('part' in part.from) || part.from.stitches + by < 1) return undefined;
  return { ...part, from: { ...part.from, stitches: part.from.stitches + by } };
}

/** So many fewer in the first group that the part binds off at the edge; a group of one is none. @param isAtOnce it lies in its first pair of rows */
function firstGroup(
  part: PartRecipe | undefined,
  edge: Edge,
  by: number,
  isAtOnce: boolean,
): PartRecipe | undefined {
  const section = part?.sections.findIndex((one) => bindsOff(one, edge)) ?? -1;
  if (!part || (isAtOnce && section !== 0)) return undefined;
  const which = (groups: BindOff['groups']) => (!isAtOnce || (groups[0]?.row ?? 3) <= 2 ? 0 : -1);
  return regrouped(part, section, edge, -by, which, 2);
}

const bindsOff = ({ shaping }: Section, edge: Edge): boolean =>
  shaping.some((one) => one.kind === 'bind off' && one.edge === edge);

type BindOff = Extract<Shaping, { kind: 'bind off' }>;

/** One group of a section with more or fewer stitches; `least` stay in it. */
function regrouped(
  part: PartRecipe,
  section: number,
  edge: Edge,
  by: number,
  which: (groups: BindOff['groups']) => number,
  least: number,
): PartRecipe | undefined {
  const own = part.sections[section];
  const i = own?.shaping.findIndex((one) => one.kind === 'bind off' && one.edge === edge) ?? -1;
  const found = own?.shaping[i];
  if (!own || found?.kind !== 'bind off') return undefined;
  const at = which(found.groups);
  const group = found.groups[at];
  if (!group || group.stitches + by < least) return undefined;
  const groups = put(found.groups, at, { ...group, stitches: group.stitches + by });
  return withSection(part, section, { ...own, shaping: put(own.shaping, i, { ...found, groups }) });
}

const withSection = (part: PartRecipe, i: number, section: Section): PartRecipe => ({
  ...part,
  sections: put(part.sections, i, section),
});

/** So many decreases fewer along the neck, of the section that has most of them. */
function slanted(part: PartRecipe, edge: Edge, by: number): PartRecipe | undefined {
  const all = part.sections.flatMap(({ shaping }, section) =>
    shaping.flatMap((one, i) =>
      one.kind === 'edge' && one.edge === edge && one.by === -1 ? [{ one, section, i }] : [],
    ),
  );
  const [most] = all.sort((a, b) => b.one.rows.length - a.one.rows.length);
  const section = most && part.sections[most.section];
  if (!most || !section) return undefined;
  const times = most.one.rows.length - by;
  const laid = times < 1 ? undefined : layAnew(most.one.rows, section.rows, section.rows, times);
  if (!laid?.ok) return undefined;
  const shaping = put(section.shaping, most.i, { ...most.one, rows: laid.value });
  return withSection(part, most.section, { ...section, shaping });
}

/** Both shoulders of a panel, or that of a half: all of it is wider, from its cast-on up, where the fabric it begins with takes that many. */
function castOn(recipe: Recipe, edges: readonly Edge[], by: number): Recipe | undefined {
  const { parts } = recipe;
  const [body] = parts;
  if (!body || !('castOn' in body.from)) return undefined;
  if (edges.length !== (isHalf(recipe) ? 1 : 2)) return undefined;
  const all = body.from.castOn + edges.length * by;
  const fabric = body.sections[0]?.fabric;
  if (fabric && fits(fabric, body.from.castOn).fits && !fits(fabric, all).fits) return undefined;
  const sides = parts.map((part, i): PartRecipe => {
    if (i === 0) return { ...part, from: { castOn: all } };
    return edges.some((edge) => leafAt(recipe, edge) === i) ? (taking(part, by) ?? part) : part;
  });
  return { ...recipe, parts: sides };
}

/** What is bound off at the end of the shoulder: where no stitch was left after its groups the last of them takes the difference. */
function ended(recipe: Recipe, was: Recipe, edge: Edge, by: number): Recipe | undefined {
  const at = leafAt(recipe, edge);
  const part = recipe.parts[at];
  const left = counts(was)[at]?.left ?? 0;
  if (!part) return undefined;
  const isWhole = at === 0 && !isHalf(recipe);
  if (left + (isWhole ? 2 : 1) * by > 0 && left > 0) return recipe;
  const section = part.sections.map((one) => bindsOff(one, edge)).lastIndexOf(true);
  const made = regrouped(part, section, edge, by, (groups) => groups.length - 1, 1);
  return made && { ...recipe, parts: put(recipe.parts, at, made) };
}
