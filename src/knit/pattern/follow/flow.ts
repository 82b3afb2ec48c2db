import { type Fault, type FaultCode, fault } from '../../fault.ts';
import { means } from '../../row/read/meanings.ts';
import type { Flow } from '../say/flow.ts';
import type { Said } from '../say/statement.ts';
import {
  noteFollowing,
  rowsSince,
  tellAnnounced,
  tellDivides,
  tellNowhere,
  tellStripes,
} from './announced.ts';
import { joinMeanwhile } from './at-the-same-time.ts';
import type { Build, PartBuild } from './build/build.ts';
import { compare } from './build/compare.ts';
import { unknownFabric } from './build/fabric.ts';
import { fullNow } from './build/full.ts';
import { makeOwnRow } from './build/make-row.ts';
import type { LineNotes } from './build/notes.ts';
import { isDone } from './build/part.ts';
import { countAfter, noteCount } from './build/uncounted.ts';
import { tellHoles } from './buttonholes.ts';
import { isForAll, makesRows } from './makes-rows.ts';
import { namesRowsBelow } from './names-rows.ts';
import { closePiece } from './other-side.ts';
import { headsNote, inNote, unread, workOwnWords } from './own-words.ts';
import { sayAgain } from './repeat-stars.ts';
import { doStatement } from './statement.ts';

/** These are told; the row they speak of is worked all the same. */
const NOTICES: ReadonlySet<FaultCode> = new Set<FaultCode>([
  'side differs',
  'count contradicts',
  'not a multiple',
  'bound off too many',
  'longer already',
  'too many stitches',
]);

/** Works the whole text, line by line, and notes at each line what was found. */
export function runFlow(
  build: Build,
  read: readonly Flow[],
  notes: readonly LineNotes[],
  gaugeGiven: boolean,
): readonly Flow[] {
  const flow = sayAgain(read);
  const used = new Set<number>();
  const begins = flow.some((one) =>
    one.is === 'own words' ? one.castsOn : BEGINS.has(one.said.statement.is),
  );
  let line: number | undefined;
  for (let i = 0; i < flow.length; i += 1) {
    const one = flow[i] as Flow;
    const note = notes[one.line] as LineNotes;
    build.at = i;
    if (one.line !== line) {
      build.recent = [];
      line = one.line;
      // 'Note: the jacket is knitted in one piece' says nothing of what comes below
      if (build.talk && notesAt(flow, i - 1)) Object.assign(build, { talk: false, heading: undefined });
    }
    if (note.before === undefined && build.part && !isDone(build.part)) note.before = build.part.live;
    const had = { faults: note.faults.length, part: build.part, rows: build.part?.rows.length ?? 0 };
    if (build.full) note.kind = note.kind ?? 'talk';
    else if (one.is === 'own words') {
      if (namesRowsBelow(one, flow[i + 1])) note.kind = note.kind ?? 'talk';
      else workOwnWords(build, one, note);
      // 'Cable panel (35 sts)' names the rows below it
      build.castOnUnread ||= one.castsOn && (build.part === undefined || isDone(build.part));
      const isName = one.short && one.title !== undefined && !one.bids && !one.asks;
      if (!begins && !isName && one.stated !== undefined && note.faults.length === 0)
        note.faults.push(one.fault);
    } else if (!used.has(i)) {
      if (one.said.statement.is === 'gauge' && gaugeGiven) note.kind = note.kind ?? 'talk';
      else workSaid(build, flow, i, used, one, note);
      build.castOnUnread &&= build.part === undefined || isDone(build.part);
      if (!begins) tellNothingOn(one, note);
      // its rows are those of a piece whose cast-on nobody understood
      else if (build.castOnUnread && one.said.statement.is === 'row' && note.faults.length === 0)
        tellNothing(one, note);
    }
    noteUnread(build, one, note, had);
    const full = fullNow(build);
    if (full) note.faults.push({ ...full, at: { line: build.line } });
    if (build.part) note.after = build.part.live;
  }
  tellAnnounced(build);
  tellHoles(build);
  if (build.begun.length > 0) tellStripes(flow, notes);
  return flow;
}

