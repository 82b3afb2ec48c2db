import { attempt, type Cursor, isWord, sees, seesPhrase, takePhrase, takes } from '../../row/read/cursor.ts';
import type { Statement } from './statement.ts';

export function readTurn(c: Cursor): Statement | undefined {
  if (!takePhrase(c, 'turn')) return undefined;
  attempt(c, () => takes(c, 'work') && (c.at >= c.end || sees(c, ',', ';', '.')));
  return { is: 'turn' };
}

/** 'K14, turn and work on these 14 sts only': the row ends with the turn, and what goes on is said behind it. */
export function endedByTurn(c: Cursor): Cursor {
  for (let i = c.at + 1; i < c.end; i += 1) {
    // 'k 22, bind off 22 sts and start front on rem 22 sts'
    if (
      isWord(c.tokens[i], 'start', 'begin') &&
      seesPhrase({ ...c, at: i }, 'start|begin the? front|back on|with|over the? rem')
    )
      return { ...c, end: i };
    if (!isWord(c.tokens[i], 'turn')) continue;
    let at = i + 1;
    while (isWord(c.tokens[at], ',', 'and', ';')) at += 1;
    const on = 'on|with|over the? these|this|first|last';
    if (
      seesPhrase({ ...c, at }, `work|working|cont ${on}`) ||
      seesPhrase({ ...c, at }, `cont to? work|working ${on}`)
    )
      return { ...c, end: i + 1 };
    if (seesPhrase({ ...c, at }, 'proceed|cont|work as foll')) return { ...c, end: i + 1 };
    // 'k to last 8 sts, turn; p to last 8 sts, turn': one short row after the other, and no bobble within a row
    const many = isWord(c.tokens[c.at], 'rows') || c.tokens[c.at + 1]?.kind === 'number';
    const before = c.tokens.slice(c.at, i);
    const far =
      !many &&
      before.some((token) => isWord(token, 'to', 'until', 'within')) &&
      !before.some((token) => isWord(token, 'leave', 'place', 'put', 'holder'));
    if (far && at > i + 1 && isWord(c.tokens[at], 'k', 'p', 'sl', 's', 'work', 'patt', 'rib'))
      return { ...c, end: i + 1 };
  }
  return { ...c };
}
