import type { Page } from 'playwright-core';

/** What of these is outside the window or under something else. */
export const unseen = (page: Page, selector: string): Promise<string[]> =>
  page.locator(selector).evaluateAll((all) =>
    (all.length === 0 ? [null] : all).flatMap((it) => {
      const { left, right, top, bottom } = it?.getBoundingClientRect() ?? new DOMRect(-1, -1);
      const isSeen =
        top >= 0 &&
        bottom <= innerHeight + 0.5 &&
        // a foot may cover its end alone
        [(top + bottom) / 2, bottom - 3].every((y) =>
          it?.contains(document.elementFromPoint((left + right) / 2, y)),
        );
      return isSeen
        ? []
        : [`“${it?.textContent}” at ${top.toFixed()} to ${bottom.toFixed()} of ${innerHeight}`];
    }),
  );
