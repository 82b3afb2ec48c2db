import { afterEach, describe, expect, it } from 'vitest';
import { keepLocked, lockAsLeft } from '../../../src/app/device/kept-locked.ts';
import { locked } from '../../../src/app/state.ts';
import { openEmptyApp } from '../open-app.ts';

describe('a page that was put away', () => {
  afterEach(() => {
    locked.value = false;
  });
  const comesAgain = async (isShown = true) => {
    locked.value = false;
    await lockAsLeft(() => isShown);
    return locked.value;
  };

  it('locked is locked when it comes again, and open once it was unlocked', async () => {
    await openEmptyApp();
    expect(await comesAgain()).toBe(false);
    await keepLocked(true);
    expect(await comesAgain()).toBe(true);
    await keepLocked(false);
    expect(await comesAgain()).toBe(false);
  });

  it('does not lock another screen that has come meanwhile, which could not be opened again', async () => {
    await openEmptyApp();
    await keepLocked(true);
    expect(await comesAgain(false)).toBe(false);
  });

  it('stays as it is where what is kept is no answer', async () => {
    const store = await openEmptyApp();
    for (const odd of [1, 'true', null, {}]) {
      await store.setSetting('locked', odd);
      expect(await comesAgain(), JSON.stringify(odd)).toBe(false);
    }
  });
});
