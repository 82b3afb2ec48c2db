import type { Gauge } from '../gauge.ts';
import { type Curve, xAt } from '../shape/curve.ts';
import { stepsOf } from '../shape/edge-steps.ts';
import { heightOfPair, type KnittedEdge, knitEdge } from '../shape/outline.ts';
import { taper } from '../shape/taper.ts';
import { slantCurve } from './curves.ts';
import type { Design } from './design.ts';
import type { PanelEdge } from './panel.ts';

export interface SlantWish {
  readonly name: 'side' | 'sleeve';
  readonly gauge: Gauge;
  readonly from: number;
  readonly pairs: number;
  /** stitches from the centre line at its ends */
  readonly start: number;
  readonly end: number;
  /** pairs at the beginning that are not shaped (the first row above a rib may be shaped across) */
  readonly rest: number;
  readonly tapers: Design['tapers'];
}

/**
 * Rows without shaping before an underarm, mm, where the rows are easy to keep in mind: an inch (J. Wolcott, 'Sleeve
 * length adjustments'), as far as the shaping leaves room for it.
 */
const PLAIN_AT_TOP_MM = 25;

/** A straight slanting edge: a side, a sleeve. */
export function knitSlant(wish: SlantWish): PanelEdge {
  const { name, gauge, from, pairs, start, end, rest, tapers } = wish;
  const mm = (stitches: number): number => (stitches * 100) / gauge.stitches;
  const pairMm = 200 / gauge.rows;
  const plain = tapers === 'together' ? plainAtTop(wish) : 0;
  const topMm = Math.max(pairMm / 2, plain * pairMm);
  const curve = slantCurve(mm(start), mm(end), pairs * pairMm, Math.min(rest, pairs - 1) * pairMm, topMm);
  const together =
    tapers === 'together' ? inRuns({ pairs: pairs - plain, from: rest, start, end, last: pairs }) : undefined;
  const knitted = knitEdge({ curve, gauge, pairs, start, end, order: 'free' });
  if (!together) return { ...knitted, name, from, curve, gauge };
  return { ...asKnitted(together, start, curve, gauge), name, from, curve, gauge };
}

function plainAtTop({ gauge, pairs, start, end, rest }: SlantWish): number {
  const wanted = Math.ceil((PLAIN_AT_TOP_MM * gauge.rows) / 200);
  const room = pairs - rest - Math.ceil(Math.abs(end - start));
  return Math.max(0, Math.min(wanted, room));
}

/** An edge whose stairs were laid by a rhythm, with how far they are off their curve. */
export function asKnitted(at: readonly number[], start: number, curve: Curve, gauge: Gauge): KnittedEdge {
  let worst = { stitches: 0, pair: 0 };
  at.forEach((stair, pair) => {
    const off = Math.abs(stair - (xAt(curve, heightOfPair(pair, gauge)) * gauge.stitches) / 100);
    if (off > worst.stitches) worst = { stitches: off, pair };
  });
  return { at, steps: stepsOf(at, start, 'free'), worst };
}

interface RunsWish {
  /** pairs of rows at whose start may be shaped: from `from` up to, not with, `pairs` */
  readonly from: number;
  readonly pairs: number;
  /** pairs of the whole edge */
  readonly last: number;
  readonly start: number;
  readonly end: number;
  /** the longer intervals first unless said */
  readonly order?: 'longer first' | 'shorter first';
}

/**
 * Stairs in two regular stretches: the longer intervals first, then the shorter, or the other way round. Where there are more shapings than
 * pairs of rows, every row is shaped at first, then every RS row. Undefined where even that is not enough.
 */
export function inRuns({
  pairs,
  from,
  start,
  end,
  last,
  order = 'longer first',
}: RunsWish): readonly number[] | undefined {
  const times = Math.abs(end - start);
  const rows = pairs - from;
  const twice = Math.max(0, times - rows);
  if (twice > rows) return undefined;
  const laid = taper({ rows, times: Math.min(times, rows), step: 1, order });
  if (!laid.ok) return undefined;
  const shaped = new Set(laid.value.rows);
  const way = Math.sign(end - start);
  let at = start;
  return Array.from({ length: last }, (_, pair) => {
    const row = pair - from + 1;
    if (shaped.has(row)) at += row <= twice ? 2 * way : way;
    return at;
  });
}
