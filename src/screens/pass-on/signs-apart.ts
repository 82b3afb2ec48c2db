import { between, middleOf, segmentsOf } from '../../ui/panel-map/edge-line.ts';
import type { Point } from '../../ui/panel-map/paths.ts';

/** A point on what is drawn, at such a share of it as its runs follow upon each other. */
function pointAt(runs: readonly (readonly Point[])[], share: number): Point | undefined {
  const all = segmentsOf(runs);
  let left = share * all.reduce((sum, { length }) => sum + length, 0);
  for (const one of all) {
    if (left <= one.length) return between(one, left / one.length);
    left -= one.length;
  }
  return undefined;
}

/** Shares of a line where a sign may stand whose middle is taken. */
const SHARES = [0.3, 0.7, 0.1, 0.9, 0.5];

/** A place on each line for its sign: its middle, or where no other sign before it stands nearer than `apart`. */
export function signsApart(
  lines: readonly (readonly (readonly Point[])[])[],
  apart: number,
): readonly (Point | undefined)[] {
  const taken: Point[] = [];
  const room = (at: Point): number =>
    Math.min(...taken.map((one) => Math.hypot(one[0] - at[0], one[1] - at[1])));
  return lines.map((runs) => {
    const places = [middleOf(runs), ...SHARES.map((share) => pointAt(runs, share))].filter(
      (at) => at !== undefined,
    );
    const free = places.find((at) => room(at) >= apart) ?? places.sort((a, b) => room(b) - room(a))[0];
    if (free) taken.push(free);
    return free;
  });
}
