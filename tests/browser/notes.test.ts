import { afterAll, expect, it } from 'vitest';
import { openPhone, removeProfiles } from './drive.ts';
import { plainHost } from './host-and-phone.ts';
import { knitterAt } from './knitter.ts';
import { until } from './until.ts';

afterAll(removeProfiles);

it('notes typed in two windows are both kept, and one that is being typed outlives the page', async () => {
  const host = await plainHost();
  const phone = await openPhone({ worker: false });
  const { page: one } = phone;
  await knitterAt(one, host.url).openSample();
  const two = await phone.context.newPage();
  const pages = [one, two];
  for (const page of pages) {
    await page.goto(`${host.url}#/g/sample`);
    await page
      .locator('summary', {
        has: page.getByRole('heading', { name: 'Parts, notes, edit, pass on, print', exact: true }),
      })
      .click();
  }
  const [first, second] = pages.map((page) => page.getByLabel('Notes', { exact: true }));
  if (!first || !second) throw new Error('There are two windows.');
  await second.waitFor();
  const before = await second.inputValue();
  await second.pressSequentially(' second, from B');
  await first.fill(`${before}\nfirst, from A`);
  await first.blur();
  await one.locator('.notes').getByText('Kept', { exact: true }).waitFor();
  await second.blur();
  for (const field of [first, second])
    await until(
      () => field.inputValue(),
      (text) => text.includes('first, from A') && text.includes('second, from B'),
    );
  await first.fill('third, still being typed');
  await one.evaluate(() => {
    Object.defineProperty(document, 'visibilityState', { value: 'hidden' });
    document.dispatchEvent(new Event('visibilitychange'));
  });
  await until(
    () => second.inputValue(),
    (text) => text.includes('third, still being typed'),
  );
  expect(phone.complaints).toEqual([]);
  await phone.close();
});

it.each([
  {
    locale: 'en',
    size: 'small',
    which: 'For which row',
    keep: 'Keep the note',
    before: 'Before row 5',
    row: 'Row',
  },
  {
    locale: 'de',
    size: 'common',
    which: 'Zu welcher Reihe',
    keep: 'Notiz behalten',
    before: 'Vor Reihe 5',
    row: 'Reihe',
  },
] as const)(
  'a note for a row ahead ($locale) is among the rows ahead, stands before its row, and goes with it',
  async ({ locale, size, which, keep, before, row }) => {
    const host = await plainHost();
    const { page, complaints, close } = await openPhone({ worker: false, locale, size });
    await page.goto(`${host.url}#/sample`);
    const done = page.getByRole('button', { name: /^(Row done|Reihe fertig)$/ });
    await done.waitFor();
    const address = page.url();
    await page.goto(`${address}/notes`);
    await page.getByRole('textbox', { name: which }).fill('5');
    await page.getByRole('textbox', { name: new RegExp(`${row} 5`, 'i') }).fill('the blue marker');
    expect(await page.evaluate(() => document.documentElement.scrollWidth - innerWidth)).toBeLessThanOrEqual(
      0,
    );
    await page.getByRole('button', { name: keep }).tap();
    await page.getByText('the blue marker').waitFor();
    await page.goto(address);
    await page.locator('.ladder').getByText('the blue marker').waitFor();
    const card = page.getByRole('region', { name: before });
    for (let n = 1; n < 5; n += 1) {
      expect(await card.count()).toBe(0);
      await page
        .getByText(new RegExp(`^${row} ${n} `))
        .first()
        .waitFor();
      await done.tap();
    }
    await card.getByText('the blue marker').waitFor();
    await done.tap();
    await card.waitFor({ state: 'detached' });
    expect(complaints).toEqual([]);
    await close();
  },
);
