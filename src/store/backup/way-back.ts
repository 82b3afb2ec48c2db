import { fault, type Result, refuse } from '../../knit/fault.ts';
import type { Box } from '../box/box.ts';
import type { Tx } from '../box/schema.ts';
import { each } from '../box/together.ts';
import { Refusal } from '../faults.ts';
import { removeGarment } from '../garment/write-garment.ts';
import { backupStores, headOf, readGarment } from './contents.ts';
import type { Backup, ImportMode } from './document.ts';
import { WAY_BACK, type WayBack } from './own-settings.ts';
import type { Deed } from './preview.ts';
import { stableJson } from './stable.ts';
import { type GarmentChanged, listChange, undone } from './undone.ts';
import { writeDeed } from './write-deed.ts';

interface Changed {
  readonly garments: readonly GarmentChanged[];
  readonly settings: readonly SettingChanged[];
}

/** An undefined value is none. */
export interface SettingChanged {
  readonly name: string;
  readonly before?: unknown;
  readonly after?: unknown;
}

type Write = Tx<'readwrite'>;

const changedOf = ({ id, here, after }: Deed): GarmentChanged => ({
  id,
  before: here?.backup.garments[0],
  after: after?.garments[0],
  plans: listChange(here?.backup.plans ?? [], after?.plans ?? []),
  entries: listChange(here?.backup.entries ?? [], after?.entries ?? []),
});

/** Keeps the way back of a change in the transaction that makes it. */
export async function keepWayBack(
  tx: Write,
  { now }: Pick<Box, 'now'>,
  mode: ImportMode,
  deeds: readonly Deed[],
  settings: readonly SettingChanged[],
  photos: WayBack['photos'],
): Promise<void> {
  const changed: Changed = { garments: deeds.map(changedOf), settings };
  const last = (await tx.objectStore('settings').get(WAY_BACK)) as WayBack | undefined;
  const wayBack: WayBack = {
    at: Math.max(now(), (last?.at ?? 0) + 1),
    mode,
    hidden: false,
    changed: new Blob([JSON.stringify(changed)]),
    photos,
  };
  await tx.objectStore('settings').put(wayBack, WAY_BACK);
}

export interface TakenBack {
  /** names of the garments that came with it and stay, since they were knitted on or changed */
  readonly kept: readonly string[];
}

/** Undoes what the last backup that was read in has changed, and nothing else, in one transaction. */
export async function takeBack(box: Box): Promise<Result<TakenBack>> {
  const read = await box.door.read(['settings'], (tx) => tx.objectStore('settings').get(WAY_BACK));
  if (!read.ok) return read;
  const wayBack = read.value as WayBack | undefined;
  if (wayBack === undefined) return refuse(fault('no-way-back'));
  const changed = JSON.parse(await wayBack.changed.text()) as Changed;
  const written = await box.door.write(
    backupStores,
    async (tx, again) => {
      const still = (await tx.objectStore('settings').get(WAY_BACK)) as WayBack | undefined;
      // taken back the first time, although no answer came
      if (again && still === undefined)
        return { kept: [], garments: await tx.objectStore('garments').count() };
      if (still?.at !== wayBack.at) throw new Refusal(fault('no-way-back'));
      return writeBack(tx, box, wayBack, changed);
    },
    'whole box',
  );
  if (!written.ok) return written;
  const { garments, kept } = written.value;
  box.sentinel.change(() => ({ garments }));
  box.tell({ kind: 'all' });
  return { ok: true, value: { kept } };
}

async function writeBack(tx: Write, box: Box, { photos }: WayBack, { garments, settings }: Changed) {
  const head: Backup = { ...emptyBackup, ...headOf(box.device, box.now()) };
  const kept: string[] = [];
  const staying = new Set<string>();
  for (const changed of garments) {
    const here = await readGarment(tx as unknown as Tx<'readonly'>, changed.id, box);
    const after = undone(changed, here?.backup, head);
    if (changed.before === undefined && after !== undefined) {
      kept.push(after.garments[0]?.name ?? '');
      staying.add(changed.id);
    }
    if (after === here?.backup) continue;
    if (after === undefined) await removeGarment(tx, changed.id, true);
    else {
      const old = await tx.objectStore('places').index('garment').getAll(changed.id);
      const empty = { backup: head, photos: [], mark: '' };
      await writeDeed(tx, { id: changed.id, here: here ?? empty, after }, old);
    }
  }
  await photosBack(tx, photos, staying);
  await settingsBack(tx, settings);
  await tx.objectStore('settings').delete(WAY_BACK);
  return { kept, garments: await tx.objectStore('garments').count() };
}

const emptyBackup = { garments: [], plans: [], entries: [], settings: {}, photos: [] };

/** Those of a garment that stays, stay; those of one that is not there do not come. */
async function photosBack(tx: Write, { came, went }: WayBack['photos'], staying: ReadonlySet<string>) {
  const store = tx.objectStore('photos');
  const garments = new Set(await tx.objectStore('garments').getAllKeys());
  for (const id of came) {
    const photo = await store.get(id);
    if (photo && !staying.has(photo.garment)) await store.delete(id);
  }
  await each(
    went.filter(({ garment }) => garments.has(garment)),
    (photo) => store.put(photo),
  );
}

/** What was set since stays. */
async function settingsBack(tx: Write, settings: readonly SettingChanged[]): Promise<void> {
  const store = tx.objectStore('settings');
  for (const { name, before, after } of settings) {
    const now = await store.get(name);
    if (stableJson(now) !== stableJson(after)) continue;
    if (before === undefined) await store.delete(name);
    else await store.put(before, name);
  }
}

/** She has a backup of what is there now, or wants it to stay so. */
export async function forgetWayBack(box: Box): Promise<Result<void>> {
  const done = await box.door.write(['settings'], (tx) => tx.objectStore('settings').delete(WAY_BACK));
  if (done.ok) box.tell({ kind: 'settings' });
  return done;
}

/** It is no longer offered of itself, and stays to be had where backups are. */
export async function hideWayBack(box: Box): Promise<Result<void>> {
  const done = await box.door.write(['settings'], async (tx) => {
    const store = tx.objectStore('settings');
    const wayBack = (await store.get(WAY_BACK)) as WayBack | undefined;
    if (wayBack) await store.put({ ...wayBack, hidden: true }, WAY_BACK);
  });
  if (done.ok) box.tell({ kind: 'settings' });
  return done;
}
