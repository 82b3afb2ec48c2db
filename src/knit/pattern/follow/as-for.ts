import { type Fault, fault } from '../../fault.ts';
import type { AsFarAs, From, Place } from '../say/how-far.ts';
import type { Said, Statement } from '../say/statement.ts';
import type { Build, Mark, PartBuild, PieceBuild } from './build/build.ts';
import { countDiffers } from './build/compare.ts';
import { type Copying, copyRows } from './build/copy-rows.ts';
import { isDone, isHalf, markOf, newPart, setMark } from './build/part.ts';
import { pieceNamed } from './build/target.ts';
import { workUntil } from './build/work-until.ts';
import { layHoles } from './buttonholes.ts';
import { finishLike } from './finish-like.ts';

type AsFor = Extract<Statement, { is: 'as for' }>;

/** 'work as for back to armhole', 'shape armhole as for back', 'work as for left front, reversing shaping'. */
export function doAsFor(
  build: Build,
  piece: PieceBuild,
  said: AsFor,
  ahead: readonly Said[],
): Fault | undefined {
  const other = pieceNamed(build, said.piece);
  const source = other?.parts[0];
  if (other === undefined || source === undefined) {
    return fault('piece not known', { pieceName: said.piece.words });
  }
  const how: Copying = { mirrored: said.reversing, half: isHalf(piece) && !isHalf(other) };
  if (said.only !== undefined) return copyPlace(build, piece, other, said.only, how);
  const part = partToGoOn(build, piece, other, how);
  const next = ahead.find(({ line }) => line === build.line)?.statement;
  const goesOn = said.to === undefined && source.live === 0 && next !== undefined && GOES_ON.has(next.is);
  if (goesOn) return copyBeforeEnd(build, piece, other, part, next, how);
  if (said.to?.is === 'less') return copyToLess(build, piece, other, part, said, how);
  const end = endOf(other, source, said.to);
  if (end === undefined) {
    // nor is it known in what it goes on
    part.fabric = { is: 'patt', label: 'pattern', line: build.line };
    return fault('place not known');
  }
  copyMarks(other, piece, part, end);
  const wrong =
    said.to?.is === 'count'
      ? copyToCount(build, piece, source, part, said.to.stitches, how)
      : copyRows(build, piece, source, part, part.rows.length, end, how);
  // without a gauge the length that was asked for is hers to measure
  if (!wrong && source.height === 0 && said.to?.is === 'length') {
    const { fabric, fabricRow } = source.rows[end] ?? part;
    Object.assign(part, { fabric, fabricRow });
    return workUntil(build, piece, part, said.to);
  }
  if (wrong || said.to !== undefined) return wrong;
  return finishLike(build, piece, other, source, part, how);
}

/** 'Until piece measures 5 cm less than back to shoulder': up to what is measured before that place, and so much of it. */
function copyToLess(
  build: Build,
  piece: PieceBuild,
  other: PieceBuild,
  part: PartBuild,
  said: AsFor,
  how: Copying,
): Fault | undefined {
  const source = other.parts[0] as PartBuild;
  const { to } = said;
  if (to?.is !== 'less') return undefined;
  const mark = to.place && markOf(other, to.place);
  if (to.place && mark?.part !== source) return fault('place not known');
  const place = mark ? mark.rows - source.baseRows : rowsToMeasure(other, source);
  let end = place;
  while (source.rows[end - 1]?.kind === 'stretch') end -= 1;
  if (end === place) return fault('place not known');
  copyMarks(other, piece, part, end);
  const wrong = copyRows(build, piece, source, part, part.rows.length, end, how);
  if (wrong) return wrong;
  part.fabric = source.rows[end]?.fabric ?? part.fabric;
  return workUntil(build, piece, part, {
    is: 'same length',
    piece: said.piece,
    ...(to.place && { to: to.place }),
    lessMm: to.mm,
  });
}

/** What is worked on stitches that a whole piece would have bound off. */
const GOES_ON: ReadonlySet<Statement['is']> = new Set(['even', 'groups', 'bind off', 'shape', 'hold']);

/** 'Work as for back. After 30 rows, bind off 5 sts': so far as that; where nobody says how far, up to the other's end, and it is told. */
function copyBeforeEnd(
  build: Build,
  piece: PieceBuild,
  other: PieceBuild,
  part: PartBuild,
  next: Statement,
  how: Copying,
): Fault | undefined {
  const source = other.parts[0] as PartBuild;
  const until = next.is === 'even' && next.until?.is === 'rows in all' ? next.until : undefined;
  const said = until && endOf(other, source, { is: 'rows after', rows: until.n, from: until.from });
  const end = said ?? rowsToMeasure(other, source);
  copyMarks(other, piece, part, end);
  const wrong = copyRows(build, piece, source, part, part.rows.length, end, how);
  return wrong ?? (said === undefined ? fault('place not known') : undefined);
}

function partToGoOn(build: Build, piece: PieceBuild, other: PieceBuild, how: Copying): PartBuild {
  const now = build.part;
  if (now && !isDone(now) && piece.parts.includes(now)) return now;
  const source = other.parts[0] as PartBuild;
  const live = how.half ? Math.ceil(source.start / 2) : source.start;
  const part = newPart(build, piece, {
    name: 'body',
    from: { castOn: live },
    live,
    firstSide: source.firstSide,
  });
  part.fabric = source.rows[0]?.fabric ?? part.fabric;
  if (build.holesNext) layHoles(build, piece, part, build.holesNext);
  build.holesNext = undefined;
  return part;
}

