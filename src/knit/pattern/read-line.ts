import type { Fault } from '../fault.ts';
import type { Side, Step } from '../row/step.ts';
import type { CountedBy, LineKind, Unread } from './follow/build/notes.ts';

/** One line of the text (joined where a page broke it) and what was understood. */
export interface ReadLine {
  /** first and last line of the source, from 1 */
  readonly line: number;
  readonly lastLine: number;
  readonly text: string;
  readonly kind: LineKind;
  /** the rows it makes, in order */
  readonly rows: readonly ReadRow[];
  /** stretches of it that the text gives as lengths, with the rows that they have now */
  readonly lengths: readonly { readonly open: boolean; readonly rows: number }[];
  /** stitches on the needle before and after the line, where any are */
  readonly before?: number;
  readonly after?: number;
  /** counts that the text states in it */
  readonly stated: readonly number[];
  /** contradictions, and what was not understood */
  readonly faults: readonly Fault[];
  /** it stays in the plan as the knitter's own words and nobody knows the count after it: write '(24 sts)' behind it */
  readonly asksCount: boolean;
  /** nobody knew the count after it, but for one that the text states further on */
  readonly countedBy?: CountedBy;
  /** she said herself what was not understood of it: '[6 rows, 24 sts]' behind it */
  readonly mended: boolean;
  /** the line of one that was not understood, where all that is wrong with this one follows from it */
  readonly follows?: number;
  /** its sentences that she may say something of herself, in order */
  readonly unread: readonly Unread[];
}

export interface ReadRow {
  readonly piece: string;
  readonly part: string;
  /** number within its part, from 1 */
  readonly n: number;
  readonly side: Side;
  readonly steps: readonly Step[];
  readonly before: number;
  readonly after: number;
  readonly own?: string;
}
