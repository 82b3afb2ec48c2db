import { type Fault, fault } from '../../../fault.ts';
import type { Said } from '../../say/statement.ts';
import type { Build } from './build.ts';
import type { LineNotes } from './notes.ts';
import { closesGap } from './uncounted.ts';

export const countDiffers = (stated: number, found: number): Fault =>
  fault('count contradicts', { statedStitches: stated, foundStitches: found });

/** A count that the text states against the one that the instructions leave. */
export function compare(build: Build, stated: number, note: LineNotes, said: Said): void {
  const { part, piece } = build;
  note.stated.push(stated);
  if (!part) return;
  // 'K12, place next 9 sts on a holder, k12. 24 sts': all 24 stay on one needle
  if (
    part.gap &&
    stated === part.live &&
    part.rows.at(-1)?.steps.some((step) => 'work' in step && step.work === 'hold')
  )
    part.gap = undefined;
  const sets = [part.live, ...(part.gap ?? [])];
  if (part.parent && part.rows.length <= 1)
    sets.push(
      ...(piece?.resting.filter((one) => one.parent === part.parent).map((one) => one.stitches) ?? []),
    );
  const uncounted = part.uncounted;
  if (closesGap(build, part, stated, said.line)) return;
  if (sets.includes(stated)) {
    // all came out as it should
    if (uncounted === undefined) build.unreadAt = undefined;
    return;
  }
  if (build.meanwhile.length > 0) {
    build.later.push(() => {
      if (build.part === part) contradict(stated, part.live, note, said);
    });
    return;
  }
  contradict(stated, part.live, note, said);
}

function contradict(stated: number, found: number, note: LineNotes, said: Said): void {
  if (stated === found) return;
  const known = note.faults.some(
    (found) =>
      found.code === 'count contradicts' &&
      found.at.line === said.line &&
      found.figures.statedStitches === stated,
  );
  if (!known)
    note.faults.push({ ...countDiffers(stated, found), at: { line: said.line, column: said.column } });
}
