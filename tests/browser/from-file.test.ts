import { strToU8, zipSync } from 'fflate';
import type { Page } from 'playwright-core';
import { afterAll, expect, it } from 'vitest';
import { dist } from '../run/built.ts';
import { serve } from '../run/serve.ts';
import { openPhone, removeProfiles } from './drive.ts';
import { until } from './until.ts';
import { workerReady } from './worker.ts';

afterAll(removeProfiles);

/** A pattern of our own, as a maker would set it: two columns under a title, a head and numbers on each page. */
const set = `<!doctype html><style>
    @page { size: A4; margin: 25mm 18mm }
    body { font: 11pt/1.4 'DejaVu Sans', sans-serif; hyphens: manual }
    main { columns: 2; column-gap: 12mm } h2 { font-size: 12pt } .break { break-before: page }
  </style><h1>Pullover for long walks, plain and warm</h1><main>
  <h2>BACK</h2><p>With 4 mm needles cast on 90 sts and work in k2, p2 rib for 12 rows, ending with a WS row. Then con&shy;tinue in stocking stitch for 60 rows.</p>
  <p>Bind off 4 sts at the beginning of the next 2 rows. 82 sts.</p>
  <p>Work 40 rows in stocking stitch.</p><p>Bind off.</p></main><main class="break"><h2>SLEEVES (make 2)</h2><p>Cast on 42 sts and work in k2, p2 rib for 12 rows.</p>
  <p>Work 8 rows in stocking stitch, then increase 1 st at each end of the next row. 44 sts.</p><p>Bind off.</p></main>`;

/** Files that are kept because they were wanted. */
const keptWanted = (page: Page): Promise<string[]> =>
  page.evaluate(async () => {
    const name = (await caches.keys()).find((one) => one.startsWith('wanted-'));
    return name === undefined ? [] : (await (await caches.open(name)).keys()).map(({ url }) => url);
  });

it('a pattern in a PDF or a word processor’s file is read as its writer typed it, without what every page repeats', async () => {
  const host = await serve({ root: dist });
  const address = `${host.url}#/read`;
  const phone = await openPhone();
  const { page } = phone;
  await page.setContent(set);
  const pdf = await page.pdf({
    displayHeaderFooter: true,
    headerTemplate: '<span style="font-size:8pt">Plain and warm, our own</span>',
    footerTemplate: '<span style="font-size:8pt;margin:auto" class="pageNumber"></span>',
    preferCSSPageSize: true,
  });
  const choose = (name: string, mimeType: string, buffer: Buffer) =>
    page.locator('.pattern-file [type=file]').setInputFiles({ name, mimeType, buffer });
  const field = page.getByLabel('The text', { exact: true });
  const filled = (like: RegExp) =>
    until(
      () => field.inputValue(),
      (text) => like.test(text),
    );

  await page.goto(address);
  await workerReady(page);
  await field.waitFor();
  await choose('walks.pdf', 'application/pdf', pdf);
  const text = await filled(/SLEEVES/);
  expect(text).toContain('ending with a WS row. Then continue in stocking stitch for 60 rows.');
  expect(text).not.toMatch(/our own|^\d$/m);
  await page.getByText('2 pieces').waitFor();

  // what stands there already is not thrown away unasked
  const paragraph = (words: string) => `<w:p><w:pPr/><w:r><w:t>${words}</w:t></w:r></w:p>`;
  const body = ['SCARF', 'Cast on 30 sts &amp; knit 60 rows.', 'Bind off.'].map(paragraph).join('');
  const xml = `<?xml version="1.0"?><w:document xmlns:w="http://schemas.openxmlformats.org/wordprocessingml/2006/main"><w:body>${body}<w:sectPr/></w:body></w:document>`;
  await choose(
    'scarf.docx',
    'application/octet-stream',
    Buffer.from(zipSync({ 'word/document.xml': strToU8(xml) })),
  );
  await page.getByText('A text was handed over').waitFor();
  expect(await field.inputValue()).toBe(text);
  await page.getByRole('button', { name: 'Read it instead of what stands here' }).tap();
  expect(await filled(/^SCARF/)).toBe('SCARF\nCast on 30 sts & knit 60 rows.\nBind off.');

  // what reads a PDF is kept now: the next one needs no network
  await page.reload();
  await field.waitFor();
  await choose('walks.pdf', 'application/pdf', pdf);
  await page.getByText('A text was handed over').waitFor();
  await expect.poll(() => keptWanted(page), { timeout: 20_000 }).toHaveLength(3);
  await host.close();
  await page.reload();
  await field.waitFor();
  await choose('walks.pdf', 'application/pdf', pdf);
  await page.getByText('A text was handed over').waitFor();

  // a picture of a page says what helps
  await page.goto('about:blank');
  await page.setContent('<svg width="200" height="200"><rect width="90" height="90"/></svg>');
  const picture = await page.pdf();
  await page.goto(address);
  await field.waitFor();
  await choose('scan.pdf', 'application/pdf', picture);
  await page.getByText('pictures of pages, no text').waitFor();
  expect(await field.inputValue()).toMatch(/^SCARF/);
  await phone.close();
});
