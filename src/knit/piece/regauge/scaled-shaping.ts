import { fault, ok, type Result, refuse } from '../../fault.ts';
import type { Shaping } from '../recipe.ts';
import type { Scale } from './scale.ts';
import { scaledGroups } from './scaled-groups.ts';
import { scaledRows } from './scaled-rows.ts';
import type { Amounts } from './shaped-to.ts';

/** What is spread across a row is changed by the section that it lies in. */
export type AlongEdges = Exclude<Shaping, { readonly kind: 'across' }>;

/**
 * A section's shaping in the new stitches and rows, without 'across', which is reckoned from the counts. What shapes one
 * edge in several rhythms, one after the other, meets in no row.
 * @param amounts how often each is worked, or of groups how many stitches they are in all
 * @param sooner how many rows sooner than by its share a shaping ends
 */
export function scaledShaping(
  shaping: readonly Shaping[],
  scale: Scale,
  rows: number,
  amounts: Amounts,
  sooner: (shaping: Shaping) => number = () => 0,
): Result<AlongEdges[]> {
  const out: AlongEdges[] = [];
  const taken = { right: new Set<number>(), left: new Set<number>() };
  for (const [i, one] of shaping.entries()) {
    const own = { ...scale, rows: scale.rows * (1 - sooner(one) / rows) };
    const made = scaledOne(one, own, rows, amounts[i] ?? 0, isBesideEdge(one, shaping));
    if (!made.ok) return made;
    if (!made.value) continue;
    const found = made.value.kind === 'edge' ? besideOthers(made.value, taken, rows) : ok(made.value);
    if (!found.ok) return found;
    out.push(found.value);
  }
  return ok(out);
}

/** Whether single stitches are shaped at the edge of a shaping's groups too. */
export const isBesideEdge = (one: Shaping, all: readonly Shaping[]): boolean =>
  'groups' in one &&
  all.some((other) => other.kind === 'edge' && (other.edge === 'both' || other.edge === one.edge));

type EdgeShaping = Extract<Shaping, { readonly kind: 'edge' }>;

/** Each of its rows goes to the nearest that nothing else shapes at its edges, on its own side where one is left. */
function besideOthers(
  shaping: EdgeShaping,
  taken: { readonly right: Set<number>; readonly left: Set<number> },
  total: number,
): Result<EdgeShaping> {
  const edges = shaping.edge === 'both' ? (['right', 'left'] as const) : [shaping.edge];
  const isFree = (row: number) => edges.every((edge) => !taken[edge].has(row));
  const all = Array.from({ length: total }, (_, i) => i + 1);
  const rows: number[] = [];
  for (const wanted of shaping.rows) {
    const free = all.filter(isFree);
    const onSide = free.filter((row) => (row - wanted) % 2 === 0);
    const [row] = [...(onSide.length > 0 ? onSide : free)].sort(
      (a, b) => Math.abs(a - wanted) - Math.abs(b - wanted),
    );
    if (row === undefined)
      return refuse(
        fault('shaping does not fit', { rows: total, times: shaping.rows.length, mostTimes: rows.length }),
      );
    for (const edge of edges) taken[edge].add(row);
    rows.push(row);
  }
  return ok({ ...shaping, rows: rows.sort((a, b) => a - b) });
}

function scaledOne(
  shaping: Shaping,
  scale: Scale,
  rows: number,
  amount: number,
  isCorner: boolean,
): Result<AlongEdges | undefined> {
  switch (shaping.kind) {
    case 'edge': {
      const laid = scaledRows(shaping.rows, amount, scale, rows);
      return laid.ok ? ok({ ...shaping, rows: laid.value }) : laid;
    }
    case 'middle': {
      // the mitre goes with the band's own rows: as many decreases as before, as far as its rows allow
      const times = Math.max(1, Math.min(rows, Math.round(shaping.rows.length * scale.rows)));
      const laid = scaledRows(shaping.rows, times, scale, rows);
      return laid.ok ? ok({ ...shaping, rows: laid.value }) : laid;
    }
    case 'bind off':
    case 'cast on':
      return ok({ ...shaping, groups: scaledGroups(shaping.groups, scale, rows, amount, isCorner) });
    case 'turn':
      return ok({ ...shaping, groups: scaledGroups(shaping.groups, scale, rows) });
    case 'across':
      return ok(undefined);
  }
}
