import type { Page } from 'playwright-core';
import type { Served } from '../run/serve.ts';
import type { Engine } from './engine.ts';
import type { Figure } from './figure.ts';
import { openBack, padOf, rowInHand, rowShown, sampleBack, thumbOn } from './tapping.ts';

/** Screens by their addresses, all of the sample garment. */
const screens = [
  '#/settings',
  '#/g/sample',
  '#/g/sample/yarn',
  '#/g/sample/making-up',
  '#/g/sample/pass-on',
  '#/g/sample/record',
  '#/g/sample/print',
  '#/edit/sample',
  '#/new',
  '#/draft',
  '#/samples',
  `#/k/${sampleBack}/tools`,
  `#/k/${sampleBack}/check`,
  `#/k/${sampleBack}/find`,
  `#/k/${sampleBack}/notes`,
  `#/k/${sampleBack}/pace`,
  `#/k/${sampleBack}?row=40`,
  '#/',
] as const;

/** An engine may not know a part of the policy; it says so and keeps to the rest. */
const unknownDirective = /Unrecognized Content-Security-Policy directive/;

/** Knits, takes back, looks at every screen, knits on: nothing may be refused by the policy and nothing sent elsewhere. */
export async function walk(engine: Engine, host: Served): Promise<Figure> {
  const machine = await engine.open();
  const { page } = machine;
  const faults: string[] = [];
  await openBack(page, host.url);
  const refused = await hearRefusals(page);
  const knit = async (rows: number) => {
    const { x, y } = await thumbOn(page);
    for (let i = 0; i < rows; i += 1) {
      const { row } = await rowInHand(page);
      await machine.tap(x, y);
      await rowShown(page, row + 1);
    }
  };
  await knit(20);
  await page.getByRole('button', { name: 'Undo' }).click();
  await rowShown(page, 20);
  let seen = 0;
  for (const screen of screens) {
    await page.evaluate((hash) => {
      location.hash = hash;
    }, screen);
    const heading = page.locator('h1').first();
    const said = await heading.textContent({ timeout: 10_000 }).catch(() => undefined);
    await page.waitForTimeout(300);
    if (said === undefined || (await page.getByText('There is no such page').count()) > 0)
      faults.push(`no ${screen}`);
    else seen += 1;
  }
  await page.evaluate(() => {
    location.hash = '#/continue';
  });
  await padOf(page).waitFor();
  await knit(5);
  const { row } = await rowInHand(page);
  if (row !== 25) faults.push(`row ${row} is in hand at the end, not 25`);
  faults.push(
    ...(await refused()),
    ...machine.complaints.filter((said) => !unknownDirective.test(said)),
    ...(machine.strangers ?? []),
  );
  await machine.close();
  return {
    name: `${engine.name}: the walk through ${screens.length} screens under policy and Trusted Types`,
    measured:
      faults.length === 0
        ? `${seen} screens, 25 rows, no refusal, no stranger asked`
        : faults.slice(0, 3).join('; '),
    bar: `${screens.length} screens, nothing refused, nothing sent elsewhere`,
    met: faults.length === 0 && seen === screens.length,
  };
}

/** Hears what the page's policy refuses, from now on. */
async function hearRefusals(page: Page): Promise<() => Promise<string[]>> {
  await page.evaluate(() => {
    const refused: string[] = [];
    Object.assign(window, { refused });
    document.addEventListener('securitypolicyviolation', (event) =>
      refused.push(`the policy refused ${event.violatedDirective} ${event.blockedURI}`),
    );
  });
  return () => page.evaluate(() => (window as unknown as { refused: string[] }).refused);
}
