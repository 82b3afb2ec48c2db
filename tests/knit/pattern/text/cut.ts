import { expect } from 'vitest';
import { type LogicalLine, logicalLines } from '../../../../src/knit/pattern/text/lines.ts';
import { pickSize } from '../../../../src/knit/pattern/text/pick-size.ts';
import { sentences } from '../../../../src/knit/pattern/text/sentences.ts';
import { meantFor, sizeNames } from '../../../../src/knit/pattern/text/size-names.ts';
import { countSizes } from '../../../../src/knit/pattern/text/sizes.ts';
import { lex, type Token } from '../../../../src/knit/row/read/lex.ts';
import type { Line } from '../table.ts';

const words = (tokens: readonly Token[]): string =>
  tokens.map(({ text, value, kind }) => (kind === 'number' ? String(value) : text)).join(' ');

/** ' ¶ ' in a table is the end of a line. */
const lined = (text: string): string => text.replaceAll(' ¶ ', '\n').replaceAll('¶', '\n');

const inOneLine = ({ line, lastLine, text }: LogicalLine): string =>
  `${line}${lastLine === line ? '' : `-${lastLine}`}: ${text.trim().replace(/\s+/g, ' ')}`;

/** What the rooms of the text make of it, for the tables of their tests. */
export const readings: Readonly<Record<string, (text: string) => string>> = {
  lines: (text) => logicalLines(lined(text)).map(inOneLine).join(' | '),
  sentences: (text) => {
    const tokens = lex(text);
    return sentences(tokens)
      .map(({ from, to }) => words(tokens.slice(from, to)))
      .join(' | ');
  },
  /** how many sizes, and the tokens as each size of three (or as many as 'n: ' says) has them */
  sizes: (text) => {
    const [, said, rest = text] = /^(\d): (.*)$/.exec(text) ?? [];
    const tokens = lex(rest);
    const sizes = Number(said ?? 3);
    const picked = Array.from({ length: sizes }, (_, size) => pickSize(tokens, size, sizes));
    const odd = picked[0]?.odd ?? [];
    return `${countSizes([tokens])} sizes: ${picked.map((one) => words(one.tokens)).join(' | ')}${
      odd.length === 0 ? '' : ` | odd at ${odd.map(({ column }) => column).join(' ')}`
    }`;
  },
  'size-names': (text) => sizeNames(lined(text).split('\n'), 1).join(' | '),
  /** which of the sizes S, M and L are meant, and what is left to read */
  meant: (text) => {
    const tokens = lex(text);
    const names = ['S', 'M', 'L'];
    const meant = names.map((_, size) => meantFor(tokens, names, size));
    const left = words(tokens.slice(meant[0]?.from ?? 0));
    return `${names.filter((_, size) => meant[size]?.meant).join(' ') || 'none'}: ${left}`;
  },
};

/** That every way of saying a line of a table is cut as the line has it. */
export const expectCut =
  (room: keyof typeof readings) =>
  ({ texts, reading }: Line): void => {
    for (const text of texts) expect(readings[room]?.(text), text).toBe(reading);
  };
