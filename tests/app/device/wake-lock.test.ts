import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { stayAwake, stirred } from '../../../src/app/device/wake-lock.ts';

const MINUTE = 60_000;

/** A phone that counts the locks it holds. */
function fakePhone() {
  const page = Object.assign(new EventTarget(), { visibilityState: 'visible' });
  let held = 0;
  const request = async () => {
    held += 1;
    const release = async () => {
      held -= 1;
    };
    return {
      addEventListener: (type: string, hear: () => void) => {
        if (type === 'release') taken = hear;
      },
      release,
    };
  };
  let taken = () => undefined as unknown;
  /** the browser takes the lock back, as it does where the page is hidden or the battery is low */
  const take = () => {
    held -= 1;
    taken();
  };
  vi.stubGlobal('document', page);
  vi.stubGlobal('navigator', { wakeLock: { request } });
  return { page, held: () => held, take };
}

describe('the screen that is kept awake', () => {
  let letGo: () => void;

  beforeEach(() => vi.useFakeTimers());
  afterEach(() => {
    letGo();
    vi.useRealTimers();
    vi.unstubAllGlobals();
  });

  it('may sleep when nothing was touched and no row came for a quarter of an hour', async () => {
    const phone = fakePhone();
    letGo = stayAwake();
    await vi.advanceTimersByTimeAsync(14 * MINUTE);
    expect(phone.held()).toBe(1);
    await vi.advanceTimersByTimeAsync(2 * MINUTE);
    expect(phone.held()).toBe(0);
  });

  it('sleeps after the quarter of an hour, not before, counted from the last touch', async () => {
    const phone = fakePhone();
    letGo = stayAwake();
    await vi.advanceTimersByTimeAsync(10 * MINUTE);
    phone.page.dispatchEvent(new Event('keydown'));
    await vi.advanceTimersByTimeAsync(15 * MINUTE - 1);
    expect(phone.held()).toBe(1);
    await vi.advanceTimersByTimeAsync(1);
    expect(phone.held()).toBe(0);
  });

  it('is awake again with the next touch where the browser took the lock back', async () => {
    const phone = fakePhone();
    letGo = stayAwake();
    await vi.advanceTimersByTimeAsync(MINUTE);
    phone.take();
    expect(phone.held()).toBe(0);
    phone.page.dispatchEvent(new Event('pointerdown'));
    await vi.advanceTimersByTimeAsync(MINUTE);
    expect(phone.held()).toBe(1);
  });

  it('listens for nothing any more once the knitting is left', () => {
    const phone = fakePhone();
    const heard = new Map<string, number>();
    const count = (name: string, by: number) => heard.set(name, (heard.get(name) ?? 0) + by);
    vi.spyOn(phone.page, 'addEventListener').mockImplementation((name) => void count(name, 1));
    vi.spyOn(phone.page, 'removeEventListener').mockImplementation((name) => void count(name, -1));
    letGo = stayAwake();
    expect([...heard.keys()].sort()).toEqual(['keydown', 'pointerdown', 'visibilitychange']);
    letGo();
    expect([...heard.values()]).toEqual([0, 0, 0]);
  });

  it.each(['pointerdown', 'keydown'])('is awake again with the next %s', async (sign) => {
    const phone = fakePhone();
    letGo = stayAwake();
    await vi.advanceTimersByTimeAsync(60 * MINUTE);
    phone.page.dispatchEvent(new Event(sign));
    await vi.advanceTimersByTimeAsync(14 * MINUTE);
    expect(phone.held()).toBe(1);
  });

  it('stays awake through rows that come without a touch, one every ten minutes', async () => {
    const phone = fakePhone();
    letGo = stayAwake();
    for (let row = 0; row < 6; row += 1) {
      await vi.advanceTimersByTimeAsync(10 * MINUTE);
      stirred();
    }
    expect(phone.held()).toBe(1);
  });

  it('sleeps as it likes once the knitting is left, whatever is touched', async () => {
    const phone = fakePhone();
    letGo = stayAwake();
    await vi.advanceTimersByTimeAsync(0);
    letGo();
    phone.page.dispatchEvent(new Event('pointerdown'));
    await vi.advanceTimersByTimeAsync(MINUTE);
    expect(phone.held()).toBe(0);
  });

  it('is not held for a page that nobody sees, and again when it is seen', async () => {
    const phone = fakePhone();
    phone.page.visibilityState = 'hidden';
    letGo = stayAwake();
    await vi.advanceTimersByTimeAsync(MINUTE);
    expect(phone.held()).toBe(0);
    phone.page.dispatchEvent(new Event('visibilitychange'));
    await vi.advanceTimersByTimeAsync(MINUTE);
    expect(phone.held()).toBe(0);
    phone.page.visibilityState = 'visible';
    phone.page.dispatchEvent(new Event('visibilitychange'));
    await vi.advanceTimersByTimeAsync(MINUTE);
    expect(phone.held()).toBe(1);
  });

  it('is asked for once, however often she touches it, and let go where the knitting is left meanwhile', async () => {
    const phone = fakePhone();
    letGo = stayAwake();
    for (let touch = 0; touch < 5; touch += 1) phone.page.dispatchEvent(new Event('pointerdown'));
    await vi.advanceTimersByTimeAsync(MINUTE);
    for (let touch = 0; touch < 5; touch += 1) phone.page.dispatchEvent(new Event('keydown'));
    await vi.advanceTimersByTimeAsync(MINUTE);
    expect(phone.held()).toBe(1);
    letGo();
    await vi.advanceTimersByTimeAsync(0);
    letGo = stayAwake();
    letGo();
    await vi.advanceTimersByTimeAsync(MINUTE);
    expect(phone.held()).toBe(0);
  });

  it('dims as it always does where the phone refuses, and nothing breaks where there is no lock', async () => {
    const phone = fakePhone();
    vi.stubGlobal('navigator', { wakeLock: { request: () => Promise.reject(new Error('low battery')) } });
    letGo = stayAwake();
    await vi.advanceTimersByTimeAsync(MINUTE);
    expect(phone.held()).toBe(0);
    letGo();
    vi.stubGlobal('navigator', {});
    letGo = stayAwake();
    phone.page.dispatchEvent(new Event('pointerdown'));
    await vi.advanceTimersByTimeAsync(MINUTE);
    expect(phone.held()).toBe(0);
  });
});
