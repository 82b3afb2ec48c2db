import { type Fault, type FaultCode, fault } from '../../fault.ts';
import { means } from '../../row/read/meanings.ts';
import type { Flow } from '../say/flow.ts';
import type { Said } from '../say/statement.ts';
import type { Build, PartBuild } from './build/build.ts';
import type { LineNotes } from './build/notes.ts';
import { makesRows } from './makes-rows.ts';

/** What may stand among rows that are spelled out. */
const SPELLED: ReadonlySet<Said['statement']['is']> = new Set([
  'row',
  'repeat rows',
  'note',
  'named rows',
  'next side',
  'needle',
  'yarn',
  'stated',
  'star',
  'stars',
]);

export const rowsSince = (part: PartBuild): (() => number) => {
  const from = part.rows.length;
  return () => part.rows.length - from;
};

/** 'Work 10 rows as follows:' and then two rows: whether they are worked again nobody says. */
export function tellAnnounced(build: Build, next?: Said['statement']): void {
  const { announced } = build;
  if (announced === undefined || (next && SPELLED.has(next.is))) return;
  build.announced = undefined;
  const worked = announced.made();
  if (worked === announced.rows) return;
  announced.note.faults.push({
    ...fault('rows already worked', { workedRows: worked, rows: announced.rows }),
    at: { line: announced.line },
  });
}

/** 'Divide for fronts and back.' and then rows on all the stitches: nobody has said who is worked. */
export function tellDivides(build: Build, statement: Said['statement']): void {
  const { divides, part } = build;
  const { is } = statement;
  if (divides === undefined || !(makesRows(statement) || is === 'hold' || is === 'work on')) return;
  build.divides = undefined;
  if (divides.part !== part || part.gap || !WHOLE_ROWS.has(is)) return;
  const { note, words, span } = divides;
  const { line, column } = span;
  note.unread.push({ ...span, words, rows: 0, after: part.live });
  note.faults.push({ ...fault('stitch or repeat expected', { column }), at: { line, column } });
}

/** 'Stripe sequence: 2 rows A, 4 rows B', and no line below names a stripe or a yarn: in which rows it is worked nobody says. */
export function tellStripes(flow: readonly Flow[], notes: readonly LineNotes[]): void {
  const listed = flow.filter((one) => one.is === 'said' && listsStripes(one.said.statement)).at(-1);
  const below = listed ? flow.slice(flow.indexOf(listed)) : [];
  if (listed?.is !== 'said' || below.some((one) => one.line !== listed.line && namesYarn(one))) return;
  const { line, column } = listed.said;
  notes[listed.line]?.faults.push({ ...fault('place not known'), at: { line, column } });
}

const listsStripes = (statement: Said['statement']): boolean =>
  statement.is === 'stripes' && statement.listed === 'anew' && statement.of?.length !== 0;

const namesYarn = (one: Flow): boolean =>
  one.words.split(/\P{L}+/u).some((word) => means(word.toLowerCase(), 'colour by name')) ||
  (one.is === 'said' && (one.said.statement.is === 'yarn' || 'yarn' in one.said.statement));

/** 'Rep these 2 rows.' and then something else: how often nobody says. */
export function tellNowhere(flow: readonly Flow[], at: number, note: LineNotes): void {
  const here = flow[at];
  if (here?.is !== 'said' || here.said.statement.is !== 'repeat rows') return;
  const { last, times, until } = here.said.statement;
  if (last === undefined || times !== undefined || until !== undefined) return;
  const next = flow.slice(at + 1).find((one) => one.is !== 'said' || !PASSED.has(one.said.statement.is));
  if (next?.is !== 'said' || !WORKED_ONCE.has(next.said.statement.is)) return;
  const { line, column } = here.said;
  note.faults.push({ ...fault('place not known'), at: { line, column } });
}

const PASSED: ReadonlySet<Said['statement']['is']> = new Set(['note', 'stated', 'needle', 'yarn']);
const WORKED_ONCE: ReadonlySet<Said['statement']['is']> = new Set(['rows', 'bind off', 'hold']);

const WHOLE_ROWS: ReadonlySet<Said['statement']['is']> = new Set([
  'even',
  'rows',
  'shape',
  'evenly',
  'repeat rows',
]);

/** What a sentence that was not understood brings about in good ones behind it. */
const FOLLOWING: ReadonlySet<FaultCode> = new Set<FaultCode>([
  'nothing on the needle',
  'nothing rests',
  'stitches left over',
  'not enough stitches',
  'repeat does not come out',
  'count contradicts',
  'bound off too many',
  'no rows to repeat',
]);

/** Faults of a piece behind a sentence that was not understood follow from it, until a count shows that all is well. */
export function noteFollowing(build: Build, found: readonly Fault[], note: LineNotes, one: Flow): void {
  const { piece, pending, unreadAt } = build;
  if (found.length === 0) return;
  const line = one.is === 'own words' ? one.from : one.said.line;
  if (
    unreadAt !== undefined &&
    unreadAt.piece === piece &&
    unreadAt.pending === pending &&
    unreadAt.note !== note &&
    found.every(({ code }) => FOLLOWING.has(code))
  ) {
    note.follows ??= unreadAt.line;
    note.following += found.length;
  } else if (one.is !== 'own words' || !one.beside) build.unreadAt = { piece, pending, note, line };
}
