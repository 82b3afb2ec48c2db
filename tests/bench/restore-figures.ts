import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { Page } from 'playwright-core';
import type { Recipe } from '../../src/knit/piece/recipe.ts';
import { BACKUP_FORMAT, BACKUP_VERSION } from '../../src/store/backup/document.ts';
import { words } from '../../src/words/en/backup.ts';
import type { Figure } from './figure.ts';
import type { BenchPhone } from './phone.ts';
import { recordOf } from './seed.ts';
import { median } from './statistics.ts';
import { openTapper } from './tap-figures.ts';

/** Blankets of 300 rows on 600 stitches: about 25 MB of them. */
const BLANKETS = 400;

const blanket: Recipe = {
  name: 'Blanket',
  makes: 1,
  parts: [
    {
      name: 'Blanket',
      from: { castOn: 600 },
      sections: [{ name: 'Rib', rows: 300, fabric: 'rib 1x1', needle: 4, shaping: [] }],
      end: 'bind off',
    },
  ],
};

/** What a row that is finished waits for while a large backup is read in by the same page, and while nothing is. */
export async function restoreFigures(phone: BenchPhone, taps: number): Promise<readonly Figure[]> {
  await phone.rewind(phone.few);
  const folder = mkdtempSync(join(tmpdir(), 'ridgeline-restore-'));
  const file = join(folder, 'blankets.json');
  const text = blankets();
  writeFileSync(file, text);
  const tapper = await openTapper(phone.context, phone.few);
  const idle = (await tapper.tap(taps)).map(({ shown }) => shown);
  await unite(tapper.page, file, phone.few.address);
  const busy: number[] = [];
  while (!(await isIn(tapper.page)) && busy.length < 200)
    busy.push(...(await tapper.tap(1)).map(({ shown }) => shown));
  await tapper.close();
  rmSync(folder, { recursive: true });
  const megabytes = Math.round(text.length / 1e6);
  const names = { against: 'nothing is read in, median', unit: 'ms', theirs: median(idle) } as const;
  const beside = `${busy.length} taps while ${BLANKETS} blankets of 300 × 600 stitches came in`;
  return [
    {
      what: `${megabytes} MB are read in: tap → shown as done`,
      ...names,
      ours: median(busy),
      times: 3,
      beside,
    },
    { what: `the same, the longest`, ...names, ours: Math.max(...busy), times: 30 },
  ];
}

function blankets(): string {
  const all = Array.from({ length: BLANKETS }, (_, n) =>
    recordOf(`blanket${n}`, { name: `Blanket ${n}`, pieces: [blanket] }),
  );
  return JSON.stringify({
    format: BACKUP_FORMAT,
    version: BACKUP_VERSION,
    madeAt: 1,
    device: 'another',
    garments: all.map(({ garment }) => garment),
    plans: all.flatMap(({ plans }) => plans),
    entries: [],
    settings: {},
    photos: [],
  });
}

/** Opens the file, has it united, and goes to the row in hand at once. */
async function unite(page: Page, file: string, address: string): Promise<void> {
  const go = (hash: string) =>
    page.evaluate((to) => {
      location.hash = to;
    }, hash);
  await go('#/backup');
  await page.locator('input[type=file]').setInputFiles(file);
  await page.getByRole('button', { name: words.merge, exact: true }).click({ timeout: 120_000 });
  await go(new URL(address).hash);
  await page.locator('.pad').waitFor();
}

/** Read from what the app keeps beside its box, which waits for nothing. */
const isIn = (page: Page): Promise<boolean> =>
  page.evaluate(
    (most) =>
      Object.entries(localStorage).some(
        ([key, value]) =>
          key.endsWith('.sentinel') && (JSON.parse(value) as { garments: number }).garments > most,
      ),
    BLANKETS,
  );
