import { type Fault, fault } from '../../fault.ts';
import type { Build } from './build/build.ts';
import { isDone, newPart, newPiece, setMark } from './build/part.ts';
import { nameless, pieceCalled, pieceInHand, startPending } from './build/piece-in-hand.ts';
import { MOST_STITCHES } from './build/push-row.ts';

export function doCastOn(build: Build, stitches: number): Fault | undefined {
  const live = Math.min(stitches, MOST_STITCHES);
  build.defining = undefined;
  build.talk = false;
  startPending(build);
  const now = build.piece;
  // a second cast-on below the same heading starts something else
  const piece =
    now === undefined || (now.parts.length > 0 && isDone(build.part) && build.heading !== undefined)
      ? newPiece(build, build.heading ? pieceCalled(build.heading) : nameless)
      : pieceInHand(build);
  if (build.part && !isDone(build.part) && build.part.rows.length > 0) build.part.end = 'hold';
  if (piece.parts.length === 0) build.heading = undefined;
  newPart(build, piece, { name: 'body', from: { castOn: live }, live, firstSide: 'RS' });
  build.meanwhile = [];
  setMark(piece, 'start', build.part);
  return stitches > MOST_STITCHES ? fault('too many stitches', { stitches }) : undefined;
}
