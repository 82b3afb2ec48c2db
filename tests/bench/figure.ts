import { median } from './statistics.ts';

/**
 * A bound on the measured value itself, beside the one on the ratio. It counts only where the yardstick of the same run
 * meets it: a machine on which a bare page does not has nothing to say of it.
 */
export interface Bound {
  readonly value: number;
  readonly most: number;
}

/** One line of the table: what was measured, against what, and what it may be at most. */
export interface Figure {
  readonly what: string;
  readonly against: string;
  readonly unit: 'ms' | 'KB' | 'MB';
  readonly ours: number;
  /** undefined: there is no yardstick, only a bound */
  readonly theirs?: number;
  /** the most that ours may be, in times of theirs */
  readonly times?: number;
  readonly bound?: Bound;
  /** what else was seen, for the reader */
  readonly beside?: string;
}

export const ratioOf = ({ ours, theirs }: Figure): number | undefined =>
  theirs === undefined ? undefined : ours / theirs;

export function isMet(figure: Figure): boolean {
  const { times, bound } = figure;
  const ratio = ratioOf(figure);
  const within = times === undefined || (ratio !== undefined && ratio <= times);
  return within && (bound === undefined || bound.value <= bound.most || !counts(figure));
}

/** Whether its bound says anything of this run. */
const counts = ({ bound, theirs }: Figure): boolean =>
  bound === undefined || theirs === undefined || theirs <= bound.most;

/** A figure of two lists of measured values, by their medians. */
export const byMedian = (
  names: Pick<Figure, 'what' | 'against' | 'unit' | 'times'>,
  { ours, theirs }: { readonly ours: readonly number[]; readonly theirs: readonly number[] },
): Figure => ({ ...names, ours: median(ours), theirs: median(theirs) });

const head = ['', 'what', 'measured', 'against', 'ratio', 'budget', ''] as const;

/** The table, columns under one another. */
export function printTable(figures: readonly Figure[]): string {
  const rows = [head, ...figures.map(cellsOf)];
  const widths = head.map((_, column) => Math.max(...rows.map((row) => row[column]?.length ?? 0)));
  return rows
    .map((row) =>
      row
        .map((cell, column) => cell.padEnd(widths[column] ?? 0))
        .join('  ')
        .trimEnd(),
    )
    .join('\n');
}

function cellsOf(figure: Figure): readonly string[] {
  const { what, against, unit, ours, theirs, times, bound, beside = '' } = figure;
  const ratio = ratioOf(figure);
  const budget = [
    times === undefined ? '' : `≤ ${times} ×`,
    bound === undefined
      ? ''
      : `≤ ${bound.most} ${unit}${counts(figure) ? '' : ' (not here: the yardstick misses it)'}`,
  ].filter((text) => text !== '');
  return [
    isMet(figure) ? 'met' : 'MISSED',
    what,
    `${short(ours)} ${unit}`,
    theirs === undefined ? against : `${short(theirs)} ${unit}, ${against}`,
    ratio === undefined ? '' : `${ratio.toFixed(2)} ×`,
    budget.join(' and '),
    beside,
  ];
}

const short = (value: number): string => value.toFixed(value < 10 ? 2 : value < 100 ? 1 : 0);
