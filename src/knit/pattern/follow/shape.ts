import { type Fault, fault } from '../../fault.ts';
import type { Edge } from '../../piece/recipe.ts';
import type { Beat, EdgeName, GroupSaid, Said, Statement } from '../say/statement.ts';
import {
  type Build,
  type Mark,
  nextSide,
  otherEdge,
  type PartBuild,
  type PieceBuild,
  startEdge,
  type Track,
} from './build/build.ts';
import { MOST_ROWS, makeSpreadRow, makeWrittenRow, pushRow, takeBack } from './build/make-row.ts';
import { markOf, neckOf, setMark } from './build/part.ts';
import { finishBackground, row, runTrack } from './build/run-rows.ts';
import { plainWork } from './build/spell.ts';
import { targetOf } from './build/target.ts';
import { startTrack } from './build/track.ts';

type Shape = Extract<Statement, { is: 'shape' }>;

/** Which edge of the part an edge's name means, row by row. */
export function edgeFinder(
  name: EdgeName,
  piece: PieceBuild,
  part: PartBuild,
): (part: PartBuild) => 'both' | Edge {
  switch (name) {
    case 'both':
      return () => 'both';
    case 'neck':
      return () => neckOf(piece, part);
    case 'armhole':
      return () => otherEdge(neckOf(piece, part));
    case 'beginning':
      return (now) => startEdge(now);
    case 'end':
      return (now) => otherEdge(startEdge(now));
    case 'same': {
      const last = part.lastEdge;
      return (now) => last ?? startEdge(now);
    }
    default:
      return () => name;
  }
}

/** A shaping as something that goes on row by row. A beat without an end takes the count stated after it. */
export function trackOf(
  build: Build,
  piece: PieceBuild,
  part: PartBuild,
  said: Shape,
  stated: number | undefined,
  wait = 0,
): Track {
  const beats = said.beats.length > 0 ? said.beats : [{ first: 1, every: 1, times: 1 }];
  const last = beats.at(-1) as Beat;
  const open = last.times === undefined && last.toCount === undefined && last.until === undefined;
  const closed = open && stated !== undefined ? [...beats.slice(0, -1), { ...last, toCount: stated }] : beats;
  const limit = closed.reduce(
    (sum, beat) =>
      sum +
      (beat.until && beat.until.is !== 'count' ? (targetOf(build, piece, part, beat.until)?.rows ?? 1) : 0),
    0,
  );
  const track: Track = {
    edge: edgeFinder(said.edge, piece, part),
    change: said.change,
    beats: closed,
    beat: 0,
    doneInBeat: 0,
    due: 1,
    ended: false,
    limit,
    line: build.line,
    wait,
  };
  startTrack(track, part);
  return track;
}

export function doShape(
  build: Build,
  piece: PieceBuild,
  part: PartBuild,
  said: Said,
  shape: Shape,
): Fault | undefined {
  const track = trackOf(build, piece, part, shape, said.stated);
  if (shape.edge === 'neck') setMarkOnce(piece, 'neck', part);
  const edge = track.edge(part);
  const wrong = runTrack(build, part, track);
  part.lastEdge = edge;
  return wrong ?? missed(shape, part);
}

/** 'until 20 sts remain' where the shaping cannot end on 20. */
function missed(shape: Shape, part: PartBuild): Fault | undefined {
  const wanted = shape.beats.at(-1)?.toCount;
  return wanted === undefined || wanted === part.live ? undefined : countDiffers(wanted, part.live);
}

export function setMarkOnce(piece: PieceBuild, name: string, part: PartBuild): void {
  if (!markOf(piece, name)) setMark(piece, name, part);
}

type Groups = Extract<Statement, { is: 'groups' }>;

/** Groups bound off or cast on where rows begin: 'bo 5 sts at beg of next 2 rows, then 7 sts at beg of foll 2 rows'. */
export function doGroups(build: Build, piece: PieceBuild, part: PartBuild, said: Groups): Fault | undefined {
  if (said.work === 'bo' && said.edge !== 'neck') markPlace(piece, part);
  // one side of a divided piece has only one edge left to bind off at: the one away from the neck
  const oneSide = said.edge === 'both' && part.parent !== undefined;
  const edge = edgeFinder(oneSide ? 'armhole' : said.edge === 'both' ? 'beginning' : said.edge, piece, part);
  let first = true;
  for (const said1 of said.groups) {
    const group = oneSide ? { ...said1, rows: said1.rows / 2, every: 2 } : said1;
    const wrong = workGroup(build, part, said, group, edge, first);
    if (wrong) return wrong;
    if (part.live === 0) break;
    first = false;
    const { toCount } = group;
    if (toCount !== undefined && toCount !== part.live) return countDiffers(toCount, part.live);
  }
  part.lastEdge = said.edge === 'beginning' || said.edge === 'both' ? undefined : (edge(part) as Edge);
  return undefined;
}

