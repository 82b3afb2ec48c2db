import { fault } from '../../fault.ts';
import { means } from '../../row/read/meanings.ts';
import type { Item } from '../../row/read/notation.ts';
import { otherSide, type Side } from '../../row/step.ts';
import type { OwnWords } from '../say/own-words.ts';
import type { Title } from '../say/statement.ts';
import { type Build, nextSide, type PartBuild, type StitchPattern } from './build/build.ts';
import { unknownFabric } from './build/fabric.ts';
import { resolveGap } from './build/gap.ts';
import { makeOwnRow } from './build/make-row.ts';
import type { LineNotes } from './build/notes.ts';
import { isDone } from './build/part.ts';
import { MOST_ROWS } from './build/push-row.ts';
import { countedRows, openStretch } from './build/target.ts';
import { countAfter, noteCount } from './build/uncounted.ts';
import { wantSide } from './build/want-side.ts';
import { defineRow, definingHere } from './define-row.ts';

/** A short line above rows or a cast-on names what follows. */
function nameNext(build: Build, title: Title | undefined): void {
  if (title === undefined || title.number) return;
  build.defining = undefined;
  build.heading = title;
}

/** Behind 'NOTE:', with stitches on the needle: what it orders is of the rows to come. */
export const inNote = (build: Build): boolean => headsNote(build) && !isDone(build.part);

export const headsNote = ({ talk, heading }: Build): boolean =>
  talk && means(heading?.words.split(' ')[0], 'note of a line');

export function workOwnWords(build: Build, one: OwnWords, note: LineNotes): void {
  const { part } = build;
  if (one.mended) {
    workMended(build, one, note);
    return;
  }
  if (one.another && !build.talk && (part === undefined || isDone(part))) {
    note.faults.push(one.fault);
    note.kind = 'own words';
    return;
  }
  // while stitches wait for their turn, or were cast on in words not understood, words that speak of work may be theirs
  const waits =
    (isDone(part) && (build.piece?.resting.length ?? 0) > 0) || (build.castOnUnread && !one.castsOn);
  if (waits && !build.talk && one.hints) {
    note.faults.push(one.fault);
    note.kind = 'own words';
    return;
  }
  // what all of it is worked in is no talk
  if (part === undefined && one.wholly) {
    note.faults.push(one.fault);
    note.kind = 'own words';
    return;
  }
  // all is bound off, and an order is none of a piece that is named
  if (part !== undefined && isDone(part) && one.orders && one.hints && !one.castsOn && !build.talk) {
    note.faults.push(one.fault);
    note.kind = 'own words';
    return;
  }
  const title = one.short && isDone(part) && !one.asks;
  if (!one.work && one.bids && !build.talk && part !== undefined && !isDone(part)) {
    note.faults.push(one.fault);
    note.kind = 'own words';
    return;
  }
  if (one.beside && one.work && !build.talk && part === undefined) {
    note.faults.push(one.fault);
    note.kind = 'own words';
    return;
  }
  if (inNote(build) && one.work && one.asks) {
    note.faults.push(one.fault);
    note.kind = 'own words';
    return;
  }
  const nowhere = part === undefined && build.defining === undefined && !one.asks;
  if (build.talk || !one.work || title || nowhere) {
    note.kind = note.kind ?? 'talk';
    // a piece that its heading named is called so, whatever is told of it before it is begun
    const named = build.piece?.parts.length === 0;
    if (!build.talk && one.short && !named) build.title = one.title;
    if (isDone(part) && !build.talk && one.short && !named) nameNext(build, one.title);
    return;
  }
  note.faults.push(one.fault);
  note.kind = 'own words';
  build.line = one.from;
  const defined = build.defining ?? (beginsPattern(build, one) ? definingHere(build) : undefined);
  if (defined !== undefined) {
    defineUnread(build, defined, one);
    return;
  }
  if (part !== undefined && one.rounds) part.rounds = true;
  if (part === undefined || isDone(part) || one.beside) return;
  // 'K 16 and slip them to a holder.' and then words that nobody reads: of the others
  const parted = part.gap && part.rows.at(-1)?.items?.some(({ is }) => is === 'parting');
  workUnread(build, parted && build.piece ? resolveGap(build, build.piece, part) : part, one, note);
}

/** 'Row 1: …' before there is any piece: the rows below it are the others of its pattern. */
const beginsPattern = ({ part, piece, pending, castOnUnread }: Build, { label, beside }: OwnWords): boolean =>
  part === undefined &&
  piece === undefined &&
  pending === undefined &&
  !castOnUnread &&
  !beside &&
  label?.rows[0] === 1;

