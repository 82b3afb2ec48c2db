import type { Fault } from '../../../fault.ts';

/** What a line of the text turned out to be. */
export type LineKind = 'instructions' | 'heading' | 'talk' | 'own words';

/** What is found out about a line while its statements are worked. */
export interface LineNotes {
  readonly faults: Fault[];
  readonly stated: number[];
  asksCount: boolean;
  mended: boolean;
  kind: LineKind | undefined;
  before: number | undefined;
  after: number | undefined;
}

export const freshNotes = (): LineNotes => ({
  faults: [],
  stated: [],
  asksCount: false,
  mended: false,
  kind: undefined,
  before: undefined,
  after: undefined,
});
