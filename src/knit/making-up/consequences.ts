import type { StandingGarment } from '../piece/standing.ts';
import type { LaidLine } from './boundary-of.ts';
import type { Break, Consequence } from './break.ts';
import type { SeamKind } from './joint.ts';
import { type Level, levelsOf } from './levels.ts';
import { joined } from './making-up.ts';
import { type JudgedJoint, pickUps } from './pick-up-breaks.ts';
import { type SeamUnit, unitOf, type WorkedJoint } from './work-making-up.ts';

type Pieces = Pick<StandingGarment, 'pieces' | 'joints' | 'byHand'>;

/**
 * What a change of plans breaks in the making up: every joint of the garment before and after it, as the making up's
 * own judge finds them. What was as far apart before is not told.
 */
export const consequences = (before: Pieces, after: Pieces): readonly Consequence[] =>
  alike(breaks(before, after)).map(([{ what }]) => what);

/** The same, joint by joint: both sides of a body are two. */
export function breaks(before: Pieces, after: Pieces): readonly Break[] {
  const [then, now] = [judged(before), judged(after)];
  const found: Break[] = [...pairs(then.all, now.all), ...levels(then.levels, now.levels)];
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
    const said = saidOf(one.what);
    const known = groups.get(said);
    if (known) known.push(one);
    else groups.set(said, [one]);
  }
  return [...groups.values()];
}

/** The left side differs from the right one by the row in which a group is bound off: both are told once, as the first is. */
function saidOf(what: Consequence): string {
  if (what.kind === 'level')
    return JSON.stringify([what.of, what.piece, what.to, what.now - what.was, what.now - what.other > 0]);
  if (what.kind !== 'seam' || what.unit === 'rows') return JSON.stringify(what);
  // shoulders are told in stitches
  if (what.unit === 'stitches') return JSON.stringify({ ...what, longerMm: 0 });
  const { of, piece, to, longerMm } = what;
  return JSON.stringify([of, piece, to, longerMm > 0]);
}

/** The making up of a garment, each joint with what the judge says of it. A garment never changes, and is asked for with every mend that is tried. */
function judged(garment: Pieces): Judged {
  const found = known.get(garment) ?? judgedAnew(garment);
  known.set(garment, found);
  return found;
}

const known = new WeakMap<Pieces, Judged>();
type Judged = ReturnType<typeof judgedAnew>;

function judgedAnew(garment: Pieces) {
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
  return { all: worked, byName: byName(all), unjoined, levels: levelsOf(garment, worked) };
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

/** Sleeves are worn as a pair: the rows of their own seams, else of all that is knitted. */
function pairs(was: readonly WorkedJoint[], is: readonly WorkedJoint[]): Break[] {
  const seams = (worked: readonly WorkedJoint[]) =>
    worked.filter(({ joint, lines }) => joint.kind === 'seam' && joint.of === 'sleeve' && lines[0]);
  const [[one0, two0], [one1, two1]] = [seams(was), seams(is)];
  const ofSeam = (one: WorkedJoint | undefined) => one?.lines[0]?.rows ?? 0;
  const ofAll = (one: WorkedJoint | undefined) => one?.lines[0]?.laid[0]?.part.rows.length ?? 0;
  const rows = ofSeam(one1) === ofSeam(two1) ? ofAll : ofSeam;
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

/** What lies beside each other row for row, and did so before: nothing where it comes nearer. */
function levels(was: readonly Level[], is: readonly Level[]): Break[] {
  return is.flatMap(({ of, lines }, i): Break[] => {
    const [a0, b0] = was[i]?.lines ?? [];
    const [a1, b1] = lines;
    if (!a0 || !b0 || was[i]?.of !== of) return [];
    const meant = a0.rows - b0.rows;
    const off = a1.rows - b1.rows;
    if (off === meant || Math.abs(off) < Math.abs(meant)) return [];
    const isFirst = Math.abs(a1.rows - a0.rows) >= Math.abs(b1.rows - b0.rows);
    const [old, changed, other] = isFirst ? [a0, a1, b1] : [b0, b1, a1];
    const what: Consequence = {
      kind: 'level',
      of,
      piece: pieceOf(changed),
      to: pieceOf(other),
      was: old.rows,
      now: changed.rows,
      other: other.rows,
      longerMm: heightOf(changed) - heightOf(other),
    };
    return [{ key: `level ${of} ${i}`, what, worked: { lines }, meant }];
  });
}

const heightOf = ({ laid }: LaidLine): number =>
  laid.flatMap(({ bits }) => bits).reduce((sum, { level, height }) => sum + (level ? 0 : height), 0);

/** An armhole goes over two pieces: the one that makes it another. */
function changedIn(was: LaidLine, now: LaidLine, unit: SeamUnit): string {
  const lengths = ({ laid }: LaidLine, of: string) =>
    laid.reduce((sum, one) => (one.stretch.piece === of ? sum + one[unit] : sum), 0);
  const by = (piece: string) => Math.abs(lengths(now, piece) - lengths(was, piece));
  const pieces = [...new Set(now.laid.map(({ stretch }) => stretch.piece))];
  return pieces.reduce((most, piece) => (by(piece) > by(most) ? piece : most), pieces[0] ?? '');
}

const pieceOf = (line: LaidLine | undefined): string => line?.laid[0]?.stretch.piece ?? '';
