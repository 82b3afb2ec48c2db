import { type ReadonlySignal, signal } from '@preact/signals';
import { store } from '../../store.ts';
import type { KeptName, KeptValue } from './kept-shapes.ts';
import { readKept, type Unread } from './read-kept.ts';

/** Whether what was typed is on disk. */
export type Keeping = 'kept' | 'keeping' | 'failed';

/** What is typed before it is a garment, kept in a setting with every sign: whatever becomes of the page, nothing typed is lost. */
export interface KeptDraft<T> {
  readonly keeping: ReadonlySignal<Keeping>;
  /** what was left and cannot be read, and why; undefined where it could be, and once it is begun anew */
  readonly unread: ReadonlySignal<Unread | undefined>;
  /** what was left, from the setting as stored; undefined where it cannot be read, which `unread` then says */
  left(stored: unknown): Promise<{ readonly draft: T | undefined } | undefined>;
  /** keeps the newest under a setting's name; says so in `keeping` */
  keep(setting: string, draft: T): Promise<void>;
  /** writes what `keep` would without a word of it; null: nothing is left. Whether it is on disk. */
  write(setting: string, draft: T | null): Promise<boolean>;
  /** what cannot be read is laid by; gives it, for what of it can be saved */
  beginAnew(): unknown;
}

export function keptDraft<K extends KeptName>(shape: K): KeptDraft<KeptValue<K>> {
  const keeping = signal<Keeping>('kept');
  const unread = signal<Unread | undefined>(undefined);
  /** one for each setting, so that none waits for, or makes way for, another */
  const writers = new Map<string, (draft: KeptValue<K> | null) => Promise<boolean>>();
  const write = (setting: string, draft: KeptValue<K> | null): Promise<boolean> => {
    const known =
      writers.get(setting) ??
      lastWriter(async (value) => (await (await store()).setSetting(setting, value)).ok);
    writers.set(setting, known);
    return known(draft);
  };
  return {
    keeping,
    unread,
    write,
    async left(stored) {
      const left = await readKept(shape, stored);
      unread.value = left.ok ? undefined : { fault: left.faults[0], stored };
      return left.ok ? { draft: left.value } : undefined;
    },
    async keep(setting, draft) {
      keeping.value = 'keeping';
      keeping.value = (await write(setting, draft)) ? 'kept' : 'failed';
    },
    beginAnew() {
      const stored = unread.value?.stored;
      unread.value = undefined;
      return stored;
    },
  };
}

/**
 * Writes the newest of what it is given, one write at a time: the first at once, then whatever has come meanwhile.
 * Resolves when everything given so far is stored; answers whether the last write was.
 */
export function lastWriter<T>(write: (value: T) => Promise<boolean>): (value: T) => Promise<boolean> {
  let next: { readonly value: T } | undefined;
  let running: Promise<boolean> | undefined;
  const work = async (): Promise<boolean> => {
    let stored = true;
    for (let head = next; head !== undefined; head = next) {
      next = undefined;
      stored = await write(head.value);
    }
    running = undefined;
    return stored;
  };
  return (value) => {
    next = { value };
    running ??= work();
    return running;
  };
}
