import { countAt } from './count/count-at.ts';
import { landmarksOf } from './count/landmarks.ts';
import {
  groupsAt,
  heightAt,
  looksLike,
  nextSide,
  type Observation,
  type ObservationKind,
  rowsAboveShaping,
  sectionsAt,
  shapingsAt,
  unlikeness,
} from './count/observation.ts';
import type { PlannedPart } from './planned.ts';

/** Where the knitting may be. */
export interface Found {
  /** rows worked that fit everything seen: the likeliest first, of those alike the nearest to `near` */
  readonly rows: readonly number[];
  /** how many rows each observation, taken after those before it, left */
  readonly narrowed: readonly number[];
  /** where nothing fits everything: the observations (from 0) without any one of which something would */
  readonly doubtful: readonly number[];
  /** what tells the rows apart that are left, the best first; none when one is left */
  readonly next: readonly Distinction[];
}

/** A further look, with what it shows at each of the rows left (as many as `rows`, in their order). */
export interface Distinction {
  readonly kind: ObservationKind;
  /** rows up to the landmark from which is counted */
  readonly landmark?: number;
  readonly edge?: 'right' | 'left' | 'either';
  readonly shows: readonly (number | string)[];
}

/**
 * The rows of the part that look like what is seen. With every further observation there are fewer; the true one is
 * always among them when the knitting is as planned and the observations are true.
 * @param near rows worked as last known, to rank by
 */
export function findPlace(part: PlannedPart, observations: readonly Observation[], near?: number): Found {
  const all = Array.from({ length: part.rows.length + 1 }, (_, rows) => rows);
  const narrowed: number[] = [];
  let left = all;
  for (const seen of observations) {
    left = left.filter((rows) => looksLike(part, rows, seen));
    narrowed.push(left.length);
  }
  const doubtful =
    left.length > 0
      ? []
      : observations.flatMap((_, i) => (fitsWithout(part, all, observations, i) ? [i] : []));
  const from = near ?? part.rows.length;
  const off = (rows: number) => observations.reduce((sum, seen) => sum + unlikeness(part, rows, seen), 0);
  const rows = left.sort((a, b) => off(a) - off(b) || Math.abs(a - from) - Math.abs(b - from) || b - a);
  return { rows, narrowed, doubtful, next: rows.length > 1 ? distinctions(part, rows, observations) : [] };
}

const fitsWithout = (
  part: PlannedPart,
  all: readonly number[],
  seen: readonly Observation[],
  without: number,
): boolean => all.some((rows) => seen.every((one, i) => i === without || looksLike(part, rows, one)));

/** Rows compared when looking for what tells most; the nearest ones. */
const MOST_COMPARED = 60;

/** Looks that show different things at the rows left: those that leave fewest of them on average come first. */
function distinctions(
  part: PlannedPart,
  rows: readonly number[],
  done: readonly Observation[],
): Distinction[] {
  const near = rows.slice(0, MOST_COMPARED);
  const landmark = landmarksOf(part, Math.min(...near)).at(-1)?.row ?? 0;
  const heights = (at: number) => Math.round(heightAt(part, at) / 10) * 10;
  const looks: (Omit<Distinction, 'shows'> & { at: (rows: number) => number | string; effort: number })[] = [
    { kind: 'side', at: (n) => nextSide(part, n), effort: 0 },
    { kind: 'section', at: (n) => sectionsAt(part, n)[0] ?? 0, effort: 0 },
    { kind: 'stitches', at: (n) => countAt(part, n) ?? 0, effort: 1 },
    { kind: 'last shaping', edge: 'either', at: (n) => rowsAboveShaping(part, n, 'either'), effort: 1 },
    { kind: 'groups', edge: 'right', at: (n) => groupsAt(part, n, 'right'), effort: 1 },
    { kind: 'groups', edge: 'left', at: (n) => groupsAt(part, n, 'left'), effort: 1 },
    {
      kind: 'shapings',
      edge: 'right',
      landmark,
      at: (n) => shapingsAt(part, landmark, n, 'right'),
      effort: 2,
    },
    { kind: 'shapings', edge: 'left', landmark, at: (n) => shapingsAt(part, landmark, n, 'left'), effort: 2 },
    { kind: 'rows above', landmark, at: (n) => n - landmark, effort: 2.5 },
    { kind: 'height', at: heights, effort: 3 },
  ];
  const known = new Set(done.map((seen) => seen.kind));
  return looks
    .filter((look) => !known.has(look.kind) || look.kind === 'shapings' || look.kind === 'groups')
    .map(({ at, effort, ...look }) => ({
      look: { ...look, shows: rows.map(at) },
      left: leftOf(near.map(at)),
      effort,
    }))
    .filter(({ left }) => left < near.length)
    .sort((a, b) => a.left + a.effort - (b.left + b.effort))
    .map(({ look }) => look);
}

/** How many rows would be left, on average over the rows. */
function leftOf(shows: readonly (number | string)[]): number {
  const times = new Map<number | string, number>();
  for (const shown of shows) times.set(shown, (times.get(shown) ?? 0) + 1);
  return [...times.values()].reduce((sum, n) => sum + n * n, 0) / shows.length;
}
