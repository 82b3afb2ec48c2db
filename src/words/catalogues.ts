import { words as craft } from './en/craft.ts';
import { words as knitting } from './en/knitting.ts';
import { words as row } from './en/row.ts';
import { words as ui } from './en/ui.ts';
import { languageFiles, type WordsOf } from './language-files.ts';
import type { Language } from './languages.ts';
import type { Words } from './message.ts';

/** English words of the row in hand, in the first script itself: they are what is said where all else is missing. */
export const alwaysThere = { ui, craft, row, knitting } as const;

type Files = WordsOf<'en'>;

/** Every message, by the catalogue's name: one for each screen and a few shared ones. */
export type English = typeof alwaysThere & {
  readonly [Name in keyof Files as Files[Name] extends { readonly words: Words }
    ? Name
    : never]: Files[Name] extends {
    readonly words: infer Said;
  }
    ? Said
    : never;
};

export type CatalogueName = keyof English;

/** They stand in a language's first file, the others in its rest. */
const atFirst: readonly string[] = ['ui', 'craft', 'row', 'knitting', 'workbasket', 'notices'];

/** A catalogue in a language; of English, what is not always there. Rejects where it is not on this device and there is no network. */
export async function fetchCatalogue(name: CatalogueName, language: Language): Promise<{ words: Words }> {
  const { first, rest } = languageFiles[language];
  const file = await (atFirst.includes(name) ? first() : rest());
  return (file as unknown as Record<CatalogueName, { words: Words }>)[name];
}
