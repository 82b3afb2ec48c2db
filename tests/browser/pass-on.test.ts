import { readFileSync } from 'node:fs';
import { afterAll, expect, it } from 'vitest';
import { designOf, newForm } from '../../src/app/drafts/design/form.ts';
import { draft } from '../../src/knit/garment/draft.ts';
import { sampleGarment } from '../../src/knit/garment/sample.ts';
import { yarnFor } from '../../src/knit/yarn/need.ts';
import { garmentToLink, linkToGarment } from '../../src/store/share/link.ts';
import { partsOfLink } from '../../src/store/share/link-parts.ts';
import { dist } from '../run/built.ts';
import { serve } from '../run/serve.ts';
import { violations } from './axe.ts';
import { openPhone, removeProfiles, walkedOn } from './drive.ts';
import { plainHost } from './host-and-phone.ts';
import { openSettings, wear } from './looks.ts';
import { workerReady } from './worker.ts';

afterAll(removeProfiles);

const link = await garmentToLink(sampleGarment);

it('a shared link opens with no network, takes her swatch, and is knitted five rows', async () => {
  const host = await serve({ root: dist });
  const phone = await openPhone({ once: true });
  const { page } = phone;
  await page.goto(host.url);
  await workerReady(page);
  await host.close();

  await page.goto(`${host.url}#/open/${link}`);
  await page.getByRole('heading', { level: 1, name: 'Harbour pullover' }).waitFor();
  // 118 stitches at 21 to 10 cm are 56.2 cm; at 18 to 4 in (10.16 cm) they are 99.6; a 2×2 rib takes 100
  await page.getByLabel(/^Stitches to/).fill('18');
  await page.getByLabel(/^Rows to/).fill('25');
  await page.getByText(/100\sstitches to cast on where it had 118/).waitFor();
  await page.getByRole('button', { name: 'Put it in the workbasket' }).tap();
  await page.getByRole('link', { name: /Begin Back/ }).tap();
  const pad = page.getByRole('button', { name: 'Row done' });
  for (let row = 1; row <= 5; row += 1) {
    await page
      .getByText(new RegExp(`^Row ${row} of`))
      .first()
      .waitFor();
    await pad.tap();
  }
  await page
    .getByText(/^Row 6 of/)
    .first()
    .waitFor();
  await expect.poll(() => page.getByText('100', { exact: true }).count()).toBeGreaterThan(0);
  await page.reload();
  await page
    .getByText(/^Row 6 of/)
    .first()
    .waitFor();
  expect(phone.strangers).toEqual([]);
  await phone.close();
});

const drafted = draft(designOf(newForm()));
if (!drafted.ok) throw new Error('not drafted');
const withDesign = await garmentToLink({
  name: 'Fen',
  pieces: drafted.value.recipes,
  joints: drafted.value.joints,
  design: newForm(),
  rowNotes: [{ piece: 'Back', part: 'Back', row: 1, text: 'loosely', address: 'https://example.org/how' }],
});

it.each(walkedOn('small'))(
  'a link with its design, on a %s phone and by keys alone, is knitted in another size and swatch from its first row',
  async (size) => {
    const host = await plainHost();
    const phone = await openPhone({ size, worker: false });
    const { page } = phone;
    await page.goto(`${host.url}#/open/${withDesign}`);
    await page.getByRole('heading', { level: 1, name: 'Fen' }).waitFor();
    const whose = page.getByLabel('Whose measures');
    await whose.focus();
    // women's M is hers who made it
    await page.keyboard.type('Women, XL');
    await expect.poll(() => whose.inputValue()).toBe('size XL');
    await page.getByLabel(/^Stitches to/).focus();
    await page.keyboard.press('ControlOrMeta+A');
    await page.keyboard.type('18');
    await page.getByLabel(/^Rows to/).focus();
    await page.keyboard.press('ControlOrMeta+A');
    await page.keyboard.type('25');
    // an XL's 45 in and 3 in of ease are 122 cm
    await page.getByRole('row', { name: /^Round the chest (?:12\d|4[78])/ }).waitFor();
    expect(await page.evaluate(() => document.documentElement.scrollWidth - innerWidth)).toBeLessThanOrEqual(
      0,
    );
    expect(await violations(page)).toEqual([]);
    await page.getByRole('button', { name: 'Put it in the workbasket' }).focus();
    await page.keyboard.press('Enter');
    await page.getByRole('link', { name: /Begin Back/ }).focus();
    await page.keyboard.press('Enter');
    const shown = page.getByRole('link', { name: 'shown at example.org' });
    await shown.waitFor();
    expect(await shown.getAttribute('rel')).toContain('noopener');
    expect(await shown.getAttribute('target')).toBe('_blank');
    await page.getByRole('button', { name: 'Row done' }).focus();
    await page.keyboard.press('Enter');
    await page
      .getByText(/^Row 2 of/)
      .first()
      .waitFor();
    expect(phone.complaints).toEqual([]);
    expect(phone.strangers).toEqual([]);
    await phone.close();
  },
);

it('a garment passed on as a file is opened where backups are', async () => {
  const host = await plainHost();
  const phone = await openPhone({ once: true });
  await phone.page.goto(`${host.url}#/backup`);
  const file = {
    name: 'Harbour.ridgeline.txt',
    mimeType: 'text/plain',
    buffer: Buffer.from(`${host.url}#/open/${link}`),
  };
  await phone.page.getByLabel('Choose the file').first().setInputFiles(file);
  await phone.page.getByRole('heading', { level: 1, name: 'Harbour pullover' }).waitFor();
  await phone.close();
});

