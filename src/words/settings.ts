import { signal } from '@preact/signals';
import { type Language, type LanguageFacts, languages, languageTable } from './languages.ts';

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
  const known = tags.find(languageOf) ?? 'en-GB';
  return {
    ...plainSpeech,
    language: languageOf(known) ?? 'en',
    ...(/^en(-us|$)/i.test(known) ? { units: 'in', needles: 'US' } : { terms: 'UK' }),
  };
}

const languageOf = (tag: string): Language | undefined =>
  languages.find((language) => tag.toLowerCase().startsWith(language));

/** What the table says of the language of the moment. */
export const languageNow = (): LanguageFacts => languageTable[speech.value.language];

/** For Intl: numbers, dates and plurals. */
export const localeOf = ({ language, terms }: Pick<Speech, 'language' | 'terms'>): string =>
  language === 'en' && terms === 'UK' ? 'en-GB' : languageTable[language].locale;
