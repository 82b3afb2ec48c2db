import { type Fault, fault, ok, type Result, refuse } from '../fault.ts';
import type { PlannedPart, PlannedRow } from '../piece/planned.ts';
import type { SectionLength } from '../piece/recipe.ts';
import { type ReadOptions, readPattern } from './read-pattern.ts';

/** A stretch that the text gives as a length, and where she is in it. */
export interface StretchInHand extends SectionLength {
  /** its first and last row in the part, from 1 */
  readonly first: number;
  readonly last: number;
  /** its rows that are worked */
  readonly worked: number;
  /** its rows still planned */
  readonly left: number;
}

/** What follows a stretch was planned for the side that comes next: two rows at a time keep it. */
export const STRETCH_STEP = 2;

/** The stretch that the next row belongs to, or that the last row worked has just ended; undefined elsewhere. */
export function stretchAt(part: PlannedPart, worked: number): StretchInHand | undefined {
  const here = part.sections.find(
    ({ first, last, length }) => length && first <= worked + 1 && worked <= last,
  );
  if (!here?.length) return undefined;
  const inIt = Math.max(0, worked - here.first + 1);
  return {
    ...here.length,
    first: here.first,
    last: here.last,
    worked: inIt,
    left: here.last - here.first + 1 - inIt,
  };
}

export interface Restretch {
  /** the whole text of the garment, and how it was read */
  readonly text: string;
  readonly options: ReadOptions;
  /** the piece's place among those read, and the part's within it, from 0 */
  readonly piece: number;
  readonly part: number;
  readonly stretch: StretchInHand;
  /** the part as she knits it, and its rows worked */
  readonly planned: PlannedPart;
  readonly worked: number;
  /** rows that the stretch shall have */
  readonly rows: number;
}

export interface Restretched {
  /** to be kept with the garment: how its text is read from now on */
  readonly options: ReadOptions;
  /** every part of the piece; rows worked are as they were */
  readonly parts: readonly PlannedPart[];
}

/** 'Long enough' and 'two rows more': the text read anew with her own number of rows for one stretch. */
export function restretch(wish: Restretch): Result<Restretched> {
  const { stretch, rows } = wish;
  if (!Number.isSafeInteger(rows) || rows < stretch.worked) {
    return refuse(
      fault('rows already worked', 'This stretch has {worked} rows already; it cannot have {rows}.', {
        worked: stretch.worked,
        rows,
      }),
    );
  }
  const now = stretch.last - stretch.first + 1;
  if ((rows - now) % STRETCH_STEP !== 0) {
    return refuse(
      fault('side of the last row', 'With {rows} rows the next row would begin on the other side.', { rows }),
    );
  }
  const options: ReadOptions = {
    ...wish.options,
    stretches: { ...wish.options.stretches, [stretch.id]: rows },
  };
  const plan = readPattern(wish.text, options).pieces[wish.piece]?.plan;
  if (plan === undefined) return refuse(differs());
  if (!plan.ok) return plan;
  const { parts } = plan.value;
  const same = wish.planned.rows
    .slice(0, wish.worked)
    .every((row, i) => alike(row, parts[wish.part]?.rows[i]));
  return same ? ok({ options, parts }) : refuse(differs());
}

const differs = (): Fault =>
  fault('text reads otherwise', 'The text is no longer read as it was when these rows were knitted.');

const alike = (a: PlannedRow, b: PlannedRow | undefined): boolean =>
  b !== undefined &&
  a.side === b.side &&
  a.after === b.after &&
  JSON.stringify(a.steps) === JSON.stringify(b.steps);
