import type { Item } from '../../row/read/notation.ts';
import type { Side } from '../../row/step.ts';

/** Where on the piece a shaping lies, in the words of patterns. */
export type EdgeName = 'both' | 'neck' | 'armhole' | 'beginning' | 'end' | 'same' | 'right' | 'left';

/** A fabric as patterns name it. */
export type FabricSaid =
  | { readonly is: 'named'; readonly name: string }
  /** a rib of so many knit and purl stitches */
  | { readonly is: 'rib'; readonly face: string }
  /** whatever is on the needle */
  | { readonly is: 'established' }
  /** a stitch pattern that the text defines or that nobody knows */
  | { readonly is: 'pattern'; readonly words: string };

/** One round of a shaping: on which rows, and how often. */
export interface Beat {
  /** rows until its first shaping row, counted from the row before; undefined: one interval, on the right side where the text leaves it open */
  readonly first?: number;
  /** the rhythm counts only rows of this side */
  readonly side?: Side;
  readonly every: number;
  /** alternately with `every` ('every 4th and 2nd row') */
  readonly and?: number;
  readonly times?: number;
  /** the number was said as '8 times', not as a number of rows */
  readonly counted?: boolean;
  /** the number came with 'more': the shaping row named before is not among them */
  readonly further?: boolean;
  /** until so many stitches are on the needle */
  readonly toCount?: number;
  readonly until?: Until;
}

export type Until =
  | { readonly is: 'rows'; readonly n: number }
  /** rows in all since the piece began, or since a mark */
  | { readonly is: 'rows in all'; readonly n: number; readonly from: string }
  | {
      readonly is: 'length';
      readonly mm: number;
      readonly from: string;
      readonly end?: Side;
      readonly endEdge?: EndEdge;
      readonly words: string;
    }
  | {
      readonly is: 'same length';
      readonly piece: string;
      readonly to: string;
      readonly end?: Side;
      readonly endEdge?: EndEdge;
      readonly lessMm?: number;
      readonly lessRows?: number;
    }
  | { readonly is: 'count'; readonly stitches: number }
  /** no measure given ('until desired length', 'ending with a WS row') */
  | { readonly is: 'open'; readonly end?: Side; readonly endEdge?: EndEdge };

/** 'ending at side edge': the edge at which the last row ends. */
export type EndEdge = 'neck' | 'armhole';

export interface Label {
  /** row numbers named; empty for 'next row' */
  readonly rows: readonly number[];
  /** 'row 2 and every WS row' */
  readonly everyOther?: boolean;
  /** 'next 4 rows' */
  readonly next?: number;
  readonly side?: Side;
  /** 'Dec row', 'Buttonhole row': later lines call it so */
  readonly name?: string;
}

export type Statement =
  | { readonly is: 'heading'; readonly words: string; readonly piece?: PieceHeading }
  | { readonly is: 'note'; readonly about: string }
  | { readonly is: 'needle'; readonly mm?: number }
  | {
      readonly is: 'gauge';
      readonly stitches?: number;
      readonly rows?: number;
      readonly fabric?: FabricSaid;
      readonly needle?: number;
    }
  | { readonly is: 'multiple'; readonly of: number; readonly plus: number; readonly name: string }
  | { readonly is: 'cast on'; readonly stitches: number }
  | {
      readonly is: 'pick up';
      readonly items: readonly Item[];
      readonly edges: readonly { readonly along: string; readonly stitches: number }[];
    }
  | { readonly is: 'row'; readonly label?: Label; readonly items: readonly Item[]; readonly like?: number }
  | {
      readonly is: 'repeat rows';
      readonly from?: number;
      readonly to?: number;
      readonly last?: number;
      readonly times?: number;
      readonly total?: boolean;
      readonly until?: Until;
    }
  | {
      readonly is: 'even';
      readonly fabric?: FabricSaid;
      readonly until?: Until;
      readonly firstLooks?: 'k' | 'p';
    }
  | { readonly is: 'rows'; readonly n: number; readonly items: readonly Item[] }
  | {
      readonly is: 'shape';
      readonly change: number;
      readonly edge: EdgeName;
      readonly beats: readonly Beat[];
      readonly fabric?: FabricSaid;
    }
  | {
      readonly is: 'evenly';
      readonly change: number;
      readonly toCount?: number;
      readonly on: 'next' | 'last' | 'unsaid';
      readonly over?: number;
    }
  | {
      readonly is: 'groups';
      readonly work: 'bo' | 'co';
      readonly edge: EdgeName;
      readonly groups: readonly GroupSaid[];
    }
  | { readonly is: 'bind off'; readonly stitches?: number; readonly rest?: boolean }
  | {
      readonly is: 'hold';
      readonly stitches?: number;
      readonly which: 'rest' | 'first' | 'last' | 'centre' | 'all';
    }
  | {
      readonly is: 'work on';
      readonly which: 'first' | 'last' | 'these' | 'each side' | 'both at once';
      readonly stitches?: number;
    }
  | { readonly is: 'rejoin'; readonly stitches?: number; readonly side?: Side }
  | { readonly is: 'other side'; readonly reversing: boolean }
  | {
      readonly is: 'as for';
      readonly piece: string;
      readonly from?: string;
      readonly to?: string;
      readonly reversing: boolean;
      readonly only?: string;
    }
  | { readonly is: 'at the same time'; readonly after?: Until }
  | { readonly is: 'stated'; readonly stitches: number }
  | { readonly is: 'turn' }
  /** 'rep dec row every other row 3 times more' */
  | { readonly is: 'repeat named'; readonly name: string; readonly beats: readonly Beat[] }
  /** rows just worked get a name: 'these 2 rows form rib' */
  | { readonly is: 'named rows'; readonly name: string; readonly rows?: number };

export interface PieceHeading {
  readonly name: string;
  readonly makes: number;
}

export interface GroupSaid {
  readonly stitches: number;
  /** rows it is worked at the beginning of, one after the other; 1 unless said */
  readonly rows: number;
  /** 2: every second row */
  readonly every: number;
  /** until so many stitches are on the needle */
  readonly toCount?: number;
  readonly side?: Side;
}

/** A statement and where it stands. */
export interface Said {
  readonly statement: Statement;
  readonly line: number;
  readonly column: number;
  /** stitches that the text says are on the needle after it */
  readonly stated?: number;
}

/** Takes a statement that was read, the token where it begins, and the count that the text states after it. */
export type Add = (statement: Statement, at: number, stated?: number) => void;
