import { isWord } from '../../row/read/cursor.ts';
import type { Token } from '../../row/read/lex.ts';
import { means } from '../../row/read/meanings.ts';

const CLOSING: Readonly<Record<string, string>> = { '(': ')', '[': ']' };

/** Farther on a bracket is not looked for. */
const LONGEST = 30;

/**
 * The tokens without brackets that only comment: words alone, none of them a stitch, a side or a number ('(for all sizes)',
 * '(Buttonhole Row)', '(for pocket opening)'), or the abbreviation of the word before.
 */
export function withoutAsides(tokens: readonly Token[]): readonly Token[] {
  const out: Token[] = [];
  for (let i = 0; i < tokens.length; i += 1) {
    const end = asideEnd(tokens, i) ?? quoteEnd(tokens, i);
    if (end === undefined) out.push(tokens[i] as Token);
    else i = end;
  }
  return out;
}

/** The closing bracket of a comment that begins here. */
function asideEnd(tokens: readonly Token[], at: number): number | undefined {
  const close = CLOSING[tokens[at]?.text ?? ''];
  if (close === undefined || at === 0) return undefined;
  for (let i = at + 1; i < Math.min(tokens.length, at + LONGEST); i += 1) {
    const token = tokens[i] as Token;
    if (token.text === close) {
      const said = i - at > 1 && !(i - at === 2 && isShort(tokens[at + 1] as Token));
      // 'time(s)'
      if (i - at === 2 && tokens[at]?.glued && tokens[at + 1]?.text === 's') return i;
      const again = i - at === 2 && tokens[at - 1]?.word === tokens[at + 1]?.word;
      return said || again ? i : undefined;
    }
    const again = i === at + 1 && tokens[i + 1]?.text === close && tokens[at - 1]?.word === token.word;
    const plural = i === at + 1 && token.text === 's' && tokens[at]?.glued && tokens[i + 1]?.text === close;
    if (again || plural) continue;
    if (isWord(tokens[at + 1], 'or') || tellsMeasure(tokens, at + 1)) continue;
    if (token.kind === 'number' || means(token.word, 'in brackets that say something')) return undefined;
    if (token.kind === 'mark' && token.text !== ',' && token.text !== '-') return undefined;
  }
  return undefined;
}

/** '(armhole measures 8 in)': what it comes to by then. */
const tellsMeasure = (tokens: readonly Token[], at: number): boolean =>
  isWord(tokens[at], 'armhole', 'armholes', 'piece', 'work', 'back', 'front', 'sleeve') &&
  isWord(tokens[at + 1], 'measures', 'measure');

/** A yarn's name in quotes ('1 ball of "Wool-Knit"') may sound like an order; behind a number the mark is inches. */
function quoteEnd(tokens: readonly Token[], at: number): number | undefined {
  const close = QUOTES[tokens[at]?.text ?? ''];
  if (close === undefined || tokens[at - 1]?.kind === 'number') return undefined;
  for (let i = at + 1; i < Math.min(tokens.length, at + 9); i += 1) {
    const token = tokens[i] as Token;
    if (token.text === close) return i > at + 1 ? i : undefined;
    if (token.kind === 'number' || (token.kind === 'mark' && token.text !== '-' && token.text !== '&'))
      return undefined;
  }
  return undefined;
}

const QUOTES: Readonly<Record<string, string>> = { '"': '"', '“': '”' };

/** One letter may be a size, a colour or a stitch. */
const isShort = (token: Token): boolean => token.text.length < 4;
