import { endsOrdinal, isWord } from '../../row/read/cursor.ts';
import type { Token } from '../../row/read/lex.ts';
import { means } from '../../row/read/meanings.ts';
import {
  beginsStitch,
  beginsWithRow,
  endsHeldStitches,
  holdsWorked,
  partsStitches,
  partsTurn,
  worksOnSome,
} from './stitch-stops.ts';

/** A stretch of a line's tokens that says one thing: from, up to but not with. */
export interface Sentence {
  readonly from: number;
  readonly to: number;
}

/** Cuts at full stops, and before a row's label in the middle of a line. */
export function sentences(tokens: readonly Token[]): Sentence[] {
  const out: Sentence[] = [];
  let from = 0;
  let depth = 0;
  let some = false;
  const cut = (at: number) => {
    if (at > from) out.push({ from, to: at });
    from = at;
  };
  for (let i = 0; i < tokens.length; i += 1) {
    const text = tokens[i]?.text ?? '';
    if (depth === 0 && isForSizes(tokens, i)) {
      cut(i);
      some = true;
    }
    if (text === '(' || text === '[' || text === '{') depth += 1;
    else if (text === ')' || text === ']' || text === '}') depth = Math.max(0, depth - 1);
    if (some && depth === 0) {
      cut(i + 1);
      some = false;
    }
    if (i > from && depth === 0 && startsLineWithLabel(tokens, i)) cut(i);
    if (text === '.' && goesOnBehindStop(tokens, from, i)) continue;
    if ((text === '.' || text === '!' || text === '?') && depth === 0) {
      cut(i);
      from = i + 1;
    } else if (i > from && depth === 0 && worksOnSome(tokens, i)) {
      cut(i);
      from = i + 1;
    } else if (
      i > from &&
      depth === 0 &&
      (repeatsBehindRow(tokens, from, i) || castsOnNextRow(tokens, i) || bindsOffBehind(tokens, i))
    )
      cut(i);
    else if (i > from && depth === 0 && startsLabel(tokens, i) && !namesRow(tokens, from, i)) cut(i);
  }
  cut(tokens.length);
  return out;
}

/** 'st st. [Size L only: k 2 rows.] Bind off': an order of its own in brackets; '[size L only]' is none. */
function isForSizes(tokens: readonly Token[], at: number): boolean {
  if (!isWord(tokens[at], '(', '[') || isWord(tokens[at + 1], ')', ']')) return false;
  const last = isWord(tokens[at + 1], 'for') ? ['only', ':'] : ['only'];
  const only = tokens.slice(at, at + 16).findIndex((token) => isWord(token, ...last));
  const inner = tokens.slice(at + 1, at + Math.max(1, only));
  const behind = tokens[at + only + 1];
  return (
    inner.some(({ text }) => means(text, 'size')) &&
    inner.every((token) => !isWord(token, '.', ')', ']')) &&
    !isWord(behind, ')', ']') &&
    behind !== undefined
  );
}

/** '1st row.- K2' and 'Next row: cast off 5 sts. Knit to end.': the stop parts nothing. */
function goesOnBehindStop(tokens: readonly Token[], from: number, at: number): boolean {
  const label = labelAt(tokens, from);
  const dash = isWord(tokens[at + 1], '-');
  if (dash && (tokens[at + 1]?.glued || (label > 0 && from + label === at))) return true;
  if (isWithinRib(tokens, at) || endsLabel(tokens, from, at) || endsRow(tokens, from, at)) return true;
  if (closesStar(tokens, from, at) || holdsWorked(tokens, from, at) || stopsShort(tokens, at)) return true;
  if (
    beginsWithRow(tokens, from, at) ||
    endsNextRow(tokens, at) ||
    endsSide(tokens, from, at) ||
    goesOnInGroups(tokens, from, at) ||
    endsHeldStitches(tokens, at) ||
    partsStitches(tokens, from, at) ||
    partsTurn(tokens, from, at)
  )
    return true;
  const rest = isWord(tokens[at + 1], 'k', 'p', 'work', 'patt', 'rib') && isWord(tokens[at + 2], 'to');
  const end = isWord(tokens[at + 3], 'the') ? at + 4 : at + 3;
  return (
    rest &&
    isWord(tokens[end], 'end') &&
    tokens.slice(from, at).some((token) => isWord(token, 'bind', 'cast', 'bo'))
  );
}

