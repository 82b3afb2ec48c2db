import type { FabricName } from '../fabric.ts';
import type { Edge } from '../piece/recipe.ts';
import type { Side } from '../row/step.ts';

/**
 * What a figure of a fault is measured in, by the end of its name: `neckMm` is millimetres, `needStitches` stitches.
 * A name may also be the unit alone: `rows`, `fabric`. `src/words` has one way of saying each.
 */
export interface Units {
  Mm: number;
  Stitches: number;
  Rows: number;
  /** a row by its number, from 1 */
  Row: number;
  Times: number;
  Grams: number;
  Percent: number;
  Parts: number;
  /** a part by its number, from 1 */
  Part: number;
  Sections: number;
  Makes: number;
  Pieces: number;
  Sizes: number;
  Buttons: number;
  Number: number;
  /** of a text, from 1 */
  Line: number;
  /** of a line, from 1 */
  Column: number;
  /** brackets within brackets */
  Depth: number;
  Characters: number;
  /** of characters */
  Millions: number;
  Version: number | string;
  Fabric: FabricName;
  Side: Side;
  Edge: Edge;
  /** as she or the pattern calls it */
  Name: string;
  /** as it stands in what was typed, pasted or stored */
  Text: string;
}

export type Unit = keyof Units;

/** The unit of a figure, from its name. */
type UnitOf<Name extends string> = {
  [U in Unit]: Name extends `${string}${U}` | Uncapitalize<U> ? U : never;
}[Unit];

/** What a figure of this name holds; a name that ends in no unit holds nothing, so no fault with it can be made. */
export type ValueOf<Name extends string> = Units[UnitOf<Name>];
