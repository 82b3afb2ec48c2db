import type { LaidLine } from './boundary-of.ts';
import type { Line, SeamKind, SeamWay } from './joint.ts';
import { neckStep } from './neck-step.ts';
import { nearestRatio, type PickUpRatio } from './pick-up.ts';
import { FRONTS, type PieceGroups, pickUpsOf } from './piece-groups.ts';
import { easeOf, type JoinedEdge, type MakingUpStep, type UnderarmSeam } from './step.ts';
import { lineLeft, lineNamed, neckSeamOf } from './waiting-seam.ts';
import type { SeamUnit, WorkedJoint } from './work-making-up.ts';

/** One step of the joints that belong to it; undefined where they do not tell enough. */
export function stepOfJoints(
  id: string,
  own: readonly WorkedJoint[],
  groups: PieceGroups,
  openings: readonly WorkedJoint[] = [],
): MakingUpStep | undefined {
  const [first] = own;
  if (!first) return undefined;
  if (first.joint.kind === 'pick up') return pickUpStep(id, own, first.joint.piece, groups);
  if (first.joint.kind === 'left free') return neckStep(id, own, groups);
  if (first.joint.byHand !== undefined) return joinStep(id, first, first.joint.byHand, first.joint.how);
  if (id.startsWith('close ')) return closeStep(id, own, groups);
  const step = seamStep(id, own, groups, openings);
  const lines = [first.joint.a, first.joint.b];
  const roles = first.joint.of === 'shoulder' || first.joint.of === 'side' ? FRONTS : (['sleeve'] as const);
  const { nos, worn } = groups.along(lines, ...roles) ?? {};
  return step && nos ? { ...step, nos, ...(worn !== undefined && { worn }) } : step;
}

/** Two edges that she joined herself: row to row where both are sides, stitch to stitch where both are ends. */
function joinStep(id: string, { lines: [a, b] }: WorkedJoint, seam: string, how: SeamWay): MakingUpStep {
  const unit = unitBoth(a, b);
  const edge = (line: LaidLine | undefined): JoinedEdge | undefined => {
    const stretch = line?.laid[0]?.stretch;
    return stretch && line && { stretch, count: unit === 'mm' ? 0 : line[unit], mm: line.mm };
  };
  return { id, kind: 'join', seam, how, unit, edges: [edge(a), edge(b)] };
}

function unitBoth(a: LaidLine | undefined, b: LaidLine | undefined): SeamUnit {
  const are = (unit: 'rows' | 'stitches') =>
    [a, b].every(
      (line) => line !== undefined && line[unit] > 0 && line[unit === 'rows' ? 'stitches' : 'rows'] === 0,
    );
  return are('rows') ? 'rows' : are('stitches') ? 'stitches' : 'mm';
}

function pickUpStep(
  id: string,
  own: readonly WorkedJoint[],
  band: string,
  groups: PieceGroups,
): MakingUpStep | undefined {
  const piece = groups.all().find(({ recipe }) => recipe.name === band);
  if (!piece) return undefined;
  const edges = pickUpsOf(piece);
  const total = edges.reduce((sum, { stitches }) => sum + stitches, 0);
  const percent = percentOf(own);
  return {
    id,
    kind: 'pick up',
    band,
    edges,
    ratio: ratioOf(own),
    ...(percent !== undefined && { percent }),
    total,
  };
}

/** The one share that is meant of all its edges; undefined where each is filled as it comes. */
function percentOf(own: readonly WorkedJoint[]): number | undefined {
  const all = own.flatMap(({ joint }) => (joint.kind === 'pick up' ? joint.along : []));
  const percent = all[0]?.percent;
  return percent !== 100 && all.every((one) => one.percent === percent) ? percent : undefined;
}

/** The count of each edge decides: how many of the rows of the longest it comes to. One for one where no rows are picked up along. */
function ratioOf(own: readonly WorkedJoint[]): PickUpRatio {
  const edges = own.flatMap(({ joint, lines }) =>
    joint.kind !== 'pick up'
      ? []
      : lines.map((line, i) => ({
          rows: line.rows,
          picked: (joint.along[i]?.stitches ?? 0) - line.stitches,
        })),
  );
  const [longest] = edges
    .filter(({ rows, picked }) => rows > 0 && picked > 0)
    .sort((one, other) => other.rows - one.rows);
  return longest ? nearestRatio(longest.picked / longest.rows) : { stitches: 1, rows: 1 };
}

const seamsOf = (own: readonly WorkedJoint[], ...kinds: readonly SeamKind[]) =>
  own.flatMap(({ joint, lines: [a, b] }) =>
    joint.kind === 'seam' && kinds.includes(joint.of) && a && b ? [{ joint, a, b }] : [],
  );

function closeStep(id: string, own: readonly WorkedJoint[], groups: PieceGroups): MakingUpStep {
  const [seam] = seamsOf(own, 'shoulder', 'raglan');
  const [ends] = seamsOf(own, 'band');
  const isShoulder = seam?.joint.of === 'shoulder';
  const unit = isShoulder ? 'stitches' : 'rows';
  return {
    id,
    kind: 'close',
    band: id.slice('close '.length),
    rows: ends?.a.rows ?? 0,
    seam: seam && {
      of: isShoulder ? 'shoulder' : 'raglan',
      line: lineNamed(neckSeamOf(seam.joint, backOf(groups))),
      both: easeOf(seam.b[unit], seam.a[unit]),
      ...(isShoulder && { how: seam.joint.how }),
    },
  };
}

const backOf = (groups: PieceGroups): string => groups.of('back')?.recipe.name ?? '';

