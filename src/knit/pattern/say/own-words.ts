import type { Fault } from '../../fault.ts';
import {
  ahead,
  type Cursor,
  cursorOver,
  isWord,
  peek,
  peekNumber,
  sees,
  seesOne,
  seesPhrase,
  takePhrase,
  takes,
} from '../../row/read/cursor.ts';
import type { Token } from '../../row/read/lex.ts';
import { means } from '../../row/read/meanings.ts';
import type { Side } from '../../row/step.ts';
import type { Sentence } from '../text/sentences.ts';
import { castsOnSomewhere } from './front-door.ts';
import { readLabel } from './label.ts';
import { hidesOrder } from './orders-behind.ts';
import { ending } from './phrase/ending.ts';
import { readLength } from './phrase/measure.ts';
import { ROWS } from './phrase/row-numbers.ts';
import { statedAtEnd } from './phrase/stated-count.ts';
import type { Label, Title } from './statement.ts';
import { titleInWords } from './title.ts';

/** More rows than one sentence asks for. */
const MOST_OWN_ROWS = 400;

/** What was not understood, and what can be said of it all the same. */
export interface OwnWords {
  readonly is: 'own words';
  readonly words: string;
  readonly fault: Fault;
  readonly stated?: number;
  /** it speaks of knitting */
  readonly work: boolean;
  /** a word of it is one of knitting */
  readonly hints: boolean;
  /** it asks for knitting, whether stitches are on the needle or not: 'Bind off 7 sts each side 4 times' */
  readonly asks: boolean;
  /** it begins as an order that works something: 'Work a purl ridge', 'Cast them all off' */
  readonly orders: boolean;
  /** it bids something of the work in hand, or is the rest of a sentence that was cut: never passed over */
  readonly bids: boolean;
  /** it casts stitches on somewhere */
  readonly castsOn: boolean;
  /** it works a whole piece as another one: 'Work exactly as for right front' */
  readonly another: boolean;
  readonly short: boolean;
  /** it speaks of a rib */
  readonly rib?: boolean;
  /** it says in which fabric all of it is worked */
  readonly wholly?: true;
  /** rows that it says it is: 'Rows 2–4', 'work 3 rows'; 1 unless said */
  readonly rows: number;
  readonly label?: Label;
  /** it ends by a measure, so nobody knows how many rows it is */
  readonly open: boolean;
  /** 'ending with a WS row': the side of its last row */
  readonly end?: Side;
  /** from here on it is worked in rounds */
  readonly rounds?: boolean;
  /** it only says more of what stands before it, and makes no row */
  readonly beside?: boolean;
  /** she has said herself how many rows it is, and the count after them */
  readonly mended?: boolean;
  /** it may only say what the rows below it make: 'Work picot edge of brim' */
  readonly announces?: true;
  /** what it may call what follows */
  readonly title?: Title;
  readonly line: number;
  readonly from: number;
}

/** The sentence, or its rest from `first` on, in her own words. */
export function ownWords(
  text: string,
  tokens: readonly Token[],
  fault: Fault,
  sentence: Sentence,
  first: number,
  line: number,
): OwnWords {
  const stated = statedAtEnd({ tokens, at: sentence.from, end: sentence.to });
  const words = text
    .slice(tokens[first]?.offset ?? 0, tokens[sentence.to]?.offset ?? text.length)
    .replace(/\s+/g, ' ')
    .trim();
  const said = words === '' ? text.trim() : words;
  // 'For girls work buttonholes in right front border.' names nothing
  const title = isWord(tokens[sentence.from], 'for') ? undefined : titleInWords(said);
  const c = cursorOver(tokens, first, sentence.to);
  const label = ahead(c, () => readLabel(c));
  const has = (...some: string[]): boolean =>
    tokens.slice(sentence.from, sentence.to).some((token) => isWord(token, ...some));
  return {
    is: 'own words',
    words: said,
    fault,
    ...soundsLikeWork(tokens, sentence.from, sentence.to),
    // what stands behind the name of a row is the row, in whatever words
    ...(label !== undefined && label.name === undefined ? { work: true } : {}),
    castsOn: castsOnSomewhere(cursorOver(tokens, sentence.from, sentence.to)),
    another:
      likeAnother(cursorOver(tokens, sentence.from, sentence.to)) ||
      likeAnother(cursorOver(tokens, first, sentence.to)),
    asks: asksForWork(cursorOver(tokens, sentence.from, sentence.to)),
    orders: ordersWork(cursorOver(tokens, first, sentence.to)),
    bids:
      followsElse(cursorOver(tokens, sentence.from, sentence.to)) ||
      bidsWork(cursorOver(tokens, sentence.from, sentence.to)) ||
      (first > sentence.from && bidsWork(cursorOver(tokens, first, sentence.to))) ||
      hidesOrder(tokens, sentence.from, sentence.to),
    short:
      sentence.to - sentence.from <= 9 &&
      (tokens[sentence.from]?.capital ?? false) &&
      !inOnePiece(cursorOver(tokens, sentence.from)),
    rows: Math.min(MOST_OWN_ROWS, label ? labelled(label) : rowsSaid(c)),
    open: isOpen(c),
    ...endsOn(c),
    ...(has('rib') ? { rib: true } : {}),
    ...(first === sentence.from && announces(cursorOver(tokens, first, sentence.to))
      ? { announces: true }
      : {}),
    ...((has('entire', 'whole', 'throughout') || (has('is', 'are') && has('worked', 'knitted'))) &&
    has('garter', 'gst', 'moss', 'rib')
      ? { wholly: true }
      : {}),
    line,
    from: tokens[first]?.line ?? 1,
    ...(label === undefined ? {} : { label }),
    ...(title === undefined ? {} : { title }),
    ...(stated === undefined ? {} : { stated: stated.stitches }),
  };
}

