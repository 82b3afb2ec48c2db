import { fault, ok, type Result, refuse } from '../../fault.ts';
import { type TaperWish, taper } from '../../shape/taper.ts';
import type { Section, Shaping } from '../recipe.ts';

/**
 * Lays `times` shaping rows over `rows` rows in the manner of the old ones: on the same side, the first where it was
 * planned, long and short intervals in the same order, and as many plain rows after the last as there were, as far as
 * there is room. Rows count from 1.
 * @returns a fault 'shaping to come does not fit' with the most that the rows can hold
 */
export function layAnew(
  old: readonly number[],
  oldRows: number,
  rows: number,
  times: number,
): Result<readonly number[]> {
  if (times === 0) return ok([]);
  const sorted = [...old].sort((a, b) => a - b);
  const first = sorted[0] ?? 1;
  const last = sorted[sorted.length - 1] ?? oldRows;
  const step = sorted.every((row) => (row - first) % 2 === 0) ? 2 : 1;
  const order = rhythmOf(sorted);
  const lowest = step === 2 ? 2 - (first % 2) : 1;
  const wishes: (TaperWish & { readonly first: number })[] = [
    { rows: rows - Math.max(0, oldRows - last), times, step, order, first },
    { rows, times, step, order, first },
    { rows, times, step, order, first: lowest },
  ];
  for (const wish of wishes) {
    const laid = wish.rows < wish.first ? undefined : taper(wish);
    if (laid?.ok) return ok(laid.value.rows);
  }
  const most = Math.max(0, Math.floor((rows - lowest) / step) + 1);
  return refuse(fault('shaping to come does not fit', { times, rows, mostTimes: most }));
}

function rhythmOf(rows: readonly number[]): 'shorter first' | 'longer first' {
  const gaps = rows.slice(1).map((row, i) => row - (rows[i] ?? 0));
  return (gaps[0] ?? 0) < (gaps[gaps.length - 1] ?? 0) ? 'shorter first' : 'longer first';
}

/**
 * The section with another number of rows. Shaping that runs along its whole length is laid anew over them; shaping at
 * its beginning (an armhole's) stays where it is; groups and spread rows stay where they are.
 * @param keep 'what fits': only shaping for which there is no room any more is laid anew
 */
export function withRows(
  section: Section,
  rows: number,
  keep: 'what fits' | 'the manner' = 'the manner',
): Result<Section> {
  const shaping: Shaping[] = [];
  for (const one of section.shaping) {
    const laid = stretched(one, section.rows, rows, keep === 'what fits');
    if (!laid.ok) return laid;
    shaping.push(laid.value);
  }
  return ok({ ...section, rows, shaping });
}

function stretched(shaping: Shaping, oldRows: number, rows: number, keeps: boolean): Result<Shaping> {
  if (shaping.kind !== 'edge' && shaping.kind !== 'middle') {
    const last =
      shaping.kind === 'across' ? shaping.row : Math.max(0, ...shaping.groups.map((group) => group.row));
    return last <= rows ? ok(shaping) : refuse(tooShort(rows, last));
  }
  const last = shaping.rows[shaping.rows.length - 1] ?? 0;
  if (last <= rows && (keeps || !runsAlong(shaping.rows, oldRows))) return ok(shaping);
  const laid = layAnew(shaping.rows, oldRows, rows, shaping.rows.length);
  return laid.ok ? ok({ ...shaping, rows: laid.value }) : laid;
}

/** Fewer plain rows after the last shaping than two of its longest intervals: it was laid over the whole section. */
function runsAlong(rows: readonly number[], total: number): boolean {
  if (rows.length < 2) return false;
  const longest = Math.max(...rows.slice(1).map((row, i) => row - (rows[i] ?? 0)));
  return total - (rows[rows.length - 1] ?? 0) < 2 * longest;
}

const tooShort = (rows: number, row: number) => fault('too few rows for its shaping', { row, rows });
