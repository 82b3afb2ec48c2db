import type { PickUp, PieceRole, Recipe, Section } from '../piece/recipe.ts';
import { buttonholeRows } from './buttonholes.ts';
import type { Border, Design } from './design.ts';
import { designGauge } from './gauges.ts';
import type { HolesWish } from './holes-wish.ts';

export const bandRows = (design: Design, band: Border): number =>
  Math.max(1, Math.round((band.heightMm * designGauge(design, band.fabric).gauge.rows) / 100));

/** A hole is bound off in one row and cast on in the next, with a row of the band on either side. */
const LEAST_HOLED_ROWS = 4;

/** The border of a band that has button holes, or lies on one: as wide as asked, and on thick yarn as wide as they need. */
export function roomForHoles(design: Design, { fabric, heightMm }: Border): Border {
  const leastMm = (LEAST_HOLED_ROWS * 100) / designGauge(design, fabric).gauge.rows;
  return { fabric, heightMm: Math.max(heightMm, leastMm) };
}

/** The border along both fronts: bands that are buttoned are of one width, and the holes need theirs. */
export const frontBorder = (design: Design): Border =>
  design.frontBand.heightMm > 0 && design.frontBand.buttons > 0
    ? roomForHoles(design, design.frontBand)
    : design.frontBand;

/** A band as a piece of its own. @param holes its button holes; none where left out, or where they do not fit */
export function bandPiece(
  [name, role]: readonly [string, PieceRole],
  pickUp: readonly PickUp[],
  design: Design,
  band: Border,
  shaping: Section['shaping'],
  holes?: HolesWish,
): Recipe {
  const rows = bandRows(design, band);
  const plain = (n: number): Section => ({
    name: 'band',
    rows: n,
    fabric: band.fabric,
    needle: design.needles.borders,
    shaping: [],
  });
  const words = holes && buttonholeRows(holes, rowsBeforeHoles(rows));
  const sections: Section[] = words
    ? [
        plain(rowsBeforeHoles(rows)),
        { ...plain(2), name: 'button holes', words },
        plain(Math.max(1, rows - rowsBeforeHoles(rows) - 2)),
      ]
    : [{ ...plain(rows), shaping }];
  return {
    name,
    role,
    makes: 1,
    parts: [{ name, from: { pickUp }, firstSide: 'WS', sections, end: 'bind off' }],
  };
}

/** An odd number, so that the holes are bound off on an RS row, in the middle of the band. */
const rowsBeforeHoles = (rows: number): number => 2 * Math.max(0, Math.floor((rows - 3) / 4)) + 1;
