/**
 * Keeps the screen awake while knitting. The browser drops the lock whenever the page is hidden, so it is
 * asked for again each time the page comes back. Where nothing was touched and no row came for a while she has
 * laid the phone down: it may sleep until the next touch.
 */
const UNTOUCHED_MS = 15 * 60_000;

/** What tells that she is there; a row by the headset comes without any of them. */
const signs = ['pointerdown', 'keydown'] as const;

let wanted = false;
let held: WakeLockSentinel | undefined;
let asking = false;
let untouched: ReturnType<typeof setTimeout> | undefined;

async function ask(): Promise<void> {
  if (!wanted || held !== undefined || asking || document.visibilityState !== 'visible') return;
  asking = true;
  try {
    const lock = await navigator.wakeLock.request('screen');
    lock.addEventListener('release', () => {
      if (held === lock) held = undefined;
    });
    held = lock;
    if (!wanted) await drop();
  } catch {
    // low battery or a browser setting refuses it: the screen then dims as it always does
  } finally {
    asking = false;
  }
}

async function drop(): Promise<void> {
  const lock = held;
  held = undefined;
  await lock?.release();
}

/** She is there: awake from now on for as long as nothing happens. */
export function stirred(): void {
  if (!wanted) return;
  clearTimeout(untouched);
  untouched = setTimeout(() => void drop(), UNTOUCHED_MS);
  void ask();
}

const whenSeen = (): void => {
  if (document.visibilityState === 'visible') stirred();
};

/** Asks for the lock now and whenever the page is seen again; returns the way to let go. */
export function stayAwake(): () => void {
  if (!('wakeLock' in navigator)) return () => undefined;
  wanted = true;
  document.addEventListener('visibilitychange', whenSeen);
  for (const sign of signs) document.addEventListener(sign, stirred, { passive: true });
  stirred();
  return () => {
    wanted = false;
    clearTimeout(untouched);
    document.removeEventListener('visibilitychange', whenSeen);
    for (const sign of signs) document.removeEventListener(sign, stirred);
    void drop();
  };
}
