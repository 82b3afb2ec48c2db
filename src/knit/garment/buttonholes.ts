import { type FabricName, fabrics } from '../fabric.ts';
import { holeRows } from '../piece/hole-rows.ts';
import type { PickUp } from '../piece/recipe.ts';
import type { Step } from '../row/step.ts';
import { evenCount, evenPlaces, MARGIN_MM } from './even-holes.ts';
import { type HolesWish, LEAST_BETWEEN } from './holes-wish.ts';

/**
 * Stitches of a hole where no button was named: bound off, and cast on again in the next row (American Thread, Bulkies,
 * Book No. 006, PG 66271, woman's knitted jacket: bind off 2, cast on 2, at 4 stitches to the inch).
 */
const USUAL_HOLE = 2;

/**
 * Stitches of one hole: one fewer than the button is wide, since a hole stretches, and two at least (common practice, no
 * published source). In single rib an odd number, so that it begins and ends on a knit stitch (K. Buss: 3 or 5).
 */
export function holeStitches({
  fabric,
  gauge,
  buttonMm,
}: Pick<HolesWish, 'fabric' | 'gauge' | 'buttonMm'>): number {
  if (buttonMm === undefined) return USUAL_HOLE;
  const wide = Math.max(2, Math.round((buttonMm * gauge.stitches) / 100) - 1);
  const single = fabrics[fabric].rows[0]?.length === 2;
  return single && wide % 2 === 0 ? wide + 1 : wide;
}

/**
 * First stitch (from 0 at the right edge) of each hole. All begin in the same column of the rib, on a knit stitch, and the
 * stretches between them differ by one repeat at most. Undefined where they do not fit.
 */
export function buttonholePlaces(wish: HolesWish): readonly number[] | undefined {
  const { fabric, gauge, stitches, over, at, buttons } = wish;
  const hole = holeStitches(wish);
  if (wish.isEven) return evenPlaces(wish, hole, knitColumn(fabric, hole));
  const period = fabrics[fabric].rows[0]?.length ?? 1;
  const margin = Math.max(1, Math.round((MARGIN_MM.middle * gauge.stitches) / 100));
  const begin = at === 'right' ? 0 : stitches - over;
  const looks = knitColumn(fabric, hole);
  const first = nearest(begin + margin, looks, period, begin + 1);
  const last = nearest(begin + over - margin - hole, looks, period, first, begin + over - hole - 1);
  if (buttons < 1 || first === undefined || last === undefined) return undefined;
  if (buttons === 1) return [nearest((first + last) / 2, looks, period, first, last) ?? first];
  const repeats = (last - first) / period;
  const places = Array.from(
    { length: buttons },
    (_, i) => first + period * Math.round((i * repeats) / (buttons - 1)),
  );
  const close = places.some((place, i) => i > 0 && place - (places[i - 1] ?? 0) < hole + LEAST_BETWEEN);
  return close ? undefined : places;
}

/** What a band with a row of such holes picks up: a count near it with which they stand at one distance, where one is. */
export const evenAlong = (
  wish: Omit<HolesWish, 'stitches' | 'over'> | undefined,
  along: readonly PickUp[],
): readonly PickUp[] =>
  wish?.isEven
    ? along.map((one) => ({
        ...one,
        stitches: evenCount(wish.fabric, one.stitches, true, (count) =>
          buttonholePlaces({ ...wish, stitches: count, over: count, at: 'right' }),
        ),
      }))
    : along;

/** The column of the rib in which a hole begins: on a knit stitch, and ends on one where it can. */
function knitColumn(fabric: FabricName, hole: number): number {
  const face = fabrics[fabric].rows[0] ?? 'k';
  const columns = [...face].map((_, i) => i);
  const knit = (i: number): boolean => face[i % face.length] === 'k';
  return columns.find((i) => knit(i) && knit(i + hole - 1)) ?? columns.find(knit) ?? 0;
}

/** The column of that kind nearest to `wanted`, from `least` up to `most`. */
function nearest(
  wanted: number,
  looks: number,
  period: number,
  least = 0,
  most = Number.POSITIVE_INFINITY,
): number | undefined {
  let found = looks + period * Math.round((wanted - looks) / period);
  while (found < least) found += period;
  while (found > most) found -= period;
  return found < least ? undefined : found;
}

/**
 * The two rows of the button holes, the first on the RS: bound off, and cast on again over the gaps.
 * @param rowsBefore rows of the band worked before them; odd
 */
export function buttonholeRows(
  wish: HolesWish,
  rowsBefore: number,
): readonly (readonly Step[])[] | undefined {
  const places = buttonholePlaces(wish);
  if (!places) return undefined;
  return holeRows({ places, stitches: holeStitches(wish) }, wish.fabric, wish.stitches, rowsBefore);
}
