import type { PlannedPart } from '../piece/planned.ts';
import { lineBelow, type Restriped, rowsBelow, type Stripe } from './stripes.ts';

/** A make as far as it is knitted. */
export interface StripedMake {
  /** the piece's id */
  readonly piece: string;
  readonly make: number;
  readonly parts: readonly PlannedPart[];
  /** rows worked, by part */
  readonly worked: readonly number[];
}

/**
 * Other stripes for the rows of a make from a height on. What is knitted keeps its colours; what is not goes on as if the
 * stripes had begun at that height, so that two makes which lie beside each other meet again where the further one ends.
 * @param height row of the piece, counted from its cast-on through its parts, with which the stripes begin
 * @returns one change for each part in which rows to come begin
 */
export function restripedFrom(
  { piece, make, parts, worked }: StripedMake,
  height: number,
  stripes: readonly Stripe[],
): readonly Restriped[] {
  const changed = new Set<PlannedPart>();
  const found: Restriped[] = [];
  for (const [i, part] of parts.entries()) {
    const below = rowsBelow(parts, part);
    const row = Math.max(height - below, (worked[i] ?? 0) + 1, 1);
    const goesOn = lineBelow(parts, part).some((one) => changed.has(one));
    if (goesOn || row > part.rows.length) continue;
    changed.add(part);
    found.push({ piece, make, part: i, row, at: below + row - height + 1, stripes });
  }
  return found;
}

/**
 * The row with which other stripes begin unless she says otherwise: the first from `n` on that is worked on the right side.
 * A colour that is taken up on the wrong side shows as a broken line on the right one (common practice, no published
 * source); where no such row is left, `n` itself.
 */
export const rowToStripe = ({ rows }: PlannedPart, n: number): number =>
  rows.find((row) => row.n >= n && row.side === 'RS')?.n ?? n;

/** Rows of a make that lie at or above a height and are knitted already. */
export const knittedAbove = ({ parts, worked }: StripedMake, height: number): number =>
  parts.reduce((sum, part, i) => {
    const rows = worked[i] ?? 0;
    return sum + Math.min(rows, Math.max(0, rowsBelow(parts, part) + rows - height + 1));
  }, 0);

/** Changes with further ones of a make: of its rows to come, the last word holds. */
export function withRestriped(
  before: readonly Restriped[],
  { piece, make, parts }: StripedMake,
  more: readonly Restriped[],
): readonly Restriped[] {
  const isOver = (old: Restriped): boolean =>
    old.piece === piece &&
    old.make === make &&
    more.some(({ part, row }) => {
      const [from, of] = [parts[part], parts[old.part]];
      if (!from || !of) return false;
      return from === of ? row <= old.row : lineBelow(parts, of).includes(from);
    });
  return [...before.filter((old) => !isOver(old)), ...more];
}
