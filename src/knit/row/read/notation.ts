import type { StitchName } from '../../stitch.ts';
import { stitches } from '../../stitch.ts';

/**
 * A row as it is written. It says more than the row language: markers, 'evenly', repeats whose end follows
 * from what is written after them. `settle` turns it into steps.
 */
export type Item =
  /** `panel`: a stitch pattern named elsewhere, worked over so many stitches */
  | {
      readonly is: 'stitches';
      readonly work: StitchName;
      readonly times: number;
      readonly panel?: boolean;
      /** 'rib 5': in the rib, whatever else is on the needle */
      readonly rib?: boolean;
      /** 'work 6 sts in garter st': in that, whatever else is on the needle */
      readonly fabric?: FabricInRow;
      /** of those bound off: they lie in the middle of what is on the needle */
      readonly centre?: true;
      /** cast on over those bound off in the row before */
      readonly over?: true;
    }
  /** `appear`: each stitch is worked as it looks ('knit the knit sts and purl the purl sts') */
  | {
      readonly is: 'stitches to';
      readonly work: StitchName;
      readonly goal: Goal;
      readonly appear?: boolean;
      /** each the other way round ('knit the purl sts and purl the knit sts') */
      readonly opposite?: boolean;
      readonly rib?: boolean;
      readonly fabric?: FabricInRow;
    }
  | { readonly is: 'group'; readonly items: readonly Item[]; readonly times: number }
  /** `nth`: 'inc in every 10th st', and what is left over at the end is worked plain */
  | { readonly is: 'group to'; readonly items: readonly Item[]; readonly goal: Goal; readonly nth?: true }
  | { readonly is: 'group over'; readonly items: readonly Item[]; readonly stitches: number }
  | { readonly is: 'marker'; readonly does: 'place' | 'slip' | 'remove' }
  /** increases (> 0) or decreases spread over the whole row, or over the stitches named */
  | {
      readonly is: 'evenly';
      readonly change: number;
      readonly over?: number;
      readonly work?: StitchName;
      /** 'increasing evenly to 60 sts': as many as it takes, in this direction */
      readonly to?: number;
    }
  /** the rest of the row is not worked now */
  | { readonly is: 'turn' }
  /** 'k22, place these sts on a holder, …': what was worked before it waits apart from what comes after; `of`: so many of it; `ball`: both go on, with a ball each */
  | { readonly is: 'parting'; readonly of?: number; readonly ball?: true };

/** A fabric that a row names for some of its stitches. */
export type FabricInRow = 'garter' | 'moss' | 'stocking';

export type Goal =
  /** until so many stitches are left on the left needle */
  | { readonly left: number }
  /** as far as the stitches written after it allow */
  | { readonly left: 'what follows' }
  /** so many stitches before the next marker */
  | { readonly marker: number }
  /** so many stitches before the one at which the row of this side before was turned */
  | { readonly turn: number };

export const END: Goal = { left: 'what follows' };

/** 'to end' said in so many words. */
export const TO_END: Goal = { left: 0 };

/** Stitches that items take from the left needle; undefined where that hangs on the count. */
export function takenBy(items: readonly Item[]): number | undefined {
  let sum = 0;
  for (const item of items) {
    const one = takenByOne(item);
    if (one === undefined) return undefined;
    sum += one;
  }
  return sum;
}

function takenByOne(item: Item): number | undefined {
  switch (item.is) {
    case 'stitches':
      return stitches[item.work].takes * item.times;
    case 'group': {
      const inner = takenBy(item.items);
      return inner === undefined ? undefined : inner * item.times;
    }
    case 'group over':
      return item.stitches;
    case 'marker':
    case 'turn':
    case 'parting':
      return 0;
    default:
      return undefined;
  }
}
