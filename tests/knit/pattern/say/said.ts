import { expect } from 'vitest';
import type { Fault } from '../../../../src/knit/fault.ts';
import { readSentence } from '../../../../src/knit/pattern/say/sentence.ts';
import type { Said, Statement } from '../../../../src/knit/pattern/say/statement.ts';
import { lex } from '../../../../src/knit/row/read/lex.ts';
import type { Item } from '../../../../src/knit/row/read/notation.ts';
import { fieldsInWords, inWords, type Line } from '../table.ts';

/** How patterns are usually worded: common practice, no published source. What one sentence says, on a line of its own. */
export function saidIn(text: string): Statement[] {
  const tokens = lex(text);
  const { said } = readSentence(tokens, { from: 0, to: tokens.length }, true);
  return said.map(({ statement }) => statement);
}

/** What kinds of statements a sentence is read as. */
export const kindsIn = (text: string): Statement['is'][] => saidIn(text).map(({ is }) => is);

/**
 * All that a sentence is read as: `even: until {rows, n 6} (24) | @20 turn | ✗ stitch expected @25`; the count stated in
 * round brackets, the column behind '@' where it is not the first. '… ' before a sentence: others stand on its line.
 */
export function reading(text: string): string {
  const shared = text.startsWith('… ');
  const tokens = lex(shared ? text.slice(2) : text);
  const { said, fault } = readSentence(tokens, { from: 0, to: tokens.length }, !shared);
  return [...said.map(inShort), ...(fault === undefined ? [] : [faultInShort(fault)])].join(' | ');
}

/** That every way of saying a line of a table is read as the line has it. */
export function expectReading({ texts, reading: wanted }: Line): void {
  for (const text of texts) expect(reading(text), text).toBe(wanted);
}

const at = (column: number | undefined): string => (column === 1 ? '' : `@${column} `);

function inShort({ statement, column, stated }: Said): string {
  const { is, ...rest } = statement;
  const fields = fieldsInWords('items' in rest ? { ...rest, items: itemsInShort(rest.items) } : rest);
  return `${at(column)}${is}${fields === '' ? '' : `: ${fields}`}${stated === undefined ? '' : ` (${stated})`}`;
}

const faultInShort = ({ code, at: { column }, figures }: Fault): string =>
  `✗ ${code} @${column}${'bracketText' in figures ? ` ${figures.bracketText}` : ''}`;

const itemsInShort = (items: readonly Item[]): string => items.map(itemInShort).join(', ');

function itemInShort(item: Item): string {
  switch (item.is) {
    case 'stitches':
      return `${item.work}${item.times === 1 ? '' : ` ×${item.times}`}${item.panel ? ' panel' : ''}${item.centre ? ' in the middle' : ''}`;
    case 'stitches to':
      return `${item.work} to ${inWords(item.goal)}${item.appear ? ' as they look' : ''}`;
    case 'group':
      return `(${itemsInShort(item.items)}) ×${item.times}`;
    case 'group to':
      return `(${itemsInShort(item.items)}) to ${inWords(item.goal)}`;
    case 'group over':
      return `(${itemsInShort(item.items)}) over ${item.stitches}`;
    default:
      return inWords(item);
  }
}
