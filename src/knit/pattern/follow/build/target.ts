import { proposedRole } from '../../../making-up/role.ts';
import { otherSide, type Side } from '../../../row/step.ts';
import type { EndEdge, From, MarkName, PieceSaid, Place, Until } from '../../say/how-far.ts';
import { type Build, nextSide, otherEdge, type PartBuild, type PieceBuild } from './build.ts';
import { markOf, neckOf } from './part.ts';
import { rowHeight } from './push-row.ts';
import type { Stretch } from './section.ts';

/** How many rows a stretch has, and what she has to know where it ends by a measure. */
export interface Target {
  readonly rows: number;
  readonly stretch?: Stretch;
  /** mm by which the piece is longer already than the text asks for */
  readonly overMm?: number;
}

type Bounded = Exclude<Until, { is: 'count' }>;

/** Rows to work until the end that the text names; undefined when that end is not known here. */
export function targetOf(
  build: Build,
  piece: PieceBuild,
  part: PartBuild,
  said: Bounded,
): Target | undefined {
  const until = withSide(piece, part, said);
  if ('endRow' in until && until.endRow !== undefined)
    return toPatternRow(build, piece, part, until, until.endRow);
  switch (until.is) {
    case 'rows':
      return { rows: Math.max(0, Math.round(until.n)) };
    case 'rows in all':
      return { rows: Math.max(0, Math.round(until.n) - rowsSince(piece, part, until.from)) };
    case 'length':
      return lengthTarget(build, piece, part, until);
    case 'same length':
      return sameLength(build, piece, part, until);
    case 'open':
      return until.only && until.end !== undefined
        ? { rows: lastSide(part) === until.end ? 0 : 1 }
        : openTarget(build, piece, part, { ...until, from: 'start' });
  }
}

/** A row that ends at the left edge is an RS row. */
export function endSideOf(
  piece: PieceBuild,
  part: PartBuild,
  { end, endEdge }: { readonly end?: Side; readonly endEdge?: EndEdge },
): Side | undefined {
  if (endEdge === undefined) return end;
  const neck = neckOf(piece, part);
  return (endEdge === 'neck' ? neck : otherEdge(neck)) === 'left' ? 'RS' : 'WS';
}

function withSide(piece: PieceBuild, part: PartBuild, until: Bounded): Bounded {
  if ('odd' in until && until.odd !== undefined)
    return { ...until, end: until.odd ? nextSide(part) : lastSide(part) };
  if (!('endEdge' in until) || until.endEdge === undefined) return until;
  const end = endSideOf(piece, part, until);
  return end === undefined ? until : { ...until, end };
}

export const lastSide = (part: PartBuild): Side => otherSide(nextSide(part));

function rowsSince(piece: PieceBuild, part: PartBuild, from: MarkName): number {
  const now = part.baseRows + part.rows.length;
  if (from === 'start') return now;
  const mark = markOf(piece, from) ?? markOf(piece, 'heading');
  return now - (mark?.rows ?? 0);
}

/** Height at which the measuring begins, mm. */
function heightAt(piece: PieceBuild, part: PartBuild, from: From): number {
  if (from === 'here') return part.height;
  if (from === 'start') return 0;
  const marks: readonly MarkName[] =
    from === 'armhole' ? ['armhole', 'heading'] : from === 'section' ? ['section'] : [from, 'heading'];
  for (const name of marks) {
    const mark = markOf(piece, name);
    if (mark) return mark.height;
  }
  return 0;
}

function lengthTarget(
  build: Build,
  piece: PieceBuild,
  part: PartBuild,
  until: Extract<Until, { is: 'length' }>,
): Target | undefined {
  const { mm, from, end } = until;
  const height = rowHeight(build, part);
  if (height === 0) return openTarget(build, piece, part, until);
  // 'until 6 in above ribbing' where nobody knows what the ribbing was
  if (from === 'rib' && markOf(piece, 'rib') === undefined && markOf(piece, 'heading') === undefined)
    return undefined;
  const left = mm - (part.height - heightAt(piece, part, from));
  const exact = Math.max(0, left) / height;
  // where the text leaves it open, a length ends so that the next row is an RS row (common practice, no published source)
  const stretch = nameStretch(piece, {
    mm,
    from,
    open: false,
    ...(end === undefined ? {} : { endSide: end }),
  });
  return {
    rows: countedRows(
      build,
      stretch,
      roundTo(part, exact, end ?? (exact > 0 && exact < 2 ? undefined : 'WS')),
    ),
    stretch,
    ...(left < -height ? { overMm: -left } : {}),
  };
}

/** 'ending with row 4 of pattern': the rows nearest to the length whose last is that row; undefined where its number is not known. */
function toPatternRow(
  build: Build,
  piece: PieceBuild,
  part: PartBuild,
  until: Extract<Bounded, { endRow?: number }>,
  endRow: number,
): Target | undefined {
  const { endRow: _, ...plain } = until;
  const period = part.fabric.is === 'rows' ? part.fabric.rows.length : 0;
  if (endRow < 1 || endRow > period) return undefined;
  const target = targetOf(build, piece, part, plain);
  if (target === undefined) return undefined;
  return { ...target, rows: endingOn(endRow, target.rows, part.fabricRow, period) };
}

