/** Changes of a list that leave the old one as it was, so that every step can be taken back. */

export const replaced = <T>(list: readonly T[], index: number, item: T): readonly T[] =>
  list.map((old, i) => (i === index ? item : old));

export const inserted = <T>(list: readonly T[], index: number, ...items: readonly T[]): readonly T[] => [
  ...list.slice(0, index),
  ...items,
  ...list.slice(index),
];

export const removed = <T>(list: readonly T[], index: number): readonly T[] =>
  list.filter((_, i) => i !== index);

/** The item one place earlier (-1) or later (+1); at the ends nothing moves. */
export function moved<T>(list: readonly T[], index: number, by: -1 | 1): readonly T[] {
  const item = list[index];
  const target = index + by;
  if (item === undefined || target < 0 || target >= list.length) return list;
  return inserted(removed(list, index), target, item);
}

/** 'Body' → 'Body 2', 'Body 2' → 'Body 3', whatever is free. */
export function freeName(wanted: string, taken: readonly string[]): string {
  if (!taken.includes(wanted)) return wanted;
  const stem = wanted.replace(/ \d+$/, '');
  let number = 2;
  while (taken.includes(`${stem} ${number}`)) number += 1;
  return `${stem} ${number}`;
}
