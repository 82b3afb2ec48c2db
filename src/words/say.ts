import { signal } from '@preact/signals';
import type { RowWords } from '../knit/row/row-words.ts';
import { alwaysThere, type CatalogueName, type English, fetchCatalogue } from './catalogues.ts';
import type { Language } from './languages.ts';
import type { FigureArgs, Message, Plural, Words } from './message.ts';
import { saysNumber } from './numbers.ts';
import { localeOf, type Speech, speech } from './settings.ts';
import { termsOf } from './terms.ts';

/** 'knitting.finishRow': the catalogue's name, a point, the message's. */
export type WordKey = { [Name in CatalogueName]: `${Name}.${keyof English[Name] & string}` }[CatalogueName];

type MessageAt<Key extends WordKey> = Key extends `${infer Name extends CatalogueName}.${infer Word}`
  ? Word extends keyof English[Name]
    ? English[Name][Word] extends Message
      ? English[Name][Word]
      : never
    : never
  : never;

/** What a catalogue's file holds: its words, and for rows the printer's. */
export interface CatalogueModule {
  readonly words: Words;
  readonly rowWords?: (speech: Speech) => RowWords;
}

const id = (language: Language, name: string): string => `${language}/${name}`;

const atFirst = Object.entries(alwaysThere).map(([name, words]) => [id('en', name), { words }]);

/** What is loaded so far. */
const loaded: Record<string, CatalogueModule> = Object.fromEntries(atFirst);

/** How many came since. */
const came = signal(0);

/** A catalogue. Who asks for one that is not there is drawn again with the next that comes, and nobody else: the others have all their words. */
function catalogue(language: Language, name: string): CatalogueModule | undefined {
  const there = loaded[id(language, name)];
  if (!there) void came.value;
  return there;
}

/**
 * Says a message in the language, terms and units of the moment; a component that calls it is drawn again when
 * one of these changes. Its catalogue must have been loaded (`loadWords`); until then it is empty.
 */
export function say<Key extends WordKey>(key: Key, ...[figures]: FigureArgs<MessageAt<Key>>): string {
  const [name = '', word = ''] = key.split('.');
  return sayIfKnown(name as CatalogueName, word, figures) ?? '';
}

/** The message at a key known only at run time (a fault's code, a fabric's name); undefined where there is none. */
export function sayIfKnown(
  name: CatalogueName,
  word: string,
  figures: Readonly<Record<string, string | number>> = {},
): string | undefined {
  const message = catalogue(speech.value.language, name)?.words[word] ?? catalogue('en', name)?.words[word];
  return message && wordMessage(message, figures, speech.value);
}

/** A catalogue's whole module where it is loaded; for words that are made, not looked up. */
export const loadedModule: (language: Language, name: CatalogueName) => CatalogueModule | undefined =
  catalogue;

/** A message with its figures in place: the plural form by `count`, numbers by Intl, trade words by US or UK. */
export function wordMessage(
  message: Message,
  figures: Readonly<Record<string, string | number>>,
  { language, terms }: Pick<Speech, 'language' | 'terms'>,
): string {
  const text = typeof message === 'string' ? message : pluralOf(message, Number(figures.count), language);
  const trade = termsOf(language, terms);
  return text.replace(/\{(\w+)\}|\[([^\]]+)\]/g, (whole, figure: string | undefined, term: string) => {
    if (figure === undefined) return trade[term] ?? term;
    const value = figures[figure];
    return typeof value === 'number' ? saysNumber(value) : apart(value ?? whole);
  });
}

const rightToLeft = /[\u0590-\u08ff\ufb1d-\ufdff\ufe70-\ufefc]/;

/** A name that is written from right to left is kept apart, or it would turn the sentence around it (as `bdi` does). */
const apart = (name: string): string => (rightToLeft.test(name) ? `\u2068${name}\u2069` : name);

const rules: Record<string, Intl.PluralRules> = {};

/** The form that the language has for the count; where a message has no form of that kind, the one for all others. */
function pluralOf(forms: Plural, count: number, language: Language): string {
  rules[language] ??= new Intl.PluralRules(language);
  return forms[rules[language].select(count)] ?? forms.other;
}

/**
 * Loads catalogues in the language of the moment; call it beside the import of the screen that needs them. Where she
 * changes the language meanwhile, they come in the new one too.
 */
export async function loadWords(...names: readonly CatalogueName[]): Promise<void> {
  const { language } = speech.value;
  await load(language, names);
  if (speech.value.language !== language) await loadWords(...names);
}

const missingIn = (language: Language, names: readonly CatalogueName[]): readonly CatalogueName[] =>
  names.filter((name) => !(id(language, name) in loaded));

async function load(language: Language, names: readonly CatalogueName[]): Promise<void> {
  const missing = missingIn(language, names);
  await Promise.all(
    missing.map(async (name) => {
      // a language that is not on this device yet, and no network: English is, and is better than no word
      loaded[id(language, name)] = await fetchCatalogue(name, language).catch(
        () => loaded[id('en', name)] ?? fetchCatalogue(name, 'en'),
      );
    }),
  );
  came.value += missing.length;
}

/** One that is there in two languages is named twice; a file is fetched once all the same. */
const inUse = (): readonly CatalogueName[] =>
  Object.keys(loaded).map((key) => key.slice(key.indexOf('/') + 1) as CatalogueName);

/** Changes how the app speaks. Every catalogue in use is first loaded in the new language, so no sentence is ever missing. */
export async function speak(change: Partial<Speech>): Promise<void> {
  const language = change.language ?? speech.value.language;
  // a screen that is on its way may bring more of them while these are fetched
  do await load(language, inUse());
  while (missingIn(language, inUse()).length > 0);
  speech.value = { ...speech.value, ...change };
}

/** For the page's own `lang`. */
export const languageTag = (): string => localeOf(speech.value);
