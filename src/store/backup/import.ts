import { fault, ok, type Result, refuse } from '../../knit/fault.ts';
import type { GarmentId } from '../../progress/log.ts';
import type { Box } from '../box/box.ts';
import type { Tx } from '../box/schema.ts';
import { each, together } from '../box/together.ts';
import { grouped } from '../grouped.ts';
import { randomId } from '../ids.ts';
import type { PhotoRecord } from '../records.ts';
import { clearAside, isAside, layAside, writeAside } from './aside.ts';
import { byGarment } from './by-garment.ts';
import { backupStores, markOf, type OfGarment, readBox, readGarment, type WholeBox } from './contents.ts';
import type { Backup, ImportMode } from './document.ts';
import { isOwnSetting, type WayBack } from './own-settings.ts';
import { textToPhoto } from './photo-text.ts';
import { type Deed, deedOf, deedsOf, type Preview, previewOf, takenAway } from './preview.ts';
import { stableJson } from './stable.ts';
import { keepWayBack, type SettingChanged } from './way-back.ts';
import { writeDeed } from './write-deed.ts';

export interface Imported {
  readonly changed: Preview;
}

type Write = Tx<'readwrite'>;

/** What an import is about to do. */
interface Coming {
  /** its own, see `Aside` */
  readonly id: string;
  readonly file: Backup;
  readonly mode: ImportMode;
  readonly garments: ReadonlyMap<GarmentId, Backup>;
  readonly photos: readonly PhotoRecord[];
  readonly read: WholeBox;
  readonly deeds: readonly Deed[];
}

/** Another window that starts clears away what is laid aside: it is laid there again, but not for ever. */
const TRIES = 4;

/**
 * Reads a backup into the box: all of it, or nothing. It gives way to taps: garments that come in are laid aside slice
 * by slice, one short transaction then shows them all, and what has gone is cleared away slice by slice.
 */
export async function importBackup(box: Box, file: Backup, mode: ImportMode): Promise<Result<Imported>> {
  for (let tried = 0; tried < TRIES; tried += 1) {
    const cleared = await clearAside(box);
    if (!cleared.ok) return cleared;
    const done = await tryImport(box, file, mode);
    // where it was refused too: what stays is cleared away by the next start
    await clearAside(box);
    if (!done.ok) return done;
    if (done.value !== undefined) return ok(done.value);
  }
  return refuse(fault('store-not-answering'));
}

/** undefined where what was laid aside has been cleared away by another window */
async function tryImport(box: Box, file: Backup, mode: ImportMode): Promise<Result<Imported | undefined>> {
  const read = await readBox(box);
  if (!read.ok) return read;
  const garments = byGarment(file);
  const photos = file.photos.map(textToPhoto);
  const deeds = await deedsOf(read.value.garments, garments, mode);
  const coming: Coming = { id: randomId(14), file, mode, garments, photos, read: read.value, deeds };
  const news = deeds.flatMap(({ here, after }) => (here === undefined && after ? [after] : []));
  const ids = new Set(news.flatMap((backup) => backup.garments.map(({ id }) => id)));
  const aside = await layAside(
    box,
    coming.id,
    news,
    photos.filter((photo) => ids.has(photo.garment)),
  );
  if (!aside.ok) return aside;
  if (!aside.value) return ok(undefined);
  const shown = await box.door.write(backupStores, (tx) => show(tx, box, coming), 'whole box');
  if (!shown.ok) return shown;
  if (shown.value === undefined) return ok(undefined);
  const { before, done, count } = shown.value;
  box.sentinel.change((was) => ({
    garments: count,
    entries: Math.max(was.entries, file.entries.length),
  }));
  box.tell({ kind: 'all' });
  return ok({ changed: previewOf(done, before, file) });
}

