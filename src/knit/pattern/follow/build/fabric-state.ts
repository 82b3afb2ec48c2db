import type { FabricName } from '../../../fabric.ts';
import type { Item } from '../../../row/read/notation.ts';

/** The fabric on the needle. */
export type FabricState =
  /** columns repeat from the right edge, rows repeat upwards; 'k' and 'p' as seen from the right side */
  | {
      readonly is: 'face';
      readonly name: FabricName;
      readonly rows: readonly string[];
      readonly label: string;
    }
  /** rows as the text spells them */
  | {
      readonly is: 'rows';
      readonly rows: readonly (readonly Item[])[];
      readonly label: string;
      readonly faces: (Face | undefined)[];
      /** all rows by their number, where only some of them are worked on */
      readonly numbered?: readonly (readonly Item[] | undefined)[];
    }
  /** nobody can say; `line`: where the text calls it by a name that nobody knows */
  | { readonly is: 'patt'; readonly label: string; readonly line?: number };

/** How a spelled row looked from the right side when it was worked over `column` to `column + looks.length`. */
export interface Face {
  readonly column: number;
  readonly looks: string;
}