/** 'Next row. Patt to last 10 sts': the stop stands behind the label, wherever it begins. */
const endsNextRow = (tokens: readonly Token[], at: number): boolean =>
  isWord(tokens[at - 1], 'row') &&
  isWord(tokens[at - 2], 'next') &&
  tokens[at - 2]?.capital === true &&
  [tokens[at + 1]?.text, tokens[at + 1]?.word].some((word) => means(word, 'beginning of a row'));

/** 'Cast on 6 sts at end of next 4 rows. 4 sts at end of next 6 rows.': what is done is said before the first of them only. */
const goesOnInGroups = (tokens: readonly Token[], from: number, at: number): boolean =>
  isWord(tokens[at - 1], 'rows') &&
  tokens[at + 1]?.kind === 'number' &&
  isWord(tokens[at + 2], 'st', 'sts') &&
  isWord(tokens[at + 3], 'at', 'on') &&
  tokens
    .slice(at + 3, at + 10)
    .some((token, i, all) => isWord(token, 'rows') && isWord(all[i - 2], 'next', 'foll')) &&
  tokens
    .slice(from, at)
    .some((token, i, all) => isWord(token, 'cast', 'bind') && isWord(all[i + 1], 'on', 'off'));

/** '1st row: (RS). K2.': the stop stands behind the side of the row. */
const endsSide = (tokens: readonly Token[], from: number, at: number): boolean => {
  const next = isNext(tokens[from]) && isWord(tokens[from + 1], 'row');
  const label = next ? 2 : labelAt(tokens, from);
  const open = at - 3;
  return (
    label > 0 &&
    isWord(tokens[at - 1], ')', ']') &&
    isWord(tokens[at - 2], 'rs', 'ws') &&
    (from + label === open || (from + label === open - 1 && isWord(tokens[open - 1], ':')))
  );
};

/** '2nd and every foll alt row.': so many tokens from the 'and' on. */
function everyOtherAt(tokens: readonly Token[], at: number): number {
  if (!isWord(tokens[at], 'and') || !isWord(tokens[at + 1], 'every', 'all', 'each')) return 0;
  const more = isWord(tokens[at + 2], 'foll', 'other', '-') ? 3 : 2;
  const which = isWord(tokens[at + more], 'alt', 'other', 'even', 'odd', 'ws', 'rs') ? more + 1 : more;
  return isWord(tokens[at + which], 'row', 'rows') && which > 2 ? which + 1 : 0;
}

/** 'Row 1: (k1, p1) to end of row Rep row 1 seven times more': the row ends where the repeat has a capital. */
const repeatsBehindRow = (tokens: readonly Token[], from: number, at: number): boolean =>
  isWord(tokens[at], 'rep') &&
  tokens[at]?.capital === true &&
  (isWord(tokens[at - 1], 'row', 'end') ||
    (isWord(tokens[at - 1], 'sts') && tokens[at - 2]?.kind === 'number')) &&
  (labelAt(tokens, from) > 0 || (isNext(tokens[from]) && isWord(tokens[from + 1], 'row'))) &&
  !isWord(tokens[at + 1], 'from');

