import fc from 'fast-check';
import type { PartRecipe, Recipe, Section, Shaping } from '../../../src/knit/piece/recipe.ts';
import { withRows } from '../../../src/knit/piece/rework/lay-anew.ts';

/** What a knitter does to one piece: a section longer or shorter (in one of its parts or wherever it is called so), a neck begun earlier or later, stitches more or fewer. */
export type Change =
  | {
      readonly kind: 'rows';
      readonly everywhere: boolean;
      readonly part: number;
      readonly section: number;
      readonly by: number;
    }
  | { readonly kind: 'neck'; readonly by: number }
  | { readonly kind: 'stitches'; readonly part: number; readonly by: number };

export const someChange = (): fc.Arbitrary<Change> =>
  fc.oneof(
    {
      weight: 4,
      arbitrary: fc.record({
        kind: fc.constant('rows' as const),
        everywhere: fc.boolean(),
        part: fc.nat({ max: 5 }),
        section: fc.nat({ max: 5 }),
        by: fc.constantFrom(-16, -8, -4, -2, 2, 4, 8, 16, 24),
      }),
    },
    {
      weight: 2,
      arbitrary: fc.record({
        kind: fc.constant('neck' as const),
        by: fc.constantFrom(-20, -8, -4, 4, 8, 20),
      }),
    },
    {
      weight: 1,
      arbitrary: fc.record({
        kind: fc.constant('stitches' as const),
        part: fc.nat({ max: 5 }),
        by: fc.constantFrom(-8, -4, -2, -1, 1, 2, 4, 8),
      }),
    },
  );

/** The recipe so changed; undefined where it has no such place. Whether it can be knitted is for the planner to say. */
export function changed(recipe: Recipe, change: Change): Recipe | undefined {
  switch (change.kind) {
    case 'rows':
      return withMoreRows(recipe, change);
    case 'neck':
      return recipe.parts.length > 1 ? neckLater(recipe, change.by) : undefined;
    case 'stitches':
      return withStitches(recipe, change.part % recipe.parts.length, change.by);
  }
}

const longer = (section: Section | undefined, by: number): Section | undefined => {
  const made = section && section.rows + by >= 0 ? withRows(section, section.rows + by) : undefined;
  return made?.ok ? made.value : undefined;
};

function withMoreRows(
  recipe: Recipe,
  { part, section, by, everywhere }: Extract<Change, { kind: 'rows' }>,
): Recipe | undefined {
  const own = recipe.parts[part % recipe.parts.length];
  const name = own?.sections[section % Math.max(1, own.sections.length)]?.name;
  // both sides of a neck are one wish; the same name below the neck is another place
  const isMeant = (one: PartRecipe) =>
    one === own || (everywhere && 'part' in one.from && own !== undefined && 'part' in own.from);
  const parts = recipe.parts.map((one): PartRecipe | undefined => {
    const at = isMeant(one) ? one.sections.findIndex((two) => two.name === name) : -1;
    if (at < 0) return one;
    const made = longer(one.sections[at], by);
    return made && { ...one, sections: one.sections.map((two, i) => (i === at ? made : two)) };
  });
  return name === undefined || parts.includes(undefined)
    ? undefined
    : { ...recipe, parts: parts as readonly PartRecipe[] };
}

/** The first part ends so many rows later, and what goes on from it is so many rows lower. */
function neckLater(recipe: Recipe, by: number): Recipe | undefined {
  const parts = recipe.parts.map((one, i): PartRecipe | undefined => {
    if (one.sections.length === 0) return one;
    const at = i === 0 ? one.sections.length - 1 : 0;
    const made = longer(one.sections[at], i === 0 ? by : -by);
    return made && { ...one, sections: one.sections.map((two, n) => (n === at ? made : two)) };
  });
  return parts.includes(undefined) ? undefined : { ...recipe, parts: parts as readonly PartRecipe[] };
}

/** A part begins with more or fewer stitches; at a neck its middle has so many fewer or more, and a shoulder binds off as many more or fewer at last. */
function withStitches(recipe: Recipe, at: number, by: number): Recipe | undefined {
  const part = recipe.parts[at];
  if (!part) return undefined;
  const put = (own: PartRecipe, from: PartRecipe['from'], sections = own.sections): PartRecipe => ({
    ...own,
    from,
    sections,
  });
  const { from } = part;
  if ('castOn' in from)
    return {
      ...recipe,
      parts: recipe.parts.map((one) => (one === part ? put(one, { castOn: from.castOn + by }) : one)),
    };
  if ('pickUp' in from) {
    const pickUp = from.pickUp.map((one, i) =>
      i === from.pickUp.length - 1 ? { ...one, stitches: one.stitches + by } : one,
    );
    return { ...recipe, parts: recipe.parts.map((one) => (one === part ? put(one, { pickUp }) : one)) };
  }
  const edges = recipe.parts.filter((one) => 'part' in one.from && one.from.edge !== 'middle');
  const middle = recipe.parts.find((one) => 'part' in one.from && one.from.edge === 'middle');
  if (!middle || edges.length !== 2) return undefined;
  return {
    ...recipe,
    parts: recipe.parts.map((one) => {
      if (!('part' in one.from) || one.from.part !== recipe.parts[0]?.name) return one;
      const more = one === middle ? -2 * by : by;
      const moved = { ...one.from, stitches: one.from.stitches + more };
      return put(
        one,
        moved,
        one.sections.map((section) => withLastGroup(section, one === middle ? 0 : by)),
      );
    }),
  };
}

/** Shoulders are bound off in groups: the last of them takes what is more, so that as many are left. */
const withLastGroup = (section: Section, by: number): Section => ({
  ...section,
  shaping: section.shaping.map((one): Shaping => {
    if (one.kind !== 'bind off' || section.name !== 'shoulder') return one;
    const groups = one.groups.map((group, i) =>
      i === one.groups.length - 1 ? { ...group, stitches: group.stitches + by } : group,
    );
    return { ...one, groups };
  }),
});
