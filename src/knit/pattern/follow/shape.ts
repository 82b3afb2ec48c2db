import { type Fault, fault } from '../../fault.ts';
import type { Beat } from '../say/how-far.ts';
import type { Said, Statement } from '../say/statement.ts';
import { type Build, otherEdge, type PartBuild, type PieceBuild, type Track } from './build/build.ts';
import { countDiffers } from './build/compare.ts';
import { edgeFinder } from './build/edge.ts';
import { neckOf, setMarkOnce } from './build/part.ts';
import { rowHeight } from './build/push-row.ts';
import { runTrack } from './build/run-rows.ts';
import { targetOf } from './build/target.ts';
import { newTrack, type Waits } from './build/track.ts';
import { isByLengths, workByLengths } from './by-lengths.ts';

type Shape = Extract<Statement, { is: 'shape' }>;

/** A shaping as something that goes on row by row. */
export function trackOf(
  build: Build,
  piece: PieceBuild,
  part: PartBuild,
  said: Shape,
  stated: number | undefined,
  waits: Waits = {},
): Track {
  const beats =
    said.beats.length > 0
      ? said.beats.map((beat) => inRows(beat, rowHeight(build, part)))
      : [{ first: 1, every: 1, times: 1 }];
  const closed = ended(beats, stated);
  const limit = closed.reduce((sum, { until }) => sum + rowsUntil(build, piece, part, until, waits), 0);
  const told = {
    edge: edgeFinder(said.edge, piece, part),
    change: said.change,
    beats: closed,
    items: said.items,
    limit,
    line: build.line,
  };
  return newTrack(part, told, waits);
}

/** Rows to an end that is no count; what is waited for first lies before an end that is not counted from its beginning. */
function rowsUntil(
  build: Build,
  piece: PieceBuild,
  part: PartBuild,
  until: Beat['until'],
  { wait = 0 }: Waits,
): number {
  if (until === undefined || until.is === 'count') return 0;
  const { rows = 1, stretch } = targetOf(build, piece, part, until) ?? {};
  const fromHere = until.is === 'rows' || (until.is === 'length' && until.from === 'here');
  // nor does anybody know where it lies without a gauge
  return fromHere || stretch?.open ? rows : Math.max(0, rows - wait);
}

/** A beat without an end takes the count stated after it. */
function ended(beats: readonly Beat[], stated: number | undefined): readonly Beat[] {
  const last = beats.at(-1);
  if (last === undefined || stated === undefined) return beats;
  const open = last.times === undefined && last.toCount === undefined && last.until === undefined;
  return open ? [...beats.slice(0, -1), { ...last, toCount: stated }] : beats;
}

/** 'Every 4 cm' in rows of the gauge, an even number, so that every shaping lies on the same side. */
export const inRows = (beat: Beat, height: number): Beat =>
  beat.everyMm === undefined || height === 0
    ? beat
    : { ...beat, every: Math.max(2, 2 * Math.round(beat.everyMm / height / 2)) };

export function doShape(
  build: Build,
  piece: PieceBuild,
  part: PartBuild,
  said: Said,
  shapeSaid: Shape,
): Fault | undefined {
  const shape = placed(shapeSaid, part, said.stated);
  if (shape === undefined) return fault('place not known');
  if (isByLengths(build, part, shape.beats)) return shapeByLengths(build, piece, part, said, shape);
  const track = trackOf(build, piece, part, shape, said.stated);
  // of two borders nobody knows which
  const front = neckOf(piece, part);
  const inside =
    shape.edge !== 'inside' ||
    (part.borders[front] !== undefined && part.borders[otherEdge(front)] === undefined);
  if (shape.edge === 'neck' || shape.edge === 'inside') setMarkOnce(piece, 'neck', part);
  const edge = track.edge(part);
  const wrong = runTrack(build, part, track);
  part.lastEdge = edge;
  return (
    wrong ??
    missed(shape, part) ??
    (isOpen(shape, said.stated) || !inside || unmeasured(build, piece, part, shape)
      ? fault('place not known')
      : undefined)
  );
}

/** Where nobody says at which end, the count that is stated does: at both, or at the one that was shaped before. */
function placed(shape: Shape, { live, lastEdge }: PartBuild, stated: number | undefined): Shape | undefined {
  if (shape.edge !== 'unsaid') return shape;
  const wanted = (stated ?? shape.beats.at(-1)?.toCount ?? 0) - live;
  const once = shape.beats.reduce((sum, { times = 0 }) => sum + shape.change * times, 0);
  if (wanted === 2 * once) return { ...shape, edge: 'both' };
  return wanted === once && lastEdge !== undefined && lastEdge !== 'both'
    ? { ...shape, edge: 'same' }
    : undefined;
}

/** A count stated behind an open rhythm ends it, as it does where the rows are known. */
function shapeByLengths(
  build: Build,
  piece: PieceBuild,
  part: PartBuild,
  said: Said,
  shape: Shape,
): Fault | undefined {
  // beside rows that are worked already nobody knows on which of them it lies
  if (build.recent.at(-1)?.statement.is === 'at the same time') return fault('place not known');
  const edgeOf = edgeFinder(shape.edge, piece, part);
  const each = shape.change * (edgeOf(part) === 'both' ? 2 : 1);
  const once = () => {
    const track = trackOf(build, piece, part, { ...shape, beats: [] }, undefined);
    part.lastEdge = track.edge(part);
    return runTrack(build, part, track);
  };
  return workByLengths(build, piece, part, ended(shape.beats, said.stated), each, once);
}

/** 'Dec 1 st at neck edge every 4th row', and nobody says how often. */
const isOpen = ({ beats }: Shape, stated: number | undefined): boolean => {
  const last = beats.at(-1);
  return last !== undefined && (last.times ?? last.toCount ?? last.until ?? stated) === undefined;
};

/** 'Inc 1 st at each end every 8th row until work measures 20 cm', and nobody knows how many rows that is. */
const unmeasured = (build: Build, piece: PieceBuild, part: PartBuild, { beats }: Shape): boolean =>
  beats.some(
    ({ until }) => until && until.is !== 'count' && targetOf(build, piece, part, until)?.stretch?.open,
  );

/** 'until 20 sts remain' where the shaping cannot end on 20. */
function missed(shape: Shape, part: PartBuild): Fault | undefined {
  const wanted = shape.beats.at(-1)?.toCount;
  return wanted === undefined || wanted === part.live ? undefined : countDiffers(wanted, part.live);
}
