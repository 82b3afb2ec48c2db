import { readFileSync } from 'node:fs';
import type { Page } from 'playwright-core';
import { afterAll, expect, it } from 'vitest';
import { sampleGarment } from '../../src/knit/garment/sample.ts';
import { garmentToLink } from '../../src/store/share/link.ts';
import { openPhone, removeProfiles } from './drive.ts';
import { plainHost } from './host-and-phone.ts';
import { knitterAt } from './knitter.ts';

afterAll(removeProfiles);

type Take = (launched: { readonly files: readonly { getFile(): Promise<File> }[] }) => void;

declare global {
  interface Window {
    /** what the app gave the system to be called with */
    launched?: Take;
  }
}

/** The queue of a browser that opens an installed app with files; a window of these tests is no installed app. */
function standIn(): void {
  Object.defineProperty(window, 'launchQueue', {
    value: {
      setConsumer: (take: Take) => {
        window.launched = take;
      },
    },
  });
}

/**
 * What the system does with a double click on a file while a window is open: it leads that window to the handler's
 * address (the manifest's `navigate-existing`) and hands the file to it.
 */
async function opens(page: Page, name: string, text: string): Promise<void> {
  await page.waitForFunction(() => window.launched !== undefined);
  await page.evaluate(
    ([called, said]) => {
      location.hash = '#/backup';
      window.launched?.({ files: [{ getFile: async () => new File([said], called) }] });
    },
    [name, text] as const,
  );
}

it('a backup and a garment that the system opens the app with are read, at its start and while a row is in hand', async () => {
  const host = await plainHost();
  const phone = await openPhone({ worker: false });
  const { page } = phone;
  await page.addInitScript(standIn);
  const knitter = knitterAt(page, host.url);
  const unite = page.getByRole('button', { name: 'Unite' });
  const garment = page.getByRole('heading', { level: 1, name: sampleGarment.name });
  const backup = readFileSync('tests/store/golden/backup-v1.json', 'utf8');
  const link = await garmentToLink(sampleGarment);

  // at the start: the handler's own address
  await page.goto(`${host.url}#/backup`);
  await opens(page, 'all.ridgeline.json', backup);
  await unite.waitFor();
  // another one before she has decided: that one is looked at, and nothing is taken in
  await opens(page, 'damaged.ridgeline.json', '{"format":');
  await page.getByText('This file cannot be taken in').waitFor();
  expect(await unite.count()).toBe(0);

  // with a row in hand: the window is led there, and Back leads to the row, which is as it was
  await knitter.openSample();
  await knitter.knit(2);
  await opens(page, 'all.ridgeline.json', backup);
  await unite.tap();
  await page.getByText('The file is taken in.').waitFor();
  await page.goBack();
  await knitter.shows(3);

  // a garment that was passed on as a file
  await opens(page, 'harbour.txt', `For you: https://example.org/app/#/open/${link}`);
  await garment.waitFor();

  // a start by its icon brings no file and changes nothing
  await knitter.openSample();
  await page.evaluate(() => window.launched?.({ files: [] }));
  await knitter.shows(3);
  await knitter.knit(1);
  expect(phone.complaints).toEqual([]);
  await phone.close();
});

it('a locked row stays in sight when the system opens a file; it is there when the lock is opened', async () => {
  const host = await plainHost();
  const phone = await openPhone({ worker: false });
  const { page } = phone;
  await page.addInitScript(standIn);
  const knitter = knitterAt(page, host.url);
  await knitter.openSample();
  await page.getByRole('button', { name: 'Lock', exact: true }).tap();
  const locked = page.getByRole('button', { name: 'Hold to unlock' });
  await locked.waitFor();
  await page.evaluate(() => {
    const addresses: string[] = [];
    Object.assign(window, { addresses });
    addEventListener('hashchange', ({ newURL }) => addresses.push(newURL));
  });
  await opens(page, 'all.ridgeline.json', readFileSync('tests/store/golden/backup-v1.json', 'utf8'));
  const addresses = () => page.evaluate(() => (window as { readonly addresses?: string[] }).addresses);
  await expect.poll(async () => (await addresses())?.at(0)).toContain('#/backup');
  await expect.poll(() => page.evaluate(() => location.hash)).toContain('#/k/sample/back');
  expect(await locked.isVisible()).toBe(true);
  await knitter.shows(1);
  // opened, the lock leads to what waits
  await locked.press('Enter');
  await page.getByRole('button', { name: 'Unite' }).waitFor();
  await phone.close();
});
