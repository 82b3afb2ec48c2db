/** Numbers from 0 up to 1, the same for the same seed (a linear congruence; its constants are those of C's standard). */
export function random(seed: number): () => number {
  let state = seed >>> 0;
  return () => {
    state = (Math.imul(state, 1_103_515_245) + 12_345) >>> 0;
    return state / 2 ** 32;
  };
}

/** `count` of a list, drawn without putting back. */
export function draw<T>(list: readonly T[], count: number, next: () => number): T[] {
  const left = [...list];
  return Array.from({ length: Math.min(count, left.length) }, () =>
    left.splice(Math.floor(next() * left.length), 1),
  ).flat();
}
