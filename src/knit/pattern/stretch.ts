import { type Fault, fault, ok, type Result, refuse } from '../fault.ts';
import type { PlannedPart, PlannedRow } from '../piece/planned.ts';
import { type ReadOptions, readPattern } from './read-pattern.ts';
import { STRETCH_STEP, type StretchInHand, stretchesOf } from './stretch-at.ts';

export interface Restretch {
  /** the whole text of the garment, and how it was read */
  readonly text: string;
  readonly options: ReadOptions;
  /** the piece's place among those read, from 0 */
  readonly piece: number;
  /** the make as she knits it, every part; which of them is in hand, and its rows worked */
  readonly parts: readonly PlannedPart[];
  readonly part: number;
  readonly worked: number;
  readonly stretch: StretchInHand;
  /** rows that the stretch shall have */
  readonly rows: number;
}

/**
 * 'Long enough' and 'two rows more': the text read anew with her own number of rows for one stretch, all other
 * stretches of the make staying as they are.
 * @returns every part of the piece; the rows worked are as they were
 */
export function restretch(wish: Restretch): Result<readonly PlannedPart[]> {
  const { stretch, rows, parts: before } = wish;
  if (!Number.isSafeInteger(rows) || rows < stretch.worked) {
    return refuse(fault('rows already worked', { workedRows: stretch.worked, rows }));
  }
  const now = stretch.last - stretch.first + 1;
  if ((rows - now) % STRETCH_STEP !== 0) {
    return refuse(fault('side of the last row', { rows }));
  }
  const stretches = { ...wish.options.stretches, ...stretchesOf(before), [stretch.id]: rows };
  const plan = readPattern(wish.text, { ...wish.options, stretches }).pieces[wish.piece]?.plan;
  if (plan === undefined) return refuse(differs());
  if (!plan.ok) return plan;
  const { parts } = plan.value;
  const asWorked = (before[wish.part]?.rows ?? []).slice(0, wish.worked);
  const same = asWorked.every((row, i) => alike(row, parts[wish.part]?.rows[i]));
  return same && parts.length === before.length ? ok(parts) : refuse(differs());
}

const differs = (): Fault => fault('text reads otherwise');

const alike = (a: PlannedRow, b: PlannedRow | undefined): boolean =>
  b !== undefined &&
  a.side === b.side &&
  a.after === b.after &&
  JSON.stringify(a.steps) === JSON.stringify(b.steps);
