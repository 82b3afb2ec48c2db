import { locked } from '../state.ts';
import { store } from '../store.ts';

/** That the row in hand was locked and not opened since: of this device alone (src/store/backup/own-settings.ts). */
const LOCKED = 'locked';

/**
 * Locks the row that comes again after it was put away locked: a pocket presses Back too, and a phone ends what it has no
 * room for. Not where another screen has come meanwhile: only the knitting screen has the key to it.
 */
export async function lockAsLeft(isShown: () => boolean): Promise<void> {
  const known = await (await store()).settings();
  if (known.ok && known.value[LOCKED] === true && isShown()) locked.value = true;
}

/** Resolves when it is on disk, or cannot be. Not in the browser's small store: that holds back for seconds what it is given. */
export async function keepLocked(on: boolean): Promise<void> {
  await (await store()).setSetting(LOCKED, on);
}
