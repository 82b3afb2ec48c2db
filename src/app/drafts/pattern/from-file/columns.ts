import { type Bit, endOf, type Row, rowsOf } from './page.ts';

/**
 * A page set in columns, parted into what is read one after the other: what stands above the columns, the left one, the
 * right one, what stands below. A table is none: its cells are short, and a row of it is read across.
 */
export function blocksOf(bits: readonly Bit[]): Row[][] {
  const rows = rowsOf(bits);
  const found = widestColumns(rows);
  if (found === undefined) return rows.length === 0 ? [] : [rows];
  const { from, to, x } = found;
  const inside = rows.slice(from, to).flatMap((row) => row.bits);
  return [
    ...blocksOf(rows.slice(0, from).flatMap((row) => row.bits)),
    ...blocksOf(inside.filter((bit) => bit.x < x)),
    ...blocksOf(inside.filter((bit) => bit.x >= x)),
    ...blocksOf(rows.slice(to).flatMap((row) => row.bits)),
  ];
}

interface Columns {
  /** the first of its rows and the one behind its last */
  readonly from: number;
  readonly to: number;
  /** where the gap between the columns lies */
  readonly x: number;
}

interface Gap {
  readonly left: number;
  readonly right: number;
}

/** The most rows one below the other that leave one gap free. */
function widestColumns(rows: readonly Row[]): Columns | undefined {
  let best: Columns | undefined;
  for (let from = 0; from < rows.length; from += 1) {
    if (best && rows.length - from <= best.to - best.from) break;
    const found = columnsFrom(rows, from);
    if (found && found.to - found.from > (best ? best.to - best.from : 0)) best = found;
  }
  return best;
}

function columnsFrom(rows: readonly Row[], from: number): Columns | undefined {
  let free: readonly Gap[] = [{ left: -Infinity, right: Infinity }];
  const steps: (readonly Gap[])[] = [];
  for (const row of rows.slice(from)) {
    free = free.flatMap((gap) => across(gap, gapsOf(row))).filter(isWide(row));
    if (free.length === 0) break;
    steps.push(free);
  }
  for (let to = steps.length; to > 0; to -= 1) {
    const within = rows.slice(from, from + to);
    const gap = steps[to - 1]?.find((one) => isGutter(within, one));
    if (gap) return { from, to: from + to, x: gap.right };
  }
  return undefined;
}

/** What is free of letters in a row: before its first, between two, after its last. */
function gapsOf({ bits }: Row): Gap[] {
  const ends = [-Infinity, ...bits.map(endOf)];
  const starts = [...bits.map(({ x }) => x), Infinity];
  return ends.map((left, at) => ({ left, right: starts[at] as number }));
}

const across = (gap: Gap, others: readonly Gap[]): Gap[] =>
  others
    .map(({ left, right }) => ({ left: Math.max(gap.left, left), right: Math.min(gap.right, right) }))
    .filter(({ left, right }) => right > left);

/** Narrower than a letter is high, it is only a wide gap between words. */
const isWide =
  ({ bits }: Row) =>
  ({ left, right }: Gap): boolean =>
    right - left >= Math.max(...bits.map(({ size }) => size));

/** A column has some lines, and a third of them is longer than a cell of a table. Lines; letters. */
const FEWEST_LINES = 4;
const LONGER_THAN_A_CELL = 20;

function isGutter(rows: readonly Row[], { left, right }: Gap): boolean {
  // a margin of the page
  if (!Number.isFinite(right - left)) return false;
  const isColumn = (is: (bit: Bit) => boolean) => {
    const lengths = rows
      .map(({ bits }) => bits.filter(is).reduce((sum, { text }) => sum + text.length, 0))
      .filter((length) => length > 0);
    const long = lengths.filter((length) => length >= LONGER_THAN_A_CELL);
    return lengths.length >= FEWEST_LINES && long.length >= lengths.length / 3;
  };
  return isColumn((bit) => endOf(bit) <= left) && isColumn((bit) => bit.x >= right);
}
