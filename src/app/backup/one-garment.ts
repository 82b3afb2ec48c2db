import { ok, type Result } from '../../knit/fault.ts';
import type { GarmentId } from '../../progress/log.ts';
import type { Backup } from '../../store/backup/document.ts';
import { exportGarment } from '../../store/backup/export.ts';
import { BACKUP_ENDING } from '../../store/backup/file-type.ts';
import type { GarmentRecord } from '../../store/records.ts';
import { safeName } from '../device/hand-over.ts';
import { store } from '../store.ts';

/** A garment with its log and its places, on its way to her other device, where it is united with what is there. */
export const garmentBackup = async (id: GarmentId): Promise<Result<Backup>> =>
  exportGarment((await store()).box, id);

/** The same as a file. */
export async function garmentFile({
  id,
  name,
}: Pick<GarmentRecord, 'id' | 'name'>): Promise<Result<{ readonly name: string; readonly text: string }>> {
  const made = await garmentBackup(id);
  return made.ok ? ok({ name: safeName(`${name}${BACKUP_ENDING}`), text: JSON.stringify(made.value) }) : made;
}
