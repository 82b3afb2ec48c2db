import type { Fault } from '../fault.ts';
import { type Cursor, cursorOver, expected, peekNumber, peekText, seesPhrase, takeNumber, takeAnyPhrase, takePhrase, takes } from '../row/cursor.ts';
import type { Token } from '../row/lex.ts';
import type { Item } from '../row/notation.ts';
import { takeBindOff, takeRest } from '../row/read-edge.ts';
import { readTimes, STS } from '../row/read-goal.ts';
import { readRow } from '../row/read-row.ts';
import { readEven, readRepeatRows } from './read-even.ts';
import { readCastOnStatement, readGauge, readNeedle, skipYarn } from './read-header.ts';
import { readHeading, readMultiple } from './read-heading.ts';
import { readUntil } from './read-length.ts';
import { readPickUpStatement } from './read-pick-up.ts';
import { readLabel, readLabelled, readPlainRows, readRepeatNamed } from './read-row-line.ts';
import { readElidedShape, readGroups, readShape, skipEnding } from './read-shape.ts';
import { readAsFor, readHoldStatement, readOtherSide, readRejoin, readWorkOn, seesPickUp, skipFacing } from './read-sides.ts';
import { statedAtEnd, takeChangeNote, takeStated, withoutChangeNote } from './read-stated.ts';
import type { Sentence } from './sentences.ts';
import type { Label, Said, Statement } from './statement.ts';

export interface ReadSentence {
  readonly said: readonly Said[];
  /** what was expected where the rest of the sentence was not understood */
  readonly fault?: Fault;
}

/** What one sentence says, in order, as far as it is understood. */
export function readSentence(tokens: readonly Token[], sentence: Sentence, aloneOnLine: boolean): ReadSentence {
  const c = cursorOver(tokens, sentence.from, sentence.to);
  const said: Said[] = [];
  const add = (statement: Statement, at: number, stated?: number) => {
    const token = tokens[at];
    said.push({ statement, line: token?.line ?? 1, column: token?.column ?? 1, ...(stated === undefined ? {} : { stated }) });
  };
  readHeadings(c, aloneOnLine, add);
  const whole = c.at;
  const one = readMultiple(c) ?? (seesGauge(c) ? readGauge(c) : undefined);
  if (one) add(one, whole);
  const star = { at: -1 };
  while (c.at < c.end) {
    if (peekText(c) === '*' && !startsRow(c)) star.at = said.length;
    skipBetween(c);
    if (c.at >= c.end) break;
    const at = c.at;
    if (star.at >= 0 && repeatSaid(c, said, star)) continue;
    const trouble = readOneStatement(c, said, add);
    if (trouble) return { said, fault: trouble };
    if (c.at === at) return { said, fault: expected(c, 'an instruction') };
  }
  return { said };
}