/** What she may mend by saying how many rows it is: each sentence once, with the rows that it was taken for. */
function noteUnread(
  build: Build,
  one: Flow,
  note: LineNotes,
  had: { readonly faults: number; readonly part: PartBuild | undefined; readonly rows: number },
): void {
  const { part } = build;
  const { span } = one;
  const mended = one.is === 'own words' && one.mended;
  const found = note.faults.slice(had.faults);
  noteFollowing(build, found, note, one);
  if (!mended && found.every(({ code }) => NOTICES.has(code))) return;
  if (build.piece) build.piece.unreadAt = build.at;
  const { defining } = build;
  if (!mended && defining && defining.rows.size > 0)
    defining.unread ??= one.is === 'own words' ? one.from : one.said.line;
  if (!mended && !build.unreadLines.has(one.words))
    build.unreadLines.set(one.words, one.is === 'own words' ? one.from : one.said.line);
  if (span === undefined) return;
  const at = note.unread.findIndex(({ line, column }) => line === span.line && column === span.column);
  const made = (part?.rows.length ?? 0) - (part === had.part ? had.rows : 0);
  const rows = made + (note.unread[at]?.rows ?? 0);
  note.unread[at < 0 ? note.unread.length : at] = { ...span, words: one.words, rows, after: part?.live };
}

/** Whether the line that ends here is a note with its words behind it. */
function notesAt(flow: readonly Flow[], end: number): boolean {
  const { line } = flow[end] ?? {};
  for (let i = end; i >= 0 && flow[i]?.line === line; i -= 1) {
    const one = flow[i] as Flow;
    if (one.is === 'said' && one.said.statement.is === 'heading')
      return i < end && means(one.said.statement.title.words.split(' ')[0], 'note of a line');
  }
  return false;
}

function workSaid(
  build: Build,
  flow: readonly Flow[],
  i: number,
  used: Set<number>,
  here: Extract<Flow, { is: 'said' }>,
  note: LineNotes,
): void {
  const { said } = here;
  const { statement } = said;
  note.kind = kindOf(said, note.kind);
  // what is kept, or slipped, from here on is an order wherever it stands
  if (inNote(build) && (statement.is === 'borders' || statement.is === 'slips')) build.talk = false;
  if (
    build.talk &&
    statement.is !== 'heading' &&
    statement.is !== 'cast on' &&
    statement.is !== 'pick up' &&
    statement.is !== 'gauge' &&
    statement.is !== 'multiple' &&
    !(statement.is === 'even' && statement.wholly) &&
    !(headsNote(build) && isForAll(statement))
  ) {
    note.kind = 'talk';
    // 'Note: keep 4 sts at each end in garter st throughout' is an order, and nobody knows for which pieces
    if (statement.is === 'borders' && build.part === undefined) tellNothing(here, note);
    else if (inNote(build) && makesRows(statement)) note.faults.push(notTaken(said));
    return;
  }
  const { part: now } = build;
  if (now?.rounds && !isDone(now) && makesRows(statement) && statement.is !== 'bind off') {
    workInRounds(build, now, here, note);
    return;
  }
  if (statement.is === 'heading' && statement.piece && build.piece) closePiece(build, build.piece);
  if (makesRows(statement)) joinMeanwhile(build, flow, i, used);
  if (makesRows(statement) && statement.is !== 'as for') build.title = undefined;
  tellUnbegun(build, here, note);
  tellAnnounced(build, statement);
  const { part: on } = build;
  if (statement.is === 'note' && statement.about === 'divides' && on !== undefined && !isDone(on))
    build.divides = { part: on, note, words: here.words, span: here.span ?? said };
  if (statement.is === 'note' && statement.rows !== undefined && on !== undefined && !isDone(on))
    build.announced = { rows: statement.rows, made: rowsSince(on), line: said.line, note };
  tellDivides(build, statement);
  const rows = build.part?.rows.length ?? 0;
  const part = build.part;
  const ahead = flow.slice(i + 1, i + 6).flatMap((next) => (next.is === 'said' ? [next.said] : []));
  build.inHole = statement.is === 'row' && /button-?\s?hole/i.test(here.words);
  const found = doStatement(build, withCountBehind(said, ahead[0]), ahead);
  if (!found) tellNowhere(flow, i, note);
  build.recent.push(said);
  const holes = build.holes.at(-1);
  if (holes) holes.note ??= note;
  if (found)
    tell(
      build,
      here,
      note,
      found,
      part === build.part &&
        (build.part?.rows.length ?? 0) === rows &&
        (statement.is === 'row' ||
          (statement.is === 'shape' && statement.edge === 'unsaid') ||
          (statement.is === 'groups' && statement.byPurpose === true)),
    );
  if (build.meanwhile.length === 0) {
    for (const check of build.later) check();
    build.later = [];
  }
  if (said.stated !== undefined) compare(build, said.stated, note, said);
}

