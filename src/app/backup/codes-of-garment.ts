import { ok, type Result } from '../../knit/fault.ts';
import type { GarmentId } from '../../progress/log.ts';
import { codeRun } from '../../store/share/code-run.ts';
import { garmentBackup } from './one-garment.ts';

/** A garment with its place but without its photos, as codes for a camera; undefined where it would take too many. */
export async function codesOfGarment(id: GarmentId): Promise<Result<readonly string[] | undefined>> {
  const made = await garmentBackup(id);
  return made.ok ? ok(await codeRun(JSON.stringify({ ...made.value, photos: [] }))) : made;
}
