import { type Fault, fault } from '../../knit/fault.ts';
import { openFile, takeIn } from './backup.ts';
import { keptNews } from './kept-file-late.ts';
import { leaveItSo } from './way-back.ts';

/** By when and how large it is a file is known again; undefined until it was read or written here. */
let known: string | undefined;

const markOf = ({ lastModified, size }: File): string => `${lastModified}/${size}`;

/** What it is now is what this device has put into it. */
export async function keptIsOurs(handle: FileSystemFileHandle): Promise<void> {
  known = markOf(await handle.getFile());
}

/**
 * Unites what another device has put into the kept file with what is here; nothing of either is replaced, and it can be
 * taken back. Gives why it could not be: then the file is not written over either.
 */
export async function uniteKept(handle: FileSystemFileHandle): Promise<Fault | undefined> {
  const file = await handle.getFile().catch(() => undefined);
  if (file === undefined) return fault('backup-file-gone');
  // one that was just made has nothing in it
  if (file.size === 0 || markOf(file) === known) return undefined;
  const read = await openFile(file);
  if (!read?.ok) return read?.faults[0];
  const { backup, merge } = read.value;
  if (merge.garments.length > 0 || merge.photos > 0) {
    const taken = await takeIn(backup, 'merge');
    if (!taken.ok) return taken.faults[0];
    await leaveItSo();
    keptNews.value = { name: handle.name, took: merge };
  }
  known = markOf(file);
  return undefined;
}
