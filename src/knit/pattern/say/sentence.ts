import { type Fault, fault } from '../../fault.ts';
import {
  ahead,
  attempt,
  type Cursor,
  cursorOver,
  expected,
  isWord,
  peek,
  peekWord,
  sees,
  takes,
  takeTo,
} from '../../row/read/cursor.ts';
import type { Token } from '../../row/read/lex.ts';
import { means } from '../../row/read/meanings.ts';
import type { Sentence } from '../text/sentences.ts';
import { addBefore, castsOnBehindRow, keepBeside, keptMeanwhile, parted, placedBefore } from './beside.ts';
import { skipBetween } from './between.ts';
import { readCastOn } from './cast-on.ts';
import { readSimple } from './constructs.ts';
import { castOnAhead, takeFrontDoor } from './front-door.ts';
import { readGauge, seesGauge } from './gauge.ts';
import { readHeading } from './heading.ts';
import { takeFabricLead, takeHow } from './how-shaped.ts';
import { readLabel } from './label.ts';
import { readMultiple } from './multiple.ts';
import { readNeedle } from './needle.ts';
import { readOtherPiece, readPieceAsOther } from './other-piece.ts';
import { takeStated } from './phrase/stated-count.ts';
import { repeatSaid } from './repeat-stars.ts';
import { countsRounds, joinsInRound, worksInRounds } from './rounds.ts';
import { begins, readBareRow, readLabelledRow } from './row.ts';
import { readShape } from './shape.ts';
import { announcedRows, standingOrder } from './standing-order.ts';
import { readStars } from './stars.ts';
import type { Add, Label, ReadSentence, Said, Statement } from './statement.ts';
import { readStripesListed } from './stripes.ts';
import { readTechnique } from './technique.ts';
import { endedByTurn } from './turn.ts';
import { joinRows } from './while-rows.ts';
import { withRest } from './with-rest.ts';
import { readYarn } from './yarn.ts';

