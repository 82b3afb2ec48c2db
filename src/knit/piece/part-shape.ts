import type { PlannedPart } from './planned.ts';

/** Width in mm of the part at its start (index 0) and after each row. */
export function partWidths(part: PlannedPart): number[] {
  const first = part.cells[0]?.width ?? 0;
  return [
    part.start * first,
    ...part.rows.map((row) => row.after * (part.cells[row.section]?.width ?? first)),
  ];
}

/**
 * How far, in mm, the right edge has moved to the left (RS facing) from the part's start to its end. Shaping at the
 * right edge moves it by its stitches; shaping across or at the middle, and a change of fabric, draw both edges in alike.
 */
export function rightEdgeShift(
  part: PlannedPart,
  widths: readonly number[],
  upTo = part.rows.length,
): number {
  let shift = 0;
  for (let i = 0; i < upTo; i += 1) shift += rowShift(part, widths, i);
  return shift;
}

function rowShift(part: PlannedPart, widths: readonly number[], index: number): number {
  const row = part.rows[index];
  if (!row) return 0;
  const cell = part.cells[row.section]?.width ?? 0;
  let right = 0;
  let left = 0;
  for (const mark of row.shaping) {
    if (mark.edge === 'right') right -= mark.by * cell;
    if (mark.edge === 'left') left -= mark.by * cell;
  }
  const narrowed = (widths[index] ?? 0) - (widths[index + 1] ?? 0);
  return right + (narrowed - right - left) / 2;
}
