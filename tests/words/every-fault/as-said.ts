import type { Language } from '../../../src/words/settings.ts';

/** How the figures of a fault are said, written apart from what says them. */
const words: Readonly<Record<Language, Readonly<Record<string, string>>>> = {
  en: {
    RS: 'right side',
    WS: 'wrong side',
    right: 'the right edge',
    left: 'the left edge',
    stocking: 'stockinette',
    'rib 2x2': 'rib, 2 by 2',
  },
  de: {
    RS: 'Hinreihe',
    WS: 'Rückreihe',
    right: 'rechten Rand',
    left: 'linken Rand',
    stocking: 'glatt rechts',
    'rib 2x2': 'Rippen 2 re, 2 li',
  },
};

const number = (value: number, language: Language, digits = 2): string =>
  value.toLocaleString(language === 'de' ? 'de-DE' : 'en-US', { maximumFractionDigits: digits });

/** A figure by its name and value, as a sentence in that language has it (lengths in cm). */
export function asSaid(name: string, value: unknown, language: Language): string {
  if (typeof value !== 'number') {
    const isText = /(text|name)$/i.test(name);
    return isText ? String(value) : (words[language][String(value)] ?? String(value));
  }
  if (name.endsWith('Mm')) return `${number(value / 10, language, 1)} cm`;
  if (name === 'grams') return `${number(value, language, value < 20 ? 1 : 0)} g`;
  return number(value, language);
}

/** A row by its number. */
export const rowAsSaid = (row: number, language: Language): RegExp =>
  new RegExp(`\\b${language === 'de' ? 'Reihe' : '[Rr]ow'} ${number(row, language)}\\b`);
