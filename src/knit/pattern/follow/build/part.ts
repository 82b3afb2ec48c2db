import type { Edge, PartStart } from '../../../piece/recipe.ts';
import type { Side } from '../../../row/step.ts';
import type { MarkName } from '../../say/how-far.ts';
import type { PieceHeading } from '../../say/statement.ts';
import {
  type Borders,
  type Build,
  type Mark,
  nextSide,
  type PartBuild,
  type PieceBuild,
  type Resting,
} from './build.ts';
import { fabricOf, unsaidFabric } from './fabric.ts';

export function setMarkOnce(piece: PieceBuild, name: MarkName, part: PartBuild): void {
  if (!markOf(piece, name)) setMark(piece, name, part);
}

export function newPiece(build: Build, { name, makes, mirrored = false, half }: PieceHeading): PieceBuild {
  const taken = build.namesTaken.get(name) ?? 0;
  const piece: PieceBuild = {
    name: taken === 0 ? name : `${name} ${taken + 1}`,
    makes,
    mirrored,
    half,
    parts: [],
    namesTaken: new Map(),
    resting: [],
    marks: new Map(),
    stretchesSoFar: 0,
    bothSides: false,
    unreadAt: -1,
  };
  build.pieces.push(piece);
  for (const beginning of beginnings(piece.name)) takeName(build.namesTaken, beginning);
  build.piece = piece;
  build.part = undefined;
  build.meanwhile = [];
  build.defining = undefined;
  return piece;
}

/** 'left', 'left front', 'left front 2' of 'left front 2'. */
const beginnings = (name: string): string[] =>
  name.split(' ').map((_, i, words) => words.slice(0, i + 1).join(' '));

function takeName(taken: Map<string, number>, name: string): number {
  const n = (taken.get(name) ?? 0) + 1;
  taken.set(name, n);
  return n;
}

/** Stripes go on where a piece is parted. */
function stripesOf({ striped }: Build, parent: PartBuild | undefined): PartBuild['stripes'] {
  if (parent === undefined) return striped && { of: striped, first: 0 };
  const { stripes, rows } = parent;
  return stripes && { ...stripes, first: stripes.first - rows.length };
}

interface Begin {
  readonly name: string;
  readonly from: PartStart;
  readonly live: number;
  readonly firstSide: Side;
  readonly parent?: PartBuild;
  readonly column?: number;
  readonly neck?: Edge;
}

export function newPart(build: Build, piece: PieceBuild, begin: Begin): PartBuild {
  const { parent } = begin;
  const n = takeName(piece.namesTaken, begin.name);
  const part: PartBuild = {
    name: n === 1 ? begin.name : `${begin.name} ${n}`,
    from: begin.from,
    firstSide: begin.firstSide,
    start: begin.live,
    rows: [],
    sections: [],
    live: begin.live,
    column: begin.column ?? 0,
    markers: [],
    fabric: parent?.fabric ?? (build.wholly && fabricOf(build.wholly, build, undefined)) ?? unsaidFabric,
    borders: {},
    yarn: parent?.yarn,
    stripes: stripesOf(build, parent),
    holes: undefined,
    fabricRow: parent?.fabricRow ?? (begin.firstSide === 'RS' ? 0 : 1),
    neck: begin.neck,
    end: undefined,
    baseRows: parent ? parent.baseRows + parent.rows.length : 0,
    baseHeight: parent?.height ?? 0,
    height: parent?.height ?? 0,
    parent,
    gap: undefined,
    unworked: 0,
    uncounted: undefined,
    cycle: undefined,
    named: new Map(parent?.named ?? []),
    lastEdge: undefined,
    closed: true,
    rounds: parent?.rounds ?? false,
  };
  if (piece.parts.length === 0) build.begun.push(piece);
  piece.parts.push(part);
  build.part = part;
  return part;
}

/** The part's end of the piece that stands there when nothing was said of it. */
export const isDone = (part: PartBuild | undefined): boolean =>
  part === undefined || part.end !== undefined || part.live === 0;

export function setMark(piece: PieceBuild, name: MarkName, part: PartBuild | undefined): void {
  if (part) piece.marks.set(name, { part, rows: part.baseRows + part.rows.length, height: part.height });
}

export const markOf = (piece: PieceBuild, name: MarkName): Mark | undefined => piece.marks.get(name);

/** Right front, left front: the edge at the neck, seen with the right side facing. */
export function neckOf(piece: PieceBuild, part: PartBuild): Edge {
  if (part.neck) return part.neck;
  return piece.half ?? 'left';
}

export const isHalf = (piece: PieceBuild): boolean => piece.half !== undefined;

/**
 * Parts a set of stitches, given in the order worked, and goes on with one of them.
 * @param keep index of the set that is worked on; the last one where the yarn hangs after a whole row
 */
export function split(
  build: Build,
  piece: PieceBuild,
  part: PartBuild,
  sets: readonly number[],
  keep: number,
  beforeRow = false,
): PartBuild {
  const side = nextSide(part);
  // the row in which the sets were parted ran from the right edge when the next one starts at the left
  const fromRight = beforeRow ? side === 'RS' : side === 'WS';
  const order = fromRight ? sets : [...sets].reverse();
  const kept = fromRight ? keep : sets.length - 1 - keep;
  part.end = 'split';
  // what was bound off between them moved no set
  const last = beforeRow ? undefined : part.rows.at(-1);
  const first = last?.was.column ?? part.column;
  let column = first;
  const width = last?.before ?? part.live;
  const resting = order.map((stitches, i): Resting => {
    const edge = i === 0 ? 'right' : i === order.length - 1 ? 'left' : 'middle';
    const at = edge === 'left' ? first + width - stitches : column;
    column += stitches;
    return {
      parent: part,
      stitches,
      edge,
      neck: edge === 'right' ? 'left' : 'right',
      firstSide: side,
      column: at,
      leftAt: build.at,
    };
  });
  const chosen = resting[kept] as Resting;
  piece.resting.unshift(...resting.filter((one) => one !== chosen));
  setMark(piece, 'neck', part);
  const now = takeUp(build, piece, chosen);
  // what a turn left in front of the next row lies in front of it still
  if (beforeRow && keep === 0 && part.unworked < now.live) now.unworked = part.unworked;
  return now;
}

const NAMES = { right: 'right side', left: 'left side', middle: 'middle' } as const;

export function takeUp(
  build: Build,
  piece: PieceBuild,
  resting: Resting,
  firstSide: Side = resting.firstSide,
): PartBuild {
  const at = piece.resting.indexOf(resting);
  if (at >= 0) piece.resting.splice(at, 1);
  const part = newPart(build, piece, {
    name: NAMES[resting.edge],
    from: { part: resting.parent.name, stitches: resting.stitches, edge: resting.edge },
    live: resting.stitches,
    firstSide,
    parent: resting.parent,
    column: resting.column,
    neck: resting.neck,
  });
  if (firstSide !== resting.firstSide) part.fabricRow += 1;
  part.borders = outerBorder(resting.parent, resting.edge);
  return part;
}

/** Of what is kept at the edges only the one that the part has. */
function outerBorder(parent: PartBuild, edge: Resting['edge']): Borders {
  const border = edge === 'middle' ? undefined : parent.borders[edge];
  if (edge === 'middle' || border === undefined) return {};
  return { [edge]: { ...border, first: border.first - parent.rows.length, since: -1 } };
}

/** Puts a set of resting stitches on a holder for good. */
export function holdSet(build: Build, piece: PieceBuild, resting: Resting): void {
  const now = build.part;
  const part = takeUp(build, piece, resting);
  part.end = 'hold';
  build.part = now;
}
