import fc from 'fast-check';
import type { PlannedPart, PlannedRow } from '../../src/knit/piece/planned.ts';
import type { Step } from '../../src/knit/row/step.ts';
import { workRow } from '../../src/knit/row/work.ts';

/** The slips that a simulated knitter makes, one at a time. */
export const slipKinds = [
  'missed shaping',
  'doubled shaping',
  'one edge only',
  'missed tap',
  'doubled tap',
  'dropped stitch',
  'stray yarn-over',
  'spread short',
  'worked together',
  'cast-on miscounted',
] as const;

export type SlipKind = (typeof slipKinds)[number];

export interface KnownSlip {
  readonly kind: SlipKind;
  /** row of the plan in which it happens */
  readonly row: number;
  readonly edge?: 'right' | 'left';
  /** increases or decreases left out of a spread row; stitches that the cast-on has too many (< 0: too few) */
  readonly times?: number;
  /** a doubled shaping: in another row, or two rows worked again */
  readonly again?: 'in another row' | 'pair worked again';
  /** after a tap too many or too few: she reads her knitting and goes on rightly, or works what the screen says */
  readonly follows?: 'fabric' | 'screen';
}

/** A slip, the rows tapped when she counts, and the last row at which the count was right (0: she never counted). */
export interface SlipTrial {
  readonly slip: KnownSlip;
  readonly tapped: number;
  readonly firm: number;
}

const marksAt = (row: PlannedRow | undefined, edge: string): number =>
  row?.shaping.filter((mark) => mark.kind === 'edge' && mark.edge === edge).length ?? 0;

const isAcross = (row: PlannedRow): boolean =>
  row.shaping.some((mark) => mark.kind === 'across' && Math.abs(mark.by) > 2);

/** Rows of the part in which the slip can happen. */
export function rowsFor(part: PlannedPart, kind: SlipKind): number[] {
  const live = part.rows.filter((row) => row.after > 3);
  const wanted: Readonly<Record<SlipKind, (row: PlannedRow) => boolean>> = {
    'missed shaping': (row) => row.shaping.length > 0,
    'doubled shaping': (row) => row.shaping.length > 0 && row.after + 2 * (row.after - row.before) > 3,
    'one edge only': (row) => marksAt(row, 'right') > 0 && marksAt(row, 'left') > 0,
    'missed tap': () => true,
    'doubled tap': () => true,
    'dropped stitch': () => true,
    'stray yarn-over': () => true,
    'spread short': isAcross,
    'worked together': () => true,
    'cast-on miscounted': (row) => row.n === 1 && 'castOn' in part.from,
  };
  return live.filter(wanted[kind]).map((row) => row.n);
}

/** A slip of the kind at a random row of the part; null where the part has no row for it. */
export function slipIn(part: PlannedPart, kind: SlipKind): fc.Arbitrary<SlipTrial> | null {
  const rows = rowsFor(part, kind);
  const last = part.rows.findLast((row) => row.after > 3)?.n ?? 0;
  if (rows.length === 0) return null;
  return fc
    .record({
      row: fc.constantFrom(...rows),
      since: fc.integer({ min: 0, max: 24 }),
      before: fc.integer({ min: 1, max: 40 }),
      edge: fc.constantFrom('right' as const, 'left' as const),
      again: fc.constantFrom('in another row' as const, 'pair worked again' as const),
      follows: fc.constantFrom('fabric' as const, 'screen' as const),
      share: fc.double({ min: 0, max: 1, noNaN: true }),
    })
    .map(({ row, since, before, edge, again, follows, share }) => {
      const spread = part.rows[row - 1]?.shaping.find((mark) => mark.kind === 'across')?.by ?? 0;
      const most = Math.max(1, Math.min(4, Math.abs(spread) - 1));
      const shown = Math.min(last, row + since);
      if (kind === 'cast-on miscounted') {
        const times = (share < 0.5 ? -1 : 1) * (edge === 'right' ? 1 : 2);
        return { slip: { kind, row, times }, tapped: shown, firm: 0 };
      }
      const slip: KnownSlip = {
        kind,
        row,
        edge,
        again,
        follows,
        times: 1 + Math.min(most - 1, Math.floor(share * most)),
      };
      return { slip, tapped: shown, firm: Math.max(0, row - before) };
    });
}

/** A row as it was really worked, with what can be seen of it. */
export interface RealRow {
  readonly steps: readonly Step[];
  readonly after: number;
  readonly right: number;
  readonly left: number;
  readonly across: number;
  readonly group: number;
}

export interface RealKnitting {
  readonly rows: readonly RealRow[];
  readonly onNeedle: number;
  readonly trace: 'ladder' | 'hole' | 'joined' | 'none';
  /** stitches of the cast-on edge beside those planned */
  readonly castOn: number;
}

interface Job {
  readonly row: PlannedRow;
  /** how the row is worked: as planned, plain, or with a part of its shaping */
  readonly how: 'planned' | 'plain' | KnownSlip;
  /** its shaping worked by heart in a row that was to be plain */
  readonly like?: PlannedRow;
}

const traces: Readonly<Partial<Record<SlipKind, RealKnitting['trace']>>> = {
  'dropped stitch': 'ladder',
  'stray yarn-over': 'hole',
  'worked together': 'joined',
};

