import { endsOrdinal, isWord } from '../../row/read/cursor.ts';
import { lex, type Token } from '../../row/read/lex.ts';
import { means } from '../../row/read/meanings.ts';

/** Rows that a page broke in two: what stands at the end of one line and belongs to the next one. */
export const goesOnAsRow = (end: string, next: string): boolean =>
  (isLabelAlone(lex(end)) && means(lex(next)[0]?.word, 'beginning of a broken row')) ||
  countsBelow(lex(end), lex(next));

/** 'K2 to last st, k1' above '7 more rows in rib': so many rows of their own. */
export const rowsBelow = (end: string, next: string): boolean => {
  const before = lex(end);
  const last = before.at(-1);
  const stitch = last?.kind === 'number' && isWord(before.at(-2), 'k', 'p');
  return (stitch || isWord(last, 'end')) && countsRows(lex(next));
};

/**
 * '1st row: (RS). K4. *C6B. K4.' above 'Rep from * to last 4 sts. K4.' or 'K4. P2.': stitches that are parted by stops; 'Next
 * row (RS): Work 22 sts.' above 'Place remaining sts on holder.'
 */
export function goesOnBehindStop(parts: readonly string[], next: string): boolean {
  const first = lex(parts[0] ?? '');
  const label = labelAt(first);
  if (label === 0 || !isWord(first[behindSide(first, label)], ':', '.')) return false;
  const below = lex(next);
  if (beginsStitch(below) && partsByStops(lex(parts.join('\n')))) return true;
  return holdsRest(below) && worksSome(lex(parts.at(-1) ?? ''));
}

/** '*C6B. K4.' */
export const beginsCable = (line: string): boolean => isCable(lex(line), line.startsWith('(') ? 1 : 0);

/** '5th row', 'Row 5', 'Next row': so many tokens; 0 where there is none. */
function labelAt([a, b, c]: readonly Token[]): number {
  if (a?.kind === 'number' && endsOrdinal(b) && isWord(c, 'row')) return 3;
  if (isWord(a, 'row') && b?.kind === 'number') return 2;
  return isWord(a, 'next') && isWord(b, 'row') ? 2 : 0;
}

const behindSide = (tokens: readonly Token[], at: number): number =>
  isWord(tokens[at], '(', '[') && isWord(tokens[at + 1], 'rs', 'ws') && isWord(tokens[at + 2], ')', ']')
    ? at + 3
    : at;

const isLabelAlone = (tokens: readonly Token[]): boolean => {
  const label = labelAt(tokens);
  const end = behindSide(tokens, label);
  return label > 0 && end === tokens.length - 1 && isWord(tokens[end], ':');
};

/** 'Cast off' above '2 sts, knit to end', 'Knit' above '3 rows': how many stands on the next line. */
const countsBelow = (before: readonly Token[], below: readonly Token[]): boolean =>
  (isWord(before.at(-2), 'cast', 'bind') &&
    isWord(before.at(-1), 'on', 'off') &&
    below[0]?.kind === 'number') ||
  (before.length === 1 && isWord(before[0], 'k', 'p', 'work') && countsRows(below));

const countsRows = (tokens: readonly Token[]): boolean =>
  tokens[0]?.kind === 'number' && isWord(tokens[isWord(tokens[1], 'more') ? 2 : 1], 'row', 'rows');

const isCable = (tokens: readonly Token[], at: number): boolean =>
  isWord(tokens[at], 'c', 'cr', 't', 'tw') &&
  tokens[at + 1]?.kind === 'number' &&
  isWord(tokens[at + 2], 'b', 'f', 'l', 'r') &&
  tokens[at + 2]?.glued === true;

/** 'K4', '*p2', '(k1', 'C6B'; two stars are none. */
function beginsStitch(tokens: readonly Token[]): boolean {
  if (isWord(tokens[0], '*')) return !isWord(tokens[1], '*');
  const at = isWord(tokens[0], '(') ? 1 : 0;
  return (isWord(tokens[at], 'k', 'p') && tokens[at + 1]?.kind === 'number') || isCable(tokens, at);
}

const partsByStops = (tokens: readonly Token[]): boolean =>
  tokens.some(
    (token, i) =>
      isWord(token, '.') &&
      tokens[i - 1]?.kind === 'number' &&
      isWord(tokens[i - 2], 'k', 'p') &&
      (isWord(tokens[i + 1], '*', '(', 'rep') ||
        (isWord(tokens[i + 1], 'k', 'p', 'c') && tokens[i + 2]?.glued === true)),
  );

/** 'Place remaining sts on holder.' */
const holdsRest = ([first, the, rem]: readonly Token[]): boolean =>
  isWord(first, 'place', 'put', 'sl', 'leave', 'transfer') && isWord(isWord(the, 'the') ? rem : the, 'rem');

/** '… work 22 (24, 26) sts.' */
function worksSome(tokens: readonly Token[]): boolean {
  let at = tokens.length - 1;
  while (at > 0 && isWord(tokens[at], '.', ',', 'st', 'sts')) at -= 1;
  if (isWord(tokens[at], ')', ']')) while (at > 0 && !isWord(tokens[at], '(', '[')) at -= 1;
  if (isWord(tokens[at], '(', '[')) at -= 1;
  return tokens[at]?.kind === 'number' && isWord(tokens[at - 1], 'work', 'k', 'p', 'patt');
}
