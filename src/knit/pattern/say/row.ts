import type { Fault, Result } from '../../fault.ts';
import { namesColours } from '../../row/read/colour.ts';
import {
  attempt,
  type Cursor,
  cursorOver,
  endsOrdinal,
  isOneOf,
  isWord,
  peek,
  peekNumber,
  peekWord,
  seesPhrase,
  takeAll,
  takeAnyPhrase,
  takeNumber,
  takePhrase,
  takes,
} from '../../row/read/cursor.ts';
import { readTimes, STS } from '../../row/read/goal.ts';
import type { Token } from '../../row/read/lex.ts';
import type { Item } from '../../row/read/notation.ts';
import { readRow } from '../../row/read/row.ts';
import { readEven } from './even.ts';
import { readGroups } from './groups.ts';
import { withoutChangeNote } from './phrase/change-note.ts';
import { ROWS } from './phrase/row-numbers.ts';
import { statedAtEnd } from './phrase/stated-count.ts';
import { readShape } from './shape.ts';
import { shapingNamed } from './shaping-named.ts';
import type { Add, Label, Statement } from './statement.ts';

/** A row without a label takes the rest of the sentence. */
export function readBareRow(c: Cursor, at: number, add: Add): Fault | undefined {
  const whole = cursorOver(c.tokens, c.at, withoutChangeNote(c));
  const stated = statedAtEnd(whole);
  const row = cursorOver(c.tokens, c.at, stated?.end ?? whole.end);
  const read = readRow(row);
  if (!read.ok) return read.faults[0];
  const told = keepsWords(c, at, row.end, read.value) ? ({ told: 'within' } as const) : {};
  takeAll(c);
  add({ is: 'row', items: read.value, ...told }, at, stated?.stitches);
  return undefined;
}

/** A row that names its yarns, or a panel that is told elsewhere, is shown with its words. */
const keepsWords = (c: Cursor, at: number, end: number, items: readonly Item[]): boolean =>
  namesColours(c.tokens, at, end) || items.some(isPanel);

const isPanel = (item: Item): boolean => item.is === 'stitches' && item.panel === true;

/** What stands after a label: a row, or 'as row 2', 'rep rows 1–4' (rows counted from the label's own). */
export function readLabelled(
  c: Cursor,
  label: Label,
): Result<Statement> | { readonly ok: true; readonly value: Statement } {
  takeEdgeOfGroup(c);
  const like = readLike(c);
  if (like !== undefined) return { ok: true, value: { is: 'row', label, items: [], ...like } };
  const row = readRow(c);
  if (!row.ok) return row;
  return { ok: true, value: { is: 'row', label, items: row.value } };
}

/** 'Row 1: at arm edge bind off 8 sts, p to end': where the row begins. */
const takeEdgeOfGroup = (c: Cursor): boolean =>
  attempt(
    c,
    () =>
      takeAnyPhrase(c, 'at the? arm|armhole|neck|front|side|shoulder edge ,?') &&
      seesPhrase(c, 'bind|cast off') &&
      seesPhrase({ ...c, at: c.at + 3 }, 'sts|st ,? k|p|work|patt'),
  );

const readLike = (c: Cursor): { like: number; likeTo?: number } | undefined =>
  attempt(c, () => {
    takes(c, 'work', 'the');
    if (takes(c, 'as', 'same', 'like', 'rep', 'work')) {
      takes(c, 'as', 'for');
      takes(c, 'the');
      takePhrase(c, ROWS);
      const n = takeNumber(c) ?? takeOrdinalWord(c);
      if (endsOrdinal(peek(c))) c.at += 1;
      takePhrase(c, ROWS);
      if (n !== undefined && !seesPhrase(c, 'st|sts|from|*')) {
        const to = readLikeTo(c);
        return { like: n, ...(to !== undefined && to > n ? { likeTo: to } : {}) };
      }
    }
  });

/** '… 1-2', '… 2nd to 4th rows': the last of the rows that are worked again, one after the other. */
const readLikeTo = (c: Cursor): number | undefined =>
  attempt(c, () => {
    if (!takes(c, '-', 'to', 'through', 'and')) return undefined;
    takePhrase(c, ROWS);
    return takeNumber(c);
  });

/** 'as first row'. */
function takeOrdinalWord(c: Cursor): number | undefined {
  const at = ['first', 'second', 'third', 'fourth'].indexOf(peekWord(c));
  if (at < 0 || !seesPhrase({ ...c, at: c.at + 1 }, ROWS)) return undefined;
  c.at += 1;
  return at + 1;
}

