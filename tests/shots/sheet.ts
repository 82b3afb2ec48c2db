import { readFileSync } from 'node:fs';
import type { Page } from 'playwright-core';

/** A picture of a sight, and the look it was taken in. */
export interface Shot {
  readonly look: string;
  /** of a PNG */
  readonly path: string;
}

/** px of a sheet: what a picture is seen at without being made smaller. */
const WIDE_PX = 1640;
const GAP_PX = 12;
const ROWS = 2;
/** Of a picture one stretch is so high at the most, before it is made smaller: a longer one goes on beside it. */
const STRETCH_PX = 900;
const SCALE = 0.75;

/** A stretch of a picture from its top on, px of the picture. */
interface Stretch {
  readonly title: string;
  readonly data: string;
  readonly top: number;
  readonly width: number;
  readonly height: number;
}

/**
 * All looks of a sight side by side: what differs between them is seen at once. As many sheets as it takes for letters
 * to be read, the second beginning with '.2' behind the name.
 */
export async function writeSheets(
  page: Page,
  title: string,
  shots: readonly Shot[],
  path: (sheet: number) => string,
): Promise<void> {
  const sheets = inSheets(shots.flatMap(stretchesOf));
  for (const [i, stretches] of sheets.entries()) {
    await page.setContent(
      `<style>body{margin:0;padding:${GAP_PX}px;width:${WIDE_PX}px;background:#777;font:18px sans-serif;color:#fff}
      main{display:flex;flex-wrap:wrap;gap:${GAP_PX}px}figure{margin:0}
      div{background-repeat:no-repeat}</style>
      <h1>${title}${sheets.length > 1 ? ` ${i + 1} / ${sheets.length}` : ''}</h1>
      <main>${stretches.map(figure).join('')}</main>`,
      { waitUntil: 'load' },
    );
    await page.locator('body').screenshot({ path: path(i + 1) });
  }
}

function figure({ title, data, top, width, height }: Stretch): string {
  const [wide, high, up] = [width, height, -top].map((px) => `${px * SCALE}px`);
  const box = `width:${wide};height:${high};background-size:${wide} auto;background-position:0 ${up}`;
  return `<figure><figcaption>${title}</figcaption><div style="${box};background-image:url(data:image/png;base64,${data})"></div></figure>`;
}

function stretchesOf({ look, path }: Shot): Stretch[] {
  const png = readFileSync(path);
  // PNG (W3C Recommendation), 11.2.1: width and height are the first figures of the header
  const [width, all] = [png.readUInt32BE(16), png.readUInt32BE(20)];
  const count = Math.ceil(all / STRETCH_PX);
  return Array.from({ length: count }, (_, i) => ({
    title: count > 1 ? `${look} ${i + 1} / ${count}` : look,
    data: png.toString('base64'),
    top: i * STRETCH_PX,
    width,
    height: Math.min(STRETCH_PX, all - i * STRETCH_PX),
  }));
}

/** Laid in lines as words are, so many lines to a sheet. */
function inSheets(all: readonly Stretch[]): Stretch[][] {
  const lines: Stretch[][] = [];
  let left = 0;
  for (const stretch of all) {
    const wide = stretch.width * SCALE + GAP_PX;
    if (lines.length === 0 || wide > left) {
      lines.push([]);
      left = WIDE_PX + GAP_PX;
    }
    lines.at(-1)?.push(stretch);
    left -= wide;
  }
  const sheets: Stretch[][] = [];
  for (let i = 0; i < lines.length; i += ROWS) sheets.push(lines.slice(i, i + ROWS).flat());
  return sheets;
}
