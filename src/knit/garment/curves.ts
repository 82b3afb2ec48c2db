import { type Curve, chain, levelThenUpright, line, type Point } from '../shape/curve.ts';
import type { NeckEdge } from './kinds/necks.ts';

/**
 * The curves of a garment, in mm: x from the centre line, y above the edge's own beginning. The same functions draw
 * what was asked for and what whole stitches and rows make of it.
 */

/**
 * A slanting edge that begins after `startMm` (the row above a rib is worked without shaping at its edges) and has
 * reached its end `topMm` below its top: half a pair of rows, so that the last rows have their full count.
 */
export const slantCurve = (low: number, high: number, height: number, startMm = 0, topMm = 0): Curve =>
  chain([
    [low, 0],
    [low, startMm],
    [high, height - topMm],
    [high, height],
  ]);

/**
 * A set-in armhole: `levelMm` of its width bound off level (a fifth unless said), a quarter of an ellipse over the lower
 * part of its depth, then straight up (common practice, no published source).
 */
export function setInCurve(underarm: number, across: number, depth: number, levelMm?: number): Curve {
  const taken = underarm - across;
  const level = underarm - Math.min(levelMm ?? LEVEL_SHARE * taken, taken);
  return [
    line([underarm, 0], [level, 0]),
    levelThenUpright([level, 0], [across, CURVED_SHARE * depth]),
    line([across, CURVED_SHARE * depth], [across, depth]),
  ];
}
const LEVEL_SHARE = 0.2;
const CURVED_SHARE = 0.45;

/** A raglan: the underarm bound off, one pair of rows without shaping, then a straight line to the neck. */
export const raglanCurve = (
  underarm: number,
  step: number,
  top: number,
  depth: number,
  pairMm: number,
): Curve =>
  chain([
    [underarm, 0],
    [underarm - step, 0],
    [underarm - step, pairMm],
    [top, depth - pairMm / 2],
    [top, depth],
  ]);

/**
 * A sleeve cap: the underarm bound off as wide as the body's, one pair of rows, then an S that is level at both ends.
 * Its top is level: `top` is half of what is bound off there. Where that is to be no wider than asked (`isSquare`), the S
 * arrives aslant.
 */
export function capCurve(
  width: number,
  step: number,
  top: number,
  height: number,
  pairMm: number,
  isSquare = false,
): Curve {
  const foot: Point = [width - step, pairMm];
  const end: Point = [top, height];
  const across = foot[0] - top;
  const below = isSquare ? SLANT_AT_TOP * (height - pairMm) : 0;
  return [
    ...chain([[width, 0], [width - step, 0], foot]),
    [foot, [foot[0] - CAP_HANDLE * across, foot[1]], [top + CAP_HANDLE * across, height - below], end],
    line(end, [0, height]),
  ];
}
/** how far the S runs level at its ends, as a share of its width (common practice, no published source) */
const CAP_HANDLE = 0.4;
/** how far below its top the S of a square end is drawn aslant, as a share of its height (common practice, no published source) */
const SLANT_AT_TOP = 0.21;

/**
 * Half a neck from its lowest point; `from` is where it begins at the bottom (the front edge of a cardigan), and
 * `topMm` how far below its top it has its full width.
 */
export function neckCurve(
  { isPointed, level: share }: NeckEdge,
  from: number,
  half: number,
  depth: number,
  topMm = 0,
): Curve {
  const end: Point = [half, depth];
  const wide: Point = [half, depth - topMm];
  if (isPointed) return chain([[from, 0], wide, end]);
  if (share === 1) return chain([[from, 0], [half, 0], end]);
  const level = from + share * (half - from);
  return [line([from, 0], [level, 0]), levelThenUpright([level, 0], wide), line(wide, end)];
}