export function readLabelledRow(c: Cursor, label: Label, at: number, add: Add): Fault | undefined {
  const whole = cursorOver(c.tokens, c.at, withoutChangeNote(c));
  // 'Next row: shape neck.' names what comes; what that row is stands behind it
  const named = label.rows.length > 0 ? undefined : shapingNamed(c.tokens.slice(c.at, whole.end));
  if (named) {
    takeAll(c);
    add(named, at);
    return undefined;
  }
  const stated = statedAtEnd(whole);
  const row = cursorOver(c.tokens, c.at, stated?.end ?? whole.end);
  const start = row.at;
  const spread = readWholeRow(row);
  if (spread) {
    takeAll(c);
    add({ is: 'row', label, items: [spread] }, at, stated?.stitches);
    return undefined;
  }
  // 'Next row: dec 1 st at each end', 'Next row (WS): work in pattern, inc 6 sts evenly'
  const inner = cursorOver(c.tokens, row.at, stated?.end ?? whole.end);
  const items = readShapedRow(inner);
  if (items) {
    takeAll(c);
    add({ is: 'row', label, items }, at, stated?.stitches);
    return undefined;
  }
  // 'Next 2 rows: bind off 6 sts at beg of each row' would be a row that ends there
  const each =
    label.next === undefined ? undefined : readWorkedRows(cursorOver(c.tokens, start, row.end), label);
  if (each?.is === 'groups') {
    takeAll(c);
    add(each, at, stated?.stitches);
    return undefined;
  }
  // 'Rows 5-8: work in st st, ending with a WS row' would go on as before
  const fabric = readFabricRows(cursorOver(c.tokens, start, stated?.end ?? whole.end), label);
  if (fabric) {
    takeAll(c);
    add(fabric, at, stated?.stitches);
    return undefined;
  }
  const again = readLastAgain(cursorOver(c.tokens, start, stated?.end ?? whole.end), label);
  if (again) {
    takeAll(c);
    add(again, at, stated?.stitches);
    return undefined;
  }
  const read = readLabelled(row, label);
  if (read.ok) {
    takeAll(c);
    const isRow = read.value.is === 'row';
    const told = isRow && keepsWords(c, start, row.end, read.value.items) ? { told: 'within' } : {};
    const all = isRow && saysAll(c.tokens, start) ? { all: true } : {};
    add({ ...read.value, ...told, ...all } as Statement, at, stated?.stitches);
    return undefined;
  }
  const worked = readWorkedRows(cursorOver(c.tokens, start, stated?.end ?? whole.end), label);
  if (worked) {
    takeAll(c);
    add(worked, at, stated?.stitches);
    return undefined;
  }
  return read.faults[0];
}

/** 'rib across all sts'. */
const saysAll = (tokens: readonly Token[], at: number): boolean =>
  isWord(tokens[at + 1], 'across', 'over') && isWord(tokens[at + 2], 'all');

/** 'Next row' by itself only says where what follows begins. */
export const begins = ({ rows, next, name, everyOther }: Label): boolean =>
  rows.length === 0 && next === undefined && name === undefined && !everyOther;

/** 'Row 1: k 1 row, dec 4': the row is the whole of it, and what is decreased lies across it. */
const readWholeRow = (c: Cursor): Item | undefined =>
  attempt(c, () => {
    const work = takes(c, 'k') ? 'k' : takes(c, 'p') ? 'p' : undefined;
    if (work === undefined || takeNumber(c) !== 1 || !takes(c, 'row')) return undefined;
    takes(c, ',');
    takes(c, 'and');
    const sign = takes(c, 'dec', 'decreasing') ? -1 : takes(c, 'inc', 'increasing') ? 1 : 0;
    const n = takeNumber(c);
    takePhrase(c, STS);
    takeAnyPhrase(c, 'evenly? across? row?', 'evenly');
    return sign !== 0 && n !== undefined && atEnd(c) ? { is: 'evenly', change: sign * n, work } : undefined;
  });

/** 'Rows 7–50: work even in st st', 'Row 4: dec 1 st at each end of this and every 3rd row 14 times more'. */
const readWorkedRows = (c: Cursor, label: Label): Statement | undefined =>
  attempt(c, () => {
    const rows = label.next ?? Math.max(1, label.rows.length);
    const even = attempt(c, () => {
      const read = readEven(c);
      return read?.is === 'even' && atEnd(c) ? read : undefined;
    });
    if (even) return ofRows(even, rows);
    const other = readGroups(c) ?? readShape(c);
    return other && atEnd(c) ? overRows(other, label.next) : undefined;
  });

