import type { PlannedPart } from '../planned.ts';
import type { Edge } from '../recipe.ts';
import { changeOfRow, type LaidRow, type Lie, laidRow, laidRows, plainRow } from './lie.ts';
import { slipRates } from './rates.ts';

/** What may have gone wrong. */
export const slipCauses = [
  /** the place is further than the knitting; the knitting is further than the place */
  'place ahead',
  'place behind',
  'shaping missed',
  'shaping doubled',
  'one edge only',
  /** a spread row with fewer, or with more, increases or decreases than planned */
  'spread short',
  'spread over',
  'stitch dropped',
  'stray yarn-over',
  /** a bound-off or cast-on group with a stitch more or fewer */
  'group miscounted',
] as const;

export type SlipCause = (typeof slipCauses)[number];

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
}

/** Everything that may have happened in the stretch. */
export const slipsIn = (stretch: Stretch): Slip[] => [
  ...placesOff(stretch),
  ...shapingMissed(stretch),
  ...shapingDoubled(stretch),
  ...oneEdgeOnly(stretch),
  ...spreadOff(stretch),
  ...strayStitches(stretch),
  ...groupsOff(stretch),
];

const FARTHEST = 6;

const repeated = (rate: number, times: number): number => rate * slipRates.again ** (times - 1);

function placesOff({ part, from, latest, to, landmark }: Stretch): Slip[] {
  const at = (rows: number) => (rows === 0 ? part.start : (part.rows[rows - 1]?.after ?? 0));
  const out: Slip[] = [];
  const place = (cause: SlipCause, rows: number, times: number): void => {
    out.push({
      cause,
      rows: [rows],
      times,
      by: at(rows) - at(to),
      weight: repeated(slipRates.tap, times) * (latest - from),
      lie: () => ({ rows: laidRows(part, landmark, rows), trace: 'none' }),
    });
  };
  for (let j = 1; j <= FARTHEST; j += 1) {
    if (to - j >= from) place('place ahead', to - j, j);
    if (to + j <= part.rows.length) place('place behind', to + j, j);
  }
  return out;
}

/** Rows of the stretch with their shaping, those that have any. */
const shapedRows = ({ part, from, latest }: Stretch): { n: number; laid: LaidRow }[] =>
  part.rows
    .slice(from, latest)
    .map((row) => ({ n: row.n, laid: laidRow(row) }))
    .filter(({ n, laid }) => changeOfRow(laid) !== 0 && part.rows[n - 1]?.after !== 0);

/** The planned lie with some rows replaced; `change` may give several rows for one. */
function changed(
  stretch: Stretch,
  change: (n: number, laid: LaidRow) => readonly LaidRow[],
  trace: Lie['trace'] = 'none',
): Lie {
  const { part, landmark, to } = stretch;
  const rows = laidRows(part, landmark, to).flatMap((laid, i) => change(landmark + i + 1, laid));
  return { rows, trace };
}

function shapingMissed(stretch: Stretch): Slip[] {
  const shaped = shapedRows(stretch);
  return shaped.flatMap((_, first) =>
    runsFrom(shaped, first)
      .filter(isOneKind)
      .map((run): Slip => {
        const rows = run.map(({ n }) => n);
        return {
          cause: 'shaping missed',
          rows,
          times: rows.length,
          by: -run.reduce((sum, { laid }) => sum + changeOfRow(laid), 0),
          weight: repeated(slipRates.missed, rows.length),
          lie: () => changed(stretch, (n, laid) => [rows.includes(n) ? plainRow : laid]),
        };
      }),
  );
}

/** One, two, three ... rows from `first` on. */
const runsFrom = <T>(list: readonly T[], first: number): T[][] =>
  Array.from({ length: Math.min(FARTHEST, list.length - first) }, (_, i) => list.slice(first, first + i + 1));

/** What is forgotten for a while is one thing: the decreases of an edge, not those and then the increases. */
const isOneKind = (run: readonly { laid: LaidRow }[]): boolean =>
  run.every(({ laid }) =>
    (['right', 'left', 'across', 'group'] as const).every(
      (at) => Math.sign(laid[at]) === Math.sign(run[0]?.laid[at] ?? 0),
    ),
  );