function defineUnread(build: Build, pattern: StitchPattern, { label, words }: OwnWords): void {
  if (label && label.rows.length > 0)
    defineRow(build, pattern, { is: 'row', label, items: unread(build, words, 0) });
}

/** As many rows as she says herself, in the line's own words; none where it makes none. */
function workMended(build: Build, one: OwnWords, note: LineNotes): void {
  const { part } = build;
  note.kind = one.rows === 0 ? (note.kind ?? 'talk') : 'own words';
  note.mended = true;
  if (one.rows === 0) return;
  build.line = one.from;
  if (build.defining !== undefined && one.label) {
    defineUnread(build, build.defining, one);
    return;
  }
  if (part === undefined || isDone(part)) {
    note.faults.push({ ...fault('nothing on the needle'), at: { line: one.from } });
    return;
  }
  const before = part.live;
  const after = one.stated ?? before;
  for (let i = 0; i < Math.min(MOST_ROWS, one.rows); i += 1)
    if (makeOwnRow(build, part, one.words, i === one.rows - 1 ? after : part.live)) return;
  rememberNumber(build, part, one, after - before);
  part.fabric = unknownFabric;
  if (one.stated !== undefined) noteCount(build, part, one, note, one.stated);
}

/** The rows that the sentence says it is, in its own words; what is 'as established' after them nobody knows. */
function workUnread(build: Build, part: PartBuild, one: OwnWords, note: LineNotes): void {
  const side = one.label?.side;
  if (side !== undefined && !wantSide(build, part, side))
    note.faults.push({
      ...fault('side differs', { saidSide: side, foundSide: nextSide(part) }),
      at: { line: one.from },
    });
  const stretch = one.open && build.piece ? openStretch(build.piece) : undefined;
  const counted = stretch ? countedRows(build, stretch, one.rows) : one.rows;
  // 'wibble for 9 cm, ending with a WS row' is two rows at least where the next is one of the right side
  const more = stretch && counted === one.rows && one.end !== undefined && one.end !== lastOf(part, counted);
  const rows = Math.min(MOST_ROWS, more ? counted + 1 : counted);
  const after = countAfter(build, part, one, one.stated);
  if (stretch) part.closed = true;
  const first = part.rows.length;
  for (let i = 0; i < rows; i += 1) {
    if (makeOwnRow(build, part, one.words, i === rows - 1 ? after : part.live)) return;
  }
  if (stretch && rows > 0) {
    const section = part.sections.at(-1);
    if (section && section.first === first) section.stretch = stretch;
    part.closed = true;
  }
  if (one.rib && rows > 0) part.unreadRib = first;
  rememberNumber(build, part, one, after - (part.rows[first]?.before ?? after));
  part.fabric = unknownFabric;
  noteCount(build, part, one, note, one.stated);
}

/** The side of the last of so many rows. */
const lastOf = (part: PartBuild, rows: number): Side =>
  rows % 2 === 1 ? nextSide(part) : otherSide(nextSide(part));

/** A numbered row is worked again by its number, in the same words. */
function rememberNumber(build: Build, part: PartBuild, one: OwnWords, change: number): void {
  const numbers = one.label?.rows ?? [];
  const first = numbers[0];
  if (first === undefined) {
    // 'repeat the above for a while': at which row of the pattern it ends nobody knows, unless she says so many
    const { cycle } = part;
    if (cycle && one.rows > 0) cycle.lost ||= !one.mended || one.rows % cycle.rows.size > 0;
    return;
  }
  if (first === 1 || part.cycle === undefined)
    part.cycle = {
      rows: new Map(),
      everyOther: undefined,
      done: first - 1,
      last: 0,
      first: part.rows.length - one.rows,
    };
  const { cycle } = part;
  const items = unread(build, one.words, numbers.length === 1 ? change : 0);
  for (const n of numbers) cycle.rows.set(n, items);
  cycle.last = Math.max(cycle.last, numbers.at(-1) ?? first);
  cycle.done = cycle.last;
}

/** A row that stands for words which were not understood. */
export function unread(build: Build, words: string, change: number): readonly Item[] {
  const items: readonly Item[] = [{ is: 'stitches to', work: 'patt', goal: { left: 'what follows' } }];
  build.unread.set(items, { words, change });
  return items;
}
