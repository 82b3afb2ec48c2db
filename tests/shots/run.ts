/**
 * `npm run shots`: writes every screen and state in every look into shots/, which git ignores, to be looked at; all looks
 * of one stand side by side in shots/sheets/. A pattern after the command narrows it: `npm run shots -- 'garment.*(dark|320)'`.
 * `npm run shots -- pictures` takes those of the manifest and of README instead, which are kept (pictures.ts).
 */
import { mkdirSync, rmSync } from 'node:fs';
import type { Page } from 'playwright-core';
import { closePhones, openPhone } from '../browser/drive.ts';
import { knitterAt } from '../browser/knitter.ts';
import { type Look, looks, openSettings, wear } from '../browser/looks.ts';
import { settled } from '../browser/settled.ts';
import { type Sight, sights } from '../browser/sights.ts';
import { buildIfNeeded, dist } from '../run/built.ts';
import { serve } from '../run/serve.ts';
import { takePictures } from './pictures.ts';
import { type Shot, writeSheets } from './sheet.ts';

const folder = 'shots';
const wanted = new RegExp(process.argv[2] ?? '');
const fileOf = (sight: Sight, look: Look) => `${sight.name.replaceAll(' ', '-')}.${look.name}`;

/** A page that is longer goes on in a further picture: a browser draws no more than some 16,000 px in one. */
const MOST_HEIGHT_PX = 3500;

/** An open sheet and what lies at the foot belong to the window; else the page is taken whole, in so many pictures. */
async function take(page: Page, sight: Sight, look: Look): Promise<Shot[]> {
  await sight.again?.(page);
  await settled(page);
  const pathOf = (part: number) => `${folder}/${fileOf(sight, look)}${part === 0 ? '' : `.${part + 1}`}.png`;
  const inWindow = sight.screen === 'knitting' || (await page.locator('dialog[open]').count()) > 0;
  if (inWindow) {
    await page.screenshot({ path: pathOf(0) });
    return [{ look: look.name, path: pathOf(0) }];
  }
  await passBy(page);
  const whole = await page.evaluate(() => document.documentElement.scrollHeight);
  const shots: Shot[] = [];
  for (let y = 0; y < whole; y += MOST_HEIGHT_PX) {
    const path = pathOf(shots.length);
    const clip = { x: 0, y, width: look.width, height: Math.min(whole - y, MOST_HEIGHT_PX) };
    await page.screenshot({ path, fullPage: true, clip });
    shots.push({ look: shots.length === 0 ? look.name : `${look.name}, ${shots.length + 1}`, path });
  }
  return shots;
}

/** What is drawn only once it comes into sight comes into it. */
async function passBy(page: Page): Promise<void> {
  await page.evaluate(async () => {
    for (let y = 0; y < document.documentElement.scrollHeight; y += innerHeight) {
      scrollTo(0, y);
      await new Promise((done) => setTimeout(done, 60));
    }
    scrollTo(0, 0);
  });
  await settled(page);
}

async function takeAll(): Promise<void> {
  buildIfNeeded();
  rmSync(folder, { recursive: true, force: true });
  mkdirSync(`${folder}/sheets`, { recursive: true });
  const host = await serve({ root: dist });
  const phone = await openPhone({ reducedMotion: 'reduce' });
  const knitter = knitterAt(phone.page, host.url);
  const settings = await openSettings(phone.page, host.url);
  const table = await phone.context.newPage();
  await phone.page.bringToFront();
  let taken = 0;
  for (const sight of sights) {
    await sight.come(phone.page, knitter);
    const shots: Shot[] = [];
    for (const look of looks.filter((one) => wanted.test(fileOf(sight, one)))) {
      await wear(phone.page, settings, look);
      shots.push(...(await take(phone.page, sight, look)));
    }
    await wear(phone.page, settings, looks[0]);
    if (shots.length > 0) {
      // a window behind another is never drawn, and is waited for in vain
      await table.bringToFront();
      await writeSheets(table, sight.name, shots, (sheet) => {
        const behind = sheet === 1 ? '' : `.${sheet}`;
        return `${folder}/sheets/${sight.name.replaceAll(' ', '-')}${behind}.png`;
      });
      await phone.page.bringToFront();
    }
    taken += shots.length;
  }
  await phone.close();
  await host.close();
  await closePhones();
  console.log(`${taken} pictures of ${sights.length} sights in ${folder}/`);
}

if (process.argv[2] === 'pictures') await takePictures();
else await takeAll();
