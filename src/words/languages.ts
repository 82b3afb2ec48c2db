/** What is asked of a language; a line more here is a language more (DEVELOPERS.md, 'How to add a language'). */
export interface LanguageFacts {
  /** in its own words, so that whoever lost her way finds back */
  readonly name: string;
  /** for Intl: numbers, dates, plurals; and for what is read aloud */
  readonly locale: string;
  /** where it is written from right to left */
  readonly direction?: 'rtl';
  /** between whole and tenths, as Intl has it for the locale */
  readonly decimal: string;
  /** inches, as they stand behind a figure */
  readonly inch: string;
  /** yards of yarn */
  readonly yard: string;
}

export const languageTable = {
  en: { name: 'English', locale: 'en-US', decimal: '.', inch: 'in', yard: 'yd' },
  de: { name: 'Deutsch', locale: 'de-DE', decimal: ',', inch: 'Zoll', yard: 'Yards' },
  fr: { name: 'Français', locale: 'fr-FR', decimal: ',', inch: 'po', yard: 'yd' },
} as const satisfies Readonly<Record<string, LanguageFacts>>;

export type Language = keyof typeof languageTable;

export const languages = Object.keys(languageTable) as readonly Language[];

/** The language of a catalogue's path, 'src/words/fr/ui.ts'; undefined for any other file. */
export const languageOfPath = (path: string): Language | undefined =>
  languages.find((language) => path.includes(`src/words/${language}/`));
