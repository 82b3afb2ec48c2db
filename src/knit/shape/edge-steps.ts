import type { Shaping } from '../piece/recipe.ts';
import type { StepOrder } from './stairs.ts';

/** What an edge does at the start of a pair of rows: `by` is what it adds to the count there. */
export interface EdgeStep {
  /** pair of rows, from 0 */
  readonly pair: number;
  readonly by: number;
  /** bound off or cast on at once, or decreased or increased one by one, on the RS row and then on the WS row too */
  readonly as: 'group' | 'single';
}

/**
 * The steps between stairs. Ordered curves begin and end in groups of two or more; elsewhere two stitches are
 * worked one on the RS and one on the WS row, and only three or more, which no row can take one by one, in a group.
 * @param outward +1 where a higher stair means more stitches (a side edge), −1 where it means fewer (a neck edge)
 */
export function stepsOf(
  stairs: readonly number[],
  start: number,
  order: StepOrder,
  outward: 1 | -1 = 1,
): readonly EdgeStep[] {
  const by = stairs.map((stair, i) => outward * (stair - (stairs[i - 1] ?? start)));
  const head = order === 'falling' || order === 'falling then rising' ? groupsFromStart(by) : 0;
  const tail = order === 'rising' || order === 'falling then rising' ? groupsFromStart([...by].reverse()) : 0;
  return by.flatMap((change, pair): EdgeStep[] => {
    if (change === 0) return [];
    const size = Math.abs(change);
    const inRun = pair < head || pair >= by.length - tail;
    return [{ pair, by: change, as: size > 2 || (size === 2 && inRun) ? 'group' : 'single' }];
  });
}

function groupsFromStart(by: readonly number[]): number {
  const end = by.findIndex((change) => Math.abs(change) < 2);
  return end === -1 ? by.length : end;
}

/** The same edge worked from its other end: what was bound off is cast on. `pairs` is the length of the whole edge. */
export const turned = (steps: readonly EdgeStep[], pairs: number): readonly EdgeStep[] =>
  steps.map(({ pair, by, as }) => ({ pair: pairs - pair, by: -by, as })).reverse();

export const shifted = (steps: readonly EdgeStep[], pairs: number): readonly EdgeStep[] =>
  steps.map((step) => ({ ...step, pair: step.pair + pairs }));

/** What the edge adds to the count before pair `pair` is worked. */
export const changeBefore = (steps: readonly EdgeStep[], pair: number): number =>
  steps.reduce((sum, step) => (step.pair < pair ? sum + step.by : sum), 0);

export interface Edges {
  readonly right: readonly EdgeStep[];
  readonly left: readonly EdgeStep[];
}

/** One row of a stretch with what its edges do. */
interface RowWork {
  group?: { edge: 'right' | 'left'; by: number };
  right?: number;
  left?: number;
}

/** Stitches between a decrease or increase and the edge, where the row is wide enough. */
const INSET = 1;

/**
 * The shaping of the pairs from `from` up to (not with) `to`, rows counted from 1 at `from`.
 * Groups at the right edge lie on the RS row of their pair, at the left edge on the WS row.
 * @param count stitches on the needle before the stretch; decides where a row is too narrow for an inset
 */
export function shapingOf(edges: Edges, from: number, to: number, count: number): Shaping[] {
  const rows = new Map<number, RowWork>();
  const at = (row: number): RowWork => {
    const known = rows.get(row) ?? {};
    rows.set(row, known);
    return known;
  };
  for (const edge of ['right', 'left'] as const) {
    for (const step of edges[edge]) {
      if (step.pair < from || step.pair >= to) continue;
      const first = 2 * (step.pair - from) + 1;
      if (step.as === 'group') at(edge === 'right' ? first : first + 1).group = { edge, by: step.by };
      else for (let i = 0; i < Math.abs(step.by); i += 1) at(first + i)[edge] = Math.sign(step.by);
    }
  }
  return gathered(
    [...rows.entries()].sort(([a], [b]) => a - b),
    count,
  );
}

function gathered(rows: readonly (readonly [number, RowWork])[], start: number): Shaping[] {
  const singles = new Map<
    string,
    { edge: 'right' | 'left' | 'both'; by: number; inset: number; rows: number[] }
  >();
  const groups = new Map<
    string,
    { kind: 'bind off' | 'cast on'; edge: 'right' | 'left'; groups: { row: number; stitches: number }[] }
  >();
  let count = start;
  for (const [row, { group, right, left }] of rows) {
    if (group) {
      const kind = group.by < 0 ? 'bind off' : 'cast on';
      const key = `${kind} ${group.edge}`;
      const list = groups.get(key) ?? { kind, edge: group.edge, groups: [] };
      list.groups.push({ row, stitches: Math.abs(group.by) });
      groups.set(key, list);
    }
    const free = count + Math.min(0, group?.by ?? 0);
    const inset = free >= widthOf(right) + widthOf(left) ? INSET : 0;
    const add = (edge: 'right' | 'left' | 'both', by: number): void => {
      const key = `${edge} ${by} ${inset}`;
      const list = singles.get(key) ?? { edge, by, inset, rows: [] };
      list.rows.push(row);
      singles.set(key, list);
    };
    if (right !== undefined && right === left) add('both', right);
    else {
      if (right !== undefined) add('right', right);
      if (left !== undefined) add('left', left);
    }
    count += (group?.by ?? 0) + (right ?? 0) + (left ?? 0);
  }
  return [
    ...groups.values(),
    ...[...singles.values()].map((single): Shaping => ({ kind: 'edge', ...single, lean: 'mirrored' })),
  ];
}

/** Stitches that a shaping with its inset is worked over. */
const widthOf = (by: number | undefined): number => (by === undefined ? 0 : INSET + (by < 0 ? 2 : 1));
