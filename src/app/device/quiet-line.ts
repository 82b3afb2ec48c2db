import { signal } from '@preact/signals';
import { backupState } from '../backup/backup.ts';
import { keptFile } from '../backup/backup-file.ts';
import { isPutOff, wantsBackup } from '../backup/reminder.ts';
import { readOr, store } from '../store.ts';
import { offer, whereOpened } from './installing.ts';
import { isKept } from './room.ts';

/**
 * The one thing that is said by the way where she is not knitting. `backup`: much is in no file; `install`: the browser
 * lets the app be put on the home screen; `home first`: on an iPhone, before anything is made; `from browser`: an empty
 * basket on the home screen, whose garments may be in the browser's.
 */
export type QuietLine = 'backup' | 'install' | 'home first' | 'from browser';

export const quietLine = signal<QuietLine | undefined>(undefined);

/** Rows after which she knows what it is that she would put on her home screen; our own choice, no published source. */
const KNOWS_IT = 20;

const putOffName = (line: QuietLine) => `put off ${line}`;

/** Finds what there is to say, one thing at most. */
export async function findQuietLine(isEmpty: boolean): Promise<void> {
  const where = whereOpened();
  const known = readOr(await (await store()).settings()) ?? {};
  const putOff = (line: QuietLine): number => {
    const at = known[putOffName(line)];
    return typeof at === 'number' ? at : 0;
  };
  const now = Date.now();
  const { entries, backupEntries } = await backupState();
  const asksBackup = wantsBackup({
    kept: await isKept(),
    unsaved: entries - backupEntries,
    hasKeptFile: (await keptFile()) !== undefined,
    putOff: putOff('backup'),
    now,
  });
  const found = (): QuietLine | undefined => {
    if (isEmpty && where === 'safari') return 'home first';
    if (isEmpty && where === 'home') return 'from browser';
    if (asksBackup) return 'backup';
    const mayInstall = where === 'browser' && offer.value !== undefined && entries >= KNOWS_IT;
    return mayInstall ? 'install' : undefined;
  };
  const line = found();
  quietLine.value = line !== undefined && isPutOff(putOff(line), now) ? undefined : line;
}

/** 'Not now': gone for some weeks. */
export async function putOffQuietLine(): Promise<void> {
  const line = quietLine.value;
  if (line === undefined) return;
  quietLine.value = undefined;
  await (await store()).setSetting(putOffName(line), Date.now());
}
