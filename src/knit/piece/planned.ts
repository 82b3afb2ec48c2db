import type { FabricName } from '../fabric.ts';
import type { Gauge } from '../gauge.ts';
import type { Side, Step } from '../row/step.ts';
import type { Edge, PartEnd, PartRecipe, PartStart, SectionLength } from './recipe.ts';

/** One row spelled out. Every row of a plan has been worked by `workRow`: it uses up `before` and leaves `after`. */
export interface PlannedRow {
  /** row number within its part, from 1 */
  readonly n: number;
  readonly side: Side;
  /** index of its section in the part */
  readonly section: number;
  /** needle, mm */
  readonly needle: number;
  readonly steps: readonly Step[];
  readonly before: number;
  readonly after: number;
  readonly shaping: readonly ShapingMark[];
  /** mm above the cast-on of the piece, at the top of this row */
  readonly height: number;
}

/** A change of count and where it lies; `by` is what it adds to the count. */
export type ShapingMark = MarkAt & { readonly by: number };

type MarkAt =
  | { readonly kind: 'edge' | 'cast on' | 'turn'; readonly edge: Edge }
  /** across: the whole part, at its end */
  | { readonly kind: 'bind off'; readonly edge: Edge | 'across' }
  | { readonly kind: 'across'; readonly edge: 'across' }
  | { readonly kind: 'middle'; readonly edge: 'middle' };

export interface PlannedSection {
  readonly name: string;
  readonly fabric: FabricName;
  readonly needle: number;
  /** first and last row number within the part, from 1; last < first when it has no rows */
  readonly first: number;
  readonly last: number;
  /** the pattern's own words, by row number within the section (from 1) */
  readonly own?: Readonly<Record<number, string>>;
  /** given as a length; see the recipe */
  readonly length?: SectionLength;
  /** stitches counted on the needle when it begins, where the rows before it ought to leave another number */
  readonly onNeedle?: number;
}

export interface PlannedPart {
  readonly piece: string;
  readonly name: string;
  readonly from: PartStart;
  readonly end: PartEnd;
  /** what is done before row 1: cast on, pick up, take from the holder */
  readonly setUp: readonly Step[];
  readonly sections: readonly PlannedSection[];
  readonly rows: readonly PlannedRow[];
  /** stitches on the needle before row 1 */
  readonly start: number;
  /** stitches left at the end */
  readonly left: number;
  /** mm above the piece's cast-on at which the part begins */
  readonly base: number;
  /** mm from the piece's right-hand cast-on edge to the part's right edge before row 1 (RS facing) */
  readonly offset: number;
  /** mm a stitch is wide and a row high, by section */
  readonly cells: readonly { readonly width: number; readonly height: number }[];
  /** the part whose stitches it takes, if any */
  readonly parent?: string;
  /** what it was planned from, where that differs from the piece's recipe: a rework of one make */
  readonly recipe?: PartRecipe;
}

/** Seen by the compiler only. What is spread from a proven part is not proven, since a spread takes no private member. */
declare class Proof {
  private readonly proven: true;
}

/** A part that was knitted by the row language alone, row after row, and comes out; only `provePart` gives one. */
export type ProvenPart = PlannedPart & Proof;

/** A recipe spelled out row by row and proven; only `plan` makes one. */
export interface Plan {
  readonly name: string;
  readonly makes: number;
  readonly mirrored: boolean;
  readonly parts: readonly ProvenPart[];
  /** the mirror image, for every second make, where the recipe is mirrored */
  readonly mirrorParts?: readonly ProvenPart[];
}

/** Gauge of a part's section (from 0), as its stitches and rows are drawn. */
export function gaugeIn({ cells }: Pick<PlannedPart, 'cells'>, section: number): Gauge {
  const { width, height } = cells[Math.min(section, cells.length - 1)] as PlannedPart['cells'][number];
  return { stitches: 100 / width, rows: 100 / height };
}

/** Parts of the given make (from 1): the mirror image for every second one where the recipe says so. */
export const partsOfMake = (plan: Plan, make: number): readonly ProvenPart[] =>
  plan.mirrorParts !== undefined && make % 2 === 0 ? plan.mirrorParts : plan.parts;
