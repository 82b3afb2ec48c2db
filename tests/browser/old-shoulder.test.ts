import { readFileSync } from 'node:fs';
import type { Page } from 'playwright-core';
import { describe, expect, it } from 'vitest';
import type { LogEntry } from '../../src/progress/log.ts';
import type { PlaceRecord, PlanRecord } from '../../src/store/records.ts';
import { oldShoulder } from '../knit/piece/old-shoulder.ts';
import { inTheBox } from './backed-up.ts';
import { phones } from './drive.ts';
import { hostAndPhone } from './host-and-phone.ts';

const at = hostAndPhone();

/** Eight rows of the body and four of the shoulder, with two of its three turns. */
const KNITTED = 12;

/** A backup of the first version, of a box with a back whose shoulder is bound off in the row after its last turn. */
function olderBox(): Buffer {
  const box = JSON.parse(readFileSync('tests/store/golden/backup-v1.json', 'utf8')) as object;
  const { recipe, ...plan } = oldShoulder();
  const garment = { id: 'old', name: 'Old back', createdAt: 1000, changedAt: 1_600_000_000_000 };
  const entries = Array.from({ length: KNITTED }, (_, i) => ({
    id: `olderbox-row${i + 1}`,
    make: 'old/back/0/1',
    seq: i + 1,
    at: 1_600_000_000_000 + i * 60_000,
    kind: 'row',
    row: i + 1,
  }));
  const pieces = [{ id: 'back', recipe: { name: 'Back', makes: 1, parts: [recipe] } }];
  const id = 'old/back/0/s/1';
  return Buffer.from(
    JSON.stringify({
      ...box,
      garments: [{ ...garment, pieces }],
      plans: [{ id, garment: 'old', piece: 'back', part: 0, mirror: false, version: 1, plan }],
      entries,
      photos: [],
    }),
  );
}

async function bringIn(page: Page): Promise<void> {
  await page.goto(`${at.url}#/backup`);
  await page
    .getByLabel('Choose the file')
    .first()
    .setInputFiles({ name: 'backup.json', mimeType: 'application/json', buffer: olderBox() });
  await page.getByRole('button', { name: 'Unite', exact: true }).tap();
  await page.getByText('The file is taken in.').waitFor();
}

/** What is kept of the rows knitted: their entries, and how many the place has. */
async function knitted(page: Page) {
  const make = 'old/back/0/1';
  const log = [...(await inTheBox(page, 'log')).values()] as LogEntry[];
  const place = (await inTheBox(page, 'places')).get(make) as PlaceRecord;
  const { plan } = (await inTheBox(page, 'plans')).get(place.plan) as PlanRecord;
  return {
    rows: place.rows,
    entries: log.filter((one) => one.make === make && one.kind === 'row').map(({ row }) => row),
    steps: plan.rows.map(({ steps }) => JSON.stringify(steps)),
  };
}

const fits = async (page: Page) =>
  expect(await page.evaluate(() => document.documentElement.scrollWidth - innerWidth)).toBeLessThanOrEqual(0);

describe('a garment of an older box whose shoulder cannot be finished as it was planned', () => {
  for (const size of ['common', 'small'] as const) {
    it(`is offered a new plan by name, and what is knitted stays (${phones[size].width} px)`, async () => {
      const { page } = await at.open({ size });
      await bringIn(page);
      await page.goto(`${at.url}#/g/old`);
      await page
        .getByText('The shoulder of this garment cannot be finished as it was planned; plan it anew')
        .waitFor();
      await fits(page);
      const before = await knitted(page);
      expect(before.rows).toBe(KNITTED);
      await page.locator('.notice').getByRole('link', { name: /Back/ }).tap();
      await page.getByText('Close the shoulder so that it can be finished').first().waitFor();
      await fits(page);
      await page.getByRole('button', { name: 'Knit by this plan', exact: true }).tap();
      await page.getByText('From here on by the new plan. The old one stays readable.').waitFor();
      const after = await knitted(page);
      expect(after.rows).toBe(KNITTED);
      expect(after.entries).toEqual(before.entries);
      expect(after.steps.slice(0, KNITTED)).toEqual(before.steps.slice(0, KNITTED));
      // one row back from the last turn, and one over all stitches
      expect(after.steps.length).toBe(before.steps.length + 2);
      await page.goto(`${at.url}#/g/old`);
      await page.getByRole('heading', { level: 1, name: 'Old back' }).waitFor();
      await expect.poll(() => page.getByText('plan it anew').count()).toBe(0);
    });
  }
});
