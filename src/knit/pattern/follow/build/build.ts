import type { Fault } from '../../../fault.ts';
import type { MeasuredGauge } from '../../../measured-gauge.ts';
import type { Edge, PartEnd, PartStart, Recipe } from '../../../piece/recipe.ts';
import type { Item } from '../../../row/read/notation.ts';
import type { Side, Step } from '../../../row/step.ts';
import type { Beat, MarkName } from '../../say/how-far.ts';
import type { FabricSaid, Half, PieceHeading, Said, Statement, Stripe, Title } from '../../say/statement.ts';
import type { Edit, GroupsOfTrack } from './edit.ts';
import type { FabricState, Face } from './fabric-state.ts';
import type { Announced, Counts, Divides, LineNotes, Striped, Uncounted, UnreadAt } from './notes.ts';
import type { Cycle } from './numbered.ts';
import type { SectionBuild, ToldSection } from './section.ts';

type Slips = Extract<Statement, { is: 'slips' }>;

/** A pattern while it is being knitted on paper. Everything here changes as its lines are read. */
export interface Build {
  gauge: MeasuredGauge | undefined;
  gauges: Recipe['gauges'];
  /** counted in the pattern itself, so it holds for whatever is worked */
  gaugeInPattern: boolean;
  /** stitches or rows of a tension, where the other figure is still to come */
  gaugeBegun: Extract<Statement, { is: 'gauge' }> | undefined;
  readonly patterns: Map<string, StitchPattern>;
  readonly pieces: PieceBuild[];
  /** those of them that have stitches, in the same order */
  readonly begun: PieceBuild[];
  /** how many pieces are called so, or begin with these words */
  readonly namesTaken: Map<string, number>;
  unreadAt: UnreadAt | undefined;
  /** more than a garment can have: what follows is not read */
  full: boolean;
  piece: PieceBuild | undefined;
  part: PartBuild | undefined;
  /** the stitch pattern that is being defined, when one is */
  defining: StitchPattern | undefined;
  /** a heading seen before any piece: names the first piece, or a stitch pattern */
  heading: Title | undefined;
  needle: number;
  begunIn?: string | undefined; // the yarn named last before a cast-on
  begunHeld?: boolean | undefined; // it is several strands at once, which is shown wherever it is worked
  strands?: string | undefined; // those of every part that is begun
  /** a piece named by a heading that has no stitches yet */
  pending: PieceHeading | undefined;
  /** how the last buttonhole was made, those that lie in rows to come, and those of the piece that is begun next */
  hole: Hole | undefined;
  readonly holes: Holes[];
  holesNext: Extract<Statement, { is: 'buttonholes' }> | undefined;
  /** the row in hand is called a buttonhole */
  inHole: boolean;
  /** buttonholes of the piece that is followed are left out; whether there were any, and rows that nobody called so and may be some */
  omits: { met: boolean; doubt: boolean; left?: boolean } | undefined;
  /** how every row begins, of a piece or of all of them */
  slips: { readonly said: Slips; readonly piece: PieceBuild | undefined } | undefined;
  wholly?: FabricSaid | undefined; // of every part that is begun
  /** the stripes that the text told of last, and those of every piece that is begun */
  stripes: readonly Stripe[] | undefined;
  striped: readonly Stripe[] | undefined;
  /** rows that were announced and are spelled out now */
  announced: Announced | undefined;
  divides: Divides | undefined;
  /** a cast-on was not understood, and nothing is on the needle since */
  castOnUnread: boolean;
  /** the pending piece that was told to have nothing on the needle */
  told: PieceHeading | undefined;
  /** a line that only names something, and may name what is cast on next */
  title: Title | undefined;
  /** headings like 'Finishing': what follows makes no rows */
  talk: boolean;
  line: number;
  /** place of the sentence in hand in the text */
  at: number;
  /** what the line in hand has to be told */
  faults: Fault[];
  /** shaping that goes on beside what follows, until it ends */
  meanwhile: Track[];
  /** rows as counted by her, by name of the stretch */
  readonly stretches: Readonly<Record<string, number>>;
  /** rows of a fabric that were worded already */
  readonly worded: Map<string, readonly Step[]>;
  /** rows that were not understood, by what stands for them: their words, and stitches more (or less) after them */
  readonly unread: WeakMap<readonly Item[], { readonly words: string; readonly change: number }>;
  /** sentences that were not understood, or do not come out: the source line of each, by its words */
  readonly unreadLines: Map<string, number>;
  /** rows that name their yarns, by what stands for them: their words */
  readonly yarnWords: WeakMap<readonly Item[], string>;
  readonly counts: Counts;
  /** cells worked so far; a guard against texts that ask for millions of stitches */
  cells: number;
  /** counts stated while a shaping went on beside; compared when it has ended */
  later: (() => void)[];
  /** statements of the logical line in hand */
  recent: Said[];
}

