import { type Fault, fault } from '../../knit/fault.ts';
import { BACKUP_ENDING } from '../../store/backup/file-type.ts';
import { saveFile } from '../device/hand-over.ts';
import { store } from '../store.ts';
import { makeBackup } from './backup.ts';
import { keptFileLate } from './kept-file-late.ts';

/** How a backup left the app; undefined when she thought better of it. */
export type HandedOver = 'shared' | 'saved' | 'downloaded' | undefined;

interface SavePicker {
  showSaveFilePicker?: (options: object) => Promise<FileSystemFileHandle>;
}

const JSON_TYPE = 'application/json';

const picker = () => (window as SavePicker).showSaveFilePicker?.bind(window);

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

/** Lets her choose the file that is kept up to date, and writes it at once. */
export async function chooseKeptFile(): Promise<boolean> {
  const choose = picker();
  if (!choose) return false;
  try {
    const handle = await choose(pickerOptions(`backup${BACKUP_ENDING}`));
    const kept = await (await store()).setSetting(KEPT_FILE, handle);
    return kept.ok && (await keepUp());
  } catch (error) {
    if (changedHerMind(error)) return false;
    throw error;
  }
}

export const forgetKeptFile = async (): Promise<void> => {
  keptFileLate.value = undefined;
  await (await store()).setSetting(KEPT_FILE, undefined);
};

interface Permitted {
  queryPermission?: (how: { mode: 'readwrite' }) => Promise<PermissionState>;
  requestPermission?: (how: { mode: 'readwrite' }) => Promise<PermissionState>;
}

/** Writes the kept file anew, where there is one. Where it cannot be, it stays as it was, and that is said. */
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

async function writeKept(handle: FileSystemFileHandle): Promise<Fault | undefined> {
  const allowed = await (handle as Permitted).queryPermission?.({ mode: 'readwrite' });
  if (allowed !== undefined && allowed !== 'granted') return fault('backup-file-refused');
  const made = await makeBackup();
  if (!made.ok) return made.faults[0];
  // the older file may have what this one would not
  const [missing] = made.value.without;
  if (missing !== undefined) return missing;
  try {
    await write(handle, made.value.text);
  } catch {
    return fault('backup-file-gone');
  }
  made.value.kept();
  return undefined;
}

/** Writes the kept file when she puts the phone away with something new knitted. */
export function keepUpWhenHidden(): void {
  document.addEventListener('visibilitychange', () => {
    if (document.visibilityState === 'hidden') void keepUpIfNew();
  });
}

async function keepUpIfNew(): Promise<void> {
  const { entries, backupEntries } = (await store()).sinceBackup();
  if (entries > backupEntries) await keepUp();
}
