import {
  attempt,
  type Cursor,
  endsOrdinal,
  isWord,
  sees,
  takePhrase,
  takes,
  takeTo,
  takeWhole,
} from '../../row/read/cursor.ts';
import type { Token } from '../../row/read/lex.ts';
import { means } from '../../row/read/meanings.ts';
import { HEADINGS, PIECES, SHAPED, SIDES } from '../../row/read/vocabulary.ts';
import type { Place } from './how-far.ts';
import { readFabric } from './phrase/fabric.ts';
import { readSide } from './phrase/side.ts';
import type { Statement } from './statement.ts';
import { halfOf, titleOf } from './title.ts';
import { namesWhatIsCastOn, takeUnknownName } from './unknown-name.ts';

/** A heading at the start of a sentence, up to its colon, or the whole sentence when it is nothing else. */
export const readHeading = (c: Cursor, aloneOnLine: boolean): Statement | undefined =>
  attempt(c, () => {
    // 'To finish, knit 4 rows' is an order
    if (isWord(c.tokens[c.at + 2], ',') && isWord(c.tokens[c.at + 1], 'finish')) return undefined;
    const section = readSection(c);
    if (section) return section;
    const start = c.at;
    const end = headingEnd(c, aloneOnLine);
    const sided = readSidedHeading(c);
    if (sided) return sided;
    if (end === undefined) return readInlineHeading(c) ?? readNameAlone(c);
    const words = c.tokens.slice(start, end);
    const statement = headingOf(words, c.tokens[end]?.text === ':', aloneOnLine);
    if (statement === undefined) return readInlineHeading(c) ?? readUnknownName(c, end);
    takeTo(c, end);
    takes(c, ':', ';');
    return statement;
  });

/** 'Hem, in k2, p2 rib:': a name, and what its rows are worked in. */
const readSection = (c: Cursor): Statement | undefined =>
  attempt(c, () => {
    const comma = c.tokens.findIndex(({ text }, i) => i > c.at && text === ',');
    const name = c.tokens.slice(c.at, Math.max(c.at, comma));
    if (name.length === 0 || name.length > 6 || name.some(({ kind }) => kind === 'mark')) return undefined;
    takeTo(c, comma);
    if (!takes(c, ',') || !sees(c, 'in')) return undefined;
    const section = readFabric(c);
    if (!section || (section.is !== 'named' && section.is !== 'rib')) return undefined;
    // how many rows it is: they are spelled out below
    attempt(c, () => takes(c, ',') && takeWhole(c) !== undefined && takePhrase(c, 'row|rows'));
    if (!takes(c, ':') || c.at < c.end) return undefined;
    return { ...headingIn(name.map(({ text }) => text).join(' ')), section };
  });

/** 'LEFT FRONT With 4 mm needles …', 'Shape Neck Bind off …', 'BACK—Using …', 'Lace pattern—Row 1': words with capitals before an order with one. */
const readInlineHeading = (c: Cursor): Statement | undefined =>
  attempt(c, () => {
    let end = c.at;
    while (end < c.end && end - c.at < 6 && goesOnAsName(c, end)) end += 1;
    for (; end > c.at; end -= 1) {
      const parted = afterDash(c, end);
      const next = c.tokens[parted];
      const order =
        next?.capital === true &&
        parted < c.end &&
        (parted > end || means(next.text, 'beginning of a sentence'));
      const heading = order ? headingOf(c.tokens.slice(c.at, end), true, true) : undefined;
      if (heading?.is === 'heading' && (heading.piece !== undefined || heading.places.length > 0)) {
        takeTo(c, parted);
        return heading;
      }
      const rows = isWord(c.tokens[end - 1], 'patt', 'st') && isWord(next, 'row') && parted > end;
      if (order && (rows || namesWhatIsCastOn(c, end, parted))) {
        const words = c.tokens.slice(c.at, end).map(({ text }) => text);
        takeTo(c, parted);
        return headingIn(words.join(' '));
      }
    }
  });

/** 'Left front Using …', 'Shape neck Next row …': behind a first capital, what pieces and places are called. */
function goesOnAsName(c: Cursor, at: number): boolean {
  const token = c.tokens[at];
  if (token?.capital) return true;
  const known = token !== undefined && (PIECES.has(token.text) || SHAPED.has(token.text));
  return known && at > c.at && c.tokens[at + 1]?.capital === true;
}

