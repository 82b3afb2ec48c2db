import { means } from '../row/read/meanings.ts';
import { wordOf } from '../row/read/vocabulary.ts';
import { type ReadLine, type ReadOptions, type ReadRow, readPattern } from './read-pattern.ts';
import { isKnownWord, nearWords } from './text/near-words.ts';
import { withLines } from './text/with-lines.ts';

/** What a line that was not understood may mean: other words for it, and what comes of them. */
export interface Reading {
  /** the line as it would stand in the text */
  readonly text: string;
  /** words of hers that it leaves out */
  readonly without: string;
  readonly rows: readonly ReadRow[];
  /** stitches */
  readonly before: number | undefined;
  readonly after: number;
}

/** More readings of the whole text than a knitter waits for. */
const MOST_TRIED = 40;
const MOST_SHOWN = 3;

/**
 * The nearest readings of a line that was not understood: with a slip of the pen put right, or without a part of its
 * sentence. Only such as are understood whole, the fewest faults in the rest of the text first, then those that leave out
 * least. She sees the rows and chooses; nothing is taken unseen.
 *
 * @param line the first source line of it, from 1
 */
export function nearestReadings(text: string, line: number, options: ReadOptions = {}): readonly Reading[] {
  const marked = readPattern(text, options).lines.find((one) => one.line === line);
  if (marked === undefined) return [];
  const found = new Map<string, { readonly reading: Reading; readonly faults: number }>();
  for (const { said, without } of candidates(marked.text).slice(0, MOST_TRIED)) {
    const read = readPattern(withSaid(text, marked, said), options);
    const now = read.lines.find((one) => one.line === line);
    if (now?.after === undefined || !isUnderstood(now)) continue;
    const faults = read.lines.reduce((sum, one) => sum + one.faults.length, 0);
    const key = JSON.stringify(now.rows);
    const known = found.get(key);
    if (known && (known.faults < faults || known.reading.without.length <= without.length)) continue;
    const reading = { text: said, without, rows: now.rows, before: now.before, after: now.after };
    found.set(key, { reading, faults });
  }
  return [...found.values()]
    .sort((a, b) => a.faults - b.faults || a.reading.without.length - b.reading.without.length)
    .slice(0, MOST_SHOWN)
    .map(({ reading }) => reading);
}

const isUnderstood = ({ faults, asksCount, rows, kind }: ReadLine): boolean =>
  faults.length === 0 && !asksCount && rows.length > 0 && kind === 'instructions';

/** The text with the line, which a page may have broken, said otherwise; it keeps its number of source lines. */
const withSaid = (text: string, { line, lastLine }: ReadLine, said: string): string =>
  withLines(text, line, lastLine, said + '\n'.repeat(lastLine - line));

interface Candidate {
  readonly said: string;
  readonly without: string;
}

/** Slips put right first; then the line, and those, without some of their clauses: what leaves out least before the rest. */
function candidates(text: string): Candidate[] {
  const spelled = [text, ...spelledRight(text)];
  const found = new Map(spelled.slice(1).map((said) => [said, { said, without: '' }]));
  const parts = spelled.slice(0, 3).flatMap(withoutAClause);
  // a slip in what is left out needs not be put right: the line's own words come first
  const own = new Map([...parts].reverse().map((part) => [part.said, part]));
  for (const part of [...own.values()].sort((a, b) => a.without.length - b.without.length))
    if (!found.has(part.said)) found.set(part.said, part);
  return [...found.values()];
}

const WORD = /\p{L}+/gu;
const MOST_SPELLINGS = 6;

/** The line with each word that nobody knows written as one that is known. */
function spelledRight(text: string): string[] {
  let said = [text];
  for (const [word] of new Set([...text.matchAll(WORD)].map(([one]) => [one] as const))) {
    if (isKnownWord(word)) continue;
    const near = nearWords(word, 2);
    if (near.length === 0) continue;
    const other = new RegExp(`(?<!\\p{L})${word}(?!\\p{L})`, 'gu');
    said = said.flatMap((one) => near.map((right) => one.replace(other, right))).slice(0, MOST_SPELLINGS);
  }
  return said.filter((one) => one !== text);
}

/** The line without each run of clauses of it; a label ('Row 3:') and a count at its end stay. */
function withoutAClause(text: string): Candidate[] {
  const { label, body, end } = partsOf(text);
  const clauses = clausesOf(body);
  const out: Candidate[] = [];
  for (let from = 0; from < clauses.length; from += 1)
    for (let to = from + 1; to <= clauses.length && to - from < clauses.length; to += 1) {
      const rest = [...clauses.slice(0, from), ...clauses.slice(to)];
      out.push({ said: `${label}${joined(rest)}${end}`, without: clauses.slice(from, to).join(', ') });
    }
  return out;
}

/** 'Next row: ', 'k2, k2tog', '. 78 sts.' */
function partsOf(text: string): { readonly label: string; readonly body: string; readonly end: string } {
  const [label = ''] = /^[^:]{1,30}:\s*/u.exec(text) ?? [];
  const rest = text.slice(label.length);
  const count = /[.\s]*[([]?\d+ (\p{L}+)[^,;]*$/u.exec(rest);
  const end = count && means(wordOf(count[1] ?? ''), 'counted at the end') ? count : /[.\s]*$/.exec(rest);
  const at = end?.index ?? rest.length;
  return { label, body: rest.slice(0, at), end: rest.slice(at) };
}

/** Clauses end at commas, semicolons and brackets, and before a word that begins a remark or another order. */
const clausesOf = (body: string): string[] =>
  body
    .split(/[,;]/u)
    .flatMap((part) => {
      const words = part.trim().split(/\s+/u);
      const starts = words.flatMap((word, i) => (i === 0 || beginsClause(word, words[i - 1]) ? [i] : []));
      return starts.map((start, i) => words.slice(start, starts[i + 1]).join(' '));
    })
    .filter((clause) => clause !== '');

const beginsClause = (word: string, before = ''): boolean =>
  word.startsWith('(') ||
  before.endsWith(')') ||
  means(word.toLowerCase(), 'joins two orders') ||
  means(word.toLowerCase(), 'beginning of an aside');

/** A clause that began with 'and' or 'then' begins the sentence without it. */
const joined = (clauses: readonly string[]): string =>
  clauses.reduce((all, one) => {
    const [first = '', ...rest] = one.split(' ');
    const joins = means(first.toLowerCase(), 'joins two orders');
    if (all === '') return joins ? rest.join(' ') : one;
    return `${all}${joins || one.startsWith('(') ? ' ' : ', '}${one}`;
  }, '');
