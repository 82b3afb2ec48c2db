import type { Page } from 'playwright-core';
import { words } from '../../src/words/en/pattern.ts';

/** A pattern is copied in, on the page that is for that, and read. */
export async function readsPattern(page: Page): Promise<void> {
  const text = 'SCARF\nCast on 20 sts.\nRow 1: Knit.\nBind off.';
  await page.getByRole('textbox', { name: words.text }).fill(text);
  await page.getByText('All counts agree').waitFor();
}

/** What of a text is shown: rows and lengths, a count that differs, a line that is not understood, sizes to choose from. */
export const mixed = `Sizes: S (M, L)
BACK
Cast on 40 (44, 48) sts.
Rows 1-4: *K2, p2; rep from * to end.
Work in st st until piece measures 20 cm, ending with a WS row.
BO 3 sts at beg of next 2 rows. (33 (38, 42) sts)
Next row: wibble three sts of it.
BO.`;

/** A pattern is copied in of which not all is understood, and read. */
export async function readsMixed(page: Page): Promise<void> {
  await page.getByRole('textbox', { name: words.text }).fill(mixed);
  await page.locator('.pattern-line', { hasText: 'wibble' }).getByText('Not understood').waitFor();
}
