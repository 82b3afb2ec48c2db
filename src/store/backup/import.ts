import { ok, type Result } from '../../knit/fault.ts';
import { summaryOf, writePlaces } from '../garments.ts';
import { newestPlans } from '../plan-versions.ts';
import type { PhotoRecord } from '../records.ts';
import type { Tx } from '../schema.ts';
import type { Box } from '../store.ts';
import { each } from '../together.ts';
import { backupStores, isOwnSetting, readContents } from './contents.ts';
import type { Backup } from './document.ts';
import { mergeBackups } from './merge.ts';
import { photoToText, textToPhoto } from './photo-text.ts';
import { type ImportMode, type Preview, preview } from './preview.ts';
import { stableJson } from './stable.ts';

export interface Imported {
  readonly changed: Preview;
  /** the box as it was: read in with 'replace', it takes the whole import back */
  readonly before: Backup;
}

type Write = Tx<'readwrite'>;

/** Reads a backup into the box in one transaction: all of it, or nothing. */
export async function importBackup(box: Box, file: Backup, mode: ImportMode): Promise<Result<Imported>> {
  const pictures = file.photos.map(textToPhoto);
  const written = await box.door.write(
    backupStores,
    (tx) => writeImport(tx, box, file, mode, pictures),
    'whole box',
  );
  if (!written.ok) return written;
  const { here, photos, garments, changed } = written.value;
  box.sentinel.change((was) => ({ garments, entries: Math.max(was.entries, file.entries.length) }));
  box.tell({ kind: 'all' });
  return ok({ changed, before: { ...here, photos: await Promise.all(photos.map(photoToText)) } });
}

async function writeImport(
  tx: Write,
  box: Box,
  file: Backup,
  mode: ImportMode,
  pictures: readonly PhotoRecord[],
) {
  const { backup: here, photos } = await readContents(tx as unknown as Tx<'readonly'>, box.now());
  const known = new Set(photos.map((photo) => photo.id));
  const after = mode === 'replace' ? file : mergeBackups(here, file);
  const changed = preview(here, file, mode, known);
  await writeDifference(tx, 'garments', here.garments, after.garments);
  await writeDifference(tx, 'plans', here.plans, after.plans);
  await writeDifference(tx, 'log', here.entries, after.entries);
  await writePhotos(tx, mode, known, pictures);
  await writeSettings(tx, mode, here.settings, file.settings);
  await writeAllPlaces(tx, after, new Set(changed.garments.map((garment) => garment.id)));
  return { here, photos, garments: after.garments.length, changed };
}

async function writeDifference<Name extends 'garments' | 'plans' | 'log'>(
  tx: Write,
  name: Name,
  before: readonly { readonly id: string }[],
  after: readonly { readonly id: string }[],
): Promise<void> {
  const old = new Map(before.map((item) => [item.id, stableJson(item)]));
  const kept = new Set(after.map((item) => item.id));
  const store = tx.objectStore(name);
  await each(
    after.filter((item) => old.get(item.id) !== stableJson(item)),
    (item) => store.put(item as never),
  );
  await each(
    before.filter((item) => !kept.has(item.id)),
    (item) => store.delete(item.id),
  );
}

/** A photo never changes, so only the ones that are not there come in. */
async function writePhotos(
  tx: Write,
  mode: ImportMode,
  known: ReadonlySet<string>,
  pictures: readonly PhotoRecord[],
) {
  const store = tx.objectStore('photos');
  const wanted = new Set(pictures.map((photo) => photo.id));
  await each(
    pictures.filter((photo) => !known.has(photo.id)),
    (photo) => store.put(photo),
  );
  if (mode === 'merge') return;
  await each(
    [...known].filter((id) => !wanted.has(id)),
    (id) => store.delete(id),
  );
}

/** Merged, this device's own choices hold; the file only adds to them. */
async function writeSettings(
  tx: Write,
  mode: ImportMode,
  here: Backup['settings'],
  file: Backup['settings'],
) {
  const store = tx.objectStore('settings');
  const names = Object.keys(file).filter((name) => !isOwnSetting(name));
  await each(
    names.filter((name) => mode === 'replace' || !Object.hasOwn(here, name)),
    (name) => store.put(file[name], name),
  );
  if (mode === 'merge') return;
  await each(
    Object.keys(here).filter((name) => !Object.hasOwn(file, name)),
    (name) => store.delete(name),
  );
}

/** Places and summaries of what has changed are told anew from what is there now. */
async function writeAllPlaces(tx: Write, after: Backup, changed: ReadonlySet<string>): Promise<void> {
  const garments = new Map(after.garments.map((garment) => [garment.id, garment]));
  for (const id of changed) {
    const garment = garments.get(id);
    if (garment === undefined) {
      const places = await tx.objectStore('places').index('garment').getAllKeys(id);
      await each(places, (key) => tx.objectStore('places').delete(key));
      await tx.objectStore('summaries').delete(id);
      continue;
    }
    const plans = after.plans.filter((plan) => plan.garment === id);
    const places = await writePlaces(tx, garment, newestPlans(plans), true);
    await tx.objectStore('summaries').put(summaryOf(garment, places));
  }
}
