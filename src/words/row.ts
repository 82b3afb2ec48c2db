import { sayRow } from '../knit/row/print.ts';
import { englishRowWords, type RowWords } from '../knit/row/row-words.ts';
import type { Step } from '../knit/row/step.ts';
import { loadedModule } from './say.ts';
import { type Speech, speech } from './settings.ts';

/** The words in which rows are printed, by language, terms and wording. Needs the catalogue 'row'. */
export function rowWordsNow(rows: Speech['rows'] = speech.value.rows): RowWords {
  const { language, terms } = speech.value;
  const module = loadedModule(language, 'row');
  return module?.rowWords?.({ ...speech.value, rows }) ?? englishRowWords(terms, rows);
}

/** A row's words with what is one phrase held together: a line ends within neither 'to last 2 sts' nor 'to end'. */
export const heldTogether = (words: string): string =>
  words.replace(/(?<=\d|bis) |(?<![,;]) (?=\d|last|end|fin)/g, '\xa0');

/** A row in words, 'k2, k2tog, knit to end', as the settings have it. */
export const saysRow = (steps: readonly Step[], rows?: Speech['rows']): string =>
  sayRow(steps, rowWordsNow(rows));
