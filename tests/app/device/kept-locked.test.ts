import { afterEach, describe, expect, it, vi } from 'vitest';
import { keepLocked, lockAsLeft } from '../../../src/app/device/kept-locked.ts';
import { locked } from '../../../src/app/state.ts';
import { memoryKeep } from '../../store/beside/memory-keep.ts';

describe('a page that was put away', () => {
  afterEach(() => {
    vi.unstubAllGlobals();
    locked.value = false;
  });
  const comesAgain = () => {
    locked.value = false;
    lockAsLeft();
    return locked.value;
  };

  it('locked is locked when it comes again, and open once it was unlocked', () => {
    vi.stubGlobal('localStorage', memoryKeep());
    expect(comesAgain()).toBe(false);
    keepLocked(true);
    expect(comesAgain()).toBe(true);
    keepLocked(false);
    expect(comesAgain()).toBe(false);
  });

  it('stays as it is where what is kept is no answer', () => {
    const keep = memoryKeep();
    vi.stubGlobal('localStorage', keep);
    keepLocked(true);
    const key = keep.key(0) ?? '';
    for (const text of ['false', '1', '"true"', '{']) {
      keep.setItem(key, text);
      expect(comesAgain(), text).toBe(false);
    }
  });
});
