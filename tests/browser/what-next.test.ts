import { expect, it } from 'vitest';
import { hostAndPhone } from './host-and-phone.ts';
import { knitterAt } from './knitter.ts';
import { atRow } from './sights.ts';

const at = hostAndPhone();

it('a sleeve that is done is not knitted on: the workbasket leads to the next in one tap, and to the making up where all is knitted', async () => {
  const { page } = await at.open({ size: 'small' });
  const knitter = knitterAt(page, at.url);
  const inHand = page.locator('.in-hand-card');
  await knitter.openSample();
  await atRow(page, knitter, 139, '#/k/sample/sleeve/0/1');
  await knitter.open('#/');
  await inHand.getByRole('link', { name: 'Continue knitting' }).waitFor();
  await knitter.open('#/k/sample/sleeve/0/1');
  await knitter.shows(139);
  await knitter.knit(1);
  await knitter.open('#/');
  await inHand.getByText('all 139 rows done').waitFor();
  await inHand.getByRole('link', { name: 'Next: Sleeve no. 2' }).tap();
  await knitter.shows(1);
  await page.getByText('Sleeve no. 2').first().waitFor();
  // what is done stands above the shelves again when it was knitted last
  await knitter.open('#/');
  expect(await inHand.getByRole('link', { name: 'Continue knitting' }).count()).toBe(0);
});
