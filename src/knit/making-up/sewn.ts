import type { Edge } from '../piece/recipe.ts';
import type { Laps, SewnBand } from './band-joints.ts';
import type { Line, SeamWay, Stretch } from './joint.ts';
import { type PanelEdges, type SleeveEdges, turnedRound, type Worn } from './piece-edges.ts';

/** What is made up: the edges of its pieces, whoever has found them. */
export interface Sewn {
  readonly back?: PanelEdges | undefined;
  readonly fronts?: Readonly<Record<Worn, PanelEdges>> | undefined;
  readonly sleeves?: Readonly<Record<Worn, SleeveEdges>> | undefined;
  readonly bands: readonly SewnBand[];
  readonly isRaglan: boolean;
  readonly isIndented: boolean;
  /** the front is opened from its hem to its neck */
  readonly isOpen: boolean;
  /** the neck of a front that is not opened is not shaped: it lies between the shoulders */
  readonly isFlatFront: boolean;
  /** of a back that is parted below its neck: each half of the neck upwards, and the edges of the opening */
  readonly opening?: OpenedBack;
  /** shoulders that are not sewn but lie over each other */
  readonly laps?: Laps;
  /** the front is parted below its neck, with bands along both edges: the side whose band lies on top */
  readonly placket?: Worn;
  /** of a raglan whose left back line is left open at its top: rows of both edges */
  readonly raglanOpening?: { readonly back: Parted; readonly sleeve: Parted };
  readonly shoulders: SeamWay;
  /** how much longer a set-in cap is than its armhole, in hundredths */
  readonly capEase: number;
}

/** Rows of a part that are sewn, and those above them that are not. */
export interface Parted {
  readonly sewn: Rows;
  readonly open: Rows;
}
export type Rows = NonNullable<Stretch['rows']>;

export interface OpenedBack {
  readonly left: Line;
  readonly right: Line;
  /** down one side and up the other */
  readonly edges: Line;
}

/**
 * Of a back that is parted below its neck: its halves, and the edges of the opening from the right one to the left.
 * @param innerOf the inner edge of the half at an outer edge
 * @param middle what lies between the halves at the foot of the opening
 */
export function openedBack(innerOf: (outer: Edge) => Stretch, middle: Line): OpenedBack {
  const half = (outer: Edge, shaped: 'before' | 'after'): Line => [{ ...innerOf(outer), shaped }];
  return {
    left: half('left', 'after'),
    right: half('right', 'after'),
    edges: [...turnedRound(half('right', 'before')), ...middle, ...half('left', 'before')],
  };
}
