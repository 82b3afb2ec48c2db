import { afterAll, expect, it } from 'vitest';
import { sampleGarment } from '../../src/knit/garment/sample.ts';
import { garmentToLink } from '../../src/store/share/link.ts';
import { words as passOn } from '../../src/words/en/pass-on.ts';
import { words as pattern } from '../../src/words/en/pattern.ts';
import { dist } from '../run/built.ts';
import { serve } from '../run/serve.ts';
import { openPhone, removeProfiles } from './drive.ts';

afterAll(removeProfiles);

/** In the place of the worker's own script: work without end. */
const endless = 'addEventListener("message", () => { for (;;); });';
const worker = /\/assets\/worker-[\w-]+\.js$/;

it('a link or a text that takes for ever leaves the page answering taps, and can be stopped; others are read by the worker', async () => {
  const host = await serve({ root: dist });
  const phone = await openPhone({ worker: false });
  const { page } = phone;
  const link = `${host.url}#/open/${await garmentToLink(sampleGarment)}`;
  const button = (name: string) => page.getByRole('button', { name, exact: true });
  let asked = 0;
  await page.route(worker, (route) => {
    asked += 1;
    return route.fulfill({ contentType: 'text/javascript', body: endless });
  });
  await page.goto(link);
  await button(passOn.stop).tap();
  await page.getByText(passOn.stopped).waitFor();
  await page.goto(`${host.url}#/read`);
  await page
    .getByRole('textbox', { name: pattern.text })
    .fill('SCARF\nCast on 20 sts.\nRow 1: Knit.\nBind off.');
  await button(pattern.stop).tap();
  await page.getByText(pattern.stopped).waitFor();
  expect(asked).toBeGreaterThanOrEqual(2);
  await page.unroute(worker);
  await button(pattern.readOn).tap();
  await page.getByText('All counts agree').waitFor();
  await page.goto(link);
  await page.getByRole('heading', { level: 1, name: sampleGarment.name }).waitFor();
  // the page's policy lets it be, and nothing was worked out by the page itself
  expect(phone.complaints).toEqual([]);
  await phone.close();
  await host.close();
});