export interface StitchPattern {
  readonly name: string;
  readonly of: number;
  readonly plus: number;
  readonly rows: Map<number, readonly Item[]>;
  everyOther: readonly Item[] | undefined;
  readonly lines: Map<number, number>;
  stated?: boolean;
  side?: Side; // of its first row, where that is said
  unread?: number; // the source line of a row of it that was not understood
  /** how its rows looked where they were worked first */
  readonly faces?: readonly (Face | undefined)[];
}

export interface PieceBuild {
  readonly name: string;
  makes: number;
  readonly mirrored: boolean;
  readonly half: Half | undefined;
  readonly parts: PartBuild[];
  /** how many of its parts are called so */
  readonly namesTaken: Map<string, number>;
  /** sets of stitches that wait for their turn */
  readonly resting: Resting[];
  readonly marks: Map<MarkName, Mark>;
  stretchesSoFar: number;
  /** both sides of a divided piece are worked at once: what one has, the other has as its mirror image */
  bothSides: boolean;
  /** place of the last sentence of it that was not understood */
  unreadAt: number;
}

export interface Resting {
  readonly parent: PartBuild;
  readonly stitches: number;
  readonly edge: 'right' | 'left' | 'middle';
  readonly neck: Edge;
  readonly firstSide: Side;
  /** fabric column at its right edge */
  readonly column: number;
  /** the sentence that left it, by its place in the text */
  readonly leftAt: number;
}

/** Where in a piece something happened: rows of the part before it, and its height in mm. */
export interface Mark {
  readonly part: PartBuild;
  readonly rows: number;
  readonly height: number;
}

export interface PartBuild {
  readonly name: string;
  readonly from: PartStart;
  firstSide: Side;
  readonly start: number;
  readonly rows: MadeRow[];
  readonly sections: SectionBuild[];
  live: number;
  /** fabric column of the stitch at the right edge */
  column: number;
  /** stitches from the right edge to each marker */
  markers: readonly number[];
  fabric: FabricState;
  /** the first row of a rib that was not understood */
  unreadRib?: number;
  /** what is kept at its edges while the rest is worked in its fabric */
  borders: Borders;
  /** the yarn in hand, as the text calls it, and the one it was cast on in */
  yarn: string | undefined;
  begunIn?: string | undefined;
  stripes: Striped | undefined;
  holes: Holes | undefined;
  /** rows of the fabric worked so far */
  fabricRow: number;
  neck: Edge | undefined;
  end: PartEnd | undefined;
  /** rows of its piece before its first */
  readonly baseRows: number;
  readonly baseHeight: number;
  height: number;
  readonly parent: PartBuild | undefined;
  /** stitches in the order worked, parted by a gap that was bound off or held in the last row */
  gap: readonly number[] | undefined;
  /** stitches left unworked by a turn, in front of the next row */
  unworked: number;
  /** the last of its rows that was not understood, where no count was stated since */
  uncounted: Uncounted | undefined;
  /** it is worked in rounds: what follows keeps its own words */
  rounds: boolean;
  /** the next row begins a section of its own */
  closed: boolean;
  cycle: Cycle | undefined;
  /** rows that the text gave a name: 'Dec row' */
  readonly named: Map<string, readonly Item[]>;
  lastEdge: 'both' | Edge | undefined;
  /** the section that the text named last */
  told?: ToldSection | undefined;
}

