import type { Edge } from '../../../piece/recipe.ts';
import type { Side } from '../../../row/step.ts';

/** What a row of the fabric changes at its edges. */
export type Edit = Shaped | Group;

export interface Shaped {
  readonly at: Edge;
  /** stitches more (or less) at the edge */
  readonly change: number;
  readonly work?: undefined;
}

/** So many stitches bound off or cast on at the very edge. */
interface Group {
  readonly at: Edge;
  readonly work: 'bo' | 'co';
  readonly stitches: number;
}

export interface GroupsOfTrack {
  readonly work: 'bo' | 'co';
  /** where rows end, and not where they begin */
  readonly atEnd: boolean;
  readonly list: readonly { readonly stitches: number; readonly every: number; readonly side?: Side }[];
  /** at its first row */
  readonly begins: () => void;
}
