/** JSON with the keys of every object in order: equal values give equal text on every device. */
export const stableJson = (value: unknown): string => JSON.stringify(inOrder(value)) ?? 'null';

function inOrder(value: unknown): unknown {
  if (typeof value !== 'object' || value === null) return value;
  if (Array.isArray(value)) return value.map(inOrder);
  const from = value as Readonly<Record<string, unknown>>;
  const ordered: Record<string, unknown> = {};
  for (const key of Object.keys(from).sort()) ordered[key] = inOrder(from[key]);
  return ordered;
}

/** Of two versions of the same thing, one and the same whichever is named first. */
export function oneOf<T>(a: T, b: T): T {
  if (JSON.stringify(a) === JSON.stringify(b)) return a;
  return stableJson(a) >= stableJson(b) ? a : b;
}

export const byId = <T extends { readonly id: string }>(items: readonly T[]): T[] =>
  [...items].sort((a, b) => (a.id < b.id ? -1 : a.id > b.id ? 1 : 0));
