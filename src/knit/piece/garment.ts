import type { FabricName } from '../fabric.ts';
import type { HandSeam, Joint } from '../making-up/joint.ts';
import type { Recipe } from './recipe.ts';

/** What is knitted, whole: its pieces and what belongs to them. Plain data; the store adds ids and times. */
export interface Garment {
  readonly name: string;
  readonly pieces: readonly Recipe[];
  readonly swatches?: readonly Swatch[];
  readonly yarns?: readonly Yarn[];
  /** how its pieces are made up, where a draft has stated it; else it is proposed from their roles */
  readonly joints?: readonly Joint[];
  /** what she joined herself beside that */
  readonly byHand?: readonly HandSeam[];
  readonly notes?: string;
  /** who made the recipe, and under which terms it may be passed on */
  readonly credits?: string;
  readonly licence?: string;
}

/** A swatch as counted: stitches over a measured width, rows over a measured height (mm), washed. */
export interface Swatch {
  readonly fabric: FabricName;
  readonly stitches: number;
  readonly widthMm: number;
  readonly rows: number;
  readonly heightMm: number;
  /** needle, mm */
  readonly needle: number;
  /** counted over the same fabric before washing, where she did */
  readonly before?: {
    readonly stitches: number;
    readonly widthMm: number;
    readonly rows: number;
    readonly heightMm: number;
  };
  /** weight of the whole swatch, g, with the stitches and rows it has in all */
  readonly weighed?: { readonly grams: number; readonly stitches: number; readonly rows: number };
}

export interface Yarn {
  readonly name: string;
  readonly fibre?: string;
  readonly colour?: string;
  readonly dyeLot?: string;
  /** of one ball: g and m */
  readonly grams?: number;
  readonly metres?: number;
  readonly balls?: number;
  /** strands held together; 1 unless said */
  readonly strands?: number;
}

/** How many balls she has, and of which dye lot, is nothing to another garment. */
export const yarnForAnother = ({ balls: _balls, dyeLot: _lot, ...yarn }: Yarn): Yarn => yarn;
