import { type Fault, fault } from '../../fault.ts';
import { otherSide } from '../../row/step.ts';
import type { Statement } from '../say/statement.ts';
import type { Build, PartBuild, PieceBuild, Resting } from './build/build.ts';
import { copyRows } from './build/copy-rows.ts';
import { holdSet, isDone, split, takeUp } from './build/part.ts';
import { countDiffers } from './shape.ts';

/** A gap in the middle of the last row parts the stitches; the set last worked goes on. */
export function resolveGap(
  build: Build,
  piece: PieceBuild,
  part: PartBuild,
  which: 'first' | 'last' = 'last',
): PartBuild {
  const sets = part.gap;
  if (sets === undefined || isDone(part)) return part;
  return split(build, piece, part, sets, which === 'first' ? 0 : sets.length - 1);
}

type Hold = Extract<Statement, { is: 'hold' }>;

/** 'place rem 24 sts on holder', 'leave centre 17 sts on a holder'. */
export function doHold(build: Build, piece: PieceBuild, part: PartBuild, said: Hold): Fault | undefined {
  if (part.gap) {
    const now = resolveGap(build, piece, part);
    return heldCount(piece, said.stitches, now);
  }
  const waiting = restingBeside(piece, part);
  if (
    waiting.length > 0 &&
    (said.which === 'rest' || said.which === 'first' || said.stitches === waiting[0]?.stitches) &&
    part.rows.length <= 1
  ) {
    return heldCount(piece, said.stitches, part);
  }
  if (said.stitches === undefined || said.stitches === part.live) {
    part.end = 'hold';
    return undefined;
  }
  if (said.stitches > part.live) {
    part.end = 'hold';
    return countDiffers(said.stitches, part.live);
  }
  return said.which === 'centre'
    ? holdCentre(build, piece, part, said.stitches)
    : holdSome(build, piece, part, said);
}

/** 'slip centre 18 sts onto a holder' when the centre rests beside the side that is still to come. */
export function holdOfResting(build: Build, piece: PieceBuild, said: Hold): Fault | undefined {
  const resting = piece.resting[0];
  const { stitches } = said;
  if (
    resting === undefined ||
    stitches === undefined ||
    stitches >= resting.stitches ||
    resting.edge === 'middle'
  )
    return undefined;
  const rest = resting.stitches - stitches;
  const onLeft = resting.edge === 'left';
  piece.resting.splice(0, 1, {
    ...resting,
    stitches: rest,
    column: onLeft ? resting.column + stitches : resting.column,
  });
  holdSet(build, piece, {
    ...resting,
    stitches,
    edge: 'middle',
    column: onLeft ? resting.column : resting.column + rest,
  });
  return undefined;
}

const restingBeside = (piece: PieceBuild, part: PartBuild): Resting[] =>
  piece.resting.filter((one) => one.parent === part.parent);

function heldCount(piece: PieceBuild, stitches: number | undefined, part: PartBuild): Fault | undefined {
  if (stitches === undefined) return undefined;
  const sets = restingBeside(piece, part).map((one) => one.stitches);
  const sum = sets.reduce((a, b) => a + b, 0);
  return sets.includes(stitches) || sum === stitches || part.live === stitches
    ? undefined
    : countDiffers(stitches, sum);
}

function holdCentre(build: Build, piece: PieceBuild, part: PartBuild, stitches: number): Fault | undefined {
  const side = (part.live - stitches) / 2;
  if (!Number.isInteger(side)) {
    return fault('centre not in the middle', { stitches: part.live, centreStitches: stitches });
  }
  split(build, piece, part, [side, stitches, side], 0, true);
  const middle = piece.resting.find((one) => one.parent === part && one.edge === 'middle');
  if (middle) holdSet(build, piece, middle);
  return undefined;
}

function holdSome(build: Build, piece: PieceBuild, part: PartBuild, said: Hold): Fault | undefined {
  const stitches = said.stitches as number;
  const first = said.which === 'first';
  const sets = first ? [stitches, part.live - stitches] : [part.live - stitches, stitches];
  split(build, piece, part, sets, first ? 1 : 0, true);
  return undefined;
}

/** 'working on last 28 sts only', 'work each side separately'. */
export function doWorkOn(
  build: Build,
  piece: PieceBuild,
  part: PartBuild,
  said: Extract<Statement, { is: 'work on' }>,
): Fault | undefined {
  if (said.which === 'both at once') piece.bothSides = true;
  if (part.gap) {
    const sets = part.gap;
    const which =
      said.which === 'first' ||
      (said.stitches !== undefined && said.stitches === sets[0] && said.stitches !== sets.at(-1))
        ? 'first'
        : 'last';
    const now = resolveGap(build, piece, part, which);
    return said.stitches !== undefined && said.stitches !== now.live
      ? countDiffers(said.stitches, now.live)
      : undefined;
  }
  const { stitches } = said;
  if (stitches === undefined || stitches === part.live) return undefined;
  if (stitches > part.live) return countDiffers(stitches, part.live);
  const last = said.which === 'last';
  const sets = last ? [part.live - stitches, stitches] : [stitches, part.live - stitches];
  split(build, piece, part, sets, last ? 1 : 0, true);
  return undefined;
}