/** 'Purl, | then bind off all sts', 'K to end, | bind off': the row is whole, and what binds off is the next one. */
function bindsOffBehind(tokens: readonly Token[], at: number): boolean {
  if (!isWord(tokens[at], 'bind', 'cast', 'bo')) return false;
  let before = at - 1;
  while (isWord(tokens[before], ',', 'then', 'and', ';')) before -= 1;
  if (before === at - 1 || !isWord(tokens[before], 'k', 'p', 'across', 'end', 'row')) return false;
  let end = isWord(tokens[at], 'bo') ? at + 1 : at + 2;
  if (end === at + 2 && !isWord(tokens[at + 1], 'off')) return false;
  while (isWord(tokens[end], 'all', 'the', 'rem', 'sts', 'loosely', 'in', 'patt', 'k', 'p', 'kwise', 'pwise'))
    end += 1;
  return tokens[end] === undefined || isWord(tokens[end], '.');
}

/** 'work 3, bind off 2, work to end; | on next row, cast on 2': what closes a buttonhole is a row of its own. */
function castsOnNextRow(tokens: readonly Token[], at: number): boolean {
  if (!isWord(tokens[at - 1], ';', ',', 'then', 'and')) return false;
  let next = at;
  while (isWord(tokens[next], 'on', 'in', 'the')) next += 1;
  if (!isNext(tokens[next]) || !isWord(tokens[next + 1], 'row')) return false;
  const on = isWord(tokens[next + 2], ',', ':') ? next + 3 : next + 2;
  return (
    isWord(tokens[on], 'cast') &&
    isWord(tokens[on + 1], 'on') &&
    tokens.slice(on, on + 8).some((token) => isWord(token, 'over'))
  );
}

/** '1st row. K2, p2': so many tokens of a label with its number stand from here; 0 where there is none. */
function labelAt(tokens: readonly Token[], at: number): number {
  const [a, b, c] = [tokens[at], tokens[at + 1], tokens[at + 2]];
  if (a?.kind === 'number' && endsOrdinal(b) && isWord(c, 'row')) return 3;
  // '3rd and 4th rows'
  const second =
    a?.kind === 'number' &&
    endsOrdinal(b) &&
    isWord(c, 'and', '-', 'to') &&
    tokens[at + 3]?.kind === 'number';
  if (second && endsOrdinal(tokens[at + 4]) && isWord(tokens[at + 5], 'rows')) return 6;
  const other = a?.kind === 'number' && endsOrdinal(b) ? everyOtherAt(tokens, at + 2) : 0;
  if (other > 0) return 2 + other;
  return isWord(a, 'row') && b?.kind === 'number' ? 2 + everyOtherAt(tokens, at + 2) : 0;
}

/** '1st row. K2, p2': the stop stands behind the label. */
const endsLabel = (tokens: readonly Token[], from: number, at: number): boolean => {
  const label = labelAt(tokens, from);
  const next = tokens[at + 1];
  return (
    label > 0 &&
    from + label === at &&
    [next?.text, next?.word].some((word) => means(word, 'beginning of a row'))
  );
};

/** '3rd row. k5. purl to end': what is written small goes on to the row's end. */
const endsRow = (tokens: readonly Token[], from: number, at: number): boolean =>
  labelAt(tokens, from) > 0 &&
  !tokens[at + 1]?.capital &&
  isWord(tokens[at + 1], 'k', 'p') &&
  isWord(tokens[at + 2], 'to') &&
  isWord(tokens[at + 3], 'end');

/** A line that begins '2nd row. As 1st row' is a sentence of its own, though the line before it has no stop. */
const startsLineWithLabel = (tokens: readonly Token[], at: number): boolean => {
  const label = labelAt(tokens, at);
  return label > 0 && tokens[at]?.line !== tokens[at - 1]?.line && isWord(tokens[at + label], '.');
};

/** '1st row: *K2, p2. Repeat from * to end.': the row goes on. '*Work 4 rows. Repeat from * twice.' says instructions again. */
function closesStar(tokens: readonly Token[], from: number, at: number): boolean {
  if (!isWord(tokens[at + 1], 'rep') || !isWord(tokens[at + 2], 'from')) return false;
  const star = isWord(tokens[at + 3], 'the') ? at + 4 : at + 3;
  if (!isWord(tokens[star], '*') || isWord(tokens[star + 1], '*')) return false;
  let open = -1;
  for (let i = from; i < at; i += 1) {
    if (isWord(tokens[i], '*')) open = open < 0 && !isWord(tokens[i + 1], '*') ? i : -1;
    else if (isWord(tokens[i], 'rep')) open = -1;
  }
  return (
    open >= 0 &&
    means(tokens[open + 1]?.text, 'stitch after a star') &&
    !isWord(tokens[open + 3], 'row', 'rows')
  );
}

