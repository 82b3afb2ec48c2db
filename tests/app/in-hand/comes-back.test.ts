import { expect, it, vi } from 'vitest';
import { openMake, rereadMake } from '../../../src/app/in-hand/open-make.ts';
import { inHand } from '../../../src/app/state.ts';
import { exportAll } from '../../../src/store/backup/export.ts';
import { importBackup } from '../../../src/store/backup/import.ts';
import { given } from '../../store/scenario.ts';
import { openApp } from '../open-app.ts';

it('a make that comes back with a backup is shown by the screen that said that there was none', async () => {
  const { store, back } = await openApp();
  const backup = given(await exportAll(store.box));
  await openMake(back);
  given(await store.deleteGarment('sample'));
  rereadMake();
  await vi.waitFor(() => expect(inHand.value).toBeNull());
  given(await importBackup(store.box, backup, 'merge'));
  rereadMake();
  await vi.waitFor(() => expect(inHand.value?.make).toBe(back));
});
