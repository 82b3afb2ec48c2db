import type { FabricName } from '../fabric.ts';
import type { FabricFacts } from '../fabric-facts.ts';
import type { ArmholeKind } from '../garment/kinds/armholes.ts';
import type { GarmentKind } from '../garment/kinds/garments.ts';
import type { NeckShape } from '../garment/kinds/necks.ts';
import type { YarnWeight } from '../garment/yarn-weight.ts';
import type { Phrase, PlainPhrase } from '../making-up/phrases.ts';
import type { MakingUpStep } from '../making-up/step.ts';
import type { RowWords } from '../row/row-words.ts';
import type { Side } from '../row/step.ts';
import type { Stripe } from '../yarn/stripes.ts';
import type { PictureWords } from './picture-words.ts';
import type { SaysLength } from './says-length.ts';

/**
 * All that a written pattern says, each meaning once: a language has a catalogue with every one of them, or does not
 * compile. Figures and names are given, in the order in which they stand in English; lengths come in words.
 */
export interface WrittenWords {
  /** the language as `lang` names it */
  readonly tag: string;
  /** within a figure: '.' or ',' */
  readonly point: string;
  /** behind a figure */
  readonly inch: string;
  readonly rows: RowWords;
  /** what a name of the draft (a piece, an edge, a section) is called; a knitter's own stays as it is */
  readonly name: (name: string) => string;
  /** '12 months', as the tables name their sizes */
  readonly size: (name: string) => string;
  readonly headings: Readonly<Record<Heading, string>>;
  readonly abbreviations: readonly Abbreviation[];
  /** what looks like an abbreviation in the rows, explained or not; with the flag g */
  readonly looksShort: RegExp;
  /** words of the other side of the Atlantic, or of another language, that no line may have */
  readonly foreign: RegExp;
  readonly pictures: PictureWords;
  readonly list: ListWords;
  readonly facts: FactWords;
  readonly work: WorkWords;
  readonly joining: JoiningWords;
}

export type Heading =
  | 'fit'
  | 'finished'
  | 'materials'
  | 'gauge'
  | 'abbreviations'
  | 'makingUp'
  | 'care'
  | 'licence';

/** Its word where the name alone does not find it in the lines. */
export type Abbreviation = readonly [name: string, means: string, word?: RegExp];

/** Sizes laid beside each other. */
export interface ListWords {
  /** figures of a line that may differ by size, with what hangs on them ('8th'); not those within the name of a stitch */
  readonly figure: RegExp;
  /** between figures of which one has a comma in it */
  readonly between: string;
  /** between the first and the last of a stretch whose figures differ by size: a dash would be taken for a size's */
  readonly to: string;
  /** one and many said alike, so that sizes of which one has a single stitch left are one line; and back */
  readonly many: (line: string) => string;
  readonly one: (line: string) => string;
  /** 'Size: S', 'Sizes: S (M, L)' */
  readonly sizes: (count: number, list: string) => string;
  /** 'Sizes S, M and L only: ' */
  readonly only: (names: readonly string[]) => string;
  /** a line of rows, whichever sizes it is for */
  readonly isRows: RegExp;
}

/** Rows `first` to `last` of a part; `turn` is worked again and again, its last turn perhaps not to its end. */
export interface StripeStretch {
  readonly first: number;
  readonly last: number;
  readonly turn: readonly Stripe[];
}