/** The number nearest to `rows` after which row `endRow` of `period` is the last, where `done` are worked already. */
export function endingOn(endRow: number, rows: number, done: number, period: number): number {
  const past = (((done + rows - endRow) % period) + period) % period;
  return past * 2 <= period && past <= rows ? rows - past : rows + period - past;
}

/** Without a gauge a stretch is as short as its pattern allows; she counts on until it is long enough. */
function openTarget(
  build: Build,
  piece: PieceBuild,
  part: PartBuild,
  until: { from: From; end?: Side; mm?: number },
): Target {
  const period = part.fabric.is === 'patt' ? 2 : Math.max(1, part.fabric.rows.length);
  const whole = period % 2 === 0 ? period : 2 * period;
  const { end, from, mm } = until;
  const rows = roundTo(part, whole, end ?? 'WS');
  const stretch = nameStretch(piece, {
    from,
    open: true,
    ...(mm === undefined ? {} : { mm }),
    ...(end === undefined ? {} : { endSide: end }),
  });
  return { rows: countedRows(build, stretch, rows), stretch };
}

/** A stretch whose end was not understood. */
export const openStretch = (piece: PieceBuild): Stretch => nameStretch(piece, { from: 'here', open: true });

function nameStretch(piece: PieceBuild, stretch: Omit<Stretch, 'id'>): Stretch {
  piece.stretchesSoFar += 1;
  return { id: `${piece.name}/${piece.stretchesSoFar}`, ...stretch };
}

/** What she counted on her own needles goes before what the gauge says. */
export function countedRows(build: Build, stretch: Stretch, rows: number): number {
  const said = build.stretches[stretch.id];
  return said !== undefined && Number.isSafeInteger(said) && said >= 0 ? said : rows;
}

/** The number of rows nearest to `exact` whose last one lies on the side asked for. */
export function roundTo(part: PartBuild, exact: number, end: Side | undefined): number {
  const near = Math.round(exact);
  if (end === undefined) return near;
  const fits = (n: number) => (n % 2 === 0) === (lastSide(part) === end);
  if (fits(near)) return near;
  if (near === 0) return 1;
  return exact >= near ? near + 1 : near - 1;
}

/** Where nobody knows how long the other piece is, she lays one against the other. */
function sameLength(
  build: Build,
  piece: PieceBuild,
  part: PartBuild,
  until: Extract<Until, { is: 'same length' }>,
): Target | undefined {
  const other = pieceNamed(build, until.piece);
  const mark = until.to === undefined ? undefined : other && markOf(other, until.to);
  const { end } = until;
  const open = () => openTarget(build, piece, part, { from: 'start', ...(end && { end }) });
  // straight shoulders are where the other piece is bound off
  const known = until.to === undefined || until.to === 'shoulder' || mark !== undefined;
  if (!other || !known) {
    const less = until.lessRows ?? until.lessMm;
    return less === undefined ? open() : undefined;
  }
  const target =
    mark?.rows ??
    Math.max(0, ...other.parts.map((one) => one.baseRows + one.rows.length - closing(one, until.to)));
  const height = rowHeight(build, part);
  // without a gauge nobody knows how many rows are 5 cm: she measures
  if (until.lessMm !== undefined && height === 0) return open();
  const less =
    until.lessRows ?? (until.lessMm !== undefined && height > 0 ? Math.round(until.lessMm / height) : 0);
  const rows = Math.max(0, target - less - part.baseRows - part.rows.length);
  // rows of which nobody knows the number are no measure
  if (
    rows === 0 &&
    height === 0 &&
    other.parts.some(({ sections }) => sections.some(({ stretch }) => stretch))
  )
    return open();
  return { rows: until.end === undefined ? rows : roundTo(part, rows, until.end) };
}

const closing = ({ rows }: PartBuild, to: Place | undefined): number =>
  to === 'shoulder' && rows.at(-1)?.kind === 'bind off' ? 1 : 0;

/** 'back', 'left front', 'first sleeve': the latest piece that is called so. */
export function pieceNamed(build: Build, { name: wanted }: PieceSaid): PieceBuild | undefined {
  const others = build.begun.filter((piece) => piece !== build.piece);
  if (wanted === undefined) return others.at(-1);
  const stem = (text: string) => text.toLowerCase().replace(/s\b/g, '');
  const latest = [...others].reverse();
  const exact = others.find((piece) => stem(piece.name) === stem(wanted));
  return (
    exact ??
    latest.find((piece) => stem(piece.name).includes(stem(wanted))) ??
    latest.find((piece) => stem(wanted).includes(stem(piece.name))) ??
    onlyPiece(others, wanted)
  );
}

/** 'Work front as back' where one piece was worked, and nobody called it anything. */
const onlyPiece = (others: readonly PieceBuild[], wanted: string): PieceBuild | undefined =>
  wanted === 'back' && others.length === 1 && proposedRole(others[0]?.name ?? '') === 'other'
    ? others[0]
    : undefined;
