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

/** Whole turns in so many steps, at so many distances: where a sign may stand beside a line on which there is no room. */
const TURNS = 16;
const AWAY = [1, 1.5, 2.2, 3];

/** Where a sign stands, and the point of its line where it has to stand beside it. */
export interface SignPlace {
  readonly at: Point;
  readonly of?: Point | undefined;
}

const lengthOf = (runs: readonly (readonly Point[])[]): number =>
  segmentsOf(runs).reduce((sum, { length }) => sum + length, 0);

/**
 * A place for each line's sign where no other stands nearer than `apart`: its middle, else another point of it, else
 * beside it, within what is shown. The shortest lines, which have the least choice, are served first.
 */
export function signsApart(
  lines: readonly (readonly (readonly Point[])[])[],
  apart: number,
  isShown: (at: Point) => boolean = () => true,
): readonly (SignPlace | undefined)[] {
  const taken: Point[] = [];
  const room = (at: Point): number =>
    Math.min(...taken.map((one) => Math.hypot(one[0] - at[0], one[1] - at[1])));
  const placeOn = (runs: readonly (readonly Point[])[]): SignPlace | undefined => {
    const middle = middleOf(runs);
    if (!middle) return undefined;
    const isFree = (at: Point) => room(at) > apart - 1e-6 && isShown(at);
    const on = [middle, ...SHARES.map((share) => pointAt(runs, share))].filter((at) => at !== undefined);
    const at = on.find(isFree);
    if (at) return { at };
    const beside = around(middle, apart).find(isFree);
    return beside ? { at: beside, of: middle } : { at: on.sort((a, b) => room(b) - room(a))[0] ?? middle };
  };
  const places: (SignPlace | undefined)[] = lines.map(() => undefined);
  const shortFirst = lines.map((runs, i) => ({ runs, i, long: lengthOf(runs) }));
  for (const { runs, i } of shortFirst.sort((a, b) => a.long - b.long)) {
    const place = placeOn(runs);
    places[i] = place;
    if (place) taken.push(place.at);
  }
  return places;
}

/** The nearest first. */
const around = ([x, y]: Point, apart: number): readonly Point[] =>
  AWAY.flatMap((away) =>
    Array.from({ length: TURNS }, (_, i): Point => {
      const turn = (i / TURNS) * 2 * Math.PI;
      return [x + away * apart * Math.cos(turn), y + away * apart * Math.sin(turn)];
    }),
  );
