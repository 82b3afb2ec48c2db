import type { Language } from '../../../src/words/languages.ts';

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
  fr: {
    RS: 'endroit',
    WS: 'envers',
    right: 'bord droit',
    left: 'bord gauche',
    stocking: 'jersey endroit',
    'rib 2x2': 'côtes 2/2',
  },
};

const locales: Readonly<Record<Language, string>> = { en: 'en-US', de: 'de-DE', fr: 'fr-FR' };

const rowWord: Readonly<Record<Language, string>> = { en: '[Rr]ow', de: 'Reihe', fr: '[Rr]ang' };

const number = (value: number, language: Language, digits = 2): string =>
  value.toLocaleString(locales[language], { maximumFractionDigits: digits });

/** A figure by its name and value, as a sentence in that language has it (lengths in cm). */
export function asSaid(name: string, value: unknown, language: Language): string {
  if (typeof value !== 'number') {
    const isText = /(text|name)$/i.test(name);
    return isText ? String(value) : (words[language][String(value)] ?? String(value));
  }
  if (name.endsWith('Mm')) return `${number(value / 10, language, 1)}\u00a0cm`;
  if (name === 'grams') return `${number(value, language, value < 20 ? 1 : 0)}\u00a0g`;
  return number(value, language);
}

/** A row by its number. */
export const rowAsSaid = (row: number, language: Language): RegExp =>
  new RegExp(`\\b${rowWord[language]} ${number(row, language)}\\b`);