/** The one transaction in which everything becomes another; undefined where it cannot be, and nothing is written. */
async function show(tx: Write, box: Box, coming: Coming) {
  const [isOurs, garments, places] = await together(
    () => isAside(tx, coming.id),
    () => tx.objectStore('garments').getAll(),
    () => tx.objectStore('places').getAll(),
  );
  if (!isOurs) return undefined;
  const placesOf = grouped(places, (place) => place.garment);
  const marks = new Map(garments.map((one) => [one.id, markOf(one, placesOf.get(one.id) ?? [])]));
  const { before, done } = await asItIsNow(tx, box, coming, marks);
  const gone = done.filter(({ after }) => after === undefined).map(({ id }) => id);
  await each(done, (deed) => writeDeed(tx, deed, placesOf.get(deed.id) ?? []));
  const photos = await writePhotos(tx, coming, takenAway(garments, done));
  const settings = await writeSettings(tx, coming);
  await keepWayBack(tx, box, coming.mode, done, settings, photos);
  await writeAside(tx, { id: coming.id, garments: gone });
  return { before, done, count: await tx.objectStore('garments').count() };
}

/** What was knitted or changed since the box was read is read again, and decided anew. */
async function asItIsNow(
  tx: Write,
  box: Box,
  { read, deeds, garments, mode }: Coming,
  marks: ReadonlyMap<string, string>,
) {
  const before = new Map(read.garments);
  const done = new Map(deeds.map((deed) => [deed.id, deed]));
  for (const id of new Set([...read.garments.keys(), ...garments.keys()])) {
    if (marks.get(id) === read.garments.get(id)?.mark) continue;
    const here: OfGarment | undefined = await readGarment(tx as unknown as Tx<'readonly'>, id, box);
    if (here === undefined) before.delete(id);
    else before.set(id, here);
    const deed = deedOf(id, here, garments.get(id), mode);
    if (deed === undefined) done.delete(id);
    else done.set(id, deed);
  }
  return { before, done: [...done.values()] };
}

/** A photo never changes, so only the ones that are not there come in. Gives what came and what went. */
async function writePhotos(
  tx: Write,
  { photos: all, mode, read }: Coming,
  gone: ReadonlySet<string>,
): Promise<WayBack['photos']> {
  const store = tx.objectStore('photos');
  const known = new Set(await store.getAllKeys());
  const had = [...read.garments.values()].flatMap((one) => one.photos);
  const here = new Set(had.map(({ id }) => id));
  const photos = mode === 'merge' ? all.filter(({ id }) => !gone.has(id)) : all;
  await each(
    photos.filter((photo) => !known.has(photo.id)),
    (photo) => store.put(photo),
  );
  // some lie aside already
  const came = photos.filter(({ id }) => !here.has(id)).map(({ id }) => id);
  const wanted = new Set(photos.map((photo) => photo.id));
  const goes = ({ id }: PhotoRecord) => (mode === 'merge' ? gone.has(id) : !wanted.has(id));
  const went = had.filter((photo) => known.has(photo.id) && goes(photo));
  await each(went, ({ id }) => store.delete(id));
  return { came, went };
}

/** Merged, this device's own choices hold; the file only adds to them. Gives what has changed. */
async function writeSettings(tx: Write, { file, mode }: Coming): Promise<readonly SettingChanged[]> {
  const store = tx.objectStore('settings');
  const [names, values] = await together(
    () => store.getAllKeys(),
    () => store.getAll(),
  );
  const had = new Map(names.map((name, i) => [name, values[i]]));
  const comes = new Map(Object.entries(file.settings));
  const changed = [...new Set([...had.keys(), ...comes.keys()])]
    .filter((name) => !isOwnSetting(name))
    .map((name): SettingChanged => ({ name, before: had.get(name), after: comes.get(name) }))
    .filter(({ before, after }) => stableJson(before) !== stableJson(after))
    .filter(({ name }) => mode === 'replace' || !had.has(name));
  await each(changed, async ({ name, after }) => {
    if (after === undefined) await store.delete(name);
    else await store.put(after, name);
  });
  return changed;
}
