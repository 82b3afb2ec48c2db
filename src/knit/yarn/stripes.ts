import type { PlannedPart } from '../piece/planned.ts';
import { rowLoops, setUpLoops } from './loops.ts';

/** A stripe: so many rows in a colour; the stripes repeat in turn. */
export interface Stripe {
  readonly colour: string;
  readonly rows: number;
}

/**
 * Where a piece is striped. Its rows are counted from its cast-on through its parts; those before `first` and after
 * `last` are knitted in the first colour.
 */
export interface Striped {
  readonly first: number;
  readonly last?: number;
  /** row of the stripes (from 1; any whole number, since they repeat) with which row `first` is knitted */
  readonly at: number;
  /** they run backwards, as on a sleeve knitted from the top down */
  readonly back?: true;
}

/**
 * Other stripes of one make, from a row of one of its parts on; parts that grow from that one go on with them. The one that
 * begins highest holds. Without stripes of its own the rows are the garment's again.
 */
export interface Restriped {
  /** the piece's id */
  readonly piece: string;
  readonly make: number;
  /** its place among the parts of the piece */
  readonly part: number;
  /** of the part, from 1 */
  readonly row: number;
  /** row of the stripes with which it begins */
  readonly at: number;
  readonly stripes: readonly Stripe[];
}

/** The colour of a row of the stripes (from 1; any whole number). Stripes without rows have no colour to give. */
export function colourOf(stripes: readonly Stripe[], row: number): string | undefined {
  const period = stripes.reduce((sum, s) => sum + s.rows, 0);
  if (period <= 0) return undefined;
  let at = (((row - 1) % period) + period) % period;
  for (const stripe of stripes) {
    if (at < stripe.rows) return stripe.colour;
    at -= stripe.rows;
  }
  return undefined;
}

/** A garment's stripes: by piece where they were laid through the pieces; without that they begin anew with each part. */
export interface StripesOf {
  readonly stripes?: readonly Stripe[];
  /** by the piece's id; a piece that is not among them is not striped */
  readonly striped?: Readonly<Record<string, Striped>>;
  readonly restriped?: readonly Restriped[];
}

export const isStriped = ({ stripes = [], restriped = [] }: StripesOf): boolean =>
  stripes.length + restriped.length > 0;

/** Gives the colour of a part's row (from 1 within the part; 0 is its set-up); undefined where there are no stripes. */
export function coloursOf(
  of: StripesOf,
  piece: string,
  parts: readonly PlannedPart[],
  part: PlannedPart,
  make = 1,
): (row: number) => string | undefined {
  const own = of.restriped?.filter((one) => one.piece === piece && one.make === make) ?? [];
  return changedColours(own, plannedColours(of, piece, parts, part), parts, part);
}

/** What she changed her mind about, over what was planned. */
function changedColours(
  changes: readonly Restriped[],
  planned: (row: number) => string | undefined,
  parts: readonly PlannedPart[],
  part: PlannedPart,
): (row: number) => string | undefined {
  // by name: the part in hand may stand as it was planned, those of the make as they lie now
  const line = lineBelow(parts, part).map(({ name }) => name);
  const below = rowsBelow(parts, part);
  const ways = changes
    .flatMap((change) => {
      const of = parts[change.part];
      return of && line.includes(of.name) ? [{ ...change, from: rowsBelow(parts, of) + change.row }] : [];
    })
    .sort((a, b) => b.from - a.from);
  return (row) => {
    const height = below + lastOfColour(part, row);
    // what a part is begun with is of its first row's colour
    const way = ways.find(({ from }) => from <= (height === 0 ? 1 : height));
    if (!way?.stripes.length) return planned(row);
    return colourOf(way.stripes, Math.max(0, height - way.from) + way.at);
  };
}

function plannedColours(
  { stripes = [], striped }: StripesOf,
  piece: string,
  parts: readonly PlannedPart[],
  part: PlannedPart,
): (row: number) => string | undefined {
  // as garments were shown before stripes went on through the parts
  if (striped === undefined) return (row) => (row < 1 ? undefined : colourOf(stripes, row));
  const own = Object.hasOwn(striped, piece) ? striped[piece] : undefined;
  const below = rowsBelow(parts, part);
  return (row) => colourOf(stripes, own ? rowOfStripes(own, below + lastOfColour(part, row)) : 1);
}

/** All is bound off in the colour of the row before it, which hides the edge in a seam; common practice, no published source. */
const lastOfColour = ({ end, rows }: PlannedPart, row: number): number =>
  end === 'bind off' && row === rows.length ? row - 1 : row;

function rowOfStripes({ first, last = Number.POSITIVE_INFINITY, at, back }: Striped, row: number): number {
  if (row < first || row > last) return 1;
  return at + (back ? first - row : row - first);
}

/** Rows of the piece from its cast-on to where a part begins. */
export const rowsBelow = (parts: readonly PlannedPart[], part: PlannedPart): number =>
  lineBelow(parts, part).reduce((sum, { rows }, i) => (i === 0 ? 0 : sum + rows.length), 0);

/** A part, and one after the other what it grows from. */
export function lineBelow(parts: readonly PlannedPart[], part: PlannedPart): readonly PlannedPart[] {
  const line: PlannedPart[] = [];
  let at: PlannedPart | undefined = part;
  while (at && !line.includes(at)) {
    const { parent }: PlannedPart = at;
    line.push(at);
    at = parts.find(({ name }) => name === parent);
  }
  return line;
}

/** Loops of a part by colour; the set-up goes with row 1. They add up to the loops of the whole part. */
export function loopsByColour(
  part: PlannedPart,
  colour: (row: number) => string | undefined,
): ReadonlyMap<string, number> {
  const loops = new Map<string, number>();
  const add = (name: string | undefined, count: number): void => {
    if (name !== undefined) loops.set(name, (loops.get(name) ?? 0) + count);
  };
  add(colour(1), setUpLoops(part));
  for (const row of part.rows) add(colour(row.n), rowLoops(row));
  return loops;
}