/** Stitches at an edge in a fabric of their own, whose first row was worked as row `first` of the part. */
export interface Border {
  readonly stitches: number;
  readonly rows: readonly string[];
  readonly first: number;
  /** the row of its fabric with which it begins */
  readonly phase: number;
  /** rows of the part when it was said last */
  readonly since: number;
  /** another fabric of the rest leaves it */
  readonly throughout?: true;
}

export type Borders = Readonly<Partial<Record<Edge, Border>>>;

export interface MadeRow {
  readonly side: Side;
  readonly steps: readonly Step[];
  readonly before: number;
  readonly after: number;
  readonly line: number;
  /** as written, where the text spells it out */
  readonly items?: readonly Item[];
  readonly edits: readonly Edit[];
  readonly fabric: FabricState;
  readonly borders: Borders;
  readonly yarn: string | undefined;
  readonly fabricRow: number;
  /** its first stitch is slipped */
  readonly slips?: Slips;
  /** the knitter's own words, where the text was not understood */
  own?: string;
  /** the part before the row, to take it back */
  readonly was: Pick<PartBuild, 'column' | 'fabricRow' | 'height' | 'markers' | 'gap' | 'unworked'>;
  /** the mirror image of a row whose stitches stand in the text */
  spelled?: boolean;
  /** it makes a buttonhole, or closes one */
  hole?: boolean;
  readonly kind: 'row' | 'even' | 'stretch' | 'shape' | 'groups' | 'across' | 'bind off';
}

/** A shaping over several rows, taken up row by row. */
export interface Track {
  readonly edge: (part: PartBuild) => 'both' | Edge;
  readonly change: number;
  readonly beats: readonly Beat[];
  /** how its rows are worked, where the text spells it */
  readonly items?: readonly Item[] | undefined;
  /** in place of beats: what is bound off or cast on, one row after the other */
  readonly groups?: GroupsOfTrack;
  beat: number;
  doneInBeat: number;
  /** rows until the next shaping row, counting it */
  due: number;
  ended: boolean;
  /** rows after which the running beat ends whatever is left of it */
  limit: number;
  readonly line: number;
  /** waits so many rows before it begins */
  wait: number;
  /** waits until so many stitches are on the needle, which are fewer or more than there were */
  waitFor?: { readonly stitches: number; readonly fewer: boolean } | undefined;
  /** what follows at its edge when it has ended */
  readonly behind?: (() => Track) | undefined;
}

/** How a buttonhole was made, in its one row or two. */
export interface Hole {
  readonly rows: readonly (readonly Item[])[];
  readonly side: Side;
  readonly fabric: FabricState;
}

/** Buttonholes that lie in rows to come; `at`: in which of the part's rows, counted from 0. */
export interface Holes {
  readonly at: readonly number[];
  /** the row that they are said before */
  readonly first: number;
  readonly words: string;
  readonly line: number;
  readonly counted: boolean;
  /** said in lengths where nobody knows the rows: she measures for them as she does for the stretch */
  readonly measured: boolean;
  readonly part: PartBuild;
  readonly piece: PieceBuild;
  note: LineNotes | undefined;
}

export const nextSide = (part: PartBuild): Side =>
  part.rows.length % 2 === 0 ? part.firstSide : part.firstSide === 'RS' ? 'WS' : 'RS';

/** The edge at which the next row begins: RS rows run from the right edge to the left. */
export const startEdge = (part: PartBuild): Edge => (nextSide(part) === 'RS' ? 'right' : 'left');

export const otherEdge = (edge: Edge): Edge => (edge === 'right' ? 'left' : 'right');
