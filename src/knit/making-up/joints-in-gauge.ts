import type { PartRecipe, Recipe } from '../piece/recipe.ts';
import { roundLike } from '../piece/regauge/round-to.ts';
import type { Joint, Line, Stretch } from './joint.ts';

/**
 * Joints of a garment, told for the same pieces in another gauge: rows that they count go with the rows of the sections
 * that they lie in.
 */
export function jointsInGauge(
  joints: readonly Joint[],
  before: readonly Recipe[],
  after: readonly Recipe[],
): readonly Joint[] {
  const part = (pieces: readonly Recipe[], { piece, part: name }: Stretch): PartRecipe | undefined =>
    pieces.find((one) => one.name === piece)?.parts.find((one) => one.name === name);
  const line = (old: Line): Line =>
    old.map((stretch) => {
      const [was, is] = [part(before, stretch), part(after, stretch)];
      if (!stretch.rows || !was || !is) return stretch;
      const { first, last } = stretch.rows;
      return { ...stretch, rows: { first: rowsUpTo(first - 1, was, is) + 1, last: rowsUpTo(last, was, is) } };
    });
  return joints.map((joint) => {
    if (joint.kind === 'seam') return { ...joint, a: line(joint.a), b: line(joint.b) };
    if (joint.kind === 'left free') return { ...joint, line: line(joint.line) };
    return { ...joint, along: joint.along.map((one) => ({ ...one, line: line(one.line) })) };
  });
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
