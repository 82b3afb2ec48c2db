import type { PlannedPart } from '../planned.ts';
import type { Edge } from '../recipe.ts';
import { changeOfRow, type LaidRow, type Lie, laidRow, laidRows } from './lie.ts';
import { slipRates } from './rates.ts';

/** What may have gone wrong. */
export type SlipCause =
  /** the place is further than the knitting; the knitting is further than the place */
  | 'place ahead'
  | 'place behind'
  | 'shaping missed'
  | 'shaping doubled'
  | 'one edge only'
  /** a spread row with fewer, or with more, increases or decreases than planned */
  | 'spread short'
  | 'spread over'
  | 'stitch dropped'
  | 'stray yarn-over'
  /** two stitches worked as one unawares */
  | 'worked together'
  /** a cast-on that was never counted */
  | 'cast-on miscounted'
  /** a bound-off or cast-on group with a stitch more or fewer */
  | 'group miscounted';

/** One thing that may have happened, with what it would have done to count and fabric. */
export interface Slip {
  readonly cause: SlipCause;
  /** rows of the plan concerned; for 'place ...' the rows really worked; empty: it may lie anywhere */
  readonly rows: readonly number[];
  readonly edge?: Edge;
  /** how many rows (shaping, place) or stitches */
  readonly times: number;
  /** what it adds to the count that the plan states at the place */
  readonly by: number;
  readonly weight: number;
  readonly lie: () => Lie;
}

/** Where a slip may lie. Rows are those of the plan. */
export interface Stretch {
  readonly part: PlannedPart;
  /** it lies above this row */
  readonly from: number;
  /** and not above this one */
  readonly latest: number;
  /** rows worked, as the place says */
  readonly to: number;
  /** the landmark from which the fabric is looked at; not above `from` */
  readonly landmark: number;
  /** it begins with a cast-on whose stitches were never counted */
  readonly castOn?: boolean;
}

/** The same slip is looked for so many times over, and the place so many rows off. */
export const FARTHEST = 6;

/** How likely the same slip is `times` times over. */
export const repeated = (rate: number, times: number): number => rate * slipRates.again ** (times - 1);

/** Rows of the stretch with their shaping, those that have any. */
export const shapedRows = ({ part, from, latest }: Stretch): { n: number; laid: LaidRow }[] =>
  part.rows
    .slice(from, latest)
    .map((row) => ({ n: row.n, laid: laidRow(row) }))
    .filter(({ n, laid }) => changeOfRow(laid) !== 0 && part.rows[n - 1]?.after !== 0);

/** The planned lie with some rows replaced; `change` may give several rows for one. */
export function changed(
  stretch: Stretch,
  change: (n: number, laid: LaidRow) => readonly LaidRow[],
  trace: Lie['trace'] = 'none',
): Lie {
  const { part, landmark, to } = stretch;
  const rows = laidRows(part, landmark, to).flatMap((laid, i) => change(landmark + i + 1, laid));
  return { rows, trace };
}
