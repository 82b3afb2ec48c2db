import { isWord } from '../../row/read/cursor.ts';
import type { Token } from '../../row/read/lex.ts';
import type { Beat } from './how-far.ts';
import type { Said, Statement } from './statement.ts';

type Shape = Extract<Statement, { is: 'shape' }>;

/**
 * 'Work 6 rows, dec 1 st at neck edge on every row': the shaping lies in the rows just said and ends with them. Behind
 * 'then' it follows them. False where the number of its times is open: 5 rows have two or three of every other row.
 */
export function joinRows(said: Said[], tokens: readonly Token[], at: number): boolean {
  const shape = said.at(-1);
  const beside = said.at(-2)?.statement.is === 'at the same time';
  const before = said.at(beside ? -3 : -2)?.statement;
  if (shape?.statement.is !== 'shape' || before === undefined) return true;
  const n = rowsSaid(before);
  const last = shape.statement.beats.at(-1);
  if (n === undefined || last === undefined || ends(last) || isWord(tokens[at - 1], 'then')) return true;
  const rows = n - rowsOf(shape.statement.beats.slice(0, -1));
  const first = last.first ?? last.every;
  if (last.every === 2 && last.first === undefined && rows % 2 === 1) return false;
  const times = Math.max(0, Math.floor((rows - first) / last.every) + 1);
  const statement: Shape = {
    ...shape.statement,
    beats: [...shape.statement.beats.slice(0, -1), { ...last, times }],
  };
  const knitted = before.is === 'rows' ? inGarter(before) : before;
  if (knitted === undefined) return false;
  said.splice(beside ? -3 : -2, 1, { ...(said.at(beside ? -3 : -2) as Said), statement: knitted });
  said.splice(
    -1,
    1,
    ...(beside ? [] : [{ ...shape, statement: { is: 'at the same time' } as const, within: true }]),
    {
      ...shape,
      statement,
    },
  );
  return true;
}

export const rowsSaid = (said: Statement): number | undefined =>
  said.is === 'rows' ? said.n : said.is === 'even' && said.until?.is === 'rows' ? said.until.n : undefined;

/** 'Knit 6 rows, dec …': rows of garter stitch, since its edges are shaped. */
export function inGarter({ n, items }: Extract<Statement, { is: 'rows' }>): Statement | undefined {
  const [only] = items;
  if (items.length !== 1 || only?.is !== 'stitches to' || only.work !== 'k') return undefined;
  return { is: 'even', fabric: { is: 'named', name: 'garter' }, until: { is: 'rows', n } };
}

const ends = ({ times, toCount, until }: Beat): boolean =>
  times !== undefined || toCount !== undefined || until !== undefined;

const rowsOf = (beats: readonly Beat[]): number =>
  beats.reduce((sum, { first, every, times = 1 }) => sum + (first ?? every) + (times - 1) * every, 0);
