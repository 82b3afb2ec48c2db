import { ok, type Result, refuse } from '../../fault.ts';
import { runsOf, taper } from '../../shape/taper.ts';
import { roundLike } from './round-to.ts';
import type { Scale } from './scale.ts';

/** Fewer shaping rows are one stretch, whatever lies between them. */
const LEAST_IN_STRETCHES = 4;
/** More stretches than these are a curve. */
const MOST_STRETCHES = 3;

/**
 * Shaping rows stretched over the same share of the section, on the same parity where that still has room. An edge that
 * was shaped in one rhythm and then in another is so again: what it is sewn to follows the same line.
 */
export function scaledRows(
  rows: readonly number[],
  times: number,
  scale: Scale,
  total: number,
): Result<number[]> {
  const first = rows[0];
  const last = rows[rows.length - 1];
  if (first === undefined || last === undefined || times === 0) return ok([]);
  const sameSide = rows.every((row) => (row - first) % 2 === 0);
  const steps: readonly (1 | 2)[] = sameSide ? [2, 1] : [1];
  const at = (row: number): number => Math.min(total, Math.max(1, roundLike(row * scale.rows, row)));
  for (const step of steps) {
    const laid = inStretches(rows, times, at, step);
    if (laid) return ok(laid);
    const from = at(first);
    // no further than there is room
    const to = Math.max(from, at(last), step === 2 ? Math.min(total, from + 2 * (times - 1)) : 0);
    for (const end of [to, total]) {
      const even = taper({ rows: end, times, first: from, step });
      if (even.ok) return ok([...even.value.rows]);
    }
  }
  const laid = taper({ rows: total, times, step: 1 });
  return laid.ok ? ok([...laid.value.rows]) : refuse(...laid.faults);
}

/** undefined of one rhythm, and where one of several has no room. */
function inStretches(
  rows: readonly number[],
  times: number,
  at: (row: number) => number,
  step: 1 | 2,
): number[] | undefined {
  const runs = runsOf(rows);
  if (rows.length < LEAST_IN_STRETCHES || times < LEAST_IN_STRETCHES || runs.length < 2) return undefined;
  const ends = runs.length > MOST_STRETCHES ? rows.map((_, i) => i) : endsOf(runs);
  const share = (times - 1) / (rows.length - 1);
  const out: number[] = [at(rows[0] ?? 1)];
  for (const [i, end] of ends.entries()) {
    if (i === 0) continue;
    const more = Math.round(end * share) + 1 - out.length;
    if (more <= 0) continue;
    const from = out.at(-1) ?? 1;
    const laid = taper({ rows: at(rows[end] ?? 1), times: more + 1, first: from, step });
    if (!laid.ok) return undefined;
    out.push(...laid.value.rows.slice(1));
  }
  return out.length === times ? out : undefined;
}

/** Which of the shaping rows the stretches begin and end at. */
function endsOf(runs: readonly { readonly times: number }[]): number[] {
  const ends = [0];
  for (const { times } of runs) ends.push((ends.at(-1) ?? 0) + times);
  return ends;
}
