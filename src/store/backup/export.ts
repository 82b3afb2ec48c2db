import { ok, type Result, refuse } from '../../knit/fault.ts';
import type { Box } from '../store.ts';
import { headOf, readBox, type WholeBox } from './contents.ts';
import type { Backup } from './document.ts';
import { photoToText } from './photo-text.ts';
import { readBackup } from './read.ts';
import { byId } from './stable.ts';

/** Everything in the box, photos included. */
export async function exportAll(box: Box): Promise<Result<Backup>> {
  const read = await readBox(box);
  return read.ok ? ok(await toBackup(read.value)) : read;
}

/** A box as it was read, as one document. */
export async function toBackup({ garments, settings, device, readAt }: WholeBox): Promise<Backup> {
  const all = [...garments.values()];
  const photos = byId(all.flatMap((one) => one.photos));
  return {
    ...headOf(device, readAt),
    garments: byId(all.flatMap(({ backup }) => backup.garments)),
    plans: byId(all.flatMap(({ backup }) => backup.plans)),
    entries: byId(all.flatMap(({ backup }) => backup.entries)),
    settings,
    photos: await Promise.all(photos.map(photoToText)),
  };
}
export interface BackupFile {
  readonly name: string;
  readonly text: string;
  readonly garments: number;
  readonly entries: number;
  /** tell the box that the file was put away: dates the backup */
  readonly kept: () => void;
}

/** The backup as a file; it is read back whole before it is called one. */
export async function backupFile(box: Box): Promise<Result<BackupFile>> {
  const made = await exportAll(box);
  if (!made.ok) return made;
  const text = JSON.stringify(made.value);
  const back = readBackup(text, 'this box');
  if (!back.ok) return refuse(...back.faults);
  const { garments, entries } = back.value;
  const day = new Date(made.value.madeAt).toISOString().slice(0, 10);
  return ok({
    name: `ridgeline-${day}.json`,
    text,
    garments: garments.length,
    entries: entries.length,
    kept: () => box.sentinel.change((was) => ({ backupAt: made.value.madeAt, backupEntries: was.entries })),
  });
}
