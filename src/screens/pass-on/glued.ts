import { heldToCounted } from '../../words/counted-words.ts';
import { languages } from '../../words/languages.ts';

/** A number with its unit, with what it counts or with its name stays on one line of what is shown; what is saved has plain spaces. */
export function glued(line: string, tag: string): string {
  const language = languages.find((one) => one === tag) ?? 'en';
  const withUnits = line.replace(/(\d\)?) (?=(?:mm|cm|in|po|Zoll|m|yd|g|%)(?!\p{L}))/gu, '$1\u00a0');
  return heldToCounted(withUnits, language, '(?<![\\p{L}\\d])\\d+\\)?', '\\d+(?!\\d)');
}
