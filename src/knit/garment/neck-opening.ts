import type { PickUp } from '../piece/recipe.ts';
import { bandRows } from './band-piece.ts';
import { buttonholePlaces, evenAlong, holeStitches } from './buttonholes.ts';
import { knittedMm } from './cap.ts';
import { type Border, type Design, isSince, USUAL_OPENING_MM } from './design.ts';
import { MARGIN_MM } from './even-holes.ts';
import { designGauge } from './gauges.ts';
import type { HolesWish } from './holes-wish.ts';
import { shoulderFacts } from './kinds/shoulders.ts';
import type { PanelCounts } from './panel-counts.ts';
import { shoulderHeight } from './sides.ts';
import { openingOf } from './which-opening.ts';
import { pairsIn, stitchesIn } from './whole-numbers.ts';

/**
 * Pairs of rows along one side of an opening; 0 where there is none, or it lies along shoulders.
 * @param of the panel that it parts; any, or a raglan's line, unless said
 */
export function openingPairs(design: Design, { gauge, pairs }: PanelCounts, of?: 'back' | 'front'): number {
  const { partsBack, partsFront, opensRaglan } = openingOf(design);
  const asked = pairsIn(design.neck.openingMm ?? USUAL_OPENING_MM, gauge);
  if (partsBack) return of !== 'front' && pairs.backNeck > 0 ? asked : 0;
  if (partsFront) return of !== 'back' && pairs.neck > 0 ? Math.max(1, asked) : 0;
  // below it the raglan is still sewn
  return opensRaglan && of === undefined ? Math.max(0, Math.min(asked, pairs.armhole - LEAST_SEWN)) : 0;
}

/** Pairs of rows of a raglan that are sewn below its opening at least; common practice, no published source. */
const LEAST_SEWN = 4;

/** One shoulder as it stretches, straight from the arm to the neck, mm. */
function straightMm({ shoulder }: Design, counts: PanelCounts): number {
  const across = (counts.shoulder.reduce((sum, n) => sum + n, 0) * 100) / counts.gauge.stitches;
  return shoulderFacts(shoulder).turns
    ? across
    : Math.hypot(across, (counts.pairs.slope * 200) / counts.gauge.rows);
}

/** One shoulder along its knitted edge, mm: short rows are bound off in one go, steps are a slant between the first and the last. */
function knittedShoulderMm(design: Design, counts: PanelCounts): number {
  const { shoulder, gauge, pairs } = counts;
  const mm = (stitches: number): number => (stitches * 100) / gauge.stitches;
  if (shoulderFacts(design.shoulder).turns) return mm(shoulder.reduce((sum, n) => sum + n, 0));
  const steps = shoulder
    .map((n, i) => ({ pair: shoulderHeight(design, counts, i), by: -n, as: 'group' }) as const)
    .slice(1, -1);
  const level = (shoulder[0] ?? 0) + (shoulder.length > 1 ? (shoulder.at(-1) ?? 0) : 0);
  return mm(level) + knittedMm({ steps, gauge }, pairs.slope, true);
}

/** How much wider than its edge a neck opens, mm, by what its band stretches. */
export function opensMoreMm(design: Design, counts: PanelCounts, stretch: number): number {
  const { shoulders } = openingOf(design);
  const slit = (openingPairs(design, counts) * 200) / counts.gauge.rows;
  return 2 * slit + 2 * shoulders * straightMm(design, counts) * stretch;
}

/** Height of bands that lie over each other, where the neck has none of its own or a lower one; common practice, no published source. */
const LAP_MM = 20;

/** The border along a shoulder that is not sewn: as the neckband, and high enough for a button. */
export const lapBorder = ({ neckband }: Design): Border => ({
  fabric: neckband.fabric,
  heightMm: Math.max(neckband.heightMm, LAP_MM),
});

/** Stitches picked up along one shoulder. */
export const shoulderPickUp = (design: Design, counts: PanelCounts): number =>
  Math.max(2, Math.round(stitchesIn(knittedShoulderMm(design, counts), counts.gauge)));

/** Stitches picked up along the end of the neckband. */
export const collarPickUp = (design: Design, counts: PanelCounts): number => {
  const { neckband } = design;
  if (neckband.heightMm === 0) return 0;
  const mm = (bandRows(design, neckband) * 100) / designGauge(design, neckband.fabric).gauge.rows;
  return Math.max(1, Math.round(stitchesIn(mm, counts.gauge)));
};

/** From button to button on a shoulder, mm; common practice, no published source. */
const BETWEEN_BUTTONS_MM = 35;

/** The button holes of a shoulder's band: as many as it has room for, two if it can be; undefined where there is none even for one. */
export const shoulderHoles = (
  design: Design,
  { gauge }: PanelCounts,
  stitches: number,
): HolesWish | undefined => holesAlong(design, lapBorder(design), gauge, stitches);

/** The same along a band that is buttoned from its lower end up, or down to it. */
export function holesAlong(
  { frontBand: { buttonMm }, edition }: Design,
  { fabric }: Border,
  gauge: HolesWish['gauge'],
  stitches: number,
): HolesWish | undefined {
  const mm = (stitches * 100) / gauge.stitches;
  const holeMm = (holeStitches({ fabric, gauge, buttonMm }) * 100) / gauge.stitches;
  // the first edition forgot that no button stands at the very end
  const wanted = isSince(2, { edition })
    ? 1 + Math.floor((mm - 2 * MARGIN_MM.middle - holeMm) / BETWEEN_BUTTONS_MM)
    : Math.round(mm / BETWEEN_BUTTONS_MM);
  const most = Math.max(2, wanted);
  for (let buttons = most; buttons > 0; buttons -= 1) {
    const wish: HolesWish = {
      fabric,
      gauge,
      stitches,
      over: stitches,
      at: 'right',
      buttons,
      buttonMm,
      ...(isSince(2, { edition }) ? { isEven: true } : {}),
    };
    if (buttonholePlaces(wish)) return wish;
  }
  return undefined;
}

/** The pick-up of a band along which a row of holes stands, at one distance where a count near it allows it. */
export function withEvenHoles(
  design: Design,
  band: Border,
  gauge: HolesWish['gauge'],
  along: readonly PickUp[],
): readonly PickUp[] {
  const [one] = along;
  return evenAlong(one && holesAlong(design, band, gauge, one.stitches), along);
}
