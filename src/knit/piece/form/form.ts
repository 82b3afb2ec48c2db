import type { MeasuredGauge } from '../../measured-gauge.ts';
import type { Edge, PartRecipe, PartStart, PickUp, Recipe, Section, Shaping } from '../recipe.ts';
import type { TurnWay } from '../turn-way.ts';

/**
 * A recipe as it is being typed. Numbers are kept as the text that stands in the field, so that a half-typed
 * or wrong entry is never lost; `readPiece` makes numbers of them and says which ones it cannot read.
 *
 * Every form is the thing itself with some of its fields as typed: what no field shows (a pattern's own words, a
 * length, a count taken on the needle) goes along as it is, and so does whatever the recipe may learn.
 */
export type Typed = string;

/** The thing, with the fields that are typed in the form they are typed in. */
type As<Thing, Shown> = Omit<Thing, keyof Shown> & Shown;

export type PieceForm = As<
  Recipe,
  {
    readonly makes: Typed;
    /** stitches and rows per 100 mm */
    readonly gauge?: GaugeForm;
    readonly parts: readonly PartForm[];
  }
>;

export type GaugeForm = As<
  MeasuredGauge,
  {
    readonly stitches: Typed;
    readonly rows: Typed;
    /** mm */
    readonly needle?: Typed;
  }
>;

export type PartForm = Omit<PartRecipe, 'from' | 'sections'> & {
  readonly start: StartForm;
  readonly sections: readonly SectionForm[];
};

type StartWith<Field extends string> = Extract<PartStart, { readonly [K in Field]: unknown }>;

export type StartForm =
  | ({ readonly kind: 'cast on'; readonly stitches: Typed } & Omit<StartWith<'castOn'>, 'castOn'>)
  | ({ readonly kind: 'split' } & As<StartWith<'part'>, { readonly stitches: Typed }>)
  | ({ readonly kind: 'pick up'; readonly edges: readonly PickUpForm[] } & Omit<
      StartWith<'pickUp'>,
      'pickUp'
    >);

export type PickUpForm = As<PickUp, { readonly stitches: Typed }>;

export type SectionForm = As<
  Section,
  {
    readonly rows: Typed;
    /** mm */
    readonly needle: Typed;
    readonly shaping: readonly ShapingForm[];
  }
>;

type Of<Kind extends Shaping['kind']> = Extract<Shaping, { readonly kind: Kind }>;

/** Shaping as a knitter says it. */
export type ShapingForm = EdgeForm | AcrossForm | MiddleForm | GroupsForm;

/** 'decrease one stitch at both edges, worked 2 stitches in, first on row 5, every 4th row 6 times' */
export type EdgeForm = Omit<Of<'edge'>, 'by' | 'rows' | 'inset'> & {
  readonly change: 'decrease' | 'increase';
  /** stitches each time and at each edge */
  readonly by: Typed;
  readonly inset: Typed;
} & Timing;

/** 'increase 20 stitches evenly across row 1' */
export type AcrossForm = Omit<Of<'across'>, 'by' | 'row'> & {
  readonly change: 'decrease' | 'increase';
  readonly stitches: Typed;
  readonly row: Typed;
};

/** 'one stitch on either side of the middle one, first on row 2, every 2nd row 4 times' */
export type MiddleForm = Omit<Of<'middle'>, 'rows' | 'from'> & { readonly from: Typed } & Timing;

/** 'bind off 4, 3, 2, 2 stitches, every second row from row 1' */
export type GroupsForm = Omit<GroupShaping, 'edge' | 'groups' | 'kind'> & {
  readonly kind: GroupShaping['kind'];
  readonly edge: Edge | 'both';
  readonly first: Typed;
  readonly every: Typed;
  /** stitches of each group, parted by commas or blanks; 0 leaves a turn out */
  readonly groups: Typed;
  /** of turns: how their gaps are closed */
  readonly way?: TurnWay;
};

export type GroupShaping = Of<'bind off' | 'cast on' | 'turn'>;

export interface Timing {
  readonly first: Typed;
  /** one after the other: every 6th row 3 times, then every 4th row 5 times */
  readonly rhythm: readonly Rhythm[];
}

export interface Rhythm {
  readonly every: Typed;
  readonly times: Typed;
}