/** Groups bound off away from the neck begin the armhole, and later on (or on one side only) the shoulder. */
function markPlace(piece: PieceBuild, part: PartBuild): void {
  const armhole = markOf(piece, 'armhole');
  const shoulder = markOf(piece, 'shoulder');
  if (part.parent) {
    if (shoulder === undefined || (shoulder.part.parent === undefined && !boundOffAt(shoulder)))
      setMark(piece, 'shoulder', part);
  } else if (!armhole) setMark(piece, 'armhole', part);
  else if (!shoulder && armhole.part === part && evenSince(part, armhole.rows))
    setMark(piece, 'shoulder', part);
}

/** Whether a heading stood where stitches were bound off at once. */
const boundOffAt = (mark: Mark): boolean => mark.part.rows[mark.rows - mark.part.baseRows]?.kind === 'groups';

const evenSince = (part: PartBuild, row: number): boolean =>
  part.rows.slice(row - part.baseRows).some(({ kind }) => kind === 'stretch' || kind === 'even');

function workGroup(
  build: Build,
  part: PartBuild,
  said: Groups,
  group: GroupSaid,
  edge: (part: PartBuild) => 'both' | Edge,
  first: boolean,
): Fault | undefined {
  if (group.stitches === 0) return undefined;
  const rows = group.toCount === undefined ? group.rows : MOST_ROWS;
  for (let i = 0; i < rows && part.live > 0; i += 1) {
    if (
      group.toCount !== undefined &&
      (said.work === 'bo' ? part.live <= group.toCount : part.live >= group.toCount)
    )
      break;
    const gap = i === 0 ? (first || group.every === 1 ? 0 : group.every - 1) : group.every - 1;
    for (let even = 0; even < gap; even += 1) {
      const wrong = row(build, part, [], 'even');
      if (wrong) return wrong;
    }
    const wrong =
      toTheEdge(build, part, said, group, edge) ?? oneGroup(build, part, said, group.stitches, edge);
    if (wrong) return wrong;
  }
  return undefined;
}

/** Rows until the one that begins at the edge (or on the side) that the text names. */
function toTheEdge(
  build: Build,
  part: PartBuild,
  said: Groups,
  group: GroupSaid,
  edge: (part: PartBuild) => 'both' | Edge,
): Fault | undefined {
  const wrongSide = group.side !== undefined && nextSide(part) !== group.side;
  const wrongEdge = said.edge !== 'end' && edge(part) !== startEdge(part) && edge(part) !== 'both';
  return wrongSide || wrongEdge ? row(build, part, [], 'even') : undefined;
}

function oneGroup(
  build: Build,
  part: PartBuild,
  said: Groups,
  stitches: number,
  edge: (part: PartBuild) => 'both' | Edge,
): Fault | undefined {
  if (said.work === 'bo' && stitches >= part.live) {
    const short = stitches - part.live;
    const wrong = bindOffAll(build, part);
    return wrong ?? (short > 0 ? tooFewToBindOff(stitches, stitches - short) : undefined);
  }
  const at = edge(part);
  return row(
    build,
    part,
    [{ at: at === 'both' ? startEdge(part) : at, work: said.work, stitches }],
    'groups',
  );
}

const tooFewToBindOff = (wanted: number, have: number): Fault =>
  fault('bound off too many', { wantedStitches: wanted, haveStitches: have });

export function bindOffAll(build: Build, part: PartBuild): Fault | undefined {
  const wrong = pushRow(build, part, [{ work: 'bo', until: { left: 0 } }], {
    kind: 'bind off',
    advance: true,
  });
  if (!wrong) part.end = 'bind off';
  return wrong;
}

/** 'bind off all sts', 'bind off rem 24 sts'. */
export function doBindOff(
  build: Build,
  part: PartBuild,
  said: Extract<Statement, { is: 'bind off' }>,
): Fault | undefined {
  const beside = finishBackground(build, part);
  if (beside) return beside;
  const { live } = part;
  const { stitches } = said;
  if (stitches !== undefined && stitches < live && !said.rest) {
    return makeWrittenRow(
      build,
      part,
      [
        { is: 'stitches', work: 'bo', times: stitches },
        { is: 'stitches to', work: 'patt', goal: { left: 'what follows' } },
      ],
      'groups',
    );
  }
  const wrong = bindOffAll(build, part);
  if (wrong || stitches === undefined || stitches === live) return wrong;
  return countDiffers(stitches, live);
}

export const countDiffers = (stated: number, found: number): Fault =>
  fault('count contradicts', { statedStitches: stated, foundStitches: found });

/** 'inc 6 sts evenly across next row', '… in last row of rib'. */
export function doEvenly(
  build: Build,
  part: PartBuild,
  said: Extract<Statement, { is: 'evenly' }>,
  madeHere: boolean,
): Fault | undefined {
  const last = said.on === 'last' || (said.on === 'unsaid' && madeHere);
  const back = last && part.rows.length > 0 ? takeBack(build, part) : undefined;
  const change =
    said.toCount === undefined || said.over !== undefined
      ? said.change
      : Math.sign(said.change) * Math.abs(said.toCount - part.live);
  if (back) part.fabric = back.fabric;
  const line = build.line;
  const wrong = makeSpreadRow(
    build,
    part,
    said.toCount !== undefined && Math.abs(change) !== Math.abs(said.change) ? said.change : change,
    said.over,
    back && plainWork(back, back.side),
  );
  build.line = line;
  return wrong;
}
