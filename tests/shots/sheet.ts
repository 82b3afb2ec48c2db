import { readFileSync } from 'node:fs';
import type { Page } from 'playwright-core';

/** A picture of a sight, and the look it was taken in. */
export interface Shot {
  readonly look: string;
  /** of a PNG */
  readonly path: string;
}

/** px that every picture in a sheet is high */
const HIGH_PX = 640;

/** All looks of a sight side by side in one picture: what differs between them is seen at once. */
export async function writeSheet(
  page: Page,
  title: string,
  shots: readonly Shot[],
  path: string,
): Promise<void> {
  const figures = shots.map(
    ({ look, path: file }) =>
      `<figure><figcaption>${look}</figcaption><img src="data:image/png;base64,${readFileSync(file, 'base64')}"></figure>`,
  );
  await page.setContent(
    `<style>body{margin:0;padding:12px;width:1640px;background:#777;font:18px sans-serif;color:#fff}
    main{display:flex;flex-wrap:wrap;gap:12px}figure{margin:0}img{display:block;height:${HIGH_PX}px;max-width:100%;object-fit:contain}
    </style><h1>${title}</h1><main>${figures.join('')}</main>`,
    { waitUntil: 'load' },
  );
  await page.locator('body').screenshot({ path });
}