/** Knits the part stitch by stitch with the slip in it, until `tapped` rows are tapped. */
export function knitWithSlip(part: PlannedPart, { slip, tapped }: SlipTrial): RealKnitting {
  const castOn = slip.kind === 'cast-on miscounted' ? (slip.times ?? 0) : 0;
  let onNeedle = part.start + castOn;
  const rows: RealRow[] = [];
  for (const job of jobsOf(part, slip, tapped)) {
    const real = workJob(job, onNeedle);
    rows.push(real);
    onNeedle = real.after;
  }
  return { rows, onNeedle, castOn, trace: traces[slip.kind] ?? 'none' };
}

function jobsOf(part: PlannedPart, slip: KnownSlip, tapped: number): Job[] {
  const worked = slip.kind === 'missed tap' ? tapped + 1 : slip.kind === 'doubled tap' ? tapped - 1 : tapped;
  const jobs = part.rows.slice(0, worked).map((row): Job => ({ row, how: 'planned' }));
  const i = slip.row - 1;
  const row = part.rows[i] as PlannedRow;
  if (slip.kind === 'missed tap' || slip.kind === 'doubled tap') {
    if (slip.follows === 'fabric') return jobs;
    // the screen shows the row once more, or never
    const all = part.rows.slice(0, tapped).map((one): Job => ({ row: one, how: 'planned' }));
    return slip.kind === 'missed tap'
      ? [...all.slice(0, i + 1), ...all.slice(i)]
      : all.filter((_, at) => at !== i);
  }
  if (slip.kind === 'cast-on miscounted') return jobs;
  if (slip.kind === 'missed shaping') return jobs.with(i, { row, how: 'plain' });
  if (slip.kind !== 'doubled shaping') return jobs.with(i, { row, how: slip });
  const other = [i + 2, i + 1].find((at) => jobs[at]?.row.shaping.length === 0);
  const isGroup = row.shaping.some((mark) => mark.kind === 'bind off' || mark.kind === 'cast on');
  if (slip.again === 'in another row' && other !== undefined && !isGroup) {
    return jobs.with(other, { row: jobs[other]?.row as PlannedRow, how: 'planned', like: row });
  }
  return [...jobs.slice(0, i + 1), { row, how: 'plain' }, { row, how: 'planned' }, ...jobs.slice(i + 1)];
}

function workJob({ row, how, like }: Job, onNeedle: number): RealRow {
  const shaped = like ?? row;
  if (how === 'plain') return { ...work([{ work: 'k', until: { left: 0 } }], onNeedle, 0), ...seen([]) };
  if (how === 'planned')
    return {
      ...work(like ? [] : row.steps, onNeedle, shaped.after - shaped.before),
      ...seen(shaped.shaping),
    };
  const by = row.after - row.before;
  switch (how.kind) {
    case 'one edge only': {
      const left = row.shaping.filter((mark) => mark.edge !== how.edge);
      return { ...work([], onNeedle, by - sumOf(row.shaping) + sumOf(left)), ...seen(left) };
    }
    case 'spread short': {
      const short = Math.sign(by) * (how.times ?? 1);
      return { ...work([], onNeedle, by - short), ...seen(row.shaping), across: by - short };
    }
    case 'missed shaping':
    case 'doubled shaping':
    case 'missed tap':
    case 'doubled tap':
    case 'dropped stitch':
    case 'stray yarn-over':
    case 'worked together':
    case 'cast-on miscounted': {
      const stray = how.kind === 'stray yarn-over' ? 1 : -1;
      const real = work(row.steps, onNeedle, by);
      return { ...real, after: real.after + stray, ...seen(row.shaping) };
    }
  }
}

/** Works the row as it is written; where it does not come out over these stitches, as she would: its shaping, the rest as established. */
function work(steps: readonly Step[], onNeedle: number, by: number): Pick<RealRow, 'steps' | 'after'> {
  const worked = steps.length === 0 ? undefined : workRow(steps, onNeedle);
  if (worked?.ok && worked.value.after - onNeedle === by) return { steps, after: worked.value.after };
  const adapted: Step[] =
    by >= 0
      ? [
          { work: 'm1', times: by },
          { work: 'k', until: { left: 0 } },
        ]
      : [
          { work: 'k2tog', times: Math.min(-by, Math.floor(onNeedle / 2)) },
          { work: 'k', until: { left: 0 } },
        ];
  const done = workRow(adapted, onNeedle);
  return { steps: adapted, after: done.ok ? done.value.after : onNeedle + by };
}

const sumOf = (marks: PlannedRow['shaping']): number => marks.reduce((sum, mark) => sum + mark.by, 0);

function seen(marks: PlannedRow['shaping']): Omit<RealRow, 'steps' | 'after'> {
  const of = (test: (mark: PlannedRow['shaping'][number]) => boolean) => sumOf(marks.filter(test));
  return {
    right: of((mark) => mark.kind === 'edge' && mark.edge === 'right'),
    left: of((mark) => mark.kind === 'edge' && mark.edge === 'left'),
    across: of((mark) => mark.kind === 'across' || mark.kind === 'middle'),
    group: of((mark) => mark.kind === 'bind off' || mark.kind === 'cast on'),
  };
}
