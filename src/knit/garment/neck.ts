import type { Gauge } from '../gauge.ts';
import { chain, type Point, type Segment } from '../shape/curve.ts';
import { shifted } from '../shape/edge-steps.ts';
import { type EdgeWish, type KnittedEdge, knitEdge, uprightEdge } from '../shape/outline.ts';
import { neckCurve } from './curves.ts';
import { type Design, isSince } from './design.ts';
import type { NeckEdge } from './kinds/necks.ts';
import type { PanelEdge } from './panel.ts';
import { asKnitted, inRuns } from './slant.ts';

export interface NeckWish {
  readonly shape: NeckEdge;
  readonly gauge: Gauge;
  /** pair of rows at which the neck begins, and how many it takes */
  readonly from: number;
  readonly pairs: number;
  /** stitches from the centre line at the bottom (half a stitch where the count is odd; the front edge of a cardigan) */
  readonly start: number;
  /** stitches from the centre line at the top */
  readonly end: number;
  /** stitches from the centre line to the panel's outer edge at each of its pairs; only where the slant of a V is to be easy to keep in mind */
  readonly beside?: ((pair: number) => number | undefined) | undefined;
}

/** The panel's outer edge beside a V whose rows are to be easy to keep in mind; undefined where they are laid along the line. */
export const besideNeck = (
  { edition, tapers }: Pick<Design, 'edition' | 'tapers'>,
  edges: readonly PanelEdge[],
): NeckWish['beside'] =>
  isSince(2, { edition }) && tapers === 'together'
    ? (pair) => {
        const edge = edges.filter(({ from }) => from <= pair).at(-1);
        return edge?.at[pair - edge.from];
      }
    : undefined;

export interface Neck {
  readonly edge: PanelEdge;
  /** stitches bound off (or rested) at the middle of a closed panel, both halves */
  readonly middle: number;
}

/** A neck whose panel is parted so many pairs of rows below it: what lies level in the middle is bound off at each half. */
export function withOpening({ edge, middle }: Neck, pairs: number, start: number): Neck {
  const { gauge } = edge;
  const mm = (stitches: number): number => (stitches * 100) / gauge.stitches;
  const up = (pairs * 200) / gauge.rows;
  const level = middle / 2 - start;
  const first = { pair: pairs, by: -level, as: level > 1 ? 'group' : 'single' } as const;
  const slit: Point[] = [
    [mm(start), 0],
    [mm(start), up],
  ];
  return {
    edge: {
      ...edge,
      from: edge.from - pairs,
      at: [...Array.from({ length: pairs }, () => start), ...edge.at],
      steps: [...(level > 0 ? [first] : []), ...shifted(edge.steps, pairs)],
      worst: { ...edge.worst, pair: edge.worst.pair + pairs },
      curve: [...chain(slit), ...edge.curve.map((segment) => raised(segment, up))],
    },
    middle: 2 * start,
  };
}

const raised = (segment: Segment, mm: number): Segment =>
  segment.map(([x, y]): Point => [x, y + mm]) as unknown as Segment;

/** A neck edge: what lies in the middle when it begins, and its steps above that. */
export function knitNeck(wish: NeckWish): Neck {
  const { shape, gauge, from, pairs, start, end } = wish;
  const mm = (stitches: number): number => (stitches * 100) / gauge.stitches;
  const curve = neckCurve(shape, mm(start), mm(end), (pairs * 200) / gauge.rows, 100 / gauge.rows);
  const edge: Omit<EdgeWish, 'start'> = {
    curve,
    gauge,
    pairs,
    end,
    order: shape.isPointed ? 'free' : 'falling',
    outward: -1,
  };
  if (shape.level === 1)
    return { edge: { ...uprightEdge(pairs, end), name: 'neck', from, curve, gauge }, middle: 2 * end };
  const knitted = inRhythm(wish, curve) ?? knitEdge({ ...edge, start });
  const middle = shape.isPointed ? 2 * start : 2 * (knitted.at[0] ?? 0);
  const steps = shape.isPointed ? knitted.steps : knitted.steps.filter((step) => step.pair > 0);
  return { edge: { ...knitted, steps, name: 'neck', from, curve, gauge }, middle };
}

/**
 * The slant of a V in one rhythm and then another: the shorter intervals first and a pair of rows without shaping at the top
 * (printed vests and pullovers decrease on every second row some times, then on every fourth, and work some rows straight:
 * A. Kim, 'Classic V-neck sweater', 2019; issuhub.com, 9553, page 52). The longer ones first where a raglan beside it leaves
 * no room for that. Undefined of any other neck, and where neither has room.
 */
function inRhythm(
  { shape, gauge, from, pairs, start, end, beside }: NeckWish,
  curve: PanelEdge['curve'],
): KnittedEdge | undefined {
  if (!shape.isPointed || beside === undefined) return undefined;
  for (const order of ['shorter first', 'longer first'] as const) {
    const at = inRuns({ from: 0, pairs: Math.max(1, pairs - 1), last: pairs, start, end, order });
    const least = (beside(from + pairs - 1) ?? end) - end;
    const hasRoom = at?.every(
      (stitches, pair) => (beside(from + pair) ?? stitches + least) - stitches >= least,
    );
    if (!at || !hasRoom) continue;
    const { steps, ...knitted } = asKnitted(at, start, curve, gauge);
    return { ...knitted, steps: steps.map((step) => ({ ...step, by: -step.by })) };
  }
  return undefined;
}
