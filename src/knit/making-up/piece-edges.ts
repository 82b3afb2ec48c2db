import type { Edge } from '../piece/recipe.ts';
import type { Line } from './joint.ts';

/** A side of the body, as worn. */
export type Worn = 'left' | 'right';

/** The edge of a front, right side facing, at the wearer's side. */
export const atFront = { left: 'right', right: 'left' } as const;

/** The line walked from its other end. */
export const turnedRound = (line: Line): Line =>
  [...line]
    .reverse()
    .map(({ reversed, ...stretch }) => (reversed ? stretch : { ...stretch, reversed: true }));

/** What is bound off or cast on at an underarm. */
export interface Underarm {
  readonly line: Line;
  readonly stitches: number;
}

/**
 * The edges of a back, a front or half a front by what they are for, by its outer edge at a side of the body. Sides and
 * armholes go up, shoulders from the arm to the neck, a neck's side up to its shoulder.
 */
export interface PanelEdges {
  hem(): Line;
  side(outer: Edge): Line;
  /** undefined where nothing is bound off */
  underarm(outer: Edge): Underarm | undefined;
  /** @param whole with what is bound off at the underarm */
  armhole(outer: Edge, whole: boolean): Line;
  shoulder(outer: Edge): Line;
  /** @param tip with the stitches that a raglan front keeps at its top */
  neckSide(outer: Edge, tip: boolean): Line;
  /** of half a front: below its neck */
  front(outer: Edge): Line;
  /** what is bound off or rests at the middle of a neck */
  middle(): Line;
  /** of a whole panel, from the right to the left */
  wholeNeck(): Line;
}

/** The edges of a sleeve by what they are for, whichever way it is knitted: all go from the cuff up. */
export interface SleeveEdges {
  cuff(): Line;
  /** from the right edge to the left */
  top(): Line;
  /** the sleeve's own seam */
  seam(edge: Edge): Line;
  underarm(edge: Edge): Underarm | undefined;
  /** one side of the cap, of the raglan, or what is sewn into an indent; nothing of a straight top */
  cap(edge: Edge, whole: boolean): Line;
}
