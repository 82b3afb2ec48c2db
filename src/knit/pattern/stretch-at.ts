import type { PlannedPart } from '../piece/planned.ts';
import type { SectionLength } from '../piece/recipe.ts';

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

/** Rows of every stretch as it is planned now, by its name. */
export const stretchesOf = (parts: readonly PlannedPart[]): Record<string, number> =>
  Object.fromEntries(
    parts.flatMap((part) =>
      part.sections.flatMap(({ first, last, length }) => (length ? [[length.id, last - first + 1]] : [])),
    ),
  );

/** Whether the stretch can end with the row just worked: an even number of rows away from where it would end. */
export const canEndHere = ({ worked, left }: StretchInHand): boolean =>
  worked > 0 && left > 0 && left % STRETCH_STEP === 0;