/** What one sentence says, in order, as far as it is understood. */
export function readSentence(
  tokens: readonly Token[],
  sentence: Sentence,
  aloneOnLine: boolean,
): ReadSentence {
  const c = cursorOver(tokens, sentence.from, sentence.to);
  const said: Said[] = [];
  const add = (statement: Statement, at: number, stated?: number) => {
    const token = tokens[at];
    said.push({
      statement,
      line: token?.line ?? 1,
      column: token?.column ?? 1,
      ...(stated === undefined ? {} : { stated }),
    });
  };
  const told = readTechnique(c);
  if (told) {
    add(told, sentence.from);
    return { said };
  }
  const stripes = readStripesListed(c);
  if (stripes) add(stripes, sentence.from);
  else readHeadings(c, aloneOnLine, add);
  if (!seesGauge(c) && worksInRounds(c)) {
    castOnFirst(c, said, add);
    return inRounds(c, said);
  }
  if (standingOrder(c))
    return { said, fault: expected(c, 'stitch or repeat expected'), rest: c.at, beside: true, order: true };
  const begins = takeFrontDoor(c, add);
  const whole = c.at;
  const one =
    (castOnAhead(c) === undefined ? readMultiple(c) : undefined) ?? (seesGauge(c) ? readGauge(c) : undefined);
  if (one) add(one, whole);
  const star = { at: -1 };
  let last = { begin: c.at, end: c.at };
  while (c.at < c.end) {
    if (peekWord(c) === '*' && peekWord(c, 1) === '*') {
      const stars = readStars(c);
      if (stars) add(stars, c.at - 1);
      continue;
    }
    if (peekWord(c) === '*' && !startsRow(c)) {
      // the second of two stars closes what the first began
      if (star.at < 0) {
        star.at = said.length;
        add({ is: 'star' }, c.at);
      }
      takes(c, '*');
      continue;
    }
    const how = takeHow(c, said);
    if (how === 'unread')
      return {
        said: said.slice(0, -1),
        fault: expected(c, 'stitch or repeat expected'),
        rest: last.begin,
        order: true,
      };
    if (how) continue;
    skipBetween(c);
    if (c.at >= c.end) break;
    if (peekWord(c) === '*' && !startsRow(c)) continue;
    takeFabricLead(c);
    const at = c.at;
    // 'work 20 rows in st st, always slipping the first st'
    if (said.length > 0 && standingOrder(c))
      return { said, fault: expected(c, 'stitch or repeat expected'), rest: c.at, beside: true, order: true };
    if (star.at >= 0 && repeatSaid(c, said, star)) continue;
    const row = endedByTurn(c);
    const trouble = readOneStatement(row, said, add);
    takeTo(c, row.at);
    const first = said.at(-1);
    if (begins && at === whole && first?.statement.is === 'cast on')
      said[said.length - 1] = { ...first, begins };
    const announced = trouble === undefined ? announcedRows(said, tokens, at) : undefined;
    if (announced !== undefined) {
      takes(c, ':', '-', ';');
      const before = said.splice(-2, 2)[0];
      if (c.at < c.end)
        return {
          said,
          fault: expected(cursorOver(tokens, last.begin), 'stitch or repeat expected'),
          rest: last.begin,
          order: true,
        };
      add({ is: 'note', about: 'aside', rows: announced }, last.begin, before?.stated);
      return { said };
    }
    if (trouble === undefined && !joinRows(said, tokens, at))
      return {
        said: said.slice(0, -2),
        fault: expected(c, 'stitch or repeat expected'),
        rest: last.begin,
        order: true,
      };
    if (trouble)
      return withRest(said, trouble, last, {
        at,
        parted: at > last.end,
        word: peekWord(c),
        more: isWord(tokens[at - 1], 'and') && peek(c)?.kind === 'number',
      });
    // no reader of ours takes nothing; one that did would read the same place for ever
    if (c.at === at) return { said, fault: expected(c, 'stitch or repeat expected'), rest: at };
    last = { begin: at, end: c.at };
  }
  const open = said.at(-1)?.statement;
  // '… AT THE SAME TIME when armhole measures 8 cm.' and no more: what is done then stands elsewhere
  if (open?.is === 'at the same time' && open.after && !isWord(tokens[c.end - 1], ':'))
    return {
      said: said.slice(0, -1),
      fault: expected(cursorOver(tokens, last.begin), 'stitch or repeat expected'),
      rest: last.begin,
      beside: true,
      order: true,
    };
  return { said };
}

/** 'Cast on 36 sts, join into a ring': what is cast on is on the needles, however it is worked then. */
function castOnFirst(c: Cursor, said: Said[], add: Add): void {
  attempt(c, () => {
    const begins = takeFrontDoor(c, add);
    const { at } = c;
    const on = readCastOn(c);
    if (on === undefined) return false;
    add(on, at);
    const cast = said.at(-1);
    if (begins && cast) said[said.length - 1] = { ...cast, begins };
    skipBetween(c);
    return true;
  });
}

/** Rounds are said, not flattened into rows: the sentence keeps its own words. */
function inRounds(c: Cursor, said: Said[]): ReadSentence {
  const { line = 1, column = 1 } = c.tokens[c.at] ?? {};
  const found = fault('worked in rounds', {}, { line, column });
  const joins = joinsInRound(c);
  // 'on 3 needles, and rib 20 rounds' works them
  const beside = !countsRounds(c);
  return { said, fault: found, rest: c.at, order: true, ...(joins && { beside, rounds: true }) };
}

const WORKS: ReadonlySet<Statement['is']> = new Set(['even', 'rows']);

const startsRow = (c: Cursor): boolean =>
  means(c.tokens[c.at + 1]?.text, 'stitch after a star') && !isWord(c.tokens[c.at + 3], 'row', 'rows');

function readHeadings(c: Cursor, aloneOnLine: boolean, add: Add): void {
  for (let i = 0; i < 3 && c.at < c.end; i += 1) {
    const at = c.at;
    const heading = readHeading(c, aloneOnLine);
    if (heading === undefined) return;
    add(heading, at);
  }
}

