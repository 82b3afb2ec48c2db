import * as v from 'valibot';
import { fault, type Result, refuse } from '../../knit/fault.ts';
import { isOwnSetting } from '../backup/own-settings.ts';
import { plainJson, settingName } from '../shapes/record-shapes.ts';
import type { Box } from './box.ts';

/** Keeps a setting. What no backup could carry is refused at once; what stays on this device may be of any kind. */
export async function setSetting({ door, tell }: Box, name: string, value: unknown): Promise<Result<void>> {
  if (
    !isOwnSetting(name) &&
    value !== undefined &&
    !(v.is(settingName, name) && v.is(plainJson, asJson(value)))
  )
    return refuse(fault('not-storable', { detailText: name }));
  const written = await door.write(['settings'], async (tx) => {
    await tx.objectStore('settings').put(value, name);
  });
  if (written.ok) tell({ kind: 'settings' });
  return written;
}

/** As JSON would have it: what is undefined is not there. */
const asJson = (value: unknown): unknown => JSON.parse(JSON.stringify(value));
