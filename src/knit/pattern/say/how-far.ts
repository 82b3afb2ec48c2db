import type { Side } from '../../row/step.ts';

/** Where on the piece a shaping lies, in the words of patterns. */
export type EdgeName =
  | 'both'
  | 'neck'
  | 'armhole'
  | 'beginning'
  | 'end'
  | 'same'
  | 'right'
  | 'left'
  | 'inside'
  /** both ends or one, as the count behind it has it */
  | 'unsaid';
/** A place of a piece that patterns call by name. */
export type Place = 'armhole' | 'neck' | 'shoulder' | 'raglan' | 'cap' | 'rib' | 'waist';

/** What a piece remembers of its rows: its places, its start, the last heading, the last section, a marker. */
export type MarkName = Place | 'stars' | 'three stars' | 'start' | 'heading' | 'section' | 'marker';

/** Where a measuring begins; 'here' is the row in hand. */
export type From = MarkName | 'here';

/** One round of a shaping: on which rows, and how often. */
export interface Beat {
  /** rows until its first shaping row, counted from the row before; undefined: one interval, on the right side where the text leaves it open */
  readonly first?: number;
  readonly side?: Side;
  readonly every: number;
  /** mm from one shaping row to the next, in place of `every` */
  readonly everyMm?: number;
  /** `everyMm` was said as what the piece measures then */
  readonly whole?: boolean;
  /** alternately with `every` ('every 4th and 2nd row') */
  readonly and?: number;
  readonly times?: number;
  /** the number was said as '8 times', not as a number of rows */
  readonly counted?: boolean;
  /** the number came with 'more': the shaping row named before is not among them */
  readonly further?: boolean;
  /** the number was said 'in all': the shaping row named before is among them */
  readonly total?: boolean;
  /** until so many stitches are on the needle */
  readonly toCount?: number;
  readonly until?: Until;
}

export type Until =
  | ({ readonly is: 'rows'; readonly n: number } & Ends)
  /** rows in all since the piece began, or since a mark */
  | { readonly is: 'rows in all'; readonly n: number; readonly from: MarkName }
  | ({
      readonly is: 'length';
      readonly mm: number;
      readonly from: From;
      readonly odd?: boolean;
      readonly endRow?: number;
    } & Ends)
  | ({
      readonly is: 'same length';
      readonly piece: PieceSaid;
      /** to its end unless said */
      readonly to?: Place;
      readonly lessMm?: number;
      readonly lessRows?: number;
    } & Ends)
  | { readonly is: 'count'; readonly stitches: number }
  /** no measure given: 'until desired length', or `only` its end: 'ending with a WS row' */
  | ({ readonly is: 'open'; readonly only?: true; readonly odd?: boolean; readonly endRow?: number } & Ends);

interface Ends {
  readonly end?: Side;
  readonly endEdge?: EndEdge;
}

/** 'ending at side edge': the edge at which the last row ends; `end` is its side, as the text has it. */
export type EndEdge = 'neck' | 'armhole';

/** How much of another piece is worked again: 'to armhole', 'to 2 rows before armhole', 'to 60 sts', 'until 38 cm'. */
export type AsFarAs =
  | { readonly is: 'place'; readonly place: Place | 'stars' | 'three stars' }
  | { readonly is: 'rows before'; readonly rows: number; readonly place?: Place }
  | { readonly is: 'rows after'; readonly rows: number; readonly from: MarkName; readonly past?: true }
  | { readonly is: 'count'; readonly stitches: number }
  /** so much shorter than the other piece is there */
  | { readonly is: 'less'; readonly mm: number; readonly place?: Place }
  | { readonly is: 'length'; readonly mm: number; readonly from: From };

/** Another piece as the text calls it: 'back', 'first sleeve'. */
export interface PieceSaid {
  readonly words: string;
  /** without 'first' and 'other'; undefined where whatever was worked before is meant */
  readonly name?: string;
}
