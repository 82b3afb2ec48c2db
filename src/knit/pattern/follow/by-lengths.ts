import { type Fault, fault } from '../../fault.ts';
import type { Beat } from '../say/how-far.ts';
import type { Build, PartBuild, PieceBuild } from './build/build.ts';
import { MOST_ROWS, rowHeight } from './build/push-row.ts';
import { workUntil } from './build/work-until.ts';

/** Whether a rhythm is said in lengths and nobody knows how many rows they are. */
export const isByLengths = (build: Build, part: PartBuild, beats: readonly Beat[]): boolean =>
  rowHeight(build, part) === 0 && beats.some(({ everyMm }) => everyMm !== undefined);

/**
 * 'Dec every 2 in 3 times' without a row gauge: before each of them a stretch that she measures herself.
 * @param change stitches by which the count changes each time
 * @param once works the one row
 */
export function workByLengths(
  build: Build,
  piece: PieceBuild,
  part: PartBuild,
  said: readonly Beat[],
  change: number,
  once: () => Fault | undefined,
): Fault | undefined {
  // one kind of rhythm, or a next row and then the rhythm: what is longer nobody counts without rows
  const beats = said.map((beat, i) => ({
    beat,
    times: timesOf(beat, i === said.length - 1, part, change, said),
  }));
  if (beats.some(({ times }) => times === undefined)) return fault('place not known');
  for (const { beat, times = 0 } of beats) {
    for (let i = 0; i < Math.min(times, MOST_ROWS) && part.live > 0; i += 1) {
      const { everyMm: mm } = beat;
      const wrong =
        (mm === undefined ? undefined : workUntil(build, piece, part, { is: 'length', mm, from: 'here' })) ??
        once();
      if (wrong) return wrong;
    }
  }
  return undefined;
}

/** How often a beat comes; undefined where only its rows would say. */
function timesOf(
  beat: Beat,
  isLast: boolean,
  part: PartBuild,
  change: number,
  all: readonly Beat[],
): number | undefined {
  if (beat.everyMm === undefined && (beat.first !== 1 || beat.every !== 1)) return undefined;
  if (beat.times !== undefined) return beat.times;
  if (beat.toCount === undefined || !isLast || change === 0) return undefined;
  const before = all.slice(0, -1).reduce((sum, { times = 0 }) => sum + times, 0);
  const times = (beat.toCount - part.live) / change - before;
  return Number.isSafeInteger(times) && times >= 0 ? times : undefined;
}
