import { takeCastOn } from '../../row/read/cast-on.ts';
import { attempt, type Cursor, isWord, sees, takePhrase, takeWhole } from '../../row/read/cursor.ts';
import { STS } from '../../row/read/goal.ts';
import type { Token } from '../../row/read/lex.ts';
import { readReversing } from './other-side.ts';
import { takeStated } from './phrase/stated-count.ts';
import type { Said, Statement } from './statement.ts';
import { inGarter } from './while-rows.ts';

/** What is understood as a whole or not at all. */
export const WHOLE: ReadonlySet<Statement['is']> = new Set([
  'even',
  'rows',
  'repeat rows',
  'as for',
  'shape',
  'groups',
  'evenly',
  'other side',
  'repeat named',
]);

/** Whether a mark or a word parts it from what stands before. */
export const parted = (c: Cursor, at: number): boolean =>
  isWord(c.tokens[at - 1], ',', ';', '.', 'and', 'then');

/** Whether what is kept is kept beside what was said before it; 'k 8 rows; keep first 6 sts in garter st' goes on from there. */
export const keptMeanwhile = (c: Cursor, at: number, said: readonly Said[]): boolean => {
  const before = said.at(-1)?.statement.is;
  if (before === undefined || !WHOLE.has(before)) return false;
  return !isWord(c.tokens[at], 'keep', 'work') || !isWord(c.tokens[at - 1], ';', '.', 'then');
};

/** What is kept, before what it is kept beside; false where that is spelled out and has no edges to keep. */
export function keepBeside(said: Said[], statement: Statement, token: Token | undefined): boolean {
  const last = said.at(-1) as Said;
  const kept = last.statement.is === 'rows' ? inGarter(last.statement) : last.statement;
  if (kept === undefined || (kept.is !== 'even' && kept.is !== 'shape' && kept.is !== 'groups')) return false;
  said[said.length - 1] = { ...last, statement: kept };
  addBefore(said, statement, token);
  return true;
}

/** 'Knit back and cast on 30 sts': they are cast on at the end of that row. */
export const castsOnBehindRow = (c: Cursor, said: Said[]): boolean =>
  attempt(c, () => {
    const last = said.at(-1);
    if (last?.statement.is !== 'rows' || last.statement.n !== 1 || last.stated !== undefined) return false;
    if (!takeCastOn(c)) return false;
    const stitches = takeWhole(c);
    if (stitches === undefined || stitches < 1 || !takePhrase(c, STS)) return false;
    if (c.at < c.end && !sees(c, '.', ';', '(', '[')) return false;
    const items = [...last.statement.items, { is: 'stitches', work: 'co', times: stitches } as const];
    const stated = takeStated(c);
    const statement = { is: 'row', items } as const;
    said[said.length - 1] = { ...last, statement, ...(stated === undefined ? {} : { stated }) };
    return true;
  });

/** What is said of rows stands before them: 'knit 2 rows in A', 'knit 5 rows, noting first row is WS', 'work 40 rows, making a buttonhole every 12th row'. */
export function placedBefore(c: Cursor, at: number, said: Said[], statement: Statement): boolean {
  const joint = said.at(-1)?.statement;
  const meanwhile =
    joint?.is === 'at the same time' &&
    (statement.is === 'buttonholes' || (joint.after === undefined && onlyFabric(statement)));
  const before = said.at(meanwhile ? -2 : -1)?.statement;
  if (before === undefined || !WHOLE.has(before.is)) return false;
  if (!(meanwhile && onlyFabric(statement)) && !isSaidOf(statement, before, c, at)) return false;
  if (meanwhile) said.pop();
  const last = said.at(-1) as Said;
  // 'omitting buttonholes and reversing shaping'
  if (before.is === 'as for' && readReversing(c))
    said[said.length - 1] = { ...last, statement: { ...before, reversing: true } };
  addBefore(said, statement, c.tokens[at]);
  return true;
}

/** 'Cast on 12 sts at beg of next 2 rows, at the same time change to rib': in what those rows are worked. */
const onlyFabric = (statement: Statement): boolean =>
  statement.is === 'even' && statement.fabric !== undefined && statement.until === undefined;

function isSaidOf(statement: Statement, rows: Statement, c: Cursor, at: number): boolean {
  const joint = c.tokens[at - 1];
  switch (statement.is) {
    case 'yarn':
      return !parted(c, at);
    case 'work on':
      // 'knit 10 rows | on the first 26 sts'; 'cont in garter st on these 26 sts | until …' goes on
      return !parted(c, at) && (rows.is === 'rows' || (rows.is === 'even' && rows.until !== undefined));
    case 'next side':
    case 'slips':
      return true;
    case 'buttonholes':
      return !isWord(joint, 'then', ';');
    case 'stripes':
      return rows.is === 'even' && rows.until !== undefined && !isWord(joint, 'then');
    default:
      return false;
  }
}

export function addBefore(said: Said[], statement: Statement, token: Token | undefined): void {
  said.splice(-1, 0, { statement, line: token?.line ?? 1, column: token?.column ?? 1 });
}
