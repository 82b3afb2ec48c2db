import { basename } from 'node:path';
import { heldToCounted } from '../words/counted-words.ts';
import type { Language } from '../words/languages.ts';
import { asBuilt } from './as-built.ts';

/** A catalogue's text with no-break spaces where a line may not end. */
export const withCounted = (text: string, language: Language): string =>
  heldToCounted(text, language, '(?:\\{\\w+\\}|(?<![\\p{L}\\d])\\d+)', '\\{\\w+\\}');

/** Rows are held together where they are shown. */
export const counted = asBuilt('counted-words', withCounted, (path) => basename(path).startsWith('row.ts'));
