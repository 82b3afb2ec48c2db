import { type Fault, fault } from '../../fault.ts';
import type { Token } from './lex.ts';
import { type Meaning, means } from './meanings.ts';

/** A place among tokens; `end` is the first one that no longer belongs to what is read. */
export interface Cursor {
  readonly tokens: readonly Token[];
  at: number;
  readonly end: number;
}

export const cursorOver = (tokens: readonly Token[], at = 0, end = tokens.length): Cursor => ({
  tokens,
  at,
  end,
});

/** What `read` makes of the text; where it makes nothing of it, nothing of it is taken. */
export function attempt<T>(c: Cursor, read: () => T): T {
  const { at } = c;
  const found = read();
  if (found === undefined || found === false) c.at = at;
  return found;
}

/** What `look` finds ahead; nothing is taken. */
export function ahead<T>(c: Cursor, look: () => T): T {
  const { at } = c;
  const found = look();
  c.at = at;
  return found;
}

/** Takes all up to a token further on. */
export function takeTo(c: Cursor, end: number): void {
  if (end > c.at) c.at = end;
}

export const takeAll = (c: Cursor): void => takeTo(c, c.end);

export const atEnd = (c: Cursor): boolean => c.at >= c.end;

export const peek = (c: Cursor, ahead = 0): Token | undefined =>
  c.at + ahead < c.end ? c.tokens[c.at + ahead] : undefined;

/** The trade's word (or the mark) ahead, however it is spelled; '' at the end and for numbers. */
export function peekWord(c: Cursor, ahead = 0): string {
  const token = peek(c, ahead);
  return token === undefined || token.kind === 'number' ? '' : token.word;
}

export function peekNumber(c: Cursor, ahead = 0): number | undefined {
  const token = peek(c, ahead);
  return token?.kind === 'number' ? token.value : undefined;
}

/** Whether one of the words or marks comes next. */
export const sees = (c: Cursor, ...words: readonly string[]): boolean => words.includes(peekWord(c));

/** Whether a word of that meaning comes next. */
export const seesOne = (c: Cursor, meaning: Meaning): boolean => means(peekWord(c), meaning);

/** Whether a token is one of the words or marks. */
export const isWord = (token: Token | undefined, ...words: readonly string[]): boolean =>
  token !== undefined && words.includes(token.word);

/** Whether a word or mark is one of a list, blank parted. */
export const isOneOf = (word: string, list: string): boolean => list.split(' ').includes(word);

/** Whether the token taken last is one of the words or marks. */
export const took = (c: Cursor, ...words: readonly string[]): boolean => isWord(c.tokens[c.at - 1], ...words);

/** The ending of '1st', '2nd', '3rd', '4th', which is a token of its own; 'stitch' is none, however it is spelled. */
export const endsOrdinal = (token: Token | undefined): boolean =>
  token !== undefined && means(token.text, 'ordinal ending');

/** Takes one of the words or marks, if it comes next. */
export function takes(c: Cursor, ...words: readonly string[]): boolean {
  if (!sees(c, ...words)) return false;
  c.at += 1;
  return true;
}

/** Takes a word of that meaning, if one comes next. */
export function takesOne(c: Cursor, meaning: Meaning): boolean {
  if (!seesOne(c, meaning)) return false;
  c.at += 1;
  return true;
}

export function takeNumber(c: Cursor): number | undefined {
  const value = peekNumber(c);
  if (value !== undefined) c.at += 1;
  return value;
}

/** Takes a number of stitches, rows or times: a whole one. */
export function takeWhole(c: Cursor): number | undefined {
  const value = peekNumber(c);
  if (!Number.isSafeInteger(value)) return undefined;
  c.at += 1;
  return value;
}

/**
 * Takes a phrase as a whole or not at all: 'through the? back loop'. Blank parted; 'loop|yarn' for either, 'the?' for a
 * word, or either of two, that may be missing.
 */
export function takePhrase(c: Cursor, phrase: string): boolean {
  let far = 0;
  for (const { words, mayMiss } of wordsOf(phrase)) {
    const token = peek(c, far);
    if (token !== undefined && words.includes(token.word)) far += 1;
    else if (!mayMiss) return false;
  }
  c.at += far;
  return true;
}

export const takeAnyPhrase = (c: Cursor, ...phrases: readonly string[]): boolean =>
  phrases.some((phrase) => takePhrase(c, phrase));

export function seesPhrase(c: Cursor, phrase: string): boolean {
  return ahead(c, () => takePhrase(c, phrase));
}

interface PhraseWord {
  readonly words: readonly string[];
  readonly mayMiss: boolean;
}

const phraseWords = new Map<string, readonly PhraseWord[]>();

function wordsOf(phrase: string): readonly PhraseWord[] {
  let words = phraseWords.get(phrase);
  if (words === undefined) {
    words = phrase.split(' ').map((word) => ({
      words: word.replace(/\?$/, '').split('|'),
      mayMiss: word.endsWith('?'),
    }));
    phraseWords.set(phrase, words);
  }
  return words;
}

type Expected = 'stitch expected' | 'stitch or repeat expected' | 'nothing before the repeat';

/** What was expected where the text says something else. */
export function expected(c: Cursor, what: Expected): Fault {
  const { line, column } = placeOf(c);
  return fault(what, { column }, { line, column });
}

/** A bracket that is still open where the text ends. */
export function bracketExpected(c: Cursor, bracket: string): Fault {
  const { line, column } = placeOf(c);
  return fault('bracket expected', { bracketText: bracket, column }, { line, column });
}

function placeOf(c: Cursor): { line: number; column: number } {
  const token = peek(c);
  const before = c.tokens[Math.min(c.at, c.tokens.length) - 1];
  const at = token ?? before;
  const column = token ? token.column : (before?.column ?? 0) + (before?.text.length ?? 1);
  return { line: at?.line ?? 1, column };
}
