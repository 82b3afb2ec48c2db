import type { Gauge } from '../gauge.ts';
import { type Bit, lengthAlong } from '../making-up/boundary.ts';
import { type Curve, lengthOf } from '../shape/curve.ts';
import { type EdgeStep, turned } from '../shape/edge-steps.ts';
import { type KnittedEdge, knitEdge } from '../shape/outline.ts';
import { capCurve } from './curves.ts';
import type { PanelEdge } from './panel.ts';
import { pairsIn } from './whole-numbers.ts';

/** A set-in cap in stitches: the sleeve's width, what is bound off at each underarm, and the width of its top. */
export interface CapWish {
  readonly gauge: Gauge;
  readonly wide: number;
  readonly step: number;
  readonly top: number;
  /** knitted from its top down: its shaping lies on other rows */
  readonly isTopDown: boolean;
  /** its curve arrives aslant, so that what is bound off last is no wider than the top that was asked for */
  readonly endsSquare: boolean;
}

export interface Cap {
  readonly pairs: number;
  /** its height before rounding to rows, mm */
  readonly heightMm: number;
  /** how far its curve may be off the armhole's at that height, mm */
  readonly offMm: number;
}

const stitchMm = ({ stitches }: Gauge): number => 100 / stitches;
const rowMm = ({ rows }: Gauge): number => 100 / rows;

const curveOf = ({ gauge, wide, step, top, endsSquare }: CapWish, heightMm: number): Curve => {
  const mm = stitchMm(gauge);
  return capCurve((wide / 2) * mm, step * mm, (top / 2) * mm, heightMm, 2 * rowMm(gauge), endsSquare);
};

/** Half a cap of so many pairs of rows, from the underarm to its top. */
export function knitCap(
  wish: CapWish,
  pairs: number,
): { readonly curve: Curve; readonly knitted: KnittedEdge } {
  const { gauge, wide, top } = wish;
  const curve = curveOf(wish, 2 * pairs * rowMm(gauge));
  const knitted = knitEdge({
    curve,
    gauge,
    pairs,
    start: wide / 2,
    end: top / 2,
    order: 'falling then rising',
    endsLevel: true,
  });
  return { curve, knitted };
}

/**
 * The cap whose edge fits the armhole, with the ease asked for in hundredths: its height by the curves of both, then where
 * whole stitches make another edge of it, so many pairs of rows that both meet as they are knitted. Undefined where even a flat cap is
 * longer than the armhole.
 */
export function capFor(wish: CapWish, armhole: PanelEdge, ease: number): Cap | undefined {
  if (wish.wide / 2 - wish.step <= wish.top / 2) return undefined;
  const solved = solvedHeight(wish, lengthOf(armhole.curve) * (1 + ease / 100));
  if (!solved) return undefined;
  const near = pairsIn(solved.heightMm, wish.gauge);
  const off = (pairs: number): number => {
    const sewn = capSeam(wish, pairs, armhole);
    return Math.abs(sewn.cap - sewn.armhole * (1 + ease / 100));
  };
  let best = { pairs: near, off: near < LEAST_PAIRS ? 0 : off(near) };
  if (best.off <= KEPT * toleranceMm(wish.gauge)) return { pairs: near, ...solved };
  for (let by = 1; by <= MOST_PAIRS_OFF; by += 1) {
    for (const pairs of [near - by, near + by]) {
      if (pairs < LEAST_PAIRS) continue;
      const here = off(pairs);
      if (here < best.off - CAP_BOUND_MM) best = { pairs, off: here };
    }
  }
  return { pairs: best.pairs, ...solved };
}

/** fewer pairs of rows are no cap */
export const LEAST_PAIRS = 3;
/** whole stitches of the thickest yarn move a cap by so much */
const MOST_PAIRS_OFF = 5;
const CAP_BOUND_MM = 0.005;
/** a height found by the curves is kept where the edges miss each other by no more of what may be sewn together */
const KEPT = 0.7;

/** Knitted edges are sewn together that are a row and a stitch apart; common practice, no published source. */
export const toleranceMm = (gauge: Gauge): number => stitchMm(gauge) + rowMm(gauge);

/**
 * Half a cap and the armhole of one panel along what is sewn together, mm. Their underarms are sewn apart, stitch to stitch,
 * where the cap binds off as many there as the body; whole stitches may have made it one more, and then all goes round in one.
 */
export function capSeam(
  wish: CapWish,
  pairs: number,
  armhole: PanelEdge,
): { readonly cap: number; readonly armhole: number; readonly underarm: number | undefined } {
  const { knitted } = knitCap(wish, pairs);
  const [first] = knitted.steps;
  const own = first?.pair === 0 && first.as === 'group' ? -first.by : 0;
  const isApart = own === wish.step || (first?.as === 'single' && first.pair === 0);
  const level = (stitches: number): number => (isApart ? 0 : stitches * stitchMm(wish.gauge));
  return {
    cap: halfCapMm(wish, pairs, knitted) + level(own),
    armhole: knittedMm(armhole, armhole.at.length) + level(wish.step),
    underarm: isApart ? wish.step : undefined,
  };
}

/** Half a cap along its knitted edge, what is bound off at the underarm left out, mm. */
export function halfCapMm(
  wish: CapWish,
  pairs: number,
  knitted: KnittedEdge = knitCap(wish, pairs).knitted,
): number {
  const top = knitted.at.at(-1) ?? 0;
  const steps = wish.isTopDown ? turned(knitted.steps, pairs) : knitted.steps;
  return knittedMm({ steps, gauge: wish.gauge }, pairs) + top * stitchMm(wish.gauge);
}

/**
 * Along a knitted edge, what is bound off in its first row left out (that is sewn apart), mm.
 * @param isBesideLevel see `lengthAlong`
 */
export function knittedMm(
  { steps, gauge }: Pick<PanelEdge, 'steps' | 'gauge'>,
  pairs: number,
  isBesideLevel = false,
): number {
  const bits: Bit[] = [];
  const stepAt = new Map(steps.map((step) => [step.pair, step]));
  const [width, height] = [stitchMm(gauge), rowMm(gauge)];
  const bit = (row: number, level: boolean, by: number): Bit => ({
    row,
    section: '',
    width,
    height,
    level,
    by,
  });
  for (let pair = 0; pair < pairs; pair += 1) {
    const step = stepAt.get(pair);
    const row = 2 * pair + 1;
    if (step?.as === 'group' && pair > 0) bits.push(bit(row, true, step.by));
    const [first, second] = step?.as === 'single' ? singles(step) : [0, 0];
    bits.push(bit(row, false, first), bit(row + 1, false, second));
  }
  return lengthAlong(bits, isBesideLevel);
}

const singles = ({ by }: EdgeStep): readonly [number, number] => [
  Math.sign(by),
  Math.abs(by) > 1 ? Math.sign(by) : 0,
];

/** The edge only grows with the height, so halving the range finds it to a hundredth of a millimetre. */
function solvedHeight(wish: CapWish, wanted: number): Pick<Cap, 'heightMm' | 'offMm'> | undefined {
  const edge = (height: number): number => lengthOf(curveOf(wish, height));
  let low = 2 * rowMm(wish.gauge);
  let high = wanted;
  if (edge(low) > wanted) return undefined;
  while (high - low > CAP_BOUND_MM) {
    const middle = (low + high) / 2;
    if (edge(middle) < wanted) low = middle;
    else high = middle;
  }
  const heightMm = (low + high) / 2;
  return { heightMm, offMm: Math.abs(edge(heightMm) - wanted) };
}
