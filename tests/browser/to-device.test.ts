import { readFileSync } from 'node:fs';
import type { Page } from 'playwright-core';
import { expect, it, vi } from 'vitest';
import { violations } from './axe.ts';
import { light, walkedOn } from './drive.ts';
import { hostAndPhone } from './host-and-phone.ts';

/** Two devices, and some thirty pictures from the screen of one to the camera of the other. */
vi.setConfig({ testTimeout: 180_000 });

const host = hostAndPhone();

const done = (page: Page) => page.getByRole('button', { name: /^(Row done|Reihe fertig)$/ });
const row = (page: Page, n: number) => page.getByText(new RegExp(`^(Row|Reihe) ${n} (of|von)`)).first();

async function knit(page: Page, from: number, to: number) {
  for (let n = from; n <= to; n += 1) {
    await row(page, n).waitFor();
    await done(page).tap();
  }
  await row(page, to + 1).waitFor();
}

/** What the page's camera sees is what is drawn by `show`. */
const giveCamera = (page: Page) =>
  page.addInitScript(() => {
    const canvas = document.createElement('canvas');
    canvas.width = 720;
    canvas.height = 960;
    Object.assign(window, { seen: canvas });
    const paper = canvas.getContext('2d');
    // a camera gives pictures all the time
    setInterval(() => {
      paper?.fillRect(0, 0, 1, 1);
    }, 120);
    // an empty page has none
    if ('mediaDevices' in navigator) navigator.mediaDevices.getUserMedia = async () => canvas.captureStream();
  });

const show = (page: Page, picture: string) =>
  page.evaluate(async (data) => {
    const bytes = Uint8Array.from(atob(data), (sign) => sign.charCodeAt(0));
    const image = await createImageBitmap(new Blob([bytes], { type: 'image/png' }));
    const paper = (window as unknown as { seen: HTMLCanvasElement }).seen.getContext('2d');
    if (paper === null) throw new Error('no camera');
    paper.fillStyle = '#8a7a60';
    paper.fillRect(0, 0, 720, 960);
    // a little askew, as from a hand
    paper.save();
    paper.translate(360, 480);
    paper.rotate(0.06);
    paper.drawImage(image, -300, -300, 600, 600);
    paper.restore();
  }, picture);

it.each(walkedOn('common'))(
  'a garment goes from the screen of a %s phone to the camera of a small one with its place, and comes back as a file',
  async (size) => {
    const phone = await host.open({ size, density: 2 });
    const one = phone.page;
    await one.addInitScript('delete window.showSaveFilePicker');
    await one.goto(`${host.url}#/sample`);
    await knit(one, 1, 3);
    await one.goto(`${host.url}#/g/sample/pass-on?device`);
    await one.getByRole('heading', { level: 1, name: 'To my other device' }).waitFor();
    await one.getByRole('button', { name: 'Show the codes' }).tap();
    const code = one.getByRole('img', { name: 'QR codes of Harbour pullover' });
    await code.waitFor();
    await one.getByRole('button', { name: 'Hold this one' }).tap();
    const of = Number(/of (\d+)/.exec((await one.getByText(/^Code \d+ of \d+$/).textContent()) ?? '')?.[1]);
    expect(of).toBeGreaterThan(5);
    expect(await violations(one)).toEqual([]);

    // to find codes in pictures is long reckoning: its scripts are compiled as well as a browser can
    const other = await host.open({ size: 'small', worker: true, args: light });
    const two = other.page;
    await giveCamera(two);
    await two.goto(`${host.url}#/backup`);
    await two.getByRole('button', { name: 'Read codes with the camera' }).tap();
    await two.getByText('Hold the camera over the codes').waitFor();
    for (let n = 1; n < of; n += 1) {
      await show(two, (await code.screenshot()).toString('base64'));
      await two.getByText(`${n} of ${of} codes read`).waitFor();
      if (n === 1) expect(await violations(two)).toEqual([]);
      await one.getByRole('button', { name: 'Next code' }).tap();
      await one.getByText(new RegExp(`^Code \\d+ of ${of}$`)).waitFor();
    }
    await two.getByText('Still: ').waitFor();
    await show(two, (await code.screenshot()).toString('base64'));
    await two.getByText('Harbour pullover: comes in').waitFor();
    // one garment is never put in the stead of all that is here
    expect(await two.getByRole('button', { name: 'Replace everything' }).count()).toBe(0);
    expect(await violations(two)).toEqual([]);
    await two.getByRole('button', { name: 'Unite' }).tap();
    await two.getByText('The file is taken in.').waitFor();
    await two.goto(`${host.url}#/continue`);
    await knit(two, 4, 5);

    await two.addInitScript('delete window.showSaveFilePicker');
    await two.goto('about:blank');
    await two.goto(`${host.url}#/g/sample`);
    await two
      .locator('summary', {
        has: two.getByRole('heading', { name: 'Parts, notes, edit, pass on, print', exact: true }),
      })
      .click();
    await two.getByRole('link', { name: 'To my other device' }).tap();
    const [download] = await Promise.all([
      two.waitForEvent('download'),
      two.getByRole('button', { name: 'Hand the file over' }).tap(),
    ]);
    expect(download.suggestedFilename()).toBe('Harbour pullover.ridgeline.json');
    const text = readFileSync(await download.path(), 'utf8');
    await one.goto(`${host.url}#/backup`);
    await one
      .getByLabel('Choose the file')
      .first()
      .setInputFiles({ name: 'a.json', mimeType: 'application/json', buffer: Buffer.from(text) });
    await one.getByText('Back: row \u20663 → 5\u2069 done').waitFor();
    await one.getByRole('button', { name: 'Unite' }).tap();
    await one.getByText('The file is taken in.').waitFor();
    await one.goto(`${host.url}#/continue`);
    await row(one, 6).waitFor();
    expect([...phone.complaints, ...phone.strangers, ...other.complaints, ...other.strangers]).toEqual([]);
  },
);

it('in German, where no camera may be used, that is said and the file is offered', async () => {
  const { page } = await host.open({ size: 'small', locale: 'de' });
  await page.addInitScript(() => {
    navigator.mediaDevices.getUserMedia = () => Promise.reject(new DOMException('no', 'NotAllowedError'));
  });
  await page.goto(`${host.url}#/backup`);
  await page.getByRole('button', { name: 'Codes mit der Kamera lesen' }).tap();
  await page.getByText('Hier lässt sich keine Kamera benutzen').waitFor();
  await page.getByText('Das Strickstück kommt auch als Datei herüber.').waitFor();
  expect(await violations(page)).toEqual([]);
  expect(await page.evaluate(() => document.documentElement.scrollWidth - innerWidth)).toBeLessThanOrEqual(0);
});
