import {
  ahead,
  type Cursor,
  endsOrdinal,
  isWord,
  peek,
  seesPhrase,
  takeAnyPhrase,
} from '../../row/read/cursor.ts';
import type { Token } from '../../row/read/lex.ts';
import { means } from '../../row/read/meanings.ts';

/** Whether a sentence is worked in rounds: 'Rnd 1: k', 'next round', 'work 6 rnds in rib', 'join to work in the round'. */
export function worksInRounds(c: Cursor): boolean {
  if (joinsInRound(c)) return true;
  for (let i = c.at; i < c.end; i += 1) {
    const token = c.tokens[i] as Token;
    if (isWord(token, 'join', 'on', 'onto', 'over') && joinsInRound({ ...c, at: i })) return true;
    if (token.word === 'rnds' || token.text === 'rnd') return true;
    if (token.text === 'round' && isARow(c, i)) return true;
  }
  return false;
}

/** 'every round', '2nd round', 'round 3', 'in the round', not 'yarn round needle' or 'round neck'. */
const isARow = (c: Cursor, at: number): boolean =>
  endsOrdinal(c.tokens[at - 1]) ||
  means(c.tokens[at - 1]?.word, 'before a round') ||
  (isWord(c.tokens[at - 1], 'the') && isWord(c.tokens[at - 2], 'in')) ||
  (at + 1 < c.end && (c.tokens[at + 1]?.kind === 'number' || isWord(c.tokens[at + 1], ':')));

/** Farther on it is not said what is joined. */
const FAR = 40;

/** 'Join to work in the round', 'join, being careful not to twist', '(divide) on 4 needles'. */
export const joinsInRound = (c: Cursor): boolean =>
  ahead(c, () => {
    takeAnyPhrase(c, 'divide|divided|dividing|distribute sts? evenly?');
    if (seesPhrase(c, 'on|over|onto 3|4|three|four double? -? pointed? needle|dpns')) return true;
    takeAnyPhrase(c, 'place marker and', 'pm and', 'pm ,', 'place marker ,');
    if (!seesPhrase(c, 'join|joining')) return false;
    return (
      c.tokens
        .slice(c.at, Math.min(c.end, c.at + FAR))
        .some((token, i) => means(token.word, 'closes a round') && (token.word !== 'rnd' || i > 1)) ||
      peek(c, 1) === undefined
    );
  });

/** '20 rounds' */
export const countsRounds = (c: Cursor): boolean =>
  c.tokens
    .slice(c.at, c.end)
    .some(({ word }, i, all) => (word === 'rnds' || word === 'rnd') && all[i - 1]?.kind === 'number');
