import { fault, ok, type Result, refuse } from '../../../../knit/fault.ts';
import { keepWanted } from '../../../start/keep-wanted.ts';
import { textOf } from '../handed-text.ts';

/** Larger than a pattern with its pictures; bytes. */
const LARGEST = 60_000_000;

/**
 * The text of a pattern that lies in a file: a PDF, a word processor's .docx, plain text. Told apart by how they begin,
 * since a file that was passed on often has another name. Faults: 'document too large', 'document unknown', those of
 * the kind; 'app-incomplete' where what reads it is not to be had.
 */
export async function textOfFile(file: Blob): Promise<Result<string>> {
  if (file.size > LARGEST)
    return refuse(
      fault('document too large', { sizeMillions: file.size / 1e6, mostMillions: LARGEST / 1e6 }),
    );
  const begins = new TextDecoder('latin1').decode(await file.slice(0, 1024).arrayBuffer());
  if (begins.includes('%PDF-')) {
    const pdf = await import('./pdf.ts').catch(() => undefined);
    if (pdf === undefined) return refuse(fault('app-incomplete'));
    const read = await pdf.textOfPdf(await file.arrayBuffer());
    // the next one may come where there is no network
    void keepWanted(globalThis.navigator?.serviceWorker?.controller ?? undefined, 'pdf');
    return read;
  }
  if (begins.startsWith('PK')) {
    const docx = await import('./docx.ts').catch(() => undefined);
    return docx ? docx.textOfDocx(await file.arrayBuffer()) : refuse(fault('app-incomplete'));
  }
  const text = await textOf(file);
  return text === undefined ? refuse(fault('document unknown')) : ok(text);
}
