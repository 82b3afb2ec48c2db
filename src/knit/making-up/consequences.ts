import type { StandingGarment } from '../piece/standing.ts';
import type { LaidLine } from './boundary-of.ts';
import type { SeamKind } from './joint.ts';
import { joined } from './making-up.ts';
import { roomAlong, type SeamUnit, type Trouble, unitOf, type WorkedJoint } from './work-making-up.ts';

/** What a change breaks, edge by edge. */
export type Consequence =
  /** two edges met and do so no more, or are further apart than they were */
  | {
      readonly kind: 'seam';
      readonly of: SeamKind;
      readonly unit: SeamUnit;
      /** the changed edge, and what it is sewn to */
      readonly piece: string;
      readonly to: string;
      readonly was: number;
      readonly now: number;
      readonly other: number;
      /** how much longer (> 0) than the other it is now, mm */
      readonly longerMm: number;
    }
  /** two makes of a piece that are worn as a pair were alike and are so no more; rows of their seams */
  | {
      readonly kind: 'pair';
      readonly piece: string;
      readonly was: number;
      readonly now: number;
      readonly other: number;
    }
  /** an edge has room for another number of stitches than is picked up there; `along` is the pick-up's place in its band */
  | {
      readonly kind: 'pick up';
      readonly band: string;
      readonly along: number;
      readonly stitches: number;
      readonly fit: number;
      /** how much longer the edge is than before, mm */
      readonly longerMm: number;
    }
  /** nothing is joined to some edges of a make any more, or not yet */
  | { readonly kind: 'unjoined'; readonly piece: string; readonly make: number };

/** A consequence, and where in the making up it is. */
export interface Break {
  /** the same before and after a change: what is joined to what */
  readonly key: string;
  readonly what: Consequence;
  readonly worked?: WorkedJoint;
}

type Pieces = Pick<StandingGarment, 'pieces' | 'joints' | 'byHand'>;

/** A band's rib takes this much without a ruffle: below it nothing is said. Common practice, no published source. */
const SAID_FROM_STITCHES = 3;

/**
 * What a change of plans breaks in the making up: every joint of the garment before and after it, as the making up's
 * own judge finds them. What was as far apart before is not told.
 */
export const consequences = (before: Pieces, after: Pieces): readonly Consequence[] =>
  alike(breaks(before, after)).map(([{ what }]) => what);

/** The same, joint by joint: both sides of a body are two. */
export function breaks(before: Pieces, after: Pieces): readonly Break[] {
  const [then, now] = [judged(before), judged(after)];
  const found: Break[] = pairs(then.all, now.all);
  for (const [key, is] of now.byName) {
    const was = then.byName.get(key);
    if (!was) continue;
    if (is.worked.joint.kind === 'seam') found.push(...seam(key, was, is, is.worked.joint.of));
    if (is.worked.joint.kind === 'pick up') found.push(...pickUps(key, was, is, is.worked.joint.piece));
  }
  const left = new Set(then.unjoined);
  for (const key of new Set(now.unjoined)) {
    if (left.has(key)) continue;
    const [piece, make] = JSON.parse(key) as [string, number];
    found.push({ key, what: { kind: 'unjoined', piece, make } });
  }
  return found;
}

/** Both sides of a body break alike: what is said in the same words is one. Each has one break at least. */
export function alike(found: readonly Break[]): readonly (readonly [Break, ...Break[]])[] {
  const groups = new Map<string, [Break, ...Break[]]>();
  for (const one of found) {
    const said = JSON.stringify(one.what);
    const known = groups.get(said);
    if (known) known.push(one);
    else groups.set(said, [one]);
  }
  return [...groups.values()];
}

interface JudgedJoint {
  readonly worked: WorkedJoint;
  readonly troubles: readonly Trouble[];
}

/** The making up of a garment, each joint with what the judge says of it. */
function judged(garment: Pieces) {
  const { worked, troubles } = joined(garment);
  const all = worked.map(
    (one, i): JudgedJoint => ({
      worked: one,
      troubles: troubles.filter((trouble) => trouble.kind !== 'forgotten' && trouble.joint === i),
    }),
  );
  const unjoined = troubles.flatMap((trouble) =>
    trouble.kind === 'forgotten' ? [JSON.stringify([trouble.rest.piece, trouble.rest.make])] : [],
  );
  return { all: worked, byName: byName(all), unjoined };
}

/** Joints by what they join: proposed anew after a change, they stand in the same order. */
function byName(judged: readonly JudgedJoint[]): ReadonlyMap<string, JudgedJoint> {
  const names = new Map<string, JudgedJoint>();
  for (const one of judged) {
    const { joint } = one.worked;
    if (joint.kind === 'left free') continue;
    const lines = joint.kind === 'seam' ? [joint.a, joint.b] : joint.along.map(({ line }) => line);
    const joins = lines.map((line) => line.map(({ piece, make, edge }) => [piece, make, edge]).slice(0, 1));
    const base = JSON.stringify([joint.kind, joint.kind === 'seam' ? joint.of : joint.piece, joins]);
    const same = [...names.keys()].filter((known) => known.startsWith(base)).length;
    names.set(`${base} ${same}`, one);
  }
  return names;
}

