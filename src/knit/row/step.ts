import type { StitchName } from '../stitch.ts';

export type Side = 'RS' | 'WS';

/** How far a step goes: until `left` stitches remain on the left needle (0: to the end of the row). */
export interface Until {
  readonly left: number;
}

/** The row language: what is worked, in the order in which it is worked. */
export type Step =
  | { readonly work: StitchName; readonly times: number }
  | { readonly work: StitchName; readonly until: Until }
  | { readonly repeat: readonly Step[]; readonly times: number }
  | { readonly repeat: readonly Step[]; readonly until: Until };

export const otherSide = (side: Side): Side => (side === 'RS' ? 'WS' : 'RS');