type Even = Extract<Statement, { is: 'even' }>;

/** Where nothing else ends it, it is as many rows as the label names. */
const ofRows = (even: Even, n: number): Even => {
  if (even.until === undefined) return { ...even, until: { is: 'rows', n } };
  if (even.until.is !== 'open') return even;
  const { end, endEdge } = even.until;
  return {
    ...even,
    until: {
      is: 'rows',
      n,
      ...(end === undefined ? {} : { end }),
      ...(endEdge === undefined ? {} : { endEdge }),
    },
  };
};

/** 'Rows 5-8: work in st st': a fabric by its name, whatever was knitted before. */
const readFabricRows = (c: Cursor, label: Label): Statement | undefined =>
  attempt(c, () => {
    // '1st row: knit plain' is that row, and is worked again by its number
    if (!seesPhrase(c, 'work|cont|in') && !seesPhrase(c, 'beg|starting with|on a? rs|ws? k|p'))
      return undefined;
    const even = readEven(c);
    if (even?.is !== 'even' || !atEnd(c) || label.everyOther) return undefined;
    if (even.fabric?.is !== 'named' && even.fabric?.is !== 'rib') return undefined;
    if (even.until !== undefined && even.until.is !== 'open' && even.until.is !== 'rows') return undefined;
    return ofRows(even, label.next ?? Math.max(1, label.rows.length));
  });

/** 'Rows 35-38: repeat last 2 rows 2 more times', where that is as many rows as the label names. */
const readLastAgain = (c: Cursor, label: Label): Statement | undefined =>
  attempt(c, () => {
    const rows = label.rows.length;
    if (rows < 2 || !takes(c, 'rep')) return undefined;
    takes(c, 'the', 'these');
    if (!takes(c, 'last', 'previous', 'preceding')) return undefined;
    const last = takeNumber(c);
    if (last === undefined || last < 1 || !takePhrase(c, ROWS)) return undefined;
    takes(c, 'another', 'a');
    const times = readTimes(c);
    if (!atEnd(c) || rows !== last * (times?.n ?? rows / last) || rows % last !== 0) return undefined;
    return { is: 'repeat rows', last, times: rows / last, to: label.rows.at(-1) as number };
  });

/** 'Next 2 rows: bind off 3 sts at the beginning of each row': one in each of them. */
function overRows(said: Statement, rows: number | undefined): Statement {
  if (rows === undefined) return said;
  if (said.is === 'groups') {
    const [only] = said.groups;
    return said.groups.length === 1 && only?.rows === 1 && only.toCount === undefined
      ? { ...said, groups: [{ ...only, rows, every: 1 }] }
      : said;
  }
  if (said.is !== 'shape') return said;
  const beat = said.beats[0] ?? { first: 1, every: 1 };
  const open = beat.toCount === undefined && beat.until === undefined && (beat.times ?? 1) === 1;
  return said.beats.length < 2 && open && beat.every === 1
    ? { ...said, beats: [{ ...beat, times: rows }] }
    : said;
}

const atEnd = (c: Cursor): boolean =>
  c.at >= c.end || (c.at === c.end - 1 && isOneOf(peekWord(c), '. , ; :'));

/** A labelled row said as shaping: 'dec 1 st at each end', 'inc in first and last st'. */
function readShapedRow(c: Cursor): Item[] | undefined {
  takes(c, 'k', 'p', 'work');
  takeAnyPhrase(c, 'in patt', 'even', 'across');
  takes(c, ',');
  const sign = takes(c, 'dec', 'decreasing') ? -1 : takes(c, 'inc', 'increasing') ? 1 : 0;
  if (sign === 0) return undefined;
  const n = peekNumber(c);
  // more than two are not worked together
  if (n !== undefined && n > 2) return undefined;
  if (n !== undefined) c.at += 1;
  takePhrase(c, STS);
  const both = takeAnyPhrase(
    c,
    'at each|both end|ends|side|edge',
    'each end|side',
    'at beg and end',
    'in first st? and last st',
  );
  if (!both) return undefined;
  takeAnyPhrase(c, 'of row', 'of needle');
  const work = sign < 0 ? (n === 2 ? 'dec 2' : 'dec') : n === 2 ? 'inc 2' : 'inc';
  const edge: Item = { is: 'stitches', work, times: 1 };
  return c.at < c.end && !isOneOf(peekWord(c), '. ,')
    ? undefined
    : [edge, { is: 'stitches to', work: 'patt', goal: { left: 'what follows' } }, edge];
}
