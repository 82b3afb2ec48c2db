import { type Fault, fault, ok, type Result, refuse } from '../../knit/fault.ts';
import { nextTask } from '../../pace/next-task.ts';
import type { GarmentId } from '../../progress/log.ts';
import type { Box } from '../box/box.ts';
import { garmentStores, headOf, type OfGarment, readBox, readGarment, type WholeBox } from './contents.ts';
import { BACKUP_LIMITS, type Backup } from './document.ts';
import { BACKUP_ENDING } from './file-type.ts';
import { photoToText } from './photo-text.ts';
import { readBackup } from './read.ts';
import { byId } from './stable.ts';

/** Everything in the box, photos included. @instrument of tests that hold boxes against each other */
export async function exportAll(box: Box): Promise<Result<Backup>> {
  const read = await readBox(box);
  return read.ok ? ok(await toBackup(read.value)) : read;
}

/** A box as it was read, as one document. */
export async function toBackup({ garments, settings, device, readAt }: WholeBox): Promise<Backup> {
  const all = [...garments.values()];
  const photos: Backup['photos'] = [];
  for (const photo of byId(all.flatMap((one) => one.photos))) photos.push(await photoToText(photo));
  return {
    ...headOf(device, readAt),
    garments: byId(all.flatMap(({ backup }) => backup.garments)),
    plans: byId(all.flatMap(({ backup }) => backup.plans)),
    entries: byId(all.flatMap(({ backup }) => backup.entries)),
    settings,
    photos,
  };
}

/**
 * One garment with its log, its plans and its photos, on its way to another device. What is said of it there is as of a
 * file from elsewhere. Faults: those of the store, 'no-such-garment', and 'backup-damaged' where it could not be read back.
 */
export async function exportGarment(box: Box, id: GarmentId): Promise<Result<Backup>> {
  const read = await box.door.read(garmentStores, (tx) => readGarment(tx, id, box), 'whole box');
  if (!read.ok) return read;
  if (read.value === undefined) return refuse(fault('no-such-garment'));
  const backup: Backup = { ...read.value.backup, part: 'garment', photos: await texts(read.value) };
  const back = readBackup(JSON.stringify(backup), 'this box');
  return back.ok ? ok(backup) : back;
}

export interface BackupFile {
  readonly name: string;
  readonly text: string;
  readonly garments: number;
  readonly entries: number;
  /** what could not be put into it, one fault for each */
  readonly without: readonly Fault[];
  /** tell the box that the file was put away: dates the backup */
  readonly kept: () => void;
}

/**
 * The backup as a file. It is made garment by garment, each read back whole before it is taken in and each in a task of
 * its own; what cannot be read back is left out and told, so that nothing keeps all the rest from being saved.
 * Faults: those of the store, and 'backup-too-full' above `most` characters.
 */
export async function backupFile(box: Box, most: number = BACKUP_LIMITS.size): Promise<Result<BackupFile>> {
  const read = await readBox(box);
  if (!read.ok) return read;
  const without: Fault[] = [];
  const whole = await onlyWhole(read.value, (what, path) =>
    without.push(fault('backup-without', { whatText: what, pathText: path })),
  );
  const backup = await toBackup(whole);
  const pieces: string[] = [];
  for await (const piece of piecesOf(backup)) pieces.push(piece);
  const size = pieces.reduce((sum, piece) => sum + piece.length, 0);
  if (size > most) return refuse(tooFull(size, most));
  const { madeAt } = backup;
  return ok({
    name: `backup-${new Date(madeAt).toISOString().slice(0, 10)}${BACKUP_ENDING}`,
    text: pieces.join(''),
    garments: backup.garments.length,
    entries: backup.entries.length,
    without,
    kept: () => box.sentinel.change((was) => ({ backupAt: madeAt, backupEntries: was.entries })),
  });
}

const tooFull = (size: number, most: number): Fault =>
  fault('backup-too-full', {
    sizeMillions: Math.ceil(size / 1e6),
    mostMillions: Math.floor(most / 1e6),
  });

/** The box without what a file would be refused for; each such thing is told with its place. */
async function onlyWhole(box: WholeBox, leaveOut: (what: string, path: string) => void): Promise<WholeBox> {
  const garments = new Map<GarmentId, OfGarment>();
  for (const [id, one] of box.garments) {
    await nextTask();
    const wrong = troubleOf({ ...one.backup, photos: await texts(one) });
    if (wrong === undefined) garments.set(id, one);
    else leaveOut(one.backup.garments[0]?.name || id, wrong);
  }
  const settings: [string, unknown][] = [];
  for (const setting of Object.entries(box.settings)) {
    const alone = { ...headOf(box.device, box.readAt), ...nothing, settings: Object.fromEntries([setting]) };
    const wrong = troubleOf(alone);
    if (wrong === undefined) settings.push(setting);
    else leaveOut(setting[0], 'settings');
  }
  return { ...box, garments, settings: Object.fromEntries(settings) };
}

const nothing = { garments: [], plans: [], entries: [], photos: [] } as const;

const texts = ({ photos }: OfGarment) => Promise.all(photos.map(photoToText));

/** The place of what would be refused if this were a file. */
function troubleOf(backup: Backup | object): string | undefined {
  const back = readBackup(JSON.stringify(backup), 'this box');
  if (back.ok) return undefined;
  const [at = ''] = Object.values(back.faults[0]?.figures ?? {});
  return String(at);
}

/** About so many characters are made in one task. */
const AT_ONCE = 300_000;

/** The document as text, in pieces between which the page may do something else. */
async function* piecesOf(backup: Backup): AsyncGenerator<string> {
  const { garments, plans, entries, photos, ...rest } = backup;
  yield JSON.stringify(rest).slice(0, -1);
  for (const [name, list] of Object.entries({ garments, plans, entries, photos })) {
    yield `,"${name}":[`;
    let piece = '';
    for (const [i, item] of list.entries()) {
      piece += `${i === 0 ? '' : ','}${JSON.stringify(item)}`;
      if (piece.length < AT_ONCE) continue;
      yield piece;
      piece = '';
      await nextTask();
    }
    yield `${piece}]`;
  }
  yield '}';
}