function readOneStatement(c: Cursor, said: readonly Said[], add: Add): Fault | undefined {
  const at = c.at;
  // 'Every RS row: dec 1 st each end, 3 times'
  const every = sees(c, 'every', 'each') ? readShape(c) : undefined;
  if (every) {
    add(every, at, takeStated(c));
    return undefined;
  }
  const label = readLabel(c);
  if (label) {
    const lead = attempt(c, () => {
      if (!sees(c, 'with', 'in', 'using', 'join', 'change')) return undefined;
      const name = readYarn(c) ?? readNeedle(c);
      const changed = name?.is === 'needle' && (takes(c, 'and') || c.at >= c.end);
      return name && (takes(c, ',') || changed) ? name : undefined;
    });
    // 'Row 9: Change to larger needles.'
    if (lead && c.at >= c.end) {
      add(lead, at);
      return undefined;
    }
    if (lead?.is === 'needle') add(lead, at);
    const yarn = lead?.is === 'yarn' ? lead : undefined;
    const trouble = readLabelledRow(c, label, at, add);
    // 'Row 1: With A, k to end': the row is worked in it
    if (yarn && !trouble) {
      // a stitch pattern keeps it in the row's words
      const row = said.at(-1);
      if (row?.statement.is === 'row')
        (said as Said[])[said.length - 1] = { ...row, statement: { told: 'led', ...row.statement } };
      addBefore(said as Said[], yarn, c.tokens[at]);
    }
    return trouble && readBegun(c, label, at, add) ? undefined : trouble;
  }
  if (castsOnBehindRow(c, said as Said[])) return undefined;
  if (said.length === 0 && (readOtherPiece(c, add) || readPieceAsOther(c, add))) return undefined;
  let kept = false;
  const statement = attempt(c, () => {
    const simple = readSimple(c, said);
    // 'work 6 rows, keeping 3 sts at each end in moss st': they are kept in those rows
    kept = simple?.is === 'borders' && keptMeanwhile(c, at, said);
    return !kept || keepBeside(said as Said[], simple as Statement, c.tokens[at]) ? simple : undefined;
  });
  if (statement && placedBefore(c, at, said as Said[], statement)) return undefined;
  // 'Knit 7 ridges on each shoulder, cast on 24 sts': where they are knitted is said, not where is cast on
  if (
    statement?.is === 'groups' &&
    said.at(-1)?.statement.is === 'rows' &&
    !parted(c, at) &&
    sees({ ...c, at }, 'on', 'at')
  )
    return expected({ ...c, at }, 'stitch or repeat expected');
  // 'work 10 rows in rib | as given for the back': how, not what is worked again
  if (
    statement?.is === 'as for' &&
    statement.to === undefined &&
    WORKS.has(said.at(-1)?.statement.is ?? 'turn') &&
    !parted(c, at)
  )
    return undefined;
  if (kept) return statement ? undefined : expected(c, 'stitch or repeat expected');
  if (statement) {
    add(statement, at, statement.is === 'stated' ? statement.stitches : takeStated(c));
    return undefined;
  }
  return readBareRow(c, at, add);
}

/**
 * 'Next row (RS): cont in rib as set, bind off 4 sts at beg of next 2 rows': not the row is said but what begins with it.
 * Nothing of it is taken where any of it is not understood.
 */
function readBegun(c: Cursor, label: Label, at: number, add: Add): boolean {
  if (!begins(label) || ahead(c, () => readLabel(c)) !== undefined) return false;
  const { said, fault: found } = readSentence(c.tokens, { from: c.at, to: c.end }, false);
  if (found || !said.some(({ statement }) => BEGUN.has(statement.is))) return false;
  if (said.some(({ statement }) => statement.is === 'heading' || statement.is === 'row')) return false;
  if (label.side !== undefined) add({ is: 'next side', side: label.side }, at);
  for (const one of said) add(one.statement, at, one.stated);
  takeTo(c, c.end);
  return true;
}

const BEGUN: ReadonlySet<Statement['is']> = new Set(['even', 'shape', 'groups', 'evenly', 'rows']);
