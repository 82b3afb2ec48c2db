import { otherSide, type Side } from '../../../row/step.ts';
import type { Beat } from '../../say/how-far.ts';
import { nextSide, type PartBuild, startEdge, type Track } from './build.ts';
import type { Edit, GroupsOfTrack } from './edit.ts';

/** Rows until the first shaping row of a beat, counting that row. */
export function firstDue(beat: Beat, isFirst: boolean, side: Side): number {
  if (beat.side !== undefined) {
    if (!isFirst && beat.first === undefined) return onItsSide(beat.every, side === beat.side);
    return side === beat.side ? 1 : 2;
  }
  if (beat.first !== undefined) return beat.first;
  if (!isFirst) return beat.every;
  return openDue(beat.every, side);
}

/** '… every row 3 times, then every RS row twice': so many rows, or the one before where that one is on its side. */
const onItsSide = (every: number, isNext: boolean): number =>
  (every % 2 === 1) === isNext ? every : Math.max(1, every - 1);

/**
 * 'Every 4th row' leaves the first one open. Shaping lies on the right side where it can: the row of that number,
 * or the one before it where that is the right side (common practice, no published source).
 */
function openDue(every: number, side: Side): number {
  if (every % 2 === 1) return every;
  const onRightSide = (every % 2 === 1) === (side === 'RS');
  return onRightSide ? every : Math.max(1, every - 1);
}

/** The edits that a track wants on the next row; moves the track on. Call once for each row. */
export function nextEdits(track: Track, part: PartBuild): Edit[] {
  if (track.ended || track.waitFor) return [];
  if (track.wait > 0) {
    track.wait -= 1;
    // the row in hand is the last one waited for: the beat begins with the one after it
    if (track.wait > 0) return [];
    track.due = dueFirst(track, otherSide(nextSide(part)));
    // it is settled as the first row of a beat that counts its rows, and is none of them
    if (track.beats[0]?.until) track.limit += 1;
    return [];
  }
  track.due -= 1;
  if (track.due > 0) return [];
  if (track.groups) return nextGroup(track, track.groups, part);
  const beat = track.beats[track.beat] as Beat;
  track.doneInBeat += 1;
  const every = beat.and !== undefined && track.doneInBeat % 2 === 0 ? beat.and : beat.every;
  track.due = Math.max(1, every);
  const edge = track.edge(part);
  const edges = edge === 'both' ? (['right', 'left'] as const) : ([edge] as const);
  return edges.map((at) => ({ at, change: track.change }));
}

const dueFirst = ({ groups, beats }: Track, side: Side): number =>
  groups ? 1 : firstDue(beats[0] as Beat, true, side);

/** A group waits for the row that begins at its edge, and on its side. */
function nextGroup(track: Track, groups: GroupsOfTrack, part: PartBuild): Edit[] {
  const group = groups.list[track.beat];
  if (group === undefined) return [];
  const meant = track.edge(part);
  const at = meant === 'both' ? startEdge(part) : meant;
  const wrongSide = group.side !== undefined && nextSide(part) !== group.side;
  if (wrongSide || (!groups.atEnd && at !== startEdge(part))) {
    track.due = 1;
    return [];
  }
  if (track.beat === 0) groups.begins();
  track.beat += 1;
  track.due = groups.list[track.beat]?.every ?? 1;
  return [{ at, work: groups.work, stitches: group.stitches }];
}

/** Whether the count that it waits for is there: it begins with the next row. */
function settleWait(track: Track, part: PartBuild): void {
  const { stitches = 0, fewer } = track.waitFor ?? {};
  if (fewer ? part.live > stitches : part.live < stitches) return;
  track.waitFor = undefined;
  if (track.wait === 0) track.due = dueFirst(track, nextSide(part));
}

/** After a row: whether the beat, or the whole track, has come to its end. */
export function settleTrack(track: Track, part: PartBuild): void {
  if (track.waitFor) {
    settleWait(track, part);
    return;
  }
  if (track.groups) {
    track.ended = track.beat >= track.groups.list.length;
    return;
  }
  while (!track.ended && track.wait === 0) {
    const beat = track.beats[track.beat] as Beat | undefined;
    if (beat === undefined) {
      track.ended = true;
      return;
    }
    track.limit -= beat.until ? 1 : 0;
    if (!beatEnded(track, beat, part)) return;
    track.beat += 1;
    track.doneInBeat = 0;
    const next = track.beats[track.beat];
    if (next === undefined) {
      track.ended = true;
      return;
    }
    track.due = firstDue(next, false, nextSide(part));
    if (!(next.times === 0 || (next.times === undefined && reached(track, next, part)))) return;
  }
}

function beatEnded(track: Track, beat: Beat, part: PartBuild): boolean {
  if (beat.times !== undefined) return track.doneInBeat >= beat.times;
  if (beat.toCount !== undefined) return reached(track, beat, part);
  if (beat.until !== undefined) return track.limit <= 0;
  return track.doneInBeat >= 1;
}

/** Whether the count that ends the beat is there, or one more shaping would go past it. */
function reached(track: Track, beat: Beat, part: PartBuild): boolean {
  if (beat.toCount === undefined) return false;
  const left = track.change < 0 ? part.live - beat.toCount : beat.toCount - part.live;
  const each = Math.abs(track.change) * (track.edge(part) === 'both' ? 2 : 1);
  return left < each;
}

/** What a track waits for, and what follows it. */
export type Waits = Pick<Partial<Track>, 'wait' | 'waitFor' | 'behind'>;

/** A track before its first row. */
export function newTrack(
  part: PartBuild,
  told: Omit<Track, 'beat' | 'doneInBeat' | 'due' | 'ended' | keyof Waits>,
  { wait = 0, waitFor, behind }: Waits,
): Track {
  const ended = told.groups?.list.length === 0;
  const track: Track = { ...told, beat: 0, doneInBeat: 0, due: 1, ended, wait, waitFor, behind };
  startTrack(track, part);
  return track;
}

/** Whether there is nothing to do from the start: 'dec 0 times', or the count is already there. */
function startTrack(track: Track, part: PartBuild): void {
  if (track.groups || track.waitFor) {
    track.due = 1;
    return;
  }
  const first = track.beats[0];
  if (first === undefined) {
    track.ended = true;
    return;
  }
  if (first.times === 0 || (first.times === undefined && reached(track, first, part)))
    settleTrack(track, part);
  else if (track.wait === 0) track.due = firstDue(first, true, nextSide(part));
}
