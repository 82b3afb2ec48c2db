import { endsOrdinal, isOneOf } from '../../row/read/cursor.ts';
import { lex, type Token } from '../../row/read/lex.ts';
import { means } from '../../row/read/meanings.ts';
import { headingLine } from './size-line.ts';

/** What the sizes are called, where a line says so ('Sizes: S (M, L)', 'Directions are for size 12. Changes for sizes 14 and 16 …'). */
export function sizeNames(texts: readonly string[], sizes: number): string[] {
  for (const [i, text] of texts.entries()) {
    // 'Changes for sizes 14 and 16' above 'are in parentheses'
    const changes = changesIn(texts.slice(i, i + 3).join(' '));
    const names = changes.length > 1 ? changes : namesIn(text, sizes);
    if (names.length > 1) return names;
  }
  return [];
}

/** 'Directions are for size 12. Changes for sizes 14 and 16 are in parentheses.', 'Size 2 years. Sizes 4 and 6 in brackets.' */
function changesIn(text: string): string[] {
  const changes =
    /\bsize\s+([\w½¼¾/]+)(?:\s+years?)?[^A-Za-z0-9]{1,6}(?:changes?\s+for\s+(?:sizes?\s+)?|sizes?\s+)([\w\s,&½¼¾./-]{1,60}?)(?:\s+years?)?\s+(?:are\s+|is\s+)?(?:given\s+)?in\s+(?:parenth|bracket)/i.exec(
      text,
    );
  if (!changes) return [];
  const others = (changes[2] as string).split(/\s*(?:,|&|\band\b)\s*/).filter((name) => name !== '');
  return [changes[1] as string, ...others];
}

/** `sizes`: how many the lists of the text have, by which is told what a slash or a bracket between names parts. */
function namesIn(text: string, sizes: number): string[] {
  const line = headingLine(text);
  if (line === undefined) return [];
  // '2/3 (4/5, 6/7)' are three, '34/36/38' as well
  const ranges = cut(line, /[()[\],;:|]+|\s[-–—]\s|\band\b/);
  const names = sizes > 1 && ranges.length === sizes ? ranges : cut(line, /[()[\],;:|/]+|\s[-–—]\s|\band\b/);
  if (names.some((name) => name.length > 16)) return [];
  // 'S (34) M (38)': each with what it measures
  const brackets = (line.match(/[([][^,:;()[\]]+[)\]]/g) ?? []).length;
  return sizes > 1 && names.length === 2 * sizes && brackets === sizes
    ? names.flatMap((name, i) => (i % 2 === 0 ? [`${name} (${names[i + 1]})`] : []))
    : names;
}

function cut(line: string, at: RegExp): string[] {
  const names = line
    .split(at)
    .map((name) =>
      name
        .trim()
        .replace(/[.]$/, '')
        .replace(/^sizes?\s/i, ''),
    )
    .filter(
      (name) =>
        name !== '' && name.toLowerCase() !== 'to fit' && !means(name.toLowerCase(), 'no name of a size'),
    );
  // 'Size: 9 months, Gauge: 8 sts to 1 in'
  const end = names.findIndex((name) => lex(name)[0]?.word === 'gauge');
  return end < 0 ? names : names.slice(0, end);
}

/** What a size may be called: 'S (34)' is 'S' too, and '34'. */
const calls = (name: string): readonly string[] => [name, ...(name.match(/[^()]+/g) ?? [])];

const inWords = (name: string): string =>
  lex(name)
    .map(({ text }) => text)
    .join(' ');

/** Words and signs in which the sizes of an order are looked for: seven names of three words, and what lies between. */
export const LONGEST_SCOPE = 48;

