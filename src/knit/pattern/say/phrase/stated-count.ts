import {
  attempt,
  type Cursor,
  isOneOf,
  isWord,
  peek,
  peekNumber,
  peekWord,
  seesOne,
  seesPhrase,
  takeAnyPhrase,
  takeNumber,
  takePhrase,
  takes,
  takeTo,
} from '../../../row/read/cursor.ts';
import { STS } from '../../../row/read/goal.ts';
import type { Token } from '../../../row/read/lex.ts';
import { means } from '../../../row/read/meanings.ts';

const CLOSING: Readonly<Record<string, string>> = { ')': '(', ']': '[', '}': '{' };

/**
 * A count stated at the end of a sentence: '… k to end (24 sts)', '… – 24 sts', '…, 24 sts remain'.
 * @returns the count and where the row ends before it
 */
export function statedAtEnd(c: Cursor): { stitches: number; end: number } | undefined {
  let end = c.end;
  while (end > c.at && isOneOf(c.tokens[end - 1]?.text ?? '', '. , ;')) end -= 1;
  const open = CLOSING[c.tokens[end - 1]?.text ?? ''];
  return open === undefined ? unbracketed(c, end) : bracketed(c, end, open);
}

function bracketed(c: Cursor, end: number, open: string): { stitches: number; end: number } | undefined {
  let at = end - 2;
  while (at > c.at && c.tokens[at]?.text !== open && end - at < 16) at -= 1;
  if (c.tokens[at]?.text !== open || at <= c.at) return undefined;
  const inner: Cursor = { tokens: c.tokens, at: at + 1, end: end - 1 };
  const stitches = insideBrackets(inner);
  return stitches === undefined ? undefined : { stitches, end: at };
}

/** '24 sts', 'there are now 24 sts', '24', '24 sts, 12 each side', 'increased by 1 st, 24 sts total'. */
function insideBrackets(c: Cursor): number | undefined {
  attempt(c, () => {
    if (!seesOne(c, 'changed') && !takes(c, 'inc', 'dec')) return false;
    if (seesOne(c, 'changed')) takeTo(c, c.at + 1);
    takes(c, 'by');
    return takeNumber(c) !== undefined && takePhrase(c, STS) && takes(c, ',');
  });
  while (seesOne(c, 'before a stated count') && peek(c)?.kind === 'word') c.at += 1;
  takes(c, '=', '-');
  const n = takeNumber(c);
  if (n === undefined || !Number.isSafeInteger(n)) return undefined;
  if (c.at >= c.end) return n;
  // '(1st row = RS)'
  if (peek(c)?.glued && isWord(peek(c, 1), 'row', 'rows')) return undefined;
  if (!takePhrase(c, STS)) return undefined;
  return takes(c, 'dec', 'decreased', 'inc', 'increased', 'bound', 'cast') || peekWord(c) === 'in'
    ? undefined
    : n;
}

function unbracketed(c: Cursor, end: number): { stitches: number; end: number } | undefined {
  let at = end - 1;
  while (at > c.at && means(c.tokens[at]?.text, 'after a stated count') && end - at < 9) at -= 1;
  if (!isWord(c.tokens[at], 'st', 'sts')) return undefined;
  const n = c.tokens[at - 1];
  if (n?.kind !== 'number' || !Number.isSafeInteger(n.value)) return undefined;
  let lead = at - 2;
  let said = 0;
  while (lead > c.at && means(c.tokens[lead]?.text, 'before a stated count') && said < 7) {
    lead -= 1;
    said += 1;
  }
  if (said === 0 && isWord(c.tokens[lead], 'to')) return undefined;
  const parting = isOneOf(c.tokens[lead]?.text ?? '', '- = : ; . ,');
  const strong =
    said > 0 && isWord(c.tokens[lead + 1], 'so', 'now', 'leave', 'making', 'have', 'total', 'giving', '=');
  // 'k to end  59 sts', 'inc in first and last st  62 sts'
  const ended = said === 0 && isWord(c.tokens[lead], 'end', 'st') && isWord(c.tokens[lead - 1], 'to', 'last');
  // 'repeat last 2 rows          15 sts': in a column of its own
  const worked =
    said === 0 &&
    c.tokens[lead]?.kind === 'number' &&
    isWord(c.tokens[lead - 1], 'k', 'p', 'last', 'inc', 'dec');
  const closes =
    worked || (said === 0 && isWord(c.tokens[lead], 'row', 'rows', 'time', 'times', 'twice', 'end'));
  const gap = closes && n.offset - widthTo(c.tokens[lead]) > 2;
  if (lead <= c.at || !(parting || strong || ended || gap)) return undefined;
  return { stitches: n.value, end: parting ? lead : lead + 1 };
}

const widthTo = (token: Token | undefined): number =>
  token === undefined ? 0 : token.offset + token.text.length;

const WHEN_SHAPED =
  'when|after all? the? inc|incs|increases|dec|decs|decreases|shaping are|is|have|has been? completed|complete|worked|made';

/** A stated count at the cursor: '(82 sts)', '– 82 sts', 'there are 82 sts', '82 sts remain'. */
export const takeStated = (c: Cursor): number | undefined => attempt(c, () => statedHere(c));

function statedHere(c: Cursor): number | undefined {
  takes(c, ',', '.', ';');
  if (isOneOf(peekWord(c), '( [ {')) {
    const close = peekWord(c) === '(' ? ')' : peekWord(c) === '[' ? ']' : '}';
    let end = c.at + 1;
    while (end < c.end && c.tokens[end]?.text !== close && end - c.at < 18) end += 1;
    if (c.tokens[end]?.text !== close) return undefined;
    const n = insideBrackets({ tokens: c.tokens, at: c.at + 1, end });
    if (n === undefined) return undefined;
    takeTo(c, end + 1);
    return n;
  }
  const dash = takes(c, '-', '=', ':');
  let lead = 0;
  while (seesOne(c, 'before a stated count') && peek(c)?.kind === 'word' && lead < 8) {
    c.at += 1;
    lead += 1;
  }
  if (lead > 0) takePhrase(c, 'on the? needle');
  const n = peekNumber(c);
  if (n === undefined || !Number.isSafeInteger(n)) return undefined;
  c.at += 1;
  if (!takePhrase(c, STS)) return undefined;
  // '29 sts. on needle'
  attempt(c, () => takes(c, '.') && seesPhrase(c, 'on the? needle'));
  const tail = takeAnyPhrase(
    c,
    'remain|rem|left',
    'now',
    'on the? needle',
    'in all',
    'total',
    'altogether',
    'are left',
    'made',
  );
  takePhrase(c, WHEN_SHAPED);
  takeAnyPhrase(c, 'on each? needle', ',? on|at? each side', 'in all', 'now', 'at the? end of this|the? row');
  const atEnd = c.at >= c.end || isOneOf(peekWord(c), '. , ; )');
  return (dash || lead > 0 || tail || c.at >= c.end) && atEnd ? n : undefined;
}
