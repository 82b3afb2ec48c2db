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
 * basket on the home screen, whose garments may be in the browser's; `news`: a newer version was taken that brings some.
 */
export type QuietLine = 'backup' | 'install' | 'home first' | 'from browser' | 'news';

export const quietLine = signal<QuietLine | undefined>(undefined);

/** Rows after which she knows what it is that she would put on her home screen; our own choice, no published source. */
const KNOWS_IT = 20;

/** By what `quiet.newsHelp` goes; a version that only mends has no news of its own. */
export const NEWS = 'news of 0.1';

/** The news that this device knows: what a version brings that she began with is not new to her. */
const KNOWN_NEWS = 'known news';

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
  const knownNews = known[KNOWN_NEWS];
  if (knownNews === undefined) await knowNews();
  const hasNews = knownNews !== undefined && knownNews !== NEWS;
  const found = (): QuietLine | undefined => {
    if (isEmpty && where === 'safari') return 'home first';
    if (isEmpty && where === 'home') return 'from browser';
    if (asksBackup) return 'backup';
    if (hasNews) return 'news';
    const mayInstall = where === 'browser' && offer.value !== undefined && entries >= KNOWS_IT;
    return mayInstall ? 'install' : undefined;
  };
  const line = found();
  quietLine.value = line !== undefined && isPutOff(putOff(line), now) ? undefined : line;
}

const knowNews = async (): Promise<unknown> => (await store()).setSetting(KNOWN_NEWS, NEWS);

/** 'Not now': gone for some weeks. News are gone for good. */
export async function putOffQuietLine(): Promise<void> {
  const line = quietLine.value;
  if (line === undefined) return;
  quietLine.value = undefined;
  if (line === 'news') await knowNews();
  else await (await store()).setSetting(putOffName(line), Date.now());
}
