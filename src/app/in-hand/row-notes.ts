import { knits, type LogEntry, type MakeKey, parseMakeKey, rowOfNote } from '../../progress/log.ts';
import { standing } from '../../progress/standing.ts';
import type { PlaceRecord } from '../../store/records.ts';
import { store } from '../store.ts';

/** A note or a lifeline, by the row that comes after it. */
export interface NoteOnRow {
  /** id of its entry */
  readonly entry: string;
  readonly kind: 'note' | 'lifeline';
  /** row number, from 1, that was in hand when it was written, or that a note was written for */
  readonly row: number;
  readonly text: string;
  /** the make it was written on, from 1 */
  readonly make: number;
}

/** Notes on the rows of a part, of all its makes; lifelines of this make only, as far as they are still in. */
export async function notesOf(place: PlaceRecord): Promise<readonly NoteOnRow[]> {
  const found = await (await store()).entriesOfGarment(place.garment);
  if (!found.ok) return [];
  const byMake = new Map<MakeKey, LogEntry[]>();
  for (const entry of found.value) {
    const id = parseMakeKey(entry.make);
    if (id?.piece !== place.piece || id.part !== place.part) continue;
    const entries = byMake.get(entry.make);
    if (entries) entries.push(entry);
    else byMake.set(entry.make, [entry]);
  }
  return [...byMake].flatMap(([key, entries]) =>
    notesIn(entries, parseMakeKey(key)?.make ?? 1, key === place.id),
  );
}

function notesIn(entries: readonly LogEntry[], make: number, isOwn: boolean): NoteOnRow[] {
  let lifelines: LogEntry[] = [];
  const notes: LogEntry[] = [];
  for (const entry of standing(entries)) {
    if (knits(entry.kind)) lifelines = lifelines.filter((one) => one.row <= entry.row);
    if (entry.kind === 'lifeline') lifelines.push(entry);
    if (entry.kind === 'note') notes.push(entry);
  }
  return [...notes, ...(isOwn ? lifelines : [])].map((entry) => ({
    entry: entry.id,
    kind: entry.kind === 'note' ? 'note' : 'lifeline',
    row: rowOfNote(entry),
    text: entry.text ?? '',
    make,
  }));
}