/** How far apart a seam's edges are, as the judge has it; 0 where they meet. */
const apart = ({ troubles }: JudgedJoint): number =>
  troubles.reduce(
    (most, one) => (one.kind === 'do not meet' ? Math.max(most, Math.abs(one.first - one.second)) : most),
    0,
  );

function seam(key: string, then: JudgedJoint, now: JudgedJoint, of: SeamKind): Break[] {
  const [[a0, b0], [a1, b1]] = [then.worked.lines, now.worked.lines];
  if (!a0 || !b0 || !a1 || !b1 || apart(now) <= apart(then) + 1e-6) return [];
  const unit = unitOf[of];
  const isFirst = Math.abs(a1[unit] - a0[unit]) >= Math.abs(b1[unit] - b0[unit]);
  const [was, changed, other] = isFirst ? [a0, a1, b1] : [b0, b1, a1];
  const what: Consequence = {
    kind: 'seam',
    of,
    unit,
    piece: changedIn(was, changed, unit),
    to: pieceOf(other),
    was: was[unit],
    now: changed[unit],
    other: other[unit],
    longerMm: changed.mm - other.mm,
  };
  return [{ key, what, worked: now.worked }];
}

/** Sleeves are worn as a pair: the rows of their own seams. */
function pairs(was: readonly WorkedJoint[], is: readonly WorkedJoint[]): Break[] {
  const seams = (worked: readonly WorkedJoint[]) =>
    worked.filter(({ joint, lines }) => joint.kind === 'seam' && joint.of === 'sleeve' && lines[0]);
  const [[one0, two0], [one1, two1]] = [seams(was), seams(is)];
  const rows = (one: WorkedJoint | undefined) => one?.lines[0]?.rows ?? 0;
  if (!one0 || !two0 || !one1 || !two1) return [];
  if (rows(one0) !== rows(two0) || rows(one1) === rows(two1)) return [];
  const [changed, other] = rows(one1) === rows(one0) ? [two1, one1] : [one1, two1];
  const piece = pieceOf(other.lines[0]);
  const what: Consequence = {
    kind: 'pair',
    piece,
    was: rows(one0),
    now: rows(changed),
    other: rows(other),
  };
  return [{ key: `pair ${piece}`, what, worked: other }];
}

/** An armhole goes over two pieces: the one that makes it another. */
function changedIn(was: LaidLine, now: LaidLine, unit: SeamUnit): string {
  const lengths = ({ laid }: LaidLine, of: string) =>
    laid.reduce((sum, one) => (one.stretch.piece === of ? sum + one[unit] : sum), 0);
  const by = (piece: string) => Math.abs(lengths(now, piece) - lengths(was, piece));
  const pieces = [...new Set(now.laid.map(({ stretch }) => stretch.piece))];
  return pieces.reduce((most, piece) => (by(piece) > by(most) ? piece : most), pieces[0] ?? '');
}

const pieceOf = (line: LaidLine | undefined): string => line?.laid[0]?.stretch.piece ?? '';

function pickUps(key: string, then: JudgedJoint, is: JudgedJoint, band: string): Break[] {
  const { joint } = is.worked;
  if (joint.kind !== 'pick up') return [];
  return joint.along.flatMap(({ stitches }, along): Break[] => {
    const [a, b] = [then.worked.lines[along], is.worked.lines[along]];
    const [had, has] = [a && roomAlong(a), b && roomAlong(b)];
    if (!a || !b || !had || !has) return [];
    const was = pickUpTrouble(then, along);
    const now = pickUpTrouble(is, along);
    const longerMm = b.mm - a.mm;
    const told = (fit: number): Break[] => {
      const what: Consequence = { kind: 'pick up', band, along, stitches, fit, longerMm };
      return [{ key: `${key} ${along}`, what, worked: is.worked }];
    };
    // what rests on a holder is counted: the judge lets no stitch more or fewer pass
    if (Math.abs(has - had) < SAID_FROM_STITCHES) return now && !was ? told(now.fit) : [];
    const before =
      then.worked.joint.kind === 'pick up' ? then.worked.joint.along[along]?.stitches : undefined;
    const fit = now?.isExact ? now.fit : Math.round(((before ?? stitches) * has) / had);
    return Math.abs(stitches - fit) < SAID_FROM_STITCHES && !now?.isExact ? [] : told(fit);
  });
}

const pickUpTrouble = ({ troubles }: JudgedJoint, along: number) =>
  troubles.flatMap((one) => (one.kind === 'pick up' && one.along === along ? [one] : []))[0];
