import { type Fault, fault, placed } from '../fault.ts';
import { workRow } from '../row/work.ts';
import type { PlannedPart } from './planned.ts';

/**
 * Knits a planned part by the row language alone: each row must use up exactly what the last one left and leave
 * exactly what it states; where a section begins with stitches that were counted on the needle, it goes on from
 * those. A fault here is a defect of the planner, never of the recipe; such a plan is not shown.
 */
export function provePart(part: PlannedPart): Fault[] {
  let onNeedle = part.start;
  for (const row of part.rows) {
    const at = { piece: part.piece, part: part.name, sectionIndex: row.section, row: row.n };
    const counted = part.sections[row.section];
    if (counted?.onNeedle !== undefined && counted.first === row.n) onNeedle = counted.onNeedle;
    if (row.before !== onNeedle) return [disproved(row.before, onNeedle, at)];
    const worked = workRow(row.steps, onNeedle);
    if (!worked.ok) return worked.faults.map((f) => placed(f, at));
    if (worked.value.after !== row.after) return [disproved(row.after, worked.value.after, at)];
    onNeedle = worked.value.after;
  }
  return onNeedle === part.left
    ? []
    : [disproved(part.left, onNeedle, { piece: part.piece, part: part.name })];
}

const disproved = (expected: number, found: number, at: Fault['at']): Fault =>
  fault('plan disproved', { expectedStitches: expected, foundStitches: found }, at);
