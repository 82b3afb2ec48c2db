/** The list with another value at the index. */
export const put = <T>(list: readonly T[], index: number, value: T): T[] => [
  ...list.slice(0, index),
  value,
  ...list.slice(index + 1),
];