/** 'Work bonnet back section': a part by its name, no number and no other order. */
const announces = (c: Cursor): boolean =>
  ahead(c, () => {
    if (!takes(c, 'work', 'make', 'begin', 'start', 'shape')) return false;
    const said = c.tokens.slice(c.at, c.end).filter((token) => !isWord(token, ':', '.'));
    return (
      said.length < 7 &&
      said.every((token) => token.kind === 'word' && !isWord(token, 'buttonhole', 'buttonholes', 'hole')) &&
      said.some((token) => means(token.text, 'part that rows make'))
    );
  });

const labelled = (label: Label): number => label.next ?? Math.max(1, label.rows.length);

/** 'work 3 rows', 'for a further 14 rows', 'next 2 rows'; 'last 2 rows' and 'every 4 rows' are no number of rows to work. */
function rowsSaid(c: Cursor): number {
  for (let i = c.at + 1; i < c.end; i += 1) {
    const n = c.tokens[i] as Token;
    // 'work rows 1-9 of the chart'
    const last = c.tokens[i + 2];
    if (
      isWord(c.tokens[i - 1], 'rows') &&
      isWord(c.tokens[i - 2], 'work', 'k', 'p') &&
      isWord(c.tokens[i + 1], '-', 'to') &&
      n.kind === 'number' &&
      last?.kind === 'number' &&
      last.value > n.value
    )
      return last.value - n.value + 1;
    if (n.kind !== 'number' || !Number.isSafeInteger(n.value) || n.value < 1) continue;
    if (!isWord(c.tokens[i + 1], ...ROWS.split('|'))) continue;
    if (means(c.tokens[i - 1]?.word, 'before a number of rows to work')) return n.value;
  }
  return 1;
}

function endsOn(c: Cursor): Pick<OwnWords, 'end'> {
  for (let at = c.at; at < c.end; at += 1) {
    const { end } = isWord(c.tokens[at], 'ending', 'end', 'finishing') ? ending({ ...c, at }) : {};
    if (end !== undefined) return { end };
  }
  return {};
}

/** 'until the band is long enough', 'for 5 cm': a length, or an end that is not a row's own. */
function isOpen(c: Cursor): boolean {
  for (let i = c.at; i < c.end; i += 1) {
    const word = c.tokens[i]?.word ?? '';
    if (word === 'until' || word === 'for') {
      const inner: Cursor = { ...c, at: i + 1 };
      if (word === 'until' ? !untilInRow(inner) : readLength(inner) !== undefined) return true;
    }
  }
  return false;
}

/** 'k until 3 sts remain', 'until last 3 sts' end within the row. */
function untilInRow(c: Cursor): boolean {
  while (takes(c, 'the', 'there', 'you', 'are', 'have', 'reach', 'only', 'last', 'next', 'within')) {
    // on to what is reached
  }
  return sees(c, 'end', 'marker', 'm', 'st', 'sts') || takeStitches(c);
}