function seamStep(
  id: string,
  own: readonly WorkedJoint[],
  groups: PieceGroups,
  openings: readonly WorkedJoint[],
): MakingUpStep | undefined {
  const [shoulder, ...more] = seamsOf(own, 'shoulder');
  const back = backOf(groups);
  if (shoulder) {
    const { a, b, joint } = shoulder;
    const stitches = easeOf(b.stitches, a.stitches);
    const front = joint.a[0]?.piece ?? '';
    const one = more.length > 0 ? {} : { side: neckSeamOf(joint, back).worn };
    return { id, kind: 'shoulders', back, front, stitches, seams: more.length + 1, ...one, how: joint.how };
  }
  const [lap, other] = seamsOf(own, 'lap');
  if (lap) {
    const band = lap.joint.a[0]?.piece;
    const isPlacket = groups.all().some(({ recipe, role }) => recipe.name === band && role === 'front band');
    const of = isPlacket ? 'placket' : other ? 'both shoulders' : 'left shoulder';
    return { id, kind: 'lap', of, rows: lap.a.rows, ...(isPlacket && band !== undefined && { band }) };
  }
  const [side] = seamsOf(own, 'side');
  if (side) {
    const rows = easeOf(side.b.rows, side.a.rows);
    return { id, kind: 'side seams', back, front: side.joint.a[0]?.piece ?? '', rows };
  }
  const [sleeve] = seamsOf(own, 'sleeve');
  if (sleeve)
    return { id, kind: 'sleeve seams', sleeve: sleeve.joint.a[0]?.piece ?? '', rows: sleeve.a.rows };
  const raglans = seamsOf(own, 'raglan');
  const opened = raglans.find(({ joint }) => openings.some((one) => goesOn(joint.b, one)));
  const raglan = raglans.find((one) => one !== opened) ?? opened;
  if (!raglan) return setInStep(id, own);
  const waits = lineLeft(raglans.map(({ joint }) => neckSeamOf(joint, back)));
  return {
    id,
    kind: 'raglan',
    sleeve: raglan.joint.a[0]?.piece ?? '',
    seams: raglans.length,
    ...(waits && { waits }),
    rows: easeOf(raglan.a.rows, raglan.b.rows),
    ...(opened && opened !== raglan && { asFarAsOpening: easeOf(opened.a.rows, opened.b.rows) }),
    underarm: underarmOf(own),
  };
}

/** What is left open lies on the same edge. */
const goesOn = (line: Line, { joint }: WorkedJoint): boolean =>
  joint.kind === 'left free' &&
  joint.line.some((open) =>
    line.some(
      (sewn) =>
        sewn.piece === open.piece &&
        sewn.make === open.make &&
        sewn.part === open.part &&
        sewn.edge === open.edge,
    ),
  );

function setInStep(id: string, own: readonly WorkedJoint[]): MakingUpStep | undefined {
  const [set] = seamsOf(own, 'armhole');
  if (!set) return undefined;
  const sleeve = set.joint.a[0]?.piece ?? '';
  const pair = seamsOf(own, 'underarm').filter(({ joint }) => joint.a[0]?.make === set.joint.a[0]?.make);
  const sum = (of: 'a' | 'b') => pair.reduce((mm, one) => mm + one[of].mm, set[of].mm);
  const { on, rows, bottomMm, rowMm } = depthOf(set.b);
  return {
    id,
    kind: 'set in sleeves',
    sleeve,
    topMm: sum('a') - ownSeamMm(set),
    armholeMm: sum('b'),
    markerRows: rows,
    markerMm: rows * rowMm,
    on,
    marksMm: [0, 0.25, 0.5, 0.75].map((share) => bottomMm + share * rows * rowMm),
    quarters: [1, 2, 3].map((q) => Math.round((rows * q) / 4)),
    underarm: underarmOf(own),
  };
}

/** What of a straight top its sleeve's own seam takes: it is eased nowhere, all that is meant to be longer is for that. */
function ownSeamMm({ joint: { ease = 0 }, a, b }: ReturnType<typeof seamsOf>[number]): number {
  const isStraight = a.laid.every(({ bits }) => bits.every(({ by }) => by === 0));
  return isStraight ? (b.mm * ease) / 100 : 0;
}

/** How deep the armhole is on the panel that it begins at, and how high above the cast-on it begins. */
function depthOf({ laid }: LaidLine) {
  const [first] = laid;
  const on = first?.stretch.piece ?? '';
  const own = laid.filter(({ stretch }) => stretch.piece === on);
  const bit = first?.bits.find(({ level }) => !level);
  const below = first?.part.rows[(bit?.row ?? 1) - 2]?.height ?? first?.part.base ?? 0;
  return {
    on,
    rows: own.reduce((sum, one) => sum + one.rows, 0),
    bottomMm: below,
    rowMm: bit?.height ?? 0,
  };
}

/** The sleeve's own bound-off stitches, or rows of its sides that go into the corner of an indented armhole. */
function underarmOf(own: readonly WorkedJoint[]): UnderarmSeam {
  const [pair] = seamsOf(own, 'underarm');
  if (pair) return { stitches: pair.b.stitches, rows: 0 };
  const [set] = seamsOf(own, 'armhole');
  const body = set?.b.laid[0];
  const sides = set?.a.laid[0];
  const level = body?.bits[0]?.level ? Math.abs(body.bits[0].by) : 0;
  const isStraight = sides !== undefined && sides.bits.length > 0 && sides.bits.every(({ by }) => by === 0);
  return level > 0 && isStraight ? { stitches: level, rows: sides.rows } : { stitches: 0, rows: 0 };
}
