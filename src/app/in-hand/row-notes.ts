import { knits, type LogEntry, type MakeKey, parseMakeKey, rowOfNote } from '../../progress/log.ts';
import { standing } from '../../progress/standing.ts';
import type { GarmentRecord, PlaceRecord } from '../../store/records.ts';
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
  /** that her maker or she chose to show how; https only */
  readonly address?: string;
}

/** Notes on the rows of a part, of all its makes; lifelines of this make only, as far as they are still in. */
export async function notesOf(place: PlaceRecord): Promise<readonly NoteOnRow[]> {
  const box = await store();
  const [found, garment] = await Promise.all([
    box.entriesOfGarment(place.garment),
    box.garment(place.garment),
  ]);
  if (!found.ok) return [];
  const byMake = new Map<MakeKey, LogEntry[]>();
  for (const entry of found.value) {
    const id = parseMakeKey(entry.make);
    if (id?.piece !== place.piece || id.part !== place.part) continue;
    const entries = byMake.get(entry.make);
    if (entries) entries.push(entry);
    else byMake.set(entry.make, [entry]);
  }
  const own = [...byMake].flatMap(([key, entries]) =>
    notesIn(entries, parseMakeKey(key)?.make ?? 1, key === place.id),
  );
  return [...travelled(garment.ok ? garment.value : undefined, place), ...own];
}

/** What its maker wrote at rows of the part, where the garment came with it. */
function travelled(garment: GarmentRecord | undefined, { piece, part, make }: PlaceRecord): NoteOnRow[] {
  const recipe = garment?.pieces.find(({ id }) => id === piece)?.recipe;
  const name = recipe?.parts[part]?.name;
  const notes = garment?.rowNotes?.filter((note) => note.piece === recipe?.name && note.part === name) ?? [];
  return notes.map(({ row, text = '', address }, i) => ({
    entry: `travelled ${i}`,
    kind: 'note',
    row,
    text,
    make,
    ...(address !== undefined && { address }),
  }));
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
