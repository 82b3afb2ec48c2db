/**
 * How many times slower than a machine Lighthouse has to take a phone of the middle class to be, by the machine's
 * `benchmarkIndex`: its own fourfold, which is the bar, is meant for a quick desktop. Points of the calculator that Lighthouse's
 * documentation names for it (docs/throttling.md, 'Calibrating the CPU slowdown';
 * lighthouse-cpu-throttling-calculator), straight lines between them; below the first, which is such a phone itself,
 * nothing is slowed down.
 */
const points = [
  { index: 150, times: 1 },
  { index: 800, times: 2 },
  { index: 1300, times: 3 },
  { index: 1300 + 233, times: 4 },
] as const;

/** @returns a multiplier, 1 or more, with one decimal */
export function slowdownFor(benchmarkIndex: number): number {
  const above = points.findIndex(({ index }) => index > benchmarkIndex);
  const to = points[Math.max(1, above === -1 ? points.length - 1 : above)] ?? points[1];
  const from = points[points.indexOf(to) - 1] ?? points[0];
  const times = from.times + (benchmarkIndex - from.index) / (to.index - from.index);
  return Math.max(1, Math.round(times * 10) / 10);
}
