import type { FabricName } from '../../fabric.ts';
import type { Gauge } from '../../gauge.ts';
import type { Side, Step } from '../../row/step.ts';
import type { Edge, PartEnd } from '../recipe.ts';

/**
 * A recipe as it is being typed. Numbers are kept as the text that stands in the field, so that a half-typed
 * or wrong entry is never lost; `readPiece` makes numbers of them and says which ones it cannot read.
 */
export type Typed = string;

export interface PieceForm {
  readonly name: Typed;
  readonly makes: Typed;
  readonly mirrored?: boolean;
  /** stitches and rows per 100 mm */
  readonly gauge?: GaugeForm;
  readonly gauges?: Partial<Readonly<Record<FabricName, Gauge>>>;
  readonly parts: readonly PartForm[];
}

export interface GaugeForm {
  readonly stitches: Typed;
  readonly rows: Typed;
  /** what it was measured in; absent only where nobody was asked */
  readonly fabric?: FabricName;
  /** mm */
  readonly needle?: Typed;
}

export interface PartForm {
  readonly name: Typed;
  readonly start: StartForm;
  readonly firstSide?: Side;
  readonly selvedge?: 'plain' | 'slipped';
  readonly sections: readonly SectionForm[];
  readonly end: PartEnd;
}

export type StartForm =
  | { readonly kind: 'cast on'; readonly stitches: Typed }
  | {
      readonly kind: 'split';
      readonly part: Typed;
      readonly stitches: Typed;
      readonly edge: Edge | 'middle';
    }
  | { readonly kind: 'pick up'; readonly edges: readonly PickUpForm[] };

export interface PickUpForm {
  readonly along: Typed;
  readonly stitches: Typed;
}

export interface SectionForm {
  readonly name: Typed;
  readonly rows: Typed;
  readonly fabric: FabricName;
  /** mm */
  readonly needle: Typed;
  readonly shaping: readonly ShapingForm[];
  /** rows spelled out; the form carries them along and does not change them */
  readonly words?: readonly (readonly Step[])[];
}

/** Shaping as a knitter says it. */
export type ShapingForm =
  /** 'decrease one stitch at both edges, worked 2 stitches in, first on row 5, every 4th row 6 times' */
  | ({
      readonly kind: 'edge';
      readonly edge: Edge | 'both';
      readonly change: 'decrease' | 'increase';
      /** stitches each time and at each edge */
      readonly by: Typed;
      readonly inset: Typed;
      readonly lean: 'mirrored' | 'plain';
    } & Timing)
  /** 'increase 20 stitches evenly across row 1' */
  | {
      readonly kind: 'across';
      readonly change: 'decrease' | 'increase';
      readonly stitches: Typed;
      readonly row: Typed;
    }
  /** 'one stitch on either side of the middle one, first on row 2, every 2nd row 4 times' */
  | ({ readonly kind: 'middle'; readonly from: Typed } & Timing)
  /** 'bind off 4, 3, 2, 2 stitches, every second row from row 1' */
  | {
      readonly kind: 'bind off' | 'cast on' | 'turn';
      readonly edge: Edge | 'both';
      readonly first: Typed;
      readonly every: Typed;
      /** stitches of each group, parted by commas or blanks; 0 leaves a turn out */
      readonly groups: Typed;
    };

export interface Timing {
  readonly first: Typed;
  /** one after the other: every 6th row 3 times, then every 4th row 5 times */
  readonly rhythm: readonly Rhythm[];
}

export interface Rhythm {
  readonly every: Typed;
  readonly times: Typed;
}
