import { signal } from '@preact/signals';

/** What Chromium hands a page that may be put on the home screen. */
interface InstallEvent extends Event {
  prompt(): Promise<unknown>;
  readonly userChoice: Promise<{ readonly outcome: 'accepted' | 'dismissed' }>;
}

/** set while the browser lets the app offer itself */
export const offer = signal<InstallEvent | undefined>(undefined);

const held = { listens: false };

/** Keeps the browser's offer until she wants it, instead of the browser's own bar. */
export function holdOffer(): void {
  if (held.listens) return;
  held.listens = true;
  addEventListener('beforeinstallprompt', (event) => {
    event.preventDefault();
    offer.value = event as InstallEvent;
  });
  addEventListener('appinstalled', () => {
    offer.value = undefined;
  });
}

/** Asks the browser to put the app on the home screen; whether she took it. */
export async function install(): Promise<boolean> {
  const event = offer.peek();
  if (event === undefined) return false;
  offer.value = undefined;
  await event.prompt();
  return (await event.userChoice).outcome === 'accepted';
}

/** `home`: opened from the home screen; `safari`: a browser of iPhone or iPad, whose home screen has a store of its own. */
export type Where = 'home' | 'safari' | 'browser';

export function whereOpened(): Where {
  const { standalone } = navigator as { standalone?: boolean };
  if (standalone === true || matchMedia('(display-mode: standalone)').matches) return 'home';
  return standalone === false ? 'safari' : 'browser';
}
