import { afterEach, describe, expect, it, vi } from 'vitest';
import { keepUpWhenHidden } from '../../../src/app/backup/backup-file.ts';
import { forgetStore, giveStore } from '../../../src/app/store.ts';
import type { Store } from '../../../src/store/store.ts';

/** The app hears that the page was hidden or shown; what it reads of the box then. */
async function turned(visibilityState: string, entries: number, backupEntries: number): Promise<number> {
  const page = Object.assign(new EventTarget(), { visibilityState });
  vi.stubGlobal('document', page);
  let asked = 0;
  forgetStore();
  giveStore({
    sinceBackup: () => ({ garments: 1, entries, backupAt: 0, backupEntries }),
    settings: async () => {
      asked += 1;
      return { ok: true, value: {} };
    },
  } as unknown as Store);
  keepUpWhenHidden();
  page.dispatchEvent(new Event('visibilitychange'));
  await vi.waitFor(() => undefined);
  for (let i = 0; i < 10; i += 1) await Promise.resolve();
  return asked;
}

afterEach(() => {
  forgetStore();
  vi.unstubAllGlobals();
});

describe('the file that is kept up to date', () => {
  it('is looked for at the start, when she takes the phone up, and when she puts it away with something new knitted', async () => {
    const atStart = 1;
    expect(await turned('hidden', 5, 4)).toBe(atStart + 1);
    expect(await turned('visible', 5, 4)).toBe(atStart + 1);
    expect(await turned('hidden', 5, 5)).toBe(atStart);
  });
});
