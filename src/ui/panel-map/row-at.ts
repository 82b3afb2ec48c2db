import type { PartShape, PieceShape } from './outline-of.ts';

/** A row of a piece: the part's index from 0, the row's number from 1. */
export interface RowPlace {
  readonly part: number;
  readonly row: number;
}

/** The row drawn at a point (mm, drawing's axes), or the nearest one beside it; undefined where nothing is drawn. */
export function rowAt({ parts }: PieceShape, x: number, y: number): RowPlace | undefined {
  let best: (RowPlace & { readonly far: number }) | undefined;
  parts.forEach((shape, part) => {
    const index = rowIndexAt(shape, y);
    const row = shape.rows[index];
    if (!row) return;
    const beside = Math.max(0, Math.min(row.left0, row.left1) - x, x - Math.max(row.right0, row.right1));
    const over = Math.max(0, row.top - y, y - row.bottom);
    const far = Math.hypot(beside, over);
    if (!best || far < best.far) best = { part, row: index + 1, far };
  });
  return best && { part: best.part, row: best.row };
}

/** Index of the row at a height, or of the first or last one below or above it; −1 for a part without rows. */
function rowIndexAt({ rows }: PartShape, y: number): number {
  let [low, high] = [0, rows.length - 1];
  while (low < high) {
    const middle = (low + high) >> 1;
    if ((rows[middle]?.top ?? 0) <= y) high = middle;
    else low = middle + 1;
  }
  return rows.length === 0 ? -1 : low;
}

/** Rows of all parts in a line, as the arrow keys walk them: the first row of the first part is 1. */
export const lineOf = (counts: readonly number[], { part, row }: RowPlace): number =>
  counts.slice(0, part).reduce((sum, count) => sum + count, 0) + row;

export function placeOnLine(counts: readonly number[], line: number): RowPlace {
  let left = Math.max(1, line);
  for (const [part, count] of counts.entries()) {
    if (left <= count) return { part, row: left };
    left -= count;
  }
  const last = counts.reduce((found, count, part) => (count > 0 ? part : found), 0);
  return { part: last, row: counts[last] ?? 0 };
}

/** Height (y) of the place after so many worked rows. */
export const heightAt = ({ rows, base }: PartShape, worked: number): number =>
  worked <= 0 ? base : (rows[Math.min(worked, rows.length) - 1]?.top ?? base);
