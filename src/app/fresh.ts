import type { GarmentId, MakeKey } from '../progress/log.ts';
import type { Change } from '../store/box/changes.ts';
import { store } from './store.ts';

/**
 * Reads what a screen shows, and again with every tap and every change that it may show, from this window or another.
 * Changes that come while it reads are one more read. Gives the way to stop.
 * @param garment only what is of that garment
 * @param own a make whose taps the screen hears of by itself
 */
export function keepFresh(read: () => Promise<unknown>, garment?: GarmentId, own?: MakeKey): () => void {
  let stopped = false;
  let asked = false;
  let running = false;
  let leave = () => {
    stopped = true;
  };
  const readOn = async (): Promise<void> => {
    asked = true;
    if (running) return;
    running = true;
    while (asked && !stopped) {
      asked = false;
      await read();
    }
    running = false;
  };
  void store().then((open) => {
    if (stopped) return;
    const unlisten = open.onChange((change) => {
      if (concerns(change, garment, own)) void readOn();
    });
    leave = () => {
      stopped = true;
      unlisten();
    };
    void readOn();
  });
  return () => leave();
}

function concerns(change: Change, garment: GarmentId | undefined, own: MakeKey | undefined): boolean {
  if (change.kind === 'settings' || change.kind === 'state') return false;
  if (garment === undefined || change.kind === 'all') return true;
  if (change.kind === 'garment') return change.id === garment;
  return change.key !== own && change.key.startsWith(`${garment}/`);
}

/** Calls when another window has changed the garment; what this one writes is no news to it. Gives the way to stop. */
export function whenSavedElsewhere(garment: GarmentId, heard: () => void): () => void {
  let stopped = false;
  let leave = () => {
    stopped = true;
  };
  void store().then((open) => {
    if (stopped) return;
    leave = open.onChange((change, fromElsewhere) => {
      if ((fromElsewhere || change.kind === 'all') && concerns(change, garment, undefined)) heard();
    });
  });
  return () => leave();
}
