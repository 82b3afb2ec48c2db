import { expect, it } from 'vitest';
import type { LogEntry } from '../../src/progress/log.ts';
import { makeRecord } from '../../src/progress/make-record.ts';

const make = 'g/p/0/1';
const entry = (seq: number, kind: LogEntry['kind'], row: number, more: Partial<LogEntry> = {}) =>
  ({
    id: `d-${seq}`,
    make,
    seq,
    at: seq * 60_000,
    kind,
    row,
    ...more,
  }) as LogEntry;

const log: readonly LogEntry[] = [
  entry(1, 'row', 1),
  entry(2, 'row', 2),
  entry(3, 'row', 3),
  entry(4, 'check', 3, { count: 40 }),
  entry(5, 'note', 3, { text: 'tighter here' }),
  entry(6, 'row', 4),
  entry(7, 'row', 5),
  entry(8, 'undo', 4, { undoes: 'd-7' }),
  entry(9, 'rip back', 2),
  entry(10, 'row', 3),
];

it('the record of a make is what its log tells, whatever order it comes in', () => {
  const read = makeRecord(make, log);
  expect(read).toMatchObject({ rows: 3, from: 60_000, to: 600_000, ripped: 1, reworked: 0, checked: [3] });
  expect(read.notes).toEqual([{ row: 3, text: 'tighter here' }]);
  expect(read.workedMs).toBeGreaterThan(0);
  expect(makeRecord(make, [...log].reverse())).toEqual(read);
});

it('a make that was never begun has no days and no time', () => {
  expect(makeRecord('g/p/0/2', log)).toMatchObject({
    rows: 0,
    from: undefined,
    to: undefined,
    workedMs: undefined,
  });
});
