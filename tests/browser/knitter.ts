import type { Locator, Page } from 'playwright-core';

/** What a knitter does with the app, by the names that she reads or hears. */
export interface Knitter {
  readonly pad: Locator;
  /** opens the sample's back at the row in hand */
  openSample(): Promise<void>;
  open(hash: string): Promise<void>;
  /** finishes rows one by one, each shown before the next tap */
  knit(rows: number): Promise<void>;
  /** finishes rows until the part is done */
  knitToEnd(): Promise<void>;
  /** waits until the row in hand is this one */
  shows(row: number): Promise<void>;
  /** number of the row in hand, and how many stitches are said to be after it */
  row(): Promise<{ readonly row: number; readonly of: number; readonly after: number }>;
}

/** Opens what a screen shows folded. */
export async function unfold(page: Page): Promise<void> {
  const folded = page.locator('.group:not([open]) > summary');
  await page.locator('.group > summary').first().waitFor();
  while ((await folded.count()) > 0) await folded.first().tap();
}

const said = (n: number): string => n.toLocaleString('en');

/**
 * Waits within the page until the row in hand reads so, or the part is done, and gives up after `mostMs`: hundreds of
 * rows are knitted, and to ask from outside whether one is there took as long as to knit it.
 */
const comes = (page: Page, text: string | undefined, mostMs = 2000): Promise<void> =>
  page.evaluate(
    ([wanted, most]) =>
      new Promise<void>((done) => {
        const isThere = () => {
          const at = document.querySelector(wanted === undefined ? '.part-end' : '.knitting-row strong');
          return at?.textContent?.replace(/\s+/g, ' ').includes(wanted ?? '') === true;
        };
        const end = () => {
          watch.disconnect();
          done();
        };
        const watch = new MutationObserver(() => {
          if (isThere()) end();
        });
        watch.observe(document, { subtree: true, childList: true, characterData: true });
        if (isThere()) end();
        else setTimeout(end, most);
      }),
    [text, mostMs] as const,
  );

export function knitterAt(page: Page, url: string): Knitter {
  const pad = page.getByRole('button', { name: 'Row done', exact: true });
  const shown = page.locator('.knitting-row strong');
  const done = page.locator('.part-end');

  async function row() {
    const figures = ((await shown.textContent()) ?? '').replaceAll(',', '').match(/\d+/g);
    const [number = 0, of = 0] = figures?.map(Number) ?? [];
    const after = Number(await page.locator('.row-count').textContent());
    return { row: number, of, after };
  }

  /** The lower edge of the pad stays where it is, whatever the row above it asks for. */
  async function thumb(): Promise<{ readonly x: number; readonly y: number }> {
    const box = await pad.boundingBox();
    if (box === null) throw new Error('There is no pad to tap.');
    return { x: box.x + box.width / 2, y: box.y + box.height - 24 };
  }

  async function knit(rows: number) {
    const { row: first, of } = await row();
    const { x, y } = await thumb();
    for (let n = first; n < first + rows; n += 1) {
      await page.touchscreen.tap(x, y);
      const next = n === of ? undefined : `Row ${said(n + 1)} of ${said(of)}`;
      await comes(page, next);
      await (next === undefined ? done : shown.filter({ hasText: next })).waitFor();
    }
  }

  return {
    pad,
    row,
    knit,
    shows: (n) => shown.filter({ hasText: `Row ${said(n)} of ` }).waitFor(),
    async knitToEnd() {
      const { row: first, of } = await row();
      await knit(of - first + 1);
    },
    async openSample() {
      await page.goto(`${url}#/sample`);
      await pad.waitFor();
    },
    async open(hash) {
      await page.goto(`${url}${hash}`);
    },
  };
}
