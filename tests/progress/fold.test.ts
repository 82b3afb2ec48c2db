import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { foldPlace } from '../../src/progress/fold.ts';
import type { LogEntry } from '../../src/progress/log.ts';
import { sorted, standing } from '../../src/progress/standing.ts';
import { takeBack } from '../../src/progress/take-back.ts';
import { knittingLog, partedLogs } from '../arbitraries/knitting-log.ts';

describe('the place that a log tells', () => {
  it('is the one that a notebook kept by hand says', () => {
    fc.assert(
      fc.property(knittingLog(), ({ entries, row }) => {
        expect(foldPlace(entries).rows).toBe(row);
      }),
    );
  });

  it('does not depend on the order in which the entries come', () => {
    fc.assert(
      fc.property(knittingLog(), fc.infiniteStream(fc.nat()), ({ entries }, keys) => {
        const mixed = entries
          .map((entry) => ({ entry, key: keys.next().value as number }))
          .sort((a, b) => a.key - b.key)
          .map(({ entry }) => entry);
        expect(foldPlace(mixed)).toEqual(foldPlace(entries));
        expect(sorted(mixed)).toEqual(sorted(entries));
      }),
    );
  });

  it('does not depend on any clock', () => {
    fc.assert(
      fc.property(knittingLog(), fc.infiniteStream(fc.nat()), ({ entries, row }, clock) => {
        const wild = entries.map((entry): LogEntry => ({ ...entry, at: clock.next().value as number }));
        expect(foldPlace(wild)).toMatchObject({ rows: row });
      }),
    );
  });

  it('names the plan of the newest entry that has one', () => {
    const base = { make: 'g/p/0/1' as const, at: 0, row: 1 };
    const entries: LogEntry[] = [
      { ...base, id: 'a', seq: 1, kind: 'row', plan: 'g/p/0/s/1-first' },
      { ...base, id: 'b', seq: 2, kind: 'rework', plan: 'g/p/0/s/1-second' },
      { ...base, id: 'c', seq: 3, kind: 'row', row: 2 },
    ];
    expect(foldPlace(entries)).toEqual({ rows: 2, plan: 'g/p/0/s/1-second', seq: 3, at: 0 });
    expect(foldPlace([])).toEqual({ rows: 0, plan: undefined, seq: 0, at: 0 });
  });
});

describe('taking back', () => {
  it('walks through every change that stands, down to the cast-on', () => {
    fc.assert(
      fc.property(knittingLog(), ({ entries, steps }) => {
        const log = [...entries];
        for (const before of [0, ...steps].slice(0, -1).reverse()) {
          const back = takeBack(log, foldPlace(log));
          expect(back?.rows).toBe(before);
          back?.undoes.forEach((undoes, i) => {
            const seq = foldPlace(log).seq + 1;
            log.push({ id: `u${seq}.${i}`, make: 'g/p/0/1', seq, at: 0, kind: 'undo', row: before, undoes });
          });
        }
        expect(takeBack(log, foldPlace(log))).toBeUndefined();
      }),
    );
  });

  it('of a choice between ways gives the place back that was told before it, from which the next goes on', () => {
    const base = { make: 'g/p/0/1' as const, at: 0 };
    const log: LogEntry[] = [
      { ...base, id: 'a-1', seq: 1, kind: 'row', row: 1, plan: 'g/p/0/s/1-p' },
      { ...base, id: 'a-2', seq: 2, kind: 'row', row: 2, plan: 'g/p/0/s/1-p' },
      { ...base, id: 'b-2', seq: 2, kind: 'rework', row: 1, plan: 'g/p/0/s/1-q' },
      { ...base, id: 'b-3', seq: 3, kind: 'row', row: 9, plan: 'g/p/0/s/1-q' },
      { ...base, id: 'b-4', seq: 4, kind: 'undo', row: 6, plan: 'g/p/0/s/1-q', undoes: 'b-3' },
      { ...base, id: 'b-5', seq: 5, kind: 'note', row: 3, text: 'x' },
      {
        ...base,
        id: 'a-6',
        seq: 6,
        kind: 'place',
        row: 2,
        plan: 'g/p/0/s/1-p',
        settles: ['b-4'],
        follows: 'a-2',
      },
      { ...base, id: 'b-6', seq: 6, kind: 'note', row: 5, text: 'y' },
      { ...base, id: 'b-7', seq: 7, kind: 'check', row: 5, count: 3 },
    ];
    const taken = { undoes: ['a-6'], rows: 6, plan: 'g/p/0/s/1-q', follows: 'b-4' };
    expect(takeBack(log, foldPlace(log))).toEqual(taken);
    expect(takeBack([...log].reverse(), foldPlace(log))).toEqual(taken);
  });

  it('gives the plan back that was last named before, not the first one, and names nothing to go on from', () => {
    const base = { make: 'g/p/0/1' as const, at: 0, row: 4 };
    const log: LogEntry[] = [
      { ...base, id: 'a-1', seq: 1, kind: 'row', plan: 'g/p/0/s/1-first' },
      { ...base, id: 'a-2', seq: 2, kind: 'rework', plan: 'g/p/0/s/1-second' },
      { ...base, id: 'a-3', seq: 3, kind: 'rework', plan: 'g/p/0/s/1-third' },
    ];
    expect(takeBack(log, foldPlace(log))).toEqual({ undoes: ['a-3'], rows: 4, plan: 'g/p/0/s/1-second' });
  });

  it('always ends, changing the row each time, also in logs that were merged', () => {
    fc.assert(
      fc.property(partedLogs(), (logs) => {
        const log = [...new Map(logs.flat().map((entry) => [entry.id, entry])).values()];
        const steps = standing(log).length;
        for (let i = 0; i <= steps; i += 1) {
          const now = foldPlace(log);
          const back = takeBack(log, now);
          if (back === undefined) return;
          expect(back.rows).not.toBe(now.rows);
          back.undoes.forEach((undoes, j) => {
            log.push({
              id: `u${i}.${j}`,
              make: 'g/p/0/1',
              seq: now.seq + 1 + j,
              at: 0,
              kind: 'undo',
              row: back.rows,
              undoes,
            });
          });
        }
        expect.unreachable('an undo that never ends');
      }),
    );
  });
});
