/** What the drafts ask of the end of a sleeve that is sewn to the body. */
export interface SleeveTopFacts {
  /** as wide as the armhole is deep, twice, and straight to its end; else as wide as the upper arm with its ease */
  readonly sewnFlat: boolean;
  /** the rows above the underarm, as their section is called */
  readonly rows: 'cap' | 'top' | 'raglan';
  /** width at its end, mm, of the width at the underarm */
  readonly topMm: (widthMm: number) => number;
  /** may be eased into the armhole: its edge is longer than the other */
  readonly takesEase: boolean;
}

/**
 * share of a sleeve's width at which a set-in cap's curve ends; common practice, no published source. What is bound off
 * there is more, 29 to 51 in the hundred, since the curve's last steps are level too.
 */
const CAP_TOP_SHARE = 0.25;
/** width of a raglan sleeve at the neck; common practice, no published source */
const RAGLAN_TOP_MM = 30;

const asWide = (widthMm: number): number => widthMm;

const table = {
  /** bound off level at the underarm */
  level: { sewnFlat: true, rows: 'cap', topMm: asWide, takesEase: false },
  /** level too, and so much longer as the indent that it is let into is wide */
  'let in': { sewnFlat: true, rows: 'top', topMm: asWide, takesEase: false },
  /** a curve as long as the armhole's */
  cap: { sewnFlat: false, rows: 'cap', topMm: (mm) => CAP_TOP_SHARE * mm, takesEase: true },
  /** a line of as many rows as the body's */
  line: { sewnFlat: false, rows: 'raglan', topMm: () => RAGLAN_TOP_MM, takesEase: false },
} as const satisfies Readonly<Record<string, SleeveTopFacts>>;

export type SleeveTopName = keyof typeof table;
export const sleeveTops: Readonly<Record<SleeveTopName, SleeveTopFacts>> = table;
