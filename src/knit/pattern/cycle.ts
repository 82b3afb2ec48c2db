import { expandRow } from '../row/expand.ts';
import type { Item } from '../row/notation.ts';
import type { Side, Step } from '../row/step.ts';
import type { PartBuild } from './build.ts';
import { orderedRows } from './fabric-state.ts';
import { looksOf } from './spell.ts';

/** Rows numbered by the text become the pattern 'as established' once none of them changes the count. */
export function useCycle(part: PartBuild): void {
  const { cycle } = part;
  if (!cycle) return;
  const rows = orderedRows(cycle);
  const made = part.rows.slice(cycle.first);
  if (rows.length < 2 || made.some((row) => row.before !== row.after)) return;
  const faces = part.fabric.is === 'rows' ? part.fabric.faces : [];
  part.fabric = { is: 'rows', rows, label: 'pattern', faces };
  part.fabricRow = made.length % rows.length;
  part.cycle = undefined;
  rememberFaces(part, cycle.first);
}

/** How the rows of the cycle looked when they were worked. */
function rememberFaces(part: PartBuild, first: number): void {
  const { fabric } = part;
  if (fabric.is !== 'rows') return;
  part.rows.slice(first, first + fabric.rows.length).forEach((row, i) => {
    const looks = row.own === undefined ? looksOfRow(row.steps, row.before, row.side) : undefined;
    if (looks !== undefined) fabric.faces[i] = { column: part.column, looks };
  });
}

const looksOfRow = (steps: readonly Step[], before: number, side: Side): string | undefined => looksOf(expandRow(steps, before), side);

/** The rows from one number to another, as far as they are known. */
export function rowsBetween(part: PartBuild, from: number, to: number): (readonly Item[])[] {
  const { cycle, fabric } = part;
  const known = cycle ? orderedRows(cycle) : fabric.is === 'rows' ? [...fabric.rows] : [];
  return known.slice(from - 1, to);
}