/** What stands before and behind the rows. */
export interface FactWords {
  readonly design: (by: string) => string;
  readonly licence: (licence: string) => string;
  readonly pieces: string;
  readonly kinds: Readonly<Record<GarmentKind, string>>;
  readonly armholes: Readonly<Record<ArmholeKind, string>>;
  readonly necks: Readonly<Record<NeckShape, string>>;
  /** 'Pullover with set-in armholes and a round neck, knitted flat in pieces and sewn together.' */
  readonly whatItIs: (kind: string, armhole: string, neck: string) => string;
  readonly body: (length: string) => string;
  readonly ease: (length: string, isWider: boolean) => string;
  readonly measures: Readonly<
    Record<'chest' | 'length' | 'napeToCuff' | 'upperArm' | 'wrist' | 'neck', string>
  >;
  readonly measure: (name: string, length: string) => string;
  readonly yarn: (words: string) => string;
  readonly anyYarn: string;
  readonly weight: (weights: readonly YarnWeight[]) => string;
  readonly strands: (count: number) => string;
  readonly amount: (amounts: readonly string[]) => string;
  readonly yards: string;
  readonly balls: (count: number) => string;
  readonly needles: (sizes: readonly string[]) => string;
  readonly longNeedle: (bands: readonly string[], needle: string, cm: number) => string;
  readonly notions: (things: readonly string[]) => string;
  readonly holders: string;
  /** stitches rest, in a line of the rows */
  readonly rests: RegExp;
  readonly markers: string;
  readonly tapestryNeedle: string;
  readonly buttons: (count: number, acrossMm: number | undefined) => string;
  readonly fabrics: Readonly<Record<FabricName, string>>;
  readonly gauge: (
    stitches: string,
    rows: string,
    over: string,
    fabric: string | undefined,
    needle: string | undefined,
  ) => string;
  readonly washed: string;
  /** in which colours which rows of a part are worked; begins as no title of a piece does */
  readonly striped: (of: string, stretches: readonly StripeStretch[], boundOffIn?: string) => string;
  readonly care: readonly string[];
  readonly forChild: (cautions: readonly string[]) => string;
  readonly noCords: string;
  readonly buttonsHold: string;
  readonly overHead: string;
}

/** The rows. */
export interface WorkWords {
  /** `asWorn`: of two fronts the left one is the first; `isTopDown`: of a sleeve, a straight one looks the same either way */
  readonly makes: (
    count: number,
    about: { readonly mirrored: boolean; readonly asWorn: boolean; readonly isTopDown: boolean },
  ) => string;
  /** '24 sts' */
  readonly count: (stitches: number) => string;
  /** what the rows below are called and worked in, and how many they are: 'Hem, in k2, p2 rib, 16 rows:' */
  readonly section: (name: string, fabric: string, rows: number) => string;
  readonly castOn: (stitches: number, needle: string | undefined) => string;
  readonly pickUp: (
    edges: readonly { readonly along: string; readonly stitches: number; readonly held: boolean }[],
    total: number,
    needle: string | undefined,
  ) => string;
  /** `rest` is all that is left, else the next so many */
  readonly hold: (stitches: number, rest: boolean) => string;
  readonly divide: (side: 'first' | 'last', stitches: number, rest: number) => string;
  readonly rejoin: (side: Side, stitches: number) => string;
  readonly change: (needle: string) => string;
  /** 'Row 3 (RS): knit.' */
  readonly row: (n: number, side: Side, work: string) => string;
  readonly bindOffAll: (isLoose: boolean, how: FabricFacts['boundOff']) => string;
  readonly rib: (stitches: number) => string;
  readonly ribAfterGap: (stitches: number) => string;
  readonly ribToEnd: string;
  readonly repeat: (first: number, last: number, more: number) => string;
  readonly rhythm: (row: number, beats: readonly { readonly every: number; readonly to: number }[]) => string;
}

/** The making up, by the steps and phrases of src/knit/making-up/. */
export interface JoiningWords {
  /** undefined where what is said of it needs no title */
  readonly title: {
    readonly [K in MakingUpStep['kind']]: (
      step: Extract<MakingUpStep, { readonly kind: K }>,
    ) => string | undefined;
  };
  readonly nos: (nos: readonly number[]) => string;
  /** behind a title */
  readonly colon: string;
  readonly said: {
    readonly [S in Phrase['say']]: S extends PlainPhrase
      ? string
      : (phrase: Extract<Phrase, { readonly say: S }>, length: SaysLength) => string | readonly string[];
  };
  /** a line that goes on behind a colon */
  readonly goesOn: (line: string) => string;
}