/** Rows of the other piece's first part to take over. */
function endOf(other: PieceBuild, source: PartBuild, to: AsFarAs | undefined): number | undefined {
  switch (to?.is) {
    case 'place': {
      const mark = markOf(other, to.place);
      return mark && mark.part === source ? mark.rows - source.baseRows : undefined;
    }
    case 'rows before': {
      const mark = to.place && Number.isInteger(to.rows) ? markOf(other, to.place) : undefined;
      return mark ? Math.max(0, mark.rows - to.rows - source.baseRows) : undefined;
    }
    case 'rows after': {
      const mark = to.from === 'start' ? undefined : markOf(other, to.from);
      const begin = to.from === 'start' ? { part: source, rows: 0 } : mark;
      const past =
        mark && to.past ? endOfPlace(mark, mark.rows - mark.part.baseRows, other, to.from) : undefined;
      const first = begin?.part === source ? (past ?? begin.rows - source.baseRows) : undefined;
      const end = first === undefined ? -1 : first + to.rows;
      return end >= 0 && end <= source.rows.length ? end : undefined;
    }
    case 'length':
      return endAtLength(other, source, to.mm, to.from);
    default:
      return source.rows.length;
  }
}

/** 'same as back until armholes measure 4½ in'; without a gauge only the place's shaping is taken over, from the start all that a length can be measured of. */
function endAtLength(other: PieceBuild, source: PartBuild, mm: number, from: From): number {
  const mark = from === 'start' || from === 'here' ? undefined : markOf(other, from);
  if (source.height === 0)
    return mark
      ? endOfPlace(mark, mark.rows - mark.part.baseRows, other, from)
      : (rowsToStretch(source, mm) ?? rowsToMeasure(other, source));
  const base = mark?.height ?? 0;
  const at = source.rows.findIndex(
    (_, i) => (source.rows[i + 1]?.was.height ?? source.height) - base >= mm - 0.001,
  );
  return at < 0 ? source.rows.length : at + 1;
}

/** Rows before the stretch in which so much of it is reached, by the lengths that its own text says. */
function rowsToStretch({ sections }: PartBuild, mm: number): number | undefined {
  let long = 0;
  return sections.find(({ stretch }) => {
    long = (stretch?.mm ?? 0) + (stretch?.from === 'start' ? 0 : long);
    return stretch !== undefined && long >= mm;
  })?.first;
}

/** Rows before its shoulders, and before all of it is bound off. */
function rowsToMeasure(other: PieceBuild, source: PartBuild): number {
  const shoulder = markOf(other, 'shoulder');
  if (shoulder?.part === source) return shoulder.rows - source.baseRows;
  const end = source.rows.findIndex(({ after }) => after === 0);
  return end < 0 ? source.rows.length : end;
}

function copyToCount(
  build: Build,
  piece: PieceBuild,
  source: PartBuild,
  part: PartBuild,
  count: number,
  how: Copying,
): Fault | undefined {
  let to = part.rows.length;
  while (to < source.rows.length && source.rows[to]?.after !== count) to += 1;
  const wrong = copyRows(
    build,
    piece,
    source,
    part,
    part.rows.length,
    Math.min(to + 1, source.rows.length),
    how,
  );
  return wrong ?? (to < source.rows.length ? undefined : countDiffers(count, part.live));
}

function copyMarks(other: PieceBuild, piece: PieceBuild, part: PartBuild, end: number): void {
  for (const [name, mark] of other.marks) {
    if (mark.part === other.parts[0] && mark.rows <= end && !piece.marks.has(name))
      piece.marks.set(name, { part, rows: mark.rows, height: mark.height });
  }
}

/** 'shape armhole as for back': the rows from that place to where its shaping ends. */
function copyPlace(
  build: Build,
  piece: PieceBuild,
  other: PieceBuild,
  place: Place,
  how: Copying,
): Fault | undefined {
  const mark = markOf(other, place);
  const part = build.part;
  if (mark === undefined || part === undefined || isDone(part)) {
    return fault('place not known');
  }
  const first = mark.rows - mark.part.baseRows;
  setMark(piece, place, part);
  const { fabric } = part;
  const oneSide = part.parent !== undefined && mark.part.parent === undefined && !isHalf(other);
  const turned = mark.part.neck !== undefined && part.neck !== undefined && mark.part.neck !== part.neck;
  const wrong = copyRows(build, piece, mark.part, part, first, endOfPlace(mark, first, other, place), {
    half: how.half || oneSide,
    mirrored: how.mirrored || turned,
  });
  // what nobody knew before it nobody knows behind it
  if (fabric.is === 'patt') part.fabric = fabric;
  if (!wrong && part.live === 0) part.end = 'bind off';
  return wrong;
}

function endOfPlace(mark: Mark, first: number, other: PieceBuild, place: From): number {
  const { rows } = mark.part;
  const later = [...other.marks.values()]
    .filter((one) => one.part === mark.part && one.rows - mark.part.baseRows > first)
    .map((one) => one.rows - mark.part.baseRows);
  const limit = Math.min(rows.length, ...later);
  let end = first;
  for (let i = first; i < limit; i += 1) {
    const row = rows[i];
    if (row === undefined || row.kind === 'stretch') break;
    if (row.kind === 'bind off' && place !== 'shoulder') break;
    // what was not understood may shape it
    const ownWords = row.own !== undefined && row.items === undefined && !row.hole;
    if (row.before !== row.after || ownWords) end = i + 1;
  }
  return end;
}
