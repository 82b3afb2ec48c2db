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
    const base = { make: 'g/p/0/1', at: 0, row: 1 };
    const entries: LogEntry[] = [
      { ...base, id: 'a', seq: 1, kind: 'row', plan: 'first' },
      { ...base, id: 'b', seq: 2, kind: 'rework', plan: 'second' },
      { ...base, id: 'c', seq: 3, kind: 'row', row: 2 },
    ];
    expect(foldPlace(entries)).toEqual({ rows: 2, plan: 'second', seq: 3, at: 0 });
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
