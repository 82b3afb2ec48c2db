import { expect, it } from 'vitest';
import type { LogEntry } from '../../src/progress/log.ts';
import { took } from '../../src/progress/took.ts';

const HOUR = 3_600_000;
const rows = (make: string, hours: readonly number[]): LogEntry[] =>
  hours.map((hour, i) => ({
    id: `${make}-${i}`,
    make,
    seq: i + 1,
    at: hour * HOUR,
    kind: 'row',
    row: i + 1,
  })) as LogEntry[];

// day 1 at 20:00 and 20:30 UTC; day 2 at 02:00 UTC, which is 21:00 of day 1 in New York (UTC-5, winter)
const back = rows('g/back/0/1', [20, 20.5]);
const sleeve = rows('g/sleeve/0/1', [26]);

it('what a garment took is told of all its makes at once, in her own days', () => {
  const both = ['g/back/0/1', 'g/sleeve/0/1'];
  expect(took(both, [...sleeve, ...back], 0)).toMatchObject({ sittings: 2, days: 2 });
  expect(took(both, [...sleeve, ...back], 5 * HOUR)).toMatchObject({ sittings: 2, days: 1 });
  expect(took(['g/back/0/1'], [...sleeve, ...back], 0)).toMatchObject({ sittings: 1, days: 1 });
});

// 20:00 and 22:00 UTC are 23:00 and 01:00 of the next day in Athens (UTC+3, summer), 13:00 and 15:00 in Los Angeles (UTC-7)
it('an evening that ends after her own midnight is two days, wherever she is', () => {
  const evening = rows('g/back/0/1', [20, 22]);
  expect(took(['g/back/0/1'], evening, -3 * HOUR)).toMatchObject({ days: 2 });
  expect(took(['g/back/0/1'], evening, 7 * HOUR)).toMatchObject({ days: 1 });
});

it('of makes that were never begun nothing is told', () => {
  expect(took(['g/front/0/1'], back, 0)).toBeUndefined();
});

it('the time at the needles is that of all makes together, and is not told before three rows', () => {
  const minutes = (...at: number[]) => at.map((minute) => minute / 60);
  const first = rows('g/back/0/1', minutes(0, 2, 4, 6));
  const second = rows('g/sleeve/0/1', minutes(10, 13, 16, 19));
  const makes = ['g/back/0/1', 'g/sleeve/0/1'];
  expect(took(makes, [...first, ...second], 0)).toEqual({ sittings: 1, days: 1, workedMs: 15 * 60_000 });
  expect(took(makes, first, 0)?.workedMs).toBe(6 * 60_000);
  expect(took(makes, first.slice(0, 1), 0)).toEqual({ sittings: 1, days: 1, workedMs: undefined });
});

it('a stretch in which nothing was finished is no sitting', () => {
  const ripped = { ...(back[0] as LogEntry), id: 'r', seq: 3, at: 26 * HOUR, kind: 'rip back', row: 1 };
  expect(took(['g/back/0/1'], [...back, ripped as LogEntry], 0)).toMatchObject({ sittings: 1, days: 1 });
});

it('of a garment of a month and more every day is counted, the first and the last', () => {
  // noon of 1 March and noon of 31 March
  expect(took(['g/back/0/1'], rows('g/back/0/1', [12, 30 * 24 + 12]), 0)).toMatchObject({ days: 31 });
  // midnight of 1 January and midnight of 9 April: a day begins at its midnight, to the millisecond
  expect(took(['g/back/0/1'], rows('g/back/0/1', [0, 98 * 24]), 0)).toMatchObject({ days: 99 });
  expect(took(['g/back/0/1'], rows('g/back/0/1', [0, 98 * 24 - 1 / HOUR]), 0)).toMatchObject({ days: 98 });
  // noon of 1 January and 1 am of 9 April (31 + 28 + 31 + 9)
  expect(took(['g/back/0/1'], rows('g/back/0/1', [12, 98 * 24 + 1]), 0)).toMatchObject({ days: 99 });
});
