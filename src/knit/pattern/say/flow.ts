import { cursorOver, expected, isWord } from '../../row/read/cursor.ts';
import type { Token } from '../../row/read/lex.ts';
import { withoutAsides } from '../text/asides.ts';
import type { LogicalLine } from '../text/lines.ts';
import { tokensOf } from '../text/lines.ts';
import { type Mend, mendIn } from '../text/mend.ts';
import { sentences } from '../text/sentences.ts';
import { LONGEST_SCOPE, meantBehind, meantFor } from '../text/size-names.ts';
import { isCount, pickSizes, type SizesSaid } from '../text/size-scope.ts';
import { stripeSentence } from '../text/stripe-sentence.ts';
import type { Span } from '../text/with-lines.ts';
import { type OwnWords, ownWords } from './own-words.ts';
import { readSpelledRight } from './spelled-right.ts';
import type { Said } from './statement.ts';

export type { Span } from '../text/with-lines.ts';

/** What the lines say, in order: instructions, and what was not understood. */
export type Flow = (
  | { readonly is: 'said'; readonly said: Said; readonly words: string; readonly line: number }
  | OwnWords
) & { readonly span?: Span };

/** The size that a text is read for. */
export interface ForSize {
  /** counting from 0, of so many */
  readonly size: number;
  readonly sizes: number;
  readonly names: readonly string[];
  /** of each line for which of them it is, where it says so */
  readonly said: readonly (SizesSaid | undefined)[];
}

interface LineRead {
  readonly flow: readonly Flow[];
  /** lists of another length */
  readonly odd: readonly Token[];
  /** the sizes that the line below is for, where it says none itself */
  readonly scope?: readonly number[] | undefined;
}

/** Reads one logical line for one size; `index` is its place among the lines, `scope` the sizes that it is for. */
export function flowOf(
  line: LogicalLine,
  index: number,
  tokens: readonly Token[],
  of: ForSize,
  scope?: readonly number[],
): LineRead {
  const { size, sizes } = of;
  const said = of.said[index];
  const some = said && said.sizes.length < sizes ? said.sizes : undefined;
  // 'For 1st size only' on a line of its own
  if (said?.alone) return { flow: [], odd: [], scope: some };
  if (said || !scope) return readMended(line, index, tokens, of, some);
  const read = readMended(line, index, tokens, of, scope);
  if (read.flow.some(namesPiece)) return readMended(line, index, tokens, of);
  const meant = scope.includes(size) ? read : { flow: [], odd: [] };
  // until others are named, or all of them; where the text does neither only the next line is meant
  const lasts = of.said.some(
    (other, i) =>
      other?.alone &&
      (other.sizes.length === sizes || (i > index && i < index + 12 && other.sizes.join() !== scope.join())),
  );
  return { ...meant, scope: lasts ? scope : undefined };
}

const namesPiece = (one: Flow): boolean =>
  one.is === 'said' && one.said.statement.is === 'heading' && one.said.statement.piece !== undefined;

function readMended(
  line: LogicalLine,
  index: number,
  tokens: readonly Token[],
  of: ForSize,
  some?: readonly number[],
): LineRead {
  const mend = mendIn(tokens);
  if (mend === undefined) return readLine(line, index, tokens, of, some);
  const said = { ...line, text: line.text.slice(0, tokens[mend.from]?.offset).trimEnd() };
  const own = tokens.slice(0, mend.from);
  const { flow, odd } = readLine(said, index, own, of, some);
  return { flow: mended(flow, mend, said.text, own, index), odd };
}

/**
 * What was not understood of the line is as many rows as she says, all of it together; where all was understood and does
 * not come out, the whole line is.
 */
