import type { PlannedPart } from '../planned.ts';
import { type LaidRow, type Lie, laidRows } from './lie.ts';
import type { Slip } from './slip.ts';

/** A look at the fabric that Ridgeline can ask for, from the cheapest to the one that takes longest. */
export const lookCodes = [
  /** rows from the landmark up to the needle */
  'rows above',
  /** a ladder of a stitch that ran down, a hole that was not planned, two stitches in one, or none of them */
  'trace',
  /** stitches along the cast-on edge */
  'cast-on edge',
  /** rows above the last shaping, at each edge */
  'last shaping',
  /** increases or decreases worked in the spread row */
  'spread row',
  /** shapings to be seen at each edge, from the landmark up */
  'edge tallies',
  /** both: shapings at each edge, and rows above the last of them */
  'edges',
] as const;

export type LookCode = (typeof lookCodes)[number];

/** What a look costs her, as the gain in certainty below which it is not worth it. */
const cost: Readonly<Record<LookCode, number>> = {
  'rows above': 0.01,
  trace: 0.01,
  'cast-on edge': 0.02,
  'last shaping': 0.01,
  'spread row': 0.01,
  'edge tallies': 0.02,
  edges: 0.04,
};

export interface Look {
  readonly code: LookCode;
  /** rows of the plan up to the landmark from which she counts */
  readonly landmark: number;
  /** the spread row asked about */
  readonly row?: number;
  /** what she may see, the likeliest first; 'none of these' is always an answer too */
  readonly options: readonly LookOption[];
}

export interface LookOption {
  readonly answer: Seen;
  readonly likelihood: number;
  /** what the plan would show */
  readonly planned: boolean;
}

/** What is seen: numbers by what they count; -1 where there is nothing to count. Of the cast-on what it has beside its plan. */
export type Seen = Readonly<
  Partial<Record<'rows' | 'right' | 'left' | 'rightAbove' | 'leftAbove' | 'spread' | 'castOn', number>>
> & {
  readonly trace?: Lie['trace'];
};

/** The answer that a stretch of knitting gives to a look. */
export function seenAt({ code, landmark, row }: Pick<Look, 'code' | 'landmark' | 'row'>, lie: Lie): Seen {
  switch (code) {
    case 'rows above':
      return { rows: lie.rows.length };
    case 'trace':
      return { trace: lie.trace };
    case 'spread row':
      return { spread: Math.abs(lie.rows[(row ?? 0) - landmark - 1]?.across ?? 0) };
    case 'cast-on edge':
      return { castOn: lie.castOn ?? 0 };
    case 'edge tallies':
      return tallies(lie.rows);
    case 'last shaping':
      return above(lie.rows);
    case 'edges':
      return { ...tallies(lie.rows), ...above(lie.rows) };
  }
}

const tallies = (rows: readonly LaidRow[]): Seen => ({
  right: rows.filter((row) => row.right !== 0).length,
  left: rows.filter((row) => row.left !== 0).length,
});

const above = (rows: readonly LaidRow[]): Seen => ({
  rightAbove: rowsAboveLast(rows, 'right'),
  leftAbove: rowsAboveLast(rows, 'left'),
});

function rowsAboveLast(rows: readonly LaidRow[], edge: 'right' | 'left'): number {
  for (let i = rows.length - 1; i >= 0; i -= 1) if (rows[i]?.[edge] !== 0) return rows.length - 1 - i;
  return -1;
}

export const sameSeen = (a: Seen, b: Seen): boolean => keyOf(a) === keyOf(b);

const keyOf = (seen: Seen): string =>
  Object.entries(seen)
    .map(([what, n]) => `${what} ${n}`)
    .sort()
    .join(', ');

/** The looks that can be asked for over a stretch. */
export function looksAt(
  part: PlannedPart,
  landmark: number,
  to: number,
  slips: readonly Slip[],
): Pick<Look, 'code' | 'landmark' | 'row'>[] {
  const rows = laidRows(part, landmark, Math.min(part.rows.length, to + 6));
  const hasEdges = rows.some((row) => row.right !== 0 || row.left !== 0);
  const spread = slips.find((slip) => slip.cause === 'spread short' || slip.cause === 'spread over')?.rows[0];
  const codes: LookCode[] = [
    'rows above',
    'trace',
    ...(slips.some((slip) => slip.cause === 'cast-on miscounted') ? (['cast-on edge'] as const) : []),
    ...(hasEdges ? (['last shaping', 'edge tallies', 'edges'] as const) : []),
  ];
  return [
    ...codes.map((code) => ({ code, landmark })),
    ...(spread === undefined ? [] : [{ code: 'spread row' as const, landmark, row: spread }]),
  ];
}

/** The look after whose answer the likeliest cause is most surely the true one; undefined where none tells anything. */
export function bestLook(
  slips: readonly Slip[],
  looks: readonly Pick<Look, 'code' | 'landmark' | 'row'>[],
  planned: Lie,
): Look | undefined {
  const total = slips.reduce((sum, slip) => sum + slip.weight, 0);
  if (total === 0) return undefined;
  let best: { gain: number; look: Look } | undefined;
  const now = surest(slips) / total;
  for (const look of looks) {
    const cells = cellsOf(slips, look);
    const sure = cells.reduce((sum, cell) => sum + surest(cell.slips), 0) / total;
    const gain = sure - now - cost[look.code];
    if (gain > (best?.gain ?? 0))
      best = { gain, look: { ...look, options: optionsOf(cells, total, seenAt(look, planned)) } };
  }
  return best?.look;
}

interface Cell {
  readonly seen: Seen;
  readonly slips: Slip[];
}

function cellsOf(slips: readonly Slip[], look: Pick<Look, 'code' | 'landmark' | 'row'>): Cell[] {
  const cells = new Map<string, Cell>();
  for (const slip of slips) {
    const seen = seenAt(look, slip.lie());
    const cell = cells.get(keyOf(seen)) ?? { seen, slips: [] };
    cell.slips.push(slip);
    cells.set(keyOf(seen), cell);
  }
  return [...cells.values()];
}

const weightOf = (slips: readonly Slip[]): number => slips.reduce((sum, slip) => sum + slip.weight, 0);

/** The weight of the cause that weighs most. */
function surest(slips: readonly Slip[]): number {
  const byCause = new Map<string, number>();
  for (const { cause, weight } of slips) byCause.set(cause, (byCause.get(cause) ?? 0) + weight);
  return Math.max(0, ...byCause.values());
}

const optionsOf = (cells: readonly Cell[], total: number, planned: Seen): LookOption[] =>
  cells
    .map((cell) => ({
      answer: cell.seen,
      likelihood: weightOf(cell.slips) / total,
      planned: sameSeen(cell.seen, planned),
    }))
    .sort((a, b) => b.likelihood - a.likelihood);
