import { fault, ok, type Result, refuse } from '../fault.ts';

/** Shaping spread over rows. */
export interface Taper {
  /** shaping rows, from 1, rising */
  readonly rows: readonly number[];
  /** the same as a knitter keeps it in her head: first on `first`, then every n-th row so many times */
  readonly first: number;
  readonly runs: readonly { readonly every: number; readonly times: number }[];
}

export interface TaperWish {
  /** rows that there are */
  readonly rows: number;
  /** shaping rows wanted */
  readonly times: number;
  /** 2: only every second row may shape (the default); 1: any row */
  readonly step?: 1 | 2;
  /** the first shaping row; without it the first comes after a whole interval */
  readonly first?: number;
  /** with step 2: on rows 1, 3, 5 ... or 2, 4, 6 ...; odd unless said or `first` says otherwise */
  readonly on?: 'odd' | 'even';
  /** the two lengths of interval kept together, longer or shorter ones first, or blended */
  readonly order?: 'longer first' | 'shorter first' | 'blended';
}

/**
 * Lays `times` shapings over `rows` rows so that the intervals differ by at most one step.
 * Common practice for R rows and n shapings: q = R div n, r = R mod n, r intervals of q + 1 and n − r of q.
 * @returns a fault 'shaping does not fit' with the most shapings that the rows can hold
 */
export function taper(wish: TaperWish): Result<Taper> {
  const { rows, times, step = 2, order = 'longer first' } = wish;
  if (![rows, times, wish.first ?? 1].every((n) => Number.isSafeInteger(n) && n >= 0)) {
    return refuse(fault('bad count'));
  }
  const start = startOf(wish, step);
  const slots = Math.max(0, Math.floor((rows - start) / step) + 1);
  if (times > slots || (wish.first === 0 && times > 0)) return refuse(noRoom(rows, times, slots));
  if (times === 0) return ok({ rows: [], first: 0, runs: [] });
  const fixed = wish.first !== undefined;
  const gaps = intervals(fixed ? slots - 1 : slots, fixed ? times - 1 : times, order);
  let slot = fixed ? 0 : -1;
  const out = fixed ? [start] : [];
  for (const gap of gaps) {
    slot += gap;
    out.push(start + slot * step);
  }
  return ok({ rows: out, first: out[0] ?? 0, runs: runsOf(out) });
}

function startOf({ first, on }: TaperWish, step: 1 | 2): number {
  if (first !== undefined) return first;
  return step === 2 && on === 'even' ? 2 : 1;
}

const noRoom = (rows: number, times: number, most: number) =>
  fault('shaping does not fit', { rows, times, mostTimes: most });

/** `count` intervals that add up to `total`, each q or q + 1. */
function intervals(total: number, count: number, order: NonNullable<TaperWish['order']>): number[] {
  if (count === 0) return [];
  const short = Math.floor(total / count);
  const longer = total % count;
  return Array.from({ length: count }, (_, i) => {
    const isLong =
      order === 'longer first'
        ? i < longer
        : order === 'shorter first'
          ? i >= count - longer
          : Math.floor(((i + 1) * longer) / count) > Math.floor((i * longer) / count);
    return short + (isLong ? 1 : 0);
  });
}

/** 'every 6th row 5 times, then every 4th row 8 times' from the rows themselves; the first row stands apart. */
export function runsOf(rows: readonly number[]): { every: number; times: number }[] {
  const runs: { every: number; times: number }[] = [];
  for (let i = 1; i < rows.length; i += 1) {
    const every = (rows[i] ?? 0) - (rows[i - 1] ?? 0);
    const last = runs[runs.length - 1];
    if (last?.every === every) last.times += 1;
    else runs.push({ every, times: 1 });
  }
  return runs;
}
