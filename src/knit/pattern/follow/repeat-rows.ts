import { type Fault, fault } from '../../fault.ts';
import type { Item } from '../../row/read/notation.ts';
import type { Statement } from '../say/statement.ts';
import type { Build, MadeRow, PartBuild, PieceBuild } from './build/build.ts';
import { allRows, bringsBack, rememberFaces, rowsBetween, simplify } from './build/cycle.ts';
import { makeFabricRow } from './build/fabric-row.ts';
import { makeOwnRow, makeWrittenRow } from './build/make-row.ts';
import { MOST_ROWS } from './build/push-row.ts';
import { endingOn, targetOf } from './build/target.ts';
import { flushCycle } from './row.ts';

/** 'rep rows 1–4 until …', 'rep last 2 rows 5 times'. */
export function doRepeatRows(
  build: Build,
  piece: PieceBuild,
  part: PartBuild,
  said: Extract<Statement, { is: 'repeat rows' }>,
): Fault | undefined {
  const wrong = flushCycle(build, piece, part);
  if (wrong) return wrong;
  completeCycle(build, piece, part);
  const again = rowsAgain(part, said);
  // 'repeat these 10 rows' where five are there: the others were not understood
  const fewer = said.last !== undefined && part.parent === undefined && again.length < said.last;
  if (again.length === 0 || fewer) return fault('no rows to repeat');
  const { from } = said;
  const to = said.to ?? from;
  // some of them nobody knows
  if (from !== undefined && to !== undefined && part.cycle && again.length <= to - from)
    return fault('row not known', { rowName: `${from}-${to}` });
  if (said.times === undefined && said.until === undefined) {
    keepAsFabric(part, again);
    return undefined;
  }
  const limit = limitOf(build, piece, part, said, again.length);
  if (limit === undefined) return fault('place not known');
  const startFaces = part.rows.length;
  for (let i = 0; i < Math.min(limit.rows, MOST_ROWS); i += 1) {
    if (limit.count !== undefined && reachedCount(part, limit.count, again, i)) break;
    const one = again[i % again.length] as Again;
    const trouble = one(build, part);
    if (trouble) return trouble;
    if (part.live === 0) break;
  }
  keepAsFabric(part, again, part.rows.length - startFaces);
  if (from === undefined && said.to !== undefined) numberLast(part, startFaces, said.to);
  limit.close?.();
  if (limit.count === undefined || limit.count === part.live) return undefined;
  return fault('count contradicts', { statedStitches: limit.count, foundStitches: part.live });
}

type Again = ((build: Build, part: PartBuild) => Fault | undefined) & { items?: readonly Item[] };

/** 'row 2 and every alternate row' closes a cycle that ends on an odd row before it is repeated. */
function completeCycle(build: Build, piece: PieceBuild, part: PartBuild): void {
  const { cycle } = part;
  if (cycle?.everyOther && cycle.done % 2 === 1) {
    cycle.rows.set(cycle.done + 1, cycle.everyOther);
    cycle.last = Math.max(cycle.last, cycle.done + 1);
    flushCycle(build, piece, part);
  }
}

function rowsAgain(part: PartBuild, said: Extract<Statement, { is: 'repeat rows' }>): Again[] {
  if (said.from !== undefined) {
    return rowsBetween(part, said.from, said.to ?? said.from).map((items) => {
      const made = part.rows.find((row) => row.items === items);
      return made ? inItsYarn(made, withItems(items)) : withItems(items);
    });
  }
  const n = said.just
    ? spelledJust(part)
    : said.last === 0
      ? part.rows.length - (part.cycle?.first ?? Math.max(0, part.rows.length - 2))
      : (said.last ?? 1);
  return part.rows.slice(Math.max(0, part.rows.length - n)).map((row) => inItsYarn(row, rowAgain(row)));
}

/** The numbered rows right above; else a row, or two, that stand alone there. */
function spelledJust({ cycle, rows }: PartBuild): number {
  if (cycle && cycle.first + cycle.done === rows.length) return cycle.done;
  let n = 0;
  for (let row = rows.at(-1); isSpelled(row) && row.yarn === rows.at(-1)?.yarn; row = rows.at(-n - 1)) n += 1;
  return n > 2 ? 0 : n;
}

const isSpelled = (row: MadeRow | undefined): row is MadeRow =>
  row?.items !== undefined && row.own === undefined && row.kind === 'row';

/** A stripe is worked again in its own yarn. */
function inItsYarn({ yarn }: MadeRow, again: Again): Again {
  const one: Again = (build, part) => {
    part.yarn = yarn;
    return again(build, part);
  };
  return again.items === undefined ? one : Object.assign(one, { items: again.items });
}

