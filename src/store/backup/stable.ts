/** JSON with the keys of every object in order: equal values give equal text on every device. */
export const stableJson = (value: unknown): string => JSON.stringify(value, sortKeys) ?? 'null';

const sortKeys = (_key: string, value: unknown): unknown =>
  typeof value === 'object' && value !== null && !Array.isArray(value) ? inOrder(value) : value;

const inOrder = (value: object): object => {
  const from = value as Readonly<Record<string, unknown>>;
  return Object.fromEntries(
    Object.keys(from)
      .sort()
      .map((key) => [key, from[key]]),
  );
};

/** Of two versions of the same thing, one and the same whichever is named first. */
export function oneOf<T>(a: T, b: T): T {
  if (JSON.stringify(a) === JSON.stringify(b)) return a;
  return stableJson(a) >= stableJson(b) ? a : b;
}

export const byId = <T extends { readonly id: string }>(items: readonly T[]): T[] =>
  [...items].sort((a, b) => (a.id < b.id ? -1 : a.id > b.id ? 1 : 0));