/** An order of a note is for rows to come, and nobody knows which. */
const notTaken = ({ line, column }: Said): Fault => ({
  ...fault('stitch or repeat expected', { column }),
  at: { line, column },
});

/** What puts stitches on the needle. */
const BEGINS: ReadonlySet<Said['statement']['is']> = new Set(['cast on', 'pick up', 'as for', 'gauge']);

/** A text that casts nothing on and states counts all the same: its rows are no stitch pattern. */
function tellNothingOn(here: Extract<Flow, { is: 'said' }>, note: LineNotes): void {
  const { said } = here;
  const { statement } = said;
  const counts = said.stated !== undefined || statement.is === 'stated' || statement.is === 'bind off';
  if (counts && !note.faults.some(({ code }) => code === 'nothing on the needle')) tellNothing(here, note);
}

/** 'FRONT' and then rows, where the back is still on the needle and nothing is cast on: said once, at the first of them. */
function tellUnbegun(build: Build, here: Extract<Flow, { is: 'said' }>, note: LineNotes): void {
  const { said } = here;
  const { pending, part, piece } = build;
  const { statement } = said;
  if (pending === undefined || pending === build.told || part === undefined || isDone(part)) return;
  if (part.rows.length === 0 || part.parent !== undefined || (piece?.resting.length ?? 0) > 0) return;
  if (!makesRows(statement) || statement.is === 'as for' || statement.is === 'other side') return;
  if (statement.is === 'groups' && statement.work === 'co') return;
  if (!pending.name.split(' ').every((word) => means(word, 'piece with a cast-on of its own'))) return;
  build.told = pending;
  tellNothing(here, note);
}

const tellNothing = ({ said }: Extract<Flow, { is: 'said' }>, note: LineNotes): void => {
  note.faults.push({ ...fault('nothing on the needle'), at: { line: said.line, column: said.column } });
};

/** 'Inc 1 st at each end of every 4th row. When there are 50 sts, …': the shaping goes on until then; '… There are 50 sts' */
function withCountBehind(said: Said, next: Said | undefined): Said {
  const even = next?.statement;
  const open = said.statement.is === 'shape' && said.stated === undefined;
  if (open && even?.is === 'stated') return { ...said, stated: even.stitches };
  return open && even?.is === 'even' && even.fabric === undefined && even.until?.is === 'count'
    ? { ...said, stated: even.until.stitches }
    : said;
}

/** Rounds are said, not flattened: one row in her own words, with the count that the text states. */
function workInRounds(
  build: Build,
  part: PartBuild,
  here: Extract<Flow, { is: 'said' }>,
  note: LineNotes,
): void {
  const { said } = here;
  build.line = said.line;
  note.kind = 'own words';
  if (!note.faults.some(({ code }) => code === 'worked in rounds'))
    note.faults.push({ ...fault('worked in rounds'), at: { line: said.line, column: said.column } });
  makeOwnRow(build, part, here.words, countAfter(build, part, here, said.stated));
  part.fabric = unknownFabric;
  noteCount(build, part, here, note, said.stated);
}

function kindOf(said: Said, before: LineNotes['kind']): LineNotes['kind'] {
  if (before === 'own words') return before;
  const { is } = said.statement;
  if (is === 'heading') return before ?? 'heading';
  if (is === 'note' || is === 'gauge' || is === 'needle') return before ?? 'talk';
  return 'instructions';
}

/** A numbered row that does not come out is worked again in its words: what repeats it is not at fault. */
function forgetRows(build: Build, part: PartBuild, { statement }: Said, words: string): void {
  if (statement.is !== 'row' || part.cycle === undefined) return;
  const { rows } = part.cycle;
  for (const n of statement.label?.rows ?? []) if (rows.has(n)) rows.set(n, unread(build, words, 0));
}

function tell(
  build: Build,
  here: Extract<Flow, { is: 'said' }>,
  note: LineNotes,
  found: Fault,
  rowFailed: boolean,
): void {
  const { said } = here;
  const { part } = build;
  note.faults.push({ ...found, at: { line: said.line, column: said.column, ...found.at } });
  if (!rowFailed || NOTICES.has(found.code)) return;
  // a row that does not come out stays in the plan with the count that the text states
  if (!part || isDone(part)) return;
  makeOwnRow(build, part, here.words, countAfter(build, part, here, said.stated));
  forgetRows(build, part, said, here.words);
  if (said.stated === undefined) noteCount(build, part, here, note);
  // it is compared as every count that is stated, and says nothing of what came before
  else part.uncounted = undefined;
}
