import { readColourName, YARN } from '../../row/read/colour.ts';
import {
  ahead,
  attempt,
  type Cursor,
  isWord,
  peek,
  peekNumber,
  peekWord,
  sees,
  takeAnyPhrase,
  takeNumber,
  takePhrase,
  takes,
} from '../../row/read/cursor.ts';
import { means } from '../../row/read/meanings.ts';
import type { Statement } from './statement.ts';
import { readYarn } from './yarn.ts';

/** 'change to 4 mm needles', 'with No. 8 needles', 'using larger needles'. */
export const readNeedle = (c: Cursor): Statement | undefined =>
  attempt(c, () => {
    const start = c.at;
    const yarn = takeYarnAnd(c);
    if (
      yarn === undefined &&
      !takeAnyPhrase(
        c,
        'change|changing|switch|switching|go to',
        'change back to',
        'with',
        'using',
        'use',
        'on',
      )
    )
      return undefined;
    let mm: number | undefined;
    for (let i = 0; i < 14 && c.at < c.end; i += 1) {
      const n = peekNumber(c);
      const whole = c.at > start ? c.tokens[c.at - 1] : undefined;
      // '3 ¼ mm'
      const more = n !== undefined && n < 1 && whole?.kind === 'number' ? whole.value : 0;
      if (n !== undefined && isWord(peek(c, 1), 'mm')) mm = more + n;
      if (takePhrase(c, 'needle|pins|ns')) {
        takeAnyPhrase(c, '( us', '(');
        while (c.at < c.end && bracketOpen(c, start)) {
          if (peekNumber(c) !== undefined && peekWord(c, 1) === 'mm') mm = peekNumber(c);
          c.at += 1;
        }
        mm ??= takeSizeBehind(c);
        const named = yarn ?? takeYarnBehind(c);
        return {
          is: 'needle',
          ...(mm === undefined ? {} : { mm }),
          ...(named === undefined ? {} : { yarn: named }),
        };
      }
      const token = peek(c);
      // 'on the 5th row change to 4 mm needles' is for a row to come
      if (
        token === undefined ||
        (isWord(token, 'row', 'rows') && mm === undefined) ||
        means(token.word, 'not about a needle')
      )
        break;
      c.at += 1;
    }
  });

/** 'with A and | 4 mm needles': the yarn is not lost in the needle's words; 'with A and B on …' names two at once. */
const takeYarnAnd = (c: Cursor): string | undefined =>
  attempt(c, () => {
    const yarn = readYarn(c);
    if (yarn?.is !== 'yarn' || !takes(c, 'and')) return undefined;
    takes(c, 'with', 'using', 'on');
    return sees(c, ...YARN) || ahead(c, () => readColourName(c)) !== undefined ? undefined : yarn.name;
  });

/** 'Change to 4 mm needles | MC': the yarn right behind it, and nothing more. */
const takeYarnBehind = (c: Cursor): string | undefined =>
  attempt(c, () => {
    const name = readColourName(c);
    return c.at >= c.end || sees(c, '.', ';', '*') ? name : undefined;
  });

/** 'on circular needle size 3 mm / US 2.5'. */
const takeSizeBehind = (c: Cursor): number | undefined =>
  attempt(c, () => {
    takes(c, 'size', 'no');
    const mm = takeNumber(c);
    if (mm === undefined || !takes(c, 'mm')) return undefined;
    attempt(c, () => {
      const open = takes(c, '(');
      if (!open && !takes(c, '/')) return false;
      return takes(c, 'us') && takeNumber(c) !== undefined && (!open || takes(c, ')'));
    });
    return mm;
  });

/** Whether brackets opened since `from` are not closed yet. */
function bracketOpen(c: Cursor, from: number): boolean {
  let depth = 0;
  for (let i = from; i < c.at; i += 1) {
    const text = c.tokens[i]?.text ?? '';
    if (text === '(' || text === '[') depth += 1;
    if (text === ')' || text === ']') depth -= 1;
  }
  return depth > 0 && c.at - from < 30;
}