const startsRow = (c: Cursor): boolean => /^(k|p|knit|purl|yo|sl|\(|\[|ssk|skp|m|c|t)$/.test(c.tokens[c.at + 1]?.text ?? '') && !/^(row|rows)$/.test(c.tokens[c.at + 3]?.text ?? '');

/** '*dec 1 st at each end of next 2 rows; rep from * 9 times more': the instructions are said again. */
function repeatSaid(c: Cursor, said: Said[], star: { at: number }): boolean {
  const start = c.at;
  if (!takes(c, 'rep', 'repeat', 'rpt')) return false;
  takes(c, 'from', 'between');
  takes(c, '*');
  takes(c, '*');
  const times = readTimes(c);
  if (times === undefined || times.n > 200) {
    c.at = start;
    return false;
  }
  const again = said.slice(star.at);
  for (let i = 0; i < (times.total ? times.n - 1 : times.n); i += 1) said.push(...again);
  const stated = takeStated(c);
  const last = said.at(-1);
  if (stated !== undefined && last) said[said.length - 1] = { ...last, stated };
  star.at = -1;
  return true;
}

type Add = (statement: Statement, at: number, stated?: number) => void;

function readHeadings(c: Cursor, aloneOnLine: boolean, add: Add): void {
  for (let i = 0; i < 3 && c.at < c.end; i += 1) {
    const at = c.at;
    const heading = readHeading(c, aloneOnLine);
    if (heading === undefined) return;
    add(heading, at);
  }
}

const seesGauge = (c: Cursor): boolean => {
  if (/^(gauge|tension)$/.test(peekText(c))) return true;
  return peekNumber(c) !== undefined && c.tokens.slice(c.at, c.end).some((token) => token.text === '=' || token.text === 'inch' || token.text === 'cm') && seesPhrase({ ...c, at: c.at + 1 }, STS);
};

function skipBetween(c: Cursor): void {
  while (takes(c, ',', ';', ':', '-', 'and', 'then', '&', '.', ')', ']', 'while', 'but', '*', 'now', 'also', '/')) {
    // what joins two instructions says nothing of its own
    if (c.tokens[c.at - 1]?.text === '*' && startsRow({ ...c, at: c.at - 1 })) {
      c.at -= 1;
      return;
    }
  }
  skipShapingBy(c);
  // '(k 1 row, p 1 row) twice'
  if (/^[([]$/.test(peekText(c)) && /^(k|p|knit|purl)$/.test(c.tokens[c.at + 1]?.text ?? '') && /^rows?$/.test(c.tokens[c.at + 3]?.text ?? '')) c.at += 1;
}

/** 'shaping side seams by dec 1 st …': what is shaped says nothing of how. */
function skipShapingBy(c: Cursor): void {
  if (!/^(shaping|shape)$/.test(peekText(c))) return;
  for (let i = 1; i < 6; i += 1) {
    const word = c.tokens[c.at + i]?.text;
    if ((word === 'by' || word === ':') && c.at + i < c.end) {
      c.at += i + 1;
      return;
    }
  }
}

function readOneStatement(c: Cursor, said: readonly Said[], add: Add): Fault | undefined {
  const at = c.at;
  const label = readLabel(c);
  if (label) return readLabelledRow(c, label, at, add);
  const statement = readSimple(c, said);
  if (statement) {
    add(statement, at, statement.is === 'stated' ? statement.stitches : takeStated(c));
    return undefined;
  }
  return readBareRow(c, at, add);
}

function readLabelledRow(c: Cursor, label: Label, at: number, add: Add): Fault | undefined {
  const whole = cursorOver(c.tokens, c.at, withoutChangeNote(c));
  const stated = statedAtEnd(whole);
  const row = cursorOver(c.tokens, c.at, stated?.end ?? whole.end);
  const start = row.at;
  const read = readLabelled(row, label);
  if (read.ok) {
    c.at = c.end;
    add(read.value, at, stated?.stitches);
    return undefined;
  }
  // 'Next row: dec 1 st at each end', 'Next row (WS): work in pattern, inc 6 sts evenly'
  const inner = cursorOver(c.tokens, start, stated?.end ?? whole.end);
  const items = readShapedRow(inner);
  if (items) {
    c.at = c.end;
    add({ is: 'row', label, items }, at, stated?.stitches);
    return undefined;
  }
  const worked = readWorkedRows(cursorOver(c.tokens, start, stated?.end ?? whole.end), label);
  if (worked) {
    c.at = c.end;
    add(worked, at, stated?.stitches);
    return undefined;
  }
  return read.faults[0];
}

/** 'Rows 7–50: work even in st st', 'Row 4: dec 1 st at each end of this and every 3rd row 14 times more'. */
function readWorkedRows(c: Cursor, label: Label): Statement | undefined {
  const start = c.at;
  const rows = label.next ?? Math.max(1, label.rows.length);
  const even = readEven(c);
  if (even?.is === 'even' && atEnd(c)) return even.until === undefined ? { ...even, until: { is: 'rows', n: rows } } : even;
  c.at = start;
  const other = readGroups(c) ?? readShape(c);
  return other && atEnd(c) ? other : undefined;
}

const atEnd = (c: Cursor): boolean => c.at >= c.end || (c.at === c.end - 1 && /^[.,;:]$/.test(peekText(c)));

/** A labelled row said as shaping: 'dec 1 st at each end', 'inc in first and last st'. */
function readShapedRow(c: Cursor): Item[] | undefined {
  takes(c, 'k', 'knit', 'p', 'purl', 'work');
  takeAnyPhrase(c, 'in pattern|patt', 'even', 'across');
  takes(c, ',');
  const sign = takes(c, 'dec', 'decrease', 'decreasing') ? -1 : takes(c, 'inc', 'increase', 'increasing') ? 1 : 0;
  if (sign === 0) return undefined;
  const n = peekNumber(c);
  if (n !== undefined) c.at += 1;
  takePhrase(c, STS);
  const both = takeAnyPhrase(c, 'at each|both end|ends|side|edge', 'each end|side', 'at beg and end', 'in first and last st', 'in first st and last st', 'at beg and end of row');
  if (!both) return undefined;
  takeAnyPhrase(c, 'of row', 'of needle');
  const work = sign < 0 ? (n === 2 ? 'dec 2' : 'dec') : n === 2 ? 'inc 2' : 'inc';
  const edge: Item = { is: 'stitches', work, times: 1 };
  return c.at < c.end && !/^[.,]$/.test(peekText(c)) ? undefined : [edge, { is: 'stitches to', work: 'patt', goal: { left: 'what follows' } }, edge];
}

/** Everything but rows spelled out. */
function readSimple(c: Cursor, said: readonly Said[]): Statement | undefined {
  return (
    readStatedAlone(c) ??
    readSameTime(c) ??
    readNamedRows(c) ??
    readNote(c) ??
    readNeedle(c) ??
    readCastOnStatement(c) ??
    readRepeatNamed(c) ??
    readPlainRows(c) ??
    readRowsAgain(c, said) ??
    readRepeatRows(c, said.at(-1)?.statement.is === 'repeat rows') ??
    readElided(c, said) ??
    readGroups(c) ??
    readBindOffAll(c) ??
    readShape(c) ??
    readOtherSide(c) ??
    readAsFor(c) ??
    (seesPickUp(c) ? readPickUpStatement(c) : undefined) ??
    readRejoin(c) ??
    readWorkOn(c) ??
    readHoldStatement(c) ??
    readTurn(c) ??
    readEven(c) ??
    readPassing(c)
  );
}

/** 'K 1 row, p 1 row until piece measures 12 in': the rows just named go on. */
function readRowsAgain(c: Cursor, said: readonly Said[]): Statement | undefined {
  let rows = 0;
  for (let i = said.length - 1; i >= 0; i -= 1) {
    const { statement } = said[i] as Said;
    if (statement.is !== 'rows') break;
    rows += statement.n;
  }
  if (rows === 0 || rows > 40) return undefined;
  const start = c.at;
  takes(c, 'alternately', 'rep', 'repeat');
  const until = readUntil(c);
  if (until) return { is: 'repeat rows', last: rows, until };
  const times = readTimes(c);
  if (times) return { is: 'repeat rows', last: rows, times: times.more ? times.n : Math.max(0, times.n - 1) };
  c.at = start;
  return undefined;
}

function readElided(c: Cursor, said: readonly Said[]): Statement | undefined {
  const last = said.at(-1)?.statement;
  return last?.is === 'shape' ? readElidedShape(c, Math.sign(last.change)) : undefined;
}

function readStatedAlone(c: Cursor): Statement | undefined {
  if (takeChangeNote(c)) return { is: 'note', about: 'change' };
  const stitches = takeStated(c);
  return stitches === undefined ? undefined : { is: 'stated', stitches };
}

/** 'AT THE SAME TIME', 'at the same time, when armhole measures 5 cm, …'. */
function readSameTime(c: Cursor): Statement | undefined {
  const start = c.at;
  takes(c, 'while', 'and', '(', '[');
  if (!takeAnyPhrase(c, 'at the same time', 'at same time', 'meanwhile', 'simultaneously')) {
    c.at = start;
    return undefined;
  }
  takes(c, ',', ':', '-', ')');
  const after = seesPhrase(c, 'when|once|after') ? readUntil(c) : undefined;
  takes(c, ',');
  takes(c, 'beg', 'beginning', 'starting');
  return after === undefined ? { is: 'at the same time' } : { is: 'at the same time', after };
}

/** 'these 2 rows form rib', 'last 4 rows set the pattern': the rows get a name. */
function readNamedRows(c: Cursor): Statement | undefined {
  const start = c.at;
  if (takes(c, 'these', 'last', 'above', 'the', 'this')) {
    takes(c, 'last', 'above');
    const n = takeNumber(c);
    if (takePhrase(c, 'row|rows') && takes(c, 'form', 'forms', 'set', 'sets', 'establish', 'complete')) {
      const name = c.tokens
        .slice(c.at, c.end)
        .filter(({ kind, text }) => kind === 'word' && !/^(the|a|patt|pattern|st|stitch|in|as)$/.test(text))
        .map(({ text }) => text)
        .slice(0, 4)
        .join(' ');
      c.at = c.end;
      return { is: 'named rows', name, ...(n === undefined ? {} : { rows: n }) };
    }
  }
  c.at = start;
  return undefined;
}

const NOTES = new Set(
  ('block press sew weave steam fold seam stitch wash measure finishing note notes turn-up attach overcast darn crochet ' +
    'abbreviations materials instructions directions changes repeat-for run draw gather allow lay pin cover dampen make-up ' +
    'back-stitch backstitch insert this these when do join size sizes to needles yarn you').split(' '),
);

/** What makes no row: seams, pressing, breaking the yarn, markers at the edge. */
function readNote(c: Cursor): Statement | undefined {
  const word = peekText(c);
  const start = c.at;
  if (takeAnyPhrase(c, 'break|cut|fasten off yarn|wool|thread', 'break|cut off|the yarn|wool|thread', 'break|cut|fasten', 'fasten off')) {
    takeAnyPhrase(c, 'off', 'yarn', 'wool', 'the yarn');
    return { is: 'note', about: word };
  }
  if (takeAnyPhrase(c, 'place|put|mark a|the|1|each marker|end', 'place|put marker|markers', 'mark each|center|centre|both', 'tie a marker', 'mark')) {
    if (seesPhrase(c, ', k|p') && word !== 'mark') {
      c.at = start;
      return undefined;
    }
    while (c.at < c.end && !/^[,;]$/.test(peekText(c))) c.at += 1;
    return { is: 'note', about: 'marker' };
  }
  if (word === 'join' && !seesPhrase(c, 'join seams|seam|shoulder|shoulders|side|right|left|sleeve|back|front')) return undefined;
  if (word === 'to' && !seesPhrase(c, 'to make|finish|fit')) return undefined;
  if (word === 'when' && !seesPhrase(c, 'when knitting|working')) return undefined;
  if (/^(these|this)$/.test(word) && !seesPhrase(c, 'these rows|sts|1|2|4|6|8|10|12|16 form|rows|are|sts') && !seesPhrase(c, 'this forms|completes|is')) return undefined;
  if (/^(these|this)$/.test(word) && !c.tokens.slice(c.at, c.end).some((token) => /^(form|forms|set|sets|establish|establishes|completes|complete|is|are)$/.test(token.text))) return undefined;
  if (!NOTES.has(word)) return undefined;
  if (word === 'measure' || word === 'turn') return undefined;
  c.at = c.end;
  return { is: 'note', about: word };
}

function readTurn(c: Cursor): Statement | undefined {
  return takePhrase(c, 'turn') ? { is: 'turn' } : undefined;
}

/** 'Bind off.', 'bind off rem 24 sts in pattern', 'cast off all sts loosely', 'bind off 24 sts'. */
function readBindOffAll(c: Cursor): Statement | undefined {
  const start = c.at;
  takes(c, 'loosely');
  if (!takeBindOff(c)) return undefined;
  skipHow(c);
  const all = takeRest(c) || takes(c, 'rem', 'remaining', 'all', 'the', 'these');
  if (all) takes(c, 'rem', 'remaining', 'the');
  const stitches = peekNumber(c);
  if (stitches !== undefined) c.at += 1;
  takePhrase(c, STS);
  takeAnyPhrase(c, 'for back|front of neck', 'for neck|back|shoulder', 'for each shoulder', 'on each side', 'each side|shoulder', 'at each side');
  skipHow(c);
  takeAnyPhrase(c, 'at same gauge|tension', 'in 1 row', 'on next row');
  skipHow(c);
  const done = c.at >= c.end || /^[.,;([:-]$/.test(peekText(c));
  const more = peekText(c) === ',' && /^(k|p|knit|purl|work|pattern|patt|sl|dec|ssk|inc|rib|pat)$/.test(c.tokens[c.at + 1]?.text ?? '');
  if (!done || (more && !all)) {
    c.at = start;
    return undefined;
  }
  return { is: 'bind off', ...(stitches === undefined ? {} : { stitches }), ...(all ? { rest: true } : {}) };
}

function skipHow(c: Cursor): void {
  takeAnyPhrase(c, 'loosely in pattern|patt|pat|rib|ribbing', 'in pattern|patt|pat|rib|ribbing|knitting', 'loosely', 'in garter|moss|seed st', 'knitwise|purlwise|kwise|pwise|ribwise', 'as if to k|knit|p|purl', 'in k', 'very loosely', 'firmly', 'on rs|ws', 'in p');
}

/** Words that may stand alone between instructions: 'with RS facing', 'ending with a WS row', 'with white'. */
function readPassing(c: Cursor): Statement | undefined {
  const start = c.at;
  if (skipFacing(c)) return { is: 'note', about: 'facing' };
  skipEnding(c);
  if (c.at !== start) return { is: 'even', until: { is: 'open', end: 'WS' } };
  return skipYarn(c) ? { is: 'note', about: 'yarn' } : undefined;
}

/** A row without a label takes the rest of the sentence. */
function readBareRow(c: Cursor, at: number, add: Add): Fault | undefined {
  const whole = cursorOver(c.tokens, c.at, withoutChangeNote(c));
  const stated = statedAtEnd(whole);
  const row = cursorOver(c.tokens, c.at, stated?.end ?? whole.end);
  const read = readRow(row);
  if (!read.ok) return read.faults[0];
  c.at = c.end;
  add({ is: 'row', items: read.value }, at, stated?.stitches);
  return undefined;
}
