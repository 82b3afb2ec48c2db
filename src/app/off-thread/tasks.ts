import { ok, type Result } from '../../knit/fault.ts';
import {
  LONGEST_TEXT,
  type ReadOptions,
  type ReadPattern,
  readPattern,
} from '../../knit/pattern/read-pattern.ts';
import { nearestReadings, type Reading } from '../../knit/pattern/readings.ts';
import { type Restretch, restretch } from '../../knit/pattern/stretch.ts';
import type { PlannedPart } from '../../knit/piece/planned.ts';
import { byGarment } from '../../store/backup/by-garment.ts';
import type { Backup } from '../../store/backup/document.ts';
import { readBackup } from '../../store/backup/read.ts';
import type { GarmentRecord, PlanRecord } from '../../store/records.ts';
import { linkToGarment, type PassedOn } from '../../store/share/link.ts';
import { planRecords } from '../garments/plan-records.ts';

/**
 * What can take longer than a page may be deaf: a text, a link or a file of others, and the plans of a garment. Each is
 * pure, and answers in parts that are copied as they are from the worker to the page, each in a task of its own there.
 */
export const tasks = {
  pattern: (text: string, options: ReadOptions): readonly ReadText[] => [readText(text, options)],
  readings: (text: string, line: number, options: ReadOptions): readonly (readonly Reading[])[] => [
    nearestReadings(text, line, options),
  ],
  link: (text: string): AsyncIterable<Result<PassedOn>> => garmentIn(text),
  plans: (garment: GarmentRecord): readonly Result<PlanRecord[]>[] => [planRecords(garment)],
  stretch: (wish: Restretch): readonly Result<readonly PlannedPart[]>[] => [restretch(wish)],
  backup: (file: Blob): AsyncIterable<Result<BackupPart>> => backupIn(file),
} as const;

export type TaskName = keyof typeof tasks;
export type ArgsOf<K extends TaskName> = Parameters<(typeof tasks)[K]>;
export type PartOf<K extends TaskName> =
  ReturnType<(typeof tasks)[K]> extends AsyncIterable<infer P> | Iterable<infer P> ? P : never;

/** A backup with some of its garments, or photos, or with its settings. */
export type BackupPart = Backup;

/** A pattern as it was understood. */
export interface ReadText extends ReadPattern {
  /** characters behind those that are read */
  readonly unreadCharacters: number;
}

/** Every plan made now, since what is made when it is looked at does not pass over. */
function readText(text: string, options: ReadOptions): ReadText {
  const read = readPattern(text, options);
  const pieces = read.pieces.map(({ recipe, plan, lines }) => ({ recipe, plan, lines }));
  return { ...read, pieces, unreadCharacters: Math.max(0, text.length - LONGEST_TEXT) };
}

/** The garment of a link. */
async function* garmentIn(text: string): AsyncGenerator<Result<PassedOn>> {
  yield await linkToGarment(text);
}

/** A file that was found whole, garment by garment; a refusal where it was not. */
async function* backupIn(file: Blob): AsyncGenerator<Result<BackupPart>> {
  const read = readBackup(await file.text());
  if (!read.ok) return yield read;
  const { value } = read;
  const head = { ...value, garments: [], plans: [], entries: [], photos: [] };
  yield ok(head);
  for (const one of byGarment(value).values()) yield ok(one);
  for (const photo of value.photos) yield ok({ ...head, settings: {}, photos: [photo] });
}
