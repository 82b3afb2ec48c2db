import type { Told, ToldSeam } from '../making-up/told.ts';
import type { ReadLine, ReadPattern } from '../pattern/read-pattern.ts';
import { pickSize } from '../pattern/text/pick-size.ts';
import { LONGEST_SCOPE, meantFor } from '../pattern/text/size-names.ts';
import { lex, type Token } from '../row/read/lex.ts';
import { means } from '../row/read/meanings.ts';
import { type Said, type Sentence, sentenceAt } from './making-up-sentences.ts';
import { LEFT_FIRST, TOP_DOWN } from './making-up-table.ts';
import { plainSeams } from './plain-seams.ts';
import { isStop, wordsOf } from './template.ts';
import { seamsIn, toldBy } from './told-by.ts';

export interface ReadMakingUp {
  readonly told: Told;
  /** in whose words each seam is first named */
  readonly named: ReadonlyMap<ToldSeam, string>;
  /** sentences under its heading that nothing was made of, as they stand */
  readonly unread: readonly string[];
}

/** What a text says of the making up, in the size that was read: its own sentences word by word, those of others as far as they name a seam. */
export function readMakingUp({
  lines,
  size,
  sizes,
}: Pick<ReadPattern, 'lines' | 'size' | 'sizes'>): ReadMakingUp {
  const said: Said[] = [];
  const unread: string[] = [];
  const named = new Map<ToldSeam, string>();
  let isUnder = false;
  for (const line of lines) {
    const tokens = pickSize(lex(line.text, line.line), size, sizes.length).tokens;
    const heading = headingIn(line, tokens);
    if (heading !== undefined) isUnder = heading === 'making up';
    if (line.rows.length > 0) continue;
    const from = heading === undefined ? 0 : behindHeading(tokens);
    for (const found of sentencesOf(tokens, from, sizes, size)) {
      const { own, words } = found;
      const sentences = own ? [own] : isUnder ? plainly(words) : [];
      said.push(...sentences);
      for (const seam of seamsIn(sentences))
        if (!named.has(seam)) named.set(seam, textOf(line, own ? ownLine(tokens, words) : words));
      if (!own && isUnder && sentences.length === 0 && !saysNoSeam(words)) unread.push(textOf(line, words));
    }
  }
  const says = (words: string) => lines.some(({ text }) => hasWords(lex(text), words));
  const beside = { ...(says(LEFT_FIRST) && { leftFirst: true }), ...(says(TOP_DOWN) && { topDown: true }) };
  return { told: toldBy(said, beside), named, unread };
}

/** The words of a sentence without its stops, and what it is where it is one of ours. */
interface Found {
  readonly own?: Sentence;
  readonly words: readonly Token[];
}

/** Sentence by sentence, those of other sizes left out. */
function* sentencesOf(
  all: readonly Token[],
  from: number,
  sizes: readonly string[],
  size: number,
): Generator<Found> {
  let at = from;
  while (at < all.length) {
    const cut =
      sizes.length > 1 ? meantFor(all.slice(at, at + LONGEST_SCOPE), sizes, size) : { meant: true, from: 0 };
    if (!cut.meant) {
      at = endOfLine(all, at);
      continue;
    }
    at += cut.from;
    const own = sentenceAt(all, at);
    const end = own?.to ?? endOfSentence(all, at);
    const words = all.slice(at, end).filter((token) => !isStop(token));
    if (words.length > 0) yield { words, ...(own && { own }) };
    at = end;
  }
}

function endOfSentence(all: readonly Token[], at: number): number {
  const stop = all.findIndex((token, i) => i >= at && isStop(token));
  return stop < 0 ? all.length : stop + 1;
}

function endOfLine(all: readonly Token[], at: number): number {
  const next = all.slice(at).findIndex(({ line }) => line !== all[at]?.line);
  return next < 0 ? all.length : at + next;
}

/** What is plain of a sentence of others. */
const plainly = (rest: readonly Token[]): Said[] =>
  plainSeams(rest).map((seam) => ({ key: 'plain', values: { seam } }));

const saysNoSeam = ([first]: readonly Token[]): boolean =>
  means(first?.text, 'lays flat') || means(first?.text, 'hides ends');

/** Whether a line begins a section, and which: a heading of its own, or words in capitals alone. */
function headingIn({ kind, text }: ReadLine, tokens: readonly Token[]): 'making up' | 'other' | undefined {
  const [first, second] = tokens;
  const own = tokens.filter(({ line }) => line === first?.line);
  const title = text.split('\n')[0] ?? '';
  const isCapitals = title === title.toUpperCase() && own.every(({ kind: is }) => is !== 'number');
  const isMakingUp =
    means(first?.text, 'heading of the making up') ||
    (first?.text === 'to' && means(second?.text, 'order to make up'));
  if (isMakingUp && (isCapitals || own.length <= 3 || own.slice(0, 4).some((one) => one.text === ':')))
    return 'making up';
  return isCapitals || kind === 'heading' ? 'other' : undefined;
}

/** Its own line, or up to its colon. */
function behindHeading(tokens: readonly Token[]): number {
  const colon = tokens.slice(1, 4).findIndex(({ text }) => text === ':');
  return colon < 0 ? endOfLine(tokens, 0) : colon + 2;
}

/** Its figures stand behind what a line begins with. */
const ownLine = (tokens: readonly Token[], [first]: readonly Token[]): readonly Token[] =>
  tokens.filter((token) => token.line === first?.line && !isStop(token));

function textOf({ text }: ReadLine, tokens: readonly Token[]): string {
  const starts = tokens.map(({ offset }) => offset);
  const ends = tokens.map((token) => token.offset + token.text.length);
  return text.slice(Math.min(...starts), Math.max(...ends)).replace(/\s+/g, ' ');
}

/** Whether the words stand somewhere in a line. */
function hasWords(tokens: readonly Token[], said: string): boolean {
  const words = wordsOf(said);
  return tokens.some((_, at) => words.every((word, i) => tokens[at + i]?.text === word));
}
