import { type Fault, fault } from '../../fault.ts';
import type { Edge } from '../../piece/recipe.ts';
import type { GroupSaid, Statement } from '../say/statement.ts';
import { doBindOff } from './bind-off.ts';
import { bindOffAll } from './build/bind-off.ts';
import { dropBorderAt } from './build/borders.ts';
import {
  type Build,
  type Mark,
  nextSide,
  type PartBuild,
  type PieceBuild,
  startEdge,
  type Track,
} from './build/build.ts';
import { countDiffers } from './build/compare.ts';
import { edgeFinder } from './build/edge.ts';
import { isHalf, markOf, setMark, setMarkOnce } from './build/part.ts';
import { MOST_ROWS } from './build/push-row.ts';
import { row } from './build/run-rows.ts';
import { newTrack, type Waits } from './build/track.ts';

type Groups = Extract<Statement, { is: 'groups' }>;

/** Groups bound off or cast on where rows begin: 'bo 5 sts at beg of next 2 rows, then 7 sts at beg of foll 2 rows'. */
export function doGroups(build: Build, piece: PieceBuild, part: PartBuild, said: Groups): Fault | undefined {
  // a whole back has two armholes
  if (said.byPurpose && !isHalf(piece) && part.parent === undefined) {
    const { stitches = 0 } = said.groups[0] ?? {};
    if (said.edge === 'neck') return doBindOff(build, part, { is: 'bind off', stitches });
    const left = Math.max(0, part.live - stitches);
    return fault('stitches left over', { leftStitches: left, onNeedleStitches: part.live });
  }
  if (said.work === 'bo' && said.edge !== 'neck') markPlace(piece, part);
  if (said.work === 'bo' && said.edge === 'neck') setMarkOnce(piece, 'neck', part);
  const oneSide = onOneSide(piece, part, said);
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

/** The same as something that goes on row by row, beside another shaping; undefined where its end is a count. */
export function trackOfGroups(
  build: Build,
  piece: PieceBuild,
  part: PartBuild,
  said: Groups,
  waits: Waits = {},
): Track | undefined {
  if (said.byPurpose || said.groups.some(({ toCount }) => toCount !== undefined)) return undefined;
  const oneSide = onOneSide(piece, part, said);
  const name = oneSide ? 'armhole' : said.edge === 'both' ? 'beginning' : said.edge;
  const list = said.groups.flatMap(({ stitches, rows, every, side }) =>
    stitches === 0
      ? []
      : new Array(oneSide ? rows / 2 : rows).fill({
          stitches,
          every: oneSide ? 2 : every,
          ...(side && { side }),
        }),
  );
  const begins = () => {
    if (said.work !== 'bo') return;
    if (said.edge === 'neck') setMarkOnce(piece, 'neck', part);
    else markPlace(piece, part);
  };
  const told = {
    edge: edgeFinder(name, piece, part),
    change: 0,
    beats: [],
    groups: { work: said.work, atEnd: said.edge === 'end', list, begins },
    limit: 0,
    line: build.line,
  };
  return newTrack(part, told, waits);
}

/** A whole row's two edges are meant, and one side of a divided piece has but one of them: that away from the neck. */
const onOneSide = (piece: PieceBuild, part: PartBuild, said: Groups): boolean =>
  part.parent !== undefined &&
  (said.edge === 'both' || (piece.bothSides && said.edge === 'beginning' && inPairs(said)));

/** 'At the beginning of next 2 rows', where both sides are worked at once: in one of the two on each. */
const inPairs = ({ work, groups }: Groups): boolean =>
  work === 'bo' && groups.every(({ rows, every, toCount }) => rows % 2 === 0 && every === 1 && !toCount);

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
  part.rows
    .slice(row - part.baseRows)
    .some(({ kind }, i, rows) => kind === 'stretch' || kind === 'even' || straightFrom(rows, i));

/** 'Knit 6 rows' spells them out: what is shaped has no more than three straight rows between. */
const straightFrom = (rows: PartBuild['rows'], at: number): boolean =>
  rows.slice(at, at + 4).filter(({ kind, before, after }) => kind === 'row' && before === after).length > 3;

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
  const meant = edge(part);
  const at = meant === 'both' ? startEdge(part) : meant;
  const wrong = row(build, part, [{ at, work: said.work, stitches }], 'groups');
  dropBorderAt(part, at);
  return wrong;
}

const tooFewToBindOff = (wanted: number, have: number): Fault =>
  fault('bound off too many', { wantedStitches: wanted, haveStitches: have });
