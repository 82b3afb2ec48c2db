import { ok, type Result } from '../../knit/fault.ts';
import { foldPlace } from '../../progress/fold.ts';
import { type LogEntry, makeKey } from '../../progress/log.ts';
import type { Box } from '../store.ts';
import { backupStores, readContents } from './contents.ts';
import type { Backup } from './document.ts';
import { mergeBackups } from './merge.ts';
import { stableJson } from './stable.ts';

/** 'merge' unites the file with the box, 'replace' puts the file in its stead. */
export type ImportMode = 'merge' | 'replace';

/** What reading a backup in would change. */
export interface Preview {
  /** those that would stay exactly as they are are left out */
  readonly garments: readonly GarmentChange[];
  readonly same: number;
  readonly photos: number;
}

export interface GarmentChange {
  readonly id: string;
  readonly name: string;
  readonly kind: 'new' | 'changed' | 'gone';
  /** log entries that would come in, and that would go */
  readonly entriesIn: number;
  readonly entriesOut: number;
  /** the recipe or what belongs to it would be another */
  readonly recipe: boolean;
  /** makes that are at another row here, in the file, or after it */
  readonly makes: readonly MakeChange[];
}

export interface MakeChange {
  readonly key: string;
  readonly piece: string;
  readonly part: string;
  readonly make: number;
  /** rows worked here, in the file ('the other device is 6 rows further'), and after reading it in; undefined: not there */
  readonly here: number | undefined;
  readonly there: number | undefined;
  readonly after: number | undefined;
}

/** Looks at the box and the file, and changes nothing. */
export async function previewImport(box: Box, file: Backup, mode: ImportMode): Promise<Result<Preview>> {
  const read = await box.door.read(backupStores, (tx) => readContents(tx, box.now()), 'whole box');
  if (!read.ok) return read;
  const { backup: here, photos } = read.value;
  return ok(preview(here, file, mode, new Set(photos.map((photo) => photo.id))));
}

export function preview(here: Backup, file: Backup, mode: ImportMode, photos: ReadonlySet<string>): Preview {
  const after = mode === 'replace' ? file : mergeBackups(here, file);
  const ids = [...new Set([...here.garments, ...file.garments].map((garment) => garment.id))];
  const all = ids.map((id) => changeOf(sliceOf(here, id), sliceOf(file, id), sliceOf(after, id)));
  const garments = all.filter((change): change is GarmentChange => change !== undefined);
  return {
    garments,
    same: ids.length - garments.length,
    photos: file.photos.filter((photo) => !photos.has(photo.id)).length,
  };
}

interface Slice {
  readonly garment: Backup['garments'][number] | undefined;
  readonly plans: Backup['plans'];
  readonly entries: ReadonlyMap<string, readonly LogEntry[]>;
  readonly ids: ReadonlySet<string>;
}

function sliceOf(backup: Backup, id: string): Slice {
  const entries = new Map<string, LogEntry[]>();
  const ids = new Set<string>();
  for (const entry of backup.entries) {
    if (!entry.make.startsWith(`${id}/`)) continue;
    ids.add(entry.id);
    const ofMake = entries.get(entry.make);
    if (ofMake === undefined) entries.set(entry.make, [entry]);
    else ofMake.push(entry);
  }
  const plans = backup.plans.filter((plan) => plan.garment === id);
  return { garment: backup.garments.find((garment) => garment.id === id), plans, entries, ids };
}

function changeOf(here: Slice, there: Slice, after: Slice): GarmentChange | undefined {
  const garment = after.garment ?? here.garment;
  if (garment === undefined) return undefined;
  const recipe =
    stableJson(here.garment) !== stableJson(after.garment) ||
    stableJson(here.plans) !== stableJson(after.plans);
  const entriesIn = [...after.ids].filter((id) => !here.ids.has(id)).length;
  const entriesOut = [...here.ids].filter((id) => !after.ids.has(id)).length;
  if (!recipe && entriesIn === 0 && entriesOut === 0) return undefined;
  const kind = here.garment === undefined ? 'new' : after.garment === undefined ? 'gone' : 'changed';
  const makes = makesOf(here, there, after).filter(
    (make) => make.here !== make.there || make.here !== make.after,
  );
  return { id: garment.id, name: garment.name, kind, entriesIn, entriesOut, recipe, makes };
}

function makesOf(here: Slice, there: Slice, after: Slice): MakeChange[] {
  const garment = after.garment ?? here.garment;
  return (garment?.pieces ?? []).flatMap(({ id: piece, recipe }) =>
    recipe.parts.flatMap((part, index) =>
      Array.from({ length: recipe.makes }, (_, i) => {
        const key = makeKey({ garment: garment?.id ?? '', piece, part: index, make: i + 1 });
        const rows = (slice: Slice) =>
          slice.garment === undefined ? undefined : foldPlace(slice.entries.get(key) ?? []).rows;
        const at = { here: rows(here), there: rows(there), after: rows(after) };
        return { key, piece: recipe.name, part: part.name, make: i + 1, ...at };
      }),
    ),
  );
}
