import { type Fault, fault } from '../../../fault.ts';
import type { Item } from '../../../row/read/notation.ts';
import type { Side } from '../../../row/step.ts';
import { dropBorderAt } from './borders.ts';
import { type Build, type MadeRow, nextSide, type PartBuild, type Track } from './build.ts';
import { countDiffers } from './compare.ts';
import type { Edit } from './edit.ts';
import { changeOf, makeFabricRow } from './fabric-row.ts';
import { holeRow } from './holes.ts';
import { makeWrittenRow } from './make-row.ts';
import { MOST_ROWS, tellRow } from './push-row.ts';
import { nextEdits, settleTrack } from './track.ts';

/** The shaping that goes on beside: its edits on the next row. */
export function backgroundEdits(build: Build, part: PartBuild): Edit[] {
  return build.meanwhile.flatMap((track) => nextEdits(track, part));
}

export function settleBackground(build: Build, part: PartBuild): void {
  for (const { groups } of build.meanwhile)
    for (const { at, work } of groups ? (part.rows.at(-1)?.edits ?? []) : [])
      if (work === groups?.work) dropBorderAt(part, at);
  for (const track of build.meanwhile) settleTrack(track, part);
  build.meanwhile = build.meanwhile.flatMap((track) =>
    track.ended ? (track.behind ? [track.behind()] : []) : [track],
  );
}

/** One row of the fabric with these edits and whatever goes on beside. */
export function row(
  build: Build,
  part: PartBuild,
  edits: readonly Edit[],
  kind: MadeRow['kind'],
): Fault | undefined {
  const beside = backgroundEdits(build, part);
  const hole = edits.length + beside.length > 0 ? undefined : holeRow(build, part);
  if (hole && makeWrittenRow(build, part, hole, kind) === undefined) {
    tellRow(part, { hole: true });
    return undefined;
  }
  const wrong = makeFabricRow(
    build,
    part,
    [...edits, ...beside],
    beside.length > 0 && edits.length === 0 ? 'shape' : kind,
  );
  settleBackground(build, part);
  return wrong;
}

export function evenRows(build: Build, part: PartBuild, n: number, kind: MadeRow['kind']): Fault | undefined {
  for (let i = 0; i < Math.min(n, MOST_ROWS); i += 1) {
    const wrong = row(build, part, [], kind);
    if (wrong) return wrong;
  }
  return undefined;
}

/** A row of a shaping as the text spells it: it changes the count by as much. */
function spelledRow(
  build: Build,
  part: PartBuild,
  edits: readonly Edit[],
  items: readonly Item[],
): Fault | undefined {
  const wanted = edits.reduce((sum, edit) => sum + changeOf(edit), part.live);
  const wrong = makeWrittenRow(build, part, items, 'row', backgroundEdits(build, part));
  settleBackground(build, part);
  return wrong ?? (part.live === wanted ? undefined : countDiffers(wanted, part.live));
}

/** Works a shaping to its end; where that never comes, the part is too long in the end (`pushRow`). */
export function runTrack(build: Build, part: PartBuild, track: Track): Fault | undefined {
  while (!track.ended && part.live > 0) {
    const edits = nextEdits(track, part);
    const wrong =
      edits.length > 0 && track.items
        ? spelledRow(build, part, edits, track.items)
        : row(build, part, edits, 'shape');
    if (wrong) return wrong;
    settleTrack(track, part);
  }
  return undefined;
}

/** A stretch that she measures is as long as the shaping beside it takes, where that has an end. */
export function endShaping(build: Build, part: PartBuild, end: Side | undefined): Fault | undefined {
  const ends = build.meanwhile.every(
    ({ beats, waitFor }) =>
      waitFor === undefined && beats.every(({ times, toCount }) => (times ?? toCount) !== undefined),
  );
  if (!ends) return undefined;
  for (let rows = 0; rows < MOST_ROWS; rows += 1) {
    if (build.meanwhile.length === 0 && (rows === 0 || nextSide(part) !== end)) break;
    const wrong = row(build, part, [], 'stretch');
    if (wrong) return wrong;
  }
  return undefined;
}

/** Works on until the shaping beside has ended: what follows needs its stitches. */
export function finishBackground(build: Build, part: PartBuild): Fault | undefined {
  let rows = 0;
  while (build.meanwhile.length > 0 && part.live > 0 && rows < 600) {
    // a count that never comes
    const waits = build.meanwhile.every(({ waitFor }) => waitFor);
    const wrong = waits ? fault('place not known') : row(build, part, [], 'shape');
    if (wrong) {
      build.meanwhile = [];
      return wrong;
    }
    rows += 1;
  }
  build.meanwhile = [];
  return undefined;
}
