import { plan } from '../piece/plan.ts';
import type { PlannedPart } from '../piece/planned.ts';
import type { PartRecipe, Recipe } from '../piece/recipe.ts';
import { roundLike } from '../piece/regauge/round-to.ts';
import { scaledCount } from '../piece/regauge/shaped-to.ts';
import type { Joint, Line, Stretch } from './joint.ts';
import { stitchesAtEnd } from './top.ts';

/**
 * Joints of a garment, told for the same pieces in another gauge: rows that they count go with the rows of the sections
 * that they lie in, stitches with those of the edge.
 */
export function jointsInGauge(
  joints: readonly Joint[],
  before: readonly Recipe[],
  after: readonly Recipe[],
): readonly Joint[] {
  const part = (pieces: readonly Recipe[], { piece, part: name }: Stretch): PartRecipe | undefined =>
    pieces.find((one) => one.name === piece)?.parts.find((one) => one.name === name);
  const [old, now] = [endsOf(before), endsOf(after)];
  const line = (own: Line): Line =>
    own.map((stretch) => {
      const [was, is] = [part(before, stretch), part(after, stretch)];
      if (!was || !is) return stretch;
      const { rows, stitches } = stretch;
      return {
        ...stretch,
        ...(rows && {
          rows: { first: rowsUpTo(rows.first - 1, was, is) + 1, last: rowsUpTo(rows.last, was, is) },
        }),
        ...(stitches && { stitches: ofEnd(stitches, old(stretch), now(stretch)) }),
      };
    });
  return joints.map((joint) => {
    if (joint.kind === 'seam') return { ...joint, a: line(joint.a), b: line(joint.b) };
    if (joint.kind === 'left free') return { ...joint, line: line(joint.line) };
    return { ...joint, along: joint.along.map((one) => ({ ...one, line: line(one.line) })) };
  });
}

interface Ends {
  readonly stitches: number;
  /** stitches to 100 mm */
  readonly gauge: number;
}

function planned(recipe: Recipe): readonly PlannedPart[] {
  const made = plan(recipe);
  return made.ok ? made.value.parts : [];
}

/** Of a beginning or a top; each piece is planned once. */
function endsOf(pieces: readonly Recipe[]): (stretch: Stretch) => Ends {
  const known = new Map<Recipe, readonly PlannedPart[]>();
  const partsOf = (recipe: Recipe): readonly PlannedPart[] => {
    const parts = known.get(recipe) ?? planned(recipe);
    known.set(recipe, parts);
    return parts;
  };
  return ({ piece, part, edge }) => {
    const recipe = pieces.find(({ name }) => name === piece);
    const found = recipe && partsOf(recipe).find(({ name }) => name === part);
    const gauge = recipe?.gauge?.stitches ?? 1;
    if (!found) return { stitches: 0, gauge };
    return { stitches: edge === 'start' ? found.start : stitchesAtEnd(found), gauge };
  };
}

/** Counted from the end that is nearer: a shoulder has as many as every other shoulder of so many. */
function ofEnd(
  { from, to }: NonNullable<Stretch['stitches']>,
  old: Ends,
  now: Ends,
): NonNullable<Stretch['stitches']> {
  const scale = { stitches: now.gauge / old.gauge, rows: 1 };
  const at = (n: number): number =>
    2 * n <= old.stitches ? scaledCount(n, scale) : now.stitches - scaledCount(old.stitches - n, scale);
  return { from: at(from), to: at(to) };
}

/** How many rows of a part are as high now as so many were: where a section ends it ends again. */
function rowsUpTo(rows: number, was: PartRecipe, is: PartRecipe): number {
  let old = 0;
  let now = 0;
  for (const [i, section] of was.sections.entries()) {
    const own = is.sections[i]?.rows ?? section.rows;
    if (rows < old + section.rows) {
      const within = rows - old;
      return now + Math.min(own, roundLike((within * own) / section.rows, within));
    }
    old += section.rows;
    now += own;
  }
  return now + rows - old;
}
