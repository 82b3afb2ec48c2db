import type { PlannedPart, PlannedRow } from './planned.ts';

/** What the plan itself changes before a row is worked; what is done before row 1 is the part's own set-up. */
export type PlannedChange =
  /** another needle, mm */
  | { readonly kind: 'needle'; readonly mm: number }
  /** a place to measure: mm from where the part begins to the needle, as planned */
  | { readonly kind: 'measure'; readonly mm: number };

/** A stretch shorter than this is past before a tension shows (common practice, no published source). */
const MEASURED_ROWS = 20;

/** What changes before a row of the part. */
export function changesBefore(part: PlannedPart, row: PlannedRow): readonly PlannedChange[] {
  const last = part.rows[row.n - 2];
  if (last === undefined) return [];
  const changes: PlannedChange[] = [];
  if (last.needle !== row.needle) changes.push({ kind: 'needle', mm: row.needle });
  if (isMeasured(part, last, row)) changes.push({ kind: 'measure', mm: last.height - part.base });
  return changes;
}

/** Where a long stretch ends and shaping begins: from here on its length cannot be mended any more. */
function isMeasured(part: PlannedPart, last: PlannedRow, row: PlannedRow): boolean {
  if (last.section === row.section) return false;
  const long = part.sections[last.section];
  const next = part.sections[row.section];
  // what is given as a length is measured all along
  if (!long || !next || long.length !== undefined) return false;
  return (
    long.last - long.first + 1 >= MEASURED_ROWS &&
    part.rows.slice(next.first - 1, next.last).some(({ shaping }) => shaping.length > 0) &&
    !part.rows.slice(long.first - 1, long.last).some(({ shaping }) => shaping.length > 0)
  );
}

/** How far the work is, mm, after so many rows of a part. */
export interface Lengths {
  /** from where the part begins */
  readonly soFar: number;
  /** to the end of the section in hand */
  readonly toGo: number;
}

/** As planned; where she measured, the plan has been made anew by it. */
export function lengthsAt(part: PlannedPart, worked: number): Lengths {
  const at = heightAfter(part, worked);
  const row = part.rows[worked];
  const section = row && part.sections[row.section];
  return { soFar: at - part.base, toGo: section ? heightAfter(part, section.last) - at : 0 };
}

/** mm from the place to where a row (from 1) begins. */
export const lengthTo = (part: PlannedPart, worked: number, row: number): number =>
  heightAfter(part, row - 1) - heightAfter(part, worked);

const heightAfter = (part: PlannedPart, rows: number): number => part.rows[rows - 1]?.height ?? part.base;
