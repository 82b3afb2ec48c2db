import { expect } from 'vitest';
import type { Fault } from '../../../../src/knit/fault.ts';
import {
  type ReadLine,
  type ReadOptions,
  type ReadPiece,
  type ReadRow,
  readPattern,
} from '../../../../src/knit/pattern/read-pattern.ts';
import type { PartRecipe, Section } from '../../../../src/knit/piece/recipe.ts';
import { printRow } from '../../../../src/knit/row/print.ts';
import { fieldsInWords, inWords } from '../table.ts';

/**
 * Patterns with what they come out as below each line:
 *
 *     ### a decrease at each end {"size": 1}
 *     Cast on 20 sts.
 *       > 20
 *     Dec 1 st at each end of next row.
 *       > 20→18 Piece/body 1 RS dec, k16, dec (18)
 *
 * Below a line: what it is where it is no instruction, the stitches on the needle before and after it, the counts that it
 * states, its rows (piece, part and number of the first one; the count where it changes), its lengths, its faults. Below
 * them all each piece as a recipe.
 */
export interface Annotated {
  readonly title: string;
  readonly text: string;
  readonly whole: string;
  readonly options: ReadOptions;
}

const MARK = '  > ';

export const annotatedIn = (blocks: string): Annotated[] =>
  blocks
    .split(/^### /m)
    .slice(1)
    .map((block) => {
      const [head = '', ...lines] = block.trimEnd().split('\n');
      const [, title = '', options = '{}'] = /^(.*?)\s*(\{.*\})?$/.exec(head) ?? [];
      const text = lines.filter((line) => !line.startsWith(MARK)).join('\n');
      return { title, text, whole: lines.join('\n'), options: JSON.parse(options) as ReadOptions };
    });

/** That a pattern comes out as it is written below its lines. */
export function expectAnnotated({ text, whole, options }: Annotated): void {
  expect(annotate(text, options)).toBe(whole);
}

export function annotate(text: string, options: ReadOptions): string {
  const { sizes, size, gauge, lines, pieces, patterns } = readPattern(text, options);
  const source = text.split('\n');
  const out: string[] = [];
  source.forEach((words, i) => {
    out.push(words);
    const line = lines.find(({ lastLine }) => lastLine === i + 1);
    if (line !== undefined) out.push(...lineInShort(line));
  });
  const ends = [
    ...(sizes.length > 1 || size > 0 ? [`= sizes ${sizes.join(', ')}: ${sizes[size]}`] : []),
    ...(gauge === undefined ? [] : [`= gauge ${fieldsInWords(gauge)}`]),
    ...patterns.flatMap(({ name, of, plus, rows, counts, stitches }) => [
      `= pattern ${inWords(name)} of ${of} plus ${plus} over ${stitches}: ${rows
        .map((steps, i) => `${steps === undefined ? '?' : printRow(steps)} (${counts[i]})`)
        .join(' · ')}`,
    ]),
    ...pieces.flatMap(pieceInShort),
  ];
  return [...out, ...ends.map((end) => MARK + end)].join('\n');
}

function lineInShort({
  line,
  lastLine,
  kind,
  before,
  after,
  stated,
  rows,
  lengths,
  faults,
  asksCount,
}: ReadLine) {
  const count = before === after ? `${after ?? ''}` : `${before ?? ''}→${after ?? ''}`;
  const head = [
    ...(kind === 'instructions' ? [] : [kind]),
    ...(line === lastLine ? [] : [`lines ${line} to ${lastLine}`]),
    count,
    ...stated.map((n) => `says ${n}`),
    ...(asksCount ? ['asks the count'] : []),
    ...lengths.map(({ open, rows: n }) => `${open ? 'as long as she likes' : 'long'}: ${n} rows`),
    rowsInShort(rows),
  ];
  const first = head.filter((part) => part !== '').join(' ');
  return [...(first === '' ? [] : [MARK + first]), ...faults.map((one) => MARK + faultInShort(one))];
}

const faultInShort = ({ code, at, figures }: Fault): string =>
  `✗ ${code} @${at.line}${at.column === undefined ? '' : `:${at.column}`} ${fieldsInWords(figures)}`.trimEnd();

/** Rows one after the other; where two that alternate, or one, come again and again they are said once. */
function rowsInShort(rows: readonly ReadRow[]): string {
  const said: string[] = [];
  let where = '';
  const words = rows.map((row, i) => {
    const now = `${row.piece}/${row.part}`;
    const next = rows[i - 1];
    const begins = now !== where || (next !== undefined && row.n !== next.n + 1);
    where = now;
    const after = row.before === row.after ? '' : ` (${row.after})`;
    const own = row.own === undefined ? '' : ` '${row.own}'`;
    return `${begins ? `${now} ${row.n} ` : ''}${row.side} ${printRow(row.steps)}${own}${after}`;
  });
  for (let i = 0; i < words.length; ) {
    const [one, two] = [words.slice(i, i + 1), words.slice(i, i + 2)];
    const [times, pairs] = [timesAt(words, i, one), timesAt(words, i, two)];
    if (times > 1 || pairs < 2) said.push(times > 1 ? `${words[i]} ×${times}` : (words[i] ?? ''));
    else said.push(`[${two.join(' · ')}] ×${pairs}`);
    i += times > 1 || pairs < 2 ? times : pairs * 2;
  }
  return said.join(' · ');
}

function timesAt(words: readonly string[], from: number, some: readonly string[]): number {
  let times = 0;
  while (some.every((word, i) => words[from + times * some.length + i] === word)) times += 1;
  return times;
}

function pieceInShort({ recipe, plan, lines }: ReadPiece): string[] {
  const { name, role, makes, parts } = recipe;
  const comesOut = plan.ok ? '' : `; ✗ ${plan.faults.map(({ code }) => code).join(', ')}`;
  return [
    `= ${name}, ${role}, ${makes} to make, lines ${lines.map((i) => i + 1).join(' ')}${comesOut}`,
    ...parts.map(partInShort),
  ];
}

const partInShort = ({ name, from, firstSide, sections, end }: PartRecipe): string =>
  `=   ${name} from ${inWords(from)}, ${firstSide}: ${[...sections.map(sectionInShort), end].join('; ')}`;

function sectionInShort({ name, rows, fabric, needle, own, length }: Section): string {
  const said = name === fabric ? fabric : `${inWords(name)} in ${fabric}`;
  const more = [
    ...(own === undefined ? [] : [`own words ${Object.keys(own).join(' ')}`]),
    ...(length === undefined ? [] : [`length ${inWords(length)}`]),
  ];
  return `${rows} ${said} ${needle} mm${more.length === 0 ? '' : ` (${more.join(', ')})`}`;
}
