import type { StandingGarment } from '../piece/standing.ts';
import type { LaidLine } from './boundary-of.ts';
import type { Break, Consequence } from './break.ts';
import { atOnce, changedBy, isCounted, longerBy, offBy, together } from './break-groups.ts';
import { alike, breaks } from './consequences.ts';
import { type Edit, editedBy, type Knitted, nothingKnitted } from './edit.ts';
import { shoulderWays, twinWays } from './shoulder-ways.ts';
import {
  type Locked,
  merged,
  namesAlong,
  otherLines,
  pairWays,
  pickUpWays,
  placesIn,
  rowsEdit,
  rowWays,
  sidesOf,
} from './ways.ts';

/** What a change breaks, with what mends it. */
export interface Answer<Garment> {
  /** what is mended together: the edges of one band are */
  readonly what: readonly [Consequence, ...Consequence[]];
  /** the best first; none where nothing that can still be knitted otherwise brings the edges together */
  readonly mends: readonly Mend<Garment>[];
  /** the piece that it would have to be mended on is on the needles, or knitted, so far */
  readonly other: 'not begun' | 'begun' | 'done';
}

export interface Mend<Garment> {
  readonly edits: readonly Edit[];
  /** the garment with them, worked and judged: the edge meets, and nothing else is broken by it */
  readonly garment: Garment;
}

type Pieces = Pick<StandingGarment, 'pieces' | 'joints' | 'byHand'>;

export interface Asked<Garment> {
  readonly before: Garment;
  readonly after: Garment;
  readonly knitted?: Knitted;
  /** the piece that she changes: it is what she wants, and stays so */
  readonly inHand?: string | undefined;
}

/** A third way for the same edge is rarely of use, nor is another stretch of the same piece; each is worked whole. */
const MOST_MENDS = 2;

/** The pieces that it changes, and how. */
const mannerOf = (edits: readonly Edit[]): string =>
  JSON.stringify([...new Set(edits.map(({ kind, piece }) => `${kind} ${piece}`))].sort());
/** A raglan's sleeve brings the front with it, and that the neckband. */
const DEPTH = 3;

/**
 * Each consequence of a change with what mends it: tried on the garment and judged again before it is offered. One after
 * the other, since a mend is found by working whole pieces: the caller may pause between them.
 */
export function* answers<Garment extends Pieces>(asked: Asked<Garment>): Generator<Answer<Garment>, void> {
  const { before, after, knitted = nothingKnitted, inHand } = asked;
  const all = breaks(before, after);
  const answered = (group: readonly Break[]): Answer<Garment> | undefined => {
    const [first, ...others] = alike(group).map(([{ what }]) => what);
    if (!first) return undefined;
    const locked = new Set([inHand !== undefined && touches(group, inHand) ? inHand : changedBy(first)]);
    const [own, ...rest] = together(group);
    const mended = new Set(group.map(({ key }) => key));
    const elsewhere = new Map(all.flatMap((one) => (mended.has(one.key) ? [] : [[one.key, one] as const])));
    const mends = own ? new Search(before, knitted, elsewhere).mends(after, own, locked) : [];
    const answer: Answer<Garment> = {
      what: [first, ...others] as const,
      mends,
      other: stateOf(otherOf(group, locked), asked),
    };
    return rest.length > 0 && mends.length === 0 ? undefined : answer;
  };
  for (const groups of atOnce(together(all))) {
    const whole = answered(groups.flat());
    if (whole) yield whole;
    else
      for (const group of groups) {
        const one = answered(group);
        if (one) yield one;
      }
  }
}

const piecesOf = ({ worked, what }: Break): readonly string[] => {
  const sewn = worked?.lines.flatMap(({ laid }) => laid.map(({ stretch }) => stretch.piece)) ?? [];
  return what.kind === 'pick up' ? [...sewn, what.band] : sewn;
};

const touches = (group: readonly Break[], piece: string): boolean =>
  group.some((one) => one.what.kind !== 'pick up' && piecesOf(one).includes(piece));

function otherOf(group: readonly Break[], locked: ReadonlySet<string | undefined>): string | undefined {
  const [first] = group;
  if (first?.what.kind === 'pick up') return first.what.band;
  if (first?.what.kind === 'pair') return first.what.piece;
  return first && piecesOf(first).find((piece) => !locked.has(piece));
}

function stateOf(piece: string | undefined, { after, knitted = nothingKnitted }: Asked<Pieces>) {
  const found = after.pieces.find(({ recipe }) => recipe.name === piece);
  const so = knitted.get(piece ?? '');
  if (!found || so?.isBegun !== true) return 'not begun';
  const isDone = found.makes.every(({ make, parts }) =>
    parts.every(({ rows }, i) => (so.rows[make - 1]?.[i] ?? 0) >= rows.length),
  );
  return isDone ? 'done' : 'begun';
}

class Search<Garment extends Pieces> {
  constructor(
    private readonly before: Garment,
    private readonly knitted: Knitted,
    /** what the change itself breaks elsewhere: a mend may leave it for its own, but no count may be further off by it */
    private readonly elsewhere: ReadonlyMap<string, Break>,
  ) {}

  mends(at: Garment, group: readonly Break[], locked: Locked): readonly Mend<Garment>[] {
    const found: Mend<Garment>[] = [];
    for (const edits of this.ways(at, group, locked)) {
      if (found.length >= MOST_MENDS) break;
      if (found.some((mend) => mannerOf(mend.edits.slice(0, edits.length)) === mannerOf(edits))) continue;
      const mend = this.tried(at, edits, group, locked, DEPTH);
      if (mend) found.push(mend);
    }
    return found;
  }

