import { changeOfRow, type LaidRow, laidRow, plainRow } from './lie.ts';
import { slipRates } from './rates.ts';
import { changed, FARTHEST, repeated, type Slip, type Stretch, shapedRows } from './slip.ts';

/** Worked plain; or tapped twice and then never worked, one row being short of the place. */
export function shapingMissed(stretch: Stretch): Slip[] {
  const shaped = shapedRows(stretch);
  const skipped = shaped.map(
    ({ n: row, laid: missing }): Slip => ({
      cause: 'shaping missed',
      rows: [row],
      times: 1,
      by: -changeOfRow(missing),
      weight: slipRates.tap,
      lie: () => changed(stretch, (n, laid) => (n === row ? [] : [laid])),
    }),
  );
  return [...skipped, ...workedPlain(stretch, shaped)];
}

function workedPlain(stretch: Stretch, shaped: ReturnType<typeof shapedRows>): Slip[] {
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

/** Worked twice: in another row that was to be plain, the row again for want of a tap, or a whole pair of rows again. */
export function shapingDoubled(stretch: Stretch): Slip[] {
  return shapedRows(stretch).flatMap(({ n: row, laid: twice }): Slip[] => {
    const slip = { cause: 'shaping doubled' as const, rows: [row], times: 1, by: changeOfRow(twice) };
    const rowAgain: Slip = {
      ...slip,
      weight: slipRates.tap,
      lie: () => changed(stretch, (n, laid) => (n === row ? [laid, laid] : [laid])),
    };
    const pairAgain: Slip = {
      ...slip,
      weight: slipRates.doubled / 2,
      lie: () => changed(stretch, (n, laid) => (n === row ? [laid, plainRow, laid] : [laid])),
    };
    const other = otherRow(stretch, row);
    if (other === undefined || twice.group !== 0) return [pairAgain, rowAgain];
    const inAnother: Slip = {
      ...slip,
      weight: slipRates.doubled / 2,
      lie: () => changed(stretch, (n, laid) => [n === other ? { ...twice, group: laid.group } : laid]),
    };
    return [inAnother, pairAgain, rowAgain];
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

export function oneEdgeOnly(stretch: Stretch): Slip[] {
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
