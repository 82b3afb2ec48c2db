import type { Page } from 'playwright-core';

/**
 * Waits until nothing in the page has changed for `quietMs`: what is drawn late, one part in a frame, stands then. Gives
 * up after `mostMs`, since a page may have a clock.
 */
export const settled = (page: Page, quietMs = 350, mostMs = 4000): Promise<void> =>
  page.evaluate(
    ([quiet, most]) =>
      new Promise<void>((done) => {
        const end = () => {
          watch.disconnect();
          clearTimeout(timer);
          done();
        };
        let timer = setTimeout(end, quiet);
        const watch = new MutationObserver(() => {
          clearTimeout(timer);
          timer = setTimeout(end, quiet);
        });
        watch.observe(document, { subtree: true, childList: true, attributes: true, characterData: true });
        setTimeout(end, most);
      }),
    [quietMs, mostMs] as const,
  );
