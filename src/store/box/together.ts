/**
 * Asks several things of one transaction at once. A call that throws is a refusal like any other, and no answer
 * of the others is left without someone to hear it.
 */
export const together = <Asks extends readonly (() => Promise<unknown>)[]>(
  ...asks: Asks
): Promise<{ [K in keyof Asks]: Awaited<ReturnType<Asks[K]>> }> =>
  Promise.all(asks.map(async (ask) => ask())) as never;

export const each = <Item, T>(items: Iterable<Item>, ask: (item: Item) => Promise<T>): Promise<T[]> =>
  Promise.all(Array.from(items, async (item) => ask(item)));
