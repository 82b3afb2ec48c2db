import type { Where } from '../../fault.ts';
import type { Rhythm, Timing } from './form.ts';
import { type Report, readWhole } from './number.ts';

/**
 * The rows of 'first on row r, every n-th row so many times (then every m-th ...)'. The first rhythm counts the
 * first row as one of its times; each later one goes on from the last row before it.
 */
export function readRhythm(timing: Timing, at: Where, report: Report): readonly number[] {
  if (timing.rhythm.length === 0) return [];
  const rows: number[] = [];
  const first = readWhole(timing.first, { ...at, field: `${at.field} first` }, report, 1);
  timing.rhythm.forEach((beat, i) => {
    const field = `${at.field} rhythm ${i + 1}`;
    const times = readWhole(beat.times, { ...at, field: `${field} times` }, report);
    // 'every' says nothing where the first row is the only one
    const idle = i === 0 && times <= 1;
    const every = idle ? 1 : readWhole(beat.every, { ...at, field: `${field} every` }, report, 1);
    for (let done = 0; done < Math.min(times, 9999); done += 1) {
      rows.push(rows.length === 0 ? first : (rows.at(-1) ?? 0) + every);
    }
  });
  return rows;
}

/** Says the rows as a rhythm: equal intervals taken together. Rows must rise. */
export function writeRhythm(rows: readonly number[]): Timing {
  const [first, ...later] = rows;
  if (first === undefined) return { first: '', rhythm: [] };
  const beats: { every: number; times: number }[] = [];
  let before = first;
  for (const row of later) {
    const every = row - before;
    const last = beats.at(-1);
    if (last?.every === every) last.times += 1;
    else beats.push({ every, times: beats.length === 0 ? 2 : 1 });
    before = row;
  }
  if (beats.length === 0) beats.push({ every: 2, times: 1 });
  return { first: String(first), rhythm: beats.map(typedBeat) };
}

const typedBeat = (beat: { every: number; times: number }): Rhythm => ({
  every: String(beat.every),
  times: String(beat.times),
});
