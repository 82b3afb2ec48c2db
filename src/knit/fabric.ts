import type { Gauge } from './gauge.ts';

/**
 * A fabric is a periodic face: which loop, knit or purl, each column shows on the right side of each row.
 * `rows[i]` repeats over the columns from the right edge; the rows repeat upwards, the first one on an RS row.
 */
export interface Fabric {
  /** 'k' and 'p' as seen from the right side, columns from the right edge */
  readonly rows: readonly string[];
  /** stitches it needs: a multiple of `of`, plus one of `plus` */
  readonly multiple: { readonly of: number; readonly plus: readonly number[] };
  /** of a piece worked flat whose edges are sewn together: the extra stitches with which the fabric goes on across the seam */
  readonly seamed?: readonly number[];
  /** stitch and row gauge as shares of stocking stitch on its own needle; common practice, no published source */
  readonly ratio: { readonly stitches: number; readonly rows: number };
}

const anyCount = { of: 1, plus: [0] } as const;

const table = {
  garter: { rows: ['k', 'p'], multiple: anyCount, ratio: { stitches: 0.95, rows: 1.4 } },
  stocking: { rows: ['k'], multiple: anyCount, ratio: { stitches: 1, rows: 1 } },
  'reverse stocking': { rows: ['p'], multiple: anyCount, ratio: { stitches: 1, rows: 1 } },
  'rib 1x1': { rows: ['kp'], multiple: { of: 2, plus: [0] }, ratio: { stitches: 1.15, rows: 1 } },
  /** begins and ends with a knit stitch on the right side, for seams and mitred bands */
  'rib 1x1 matched': { rows: ['kp'], multiple: { of: 2, plus: [1] }, ratio: { stitches: 1.15, rows: 1 } },
  /** two knit stitches at both ends: the seam takes one of each (B. Schwan, TKGA, 'K2P2 Ribbing', 2022) */
  'rib 2x2': {
    rows: ['kkpp'],
    multiple: { of: 4, plus: [0, 2] },
    seamed: [2],
    ratio: { stitches: 1.15, rows: 1 },
  },
  moss: { rows: ['kp', 'pk'], multiple: anyCount, ratio: { stitches: 0.95, rows: 1.25 } },
} as const satisfies Record<string, Fabric>;

export type FabricName = keyof typeof table;

export const fabrics: Readonly<Record<FabricName, Fabric>> = table;

export const fabricNames = Object.keys(table) as readonly FabricName[];

/** Whether a count suits the fabric, and the nearest counts below and above that do. */
export const fits = (name: FabricName, count: number): Fitting =>
  nearest(count, fabrics[name].multiple.of, fabrics[name].multiple.plus);

/** The same for a piece worked flat and sewn together at its edges. */
export function fitsSeamed(name: FabricName, count: number): Fitting {
  const { multiple, seamed } = fabrics[name];
  return nearest(count, multiple.of, seamed ?? multiple.plus);
}

interface Fitting {
  readonly fits: boolean;
  readonly below: number;
  readonly above: number;
}

function nearest(count: number, of: number, plus: readonly number[]): Fitting {
  const suits = (n: number) => plus.some((extra) => n >= extra && (n - extra) % of === 0);
  let below = count;
  while (below > 0 && !suits(below)) below -= 1;
  let above = count;
  while (!suits(above)) above += 1;
  return { fits: suits(count), below, above };
}

/**
 * Gauge of a fabric where only another's is known, by the usual ratio of both to stocking stitch.
 * @param measuredIn the fabric that `known` was counted in
 */
export function assumedGauge(name: FabricName, known: Gauge, measuredIn: FabricName = 'stocking'): Gauge {
  const { stitches, rows } = known;
  if (name === measuredIn) return { stitches, rows };
  const [to, from] = [fabrics[name].ratio, fabrics[measuredIn].ratio];
  return { stitches: (stitches / from.stitches) * to.stitches, rows: (rows / from.rows) * to.rows };
}
