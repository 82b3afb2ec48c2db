import type { Side } from '../../row/step.ts';
import type { Said } from '../count/advice.ts';
import type { Edge, Section, Shaping } from '../recipe.ts';
import { layAnew } from './lay-anew.ts';
import { put } from './put.ts';

/** A way to bring a count that is off back to the plan: sections changed, and in what way. */
export interface Way {
  readonly rest: readonly Section[];
  readonly how: Said;
}

/**
 * Ways to take up `off` stitches too many (or, below zero, too few) in the sections still to be knitted, the best first:
 * by the spread row or the edge shaping that comes next, else by one row of increases or decreases of its own.
 * @param missingAt the edge at which shaping was left out, where that is known
 * @param side of the row that comes next
 */
export function waysToAbsorb(
  rest: readonly Section[],
  off: number,
  missingAt: Edge | undefined,
  side: Side,
): Way[] {
  const shaped = rest.flatMap((section, i) => [
    ...bySpreadRow(section, off).map(at(rest, i, 'spread row')),
    ...byEdges(section, off, missingAt).map(at(rest, i, 'edges')),
  ]);
  return [...shaped, ...byOneRow(rest, off, side)];
}

const at =
  (rest: readonly Section[], index: number, code: string) =>
  (section: Section): Way => ({
    rest: put(rest, index, section),
    how: { code, figures: { section: section.name } },
  });

function bySpreadRow(section: Section, off: number): Section[] {
  return section.shaping.flatMap((one, i) => {
    if (one.kind !== 'across') return [];
    const by = one.by - off;
    if (by * one.by < 0) return [];
    const shaping =
      by === 0 ? section.shaping.filter((other) => other !== one) : put(section.shaping, i, { ...one, by });
    return [{ ...section, shaping }];
  });
}

type EdgeShaping = Extract<Shaping, { kind: 'edge' }>;

/** More or fewer shaping rows at the edges, laid anew over the section. */
function byEdges(section: Section, off: number, missingAt: Edge | undefined): Section[] {
  const entries = section.shaping.filter(
    (one): one is EdgeShaping => one.kind === 'edge' && one.rows.length > 0,
  );
  const model = entries[0];
  if (!model || entries.some((one) => one.by !== model.by)) return [];
  const rowsAt = (edge: Edge) =>
    entries.filter((one) => one.edge === edge || one.edge === 'both').flatMap((one) => one.rows);
  const shares = sharesOf(off, { right: rowsAt('right').length, left: rowsAt('left').length }, missingAt);
  const times = {
    right: rowsAt('right').length - shares.right / model.by,
    left: rowsAt('left').length - shares.left / model.by,
  };
  if (![times.right, times.left].every((n) => Number.isSafeInteger(n) && n >= 0)) return [];
  const old = [...new Set(entries.flatMap((one) => one.rows))];
  const laid = layAnew(old, section.rows, section.rows, Math.max(times.right, times.left));
  if (!laid.ok) return [];
  const others = section.shaping.filter((one) => !entries.includes(one as EdgeShaping));
  return [{ ...section, shaping: [...others, ...edgeEntries(model, laid.value, times)] }];
}

/** Which edge takes how much: the one that lacks it, the only one that is shaped, else both alike. */
function sharesOf(
  off: number,
  rows: Record<Edge, number>,
  missingAt: Edge | undefined,
): Record<Edge, number> {
  if (rows.left === 0 || (missingAt === 'right' && rows.right > 0)) return { right: off, left: 0 };
  if (rows.right === 0 || missingAt === 'left') return { right: 0, left: off };
  const right = Math.ceil(off / 2);
  return { right, left: off - right };
}

/** Both edges together as far as they go together; the rest of the rows at the edge that needs more. */
function edgeEntries(
  model: EdgeShaping,
  rows: readonly number[],
  times: Record<Edge, number>,
): EdgeShaping[] {
  const common = Math.min(times.right, times.left);
  const more: Edge = times.right > times.left ? 'right' : 'left';
  const entry = (edge: EdgeShaping['edge'], list: readonly number[]): EdgeShaping[] =>
    list.length === 0 ? [] : [{ ...model, edge, rows: list }];
  // the edge that is behind catches up first, so that both run alike afterwards
  const extra = rows.length - common;
  return [...entry(more, rows.slice(0, extra)), ...entry('both', rows.slice(extra))];
}

/** How many rows ahead a row of its own may lie. */
const NEAR_ROWS = 12;

/** One row of increases or decreases of its own: the next right-side row that is otherwise plain, else any such row. */
function byOneRow(rest: readonly Section[], off: number, side: Side): Way[] {
  const free: { section: number; row: number; isRight: boolean }[] = [];
  let before = 0;
  rest.forEach((section, i) => {
    const taken = new Set(section.shaping.flatMap(rowsOf));
    for (let row = 1; row <= section.rows && before + row <= NEAR_ROWS; row += 1) {
      if (!taken.has(row))
        free.push({ section: i, row, isRight: ((before + row) % 2 === 1) === (side === 'RS') });
    }
    before += section.rows;
  });
  return [...free.filter((one) => one.isRight), ...free.filter((one) => !one.isRight)].map(
    ({ section: i, row }) => {
      const section = rest[i] as Section;
      const across: Shaping = { kind: 'across', row, by: -off };
      return {
        rest: put(rest, i, { ...section, shaping: [...section.shaping, across] }),
        how: { code: 'one row', figures: { section: section.name, off: Math.abs(off) } },
      };
    },
  );
}

function rowsOf(shaping: Shaping): readonly number[] {
  if (shaping.kind === 'across') return [shaping.row];
  return 'rows' in shaping ? shaping.rows : shaping.groups.map((group) => group.row);
}
