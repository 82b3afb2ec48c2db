import { expect, it } from 'vitest';
import { overHundred, overSpan } from '../../src/screens/editor/gauge-count.tsx';

/** One inch is 25.4 mm exactly (international yard and pound agreement, 1959). */
const FOUR_INCHES_MM = 4 * 25.4;

it('twenty stitches in four inches are kept as so many to 101.6 mm', () => {
  expect(Number(overHundred('20', FOUR_INCHES_MM))).toBeCloseTo((20 / 101.6) * 100, 10);
  expect(Number(overHundred('28,5', FOUR_INCHES_MM))).toBeCloseTo((28.5 / 101.6) * 100, 10);
});

it('every count to the quarter comes back from four inches as it was typed', () => {
  for (let count = 0.25; count <= 80; count += 0.25)
    expect(overSpan(overHundred(String(count), FOUR_INCHES_MM), FOUR_INCHES_MM)).toBe(String(count));
});

it('what is kept over 10 cm is said over four inches, and is not changed by that', () => {
  expect(overSpan('20', FOUR_INCHES_MM)).toBe('20.32');
  expect(overSpan('', FOUR_INCHES_MM)).toBe('');
});

it('over 10 cm it is kept as it is typed', () => {
  for (const typed of ['20', '20.', '20,5', '', 'abc']) expect(overHundred(typed, 100)).toBe(typed);
  expect(overSpan('22.123456789', 100)).toBe('22.12');
});

it('what is no number stays as it was typed, to be told so', () => {
  for (const typed of ['', 'abc', '20 sts']) expect(overHundred(typed, FOUR_INCHES_MM)).toBe(typed);
});
