import { chromium } from 'playwright-core';
import type { Served } from '../run/serve.ts';
import { chromiumEngine } from './engine.ts';
import type { Figure } from './figure.ts';
import { corruptionsOf, storedOf } from './stored.ts';
import { openBack, padOf, rowShown, sampleBack, thumbOn, watchRows } from './tapping.ts';

/** What only this browser can be told to do: a disk that is full, storage that was cleared, storage refused. */

const comes = (waiting: Promise<unknown>): Promise<boolean> =>
  waiting.then(
    () => true,
    () => false,
  );

/** Rows while disk and small keep are full are not shown as done; once there is room they are stored, each once. */
export async function fullDisk(host: Served): Promise<Figure> {
  const first = await chromiumEngine.open();
  await openBack(first.page, host.url);
  const thumb = await thumbOn(first.page);
  await first.tap(thumb.x, thumb.y);
  await rowShown(first.page, 2);
  await first.close();
  // The browser remembers for half a minute how much room there was: the disk fills up while it is closed.
  const machine = await chromiumEngine.open(first.profile);
  const { page } = machine;
  const devtools = await page.context().newCDPSession(page);
  const { origin } = new URL(host.url);
  await devtools.send('Storage.overrideQuotaForOrigin', { origin, quotaSize: 1 });
  await openBack(page, host.url);
  // nor is there room beside the database (tests/browser/kept-aside.test.ts has what happens where there is)
  await page.evaluate(() => {
    Storage.prototype.setItem = () => {
      throw new DOMException('full', 'QuotaExceededError');
    };
  });
  const shown = await watchRows(page);
  const { x, y } = await thumbOn(page);
  for (let i = 0; i < 3; i += 1) await machine.tap(x, y);
  const sentence = page.getByText('The device has no room left');
  const says = await comes(sentence.waitFor({ timeout: 20_000 }));
  const during = await storedOf(page, sampleBack);
  const falsely = shown.rows - (during.place?.rows ?? 0);
  await devtools.send('Storage.overrideQuotaForOrigin', { origin });
  if (says) await page.getByRole('button', { name: 'Try again' }).click();
  const goesOn = await comes(rowShown(page, 5));
  const after = await storedOf(page, sampleBack);
  const faults = corruptionsOf(after).length;
  await machine.close();
  return {
    name: 'Chromium: a full disk under three taps',
    measured: `done but not stored ${falsely}, ${says ? 'said' : 'not said'}, ${goesOn ? 'goes on' : 'does not go on'} with ${after.place?.rows ?? 0} rows, corrupted ${faults}`,
    bar: 'done but not stored 0, said, goes on with 4 rows',
    met: falsely === 0 && says && goesOn && after.place?.rows === 4 && faults === 0,
  };
}

/** A database cleared behind a known user's back: she is told, with the way to restore, and not greeted as new. */
export async function cleared(host: Served): Promise<Figure> {
  const machine = await chromiumEngine.open();
  const { page } = machine;
  await openBack(page, host.url);
  const { x, y } = await thumbOn(page);
  await machine.tap(x, y);
  await rowShown(page, 2);
  await page.goto('about:blank');
  const devtools = await page.context().newCDPSession(page);
  const { origin } = new URL(host.url);
  await devtools.send('Storage.clearDataForOrigin', { origin, storageTypes: 'indexeddb' });
  await page.goto(`${host.url}#/`);
  const told = await comes(page.getByText('Your garments are missing').waitFor({ timeout: 20_000 }));
  const greeted = (await page.getByText('Begin in one of these ways').count()) > 0;
  const restore = (await page.getByRole('link', { name: /Open a backup/ }).count()) > 0;
  await machine.close();
  const said = [
    told ? 'told' : 'not told',
    greeted ? 'greeted as new' : 'not greeted',
    restore ? 'restore offered' : 'no way to restore',
  ];
  return {
    name: 'Chromium: a database cleared behind her back',
    measured: said.join(', '),
    bar: 'told, not greeted as new, restore offered',
    met: told && !greeted && restore,
  };
}

/** A browser that keeps nothing at all: a sentence, and no row shown as done. */
export async function refusedStorage(host: Served): Promise<Figure> {
  const browser = await chromium.launch({
    ...(process.env.CHROMIUM && { executablePath: process.env.CHROMIUM }),
    args: ['--no-sandbox'],
  });
  const page = await browser.newPage();
  await page.addInitScript(() => {
    Object.defineProperty(window, 'indexedDB', {
      get: () => {
        throw new DOMException('refused', 'SecurityError');
      },
    });
  });
  await page.goto(`${host.url}#/`);
  const sentence = page.getByText(/could not be read|does not let/).first();
  const said = await comes(sentence.waitFor({ timeout: 20_000 }));
  const pad = await padOf(page).count();
  await browser.close();
  return {
    name: 'Chromium: storage refused, as in a private window',
    measured: `${said ? 'said' : 'not said'}, ${pad === 0 ? 'no row to finish' : 'a pad to tap'}`,
    bar: 'said, no row to finish',
    met: said && pad === 0,
  };
}
