/** How a closed neck opens wider than its own edge, so that a head passes. */
export interface NeckOpeningFacts {
  /** the back is parted below its neck */
  readonly partsBack: boolean;
  /** the front is, with bands along both edges that lie over each other: a placket */
  readonly partsFront: boolean;
  /** the left back line of a raglan is left open at its top */
  readonly opensRaglan: boolean;
  /** shoulders that are not sewn but lie over each other: with buttons where it is one */
  readonly shoulders: 0 | 1 | 2;
}

const table = {
  none: { partsBack: false, partsFront: false, opensRaglan: false, shoulders: 0 },
  back: { partsBack: true, partsFront: false, opensRaglan: false, shoulders: 0 },
  /**
   * The left shoulder is left open and buttoned (S. Jalowiec, 'Neckbands for kids' sweaters', 2013); a band of the front
   * with the holes lies on the back, which has the buttons (common practice, no published source).
   */
  'left shoulder': { partsBack: false, partsFront: false, opensRaglan: false, shoulders: 1 },
  /** bands of front and back lie over each other along both shoulders and are caught at the armholes; common practice, no published source */
  envelope: { partsBack: false, partsFront: false, opensRaglan: false, shoulders: 2 },
  /**
   * A short opening of the front with a band along either side, 3 to 5 in deep, with 2 to 4 buttons (a henley neck:
   * lowlandkids.com, sewing index, 'Henley').
   */
  placket: { partsBack: false, partsFront: true, opensRaglan: false, shoulders: 0 },
  /** common practice, no published source */
  'raglan seam': { partsBack: false, partsFront: false, opensRaglan: true, shoulders: 0 },
} as const satisfies Readonly<Record<string, NeckOpeningFacts>>;

export type NeckOpening = keyof typeof table;
export const neckOpenings = Object.keys(table) as readonly NeckOpening[];
export const neckOpeningFacts: Readonly<Record<NeckOpening, NeckOpeningFacts>> = table;

/** Facts of a design's opening; of one that nobody knows, as of none. */
export const factsOfOpening = (name: NeckOpening = 'none'): NeckOpeningFacts =>
  neckOpeningFacts[name] ?? table.none;

/** Whether it is an opening at all. */
export const opensMore = (name: NeckOpening): boolean => {
  const { partsBack, partsFront, opensRaglan, shoulders } = factsOfOpening(name);
  return partsBack || partsFront || opensRaglan || shoulders > 0;
};