/** Worked twice: in another row that was to be plain, or a whole pair of rows once more. */
function shapingDoubled(stretch: Stretch): Slip[] {
  return shapedRows(stretch).flatMap(({ n: row, laid: twice }): Slip[] => {
    const slip = { cause: 'shaping doubled' as const, rows: [row], times: 1, by: changeOfRow(twice) };
    const pairAgain: Slip = {
      ...slip,
      weight: slipRates.doubled / 2,
      lie: () => changed(stretch, (n, laid) => (n === row ? [laid, plainRow, laid] : [laid])),
    };
    const other = otherRow(stretch, row);
    if (other === undefined || twice.group !== 0) return [pairAgain];
    const inAnother: Slip = {
      ...slip,
      weight: slipRates.doubled / 2,
      lie: () => changed(stretch, (n, laid) => [n === other ? { ...twice, group: laid.group } : laid]),
    };
    return [inAnother, pairAgain];
  });
}

/** The next plain row of the same side in which the shaping could have been worked again. */
function otherRow({ part, to }: Stretch, row: number): number | undefined {
  for (const other of [row + 2, row + 1]) {
    const planned = part.rows[other - 1];
    if (planned && other <= to && changeOfRow(laidRow(planned)) === 0) return other;
  }
  return undefined;
}

function oneEdgeOnly(stretch: Stretch): Slip[] {
  const both = shapedRows(stretch).filter(({ laid }) => laid.right !== 0 && laid.left !== 0);
  return both.flatMap(({ n: row, laid: planned }) =>
    (['right', 'left'] as const).map(
      (edge): Slip => ({
        cause: 'one edge only',
        rows: [row],
        edge,
        times: 1,
        by: -planned[edge],
        weight: slipRates.oneEdge / 2,
        lie: () => changed(stretch, (n, laid) => [n === row ? { ...laid, [edge]: 0 } : laid]),
      }),
    ),
  );
}

function spreadOff(stretch: Stretch): Slip[] {
  const spread = shapedRows(stretch).filter(({ laid }) => Math.abs(laid.across) > 2);
  return spread.flatMap(({ n: row, laid: { across } }) => {
    const off = (cause: SlipCause, times: number, by: number, weight: number): Slip => ({
      cause,
      rows: [row],
      times,
      by,
      weight,
      lie: () => changed(stretch, (n, laid) => [n === row ? { ...laid, across: across + by } : laid]),
    });
    const way = Math.sign(across);
    const most = Math.abs(across) - 1;
    const short = Array.from({ length: most }, (_, i) =>
      off('spread short', i + 1, -way * (i + 1), slipRates.spreadShort / 2 ** (i + 1)),
    );
    const over = [1, 2, 3].map((m) => off('spread over', m, way * m, slipRates.spreadOver / 2 ** m));
    return [...short, ...over];
  });
}

function strayStitches(stretch: Stretch): Slip[] {
  const rows = stretch.latest - stretch.from;
  const stray = (cause: SlipCause, way: 1 | -1, trace: Lie['trace'], rate: number): Slip[] =>
    [1, 2, 3].map((times) => ({
      cause,
      rows: [],
      times,
      by: way * times,
      weight: repeated(rate, times) * rows,
      lie: () => changed(stretch, (_, laid) => [laid], trace),
    }));
  return rows <= 0
    ? []
    : [
        ...stray('stitch dropped', -1, 'ladder', slipRates.dropped),
        ...stray('stray yarn-over', 1, 'hole', slipRates.yarnOver),
      ];
}

function groupsOff(stretch: Stretch): Slip[] {
  const groups = shapedRows(stretch).filter(({ laid }) => laid.group !== 0);
  return groups.flatMap(({ n: row, laid: { group } }) =>
    [-2, -1, 1, 2]
      .filter((by) => Math.abs(by) < Math.abs(group))
      .map(
        (by): Slip => ({
          cause: 'group miscounted',
          rows: [row],
          times: Math.abs(by),
          by,
          weight: repeated(slipRates.group / 2, Math.abs(by)),
          lie: () => changed(stretch, (n, laid) => [n === row ? { ...laid, group: group + by } : laid]),
        }),
      ),
  );
}
