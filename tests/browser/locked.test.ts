import { afterAll, describe, expect, it } from 'vitest';
import { dist } from '../run/built.ts';
import { serve } from '../run/serve.ts';
import { openPhone, type Phone, removeProfiles } from './drive.ts';
import { plainHost } from './host-and-phone.ts';
import { type Knitter, knitterAt } from './knitter.ts';
import { atRow } from './sights.ts';
import { until } from './until.ts';
import { workerReady } from './worker.ts';

afterAll(removeProfiles);

async function withPhone(use: (phone: Phone, knitter: Knitter, url: string) => Promise<void>): Promise<void> {
  const host = await plainHost();
  const phone = await openPhone({ reducedMotion: 'reduce', worker: false });
  const knitter = knitterAt(phone.page, host.url);
  await knitter.openSample();
  await use(phone, knitter, host.url);
  await phone.close();
}

const focused = ({ page }: Phone): Promise<string> =>
  page.evaluate(() => {
    const at = document.activeElement;
    return at === document.body ? '' : (at?.getAttribute('aria-label') ?? at?.textContent ?? '');
  });

describe('the lock', () => {
  it('stays when Back is pressed and when the page comes again; what lies behind takes no key; the focus comes to it and goes back to the pad', () =>
    withPhone(async (phone, knitter, url) => {
      const { page } = phone;
      await page.goto(`${url}#/g/sample`);
      await page
        .getByRole('link', { name: /^Continue Back|^Begin Back/ })
        .first()
        .click();
      await knitter.pad.waitFor();
      const unlock = page.getByRole('button', { name: 'Hold to unlock' });
      await page.getByRole('button', { name: 'Lock', exact: true }).tap();
      await unlock.waitFor();
      expect(await focused(phone)).toBe('Hold to unlock');
      expect(await page.locator('.screen-main > :not([inert])').count()).toBe(0);
      for (let times = 0; times < 2; times += 1) {
        await page.evaluate(() => history.back());
        await until(
          () => page.evaluate(() => location.hash),
          (hash) => hash.startsWith('#/g/'),
        ).catch(() => undefined);
        await until(
          () => page.evaluate(() => location.hash),
          (hash) => hash.startsWith('#/k/sample/back'),
        );
        await expect.poll(() => unlock.isVisible()).toBe(true);
      }
      // an address that is typed: nothing lies before it that could be gone forward to
      await page.evaluate(() => {
        location.hash = '#/settings';
      });
      await until(
        () => page.evaluate(() => location.hash),
        (hash) => hash.startsWith('#/k/sample/back'),
      );
      expect(await unlock.isVisible()).toBe(true);
      await page.reload();
      await unlock.waitFor();
      await unlock.press('Enter');
      await knitter.pad.waitFor();
      await until(
        () => focused(phone),
        (name) => name === 'Row done',
      );
      await page.reload();
      await knitter.pad.waitFor();
    }));

  it('opened by a finger that stays on the glass, works no row when the finger is lifted from the pad that stands there then', () =>
    withPhone(async ({ page }, knitter) => {
      const { row } = await knitter.row();
      await page.getByRole('button', { name: 'Lock', exact: true }).tap();
      const box = await page.getByRole('button', { name: 'Hold to unlock' }).boundingBox();
      const cdp = await page.context().newCDPSession(page);
      const at = { x: (box?.x ?? 0) + (box?.width ?? 0) / 2, y: (box?.y ?? 0) + (box?.height ?? 0) / 2 };
      await cdp.send('Input.dispatchTouchEvent', { type: 'touchStart', touchPoints: [at] });
      await knitter.pad.waitFor();
      await cdp.send('Input.dispatchTouchEvent', { type: 'touchEnd', touchPoints: [] });
      await knitter.pad.tap();
      await knitter.shows(row + 1);
      await page.reload();
      await knitter.pad.waitFor();
      expect((await knitter.row()).row).toBe(row + 1);
    }));

  it('holds where the browser is killed as soon as it is shown, and the phone has no network when it is switched on; so does its end', async () => {
    const host = await serve({ root: dist });
    let phone = await openPhone();
    const first = knitterAt(phone.page, host.url);
    await first.openSample();
    // what was never begun is not gone on with
    await first.knit(1);
    await workerReady(phone.page);
    await host.close();
    const unlock = () => phone.page.getByRole('button', { name: 'Hold to unlock' });
    const switchOn = async (hash: string) => {
      await phone.kill();
      phone = await openPhone({ profile: phone.profile });
      const knitter = knitterAt(phone.page, host.url);
      await knitter.open(hash);
      return knitter;
    };

    await phone.page.getByRole('button', { name: 'Lock', exact: true }).tap();
    await unlock().waitFor();
    await switchOn('#/continue');
    await unlock().waitFor();
    // by the workbasket too, which itself is not locked
    const again = await switchOn('#/');
    await phone.page.locator('.in-hand-card a').first().tap();
    await unlock().waitFor();
    expect(await again.pad.count()).toBe(0);
    await unlock().press('Enter');
    await again.pad.waitFor();
    const open = await switchOn('#/continue');
    await phone.page.locator('.ahead .lap').waitFor();
    expect(await unlock().count()).toBe(0);
    await open.knit(1);
    await phone.close();
  });
});

describe('who listens', () => {
  it('hears by the pad the row’s words and its count, and nothing of the buttons beside them', () =>
    withPhone(async ({ page }, knitter) => {
      await atRow(page, knitter, 119);
      const said = await knitter.pad.evaluate((pad) =>
        (pad.getAttribute('aria-describedby') ?? '')
          .split(' ')
          .map((id) => document.getElementById(id)?.textContent ?? '?')
          .join(' | '),
      );
      expect(said).toMatch(/^k2, ssk, .*, k2\s+\| 104stitches after this row2 fewer$/);
    }));

  it('hears where the next shaping lies, from ten rows before it on, and that a row was taken back', () =>
    withPhone(async ({ page }, knitter) => {
      const heard = () => page.locator('.knitting [role="status"].spoken').first().innerText();
      await atRow(page, knitter, 20);
      await until(heard, (said) => said.startsWith('Row 20 of 192'));
      expect(await heard()).not.toContain('haping');
      await atRow(page, knitter, 120);
      await until(heard, (said) =>
        /after it\. Next row is a shaping row: decrease at both edges\.\s*$/.test(said),
      );
      await knitter.knit(1);
      await page.getByRole('button', { name: 'Undo', exact: true }).tap();
      await until(heard, (said) => said.startsWith('Taken back. Row 120 of 192'));
      await knitter.knit(1);
      await until(heard, (said) => said.startsWith('Row 121 of 192'));
    }));

  it('has the focus at the end of a part, which is where the pad was', () =>
    withPhone(async (phone, knitter) => {
      const { page } = phone;
      await atRow(page, knitter, 192);
      await knitter.pad.focus();
      await page.keyboard.press('Enter');
      await page.locator('.part-end').waitFor();
      await until(
        () => focused(phone),
        (name) => name === 'Back is done',
      );
    }));
});
