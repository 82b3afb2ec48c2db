import type { PlannedPart, PlannedRow } from '../piece/planned.ts';

const isLastBindOff = (row: PlannedRow): boolean => row.after === 0 && row.before > 0;

/** Rows of fabric: the row that binds everything off adds no height. */
export const rowsKnitted = (part: PlannedPart): number =>
  part.rows.filter((row) => !isLastBindOff(row)).length;

/** Stitches on the needle when only the bind-off or the holder is left to come. */
export function stitchesAtEnd(part: PlannedPart): number {
  const last = part.rows[part.rows.length - 1];
  if (!last) return part.start;
  return isLastBindOff(last) ? last.before : last.after;
}
