import type { PlannedPart } from '../planned.ts';

/**
 * Stitches on the needle when `rows` of the part are worked; undefined beyond its end. Where they were counted
 * anew at that row (a rework), the counted ones.
 */
export function countAt(part: PlannedPart, rows: number): number | undefined {
  if (!Number.isSafeInteger(rows) || rows < 0 || rows > part.rows.length) return undefined;
  const counted = part.sections.find(
    (section) => section.onNeedle !== undefined && section.first === rows + 1,
  );
  return counted?.onNeedle ?? (rows === 0 ? part.start : part.rows[rows - 1]?.after);
}
