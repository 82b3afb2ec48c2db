import { signal } from '@preact/signals';
import { takeSharedText } from '../../backup/shared-file.ts';

/** A text that came from another app, or out of a file: shown as such, and taken in only when she says so. */
export const handedText = signal<string | undefined>(undefined);

/** Looks whether another app has handed one over. */
export async function lookForText(): Promise<void> {
  // a device without such a keep has none
  const text = await takeSharedText().catch(() => undefined);
  if (text !== undefined) handedText.value = text;
}

/** Nothing but the address of a page: pages are not fetched, so there is nothing to read. */
export const isAddress = (text: string): boolean => /^https?:\/\/\S+$/.test(text.trim());

/** Longer than any pattern; what is more is surely something else. Characters. */
const LONGEST = 400_000;

/** The text of a file that is no backup; undefined where it is none to be read by a knitter. */
export async function textOf(file: Blob): Promise<string | undefined> {
  if (file.size > LONGEST) return undefined;
  try {
    const text = new TextDecoder('utf-8', { fatal: true }).decode(await file.arrayBuffer());
    // a letter stands in it, and nothing that no keyboard types
    return /\p{L}/u.test(text) && !/[^\P{Cc}\s]/u.test(text) && !/^\s*[{[]/.test(text) ? text : undefined;
  } catch {
    return undefined;
  }
}
