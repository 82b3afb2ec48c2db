import { otherSide, type Side } from '../row/step.ts';
import type { PartRecipe } from './recipe.ts';

export const rowsOf = (part: PartRecipe): number =>
  part.sections.reduce((sum, section) => sum + section.rows, 0);

/** The side of a row (from 1) when row 1 is on `row1`. */
export const sideOfRow = (row: number, row1: Side): Side => (row % 2 === 1 ? row1 : otherSide(row1));

/**
 * The side of each part's row 1: as the recipe says; else RS after a cast-on, WS after stitches were picked up,
 * and the next side of the part whose stitches it takes.
 */
export function firstSides(parts: readonly PartRecipe[]): readonly Side[] {
  const sides: Side[] = [];
  for (const part of parts) sides.push(part.firstSide ?? impliedSide(part, parts, sides));
  return sides;
}

function impliedSide(part: PartRecipe, parts: readonly PartRecipe[], known: readonly Side[]): Side {
  const { from } = part;
  if ('pickUp' in from) return 'WS';
  if ('castOn' in from) return 'RS';
  const parent = parts.findIndex((other) => other.name === from.part);
  const side = known[parent];
  const whole = parts[parent];
  return side === undefined || whole === undefined ? 'RS' : sideOfRow(rowsOf(whole) + 1, side);
}
