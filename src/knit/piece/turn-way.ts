import type { StitchName } from '../stitch.ts';

/** What a way of turning asks of the three rows that have to do with it; all of it takes no stitch but the double one. */
export interface TurnFacts {
  /** worked before the turn */
  readonly before?: StitchName;
  /** the first stitch after the turn */
  readonly after?: StitchName;
  /** said of the row that goes over the gap */
  readonly closes: StitchName;
}

/**
 * Wrapped: Purl Soho, 'Short Rows: Wrap + Turn'; Berroco Design Studio, 'Shaping Shoulders with Short Rows', 2016.
 * Double stitch: Shibui Knits and Stolen Stitches, both 'German Short Rows'.
 */
const ways = {
  wrapped: { before: 'wrap next st', closes: 'picking up each wrap' },
  'double stitch': { after: 'ds', closes: 'working each ds as one st' },
} as const satisfies Readonly<Record<string, TurnFacts>>;

/** How the gap at a turn is kept from becoming a hole. */
export type TurnWay = keyof typeof ways;
export const turnWays = Object.keys(ways) as readonly TurnWay[];
export const turnFacts = (way: TurnWay): TurnFacts => ways[way];

/** Whether it is only said of the row that goes over a gap. */
export const closesGap = (work: StitchName): boolean => turnWays.some((way) => ways[way].closes === work);