function mended(
  flow: readonly Flow[],
  { rows, stitches }: Mend,
  text: string,
  tokens: readonly Token[],
  index: number,
): Flow[] {
  const whole = { from: 0, to: tokens.length };
  const unknown = expected(cursorOver(tokens), 'stitch or repeat expected');
  const first =
    flow.find((one) => one.is === 'own words') ??
    ({ ...ownWords(text, tokens, unknown, whole, 0, index), span: spanOf(tokens, 0, whole.to) } as const);
  const { stated: _, ...rest } = first as OwnWords;
  const mine: OwnWords & Flow = {
    ...rest,
    rows,
    mended: true,
    open: false,
    ...(stitches === undefined ? {} : { stated: stitches }),
  };
  if (!flow.includes(first)) return [...flow.filter(leadsUp), mine];
  return flow.flatMap((one): Flow[] => (one === first ? [mine] : one.is === 'own words' ? [] : [one]));
}

/** What stands before the rows of a line and is none of them. */
const leadsUp = (one: Flow): boolean =>
  one.is === 'said' && ['heading', 'cast on', 'needle', 'gauge'].includes(one.said.statement.is);

function readLine(
  line: LogicalLine,
  index: number,
  tokensOfLine: readonly Token[],
  { size, sizes, names }: ForSize,
  some: readonly number[] | undefined,
): LineRead {
  // colours of rows are no rows; who makes a garment of the text reads them
  if (stripeSentence(line.text) || defines(tokensOfLine)) return { flow: [], odd: [] };
  const { tokens: picked, odd } = pickSizes(tokensOfLine, { size, sizes, names }, some);
  const tokens = withoutAsides(picked);
  const parts = sentences(tokens);
  const flow: Flow[] = [];
  let others: 'row' | 'count' | undefined;
  for (const sentence of parts) {
    const cut =
      sizes > 1
        ? meantFor(
            tokens.slice(sentence.from, Math.min(sentence.to, sentence.from + LONGEST_SCOPE)),
            names,
            size,
          )
        : { meant: true, from: 0 };
    // 'Sizes S and M only: Row 3 (RS): knit. (24 sts)' is all of those sizes
    const goesOn = others === 'row' || (others === 'count' && isCount(tokens[sentence.from]));
    if (cut.meant && cut.from === 0 && goesOn) continue;
    others = cut.meant ? undefined : sentence.from + cut.from >= sentence.to ? 'row' : 'count';
    if (!cut.meant) continue;
    const from = sentence.from + cut.from;
    const behind = sizes > 1 ? meantBehind(tokens.slice(from, sentence.to), names, size) : undefined;
    if (behind?.meant === false) {
      others = 'count';
      continue;
    }
    const to = behind ? from + behind.to : sentence.to;
    const read = readSpelledRight(tokens, { from, to }, parts.length === 1);
    const words = wordsOf(line, tokens, from, sentence.to);
    const span = spanOf(tokens, from, sentence.to);
    for (const said of read.said)
      flow.push({ is: 'said', said: withWords(said, words), words, line: index, span });
    if (read.fault) {
      const whole = { from, to };
      const first = read.said.length === 0 ? from : (read.rest ?? from);
      const own = ownWords(line.text, tokens, read.fault, whole, first, index);
      flow.push({
        ...own,
        span,
        ...(read.beside || inBrackets(tokens, from, sentence.to) || describes(tokens, from, sentence.to)
          ? { beside: true }
          : {}),
        ...(read.order ? { work: true } : {}),
        ...(read.rounds ? { rounds: true } : {}),
      });
    }
  }
  return { flow, odd };
}

/** 'K – knit', 'pat = pattern', 'sl1 – slip 1 st': what is meant by a word, and no order. */
function defines(tokens: readonly Token[]): boolean {
  const dash = tokens.findIndex((token) => isWord(token, '-', '='));
  const [left, right] = [tokens[0], tokens[dash + 1]];
  const next = tokens[dash + 2];
  return (
    dash > 0 &&
    dash < 4 &&
    left?.kind === 'word' &&
    left.word === right?.word &&
    left.text !== right.text &&
    (next === undefined || next.line !== right.line || (left.text.length > 1 && left.text.length < 4))
  );
}

