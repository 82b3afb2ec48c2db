import type { PlannedPart, PlannedRow } from '../planned.ts';

/** A row as it lies in the fabric: what its shaping added to the count, by where it is seen. */
export interface LaidRow {
  readonly right: number;
  readonly left: number;
  /** spread over the row, or at the middle */
  readonly across: number;
  /** bound off or cast on in a group */
  readonly group: number;
}

/** A stretch of knitting as it lies there, from a landmark up to the needle. */
export interface Lie {
  /** from the bottom; the last one hangs on the needle */
  readonly rows: readonly LaidRow[];
  /** a stitch that ran down, a hole that no instruction asked for, two stitches in one, or none of them */
  readonly trace: 'ladder' | 'hole' | 'joined' | 'none';
  /** stitches of the cast-on edge beside those planned; as planned where it is not said */
  readonly castOn?: number;
}

export const plainRow: LaidRow = { right: 0, left: 0, across: 0, group: 0 };

export function laidRow(row: PlannedRow): LaidRow {
  const laid = { right: 0, left: 0, across: 0, group: 0 };
  for (const mark of row.shaping) {
    if (mark.kind === 'bind off' || mark.kind === 'cast on') laid.group += mark.by;
    else if (mark.edge === 'right' || mark.edge === 'left') laid[mark.edge] += mark.by;
    else laid.across += mark.by;
  }
  return laid;
}

/** Rows `after` + 1 to `to` of the plan as they would lie there. */
export const laidRows = (part: PlannedPart, after: number, to: number): LaidRow[] =>
  part.rows.slice(after, to).map(laidRow);

export const changeOfRow = (row: LaidRow): number => row.right + row.left + row.across + row.group;