/** 'Left front. Work as for right front': a sentence that is nothing but the name of a piece. */
const readNameAlone = (c: Cursor): Statement | undefined =>
  attempt(c, () => {
    const words = c.tokens.slice(c.at, c.end).filter(({ text }) => text !== '.');
    // '(make 2)', '(right one first)'
    const open = words.at(-1)?.text === ')' ? words.findIndex(({ text }) => text === '(') : -1;
    const name = open > 0 ? words.slice(0, open) : words;
    const plain = name.length < 4 && name[0]?.capital && name.every(({ kind }) => kind === 'word');
    const heading = plain ? (headingOf(words, true, true) ?? headingOf(name, true, true)) : undefined;
    if (heading?.is !== 'heading' || heading.piece === undefined) return undefined;
    takeTo(c, c.end);
    return heading;
  });

function readUnknownName(c: Cursor, end: number): Statement | undefined {
  const unknown = takeUnknownName(c, end);
  if (unknown === undefined) return undefined;
  const { name, like } = unknown;
  return like ? { ...headingIn(name), piece: { name, makes: 1 } } : headingIn(name);
}

/** 'Shape armholes (RS) – bind off 5 sts …': a place that is shaped, before the side of its first row. */
const readSidedHeading = (c: Cursor): Statement | undefined =>
  attempt(c, () => {
    let end = c.at;
    while (end < c.end && end - c.at < 6 && c.tokens[end]?.kind === 'word') end += 1;
    const inner = { ...c, at: end };
    if (end === c.at || !takes(inner, '(') || readSide(inner) === undefined || !takes(inner, ')'))
      return undefined;
    if (inner.at >= c.end) return undefined;
    const heading = headingOf(c.tokens.slice(c.at, end), true, true);
    if (heading?.is !== 'heading' || heading.piece !== undefined || heading.places.length === 0)
      return undefined;
    takeTo(c, end);
    return heading;
  });

function afterDash(c: Cursor, at: number): number {
  let i = at;
  while (i < c.end && means(c.tokens[i]?.text, 'dash behind a heading')) i += 1;
  return i;
}

/** Where the heading's words end: before a colon, or at the end of a short line of its own. */
function headingEnd(c: Cursor, aloneOnLine: boolean): number | undefined {
  let at = c.at;
  while (at < c.end && at - c.at < 12) {
    at = afterMakes(c, at);
    if (at >= c.end) break;
    const text = c.tokens[at]?.text ?? '';
    if (text === ':') return at > c.at ? at : undefined;
    if (text === ';') return isWord(c.tokens[at - 1], 'thus') && at === c.end - 1 ? at : undefined;
    at += 1;
  }
  const capitals = c.tokens.slice(c.at, c.end).every(({ capital }) => capital);
  // 'Shape neck.' among other sentences
  const shapes = isWord(c.tokens[c.at], 'shape') && c.tokens[c.at]?.capital && c.end - c.at < 5;
  return at === c.end && (aloneOnLine || capitals || shapes) ? at : undefined;
}

/** Behind '(make 2, the second as a mirror image: first the left front)': whatever else its brackets say of the makes. */
function afterMakes(c: Cursor, at: number): number {
  if (!sayHowMany(c.tokens.slice(at, at + 3))) return at;
  const close = c.tokens.findIndex((token, i) => i > at && token.text === ')');
  return close > 0 && close < c.end ? close + 1 : at;
}

const sayHowMany = ([open, make, n]: readonly Token[]): boolean =>
  open?.text === '(' && means(make?.text, 'how many in a heading') && n?.kind === 'number';

/** 'Begin with the sleeves', 'Knit the upper back', 'Instructions for back', 'Divide the work for the neck': so many tokens before the name. */
function leadIn(tokens: readonly Token[]): number {
  if (isWord(tokens[0], 'instruction', 'instructions')) return isWord(tokens[1], 'for') ? 2 : 0;
  if (isWord(tokens[0], 'divide')) {
    const what = isWord(tokens[1], 'the') ? 2 : 1;
    return isWord(tokens[what], 'work', 'sts') ? what + 1 : 0;
  }
  if (!isWord(tokens[0], 'begin', 'beg', 'start', 'work', 'k', 'make')) return 0;
  const the = isWord(tokens[1], 'with') ? 2 : 1;
  return isWord(tokens[the], 'the') ? the + 1 : 0;
}

export function headingOf(
  all: readonly Token[],
  colon: boolean,
  aloneOnLine: boolean,
): Statement | undefined {
  const tokens = all.slice(leadIn(all));
  const inside = withoutMakes(tokens);
  const spoken = inside.words.map((token) => token.text);
  // 'Divide for neck as follows:'
  const end = / as foll(ows)?$/.test(spoken.join(' ')) ? -2 : spoken.at(-1) === 'thus' ? -1 : undefined;
  const names = inside.words
    .slice(0, end)
    .filter((token) => token.kind === 'word')
    .map((token) => token.text);
  const text = spoken.slice(0, end).join(' ');
  if (
    names.length === 0 ||
    names.length > 6 ||
    inside.words.some((token) => token.kind === 'number' && !isOrdinal(inside.words, token))
  )
    return undefined;
  const piece = pieceOf(names);
  if (piece) {
    const half = halfOf(piece);
    const makes = inside.makes ?? makesOf(names);
    const mirrored = inside.mirrored ? { mirrored: true } : {};
    return {
      ...headingIn(text),
      piece: { name: piece, makes, ...mirrored, ...(half === undefined ? {} : { half }) },
    };
  }
  if (isShaping(names, colon || aloneOnLine)) return headingIn(text);
  if (HEADINGS.has(names[0] as string) && (colon || aloneOnLine) && names.length <= 4) return headingIn(text);
  return undefined;
}

