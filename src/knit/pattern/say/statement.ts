import type { FabricName } from '../../fabric.ts';
import type { Fault } from '../../fault.ts';
import type { Item } from '../../row/read/notation.ts';
import type { Side } from '../../row/step.ts';
import type { BorderRows } from './border-rows.ts';
import type { AsFarAs, Beat, EdgeName, EndEdge, PieceSaid, Place, Until } from './how-far.ts';

/** A fabric as patterns name it. */
export type FabricSaid =
  | { readonly is: 'named'; readonly name: FabricName }
  /** 'knit even': stocking stitch goes on, where there is none it is garter */
  | { readonly is: 'knit on' }
  /** a rib of so many knit and purl stitches */
  | { readonly is: 'rib'; readonly face: string }
  /** whatever is on the needle */
  | { readonly is: 'established' }
  /** a stitch pattern that the text defines or that nobody knows */
  | {
      readonly is: 'pattern';
      readonly words: string;
      /** the words without those that only say that it is a pattern */
      readonly name: string;
      /** what is meant where the text defines no pattern of that name: the last rib, double moss, the only pattern */
      readonly else?: 'rib' | 'double moss' | 'the pattern';
    };

export interface Label {
  /** row numbers named; empty for 'next row' */
  readonly rows: readonly number[];
  /** 'row 2 and every WS row' */
  readonly everyOther?: boolean;
  readonly next?: number;
  readonly side?: Side;
  /** 'Dec row', 'Buttonhole row': later lines call it so */
  readonly name?: string;
}

/** What a line that only names something calls what follows. */
export interface Title {
  /** 'Balls (make 2)' */
  readonly makes?: number;
  readonly words: string;
  /** as the name of a stitch pattern; '' where nothing is left of it */
  readonly pattern: string;
  /** 'Shape neck', 'Divide for shoulders': the stitches left at a turn are worked apart */
  readonly divides: boolean;
  /** nothing but a number, which may name a piece and never what its rows are */
  readonly number?: boolean;
  readonly half?: Half;
}

/** The half of a garment that a piece is, by its name; 'fronts' are worked as the left one. */
export type Half = 'right' | 'left';
type About =
  | 'pattern'
  | 'marker'
  | 'yarn'
  | 'facing'
  | 'change'
  | 'making up'
  | 'aside'
  | 'another'
  | 'divides'
  | 'hole';