/** 'Knit to last 4 sts. K2tog, yo, k2.': a row that stops before its end goes on. */
function stopsShort(tokens: readonly Token[], at: number): boolean {
  const last = tokens[at - 2]?.kind === 'number' ? at - 3 : at - 2;
  if (
    !isWord(tokens[at - 1], 'st', 'sts') ||
    !isWord(tokens[last], 'last') ||
    !isWord(tokens[isWord(tokens[last - 1], 'the') ? last - 2 : last - 1], 'to')
  )
    return false;
  return (
    beginsStitch(tokens, at + 1) ||
    (isWord(tokens[at + 1], 'k', 'p', 'ssk', 'skp', 'ktog', 'sl') && !isWord(tokens[at + 3], 'row', 'rows'))
  );
}

/** 'K1.P1 rib', 'K.1. P.1. rib'. */
function isWithinRib(tokens: readonly Token[], at: number): boolean {
  const stitch = (i: number) => isWord(tokens[i], 'k', 'p') && tokens[i + 1]?.kind === 'number';
  if (!stitch(at - 2)) return false;
  if (isWord(tokens[at + 1], 'rib')) return true;
  return stitch(at + 1) && tokens.slice(at + 3, at + 5).some((token) => isWord(token, 'rib'));
}

/** 'Decrease Row (RS):': the words before 'Row' are its name. */
const namesRow = (tokens: readonly Token[], from: number, at: number): boolean =>
  at - from <= 3 &&
  isWord(tokens[at], 'row', 'rows') &&
  (tokens[at + 1]?.kind !== 'number' ||
    (at - from === 1 && means(tokens[from]?.word, 'row with a number of its own'))) &&
  tokens
    .slice(from, at)
    .every(({ kind, word }, i) => kind === 'word' || (i > 0 && word !== '' && isNext(tokens[from])));

/** 'Next 7 Rows:' */
const isNext = (token: Token | undefined): boolean => isWord(token, 'next', 'foll');

/** 'Row 3:', 'Next row:', '2nd row:' with its colon within a few words. */
function startsLabel(tokens: readonly Token[], at: number): boolean {
  const token = tokens[at] as Token;
  // quick way out: a label begins with a capital or a number
  if (!token.capital && token.kind !== 'number') return false;
  if (token.kind === 'word' && !means(token.word, 'beginning of a label')) return false;
  if (token.kind === 'number' && tokens[at + 1]?.kind !== 'word') return false;
  // '1st Row:' begins at its number
  if (token.kind === 'word' && endsOrdinal(tokens[at - 1]) && tokens[at - 2]?.kind === 'number') return false;
  const before = tokens[at - 1]?.text ?? '';
  // 'Row 2 AND EVERY EVEN ROW:'
  if (isWord(token, 'row', 'rows') && isWord(tokens[at - 1], 'even', 'odd', 'alt', 'other', 'foll'))
    return false;
  if (means(before, 'before a row that is only spoken of')) return false;
  const named = means(token.word, 'beginning of a label') && token.capital;
  const ordinal =
    token.kind === 'number' &&
    endsOrdinal(tokens[at + 1]) &&
    isWord(tokens[at + 2], 'row', 'rows', 'and', 'rnd');
  if (!named && !ordinal) return false;
  for (let i = at + 1; i < Math.min(at + 9, tokens.length); i += 1) {
    const text = tokens[i]?.text ?? '';
    if (text === ':') return true;
    if (text === '.' || text === ';' || text === '*') return false;
  }
  return false;
}
