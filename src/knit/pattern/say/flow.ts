import type { Fault } from '../../fault.ts';
import type { Token } from '../../row/read/lex.ts';
import { means } from '../../row/read/meanings.ts';
import type { LogicalLine } from '../text/lines.ts';
import { tokensOf } from '../text/lines.ts';
import { sentences } from '../text/sentences.ts';
import { meantFor } from '../text/size-names.ts';
import { pickSize } from '../text/sizes.ts';
import { statedAtEnd } from './phrase/stated-count.ts';
import { readSentence } from './sentence.ts';
import type { Said, Title } from './statement.ts';
import { titleInWords } from './title.ts';

/** What the lines say, in order: instructions, and what was not understood. */
export type Flow =
  | { readonly is: 'said'; readonly said: Said; readonly words: string; readonly line: number }
  | {
      readonly is: 'own words';
      readonly words: string;
      readonly fault: Fault;
      readonly stated?: number;
      readonly work: boolean;
      readonly short: boolean;
      /** what it may call what follows */
      readonly title?: Title;
      readonly line: number;
      readonly from: number;
    };

/** Reads one logical line for one size; `index` is its place among the lines. */
export function flowOf(
  line: LogicalLine,
  index: number,
  tokensOfLine: readonly Token[],
  size: number,
  sizes: number,
  names: readonly string[],
): { flow: Flow[]; odd: Token[] } {
  const { tokens, odd } = pickSize(tokensOfLine, size, sizes);
  const parts = sentences(tokens);
  const flow: Flow[] = [];
  for (const sentence of parts) {
    const cut =
      sizes > 1
        ? meantFor(tokens.slice(sentence.from, Math.min(sentence.to, sentence.from + 20)), names, size)
        : { meant: true, from: 0 };
    if (!cut.meant) continue;
    const from = sentence.from + cut.from;
    const read = readSentence(tokens, { from, to: sentence.to }, parts.length === 1);
    const words = wordsOf(line, tokens, from, sentence.to);
    for (const said of read.said) flow.push({ is: 'said', said, words, line: index });
    if (read.fault)
      flow.push(ownWords(line, tokens, read.fault, read.said, { from, to: sentence.to }, index));
  }
  return { flow, odd };
}

const wordsOf = (line: LogicalLine, tokens: readonly Token[], from: number, to: number): string =>
  line.text
    .slice(tokens[from]?.offset ?? 0, tokens[to]?.offset ?? line.text.length)
    .replace(/\s+/g, ' ')
    .trim();

function ownWords(
  line: LogicalLine,
  tokens: readonly Token[],
  fault: Fault,
  said: readonly Said[],
  sentence: { from: number; to: number },
  index: number,
): Flow {
  const stated = statedAtEnd({ tokens, at: sentence.from, end: sentence.to });
  const first = said.length === 0 ? tokens[sentence.from] : firstNotSaid(tokens, sentence, fault);
  const last = tokens[sentence.to];
  const words = line.text.slice(first?.offset ?? 0, last?.offset ?? line.text.length).trim();
  const said1 = words === '' ? line.text.trim() : words;
  const title = titleInWords(said1);
  return {
    is: 'own words',
    words: said1,
    fault,
    work: soundsLikeWork(tokens, sentence.from, sentence.to),
    short: sentence.to - sentence.from <= 9 && (tokens[sentence.from]?.capital ?? false),
    line: index,
    from: first?.line ?? line.line,
    ...(title === undefined ? {} : { title }),
    ...(stated === undefined ? {} : { stated: stated.stitches }),
  };
}

function firstNotSaid(
  tokens: readonly Token[],
  sentence: { from: number; to: number },
  fault: Fault,
): Token | undefined {
  for (let i = sentence.from; i < sentence.to; i += 1) {
    const token = tokens[i] as Token;
    if (token.line === fault.at.line && token.column >= (fault.at.column ?? 0)) return token;
  }
  return tokens[sentence.from];
}

/** Whether a sentence asks for knitting, or only talks. */
function soundsLikeWork(tokens: readonly Token[], from: number, to: number): boolean {
  let words = 0;
  let numbers = 0;
  for (let i = from; i < to; i += 1) {
    const token = tokens[i] as Token;
    if (token.kind === 'number') numbers += 1;
    else if (means(token.text, 'sounds like work')) words += 1;
  }
  return words >= 2 || (words >= 1 && numbers >= 1);
}

export const tokensOfLines = (lines: readonly LogicalLine[]): Token[][] =>
  lines.map((line) => tokensOf(line));
