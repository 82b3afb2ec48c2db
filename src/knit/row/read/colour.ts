import { attempt, type Cursor, cursorOver, isOneOf, peek, peekWord, takes, takeTo, took } from './cursor.ts';
import type { Token } from './lex.ts';
import { means } from './meanings.ts';

export const YARN = ['yarn', 'wool', 'color', 'colour', 'shade'];

/** 'in A', 'with MC', 'using yarn B', 'in white': the yarn's name as the text has it; 'in a pattern' names none. */
export const readColour = (c: Cursor): string | undefined =>
  attempt(c, () => {
    if (!takes(c, 'with', 'in', 'using')) return undefined;
    takes(c, 'the', 'your');
    takes(c, ...YARN);
    return readColourName(c);
  });

/** 'A', 'MC', 'main colour', 'white', 'light grey'. */
export const readColourName = (c: Cursor): string | undefined =>
  attempt(c, () => {
    const token = peek(c);
    const letter = isLetter(token);
    if (token === undefined || !(letter || means(token.text, 'name of a yarn'))) return undefined;
    takeTo(c, c.at + 1);
    if (letter || token.text.length < 3) {
      takes(c, ...YARN);
      return token.text.toUpperCase();
    }
    // 'grey black' is one yarn
    const words = [token.text];
    for (
      let next = peek(c);
      next && next.text.length > 2 && means(next.text, 'name of a yarn');
      next = peek(c)
    ) {
      if (!isOneOf(next.text, YARN.join(' '))) words.push(next.text);
      takeTo(c, c.at + 1);
    }
    takes(c, ...YARN);
    return words.join(' ');
  });

const isLetter = (token: Token | undefined): boolean =>
  token?.text.length === 1 && token.capital && means(token.text, 'letter of a yarn');

/** So far away the other yarn of a row is named. */
const NEAR = 30;

const seesYarn = (c: Cursor, name: string): boolean =>
  c.tokens
    .slice(Math.max(0, c.at - NEAR), c.at + NEAR)
    .some((token) => (token.text === name && isLetter(token)) || isOneOf(token.text, 'mc cc'));

/** 'with B, k2', '*using A k1', 'k2 in B': within a row it says which yarn, and changes no stitch. */
export const takeColourInRow = (c: Cursor): boolean =>
  attempt(c, () => {
    if (readColour(c) === undefined && !takeColourBefore(c)) return false;
    takes(c, ',', ':');
    return true;
  });

/** 'Grey k 3, black k 2': a yarn by a name of its own, right before its stitches. */
const takeColourBefore = (c: Cursor): boolean =>
  attempt(
    c,
    () => (peek(c)?.text.length ?? 0) > 2 && readColourName(c) !== undefined && isOneOf(peekWord(c), 'k p'),
  );

/** 'k2 A, k3 B': the yarn behind a number of stitches; 'C4F' and 'k1b' are stitches. */
export const takeColourBehind = (c: Cursor): boolean =>
  attempt(c, () => {
    const token = peek(c);
    if (c.tokens[c.at - 1]?.kind !== 'number' || token === undefined) return false;
    if ((token.text === 'b' || token.glued) && !seesYarn(c, token.text === 'a' ? 'b' : 'a')) return false;
    if (readColourName(c) === undefined) return false;
    return c.at >= c.end || isOneOf(peekWord(c), ', ; . * ) ] and rep');
  });

/** ', working A over A and B over B', ', keeping colours as set': the stitches are worked in the yarns that are there. */
export const takeColoursAsSet = (c: Cursor): boolean =>
  attempt(c, () => {
    takes(c, ',');
    if (!takes(c, 'working', 'keeping', 'matching', 'k', 'p', 'with', 'in')) return false;
    let colours = 0;
    while (c.at < c.end) {
      if (readColourName(c) !== undefined || takes(c, 'colors', 'colours')) colours += 1;
      else if (!takes(c, 'the', 'over', 'and', 'as', 'set', 'est', 'before', 'they', 'appear', ',', '.'))
        return false;
    }
    return colours > 0 && !took(c, 'over');
  });

/** Whether yarns are named among the tokens of a row. */
export function namesColours(tokens: readonly Token[], from: number, to: number): boolean {
  for (let i = from; i < to; i += 1) {
    const c = cursorOver(tokens, i, to);
    if (takeColourInRow(c) || takeColourBehind(c) || takeColoursAsSet(c)) return true;
  }
  return false;
}
