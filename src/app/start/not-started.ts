/**
 * For the day when a file of the app is missing, empty or garbled (src/worker/keep-whole.ts): where the app does not
 * start, it shows the words that stand in the page, has the worker mend what is kept, and tries once more. Stands in the
 * page's head as text (src/build/head.ts), so it can use nothing from outside itself.
 */
export function whenNotStarted(): void {
  addEventListener('vite:preloadError', () => {
    document.documentElement.dataset.missed = '';
  });
  addEventListener('load', () => {
    // the app says its version as soon as it runs
    if (document.documentElement.dataset.version === undefined) void notStarted();
  });
  const AGAIN_MS = 60_000;
  async function notStarted(): Promise<void> {
    // A host that gives the page without the address's last slash: its files are looked for one folder too high.
    if (/\/[^./]+$/.test(location.pathname)) {
      const { pathname, search, hash } = location;
      return location.replace(`${pathname}/${search}${hash}`);
    }
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
}
