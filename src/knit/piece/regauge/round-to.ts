/** The whole number nearest to `value` that is odd or even as `like` is. */
export function roundLike(value: number, like: number): number {
  const odd = Math.abs(like) % 2;
  return 2 * Math.round((value - odd) / 2) + odd;
}

/** Whole parts that add up to the rounded sum, each as near to its own value as that allows; in order. */
export function roundParts(values: readonly number[]): number[] {
  let exact = 0;
  let given = 0;
  return values.map((value) => {
    exact += value;
    const part = Math.round(exact) - given;
    given += part;
    return part;
  });
}
