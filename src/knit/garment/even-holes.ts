import { type FabricName, fabrics, fitsSeamed } from '../fabric.ts';
import { type HolesWish, LEAST_BETWEEN } from './holes-wish.ts';

/** From either end of the band to the nearest hole, mm; common practice, no published source. */
export const MARGIN_MM = { least: 10, middle: 12.5, most: 15 } as const;
/** The nearest column of the rib may lie a stitch or so beyond that. */
const MOST_BEYOND = 1;
/** So much more or less than lies along an edge a band may pick up for the sake of its holes; common practice, no published source. */
const MOST_OFF = 0.025;

/**
 * First stitch (from 0 at the right edge) of each hole: 10 to 15 mm from either end, all in the same column of the rib, at one
 * distance where the columns have one; else the wider gaps, by one repeat, lie together before the others. Undefined where
 * they do not fit.
 * @param hole stitches of each
 * @param looks the column of the rib in which each begins
 */
export function evenPlaces(wish: HolesWish, hole: number, looks: number): readonly number[] | undefined {
  const { fabric, stitches, over, at, buttons } = wish;
  const period = periodOf(fabric);
  const begin = at === 'right' ? 0 : stitches - over;
  const isColumn = (place: number): boolean => (place - looks) % period === 0;
  const firsts = margins(wish, (margin) => isColumn(begin + margin)).map((margin) => begin + margin);
  const lasts = margins(wish, (margin) => isColumn(begin + over - margin - hole)).map(
    (margin) => begin + over - margin - hole,
  );
  if (buttons < 1 || firsts.length === 0 || lasts.length === 0) return undefined;
  if (buttons === 1) return single(wish, hole, isColumn);
  const gaps = buttons - 1;
  const pairs = firsts.flatMap((first) => lasts.map((last) => [first, last] as const));
  const [first = 0, last = 0] = pairs.find(([a, b]) => (b - a) % (gaps * period) === 0) ?? pairs[0] ?? [];
  const repeats = (last - first) / period;
  const each = Math.floor(repeats / gaps);
  const wider = repeats - each * gaps;
  if (each * period < hole + LEAST_BETWEEN) return undefined;
  return Array.from({ length: buttons }, (_, i) => first + period * (i * each + Math.min(i, wider)));
}

const periodOf = (fabric: FabricName): number => fabrics[fabric].rows[0]?.length ?? 1;

/** Stitches that may lie between an end and its hole, the best first. */
function margins(
  { fabric, gauge, over }: HolesWish,
  isColumn: (margin: number) => boolean,
): readonly number[] {
  const mm = 100 / gauge.stitches;
  const off = (margin: number): number => Math.abs(margin * mm - MARGIN_MM.middle);
  const most = Math.ceil(MARGIN_MM.most / mm) + periodOf(fabric) + MOST_BEYOND;
  const all = Array.from({ length: Math.min(most, over) }, (_, i) => i + 1)
    .filter(isColumn)
    .sort((a, b) => off(a) - off(b));
  const good = all.filter((margin) => margin * mm >= MARGIN_MM.least && margin * mm <= MARGIN_MM.most);
  return good.length > 0 ? good : all.slice(0, 1);
}

/** One button in the middle. */
function single(
  { stitches, over, at }: HolesWish,
  hole: number,
  isColumn: (place: number) => boolean,
): readonly number[] | undefined {
  const begin = at === 'right' ? 0 : stitches - over;
  const middle = begin + (over - hole) / 2;
  const [found] = Array.from({ length: over - hole - 1 }, (_, i) => begin + 1 + i)
    .filter(isColumn)
    .sort((a, b) => Math.abs(a - middle) - Math.abs(b - middle));
  return found === undefined ? undefined : [found];
}

/** Distances between the holes, in stitches, from one to the next. */
export const gapsOf = (places: readonly number[]): readonly number[] =>
  places.slice(1).map((place, i) => place - (places[i] ?? 0));

/**
 * The count of a band with which its holes stand at one distance, if one lies near; else the one nearest to what lies along its
 * edge.
 * @param isWhole it is the count of the whole band, which its rib must take; else that of the end with the holes
 * @param placesOf the holes over that many stitches
 */
export function evenCount(
  fabric: FabricName,
  stitches: number,
  isWhole: boolean,
  placesOf: (count: number) => readonly number[] | undefined,
): number {
  const most = Math.max(1, Math.floor(MOST_OFF * stitches));
  const near = Array.from({ length: 2 * most + 1 }, (_, i) => stitches - most + i)
    .filter((count) => count > 0 && (!isWhole || fitsSeamed(fabric, count).fits))
    .sort((a, b) => Math.abs(a - stitches) - Math.abs(b - stitches) || b - a);
  const spread = (count: number): number => {
    const gaps = gapsOf(placesOf(count) ?? []);
    return gaps.length === 0 ? Number.POSITIVE_INFINITY : Math.max(...gaps) - Math.min(...gaps);
  };
  const least = Math.min(...near.map(spread));
  return near.find((count) => spread(count) === least) ?? stitches;
}
