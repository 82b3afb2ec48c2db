import { signal } from '@preact/signals';

export const languages = ['en', 'de'] as const;
export type Language = (typeof languages)[number];

/** How the app speaks; each of these is a setting, and every sentence follows it at once. */
export interface Speech {
  readonly language: Language;
  /** bind off or cast off; of English only */
  readonly terms: 'US' | 'UK';
  readonly units: 'cm' | 'in';
  /** metric always stands beside the number of another system */
  readonly needles: 'mm' | 'US' | 'UK' | 'JP';
  readonly rows: 'abbreviated' | 'full';
}

export const plainSpeech: Speech = {
  language: 'en',
  terms: 'US',
  units: 'cm',
  needles: 'mm',
  rows: 'abbreviated',
};

/** Read it anywhere; set it through `speak`, which first loads what the language needs. */
export const speech = signal<Speech>(plainSpeech);

/** What a device's own languages suggest: 'en-US' measures in inches, the rest of the world in centimetres. */
export function speechFor(tags: readonly string[]): Speech {
  const known = tags.find((tag) => languages.some((language) => tag.toLowerCase().startsWith(language)));
  if (known === undefined) return { ...plainSpeech, terms: 'UK' };
  if (known.toLowerCase().startsWith('de')) return { ...plainSpeech, language: 'de', terms: 'UK' };
  const american = /^en(-us|$)/i.test(known);
  return american ? { ...plainSpeech, units: 'in', needles: 'US' } : { ...plainSpeech, terms: 'UK' };
}

/** For Intl: numbers, dates and plurals. */
export const localeOf = ({ language, terms }: Pick<Speech, 'language' | 'terms'>): string =>
  language === 'de' ? 'de-DE' : terms === 'UK' ? 'en-GB' : 'en-US';
