import { afterAll, describe, expect, it } from 'vitest';
import { serve } from '../run/serve.ts';
import { openPhone, removeProfiles, walkedBy } from './drive.ts';
import { plainHost } from './host-and-phone.ts';
import { knitterAt, unfold } from './knitter.ts';
import { workerReady } from './worker.ts';

afterAll(removeProfiles);

/** With RIDGELINE_LOOKS=all every row is tapped, on the common phone; on the small one the body's rows from the armholes on. */
const walks = [
  { size: 'common', from: 1 },
  { size: 'small', from: 112 },
] as const;

describe.each(walkedBy(walks, ({ size }) => size === 'small'))('on a $size phone', ({ size, from }) => {
  // The counts are those of the sample's own numbers: 96 stitches to share, 48 for each shoulder, 30 of them at its top.
  it('knits the front to its end, the network gone with a shoulder half done', async () => {
    const host = await serve({ root: 'dist' });
    const phone = await openPhone({ size, once: true });
    const { page } = phone;
    const knitter = knitterAt(page, host.url);
    await knitter.openSample();
    await workerReady(page);

    await page.getByRole('link', { name: 'Back to Harbour pullover' }).tap();
    await unfold(page);
    await page.getByRole('link', { name: 'Begin Front: Body' }).tap();
    await knitter.pad.waitFor();
    expect(await knitter.row()).toEqual({ row: 1, of: 128, after: 118 });
    if (from > 1) {
      await knitter.open(`#/k/sample/front/0/1?row=${from}`);
      await page.getByRole('button', { name: `Make row ${from} the next` }).tap();
      await knitter.shows(from);
    }
    await knitter.knitToEnd();
    await page.getByText('Leave the 96 stitches resting').waitFor();

    await page.getByRole('link', { name: 'Begin Front: Left shoulder' }).tap();
    await knitter.pad.waitFor();
    await page.getByText('Take the 48 stitches at the right edge of Body').waitFor();
    await knitter.knit(30);
    await host.close();

    await page.reload();
    await knitter.pad.waitFor();
    expect(await knitter.row()).toMatchObject({ row: 31, of: 63 });

    await knitter.open('#/');
    await page.getByText('row 31 of 63 is next').waitFor();
    await page.getByRole('link', { name: 'Continue knitting' }).tap();
    await knitter.pad.waitFor();
    await knitter.knitToEnd();
    await page.getByText('Front: Left shoulder is done', { exact: true }).waitFor();

    await page.getByRole('link', { name: 'Begin Front: Right shoulder' }).tap();
    await knitter.pad.waitFor();
    await knitter.knitToEnd();
    await page.getByRole('link', { name: 'Begin Back' }).waitFor();

    expect(phone.strangers).toEqual([]);
    expect(phone.complaints.filter((said) => !said.includes('ERR_CONNECTION_REFUSED'))).toEqual([]);
    await phone.close();
  }, 180_000);
});

describe('a browser that is killed', () => {
  it('right after a row was shown has it when it comes back, three times of three', async () => {
    const host = await serve({ root: 'dist' });
    let phone = await openPhone();
    await knitterAt(phone.page, host.url).openSample();
    for (let time = 1; time <= 3; time += 1) {
      const knitter = knitterAt(phone.page, host.url);
      const before = await knitter.row();
      await knitter.knit(time);
      await phone.kill();
      phone = await openPhone({ profile: phone.profile });
      const again = knitterAt(phone.page, host.url);
      await again.open('#/continue');
      await again.pad.waitFor();
      expect((await again.row()).row).toBe(before.row + time);
    }
    await phone.close();
    await host.close();
  }, 180_000);
});

describe('taps that come faster than they can be stored', () => {
  it('are all stored, and one undo takes back one row', async () => {
    const host = await plainHost();
    const phone = await openPhone({ worker: false });
    const { page } = phone;
    const knitter = knitterAt(page, host.url);
    await knitter.openSample();
    await knitter.pad.evaluate((pad: HTMLButtonElement) => {
      for (let i = 0; i < 40; i += 1) pad.click();
    });
    await knitter.shows(41);
    await page.getByRole('button', { name: 'Undo' }).tap();
    await knitter.shows(40);
    await phone.close();
  });
});

describe('going back', () => {
  it('several rows is two taps', async () => {
    const host = await plainHost();
    const phone = await openPhone({ worker: false });
    const knitter = knitterAt(phone.page, host.url);
    await knitter.openSample();
    await knitter.knit(9);
    await phone.page.getByRole('button', { name: 'Go back' }).tap();
    await phone.page.getByRole('button', { name: 'Row 4 next' }).tap();
    await knitter.shows(4);
    await phone.close();
  });

  it('leads from the row to the garment to the workbasket, and the phone’s own back never loops', async () => {
    const host = await plainHost();
    const phone = await openPhone({ worker: false });
    const { page } = phone;
    const knitter = knitterAt(page, host.url);
    await knitter.open('');
    await page.getByRole('link', { name: /Open the sample/ }).tap();
    await knitter.pad.waitFor();
    await page.getByRole('link', { name: 'Back to Harbour pullover' }).tap();
    await unfold(page);
    await page.getByRole('link', { name: 'Begin Front: Body' }).tap();
    await knitter.pad.waitFor();
    await page.getByRole('link', { name: 'Back to Harbour pullover' }).tap();
    await page.getByRole('link', { name: 'To the workbasket' }).tap();
    await page.getByRole('heading', { name: 'Workbasket' }).waitFor();
    expect(await page.evaluate(() => location.hash)).toBe('#/');
    await phone.close();
  });
});

describe('an address of a row', () => {
  it('opens that row to be read and leaves the place where it is', async () => {
    const host = await plainHost();
    const phone = await openPhone({ worker: false });
    const { page } = phone;
    const knitter = knitterAt(page, host.url);
    await knitter.openSample();
    await knitter.knit(2);
    await knitter.open('#/k/sample/back/0/1?row=117');
    await page.getByText('You are reading row 117. The row in hand is 3.').waitFor();
    await expect.poll(() => page.locator('.row-count').textContent()).toBe('112');
    await page.getByRole('button', { name: 'Back to row 3' }).tap();
    await knitter.shows(3);
    await phone.close();
  });
});