/** 'For size L only:', 'Sizes S and M only:', 'All sizes:'; tells whether the size in hand is meant, and what is left to read. */
export function meantFor(
  tokens: readonly Token[],
  names: readonly string[],
  size: number,
): { meant: boolean; from: number } {
  const listed = byName(tokens, names);
  if (listed) return { meant: listed.sizes.includes(size), from: skipColon(tokens, listed.to) };
  let at = 0;
  while (isText(tokens[at], 'for', 'on', '(', '[')) at += 1;
  const all = tokens[at + 1]?.kind === 'number' ? at + 2 : at + 1;
  if (tokens[at]?.text === 'all' && means(tokens[all]?.text, 'size'))
    return { meant: true, from: skipColon(tokens, all + 1) };
  const ordinals: number[] = [];
  const start = at;
  if (means(tokens[at]?.text, 'size')) at += 1;
  const said: string[] = [];
  // names of several words, '12 months' and '2X' among them
  const groups: string[][] = [[]];
  while (at < tokens.length && at - start < 16 && !isText(tokens[at], 'only', ':')) {
    const token = tokens[at] as Token;
    // 'Dec 1 st at each end (size L only)' is an order, and no list of sizes
    if (means(token.word, 'beginning of an order')) return { meant: true, from: 0 };
    if (endsOrdinal(tokens[at + 1]) && token.kind === 'number') ordinals.push(token.value - 1);
    const ordinal = ORDINALS.indexOf(token.text);
    if (ordinal >= 0) ordinals.push(ordinal);
    if ((token.kind === 'mark' && token.text !== '-') || means(token.text, 'between sizes')) groups.push([]);
    else {
      said.push(token.text);
      groups.at(-1)?.push(token.text);
    }
    at += 1;
  }
  if (tokens[at]?.text !== 'only' && !(tokens[at]?.text === ':' && means(tokens[start]?.text, 'size')))
    return { meant: true, from: 0 };
  if (
    said.length === 0 ||
    !(
      means(tokens[start]?.text, 'size') || tokens.slice(start, at).some((token) => means(token.text, 'size'))
    )
  )
    return { meant: true, from: 0 };
  const isFor = (one: number): boolean =>
    calls(names[one] ?? '').some((call) => {
      const name = inWords(call);
      return said.includes(name) || groups.some((group) => group.join(' ') === name);
    });
  const named = ordinals.length > 0 || names.some((_, i) => isFor(i));
  const byOrder =
    ordinals.length > 0 ? ordinals : named ? [] : [...inOrder(said, names.length), ...byNumber(said, names)];
  // a size that nobody named is not passed over
  if (byOrder.length === 0 && !names.some((_, i) => isFor(i))) return { meant: true, from: 0 };
  const meant = byOrder.length > 0 ? byOrder.includes(size) : isFor(size);
  return { meant, from: skipColon(tokens, tokens[at]?.text === 'only' ? at + 1 : at) };
}

/** 'Sizes S, 42 and Ann only': each by the name that it has, whatever else its words might mean. */
function byName(
  tokens: readonly Token[],
  names: readonly string[],
): { readonly sizes: readonly number[]; readonly to: number } | undefined {
  if (!means(tokens[0]?.text, 'size')) return undefined;
  const known = names
    .flatMap((name, size) => calls(name).map((call) => ({ size, words: lex(call).map(({ text }) => text) })))
    .sort((a, b) => b.words.length - a.words.length);
  const sizes: number[] = [];
  for (let at = 1; ; ) {
    const found = known.find(
      ({ words }) => words.length > 0 && words.every((word, i) => isText(tokens[at + i], word)),
    );
    if (!found) return undefined;
    sizes.push(found.size);
    at += found.words.length;
    if (isText(tokens[at], 'only')) return { sizes, to: at + 1 };
    if (!isText(tokens[at], ',', 'and')) return undefined;
    at += 1;
  }
}

const ORDINALS = 'first second third fourth fifth sixth seventh eighth'.split(' ');

/** 'Sizes 1, 2 and 3 only' where they are called otherwise. */
function byNumber(said: readonly string[], names: readonly string[]): number[] {
  const numbers = said.filter((word) => /^\d+$/.test(word)).map(Number);
  return numbers.every((n) => n > 0 && n <= names.length) ? numbers.map((n) => n - 1) : [];
}

/** 'the smaller size', 'largest size': which one of them all. */
function inOrder(said: readonly string[], sizes: number): number[] {
  if (said.includes('smallest') || (sizes === 2 && said.includes('smaller'))) return [0];
  if (said.includes('largest') || (sizes === 2 && said.includes('larger'))) return [sizes - 1];
  return [];
}

/** 'Dec 1 st at each end of next row [size L only]': whether the size in hand is meant, and where what is left to read ends. */
export function meantBehind(
  tokens: readonly Token[],
  names: readonly string[],
  size: number,
): { meant: boolean; to: number } | undefined {
  const only = tokens.map(({ text }) => text).lastIndexOf('only');
  if (only < 0 || tokens.slice(only + 1).some(({ text }) => !isOneOf(text, '. ) ]'))) return undefined;
  for (let i = only - 1; i > 0; i -= 1) {
    if (!isText(tokens[i], '(', '[', 'for')) continue;
    if (isText(tokens[i + 1], 'for')) continue;
    if (!tokens.slice(i, only).some(({ text }) => means(text, 'size'))) return undefined;
    const open = isText(tokens[i - 1], '(', '[') ? i - 1 : i;
    return open > 0
      ? { meant: meantFor(tokens.slice(i + 1, only + 1), names, size).meant, to: open }
      : undefined;
  }
  return undefined;
}

const isText = (token: Token | undefined, ...texts: readonly string[]): boolean =>
  token !== undefined && texts.includes(token.text);

function skipColon(tokens: readonly Token[], at: number): number {
  let i = at;
  while (isOneOf(tokens[i]?.text ?? '', ': , . -')) i += 1;
  return i;
}
