import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { firmGround } from '../../src/progress/firm-ground.ts';
import type { EntryKind, LogEntry } from '../../src/progress/log.ts';
import { pace, timeFor } from '../../src/progress/pace.ts';
import { LAID_DOWN_MS, sittings } from '../../src/progress/sittings.ts';
import { knittingLog } from '../arbitraries/knitting-log.ts';

const MINUTE = 60_000;

/** Entries in the order given, one a minute unless told, ids e1, e2, ... */
function log(
  ...deeds: readonly (Partial<LogEntry> & { kind: EntryKind; row: number; after?: number })[]
): LogEntry[] {
  let at = 0;
  return deeds.map(({ after = 1, ...deed }, i) => {
    at += after * MINUTE;
    return { id: `e${i + 1}`, make: 'g/p/0/1', seq: i + 1, at, ...deed };
  });
}
const row = (n: number, after = 1) => ({ kind: 'row' as const, row: n, after });

describe('pace', () => {
  it('is rows and stitches an hour, with the pauses left out', () => {
    // four rows of two minutes each with 40 stitches, a night between the second and the third
    const entries = log(row(1), row(2, 2), row(3, 600), row(4, 2), row(5, 2), row(6, 2));
    expect(pace(entries, () => 40)).toEqual({
      rowsPerHour: 30,
      stitchesPerHour: 1200,
      rows: 4,
      workedMs: 8 * MINUTE,
    });
  });

  it('takes a long row for a row, where her rows are long', () => {
    const entries = log(row(1), row(2, 15), row(3, 15), row(4, 40));
    expect(pace(entries, () => 300)?.rows).toBe(3);
  });

  it('leaves out rows that were taken back, and is silent before three rows', () => {
    const entries = log(row(1), row(2), row(3), { kind: 'undo', row: 2, undoes: 'e3' });
    expect(pace(entries, () => 40)).toBeUndefined();
  });

  it('does not suffer from a clock that was set back', () => {
    const entries = log(row(1), row(2, 2), row(3, -300), row(4, 2), row(5, 2));
    expect(pace(entries, () => 40)).toMatchObject({ rows: 3, rowsPerHour: 30 });
  });

  it('gives the time for the stitches that are left', () => {
    expect(timeFor(600, { rowsPerHour: 30, stitchesPerHour: 1200, rows: 4, workedMs: 1 })).toBe(30 * MINUTE);
  });
});

describe('sittings', () => {
  it('begin anew after the work was laid down', () => {
    const entries = log(row(1), row(2), row(3, 90), row(4), { kind: 'rip back', row: 1 });
    expect(sittings(entries)).toEqual([
      { from: MINUTE, to: 2 * MINUTE, rows: 2, ripped: 0, makes: ['g/p/0/1'] },
      { from: 92 * MINUTE, to: 94 * MINUTE, rows: 2, ripped: 3, makes: ['g/p/0/1'] },
    ]);
  });

  it('take what was written in one moment in the order of the log, whichever way it comes', () => {
    const [one, two] = log(row(1), row(2, 0)) as [LogEntry, LogEntry];
    const sleeve = { ...two, make: 'g/sleeve/0/1' } as LogEntry;
    const wanted = [{ from: MINUTE, to: MINUTE, rows: 2, ripped: 0, makes: ['g/p/0/1', 'g/sleeve/0/1'] }];
    expect(sittings([one, sleeve])).toEqual(wanted);
    expect(sittings([sleeve, one])).toEqual(wanted);
  });

  it('go on until she has laid it down so long, to the moment', () => {
    const rowsOf = (after: number) => sittings(log(row(1), row(2, after))).map(({ rows }) => rows);
    expect(rowsOf(45)).toEqual([2]);
    expect(rowsOf(45.001)).toEqual([1, 1]);
    expect(sittings(log(row(1), row(2, 3)), 2 * MINUTE)).toHaveLength(2);
  });

  it('count every standing row once, and lie apart', () => {
    fc.assert(
      fc.property(
        knittingLog(),
        fc.array(fc.nat(200 * MINUTE), { minLength: 100, maxLength: 100 }),
        ({ entries }, gaps) => {
          let at = 0;
          const timed = entries.map((entry, i) => {
            at += gaps[i] ?? 0;
            return { ...entry, at };
          });
          const undone = new Set(timed.map((entry) => entry.undoes));
          const rows = timed.filter((entry) => entry.kind === 'row' && !undone.has(entry.id));
          const found = sittings(timed);
          expect(found.reduce((sum, sitting) => sum + sitting.rows, 0)).toBe(rows.length);
          for (const [i, sitting] of found.entries()) {
            expect(sitting.to).toBeGreaterThanOrEqual(sitting.from);
            const before = found[i - 1];
            if (before) expect(sitting.from - before.to).toBeGreaterThan(LAID_DOWN_MS);
          }
        },
      ),
    );
  });
});

describe('firm ground', () => {
  it('is the last count that was as planned', () => {
    const entries = log(row(1), { kind: 'check', row: 1, count: 20 }, row(2), {
      kind: 'check',
      row: 2,
      count: 19,
    });
    expect(firmGround(entries, () => 20)).toEqual({ row: 1, count: 20, at: 2 * MINUTE, entry: 'e2' });
    expect(firmGround(entries, () => 99)).toBeUndefined();
  });

  it('goes with the rows that are ripped, and does not come back when they are knitted again', () => {
    const entries = log(
      row(1),
      row(2),
      { kind: 'check', row: 2, count: 20 },
      { kind: 'rip back', row: 1 },
      row(2),
      row(3),
    );
    expect(firmGround(entries, () => 20)).toBeUndefined();
  });

  it('is not what was struck out', () => {
    const entries = log(
      row(1),
      { kind: 'check', row: 1, count: 20 },
      { kind: 'strike', row: 1, undoes: 'e2' },
    );
    expect(firmGround(entries, () => 20)).toBeUndefined();
  });
});
