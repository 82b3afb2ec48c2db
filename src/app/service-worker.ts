import { signal } from '@preact/signals';
import { pageIsKept } from './kept-files.ts';
import { workerUrl } from './worker-url.ts';

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

const hourMs = 3_600_000;

let takeWaiting: (() => void) | undefined;
let takenHere = false;

/** Takes the waiting version and reloads this window, and only this one. Call it between two rows. */
export function applyUpdate(): void {
  takenHere = true;
  if (updatedElsewhere.value) location.reload();
  else takeWaiting?.();
}

/** Registers the worker once the page has been painted; harmless where there are no workers. */
export function startServiceWorker(): void {
  document.documentElement.dataset.version = appVersion;
  if (!('serviceWorker' in navigator)) return;
  watchController();
  addEventListener('vite:preloadError', reloadWhenOutdated);
  // Without a worker (a private window, a full disk) the app runs on; `offlineReady` stays false.
  requestAnimationFrame(() => setTimeout(() => void register().catch(() => undefined)));
}

async function register(): Promise<void> {
  const { Workbox } = await import('workbox-window');
  const worker = new Workbox(workerUrl());
  worker.addEventListener('installed', (event) => {
    if (!event.isUpdate && !event.isExternal) offlineReady.value = true;
  });
  worker.addEventListener('waiting', () => {
    updateReady.value = true;
  });
  // Painted already: waiting for the `load` event as well would only delay it.
  const registration = await worker.register({ immediate: true });
  if (!registration) return;
  // Its copy has a hole: the worker goes once its windows are closed, and the next start installs it whole.
  if (registration.active && !(await pageIsKept())) return void (await registration.unregister());
  if (registration.active) offlineReady.value = true;
  takeWaiting = () => take(registration, () => worker.messageSkipWaiting());
  keepLooking(registration);
}

/** A window that no worker controls (the very first visit) hears nothing of the change: it watches the worker. */
function take(registration: ServiceWorkerRegistration, skipWaiting: () => void): void {
  const next = registration.waiting;
  next?.addEventListener('statechange', () => {
    if (next.state === 'activated') location.reload();
  });
  if (next) skipWaiting();
  else location.reload();
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

/** A home-screen app is frozen and thawed for weeks without a navigation, so it has to ask by itself. */
function keepLooking(registration: ServiceWorkerRegistration): void {
  const look = () => {
    if (navigator.onLine && !registration.installing) registration.update().catch(() => undefined);
  };
  setInterval(look, hourMs);
  document.addEventListener('visibilitychange', () => {
    if (document.visibilityState === 'visible') look();
  });
}

/** A screen of the old version is gone: she was changing screens, so a reload breaks no row. */
function reloadWhenOutdated(event: Event): void {
  if (!updatedElsewhere.value) return;
  event.preventDefault();
  location.reload();
}
