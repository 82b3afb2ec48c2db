/** The browser's small synchronous store, of which the box keeps two things outside itself: sentinel and journal; and in which codes of a link wait for each other. */
export type SmallKeep = Pick<Storage, 'getItem' | 'setItem' | 'removeItem' | 'key' | 'length'>;

/** Where the browser refuses it even to be asked for, there is none. */
export function smallKeep(): SmallKeep | undefined {
  try {
    return globalThis.localStorage ?? undefined;
  } catch {
    return undefined;
  }
}

export function readJson(keep: SmallKeep | undefined, key: string): unknown {
  try {
    return JSON.parse(keep?.getItem(key) ?? 'null');
  } catch {
    return null;
  }
}

/** Whether it was kept: the keep has a limit of its own, and may be refused at any time. */
export function writeJson(keep: SmallKeep | undefined, key: string, value: unknown): boolean {
  try {
    keep?.setItem(key, JSON.stringify(value));
    return keep !== undefined;
  } catch {
    return false;
  }
}

export function dropKey(keep: SmallKeep | undefined, key: string): void {
  try {
    keep?.removeItem(key);
  } catch {
    // not to be had just now: what stays is drained again, and its id tells that it was written
  }
}

export function keysFrom(keep: SmallKeep | undefined, start: string): string[] {
  const keys: string[] = [];
  try {
    for (let i = 0; i < (keep?.length ?? 0); i += 1) {
      const key = keep?.key(i);
      if (key?.startsWith(start) === true) keys.push(key);
    }
  } catch {
    return [];
  }
  return keys;
}

/** What the keys of taps begin with that are kept for a box. */
export const heldIn = (box: string): string => `${box}.held.`;