export type Statement =
  | {
      readonly is: 'heading';
      readonly title: Title;
      readonly piece?: PieceHeading;
      /** 'Left side', 'Second half': where a piece is in work no piece of its own */
      readonly sideOnly: boolean;
      /** 'Finishing', 'Materials': what follows makes no rows */
      readonly talk: boolean;
      readonly places: readonly Place[];
      /** 'Hem, in k2, p2 rib': rows of a fabric, spelled out below it */
      readonly section?: FabricSaid;
    }
  /** `rows`: so many rows are announced, and spelled out behind it */
  | { readonly is: 'note'; readonly about: About; readonly rows?: number; readonly makes?: number }
  /** '(RS)', 'noting first row is a WS row': the side of the row that comes next */
  | { readonly is: 'next side'; readonly side: Side }
  /** two stars: what another piece works 'from ** to **' */
  | { readonly is: 'stars'; readonly three?: true }
  /** one star before instructions: they are repeated from there */
  | { readonly is: 'star' }
  /** 'repeat from * 3 times more': the instructions since one star, or two */
  | { readonly is: 'repeat from stars'; readonly stars: 1 | 2; readonly times: number }
  /** `yarn`: 'with A and 4 mm needles' */
  | { readonly is: 'needle'; readonly mm?: number; readonly yarn?: string }
  | {
      readonly is: 'gauge';
      readonly stitches?: number;
      readonly rows?: number;
      readonly fabric?: FabricSaid;
      readonly needle?: number;
    }
  | { readonly is: 'multiple'; readonly of: number; readonly plus: number; readonly name: string }
  | { readonly is: 'cast on'; readonly stitches: number }
  | {
      readonly is: 'pick up';
      readonly items: readonly Item[];
      readonly edges: readonly { readonly along: string; readonly stitches: number }[];
    }
  | {
      readonly is: 'row';
      readonly label?: Label;
      readonly items: readonly Item[];
      readonly like?: number;
      readonly likeTo?: number; // 'as rows 1-2'
      /** it names yarns within itself, or only the one that leads it: its words are shown with it */
      readonly told?: 'within' | 'led';
      readonly all?: true; // 'across all sts' in so many words
      readonly words?: string;
    }
  | {
      readonly is: 'repeat rows';
      readonly from?: number;
      readonly to?: number;
      readonly last?: number;
      /** 'Repeat 2 more times': one row or two, spelled out right above */
      readonly just?: true;
      readonly times?: number;
      readonly until?: Until;
      /** of stripes: the yarn in which the last rows are worked */
      readonly endYarn?: string;
    }
  | {
      readonly is: 'even';
      readonly fabric?: FabricSaid;
      readonly until?: Until;
      readonly firstLooks?: 'k' | 'p';
      /** it is the fabric of whatever the text begins from here on */
      readonly wholly?: true;
      /** stitches that are on the needle, as the text has it */
      readonly over?: number;
      /** of a rib: with what its next row begins */
      readonly firstStitches?: { readonly work: 'k' | 'p'; readonly n: number };
      /** of a pattern of rows: which of them is the next */
      readonly fromRow?: number;
    }
  | { readonly is: 'rows'; readonly n: number; readonly items: readonly Item[] }
  | {
      readonly is: 'shape';
      readonly change: number;
      readonly edge: EdgeName;
      readonly beats: readonly Beat[];
      readonly fabric?: FabricSaid;
      /** how its rows are worked, where the text spells it */
      readonly items?: readonly Item[];
    }
  | {
      readonly is: 'evenly';
      readonly change: number;
      readonly toCount?: number;
      /** 'inc to 60 sts': as many as it takes */
      readonly all?: boolean;
      readonly on: 'next' | 'last' | 'unsaid';
      readonly over?: number;
      /** at an edge of the last row, and not spread over it */
      readonly edge?: EdgeName;
    }
  | {
      readonly is: 'groups';
      readonly work: 'bo' | 'co';
      readonly edge: EdgeName;
      readonly groups: readonly GroupSaid[];
      readonly byPurpose?: boolean;
    }
  | { readonly is: 'bind off'; readonly stitches?: number; readonly rest?: boolean }
  | {
      readonly is: 'hold';
      readonly stitches?: number;
      readonly which: 'rest' | 'first' | 'last' | 'centre' | 'half' | 'all';
    }
  | {
      readonly is: 'work on';
      readonly which: 'first' | 'last' | 'these' | 'only' | 'each side' | 'both at once';
      readonly stitches?: number;
    }
  | {
      readonly is: 'rejoin';
      readonly stitches?: number;
      readonly side?: Side;
      readonly edge?: 'left' | 'right' | 'middle';
    }
  | { readonly is: 'other side'; readonly reversing: boolean }
  | {
      readonly is: 'as for';
      readonly piece: PieceSaid;
      readonly to?: AsFarAs;
      readonly reversing: boolean;
      /** only the shaping of that place */
      readonly only?: Place;
    }
  | { readonly is: 'at the same time'; readonly after?: Until }
  | { readonly is: 'stated'; readonly stitches: number }
  | { readonly is: 'turn' }
  /** ', ending with a WS row' after what has its own number of rows */
  | { readonly is: 'ending'; readonly end?: Side; readonly endEdge?: EndEdge; readonly endRow?: number }
  /** 'rep dec row every other row 3 times more'; without a name the last row that changed the count */
  | {
      readonly is: 'repeat named';
      readonly name: string;
      /** 'rep row 27 on every foll 8th row': its name is a number that the text gave it */
      readonly number?: number;
      /** it makes stitches more (or less) */
      readonly change?: number;
      readonly beats: readonly Beat[];
    }
  /** 'keeping 6 sts at each end in garter st'; none named where those that are there go on */
  | {
      readonly is: 'borders';
      readonly borders: readonly BorderSaid[];
      readonly main?: FabricSaid;
      /** whatever fabric the rest is worked in later on */
      readonly throughout?: true;
    }
  /** how all rows from here on are coloured, without `of` in the stripes that are there; `listed`: nothing but so many rows in their yarns, below a title or with it */
  | { readonly is: 'stripes'; readonly of?: readonly Stripe[]; readonly listed?: 'anew' | 'on' }
  /** in which rows to come buttonholes lie; without beats nobody knows, `omitted`: those of the piece that is followed are left out */
  | {
      readonly is: 'buttonholes';
      readonly beats: readonly Beat[];
      readonly items?: readonly Item[];
      readonly omitted?: true;
      readonly words?: string;
    }
  /** 'always slip the first st', 'always k the first st': how every row begins from here on, and ends */
  | { readonly is: 'slips'; readonly work?: 'sl' | 'sl wyif' | 'k'; readonly last?: 'k' | 'p' }
  /** 'with B': what comes next is worked in that yarn */
  /** `held`: so many strands at once, which is shown from the first row on; `all`: throughout */
  | { readonly is: 'yarn'; readonly name: string; readonly held?: true; readonly all?: true }
  /** rows just worked get a name: 'these 2 rows form rib' */
  | { readonly is: 'named rows'; readonly name: string; readonly rows?: number };

/** So many rows in a yarn. */
export interface Stripe {
  readonly rows: number;
  readonly yarn: string;
}

/** So many stitches at an edge, worked in a fabric of their own while the rest goes on. */
export interface BorderSaid {
  /** 'unsaid' of border stitches of which a front has but one */
  readonly edge: EdgeName | 'unsaid';
  readonly stitches: number;
  readonly fabric: FabricSaid | BorderRows;
}

export interface PieceHeading {
  readonly name: string;
  readonly makes: number;
  /** every second one is the mirror image of the first */
  readonly mirrored?: boolean;
  readonly half?: Half;
}

export interface GroupSaid {
  readonly stitches: number;
  /** rows it is worked at the beginning of, one after the other; 1 unless said */
  readonly rows: number;
  /** 2: every second row */
  readonly every: number;
  /** until so many stitches are on the needle */
  readonly toCount?: number;
  readonly side?: Side;
}

export interface Said {
  readonly statement: Statement;
  readonly line: number;
  readonly column: number;
  /** stitches that the text says are on the needle after it */
  readonly stated?: number;
  /** of a cast-on: whether something is begun or an edge goes on, where the text says it */
  readonly begins?: 'anew' | 'at neck' | 'at armhole';
  /** of 'at the same time': it lies in the rows just before it alone */
  readonly within?: boolean;
}

/** Takes a statement that was read, the token where it begins, and the count that the text states after it. */
export type Add = (statement: Statement, at: number, stated?: number) => void;

/** What one sentence says, as far as it is understood. */
export interface ReadSentence {
  readonly said: readonly Said[];
  /** what was expected where the rest of the sentence was not understood */
  readonly fault?: Fault;
  /** the token at which that rest begins */
  readonly rest?: number;
  /** from here on it is worked in rounds */
  readonly rounds?: boolean;
  /** the rest is an order to knit, though it may not sound like one */
  readonly order?: boolean;
  /** the rest only says more of what stands before it */
  readonly beside?: boolean;
}
