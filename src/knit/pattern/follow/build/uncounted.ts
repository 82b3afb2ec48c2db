import type { Build, PartBuild } from './build.ts';
import type { LineNotes } from './notes.ts';

/** The count after a sentence that was not understood: stated in it, or found further on; else as before it. */
export const countAfter = (build: Build, part: PartBuild, sentence: object, stated?: number): number =>
  stated ?? build.counts.known.get(sentence)?.stitches ?? part.live;

/** Its rows are worked: whether their count is known, and by what. */
export function noteCount(
  build: Build,
  part: PartBuild,
  sentence: object,
  note: LineNotes,
  stated?: number,
): void {
  part.uncounted = undefined;
  if (stated !== undefined) {
    note.stated.push(stated);
    return;
  }
  const known = build.counts.known.get(sentence);
  note.countedBy ??= known;
  note.asksCount ||= known === undefined;
  if (known === undefined) part.uncounted = { sentence, after: part.live, note };
}

/** A count is stated where the one before is unknown: true where it settles that, and contradicts nothing. */
export function closesGap(build: Build, part: PartBuild, stated: number, line: number): boolean {
  const { uncounted } = part;
  part.uncounted = undefined;
  if (uncounted === undefined) return false;
  const stitches = uncounted.after + stated - part.live;
  if (stitches < 1) return false;
  if (stitches === uncounted.after) {
    uncounted.note.asksCount = false;
    uncounted.note.countedBy = { stitches, line };
    return true;
  }
  if (build.counts.again) build.counts.found.set(uncounted.sentence, { stitches, line });
  return build.counts.again;
}