/** Headings whose lines make no rows: 'Finishing', 'To make up'. */
const isTalk = (words: string): boolean => {
  const [first, second] = words.split(' ');
  return (
    means(first, 'heading without rows') || (first === 'to' && (second === 'make' || second === 'finish'))
  );
};

/** The places that a heading names, by what it has within. */
const PLACES: readonly (readonly [Place, ...(readonly string[])])[] = [
  ['armhole', 'armhole', 'underarm'],
  ['raglan', 'raglan'],
  ['shoulder', 'shoulder'],
  ['neck', 'neck'],
  ['cap', 'cap', 'top'],
  ['waist', 'waist'],
];

const namesPlace = (words: string, place: Place, within: readonly string[]): boolean =>
  within.some((part) => words.includes(part)) || (place === 'neck' && words.split(' ').includes('v'));

const headingIn = (words: string): Extract<Statement, { is: 'heading' }> => ({
  is: 'heading',
  title: titleOf(words),
  sideOnly: means(words.split(' ').at(-1), 'half of a piece'),
  talk: isTalk(words),
  places: PLACES.flatMap(([place, ...within]) => (namesPlace(words, place, within) ? [place] : [])),
});

const isOrdinal = (tokens: readonly Token[], token: Token): boolean =>
  endsOrdinal(tokens[tokens.indexOf(token) + 1]);

/** Takes '(make 2)', '(both alike)', '– make two' off a heading. */
function withoutMakes(tokens: readonly Token[]): {
  words: readonly Token[];
  makes?: number;
  mirrored?: boolean;
} {
  const open = tokens.findIndex((token) => /^[([\-,]$/.test(token.text));
  const make = tokens.findIndex((token) => means(token.text, 'how many in a heading'));
  const from = open > 0 ? open : make > 0 ? make : -1;
  if (from <= 0) {
    const last = tokens.at(-1);
    return last?.kind === 'number' && tokens.length === 2
      ? { words: tokens.slice(0, 1), makes: last.value }
      : { words: tokens };
  }
  const tail = tokens.slice(from);
  const n = tail.find((token) => token.kind === 'number' && Number.isSafeInteger(token.value));
  const both = tail.some((token) => means(token.text, 'makes two'));
  const single = tail.some((token) => means(token.text, 'says how many'));
  if (!single && !(n && tail.length <= 3)) return { words: tokens };
  // 'FRONT Work as for Back until …' is more than how many
  const long = tail.length > 8 && !(sayHowMany(tail) && tail.at(-1)?.text === ')');
  if (long || (open <= 0 && n === undefined && !both)) return { words: tokens };
  const makes = n?.value ?? (both ? 2 : undefined);
  const mirrored = tail.some((token) => means(token.text, 'mirror image in a heading'));
  return {
    words: tokens.slice(0, from),
    ...(mirrored ? { mirrored } : {}),
    ...(makes === undefined ? {} : { makes: Math.min(Math.max(makes, 1), 20) }),
  };
}

function pieceOf(names: readonly string[]): string | undefined {
  if (names.length > 4) return undefined;
  const known = names.every((name) => PIECES.has(name) || SIDES.has(name));
  const last = names.at(-1) as string;
  if (!known || !(PIECES.has(last) || names.some((name) => PIECES.has(name)))) return undefined;
  if (names.includes('neck') || names.includes('shoulder'))
    return names.some((name) => means(name, 'band of a neck')) ? names.join(' ') : undefined;
  return names.filter((name) => name !== 'the').join(' ');
}

const makesOf = (names: readonly string[]): number => {
  const last = names.at(-1) as string;
  return last.endsWith('s') &&
    !names.includes('or') &&
    !means(names[0], 'one of two in a heading') &&
    means(last, 'pieces made twice')
    ? 2
    : 1;
};

function isShaping(names: readonly string[], alone: boolean): boolean {
  const rest = names.filter((name) => !means(name, 'beside a shaping in a heading'));
  const said = rest.length < names.length;
  // 'Begin st st'
  if (rest.length === 0 && names.includes('st')) return false;
  return (alone || said) && rest.length <= 4 && rest.every((name) => SHAPED.has(name)) && (said || alone);
}