  /** The garment with all of them, and with what they ask for in their turn. */
  private tried(
    at: Garment,
    edits: readonly Edit[],
    group: readonly Break[],
    locked: Locked,
    depth: number,
  ): Mend<Garment> | undefined {
    const garment = editedBy(at, edits, this.knitted);
    if (!garment) return undefined;
    const left = breaks(this.before, garment).filter((one) => !this.mayBeLeft(one));
    const mended = new Set(group.map(({ key }) => key));
    if (left.some(({ key }) => mended.has(key))) return undefined;
    const [next] = together(left);
    if (!next) return { edits, garment };
    if (depth === 0) return undefined;
    const further = new Set([...locked, ...edits.map(({ piece }) => piece)]);
    for (const more of this.ways(garment, next, further)) {
      const last = this.tried(garment, more, next, further, depth - 1);
      if (last) return { edits: [...edits, ...last.edits], garment: last.garment };
    }
    return undefined;
  }

  private mayBeLeft(one: Break): boolean {
    const was = this.elsewhere.get(one.key);
    return was !== undefined && (!isCounted(one) || offBy(one) <= offBy(was));
  }

  private ways(at: Garment, group: readonly Break[], locked: Locked): Iterable<readonly Edit[]> {
    const [first] = group;
    switch (first?.what.kind) {
      case 'level':
        return this.levelWays(at, group, locked);
      case 'seam':
        return first.what.unit === 'rows'
          ? rowWays(group, locked)
          : first.what.unit === 'mm'
            ? this.lengthWays(at, group, locked)
            : shoulderWays(at, group, locked);
      case 'pair':
        return first.worked ? pairWays(first.what, first.worked.lines[0]) : [];
      case 'pick up':
        return pickUpWays(at, group, locked);
      default:
        return [];
    }
  }

  /** The other side of a panel that she changes herself only where it is not on the needles: what is planned anew there is that change alone. */
  private *levelWays(at: Garment, group: readonly Break[], locked: Locked): Iterable<readonly Edit[]> {
    yield* rowWays(group, locked);
    const changed = group[0] && changedBy(group[0].what);
    if (this.knitted.get(changed ?? '')?.isBegun !== true) yield* twinWays(at, group, locked);
  }

  /** Rows, or stitches across a straight top, until the lengths meet: each guess is judged, and corrects the next. */
  private *lengthWays(at: Garment, group: readonly Break[], locked: Locked): Iterable<readonly Edit[]> {
    const [first] = group;
    const sides = first && sidesOf(first, locked);
    if (!sides) return;
    // how much longer the changed edge is is told; where that one is to follow, it is by so much too long
    const way = sides.kept.laid.some(({ stretch }) => stretch.piece === changedBy(first.what)) ? 1 : -1;
    const wide = sides.other.laid.find(({ stretch: { edge } }) => edge === 'top' || edge === 'start');
    for (const name of namesAlong(sides.other)) {
      const section = placesIn([sides.other], name)[0];
      if (!section || section.height === 0) continue;
      yield* this.guesses(at, group, way * section.height, (by) =>
        merged(group.flatMap((one) => placesIn(otherLines(one, locked), name).map((p) => rowsEdit(p, by)))),
      );
    }
    if (wide && wide.stitches > 0)
      yield* this.guesses(at, group, (way * wide.mm) / wide.stitches, (by) => [
        {
          kind: 'width',
          piece: wide.stretch.piece,
          part: wide.stretch.part,
          by,
          ...(wide.stretch.edge === 'start' && { fromTop: true }),
        },
      ]);
  }

  private *guesses(
    at: Garment,
    group: readonly Break[],
    /** what one more gives the edge, below 0 where that edge is the changed one */
    unitMm: number,
    edits: (by: number) => readonly Edit[],
  ): Iterable<readonly Edit[]> {
    // as the edge has it that changed most, which may be the mended one by now
    const [first] = group;
    const from = first && changedBy(first.what);
    const isOther = ({ what }: Break) =>
      first?.worked?.lines.some((line) => holds(line, from) && holds(line, changedBy(what))) !== true;
    const signed = (one: Break) => (isOther(one) ? -1 : 1) * longerBy(one);
    const gap = longerBy(first);
    const gaps = new Map(group.map((one) => [one.key, longerBy(one)]));
    let by = even(gap / unitMm);
    const tried = new Set<number>([0]);
    for (let n = 0; n < GUESSES && !tried.has(by); n += 1) {
      tried.add(by);
      const made = edits(by);
      const garment = editedBy(at, made, this.knitted);
      if (!garment) return;
      const still = breaks(this.before, garment).filter(({ key }) => gaps.has(key));
      const [left] = still.sort((one, other) => Math.abs(longerBy(other)) - Math.abs(longerBy(one)));
      if (!left) {
        yield made;
        return;
      }
      const gained = (gaps.get(left.key) ?? gap) - signed(left);
      if (gained * by * unitMm <= 0) return;
      by = even((gap / gained) * by);
    }
  }
}

const holds = ({ laid }: LaidLine, piece: string | undefined): boolean =>
  laid.some(({ stretch }) => stretch.piece === piece);

const GUESSES = 5;

const even = (n: number): number => 2 * Math.round(n / 2);
