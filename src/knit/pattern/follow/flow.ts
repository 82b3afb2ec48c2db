import type { Fault, FaultCode } from '../../fault.ts';
import type { Flow } from '../say/flow.ts';
import type { Said } from '../say/statement.ts';
import type { Build } from './build/build.ts';
import { fullNow } from './build/full.ts';
import { makeOwnRow } from './build/make-row.ts';
import type { LineNotes } from './build/notes.ts';
import { isDone } from './build/part.ts';
import { closePiece } from './other-side.ts';
import { countDiffers, doStatement, makesRows, startMeanwhile } from './statement.ts';

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
  flow: readonly Flow[],
  notes: readonly LineNotes[],
  gaugeGiven: boolean,
): void {
  const used = new Set<number>();
  let line = -1;
  for (let i = 0; i < flow.length; i += 1) {
    const one = flow[i] as Flow;
    const note = notes[one.line] as LineNotes;
    if (one.line !== line) {
      build.recent = [];
      line = one.line;
    }
    if (note.before === undefined && build.part && !isDone(build.part)) note.before = build.part.live;
    if (build.full) note.kind = note.kind ?? 'talk';
    else if (one.is === 'own words') workOwnWords(build, one, note);
    else if (!used.has(i)) {
      if (one.said.statement.is === 'gauge' && gaugeGiven) note.kind = note.kind ?? 'talk';
      else workSaid(build, flow, i, used, one, note);
    }
    const full = fullNow(build);
    if (full) note.faults.push({ ...full, at: { line: build.line } });
    if (build.part) note.after = build.part.live;
  }
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
  if (
    build.talk &&
    statement.is !== 'heading' &&
    statement.is !== 'cast on' &&
    statement.is !== 'pick up' &&
    statement.is !== 'gauge' &&
    statement.is !== 'multiple'
  ) {
    note.kind = 'talk';
    return;
  }
  if (statement.is === 'heading' && statement.piece && build.piece) closePiece(build, build.piece);
  if (makesRows(statement)) joinMeanwhile(build, flow, i, used);
  if (makesRows(statement) && statement.is !== 'as for') build.title = '';
  const rows = build.part?.rows.length ?? 0;
  const part = build.part;
  const ahead = flow.slice(i + 1, i + 6).flatMap((next) => (next.is === 'said' ? [next.said] : []));
  const found = doStatement(build, said, ahead);
  build.recent.push(said);
  if (found)
    tell(
      build,
      here,
      note,
      found,
      part === build.part && (build.part?.rows.length ?? 0) === rows && statement.is === 'row',
    );
  if (build.meanwhile.length === 0) {
    for (const check of build.later) check();
    build.later = [];
  }
  if (said.stated !== undefined) compare(build, said.stated, note, said);
}

function kindOf(said: Said, before: LineNotes['kind']): LineNotes['kind'] {
  if (before === 'own words') return before;
  const { is } = said.statement;
  if (is === 'heading') return before ?? 'heading';
  if (is === 'note' || is === 'gauge' || is === 'needle') return before ?? 'talk';
  return 'instructions';
}

/** 'AT THE SAME TIME …' further on in the line, or at the head of the next, begins with this statement. */
function joinMeanwhile(build: Build, flow: readonly Flow[], i: number, used: Set<number>): void {
  const here = flow[i] as Flow;
  for (let j = i + 1; j < Math.min(flow.length, i + 14); j += 1) {
    const next = flow[j] as Flow;
    const sameLine = next.line === here.line;
    const headOfNext = next.line === here.line + 1 && flow[j - 1]?.line !== next.line;
    if (next.is !== 'said' || !(sameLine || headOfNext)) return;
    if (next.said.statement.is === 'heading') return;
    if (next.said.statement.is !== 'at the same time' || used.has(j)) continue;
    const shape = flow[j + 1];
    if (shape?.is === 'said' && startMeanwhile(build, shape.said, next.said.statement.after)) {
      used.add(j);
      used.add(j + 1);
    }
    if (headOfNext) return;
  }
}

function tell(
  build: Build,
  here: Extract<Flow, { is: 'said' }>,
  note: LineNotes,
  found: Fault,
  rowFailed: boolean,
): void {
  const { said } = here;
  note.faults.push({ ...found, at: { line: said.line, column: said.column, ...found.at } });
  if (!rowFailed || NOTICES.has(found.code)) return;
  // a row that does not come out stays in the plan with the count that the text states
  const { part } = build;
  if (!part || isDone(part)) return;
  makeOwnRow(build, part, here.words, said.stated ?? part.live);
  note.asksCount = note.asksCount || said.stated === undefined;
}

/** A count that the text states against the one that the instructions leave. */
function compare(build: Build, stated: number, note: LineNotes, said: Said): void {
  const { part, piece } = build;
  note.stated.push(stated);
  if (!part) return;
  const sets = [part.live, ...(part.gap ?? [])];
  if (part.parent && part.rows.length <= 1)
    sets.push(
      ...(piece?.resting.filter((one) => one.parent === part.parent).map((one) => one.stitches) ?? []),
    );
  if (sets.includes(stated)) return;
  if (build.meanwhile.length > 0) {
    build.later.push(() => {
      if (build.part === part) contradict(stated, part.live, note, said);
    });
    return;
  }
  contradict(stated, part.live, note, said);
}

function contradict(stated: number, found: number, note: LineNotes, said: Said): void {
  if (stated === found) return;
  const known = note.faults.some(
    (found) =>
      found.code === 'count contradicts' &&
      found.at.line === said.line &&
      found.figures.statedStitches === stated,
  );
  if (!known)
    note.faults.push({ ...countDiffers(stated, found), at: { line: said.line, column: said.column } });
}

const titleOf = (words: string): string =>
  words.replace(/\(.*$/s, '').replace(/[.:,]/g, ' ').replace(/\s+/g, ' ').trim().toLowerCase().slice(0, 40);

/** A short line above rows or a cast-on names what follows. */
function nameNext(build: Build, words: string): void {
  const name = titleOf(words);
  if (name === '' || name.length > 40 || /^\d+$/.test(name)) return;
  build.defining = undefined;
  build.heading = name;
}

function workOwnWords(build: Build, one: Extract<Flow, { is: 'own words' }>, note: LineNotes): void {
  const { part } = build;
  const title = one.short && isDone(part);
  if (build.talk || !one.work || title || (part === undefined && build.defining === undefined)) {
    note.kind = note.kind ?? 'talk';
    if (!build.talk && one.short) build.title = titleOf(one.words);
    if (isDone(part) && !build.talk) nameNext(build, one.words);
    return;
  }
  note.faults.push(one.fault);
  note.kind = 'own words';
  if (part === undefined || isDone(part) || build.defining !== undefined) return;
  build.line = one.from;
  if (makeOwnRow(build, part, one.words, one.stated ?? part.live)) return;
  if (one.stated === undefined) note.asksCount = true;
  else note.stated.push(one.stated);
}
