import * as v from 'valibot';
import {
  garmentRecord,
  logEntry,
  photoText,
  plainJson,
  planRecord,
  settingName,
} from '../shapes/record-shapes.ts';

export const BACKUP_FORMAT = 'ridgeline-backup';
export const BACKUP_VERSION = 2;

/**
 * Limits of a backup file; an honest box of a thousand large garments lies below them. What is kept in a box is held
 * to the shapes as it comes in, so that of these only the size can be met by a box.
 */
export const BACKUP_LIMITS = {
  /** characters; browsers end at 500 million */
  size: 400_000_000,
  depth: 48,
  values: 50_000_000,
  /** of one text, characters: a photo is the longest */
  text: 12_100_000,
  garments: 5_000,
  plans: 100_000,
  entries: 2_000_000,
  photos: 5_000,
  /** stitch steps that proving all its plans may take */
  work: 2_000_000_000,
} as const;

const list = <T extends v.GenericSchema>(of: T, most: number) => v.pipe(v.array(of), v.maxLength(most));

/** Everything that is hers, as one JSON document; lists are sorted by id. The same as public/backup.schema.json. */
export const backupDocument = v.strictObject({
  format: v.literal(BACKUP_FORMAT),
  version: v.literal(BACKUP_VERSION),
  /** when it was made, ms since 1970 */
  madeAt: v.pipe(v.number(), v.finite(), v.minValue(0), v.maxValue(1e14)),
  /** the letters of the device that made it, the first ones of its log entries' ids */
  device: v.pipe(v.string(), v.maxLength(64)),
  /** it is one garment on its way to another device, not all of a box: it is united with what is there, never put in its stead */
  part: v.exactOptional(v.literal('garment')),
  garments: list(garmentRecord, BACKUP_LIMITS.garments),
  plans: list(planRecord, BACKUP_LIMITS.plans),
  entries: list(logEntry, BACKUP_LIMITS.entries),
  settings: v.record(settingName, plainJson),
  photos: list(photoText, BACKUP_LIMITS.photos),
});

export type Backup = v.InferOutput<typeof backupDocument>;

/** 'merge' unites the file with the box, 'replace' puts the file in its stead. */
export type ImportMode = 'merge' | 'replace';
