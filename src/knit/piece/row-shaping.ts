import { type Fault, fault, ok, type Result, refuse } from '../fault.ts';
import type { Side } from '../row/step.ts';
import type { Edge, Section, Shaping } from './recipe.ts';
import type { TurnWay } from './turn-way.ts';

/** What happens at one edge of one row. */
export interface EdgeWork {
  readonly by: number;
  readonly inset: number;
  readonly lean: 'mirrored' | 'plain';
}

/** Everything that shapes one row, gathered from the section's entries. */
export interface RowShaping {
  right?: EdgeWork;
  left?: EdgeWork;
  across?: number;
  /** stitches from the right edge before each centre stitch, at the section's first row */
  middle?: readonly number[];
  boundOff?: { edge: Edge; stitches: number };
  castOn?: { edge: Edge; stitches: number };
  /** more stitches left unworked before the turn */
  turn?: { edge: Edge; stitches: number; way?: TurnWay };
}

/** Shaping of a section by row number (from 1 in the section), or the first thing that cannot be. */
export function shapingByRow(section: Section): Result<ReadonlyMap<number, RowShaping>> {
  const rows = new Map<number, RowShaping>();
  for (const [i, shaping] of section.shaping.entries()) {
    const trouble = addShaping(rows, shaping, section.rows);
    if (trouble) return refuse({ ...trouble, at: { ...trouble.at, field: `shaping ${i + 1}` } });
  }
  return ok(rows);
}

function addShaping(rows: Map<number, RowShaping>, shaping: Shaping, total: number): Fault | undefined {
  switch (shaping.kind) {
    case 'edge':
      return each(shaping.rows, total, (row) => addEdge(at(rows, row), shaping, row));
    case 'across':
      return each([shaping.row], total, (row) => put(at(rows, row), 'across', shaping.by, row));
    case 'middle':
      return each(shaping.rows, total, (row) => addMiddle(at(rows, row), shaping.from, row));
    case 'bind off':
    case 'cast on':
    case 'turn': {
      const field = fieldOf[shaping.kind];
      const { edge, groups } = shaping;
      const way = shaping.kind === 'turn' && shaping.way ? { way: shaping.way } : {};
      return each(
        groups.map((g) => g.row),
        total,
        (row, i) => put(at(rows, row), field, { edge, stitches: groups[i]?.stitches ?? 0, ...way }, row),
      );
    }
  }
}

const fieldOf = { 'bind off': 'boundOff', 'cast on': 'castOn', turn: 'turn' } as const;

function at(rows: Map<number, RowShaping>, row: number): RowShaping {
  const known = rows.get(row) ?? {};
  rows.set(row, known);
  return known;
}

function each(
  list: readonly number[],
  total: number,
  add: (row: number, i: number) => Fault | undefined,
): Fault | undefined {
  for (const [i, row] of list.entries()) {
    if (!Number.isSafeInteger(row) || row < 1 || row > total) {
      return fault('shaping outside the section', { row, rows: total }, { row });
    }
    const trouble = add(row, i);
    if (trouble) return trouble;
  }
  return undefined;
}

function put<K extends keyof RowShaping>(
  row: RowShaping,
  key: K,
  value: NonNullable<RowShaping[K]>,
  n: number,
): Fault | undefined {
  if (row[key] !== undefined) return twice(n);
  row[key] = value;
  return undefined;
}

/** Several centres may be worked in one row, as at the two corners of a square neck; each only once. */
function addMiddle(row: RowShaping, from: number, n: number): Fault | undefined {
  if (row.middle?.includes(from)) return twice(n);
  row.middle = [...(row.middle ?? []), from].sort((a, b) => a - b);
  return undefined;
}

function addEdge(row: RowShaping, shaping: Extract<Shaping, { kind: 'edge' }>, n: number): Fault | undefined {
  const { by, inset, lean } = shaping;
  if (!Number.isSafeInteger(inset) || inset < 0) return fault('bad count', {}, { row: n });
  if (![1, -1, 2, -2].includes(by)) {
    return fault('edge step too large', { byStitches: Math.abs(by) }, { row: n });
  }
  const edges: Edge[] = shaping.edge === 'both' ? ['right', 'left'] : [shaping.edge];
  for (const edge of edges) {
    const trouble = put(row, edge, { by, inset, lean }, n);
    if (trouble) return trouble;
  }
  return undefined;
}

const twice = (row: number): Fault => fault('shaped twice', { row }, { row });

/** Groups are bound off or cast on only where a row begins: at the right edge on RS rows, at the left on WS rows. */
export function groupOnWrongSide(row: RowShaping, side: Side, n: number): Fault | undefined {
  const starts: Edge = side === 'RS' ? 'right' : 'left';
  const group = [row.boundOff, row.castOn].find((g) => g !== undefined && g.edge !== starts);
  if (row.turn?.edge === starts) return turnOnWrongSide(side, starts, n);
  if (!group) return undefined;
  return fault('group on the wrong side', { row: n, side, startsEdge: starts, edge: group.edge }, { row: n });
}

/** A row turns before its end, never where it began. */
const turnOnWrongSide = (side: Side, starts: Edge, row: number): Fault =>
  fault('turn on the wrong side', { row, side, startsEdge: starts }, { row });
