import { fault, ok, type Result, refuse } from '../../knit/fault.ts';
import { BACKUP_LIMITS, type Backup, type ImportMode } from '../../store/backup/document.ts';
import { type BackupFile, backupFile } from '../../store/backup/export.ts';
import { importBackup } from '../../store/backup/import.ts';
import { type Preview, previewImport } from '../../store/backup/preview.ts';
import { BEGINNING, oddBeginning } from '../../store/backup/read.ts';
import type { Sentinel } from '../../store/beside/sentinel.ts';
import { ask } from '../off-thread/ask.ts';
import type { BackupPart } from '../off-thread/tasks.ts';
import { store } from '../store.ts';

export type { Preview } from '../../store/backup/preview.ts';

/** A file that was read and found whole; nothing of it is in the box yet. */
export interface OpenedFile {
  readonly backup: Backup;
  readonly merge: Preview;
  /** none of a file that is one garment: it is never put in the stead of all that is here */
  readonly replace?: Preview;
}

/** How long ago the last backup was made and how much was knitted since. */
export const backupState = async (): Promise<Sentinel> => (await store()).sinceBackup();

export const makeBackup = async (): Promise<Result<BackupFile>> => backupFile((await store()).box);

/** Bytes; larger files are refused before they are read: a sign has one byte, few have more. */
const LARGEST_FILE = 1.25 * BACKUP_LIMITS.size;

/**
 * Reads a chosen file, beside the page, and says what either way of taking it in would change. `reading` is given the
 * way to stop that; undefined where it was stopped.
 */
export async function openFile(
  file: Blob,
  reading: (stop: () => void) => void = () => undefined,
): Promise<Result<OpenedFile> | undefined> {
  if (file.size > LARGEST_FILE) {
    const inMillions = Math.round(file.size / 1e6);
    return refuse(fault('backup-too-large', { sizeMillions: inMillions, mostMillions: LARGEST_FILE / 1e6 }));
  }
  const odd = oddBeginning(await file.slice(0, BEGINNING).text());
  if (odd !== undefined) return refuse(odd);
  const asked = ask('backup', file);
  reading(asked.stop);
  const parts = await asked.parts;
  if (!parts?.ok) return parts;
  const read = joined(parts.value);
  if (!read.ok) return read;
  const { box } = await store();
  const merge = await previewImport(box, read.value, 'merge');
  if (!merge.ok) return merge;
  if (read.value.part !== undefined) return ok({ backup: read.value, merge: merge.value });
  const replace = await previewImport(box, read.value, 'replace');
  return replace.ok ? ok({ backup: read.value, merge: merge.value, replace: replace.value }) : replace;
}

/** The parts of a backup as one; what was refused where the file was. */
function joined(parts: readonly Result<BackupPart>[]): Result<Backup> {
  const backups: BackupPart[] = [];
  for (const part of parts) {
    if (!part.ok) return part;
    backups.push(part.value);
  }
  const [head] = backups;
  if (head === undefined) return refuse(fault('backup-not-json'));
  return ok({
    ...head,
    garments: backups.flatMap(({ garments }) => garments),
    plans: backups.flatMap(({ plans }) => plans),
    entries: backups.flatMap(({ entries }) => entries),
    photos: backups.flatMap(({ photos }) => photos),
  });
}

/** Takes a file in, whole or not at all. */
export const takeIn = async (backup: Backup, mode: ImportMode): Promise<Result<unknown>> =>
  importBackup((await store()).box, backup, mode);
