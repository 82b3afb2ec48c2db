import type { Fault } from '../../../fault.ts';
import type { Span } from '../../say/flow.ts';
import type { PieceHeading, Stripe } from '../../say/statement.ts';

/** A count that the text states further on, and the source line where it stands. */
export interface CountedBy {
  readonly stitches: number;
  readonly line: number;
}

/** What a line of the text turned out to be. */
export type LineKind = 'instructions' | 'heading' | 'talk' | 'own words';

/** A sentence that was not understood, or does not come out: how many rows it was taken for, and the count after them. */
export interface Unread extends Span {
  readonly words: string;
  readonly rows: number;
  readonly after: number | undefined;
}

/** What is found out about a line while its statements are worked. */
export interface LineNotes {
  readonly faults: Fault[];
  readonly stated: number[];
  asksCount: boolean;
  /** nobody knew the count after it, until one was stated further on */
  countedBy: CountedBy | undefined;
  mended: boolean;
  readonly unread: Unread[];
  /** the line of a sentence that was not understood, from which so many of its faults follow */
  follows: number | undefined;
  following: number;
  kind: LineKind | undefined;
  before: number | undefined;
  after: number | undefined;
}

export const freshNotes = (): LineNotes => ({
  faults: [],
  stated: [],
  asksCount: false,
  countedBy: undefined,
  mended: false,
  unread: [],
  follows: undefined,
  following: 0,
  kind: undefined,
  before: undefined,
  after: undefined,
});

/**
 * A sentence that was not understood leaves nobody knows how many stitches. Where the text states a count further on in
 * the same part, that count closes the gap: the text is then read once more, with the count where it was missing.
 */
export interface Counts {
  /** found in an earlier reading, by the sentence */
  readonly known: ReadonlyMap<object, CountedBy>;
  /** found in this one, for the next */
  readonly found: Map<object, CountedBy>;
  /** whether there is a next one */
  readonly again: boolean;
}

/** None is known, and none is looked for. */
export const noCounts = (): Counts => ({ known: new Map(), found: new Map(), again: false });

/** 'Work 4 rows as follows:': how many, and how many were spelled out since. */
export interface Announced {
  readonly rows: number;
  readonly made: () => number;
  readonly line: number;
  readonly note: LineNotes;
}

/** It is said that the stitches are divided, and the row that does it is to come. */
export interface Divides {
  readonly part: object;
  readonly note: LineNotes;
  readonly words: string;
  readonly span: Span;
}

/** The sentence that was not understood last, and the piece in which it stands. */
export interface UnreadAt {
  readonly piece: object | undefined;
  readonly pending: PieceHeading | undefined;
  readonly note: LineNotes;
  readonly line: number;
}

/** Stripes, counted from a row of the part. */
export interface Striped {
  readonly of: readonly Stripe[];
  readonly first: number;
}

/** A sentence that left nobody knows how many stitches; `after`: as many as were taken for it meanwhile. */
export interface Uncounted {
  readonly sentence: object;
  readonly after: number;
  readonly note: LineNotes;
}
