import type { Page } from 'playwright-core';
import { until } from './until.ts';

/** The draft stands, and what is folded in it, which comes after all that is in sight. */
export async function foldsMade(page: Page): Promise<void> {
  await page.locator('.draft-end').waitFor();
  await until(
    () => page.locator('.group-inside:empty').count(),
    (empty) => empty === 0,
  );
}

/** Opens whatever is folded on a page, and what is folded within. */
export const unfold = (page: Page): Promise<void> =>
  page.evaluate(() => {
    for (const fold of document.querySelectorAll('details')) fold.open = true;
  });
