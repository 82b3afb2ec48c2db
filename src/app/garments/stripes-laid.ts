import { asPlanned } from '../../knit/piece/as-planned.ts';
import type { Recipe } from '../../knit/piece/recipe.ts';
import { stripedThrough } from '../../knit/yarn/striped-through.ts';
import { isStriped, type Striped } from '../../knit/yarn/stripes.ts';
import type { PassedOn } from '../../store/share/link.ts';
import { numbered } from './save-new.ts';

/**
 * What came with stripes and has other rows here, in another size or gauge: they are laid through its pieces anew, in
 * those that were striped; what its maker changed from a row on was of her own rows.
 */
export function stripesLaid(passed: PassedOn, here: PassedOn): PassedOn {
  if (!isStriped(passed) || JSON.stringify(rowsOf(passed.pieces)) === JSON.stringify(rowsOf(here.pieces)))
    return here;
  const { restriped: _ofHerRows, striped, ...rest } = here;
  const laid = striped && laidThrough(passed, here, striped);
  return { ...rest, ...(laid && { striped: laid }) };
}

function laidThrough(
  passed: PassedOn,
  { name, pieces, joints }: PassedOn,
  striped: Readonly<Record<string, Striped>>,
): Readonly<Record<string, Striped>> {
  const planned = asPlanned({ name, pieces, ...(joints && { joints }) });
  if (!planned.ok) return {};
  const lies = stripedThrough(planned.value);
  // by the place that a piece has: another size may name it otherwise
  const were = numbered(passed.pieces).filter(({ id }) => Object.hasOwn(striped, id));
  const laid = numbered(pieces).flatMap(({ id, recipe }): [string, Striped][] => {
    const own = were.some((one) => one.id === id) ? lies.get(recipe.name) : undefined;
    return own ? [[id, own]] : [];
  });
  return Object.fromEntries(laid);
}

const rowsOf = (pieces: readonly Recipe[]): readonly (readonly number[])[] =>
  pieces.map(({ parts }) => parts.flatMap(({ sections }) => sections.map(({ rows }) => rows)));
