import { effect } from '@preact/signals';
import { Workbox } from 'workbox-window';
import { speech } from '../../words/settings.ts';
import { keepWanted } from './keep-wanted.ts';
import { pageIsKept } from './kept-files.ts';
import { refusedToKeep } from './refused-to-keep.ts';
import { scriptUrl } from './script-url.ts';

const hourMs = 3_600_000;

/** What the page is told. */
export interface WorkerNews {
  /** everything the app needs is on this device */
  readonly onReady: () => void;
  /** a newer version waits */
  readonly onWaiting: () => void;
  /** `take` gives the waiting version the page, and reloads this window */
  readonly onRegistered: (take: () => void) => void;
}

/** Registers the worker and hears what becomes of it; fetched after the first paint, with the library for it. */
export async function registerWorker({ onReady, onWaiting, onRegistered }: WorkerNews): Promise<void> {
  const worker = new Workbox(scriptUrl('sw.js'));
  worker.addEventListener('installed', (event) => {
    if (!event.isUpdate && !event.isExternal) keepSpoken(event.sw, onReady);
  });
  worker.addEventListener('waiting', ({ sw }) => {
    onWaiting();
    keepSpoken(sw);
  });
  worker.addEventListener('redundant', ({ isUpdate }) => {
    // the first one went before it had kept all: each file is held against what was built
    if (!isUpdate) refusedToKeep.value = true;
  });
  // Painted already: waiting for the `load` event as well would only delay it.
  const registration = await worker.register({ immediate: true });
  if (!registration) return;
  // Its copy has a hole: the worker goes once its windows are closed, and the next start installs it whole.
  if (registration.active && !(await pageIsKept())) return void (await registration.unregister());
  if (registration.active) keepSpoken(registration.active, onReady);
  keepWhole(worker.active);
  onRegistered(() => take(registration, () => worker.messageSkipWaiting()));
  keepLooking(registration);
}

/** A worker keeps whatever language she chooses, the one that waits too; English it has. */
function keepSpoken(worker: ServiceWorker | undefined, onKept?: () => void): void {
  effect(() => {
    const { language } = speech.value;
    if (language === 'en') onKept?.();
    else void keepWanted(worker, language).then((kept) => kept && onKept?.());
  });
}

/**
 * What is kept for offline use is looked through by the worker (src/worker/keep-whole.ts), and what comes after the
 * first screen is fetched; all of it at once where a file did not load.
 */
function keepWhole(worker: Promise<ServiceWorker>): void {
  const tell = (what: 'keep whole' | 'mend') => void worker.then((active) => active.postMessage(what));
  addEventListener('vite:preloadError', () => tell('mend'));
  // seen by the script in the page's head, before this one was there
  tell('missed' in document.documentElement.dataset ? 'mend' : 'keep whole');
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
