import { type FabricName, fabrics } from '../fabric.ts';
import { expandRow } from '../row/expand.ts';
import { addRun, type Run, shorten } from '../row/shorten.ts';
import type { Step } from '../row/step.ts';
import { faceOf } from './row-setting.ts';

/** The button holes of a band that begins with a WS row: stitches from its right edge to each, and how many each takes. */
export interface Holes {
  readonly places: readonly number[];
  readonly stitches: number;
}

/** Two rows in words: bound off on the RS, and cast on again over the gaps on the way back. */
type HoleRows = readonly (readonly Step[])[];

/**
 * The rows of button holes over so many stitches.
 * @param rowsBefore rows of the band worked before them; odd
 */
export function holeRows(
  { places, stitches: hole }: Holes,
  fabric: FabricName,
  stitches: number,
  rowsBefore: number,
): HoleRows {
  const isHole = (column: number): boolean => places.some((from) => column >= from && column < from + hole);
  // a band begins on the WS: its first row has phase 1
  const rs = faceOf({ fabric, phase: rowsBefore + 1, side: 'RS', slipped: false });
  const ws = faceOf({ fabric, phase: rowsBefore + 2, side: 'WS', slipped: false });
  const first: Run[] = [];
  for (let column = 0; column < stitches; column += 1) addRun(first, isHole(column) ? 'bo' : rs(column), 1);
  const second: Run[] = [];
  for (let column = stitches - 1; column >= 0; column -= 1)
    addRun(second, isHole(column) ? 'co' : ws(column), 1);
  return [shorten(first), shorten(second)];
}

/** The holes that such rows work over so many stitches; undefined where they are other rows. */
export function holesIn([first, second, ...more]: HoleRows, stitches: number): Holes | undefined {
  if (!first || !second || more.length > 0) return undefined;
  const works = expandRow(first, stitches);
  if (works.length !== stitches || works.some((work) => work !== 'bo' && work !== 'k' && work !== 'p'))
    return undefined;
  const places = works.flatMap((work, i) => (work === 'bo' && works[i - 1] !== 'bo' ? [i] : []));
  const bound = works.filter((work) => work === 'bo').length;
  const hole = bound / places.length;
  const isEach = places.every((from) => works.slice(from, from + hole).every((work) => work === 'bo'));
  return Number.isInteger(hole) && isEach ? { places, stitches: hole } : undefined;
}

/**
 * The holes in the part of a band from `was` to `now`, first and last as far from its ends as before, those between them
 * spread evenly; all in columns of the rib that look alike. Undefined where they have no room.
 */
export function movedHoles(
  { places, stitches }: Holes,
  fabric: FabricName,
  was: Span,
  now: Span,
): Holes | undefined {
  const [first, last] = [places[0] ?? 0, places.at(-1) ?? 0];
  const period = fabrics[fabric].rows[0]?.length ?? 1;
  const least = now.from + 1;
  const most = now.to - stitches - 1;
  const from = likeColumn(now.from + first - was.from, first, period, least, most);
  const to = likeColumn(now.to + last - was.to, first, period, least, most);
  if (from === undefined || to === undefined || to < from) return undefined;
  const repeats = (to - from) / period;
  const steps = Math.max(1, places.length - 1);
  const moved = places.map((_, i) => from + period * Math.round((i * repeats) / steps));
  const isClose = moved.some((place, i) => i > 0 && place - (moved[i - 1] ?? 0) <= stitches);
  return isClose ? undefined : { places: moved, stitches };
}

/** The same holes over another count: as wide and as far from the ends in their measure. Undefined where they have no room. */
export function scaledHoles(
  { places, stitches }: Holes,
  fabric: FabricName,
  was: number,
  now: number,
): Holes | undefined {
  const share = now / was;
  const first = places[0] ?? 0;
  const period = fabrics[fabric].rows[0]?.length ?? 1;
  const like = (n: number): number => first + period * Math.round((n * share - first) / period);
  // an odd hole begins and ends alike in single rib, and stays odd
  const odd = stitches % 2;
  const wide = Math.max(2 + odd, 2 * Math.round((stitches * share - odd) / 2) + odd);
  const scaled = { places: places.map(like), stitches: wide };
  return movedHoles(scaled, fabric, { from: 0, to: now }, { from: 0, to: now });
}

export interface Span {
  readonly from: number;
  readonly to: number;
}

/** The column of the rib nearest to `wanted` that looks like `like`. */
function likeColumn(
  wanted: number,
  like: number,
  period: number,
  least: number,
  most: number,
): number | undefined {
  let found = like + period * Math.round((wanted - like) / period);
  while (found < least) found += period;
  while (found > most) found -= period;
  return found < least ? undefined : found;
}
