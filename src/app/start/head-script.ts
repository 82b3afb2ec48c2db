/** Files of the first screen of a visit that begins with the workbasket, by what they are; and the font of every one. */
export interface FirstFiles {
  readonly scripts: readonly string[];
  readonly styles: readonly string[];
  /** its words, in the language that the device asks for */
  readonly words: Readonly<Record<'en' | 'de', string>>;
  readonly font: string;
}

/**
 * Stands in the page's head as text (src/build/head.ts), so it can use nothing from outside itself, and runs before any
 * file of the app is there. It begins what the app is about to ask for, which nothing depends on; and where the app
 * does not start, it shows the words that stand in the page, has the worker mend what is kept, and tries once more.
 */
export function headScript({ scripts, styles, words, font }: FirstFiles): void {
  // What follows is for the day when a file of the app is missing, empty or garbled (src/worker/keep-whole.ts).
  addEventListener('vite:preloadError', () => {
    document.documentElement.dataset.missed = '';
  });
  addEventListener('load', () => {
    // the app says its version as soon as it runs
    if (document.documentElement.dataset.version === undefined) void notStarted();
  });
  const AGAIN_MS = 60_000;
  async function notStarted(): Promise<void> {
    document.getElementById('not-started')?.removeAttribute('hidden');
    const here = new URL(location.href);
    if (Date.now() - Number(here.searchParams.get('again')) < AGAIN_MS || !(await mended())) return;
    // an address that no proxy has an old page for
    here.searchParams.set('again', String(Date.now()));
    location.replace(here);
  }
  function mended(): Promise<boolean> {
    const worker = navigator.serviceWorker?.controller;
    if (!worker) return Promise.resolve(navigator.onLine);
    const { port1, port2 } = new MessageChannel();
    worker.postMessage('mend', [port2]);
    return new Promise((resolve) => {
      port1.onmessage = ({ data }) => resolve(data === true);
    });
  }
  // A box of many years takes the browser a while to open; asking for the names of all boxes opens it, and no more.
  try {
    indexedDB.databases().catch(() => undefined);
  } catch {
    // an older browser, or one that keeps nothing
  }
  // asked for as the app will ask, or it would be fetched twice
  const need = (href: string, rel: string, as: string) =>
    document.head.append(Object.assign(document.createElement('link'), { rel, as, href, crossOrigin: '' }));
  // Where it is on the device, the first row is set in it at once and not a second time; over a line it would be in the way.
  if (navigator.serviceWorker?.controller) need(font, 'preload', 'font');
  if (!/^(#\/?)?$/.test(location.hash)) return;
  const asked = navigator.languages.find((tag) => /^(en|de)/i.test(tag)) ?? 'en';
  for (const href of [...scripts, words[/^de/i.test(asked) ? 'de' : 'en']])
    need(href, 'modulepreload', 'script');
  for (const href of styles) need(href, 'preload', 'style');
}
