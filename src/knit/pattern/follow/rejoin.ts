import { type Fault, fault } from '../../fault.ts';
import type { Statement } from '../say/statement.ts';
import type { Build, PieceBuild, Resting } from './build/build.ts';
import { countDiffers } from './build/compare.ts';
import { resolveGap } from './build/gap.ts';
import { isDone, takeUp } from './build/part.ts';

/** 'rejoin yarn to rem 28 sts'. */
export function doRejoin(
  build: Build,
  piece: PieceBuild,
  said: Extract<Statement, { is: 'rejoin' }>,
): Fault | undefined {
  const { part } = build;
  if (part?.gap) resolveGap(build, piece, part);
  const three = piece.resting.some(({ edge }) => edge === 'middle');
  const wanted =
    (three && said.edge ? piece.resting.find(({ edge }) => edge === said.edge) : undefined) ??
    piece.resting.find((one) => one.stitches === said.stitches) ??
    partOfResting(piece, said.stitches);
  if (wanted === undefined) {
    // at the head of a side that was just parted it is its own yarn
    return part?.rows.length === 0 && !isDone(part) ? undefined : fault('nothing rests');
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
