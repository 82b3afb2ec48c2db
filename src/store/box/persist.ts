/** Whether the browser has promised not to clear the box by itself. */
export type Kept = 'kept' | 'not kept' | 'unknown';

type Manager = Partial<Pick<StorageManager, 'persist' | 'persisted' | 'estimate'>>;

/** Some browsers have no such thing, some only in windows that they trust. */
const manager = (): Manager | undefined => globalThis.navigator?.storage as Manager | undefined;

/** Asks the browser to keep the box. To be called after something worth keeping was done: a browser may ask her. */
export const askToKeep = (storage = manager()): Promise<Kept> => answer(storage?.persist?.bind(storage));

/** What the browser says now, without asking for anything. */
export const isKept = (storage = manager()): Promise<Kept> => answer(storage?.persisted?.bind(storage));

async function answer(ask: (() => Promise<boolean>) | undefined): Promise<Kept> {
  try {
    if (ask === undefined) return 'unknown';
    return (await ask()) ? 'kept' : 'not kept';
  } catch {
    return 'unknown';
  }
}

export interface Room {
  /** bytes */
  readonly used: number;
  readonly free: number;
}

/** How much the box takes and how much it may still take; undefined where the browser does not say. */
export async function roomLeft(storage = manager()): Promise<Room | undefined> {
  try {
    const { usage, quota } = (await storage?.estimate?.()) ?? {};
    return usage === undefined || quota === undefined
      ? undefined
      : { used: usage, free: Math.max(0, quota - usage) };
  } catch {
    return undefined;
  }
}
