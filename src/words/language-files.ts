import type { Language } from './languages.ts';

/** A language's two files: what the first screens say, for which nobody waits for all the rest; and that. */
export const languageFiles = {
  en: { first: () => import('./en/first.ts'), rest: () => import('./en/rest.ts') },
  de: { first: () => import('./de/first.ts'), rest: () => import('./de/rest.ts') },
  fr: { first: () => import('./fr/first.ts'), rest: () => import('./fr/rest.ts') },
} as const satisfies Readonly<Record<Language, unknown>>;

/** All that a language says; of other languages than English the words of the row in hand are among it. */
export type WordsOf<L extends Language> = Awaited<ReturnType<(typeof languageFiles)[L]['first']>> &
  Awaited<ReturnType<(typeof languageFiles)[L]['rest']>>;

/** All of a language. Rejects where it is not on this device and there is no network. */
export const fetchLanguage = (language: Language): Promise<unknown> =>
  Promise.all([languageFiles[language].first(), languageFiles[language].rest()]);
