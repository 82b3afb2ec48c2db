import type { GarmentId, MakeKey } from '../../progress/log.ts';
/** What a listener is told; it then reads what it shows. */
export type Change =
  | { readonly kind: 'place'; readonly key: MakeKey }
  | { readonly kind: 'garment'; readonly id: GarmentId }
  | { readonly kind: 'settings' }
  /** a backup was read in, a connection came back: anything may be different */
  | { readonly kind: 'all' }
  | { readonly kind: 'state' };

export type Listener = (change: Change, fromElsewhere: boolean) => void;

export interface Changes {
  tell(change: Change): void;
  /** told to this window only */
  tellHere(change: Change): void;
  listen(listener: Listener): () => void;
  close(): void;
}

/** Tells this window and every other one on this device. */
export function openChanges(name: string): Changes {
  const listeners = new Set<Listener>();
  const channel = typeof BroadcastChannel === 'undefined' ? undefined : new BroadcastChannel(name);
  const here = (change: Change, fromElsewhere: boolean) => {
    for (const listener of listeners) listener(change, fromElsewhere);
  };
  channel?.addEventListener('message', (event: MessageEvent<unknown>) => {
    const change = readChange(event.data);
    if (change !== undefined) here(change, true);
  });
  return {
    tell(change) {
      here(change, false);
      channel?.postMessage(change);
    },
    tellHere: (change) => here(change, false),
    listen(listener) {
      listeners.add(listener);
      return () => listeners.delete(listener);
    },
    close() {
      listeners.clear();
      channel?.close();
    },
  };
}

/** Another version of the app may be at the other end. */
function readChange(data: unknown): Change | undefined {
  if (typeof data !== 'object' || data === null) return undefined;
  const { kind, key, id } = data as Record<string, unknown>;
  if (kind === 'place' && typeof key === 'string') return { kind, key: key as MakeKey };
  if (kind === 'garment' && typeof id === 'string') return { kind, id };
  return kind === 'settings' || kind === 'all' ? { kind } : undefined;
}
