import type { Page } from 'playwright-core';
import { words } from '../../src/words/en/pattern.ts';

/** A pattern is copied in, on the page that is for that, and read. */
export async function readsPattern(page: Page): Promise<void> {
  const text = 'SCARF\nCast on 20 sts.\nRow 1: Knit.\nBind off.';
  await page.getByRole('textbox', { name: words.text }).fill(text);
  await page.getByText('All counts agree').waitFor();
}
