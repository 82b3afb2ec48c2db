/** How safe the browser keeps what is stored. */
export interface Keeping {
  /** it has promised not to clear it; undefined where it does not say */
  readonly promised: boolean | undefined;
  /** bytes in use; undefined where it does not say */
  readonly usedBytes: number | undefined;
}

export async function readKeeping(): Promise<Keeping> {
  const storage: Partial<StorageManager> = navigator.storage ?? {};
  const [promised, estimate] = await Promise.all([
    storage.persisted?.call(navigator.storage).catch(() => undefined),
    storage.estimate?.call(navigator.storage).catch(() => undefined),
  ]);
  return { promised, usedBytes: estimate?.usage };
}

/** Asks the browser to keep everything for good; some ask her, some decide by themselves. */
export async function askToKeep(): Promise<boolean> {
  const storage: Partial<StorageManager> = navigator.storage ?? {};
  return (await storage.persist?.call(navigator.storage).catch(() => false)) ?? false;
}
