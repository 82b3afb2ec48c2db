import { fabrics } from '../../fabric.ts';
import { otherSide, type Side } from '../../row/step.ts';
import type { PlannedPart, PlannedRow } from '../planned.ts';
import type { Edge } from '../recipe.ts';
import { countAt } from './count-at.ts';
import { laidRow } from './lie.ts';

/** Something that she can tell of the knitting without knowing its row. */
export type Observation =
  /** stitches on the needle */
  | { readonly kind: 'stitches'; readonly stitches: number }
  /** rows from a landmark (rows of the part worked up to it, as `landmarksOf` gives) to the needle */
  | { readonly kind: 'rows above'; readonly landmark: number; readonly rows: number }
  /** ridges of garter stitch from a landmark to the needle, on the side that faces her or on either */
  | {
      readonly kind: 'ridges above';
      readonly landmark: number;
      readonly ridges: number;
      readonly facing?: Side;
    }
  /** the side that faces her, the needle held at the top, and the end of the needle where the yarn hangs */
  | { readonly kind: 'side'; readonly facing: Side; readonly yarn: Edge }
  /** rows above the last decrease or increase at an edge, or at whichever edge has it */
  | { readonly kind: 'last shaping'; readonly edge: Edge | 'either'; readonly rows: number }
  /** decreases and increases at an edge, counted from a landmark up */
  | { readonly kind: 'shapings'; readonly edge: Edge; readonly landmark: number; readonly times: number }
  /** the last group bound off or cast on, as 'the n-th at this edge' from the bottom; 0: none yet */
  | { readonly kind: 'groups'; readonly edge: Edge; readonly times: number }
  /** the section whose fabric is on the needle */
  | { readonly kind: 'section'; readonly section: number }
  /** height from the start of the part to the needle, mm, give or take what hands measure */
  | { readonly kind: 'height'; readonly mm: number };

export type ObservationKind = Observation['kind'];

/** A height measured by hand on fabric that gives: this share of it, and never less than so many mm;
 * our own choice, no published source. */
const HEIGHT_SHARE = 0.08;
const HEIGHT_LEAST_MM = 10;

/** Whether `rows` worked would look like that. */
export function looksLike(part: PlannedPart, rows: number, seen: Observation): boolean {
  switch (seen.kind) {
    case 'stitches':
      return countAt(part, rows) === seen.stitches;
    case 'rows above':
      return rows - seen.landmark === seen.rows;
    case 'ridges above':
      return (seen.facing === undefined ? (['RS', 'WS'] as const) : [seen.facing]).some((facing) =>
        ridgesSeen(part, seen.landmark, rows, facing).includes(seen.ridges),
      );
    case 'side':
      return nextSide(part, rows) === sideToCome(seen.facing, seen.yarn);
    case 'last shaping':
      return rowsAboveShaping(part, rows, seen.edge) === seen.rows;
    case 'shapings':
      return shapingsAt(part, seen.landmark, rows, seen.edge) === seen.times;
    case 'groups':
      return groupsAt(part, rows, seen.edge) === seen.times;
    case 'section':
      return sectionsAt(part, rows).includes(seen.section);
    case 'height':
      return Math.abs(heightAt(part, rows) - seen.mm) <= Math.max(HEIGHT_LEAST_MM, seen.mm * HEIGHT_SHARE);
  }
}

/**
 * Ridges that may be counted: on either side of garter stitch, each row knitted from the other side shows as a ridge.
 * The last one lies right under the needle and may be counted or not.
 */
export function ridgesSeen(
  part: PlannedPart,
  landmark: number,
  rows: number,
  facing: Side,
): readonly number[] {
  const ridge = (row: PlannedRow): boolean => row.side !== facing && isRidged(part, row);
  const count = (to: number): number => part.rows.slice(landmark, to).filter(ridge).length;
  return [...new Set([count(rows), count(Math.max(landmark, rows - 1))])];
}

/**
 * Rows by which so many worked are off what is most often meant by it, of those that look like it: a ridge is two rows, and
 * who counts them counts whole ones. 0 where nothing speaks for one of them more than for another.
 */
export function unlikeness(part: PlannedPart, rows: number, seen: Observation): number {
  if (seen.kind !== 'ridges above') return 0;
  const ridged = part.rows.slice(seen.landmark, rows).filter((row) => isRidged(part, row)).length;
  return Math.abs(ridged - 2 * seen.ridges);
}

const isRidged = (part: PlannedPart, row: PlannedRow): boolean =>
  fabrics[fabricOf(part, row)].rows.length === 2;

const fabricOf = (part: PlannedPart, row: PlannedRow) => part.sections[row.section]?.fabric ?? 'stocking';

/** The side of the row that comes after so many rows. */
export function nextSide(part: PlannedPart, rows: number): Side {
  const next = part.rows[rows]?.side;
  if (next !== undefined) return next;
  const last = part.rows[rows - 1]?.side;
  return last === undefined ? 'RS' : otherSide(last);
}

/** With the yarn at the right end the side that faces her is worked next; from the left end she has to turn. */
const sideToCome = (facing: Side, yarn: Edge): Side => (yarn === 'right' ? facing : otherSide(facing));

/** Rows above the last shaping; -1 where there is none. */
export function rowsAboveShaping(part: PlannedPart, rows: number, edge: Edge | 'either'): number {
  for (let n = rows; n >= 1; n -= 1) {
    const laid = laidRow(part.rows[n - 1] as PlannedRow);
    if ((edge !== 'left' && laid.right !== 0) || (edge !== 'right' && laid.left !== 0)) return rows - n;
  }
  return -1;
}

export const shapingsAt = (part: PlannedPart, landmark: number, rows: number, edge: Edge): number =>
  part.rows.slice(landmark, rows).filter((row) => laidRow(row)[edge] !== 0).length;

export const groupsAt = (part: PlannedPart, rows: number, edge: Edge): number =>
  part.rows
    .slice(0, rows)
    .flatMap((row) => row.shaping)
    .filter((mark) => (mark.kind === 'bind off' || mark.kind === 'cast on') && mark.edge === edge).length;

/** At a section's end its fabric is on the needle and the next one's comes. */
export function sectionsAt(part: PlannedPart, rows: number): readonly number[] {
  const last = part.rows[rows - 1]?.section;
  return [last ?? part.rows[rows]?.section ?? 0];
}

export const heightAt = (part: PlannedPart, rows: number): number =>
  (part.rows[rows - 1]?.height ?? part.base) - part.base;
