/** The items under what each belongs to, in their order. */
export function grouped<T>(items: readonly T[], groupOf: (item: T) => string): Map<string, T[]> {
  const groups = new Map<string, T[]>();
  for (const item of items) {
    const group = groupOf(item);
    const known = groups.get(group);
    if (known === undefined) groups.set(group, [item]);
    else known.push(item);
  }
  return groups;
}