const takeStitches = (c: Cursor): boolean =>
  ahead(c, () => {
    if (peekNumber(c) === undefined) return false;
    c.at += 1;
    return takePhrase(c, 'st|sts') || c.at >= c.end;
  });

/** 'Work exactly as for right front': a whole piece, though no stitch and no number is named. */
const likeAnother = (c: Cursor): boolean =>
  seesPhrase(
    c,
    'work|make|k|knit exactly|just|the? same|like|as as|for|given|back|front|right|left|first|other',
  ) ||
  worksOtherSide(c) ||
  followsElse(c) ||
  (seesPhrase(c, 'work|make|k|complete') &&
    c.tokens.slice(c.at, c.end).some((token) => isWord(token, 'match', 'correspond'))) ||
  seesPhrase(c, 'work|make|k the? back|front|sleeve|it? in? the? same way|manner as');

/** 'Next: follow directions for first half', 'repeat above to make second half'. */
function followsElse(c: Cursor): boolean {
  const at = isWord(c.tokens[c.at], 'next') && isWord(c.tokens[c.at + 1], ':') ? c.at + 2 : c.at;
  return (
    seesPhrase(
      { ...c, at },
      'follow the? directions|instructions|direction|instruction|pattern|patt for|of|as',
    ) || seesPhrase({ ...c, at }, 'rep the? above to|for make?')
  );
}

/** 'Work the same on the other side of the neck': a whole side. */
const worksOtherSide = (c: Cursor): boolean =>
  seesPhrase(c, 'work|make|k|do the? same') &&
  c.tokens
    .slice(c.at, c.end)
    .some((token, i, all) => isWord(token, 'other') && isWord(all[i + 1], 'side', 'shoulder', 'edge'));

/** 'Work in one piece to the armholes.' */
const inOnePiece = (c: Cursor): boolean => seesPhrase(c, 'work|worked|k in 1 piece');

/** Whether a sentence begins as an order to knit and says how many, or casts stitches on. */
function asksForWork(c: Cursor): boolean {
  if (castsOnSomewhere(c)) return true;
  if (inOnePiece(c)) return false;
  while (takes(c, 'then', 'now', 'and', ',', '*', '-')) {
    // what leads up to it
  }
  const label = ahead(c, () => readLabel(c) !== undefined);
  if (!label && !seesOne(c, 'beginning of an order')) return false;
  return (
    label || c.tokens.slice(c.at, c.end).some(({ kind }) => kind === 'number') || peek(c, 1) === undefined
  );
}

/** A verb and what it works on; 'Knit band', 'Pick up edge' and 'Work in the round' may be titles, or say how it is made. */
function ordersWork(c: Cursor): boolean {
  while (takes(c, 'then', 'now', 'and', ',', '*', '-')) {
    // what leads up to it
  }
  if (!seesOne(c, 'beginning of an order') && !sees(c, 'add', 'use', 'change', 'turn')) return false;
  return isWord(c.tokens[c.at + 1], ...WORKED_ON) || peekNumber(c, 1) !== undefined;
}

const WORKED_ON = 'a them all each every even across to until up first last next short rows these off'.split(
  ' ',
);

/** 'Place on a holder', 'less than back to underarm', '2 times': an order, or what hangs on words before it. */
function bidsWork(c: Cursor): boolean {
  const hangs = isWord(c.tokens[c.at - 1], '.') && !peek(c)?.capital;
  while (takes(c, 'then', 'now', 'and', ',', '*', '-')) {
    // what leads up to it
  }
  if (seesPhrase(c, 'the same for|on|over|with')) return true;
  const first = peek(c);
  const more = c.end - c.at > 1;
  return more && (seesOne(c, 'bids') || (hangs && (first?.kind === 'number' || first?.kind === 'word')));
}

/** Whether a sentence speaks of knitting, or only talks. */
function soundsLikeWork(
  tokens: readonly Token[],
  from: number,
  to: number,
): { readonly work: boolean; readonly hints: boolean } {
  let words = 0;
  let numbers = 0;
  for (let i = from; i < to; i += 1) {
    const token = tokens[i] as Token;
    if (token.kind === 'number') numbers += 1;
    else if (isWord(token, 'bind', 'cast') && isWord(tokens[i + 1], 'off'))
      return { work: true, hints: true };
    else if (means(token.text, 'sounds like work')) words += 1;
  }
  return { work: words >= 2 || (words >= 1 && numbers >= 1), hints: words >= 1 };
}
