/**
 * Draws the PNG icons in public/icons from icon.svg and brings them down to a few colours (ImageMagick).
 * Run it after the drawing was changed; the PNGs are kept.
 */
import { execFileSync } from 'node:child_process';
import { readFileSync, writeFileSync } from 'node:fs';
import { chromium, type Page } from 'playwright-core';
import { requireChromium } from './chromium.ts';

const folder = 'public/icons';
const drawing = readFileSync(`${folder}/icon.svg`, 'utf8');

/** A launcher may cut anything outside the inner 80 %, so there the drawing is smaller and the cloth fills all. */
const filled = (scale: number) =>
  drawing.replace(' rx="96"', '').replace(/scale\([\d.]+\)/, `scale(${scale})`);

const icons: readonly { name: string; sizePx: number; svg: string }[] = [
  { name: 'icon-192', sizePx: 192, svg: drawing },
  { name: 'icon-512', sizePx: 512, svg: drawing },
  { name: 'maskable-512', sizePx: 512, svg: filled(0.92) },
  { name: 'apple-touch-180', sizePx: 180, svg: filled(1.08) },
];

async function draw(page: Page, svg: string, sizePx: number): Promise<Buffer> {
  await page.setViewportSize({ width: sizePx, height: sizePx });
  await page.setContent(`<style>body{margin:0}svg{display:block;width:${sizePx}px}</style>${svg}`);
  const png = await page.screenshot({ omitBackground: true });
  return execFileSync(
    'convert',
    ['png:-', '-strip', '-colors', '8', '-define', 'png:compression-level=9', 'png8:-'],
    {
      input: png,
    },
  );
}

const browser = await chromium.launch({ executablePath: requireChromium(), args: ['--no-sandbox'] });
const page = await browser.newPage();
for (const { name, sizePx, svg } of icons) {
  const png = await draw(page, svg, sizePx);
  writeFileSync(`${folder}/${name}.png`, png);
  console.log(`${folder}/${name}.png ${png.length} bytes`);
}
await browser.close();
