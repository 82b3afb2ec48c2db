import { type Fault, fault } from '../../knit/fault.ts';
import { BACKUP_ENDING } from '../../store/backup/file-type.ts';
import { saveFile } from '../device/hand-over.ts';
import { store } from '../store.ts';
import { makeBackup } from './backup.ts';
import { keptFileLate, keptNews } from './kept-file-late.ts';

/** How a backup left the app; undefined when she thought better of it. */
export type HandedOver = 'shared' | 'saved' | 'downloaded' | undefined;

interface Pickers {
  showSaveFilePicker?: (options: object) => Promise<FileSystemFileHandle>;
  showOpenFilePicker?: (options: object) => Promise<readonly FileSystemFileHandle[]>;
}

const JSON_TYPE = 'application/json';

const picker = () => (window as Pickers).showSaveFilePicker?.bind(window);

const pickerOptions = (name: string) => ({
  suggestedName: name,
  types: [{ description: 'Ridgeline', accept: { [JSON_TYPE]: ['.json'] } }],
});

const changedHerMind = (error: unknown): boolean =>
  error instanceof DOMException && error.name === 'AbortError';

/** Hands a file to the platform: its save dialog, else its share sheet, else a download. */
export async function handOver(name: string, text: string): Promise<HandedOver> {
  const choose = picker();
  if (choose) {
    try {
      await write(await choose(pickerOptions(name)), text);
      return 'saved';
    } catch (error) {
      if (changedHerMind(error)) return undefined;
    }
  }
  const file = new File([text], name, { type: JSON_TYPE });
  if (navigator.canShare?.({ files: [file] })) {
    try {
      await navigator.share({ files: [file], title: name });
      return 'shared';
    } catch (error) {
      if (changedHerMind(error)) return undefined;
    }
  }
  saveFile(name, text, JSON_TYPE);
  return 'downloaded';
}

async function write(handle: FileSystemFileHandle, text: string): Promise<void> {
  const stream = await handle.createWritable();
  await stream.write(text);
  await stream.close();
}

/** Name of the setting that holds the file kept up to date; it stays on this device. */
const KEPT_FILE = 'backup file';

export const canKeepUp = (): boolean => picker() !== undefined;

export async function keptFile(): Promise<FileSystemFileHandle | undefined> {
  const settings = await (await store()).settings();
  const handle = settings.ok ? settings.value[KEPT_FILE] : undefined;
  return typeof FileSystemFileHandle === 'function' && handle instanceof FileSystemFileHandle
    ? handle
    : undefined;
}

/** Lets her choose the file that is kept up to date, a new one, and writes it at once. */
export const chooseKeptFile = (): Promise<boolean> =>
  keepUpIn(() => picker()?.(pickerOptions(`backup${BACKUP_ENDING}`)));

/** The same with the file that another device keeps up already: a dialog for saving would empty it. */
export const chooseFileThere = (): Promise<boolean> =>
  keepUpIn(async () => {
    const { types } = pickerOptions('');
    const [handle] = (await (window as Pickers).showOpenFilePicker?.({ types })) ?? [];
    await (handle as Permitted | undefined)?.requestPermission?.({ mode: 'readwrite' });
    return handle;
  });

async function keepUpIn(
  choose: () => Promise<FileSystemFileHandle | undefined> | undefined,
): Promise<boolean> {
  try {
    const handle = await choose();
    if (handle === undefined) return false;
    const kept = await (await store()).setSetting(KEPT_FILE, handle);
    return kept.ok && (await keepUp());
  } catch (error) {
    if (changedHerMind(error)) return false;
    throw error;
  }
}

export const forgetKeptFile = async (): Promise<void> => {
  keptFileLate.value = undefined;
  keptNews.value = undefined;
  await (await store()).setSetting(KEPT_FILE, undefined);
};

interface Permitted {
  queryPermission?: (how: { mode: 'readwrite' }) => Promise<PermissionState>;
  requestPermission?: (how: { mode: 'readwrite' }) => Promise<PermissionState>;
}

/**
 * Writes the kept file anew, where there is one, with what another device has put into it. Where it cannot be, it stays
 * as it was, and that is said.
 */
export async function keepUp(): Promise<boolean> {
  const handle = await keptFile();
  if (!handle) return false;
  keptFileLate.value = await writeKept(handle);
  return keptFileLate.value === undefined;
}

/** The same after the browser was asked to allow it, which it only does where she has pressed something. */
export async function keepUpAgain(): Promise<void> {
  await ((await keptFile()) as Permitted | undefined)?.requestPermission?.({ mode: 'readwrite' });
  await keepUp();
}

const mayUse = async (handle: FileSystemFileHandle): Promise<boolean> =>
  ((await (handle as Permitted).queryPermission?.({ mode: 'readwrite' })) ?? 'granted') === 'granted';

async function writeKept(handle: FileSystemFileHandle): Promise<Fault | undefined> {
  if (!(await mayUse(handle))) return fault('backup-file-refused');
  const { keptIsOurs, uniteKept } = await import('./unite-kept.ts');
  const unread = await uniteKept(handle);
  if (unread !== undefined) return unread;
  const made = await makeBackup();
  if (!made.ok) return made.faults[0];
  // the older file may have what this one would not
  const [missing] = made.value.without;
  if (missing !== undefined) return missing;
  try {
    await write(handle, made.value.text);
    await keptIsOurs(handle);
  } catch {
    return fault('backup-file-gone');
  }
  made.value.kept();
  return undefined;
}

/**
 * Writes the kept file when she puts the phone away with something new knitted; takes in what another device has put
 * into it when she takes it up again, and now.
 */
export function keepUpWhenHidden(): void {
  document.addEventListener('visibilitychange', () => {
    if (document.visibilityState === 'hidden') void keepUpIfNew();
    else void lookIntoKept();
  });
  void lookIntoKept();
}

/** What is in the kept file comes in; where the browser wants to be asked first, she is. */
async function lookIntoKept(): Promise<void> {
  const handle = await keptFile();
  if (handle === undefined) return;
  if (await mayUse(handle)) {
    const unread = await (await import('./unite-kept.ts')).uniteKept(handle);
    if (unread !== undefined) keptFileLate.value = unread;
  } else keptNews.value ??= { name: handle.name };
}

/** She lets the file be read: what is in it comes in, and it is written with both. */
export async function lookNow(): Promise<void> {
  keptNews.value = undefined;
  await keepUpAgain();
}

async function keepUpIfNew(): Promise<void> {
  const { entries, backupEntries } = (await store()).sinceBackup();
  if (entries > backupEntries) await keepUp();
}
