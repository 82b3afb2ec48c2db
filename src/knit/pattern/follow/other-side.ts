import { type Fault, fault } from '../../fault.ts';
import { otherSide } from '../../row/step.ts';
import type { Build, PartBuild, PieceBuild, Resting } from './build/build.ts';
import { copyRows } from './build/copy-rows.ts';
import { resolveGap } from './build/gap.ts';
import { isDone, takeUp } from './build/part.ts';

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
