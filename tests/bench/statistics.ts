/** The middle value; of an even number of values the mean of the two in the middle. Throws where there is none. */
export function median(values: readonly number[]): number {
  const sorted = [...values].sort((a, b) => a - b);
  const [low, high] = [
    sorted[Math.floor((sorted.length - 1) / 2)],
    sorted[Math.ceil((sorted.length - 1) / 2)],
  ];
  if (low === undefined || high === undefined) throw new Error('Nothing was measured.');
  return (low + high) / 2;
}

/** The smallest value that at least the share `part` (0 to 1) of all values do not exceed. */
export function quantile(values: readonly number[], part: number): number {
  const sorted = [...values].sort((a, b) => a - b);
  const found = sorted[Math.max(0, Math.ceil(part * sorted.length) - 1)];
  if (found === undefined) throw new Error('Nothing was measured.');
  return found;
}

/**
 * Measures each in turn, again and again, so that whatever else this machine does falls on all alike; the order is
 * turned round each time.
 */
export async function inTurns<Name extends string, T>(
  times: number,
  works: Readonly<Record<Name, () => Promise<readonly T[]>>>,
): Promise<Record<Name, readonly T[]>> {
  const names = Object.keys(works) as Name[];
  const measured = Object.fromEntries(names.map((name) => [name, []])) as unknown as Record<Name, T[]>;
  for (let turn = 0; turn < times; turn += 1) {
    const order = turn % 2 === 0 ? names : [...names].reverse();
    for (const name of order) measured[name].push(...(await works[name]()));
  }
  return measured;
}
