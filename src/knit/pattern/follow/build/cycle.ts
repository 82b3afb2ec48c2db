import { expandRow } from '../../../row/expand.ts';
import type { Item } from '../../../row/read/notation.ts';
import type { Side, Step } from '../../../row/step.ts';
import { type MadeRow, nextSide, type PartBuild } from './build.ts';
import { numberedRows, orderedRows, seenFabric } from './fabric.ts';
import type { Face } from './fabric-state.ts';
import { looksOf } from './spell.ts';

/** Rows numbered by the text become the pattern 'as established' once none of them changes the count. */
export function useCycle(part: PartBuild): void {
  const { cycle } = part;
  if (!cycle || cycle.lost) return;
  const rows = orderedRows(cycle);
  const made = part.rows.slice(cycle.first);
  if (rows.length < 2 || !bringsBack(made, rows.length)) return;
  const faces = part.fabric.is === 'rows' ? part.fabric.faces : [];
  part.fabric = { is: 'rows', rows, label: 'pattern', faces };
  part.fabricRow = (made.length + (cycle.passed ?? 0)) % rows.length;
  part.cycle = undefined;
  if (!cycle.passed) rememberFaces(part, cycle.first);
  simplify(part);
}

/** Rows that leave the count alone, or change it and bring it back as often as they are worked. */
export const bringsBack = (made: readonly MadeRow[], length: number): boolean =>
  made.every((row) => row.before === row.after) ||
  (made.length % length === 0 &&
    made.every((row, i) => row.own === undefined && (i % length > 0 || row.before === made[0]?.before)) &&
    made.at(-1)?.after === made[0]?.before);

/** Rows that are all one face are a fabric that has a name. */
export function simplify(part: PartBuild): void {
  const { fabric } = part;
  if (fabric.is !== 'rows' || fabric.rows.length > 2) return;
  const faces = fabric.rows.map((_, i) => plainFace(fabric.faces[i]?.looks));
  if (faces.some((face) => face === undefined)) return;
  // one row that is worked on both sides
  const [only = []] = fabric.rows;
  if (
    fabric.rows.length === 1 &&
    only.some((item) => !('work' in item) || item.work !== 'k' || 'appear' in item)
  )
    return;
  const name =
    fabric.rows.length === 1
      ? 'garter'
      : faces.every((face) => face === 'k')
        ? 'stocking'
        : faces.every((face) => face === 'p')
          ? 'reverse stocking'
          : 'garter';
  part.fabric = seenFabric(name);
  part.fabricRow = nextSide(part) === 'RS' ? 0 : 1;
}

const plainFace = (looks: string | undefined): string | undefined =>
  looks === undefined || looks === ''
    ? undefined
    : /^k+$/.test(looks)
      ? 'k'
      : /^p+$/.test(looks)
        ? 'p'
        : undefined;

/** How the rows of the cycle looked when they were worked. */
export function rememberFaces(part: PartBuild, first: number): void {
  const { fabric } = part;
  if (fabric.is !== 'rows') return;
  facesOf(part, first, fabric.rows.length).forEach((face, i) => {
    if (face !== undefined) fabric.faces[i] = face;
  });
}

/** How so many rows of the part looked, from its row `first` (from 0) on. */
export const facesOf = (part: PartBuild, first: number, count: number): (Face | undefined)[] =>
  part.rows.slice(first, first + count).map((row) => {
    const looks = row.own === undefined ? looksOfRow(row.steps, row.before, row.side) : undefined;
    return looks === undefined ? undefined : { column: part.column, looks };
  });

const looksOfRow = (steps: readonly Step[], before: number, side: Side): string | undefined =>
  looksOf(expandRow(steps, before), side);

/** The rows from one number to another, as far as they are known. */
export function rowsBetween(part: PartBuild, from: number, to: number): (readonly Item[])[] {
  const { cycle } = part;
  if (cycle) {
    const own = numberedRows(cycle).flatMap(({ n, items }) => (n >= from && n <= to ? [items] : []));
    // 'Rows 1 and 2 … rep rows 1 and 2 5 times. Row 13: … Rep rows 1 and 2 once'
    return own.length > 0 ? own : known(cycle.earlier ?? [], from, to);
  }
  return known(allRows(part), from, to);
}

const known = (rows: ReturnType<typeof allRows>, from: number, to: number): (readonly Item[])[] =>
  rows.slice(from - 1, to).filter((items) => items !== undefined);

/** The rows of the fabric on the needle by their number; 'Row 13: …' leaves the first ones as they are. */
export function allRows({ cycle, fabric }: PartBuild): readonly (readonly Item[] | undefined)[] {
  if (cycle?.earlier) {
    const all = [...cycle.earlier];
    for (const { n, items } of numberedRows(cycle)) all[n - 1] = items;
    return all;
  }
  if (cycle) return orderedRows(cycle);
  return fabric.is === 'rows' ? (fabric.numbered ?? fabric.rows) : [];
}
