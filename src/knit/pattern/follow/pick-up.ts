import { type Fault, fault } from '../../fault.ts';
import type { Statement } from '../say/statement.ts';
import type { Build } from './build/build.ts';
import { isDone, newPart, newPiece, setMark } from './build/part.ts';
import { pieceCalled, startPending } from './build/piece-in-hand.ts';
import { MOST_STITCHES } from './build/push-row.ts';

export function doPickUp(build: Build, said: Extract<Statement, { is: 'pick up' }>): Fault | undefined {
  build.defining = undefined;
  build.talk = false;
  // a hem is closed with the stitches on the needle: to put them away for a band would be made up
  const onNeedle = build.pending === undefined && !isDone(build.part) && build.part?.rows.length !== 0;
  if (onNeedle && said.edges.some(({ along }) => along.startsWith('cast'))) return fault('place not known');
  startPending(build);
  if (build.part && !isDone(build.part) && build.part.rows.length > 0) build.part.end = 'hold';
  const piece =
    build.piece === undefined || (build.piece.parts.length > 0 && build.heading !== undefined)
      ? newPiece(build, build.heading ? pieceCalled(build.heading) : { name: 'band', makes: 1 })
      : build.piece;
  const { edges } = said;
  const live = edges.reduce((sum, edge) => sum + edge.stitches, 0);
  if (live > MOST_STITCHES) return fault('too many stitches', { stitches: live });
  newPart(build, piece, {
    name: piece.parts.length === 0 ? 'body' : 'band',
    from: { pickUp: edges.filter((edge) => edge.stitches > 0) },
    live,
    firstSide: 'WS',
  });
  setMark(piece, 'marker', build.part);
  setMark(piece, 'heading', build.part);
  return undefined;
}
