import type { Page } from 'playwright-core';
import { foldPlace } from '../../src/progress/fold.ts';
import type { LogEntry } from '../../src/progress/log.ts';
import type { PlaceRecord } from '../../src/store/records.ts';

/** What lies in the database, read past the app. */
export interface Stored {
  readonly place: PlaceRecord | undefined;
  /** of one make, in no order */
  readonly entries: readonly LogEntry[];
}

/** Reads one make's place and log straight from the browser's database. */
export function storedOf(page: Page, make: string): Promise<Stored> {
  return page.evaluate(async (key) => {
    const answer = <T>(request: IDBRequest<T>): Promise<T> =>
      new Promise((resolve, reject) => {
        request.onsuccess = () => resolve(request.result);
        request.onerror = () => reject(request.error);
      });
    const db = await answer(indexedDB.open('ridgeline'));
    const tx = db.transaction(['log', 'places'], 'readonly');
    const [place, all] = await Promise.all([
      answer(tx.objectStore('places').get(key)),
      answer(tx.objectStore('log').getAll()),
    ]);
    db.close();
    return { place, entries: (all as LogEntry[]).filter((entry) => entry.make === key) };
  }, make);
}

/** What does not hang together in a make that only one device knits; empty when all does. */
export function corruptionsOf({ place, entries }: Stored): string[] {
  if (place === undefined) return ['the place is gone'];
  const sorted = [...entries].sort((a, b) => a.seq - b.seq);
  const fold = foldPlace(entries);
  const ids = new Set(sorted.map(({ id }) => id));
  const gaps = sorted.filter((entry, i) => entry.seq !== i + 1);
  const jumps = sorted.filter(({ kind, row }, i) => kind === 'row' && row !== (sorted[i - 1]?.row ?? 0) + 1);
  return [
    ...(fold.rows === place.rows ? [] : [`the log says row ${fold.rows}, the place ${place.rows}`]),
    ...(fold.seq === place.seq ? [] : [`the log ends at ${fold.seq}, the place at ${place.seq}`]),
    ...(ids.size === sorted.length ? [] : ['two entries have one id']),
    ...gaps.map(({ seq }) => `entry ${seq} is not where it belongs`),
    ...jumps.map(({ row, seq }) => `entry ${seq} jumps to row ${row}`),
  ];
}
