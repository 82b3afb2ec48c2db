import type { Language } from './languages.ts';
import type { Speech } from './settings.ts';

/**
 * Trade words that US and UK say differently, keyed by the US word as it stands in a message's brackets.
 * Leaflets of both sides of the Atlantic use them so (American Thread; Patons & Baldwins).
 */
const british: Readonly<Record<string, string>> = {
  'bind off': 'cast off',
  'bound off': 'cast off',
  'bound-off': 'cast-off',
  gauge: 'tension',
  stockinette: 'stocking stitch',
  'reverse stockinette': 'reverse stocking stitch',
  'seed stitch': 'moss stitch',
  color: 'colour',
  fiber: 'fibre',
  meters: 'metres',
  center: 'centre',
};

const american: Readonly<Record<string, string>> = {};

const withCapitals = (words: Readonly<Record<string, string>>): Readonly<Record<string, string>> => ({
  ...words,
  ...Object.fromEntries(Object.entries(words).map(([from, to]) => [capital(from), capital(to)])),
});

const capital = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);

const britishAll = withCapitals(british);

/** Terms that differ from those in the brackets; the brackets' own word holds for all others. */
export const termsOf = (language: Language, terms: Speech['terms']): Readonly<Record<string, string>> =>
  language === 'en' && terms === 'UK' ? britishAll : american;
