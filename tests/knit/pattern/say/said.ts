import { readSentence } from '../../../../src/knit/pattern/say/sentence.ts';
import type { Statement } from '../../../../src/knit/pattern/say/statement.ts';
import { lex } from '../../../../src/knit/row/read/lex.ts';

/** How patterns are usually worded: common practice, no published source. What one sentence says, on a line of its own. */
export function saidIn(text: string): Statement[] {
  const tokens = lex(text);
  const { said } = readSentence(tokens, { from: 0, to: tokens.length }, true);
  return said.map(({ statement }) => statement);
}

/** What kinds of statements a sentence is read as. */
export const kindsIn = (text: string): Statement['is'][] => saidIn(text).map(({ is }) => is);