/** 'Increases on the lower edge are worked every 4th row', 'do not shape these rows': it says of rows what they are, and makes none. */
const describes = (tokens: readonly Token[], from: number, to: number): boolean =>
  (isWord(tokens[from], 'do') && isWord(tokens[from + 1], 'not')) ||
  (isWord(tokens[from], 'for') && isWord(tokens[from + 1], 'me', 'us')) ||
  (['increases', 'decreases', 'incs', 'decs'].includes(tokens[from]?.text ?? '') &&
    tokens.slice(from, Math.min(to, from + 12)).some(({ text }) => text === 'are' || text === 'continue'));

/** A row that names its yarns keeps its words, and so does what is made in rows to come. */
const withWords = (said: Said, words: string): Said =>
  (said.statement.is === 'row' && said.statement.told) || said.statement.is === 'buttonholes'
    ? { ...said, statement: { ...said.statement, words } }
    : said;

/** '(Work button-holes on the other front as well.)' says more of what stands before it. */
const inBrackets = (tokens: readonly Token[], from: number, to: number): boolean =>
  isWord(tokens[from], '(', '[') && isWord(tokens[to - 1], ')', ']');

/** The stop at its end is of the sentence. */
function spanOf(tokens: readonly Token[], from: number, to: number): Span {
  const { line = 1, column = 1 } = tokens[from] ?? {};
  const next = tokens[isWord(tokens[to], '.', '!', '?') ? to + 1 : to];
  return { line, column, ...(next && { to: { line: next.line, column: next.column } }) };
}

const wordsOf = (line: LogicalLine, tokens: readonly Token[], from: number, to: number): string =>
  line.text
    .slice(tokens[from]?.offset ?? 0, tokens[to]?.offset ?? line.text.length)
    .replace(/\s+/g, ' ')
    .trim();

export function tokensOfLines(lines: readonly LogicalLine[]): Token[][] {
  const tokens = lines.map((line) => spelledOut(tokensOf(line)));
  return tokens.some(namesYarnB) ? tokens.map(inYarnB) : tokens;
}

/** 'R1: k, p', 'R3-4) purl' are rows, and what is 'cast of' is cast off. */
function spelledOut(tokens: readonly Token[]): Token[] {
  let open = false;
  return tokens.map((token, i) => {
    const [before, next] = [tokens[i - 1], tokens[i + 1]];
    const word = (text: string): Token => ({ ...token, text, word: text });
    const number = next?.kind === 'number';
    if (token.text === 'r' && token.capital && number && !token.glued) {
      open = true;
      return word('row');
    }
    if (open && token.kind !== 'number' && token.text !== '-') {
      open = false;
      if (token.text === ')') return word(':');
    }
    // '34s'
    if (token.text === 's' && before?.kind === 'number' && token.glued && !number) return word('sts');
    // 'k l' of a scanned page
    if (SCANNED.has(token.text) && isWord(before, 'k', 'p') && !token.glued && endsStitch(next))
      return { ...token, kind: 'number', text: '1', word: '1', value: 1 };
    const off = token.text === 'of' && isWord(before, 'cast', 'bind');
    return off ? word('off') : token;
  });
}

/** What is read for a 1 where a page was scanned. */
const SCANNED: ReadonlySet<string> = new Set(['l', 'i']);

const endsStitch = (next: Token | undefined): boolean =>
  next === undefined || isWord(next, ',', ';', '.', '*', ')', 'and', 'rep', 'rib', 'for', 'in');

/** 'With B', 'join in B', 'yarn B': the text calls a yarn so. */
const namesYarnB = (tokens: readonly Token[]): boolean =>
  tokens.some(
    (token, i) => isB(token) && isWord(tokens[i - 1], 'with', 'using', 'join', 'in', 'yarn', 'color'),
  );

const isB = ({ text, capital, glued }: Token): boolean => text === 'b' && capital && !glued;

/** 'K3 B, p to end' where B is a yarn: knitted in it, and not into the back. */
const inYarnB = (tokens: readonly Token[]): Token[] =>
  tokens.flatMap((token, i) =>
    isB(token) && tokens[i - 1]?.kind === 'number'
      ? [{ ...token, text: 'in', word: 'in', capital: false }, token]
      : [token],
  );
