import type { PDFPageProxy } from 'pdfjs-dist';
import { getDocument, PDFWorker } from 'pdfjs-dist/legacy/build/pdf.min.mjs';
import address from 'pdfjs-dist/legacy/build/pdf.worker.min.mjs?worker&url';
import { type Fault, fault, ok, type Result, refuse } from '../../../../knit/fault.ts';
import { scriptUrl } from '../../../start/script-url.ts';
import type { Bit, PageOfBits } from './page.ts';
import { textOfPages } from './text-of-pages.ts';

/** A pattern has fewer; what has more is a book. */
const MOST_PAGES = 120;

/**
 * The text of a PDF. The library is larger than the app, so this file is fetched only when one is opened; it reads in a
 * worker of its own. Faults: 'document protected', 'document damaged', 'document pictures only', 'document too long'.
 */
export async function textOfPdf(data: ArrayBuffer): Promise<Result<string>> {
  const port = typeof Worker === 'function' ? new Worker(scriptUrl(address), { type: 'module' }) : undefined;
  const opening = getDocument({
    data,
    ...(port && { worker: PDFWorker.create({ port }) }),
    // nothing is fetched and nothing is drawn: only the letters are wanted
    useWorkerFetch: false,
    useWasm: false,
    disableFontFace: true,
    isOffscreenCanvasSupported: false,
    verbosity: 0,
  });
  try {
    const found = await opening.promise;
    if (found.numPages > MOST_PAGES)
      return refuse(fault('document too long', { pagesNumber: found.numPages, mostNumber: MOST_PAGES }));
    const pages: PageOfBits[] = [];
    for (let at = 1; at <= found.numPages; at += 1) pages.push(await bitsOf(await found.getPage(at)));
    const text = textOfPages(pages);
    return text === '' ? refuse(fault('document pictures only')) : ok(text);
  } catch (error) {
    return refuse(faultOf(error));
  } finally {
    await opening.destroy();
    port?.terminate();
  }
}

const faultOf = (error: unknown): Fault =>
  error instanceof Error && error.name === 'PasswordException'
    ? fault('document protected')
    : fault('document damaged');

async function bitsOf(page: PDFPageProxy): Promise<PageOfBits> {
  const { height } = page.getViewport({ scale: 1 });
  const { items } = await page.getTextContent();
  const bits = items.flatMap((item): Bit[] => {
    if (!('str' in item) || item.str.trim() === '') return [];
    const [, along, , up, x, y] = item.transform as number[];
    // a mark across the page, or at its edge from the foot upwards
    if (along === undefined || up === undefined || Math.abs(along) > Math.abs(up)) return [];
    return [{ text: plain(item.str), x: x ?? 0, y: y ?? 0, width: item.width, size: Math.abs(up) }];
  });
  return { bits, height };
}

/** Letters that are printed as one, and spaces of another width. */
const LIGATURES: Readonly<Record<string, string>> = { ﬀ: 'ff', ﬁ: 'fi', ﬂ: 'fl', ﬃ: 'ffi', ﬄ: 'ffl' };

const plain = (text: string): string =>
  text
    .replace(/[ﬀ-ﬄ]/g, (letter) => LIGATURES[letter] ?? letter)
    .replace(/[\u2000-\u200a\u202f\u00a0]/g, ' ');
