import type { Plugin } from 'vite';
import { type Language, languageOfPath } from '../words/languages.ts';

/**
 * What is put into the texts of the catalogues in what is built alone: what is typed, sent and compared, and found by
 * tests, is as it was written. What is written down for others is a text of its own and stays as it is.
 */
export const asBuilt = (
  name: string,
  put: (text: string, language: Language) => string,
  isLeft: (path: string) => boolean = () => false,
): Plugin => ({
  name,
  apply: 'build',
  enforce: 'pre',
  transform(code, id) {
    const language = languageOfPath(id);
    if (language === undefined || id.includes('/written/') || isLeft(id)) return null;
    const text = put(code, language);
    return text === code ? null : { code: text, map: null };
  },
});