const withItems = (items: readonly Item[]): Again =>
  Object.assign((build: Build, part: PartBuild) => makeWrittenRow(build, part, items), { items });

function rowAgain(row: MadeRow): Again {
  if (row.items) return withItems(row.items);
  // what was not understood is worked again in its own words
  const { own } = row;
  if (own !== undefined)
    return (build, part) => makeOwnRow(build, part, own, Math.max(0, part.live + row.after - row.before));
  return (build, part) => {
    part.fabric = row.fabric;
    part.borders = row.borders;
    return makeFabricRow(build, part, row.edits, row.kind === 'stretch' ? 'even' : row.kind);
  };
}

/** The number of the first of the last rows, where they were numbered. */
function lastAre({ cycle, rows }: PartBuild, length: number): number | undefined {
  return cycle !== undefined && cycle.first + cycle.done === rows.length
    ? cycle.done - length + 1
    : undefined;
}

interface Limit {
  readonly rows: number;
  readonly count?: number;
  readonly close?: () => void;
}

function limitOf(
  build: Build,
  piece: PieceBuild,
  part: PartBuild,
  said: Extract<Statement, { is: 'repeat rows' }>,
  length: number,
): Limit | undefined {
  if (said.times !== undefined) return { rows: said.times * length };
  const { until } = said;
  if (until === undefined) return { rows: 0 };
  if (until.is === 'count') return { rows: MOST_ROWS, count: until.stitches };
  const stripe = said.endYarn === undefined ? undefined : lastOfYarn(part, length, said.endYarn);
  if (stripe === 0) return undefined;
  const { endRow = stripe, ...end } = { endRow: undefined, ...until };
  const target = targetOf(build, piece, part, end);
  const from = stripe === undefined ? (said.from ?? lastAre(part, length)) : 1;
  if (target === undefined || (endRow !== undefined && from === undefined)) return undefined;
  const { stretch } = target;
  // 'rep these 2 rows until there are 8 rows' on a piece that has more: 8 of these
  if (until.is === 'rows in all' && target.rows === 0) return { rows: Math.max(0, until.n - length) };
  const ending =
    endRow === undefined ? target.rows : endingOn(endRow - (from ?? 1) + 1, target.rows, 0, length);
  // as long as she likes is once at least
  const rows = ending === 0 && until.is === 'open' ? length : ending;
  if (stretch === undefined) return { rows };
  const first = part.rows.length;
  part.closed = true;
  return {
    rows,
    close: () => {
      const section = part.sections.at(-1);
      if (section && section.first === first) section.stretch = stretch;
      for (let i = first; i < part.rows.length; i += 1)
        part.rows[i] = { ...(part.rows[i] as MadeRow), kind: 'stretch' };
      part.closed = true;
    },
  };
}

/** Which of the last rows, counted from 1, is the last in that yarn before another comes; 0 where there is none. */
function lastOfYarn({ rows }: PartBuild, length: number, yarn: string): number {
  const last = rows.slice(-length).map((row) => row.yarn === yarn);
  return last.findIndex((is, i) => is && !last[(i + 1) % length]) + 1;
}

/** The count is there, or another round of the rows would go past it. */
function reachedCount(part: PartBuild, count: number, again: readonly Again[], i: number): boolean {
  if (part.live === count) return true;
  if (i === 0 || i % again.length !== 0) return false;
  const before = part.rows[part.rows.length - again.length]?.before ?? part.live;
  const change = part.live - before;
  if (change === 0) return true;
  return change < 0 ? part.live + change < count : part.live + change > count;
}

/** 'Rows 35-38: repeat last 2 rows …': they have numbers of their own, by which they may be worked again. */
function numberLast(part: PartBuild, first: number, last: number): void {
  const { cycle } = part;
  if (cycle === undefined) return;
  part.rows.slice(first).forEach(({ items }, i, made) => {
    if (items) cycle.rows.set(last - made.length + 1 + i, items);
  });
  cycle.last = Math.max(cycle.last, last);
  cycle.done = cycle.last;
}

/** Rows that leave the count as it was are the pattern from here on. */
function keepAsFabric(part: PartBuild, again: readonly Again[], done = 0): void {
  const rows = again.map((one) => one.items);
  if (rows.some((items) => items === undefined)) return;
  const made = part.rows.slice(Math.max(0, part.rows.length - Math.max(done, again.length)));
  if (!bringsBack(made, rows.length)) return;
  const numbered = allRows(part);
  const some = numbered.length > rows.length ? { numbered } : {};
  part.fabric = { is: 'rows', rows: rows as (readonly Item[])[], label: 'pattern', faces: [], ...some };
  part.fabricRow = done % rows.length;
  part.cycle = undefined;
  rememberFaces(part, Math.max(0, part.rows.length - done - rows.length));
  simplify(part);
}
