import type { FabricName } from '../fabric.ts';
import type { Gauge } from '../gauge.ts';
import type { MeasuredGauge } from '../measured-gauge.ts';
import type { Side, Step } from '../row/step.ts';
import type { TurnWay } from './turn-way.ts';

/** What a piece is, in stitches and rows: small, editable, sharable. */
export interface Recipe {
  readonly name: string;
  /** how many copies are knitted (two sleeves: 2) */
  readonly makes: number;
  /** every second make is the mirror image of the first (two fronts) */
  readonly mirrored?: boolean;
  /** what it is in the garment; making up and yarn read it, a plan does not need it */
  readonly role?: PieceRole;
  /** the tension as it was measured, most often of the main fabric; gives heights and widths to drawings */
  readonly gauge?: MeasuredGauge;
  /** gauges of other fabrics, where they were swatched */
  readonly gauges?: Partial<Readonly<Record<FabricName, Gauge>>>;
  readonly parts: readonly PartRecipe[];
}

/** What was stored once stays readable for ever: none of these is ever taken away. */
export const pieceRoles = [
  'back',
  'front',
  'left front',
  'right front',
  'sleeve',
  'neckband',
  'front band',
  'armhole band',
  'other',
] as const;

export type PieceRole = (typeof pieceRoles)[number];

/** A stretch worked without a break on one set of stitches. */
export interface PartRecipe {
  readonly name: string;
  readonly from: PartStart;
  /** side of row 1; RS unless said (a part taken from another goes on with that one's next side; picked-up stitches start with WS) */
  readonly firstSide?: Side;
  /** slip the first stitch of every row */
  readonly selvedge?: 'plain' | 'slipped';
  readonly sections: readonly Section[];
  readonly end: PartEnd;
}

export type PartStart =
  | { readonly castOn: number }
  /** some of the stitches that another part left resting; 'right' is the right edge with RS facing, 'middle' lies between right and left parts */
  | { readonly part: string; readonly stitches: number; readonly edge: 'right' | 'left' | 'middle' }
  | { readonly pickUp: readonly PickUp[] };

export interface PickUp {
  /** the edge in the knitter's words: 'left front neck' */
  readonly along: string;
  readonly stitches: number;
  /** they are not picked up anew but taken from their needle or holder */
  readonly held?: boolean;
}

/** 'split': the stitches rest and later parts take them; 'hold': they rest on a holder for good or for a seam. */
export type PartEnd = 'bind off' | 'hold' | 'split';

export interface Section {
  readonly name: string;
  /** rows worked */
  readonly rows: number;
  readonly fabric: FabricName;
  /** needle, mm */
  readonly needle: number;
  readonly shaping: readonly Shaping[];
  /** rows spelled out, repeated in turn from the section's row 1; they replace the fabric's own rows */
  readonly words?: readonly (readonly Step[])[];
  /** in a read pattern: the text's own words for rows (from 1 within the section) that nobody could spell out; their steps only carry the count */
  readonly own?: Readonly<Record<number, string>>;
  /** in a read pattern: the text ends the section by a measure; `rows` is what the gauge makes of it, or a first guess */
  readonly length?: SectionLength;
  /** stitches counted on the needle when the section begins, where the rows before it ought to leave another number */
  readonly onNeedle?: number;
  /** as measured on this piece: a row's height, and how high above the piece's cast-on the section begins, mm */
  readonly measured?: { readonly rowMm: number; readonly atMm?: number };
}

/** A stretch that a pattern gives as a length instead of rows. */
export interface SectionLength {
  /** names the stretch within its pattern; her own row count for it is kept by this name */
  readonly id: string;
  /** mm from `from`; absent where the text gives no measure */
  readonly mm?: number;
  /** where the measuring begins: 'start' (cast-on edge), 'here', 'armhole', 'rib', 'section' ... */
  readonly from: string;
  /** side of its last row, where the text says so: rows are then added two at a time */
  readonly endSide?: Side;
  /** no gauge (or no measure) was known: it goes on until she says that it is long enough */
  readonly open: boolean;
}

/** `row` and `rows` count from 1 within the section. */
export type Shaping =
  /** `by` stitches at the edge on each of the rows: -1 one decreased, +1 one increased, -2 a double decrease; `inset` stitches lie between it and the edge */
  | {
      readonly kind: 'edge';
      readonly edge: Edge | 'both';
      readonly by: number;
      readonly rows: readonly number[];
      readonly inset: number;
      readonly lean: 'mirrored' | 'plain';
    }
  /** spread evenly over one row; `by` > 0 increases, < 0 decreases */
  | { readonly kind: 'across'; readonly row: number; readonly by: number }
  /** paired decreases at the middle, as in the mitre of a V neckband: one centre stitch and one on either side become one */
  | { readonly kind: 'middle'; readonly rows: readonly number[]; readonly from: number }
  | { readonly kind: 'bind off'; readonly edge: Edge; readonly groups: readonly Group[] }
  | { readonly kind: 'cast on'; readonly edge: Edge; readonly groups: readonly Group[] }
  /** short rows: on each of the rows, which ends at the edge, so many more stitches are left unworked before the turn */
  | {
      readonly kind: 'turn';
      readonly edge: Edge;
      readonly groups: readonly Group[];
      /** how the gap is closed; rows say nothing of it where it is left out */
      readonly way?: TurnWay;
    };

export type Edge = 'right' | 'left';

export interface Group {
  readonly row: number;
  readonly stitches: number;
}
