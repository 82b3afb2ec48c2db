import type { SmallKeep } from '../../../src/store/beside/small-keep.ts';

/** A small keep in memory; `full` makes it refuse to take anything more. */
export function memoryKeep(): SmallKeep & { full: boolean } {
  const held = new Map<string, string>();
  return {
    full: false,
    get length() {
      return held.size;
    },
    key: (i) => [...held.keys()][i] ?? null,
    getItem: (key) => held.get(key) ?? null,
    setItem(key, value) {
      if (this.full) throw new DOMException('full', 'QuotaExceededError');
      held.set(key, value);
    },
    removeItem: (key) => void held.delete(key),
  };
}
