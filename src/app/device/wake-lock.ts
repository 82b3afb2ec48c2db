/**
 * Keeps the screen awake while knitting. The browser drops the lock whenever the page is hidden, so it is
 * asked for again each time the page comes back, until `letGo` is called.
 */
let wanted = false;
let held: WakeLockSentinel | undefined;
let asking = false;

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

const whenSeen = (): void => {
  if (document.visibilityState === 'visible') void ask();
};

/** Asks for the lock now and whenever the page is seen again; returns the way to let go. */
export function stayAwake(): () => void {
  if (!('wakeLock' in navigator)) return () => undefined;
  wanted = true;
  document.addEventListener('visibilitychange', whenSeen);
  void ask();
  return () => {
    wanted = false;
    document.removeEventListener('visibilitychange', whenSeen);
    void drop();
  };
}
