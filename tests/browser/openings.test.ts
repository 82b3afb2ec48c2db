import { mkdirSync } from 'node:fs';
import type { Page } from 'playwright-core';
import { afterAll, afterEach, beforeAll, describe, expect, it } from 'vitest';
import { openPhone, type Phone, removeProfiles, walkedBy } from './drive.ts';
import { plainHost } from './host-and-phone.ts';
import { foldsMade, unfold } from './unfolded.ts';
import { until } from './until.ts';

let host: Awaited<ReturnType<typeof plainHost>>;
let phone: Phone | undefined;

beforeAll(async () => {
  host = await plainHost();
});

afterEach(async () => {
  await phone?.close();
  phone = undefined;
});

afterAll(async () => {
  removeProfiles();
});

const choose = (page: Page, legend: string, option: string) =>
  page.getByRole('group', { name: legend, exact: true }).getByText(option, { exact: true }).tap();

/** Pictures to look at, where a folder for them is named. */
async function shot(page: Page, name: string): Promise<void> {
  const folder = process.env.RIDGELINE_SHOTS;
  if (folder === undefined) return;
  mkdirSync(folder, { recursive: true });
  await page.screenshot({ path: `${folder}/opening-${name}.png`, fullPage: true });
}

/** How deep a placket is, and its bands, are asked for where it is chosen; how many buttons follows from its depth. */
async function placketAsked(page: Page): Promise<void> {
  const depth = page.getByRole('textbox', { name: 'Opening, from the front neck down' });
  await depth.fill('7');
  await unfold(page);
  const band = page.locator('[data-edge="band"]');
  await band.getByText('Across a button').waitFor();
  expect(await band.getByLabel('Buttons', { exact: true }).count()).toBe(0);
  await choose(page, 'Middle of the neck', 'Held, for the band to go on');
  await page.locator('[data-edge="neck"] input:checked + .choice-words', { hasText: 'Held' }).waitFor();
}

/** Which lines of the drawing are double, all edges being open: a thinner one of another colour lies on its own path. */
const drawnTwice = (page: Page) =>
  page.locator('.draft-drawing path').evaluateAll((paths) => {
    const lines = paths.map((path) => {
      const { stroke, strokeWidth } = getComputedStyle(path);
      return { path, d: path.getAttribute('d'), stroke, wide: Number.parseFloat(strokeWidth) };
    });
    const double = lines.filter(({ d, stroke, wide, path }) =>
      lines.some(
        (over) =>
          over.d === d &&
          over.stroke !== stroke &&
          over.wide < wide &&
          path.compareDocumentPosition(over.path) === Node.DOCUMENT_POSITION_FOLLOWING,
      ),
    );
    const openings = double.filter(({ path }) => path.matches('.draft-opening')).length;
    return { others: double.length - openings, openings: openings > 0 };
  });

/** Each opening with the armhole that it goes with, and what its own step of the making up is called. */
const openings = [
  ['Drop shoulder', 'On the left shoulder, with buttons', 'Button the left shoulder'],
  ['Drop shoulder', 'Envelope: both shoulders lie over each other', 'Lay the shoulders over each other'],
  ['Drop shoulder', 'At the back, with a button', 'Fasten the opening of the back'],
  ['Drop shoulder', 'Placket at the front, with buttons', 'Close the placket below'],
  ['Raglan', 'Along the left back raglan, with a button', 'Fasten the opening of the raglan'],
] as const;

describe('a small child’s pullover that opens at the neck', () => {
  it.each(walkedBy(openings, ([armhole, opening]) => armhole === 'Raglan' || opening.startsWith('Placket')))(
    '%s, %s: from the draft to the last step of the making up',
    async (armhole, opening, step) => {
      phone = await openPhone({ size: 'common', worker: false });
      const { page } = phone;
      await page.goto(`${host.url}#/draft`);
      await foldsMade(page);
      await unfold(page);
      await page.getByLabel('Whose measures').selectOption({ label: 'Children (years), 2' });
      await choose(page, 'Armhole', armhole);
      await unfold(page);
      await choose(page, 'Opening for the head', 'None');
      // the verdict stands beside the choice, and changes with it
      const neck = page.locator('[data-edge="neck"]');
      const verdict = () => neck.locator('.neck-verdict').innerText();
      const before = await verdict();
      await choose(page, 'Opening for the head', opening);
      await until(verdict, (now) => now !== before && /goes over a head/.test(now));
      expect(await drawnTwice(page)).toEqual({ others: 0, openings: true });
      await page.getByText('Double line: where it opens for the head.').waitFor();
      if (step === 'Close the placket below') await placketAsked(page);
      await shot(page, `${step}-draft`);
      await page.getByLabel('Name of the garment').fill('Small pullover');
      await page.getByRole('button', { name: 'Make it', exact: true }).tap();
      await page.getByRole('heading', { level: 1, name: 'Small pullover' }).waitFor();
      await page.evaluate(() => {
        location.hash = `${location.hash}/making-up`;
      });
      await page.getByRole('heading', { level: 1, name: 'Making up' }).waitFor();
      const steps = page.locator('.making-step');
      const count = await until(
        () => steps.count(),
        (all) => all > 4,
      );
      const title = page.locator('.making-card h2');
      const seen: string[] = [];
      for (let i = 0; i < count; i += 1) {
        const now = await until(
          () => title.innerText(),
          (text) => text !== seen.at(-1),
        );
        seen.push(now);
        if (now === step) await shot(page, step);
        await page.locator('.making-do button').first().tap();
      }
      await page.getByText(`${count} of ${count} steps done`).first().waitFor();
      expect(seen).toContain(step);
      expect(seen.at(-1)).toBe('Weave in the ends');
      expect(phone.complaints).toEqual([]);
    },
  );
});
