import line from 'bresenham';
import { getPattern } from 'euclidean-rhythms';
import { describe, expect, it } from 'vitest';
import { spread } from '../../src/knit/shape/spread.ts';
import { taper } from '../../src/knit/shape/taper.ts';
import { told } from '../told.ts';

/*
 * The general reference for 'k things as evenly as possible over n places' is the Euclidean rhythm
 * (G. T. Toussaint, "The Euclidean Algorithm Generates Traditional Musical Rhythms", Proc. BRIDGES 2005, pp. 47–56;
 * E. Bjorklund's algorithm, 2003), here as the package euclidean-rhythms works it, and, equally, Bresenham's line (IBM
 * Systems Journal 4(1), 1965, pp. 25–30), here as the package bresenham draws it.
 */
/** Gaps around the circle, smallest first. */
function gaps(rhythm: readonly number[]): number[] {
  const on = rhythm.flatMap((hit, i) => (hit ? [i] : []));
  return on
    .map((p, i) => (((on[(i + 1) % on.length] ?? 0) - p + rhythm.length - 1) % rhythm.length) + 1)
    .sort((a, b) => a - b);
}

describe('increases are as evenly laid as the Euclidean rhythm lays its pulses', () => {
  it('the known rhythms: 3 in 8, 5 in 8, 7 in 12 (Toussaint 2005, table of rhythms)', () => {
    expect(gaps(getPattern(3, 8))).toEqual([2, 3, 3]);
    expect(gaps(getPattern(5, 8))).toEqual([1, 1, 2, 2, 2]);
    expect(gaps(getPattern(7, 12))).toEqual([1, 1, 2, 2, 2, 2, 2]);
  });

  it('closed into a circle, the groups are those of the rhythm for every row to 60 stitches', () => {
    for (let n = 2; n <= 60; n += 1) {
      for (let k = 1; k < n; k += 1) {
        const laid = spread(n, k);
        if (!laid.ok) throw new Error(told(laid.faults));
        const { groups } = laid.value;
        const circle = [...groups.slice(1, -1), (groups[0] ?? 0) + (groups[k] ?? 0)].sort((a, b) => a - b);
        expect(circle, `${k} in ${n}`).toEqual(gaps(getPattern(k, n)));
      }
    }
  });
});

/** Whether one list is the other, begun elsewhere in the circle. */
const isRotationOf = (list: readonly number[], other: readonly number[]): boolean =>
  list.length === other.length && `,${[...other, ...other].join()},`.includes(`,${list.join()},`);

/** From one step up of a line to the next, around the circle: `times` steps in `rows`. */
function stepsOfLine(rows: number, times: number): number[] {
  const cells = line(0, 0, rows, times);
  const up = cells.slice(1).flatMap(({ x, y }, i) => (y > (cells[i]?.y ?? 0) ? [x] : []));
  return up.map((x, i) => (up[i + 1] ?? (up[0] ?? 0) + rows) - x);
}

describe('shapings blended over rows lie as the steps of Bresenham’s line do', () => {
  it('gap by gap, for every number of shapings in up to 80 rows', () => {
    for (let rows = 2; rows <= 80; rows += 1) {
      for (let times = 1; times < rows; times += 1) {
        const laid = taper({ rows, times, step: 1, order: 'blended' });
        if (!laid.ok) throw new Error(told(laid.faults));
        const gapsLaid = laid.value.rows.map((row, i) => row - (laid.value.rows[i - 1] ?? 0));
        expect(isRotationOf(gapsLaid, stepsOfLine(rows, times)), `${times} in ${rows}`).toBe(true);
      }
    }
  });

  it('and so do those on every second row', () => {
    for (const [rows, times] of [
      [121, 17],
      [96, 13],
      [140, 36],
    ] as const) {
      const laid = taper({ rows, times, step: 2, on: 'even', order: 'blended' });
      if (!laid.ok) throw new Error(told(laid.faults));
      const gapsLaid = laid.value.rows.map((row, i) => (row - (laid.value.rows[i - 1] ?? 0)) / 2);
      expect(isRotationOf(gapsLaid, stepsOfLine(Math.floor(rows / 2), times))).toBe(true);
    }
  });
});

describe('printed rows of even increases and decreases end on the printed counts', () => {
  const after = (n: number, by: number) => {
    const laid = spread(n, by);
    return laid.ok ? laid.value.after : undefined;
  };

  it('Bulkies: Sweaters to Knit and Crochet, Book No. 006, American Thread Co. (PG 66271), hood rows 4, 6 and 8', () => {
    expect([after(48, 6), after(50, 5), after(54, 6)]).toEqual([54, 55, 60]);
    expect([after(54, 6), after(55, 5), after(60, 6)]).toEqual([60, 60, 66]);
    expect([after(60, 15), after(60, 15), after(66, 11)]).toEqual([75, 75, 77]);
  });

  it('Beehive for Bairns, vol. 2, Patons & Baldwins (PG 45632), sleeves 29 to 36 and 32 to 43', () => {
    expect(after(29, 7)).toBe(36);
    expect(after(32, 11)).toBe(43);
  });

  it('Babies Are Such Fun to Dress, Star Book No. 220, American Thread Co. (PG 66272), dress 168 (180) to 140 (150)', () => {
    expect([after(168, -28), after(180, -30)]).toEqual([140, 150]);
  });

  it('Sweaters He and She, Star Book No. 223, American Thread Co. (PG 65789), Aran sleeve', () => {
    expect([after(42, 10), after(46, 14), after(50, 10), after(54, 14)]).toEqual([52, 60, 60, 68]);
  });

  it('40 stitches to 60 with no increase at an edge (common practice, no published source)', () => {
    const laid = spread(40, 20);
    if (!laid.ok) throw new Error(told(laid.faults));
    expect(laid.value.after).toBe(60);
    expect(laid.value.groups[0]).toBeGreaterThan(0);
    expect(laid.value.groups[20]).toBeGreaterThan(0);
  });
});
