import { vi } from 'vitest';

/** Ids drawn by chance are the same in each run that is lived through again: their order is the log's where devices meet. */
export function fixedChance(): void {
  let state = 1;
  const next = () => {
    // a linear congruential generator modulo 2³², multiplier and addend from memory
    state = (Math.imul(state, 1_664_525) + 1_013_904_223) >>> 0;
    return state >>> 24;
  };
  vi.spyOn(crypto, 'getRandomValues').mockImplementation((array) => {
    if (array instanceof Uint8Array) for (let i = 0; i < array.length; i += 1) array[i] = next();
    return array;
  });
}
