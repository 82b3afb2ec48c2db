import type { FabricName } from '../fabric.ts';
import { faceOf } from '../piece/row-setting.ts';
import { addRun, type Run, shorten } from '../row/shorten.ts';
import type { Step } from '../row/step.ts';

/**
 * Stitches bound off for one button hole, cast on again in the next row, at every gauge: American Thread, Bulkies (Book
 * No. 006), woman's knitted jacket, at 4 stitches to the inch. Begin to Knit, p. 12, says how, not how many.
 */
export const HOLE_STITCHES = 2;
/** Stitches kept between the band's end and the nearest hole, and at least between two holes; common practice, no published source. */
const MARGIN = 3;

/** First stitch (from 0 at the right edge) of each hole, spread evenly over `over` stitches; undefined where they do not fit. */
export function buttonholePlaces(over: number, buttons: number): readonly number[] | undefined {
  const room = over - 2 * MARGIN - HOLE_STITCHES;
  if (buttons < 1 || room < 0) return undefined;
  if (buttons === 1) return [MARGIN + Math.round(room / 2)];
  if (room / (buttons - 1) < HOLE_STITCHES + MARGIN) return undefined;
  return Array.from({ length: buttons }, (_, i) => MARGIN + Math.round((i * room) / (buttons - 1)));
}

/**
 * The two rows of the button holes, the first on the RS: bound off, and cast on again over the gaps.
 * @param rowsBefore rows of the band worked before them; odd
 */
export function buttonholeRows(
  fabric: FabricName,
  stitches: number,
  over: number,
  buttons: number,
  rowsBefore: number,
): readonly (readonly Step[])[] | undefined {
  const places = buttonholePlaces(over, buttons);
  if (!places) return undefined;
  const isHole = (column: number): boolean =>
    places.some((from) => column >= from && column < from + HOLE_STITCHES);
  // a band begins on the WS: its first row has phase 1
  const rs = faceOf({ fabric, phase: rowsBefore + 1, side: 'RS', slipped: false, centre: undefined });
  const ws = faceOf({ fabric, phase: rowsBefore + 2, side: 'WS', slipped: false, centre: undefined });
  const first: Run[] = [];
  for (let column = 0; column < stitches; column += 1) addRun(first, isHole(column) ? 'bo' : rs(column), 1);
  const second: Run[] = [];
  for (let column = stitches - 1; column >= 0; column -= 1)
    addRun(second, isHole(column) ? 'co' : ws(column), 1);
  return [shorten(first), shorten(second)];
}
