import { type Fault, fault, ok, placed, type Result, refuse } from '../fault.ts';
import type { Step } from '../row/step.ts';
import { type Worked, workRow } from '../row/work.ts';
import type { PlannedPart, ProvenPart } from './planned.ts';
import { YarnEnd } from './yarn-end.ts';

/**
 * Knits a planned part by the row language alone: each row must use up exactly what the last one left and leave
 * exactly what it states; where a section begins with stitches that were counted on the needle, it goes on from
 * those. A fault here is a defect of the planner, never of the recipe; such a plan is not shown.
 */
export function provePart(part: PlannedPart): Result<ProvenPart> {
  let onNeedle = part.start;
  // rows of one wording share their steps: over as many stitches they leave as many
  const known = new Map<readonly Step[], Worked>();
  for (const row of part.rows) {
    const at = { piece: part.piece, part: part.name, sectionIndex: row.section, row: row.n };
    const counted = part.sections[row.section];
    if (counted?.onNeedle !== undefined && counted.first === row.n) onNeedle = counted.onNeedle;
    if (row.before !== onNeedle) return refuse(disproved(row.before, onNeedle, at));
    if (known.get(row.steps)?.before !== onNeedle) {
      const worked = workRow(row.steps, onNeedle);
      if (!worked.ok) return refuse(...worked.faults.map((f) => placed(f, at)));
      known.set(row.steps, worked.value);
    }
    const after = known.get(row.steps)?.after ?? onNeedle;
    if (after !== row.after) return refuse(disproved(row.after, after, at));
    onNeedle = after;
  }
  return onNeedle === part.left
    ? ok(part as ProvenPart)
    : refuse(disproved(part.left, onNeedle, { piece: part.piece, part: part.name }));
}

/**
 * Follows the yarn of a part: each row begins where the last one ended, a row after a turn works back over what was
 * turned, a bind-off begins at the yarn, or the row says that the yarn is joined. Plans that were kept before this was
 * asked for are not held to it.
 */
export function proveYarn(part: PlannedPart): Fault[] {
  const yarn = new YarnEnd();
  const lost = part.rows.find((row) => !yarn.goesOn(row));
  if (lost === undefined) return [];
  const at = { piece: part.piece, part: part.name, sectionIndex: lost.section, row: lost.n };
  return [disproved(yarn.expected, yarn.found, at)];
}

const disproved = (expected: number, found: number, at: Fault['at']): Fault =>
  fault('plan disproved', { expectedStitches: expected, foundStitches: found }, at);
