import { fault, ok, type Result, refuse } from '../../../../knit/fault.ts';
import { keepFromNowOn } from '../../../start/keep-wanted.ts';
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
  if (begins.includes('%PDF-')) return readBy('pdf', file);
  if (begins.startsWith('PK')) return readBy('docx', file);
  const text = await textOf(file);
  return text === undefined ? refuse(fault('document unknown')) : ok(text);
}

const readers = {
  pdf: async () => (await import('./pdf.ts')).textOfPdf,
  docx: async () => (await import('./docx.ts')).textOfDocx,
} as const;

/** What reads a kind is fetched with the first of it, and kept: the next one may come where there is no network. */
async function readBy(kind: keyof typeof readers, file: Blob): Promise<Result<string>> {
  const read = await readers[kind]().catch(() => undefined);
  if (read === undefined) return refuse(fault('app-incomplete'));
  void keepFromNowOn(kind);
  return read(await file.arrayBuffer());
}
