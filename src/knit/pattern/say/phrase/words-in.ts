import type { Token } from '../../../row/read/lex.ts';

/** As they stand in the text. */
export const wordsIn = (tokens: readonly Token[]): string =>
  tokens
    .map(
      ({ text, capital, glued, kind }, i) =>
        `${i > 0 && !glued ? ' ' : ''}${capital && kind === 'word' && text.length < 3 ? text.toUpperCase() : text}`,
    )
    .join('');
