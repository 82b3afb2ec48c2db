import type { Fault } from '../../../fault.ts';
import type { Edge } from '../../../piece/recipe.ts';
import { expandRow } from '../../../row/expand.ts';
import type { Item } from '../../../row/read/notation.ts';
import { settle } from '../../../row/read/settle.ts';
import { shortenWorks } from '../../../row/shorten.ts';
import type { Side } from '../../../row/step.ts';
import type { StitchName } from '../../../stitch.ts';
import { type Border, type Build, nextSide, type PartBuild } from './build.ts';
import { type Kind, pushRow } from './push-row.ts';
import { spellFabric } from './spell.ts';

export const hasBorders = ({ borders }: PartBuild): boolean =>
  borders.right !== undefined || borders.left !== undefined;

/** From the next row on so many stitches at the edge are worked in a fabric of their own. */
export function keepBorder(
  part: PartBuild,
  at: Edge,
  stitches: number,
  rows: readonly string[],
  throughout?: true,
): void {
  const phase = nextSide(part) === 'RS' ? 0 : 1;
  part.borders = {
    ...part.borders,
    [at]: {
      stitches,
      rows,
      first: part.rows.length,
      phase,
      since: part.rows.length,
      ...(throughout ? { throughout } : {}),
    },
  };
}

/** Those that are there were just said again: another fabric of the rest leaves them. */
export function keepOn(part: PartBuild): void {
  const { right, left } = part.borders;
  const since = part.rows.length;
  part.borders = {
    ...(right === undefined ? {} : { right: { ...right, since } }),
    ...(left === undefined ? {} : { left: { ...left, since } }),
  };
}

/** Another fabric is for all stitches, unless what is kept was said just before it. */
export function dropBorders(part: PartBuild): void {
  for (const edge of ['right', 'left'] as const) {
    const border = part.borders[edge];
    if (!border?.throughout && border?.since !== part.rows.length) dropBorderAt(part, edge);
  }
}

/** Stitches bound off or cast on at the edge end what was kept there. */
export function dropBorderAt(part: PartBuild, edge: Edge): void {
  if (part.borders[edge] === undefined) return;
  const { [edge]: _, ...other } = part.borders;
  part.borders = other;
}

/**
 * The stitches of the part's next plain row, from the right edge to the left, what is kept at its edges included; 'patt'
 * where the fabric between is not known. Undefined where nothing is known.
 */
export function spellPart(part: PartBuild, side: Side, count: number): StitchName[] | undefined {
  const main = spellFabric(part.fabric, part.fabricRow, side, part.column, count);
  if (!hasBorders(part)) return main;
  const out = main ?? new Array<StitchName>(count).fill('patt');
  const { right, left } = part.borders;
  for (const [i, work] of (right ? stitchesOf(right, part, side) : []).entries())
    if (i < count) out[i] = work;
  for (const [i, work] of (left ? stitchesOf(left, part, side) : []).entries())
    if (i < count) out[count - 1 - i] = work;
  return out;
}

/** From the edge inwards, so that both edges are alike. */
function stitchesOf(border: Border, part: PartBuild, side: Side): StitchName[] {
  const worked = part.rows.length - border.first + border.phase;
  // of two rows the side says which, however many were worked in another part
  const at = border.rows.length === 2 ? (side === 'RS' ? 0 : 1) : Math.max(0, worked) % border.rows.length;
  const row = border.rows[at] ?? 'k';
  return Array.from({ length: border.stitches }, (_, i) =>
    (row.charAt(i % row.length) === 'k') === (side === 'RS') ? 'k' : 'p',
  );
}

/** A row that the text spells, over the stitches between what is kept at the edges. */
export function makeBorderedRow(
  build: Build,
  part: PartBuild,
  items: readonly Item[],
  kind: Kind,
): Fault | undefined {
  const side = nextSide(part);
  const { right, left } = part.borders;
  const [begin, end] = side === 'RS' ? [right, left] : [left, right];
  const between = part.live - (begin?.stitches ?? 0) - (end?.stitches ?? 0);
  const settled = settle(items, { stitches: between, markers: [] });
  if (!settled.ok) return settled.faults[0];
  const works = [
    ...(begin ? stitchesOf(begin, part, side) : []),
    ...expandRow(settled.value.steps, between),
    ...(end ? stitchesOf(end, part, side).reverse() : []),
  ];
  return pushRow(build, part, shortenWorks(works), { kind, advance: true });
}
