import { englishWritten } from '../knit/written/english.ts';
import type { WrittenWords } from '../knit/written/written-words.ts';
import { type Language, languages, languageTable } from './languages.ts';
import type { Speech } from './settings.ts';

/** In what a pattern for others is written: a language, of English the terms as well. */
export type WrittenIn = 'US' | 'UK' | Exclude<Language, 'en'>;

/** What she speaks herself. */
export const writtenAsSpoken = ({ language, terms }: Pick<Speech, 'language' | 'terms'>): WrittenIn =>
  language === 'en' ? terms : language;

/** A file each, beside the language's own two: few pass a pattern on. */
const files = {
  de: () => import('./de/written/written.ts'),
  fr: () => import('./fr/written/written.ts'),
} as const satisfies Readonly<
  Record<Exclude<Language, 'en'>, () => Promise<{ readonly writtenWords: WrittenWords }>>
>;

const others = languages.filter((language) => language !== 'en');

/** All of them by their own names, English first. */
export const writtenChoices: readonly { readonly value: WrittenIn; readonly label: string }[] = [
  { value: 'US', label: 'English (US)' },
  { value: 'UK', label: 'English (UK)' },
  ...others.map((value) => ({ value, label: languageTable[value].name })),
];

/** Its words. Rejects where the language is not on this device and there is no network. */
export async function fetchWritten(language: WrittenIn): Promise<WrittenWords> {
  if (language === 'US' || language === 'UK') return englishWritten(language);
  return (await files[language]()).writtenWords;
}
