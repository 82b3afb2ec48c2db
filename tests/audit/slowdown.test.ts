import { expect, it } from 'vitest';
import { slowdownFor } from './slowdown.ts';

it('a machine is slowed down as the calculator has it that the documentation of Lighthouse names', () => {
  // its points, as printed beside its field
  const printed = { 150: 1, 800: 2, 1300: 3, 1533: 4, 1766: 5, 2000: 6 };
  for (const [index, times] of Object.entries(printed)) expect(slowdownFor(Number(index)), index).toBe(times);
});

it('a machine is slowed down within the range of its class in the documentation of Lighthouse', () => {
  // docs/throttling.md: BenchmarkIndex of a class, and the multipliers from it to a mid-tier mobile, from and to
  const classes = [
    { index: [1500, 2000], times: [2, 10] },
    { index: [1000, 1500], times: [1, 5] },
    { index: [800, 1200], times: [1, 5] },
    // such a phone itself
    { index: [125, 800], times: [1, 2] },
  ] as const;
  for (const { index, times } of classes)
    for (let at: number = index[0]; at <= index[1]; at += 25) {
      expect(slowdownFor(at), String(at)).toBeGreaterThanOrEqual(times[0]);
      expect(slowdownFor(at), String(at)).toBeLessThanOrEqual(times[1]);
    }
  expect(slowdownFor(60)).toBe(1);
});
