import { signal } from '@preact/signals';
import { later } from '../../pace/first-screen.ts';

/**
 * The page's side of the service worker. A new version waits until the knitter takes it
 * (`applyUpdate`); no window reloads that she did not ask to, since she may be in the middle of a row.
 */

declare const __VERSION__: string;

/** The version of the app that this page runs. */
export const appVersion: string = __VERSION__;

/** A newer version is on this device and waits to be taken. */
export const updateReady = signal(false);

/** Everything the app needs is on this device. */
export const offlineReady = signal(false);

/**
 * Another window took a newer version while this one ran on. What is loaded goes on working; the
 * files of screens not yet opened are gone, so this window should be reloaded when it suits her.
 */
export const updatedElsewhere = signal(false);

let takeWaiting: (() => void) | undefined;
let takenHere = false;

/** Takes the waiting version and reloads this window, and only this one. Call it between two rows. */
export function applyUpdate(): void {
  takenHere = true;
  if (updatedElsewhere.value) location.reload();
  else takeWaiting?.();
}

/** Registers the worker once the first screen stands; harmless where there are no workers. */
export function startServiceWorker(): void {
  document.documentElement.dataset.version = appVersion;
  if (!('serviceWorker' in navigator)) return;
  watchController();
  addEventListener('vite:preloadError', reloadWhenOutdated);
  // Without a worker (a private window, a full disk) the app runs on; `offlineReady` stays false.
  later('worker', start);
}

async function start(): Promise<void> {
  const { registerWorker } = await import('./register-worker.ts');
  await registerWorker({
    onReady: () => {
      offlineReady.value = true;
    },
    onWaiting: () => {
      updateReady.value = true;
    },
    onRegistered: (take) => {
      takeWaiting = take;
    },
  });
}

function watchController(): void {
  let controlled = navigator.serviceWorker.controller !== null;
  navigator.serviceWorker.addEventListener('controllerchange', () => {
    if (controlled && !takenHere) {
      updatedElsewhere.value = true;
      updateReady.value = false;
    }
    controlled = true;
  });
}

/** A screen of the old version is gone: she was changing screens, so a reload breaks no row. */
function reloadWhenOutdated(event: Event): void {
  if (!updatedElsewhere.value) return;
  event.preventDefault();
  location.reload();
}