it('the codes of a garment, photographed in any order, open it; what is missing is said until then', async () => {
  const host = await plainHost();
  const phone = await openPhone({ size: 'small', worker: false });
  const { page } = phone;
  await page.goto(`${host.url}#/sample`);
  await page.getByRole('button', { name: 'Row done' }).waitFor();
  await page.goto(`${host.url}#/g/sample/pass-on`);
  await page.getByRole('img', { name: /Code 1 of \d+/ }).waitFor();
  await page.getByRole('button', { name: 'Next code' }).tap();
  await page.getByRole('img', { name: /Code 2 of \d+/ }).waitFor();

  const [first = '', second = '', ...more] = partsOfLink(link, 600) ?? [];
  expect(more).toHaveLength(1);
  await page.goto(`${host.url}#/open/${second}`);
  await page.getByText('Code 2 of 3 is read').waitFor();
  await page.getByText('Still to photograph: 1 and 3').waitFor();
  await page.goto(`${host.url}#/open/${more[0]}`);
  await page.getByText('Still to photograph: 1.').waitFor();
  await page.goto(`${host.url}#/open/${first}`);
  await page.getByRole('heading', { level: 1, name: 'Harbour pullover' }).waitFor();
  await page.getByRole('button', { name: 'Put it in the workbasket' }).waitFor();
  expect(phone.complaints).toEqual([]);
  await phone.close();
});

it('a damaged link says so and stores nothing', async () => {
  const host = await plainHost();
  const phone = await openPhone({ size: 'small', worker: false });
  const { page } = phone;
  await page.goto(`${host.url}#/open/${link.slice(0, 200)}`);
  await page.getByText(/damaged or cut off/).waitFor();
  await page.goto(`${host.url}#/`);
  await page.getByText('Open the sample').waitFor();
  await phone.close();
});

it.each(walkedOn('small'))(
  'yarn, making up and passing on are whole on a %s phone, and keep what is told them',
  async (size) => {
    const host = await plainHost();
    const phone = await openPhone({ size, worker: false });
    const { page } = phone;
    await page.goto(`${host.url}#/sample`);
    await page.getByRole('button', { name: 'Row done' }).waitFor();
    for (const [name, heading] of [
      ['yarn', 'Yarn'],
      ['making-up', 'Making up'],
      ['pass-on', 'Pass it on'],
    ] as const) {
      await page.goto(`${host.url}#/g/sample/${name}`);
      await page.getByRole('heading', { level: 1, name: heading }).waitFor();
      const wide = await page.evaluate(() => document.documentElement.scrollWidth - innerWidth);
      expect(wide, `${name} scrolls sideways`).toBeLessThanOrEqual(0);
    }
    await page.goto(`${host.url}#/g/sample/making-up`);
    await page.getByRole('button', { name: 'Another step' }).tap();
    await page.getByRole('button', { name: 'Side seams' }).tap();
    await page.getByRole('button', { name: 'Sewn', exact: true }).tap();
    await page.getByText('1 of 10 steps done').waitFor();
    await page.goto(`${host.url}#/g/sample/yarn`);
    await page.getByLabel('Left of the ball').fill('12');
    await page.getByText(/It lasts to row\s\d+/).waitFor();
    await page.reload();
    await page.goto(`${host.url}#/g/sample/making-up`);
    await page.getByText('1 of 10 steps done').waitFor();
    await phone.close();
  },
);

it('the balls that a garment needs are told beside its written pattern in the language of the app; her own are in no link', async () => {
  const need = yarnFor(sampleGarment);
  const balls = need.ok ? need.value.balls : undefined;
  const yarns = sampleGarment.yarns?.map((yarn) => ({ ...yarn, balls: 20 }));
  expect(balls).toBeLessThan(20);
  const host = await plainHost();
  const phone = await openPhone({ worker: false });
  const { page } = phone;
  await page.goto(`${host.url}#/open/${await garmentToLink({ ...sampleGarment, ...(yarns && { yarns }) })}`);
  await page.getByRole('button', { name: 'Put it in the workbasket' }).tap();
  await page.getByRole('link', { name: /Begin Back/ }).waitFor();
  await page.goto(`${page.url()}/pass-on`);
  await page.getByText(`The garment needs ${balls} balls, with a reserve.`).waitFor();
  await page.getByText('Read it here').tap();
  const text = page.getByRole('textbox', { name: 'As a written pattern' });
  expect(await text.inputValue()).toContain(`; ${balls} balls`);
  const saved = page.waitForEvent('download');
  await page.getByRole('button', { name: 'Save the file' }).tap();
  const file = readFileSync(await (await saved).path(), 'utf8');
  const shared = file.match(/#\/open\/([\w.-]+)/)?.[1] ?? '';
  const opened = await linkToGarment(shared);
  expect(opened.ok && opened.value.yarns?.[0]).toMatchObject({ name: sampleGarment.yarns?.[0]?.name });
  expect(opened.ok && opened.value.yarns?.[0]).not.toHaveProperty('balls');
  const settings = await openSettings(page, host.url);
  await wear(page, settings, { name: 'German', width: 390, height: 844, language: 'Deutsch' });
  await page.getByText(`Gebraucht werden ${balls} Knäuel, Reserve eingerechnet.`).waitFor();
  await phone.close();
});
