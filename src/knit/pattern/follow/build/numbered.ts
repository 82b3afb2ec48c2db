import type { Item } from '../../../row/read/notation.ts';

/** Rows that the text numbers: 'Row 1 … Row 4'. */
export interface Cycle {
  readonly rows: Map<number, readonly Item[]>;
  everyOther: readonly Item[] | undefined;
  /** rows from number 1 on that were a pattern before it began with a higher one */
  readonly earlier?: readonly (readonly Item[] | undefined)[];
  /** highest number worked without a gap */
  done: number;
  /** highest number known */
  last: number;
  /** number of the first row of the part's rows that belongs to it */
  first: number;
  /** rows before the one with which it is worked anew */
  readonly passed?: number;
  /** rows that nobody understood came between: which of them is next nobody knows */
  lost?: boolean;
  /** once more between two stars: a pattern */
  readonly repeated?: true;
}