/** 'rejoin yarn to rem 28 sts'. */
export function doRejoin(
  build: Build,
  piece: PieceBuild,
  said: Extract<Statement, { is: 'rejoin' }>,
): Fault | undefined {
  const { part } = build;
  if (part?.gap) resolveGap(build, piece, part);
  const wanted =
    piece.resting.find((one) => one.stitches === said.stitches) ?? partOfResting(piece, said.stitches);
  if (wanted === undefined) {
    if (part !== undefined && !isDone(part)) return undefined;
    return fault('nothing rests');
  }
  const now = build.part;
  if (now && !isDone(now)) {
    // 'join a second ball' while the first side is still on the needle
    if (now.rows.length === 0) return undefined;
    now.end = 'hold';
  }
  takeUp(build, piece, wanted, said.side ?? wanted.firstSide);
  return said.stitches !== undefined && said.stitches !== wanted.stitches
    ? countDiffers(said.stitches, wanted.stitches)
    : undefined;
}

/** 'rejoin yarn to next 12 sts' of 40 that rest: those beside the stitches worked before; the others go on resting. */
function partOfResting(piece: PieceBuild, stitches: number | undefined): Resting | undefined {
  const whole = piece.resting[0];
  if (whole === undefined || stitches === undefined || stitches >= whole.stitches || whole.edge === 'middle')
    return whole;
  const left = whole.stitches - stitches;
  const atLeft = whole.edge === 'left';
  const next: Resting = {
    ...whole,
    stitches,
    edge: 'middle',
    column: atLeft ? whole.column : whole.column + left,
  };
  const rest: Resting = { ...whole, stitches: left, column: atLeft ? whole.column + stitches : whole.column };
  piece.resting.splice(0, 1, next, rest);
  return next;
}

/** 'complete other side to match, reversing shaping': the mirror image of the side that was worked first. */
export function doOtherSide(build: Build, piece: PieceBuild): Fault | undefined {
  const here = build.part;
  if (here?.gap) resolveGap(build, piece, here);
  const now = build.part;
  const rejoined =
    now !== undefined &&
    !isDone(now) &&
    now.parent !== undefined &&
    piece.parts.some((one) => one !== now && one.parent === now.parent && isDone(one) && one.rows.length > 0);
  if (now !== undefined && !isDone(now) && !rejoined) now.end = 'hold';
  const first = rejoined ? sourceFor(piece, now as PartBuild) : undefined;
  const wanted = piece.resting[0];
  if (!rejoined && wanted === undefined) return fault('nothing rests');
  const source = first ?? firstSideOf(piece, wanted?.parent);
  if (source === undefined) return fault('nothing to match');
  // from the other side of the work the mirror image comes out row for row
  const side = source.start === wanted?.stitches ? otherSide(source.firstSide) : wanted?.firstSide;
  const target = rejoined ? (now as PartBuild) : takeUp(build, piece, wanted as Resting, side);
  const wrong = copyRows(build, piece, source, target, startIn(source, target), source.rows.length, {
    mirrored: true,
    half: false,
  });
  if (!wrong && source.end !== undefined && target.end === undefined) target.end = source.end;
  return wrong;
}

/** The row of the first side that has as many stitches as this side has now. */
function startIn(source: PartBuild, target: PartBuild): number {
  const same = (i: number) => source.rows[i]?.before === target.live;
  if (same(target.rows.length) || target.rows.length === 0) return target.rows.length;
  const first = source.rows.findIndex((_, i) => same(i));
  return first < 0 ? target.rows.length : first;
}

/** The side worked first from the same stitches. */
const sourceFor = (piece: PieceBuild, target: PartBuild): PartBuild | undefined =>
  piece.parts.filter((one) => one !== target && one.parent === target.parent && one.rows.length > 0).at(-1);

const firstSideOf = (piece: PieceBuild, parent: PartBuild | undefined): PartBuild | undefined =>
  piece.parts.filter((one) => one.parent === parent && parent !== undefined && one.rows.length > 0).at(-1);

/** A piece divided with both sides worked at once: at its end the other side is the mirror image of the first. */
export function closePiece(build: Build, piece: PieceBuild): Fault | undefined {
  return piece.bothSides && piece.resting.length > 0 ? doOtherSide(build, piece) : undefined;
}
