import type { PartRecipe, Section } from '../recipe.ts';
import { roundLike } from './round-to.ts';
import type { Scale } from './scale.ts';
import { rowsOfGroups } from './scaled-groups.ts';
import { isBesideEdge } from './scaled-shaping.ts';

/** Rows that a stretch had, and has now. */
export interface Stood {
  readonly old: number;
  readonly now: number;
}

/**
 * Rows of each section in the new gauge. What goes on above a split is rounded together with the section below it, so that
 * pieces that were as high as each other are so again, wherever they are parted.
 * @param below the section below the first, where the part goes on from another
 * @returns with the last section, and what is below it where it goes on from there
 */
export function sectionRows(
  { sections }: PartRecipe,
  scale: Scale,
  below: Stood | undefined,
): { readonly rows: readonly number[]; readonly last: Stood } {
  const rows: number[] = [];
  let last: Stood = below ?? { old: 0, now: 0 };
  for (const [i, section] of sections.entries()) {
    const from = i === 0 ? last : { old: 0, now: 0 };
    const now = rowsFor(section, scale, from);
    rows.push(now);
    last = { old: from.old + section.rows, now: from.now + now };
  }
  return { rows, last };
}

/** On the same side at the end; a slope keeps the rows that its groups are worked on. */
function rowsFor(section: Section, scale: Scale, from: Stood): number {
  if (section.rows === 0) return 0;
  const slopes = section.shaping.flatMap((s) =>
    s.kind === 'bind off' || s.kind === 'cast on' || s.kind === 'turn'
      ? [rowsOfGroups(s.groups, scale, section.rows, isBesideEdge(s, section.shaping))]
      : [],
  );
  const least = Math.max(1, ...slopes);
  const top = from.old + section.rows;
  const wanted = roundLike(top * scale.rows, top) - from.now;
  return wanted >= least ? wanted : least + ((least + section.rows) % 2);
}
