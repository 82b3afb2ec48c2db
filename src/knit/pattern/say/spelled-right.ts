import type { Token } from '../../row/read/lex.ts';
import { wordOf } from '../../row/read/vocabulary.ts';
import { rightSpelling } from '../text/near-words.ts';
import type { Sentence } from '../text/sentences.ts';
import { readSentence } from './sentence.ts';
import type { ReadSentence } from './statement.ts';

/** The sentence as it stands, or with its slips of the keyboard put right where that alone makes all of it understood. */
export function readSpelledRight(
  tokens: readonly Token[],
  sentence: Sentence,
  aloneOnLine: boolean,
): ReadSentence {
  const read = readSentence(tokens, sentence, aloneOnLine);
  if (read.fault === undefined || read.rounds) return read;
  // a title is called what it is called
  if (!tokens.slice(sentence.from, sentence.to).some(({ kind }) => kind === 'number')) return read;
  let slips = 0;
  const right = tokens.map((token, i) => {
    const meant =
      token.kind === 'word' && i >= sentence.from && i < sentence.to ? rightSpelling(token.text) : undefined;
    if (meant === undefined) return token;
    slips += 1;
    return { ...token, text: meant, word: wordOf(meant) };
  });
  if (slips === 0) return read;
  const again = readSentence(right, sentence, aloneOnLine);
  return again.fault === undefined && again.said.length > 0 ? again : read;
}
