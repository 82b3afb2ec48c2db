import { afterAll, expect, it } from 'vitest';
import { dist } from '../run/built.ts';
import { serve } from '../run/serve.ts';
import { openPhone, removeProfiles } from './drive.ts';
import { knitterAt } from './knitter.ts';
import { until } from './until.ts';

afterAll(removeProfiles);

it('notes typed in two windows are both kept, and one that is being typed outlives the page', async () => {
  const host = await serve({ root: dist });
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
  await host.close();
});
