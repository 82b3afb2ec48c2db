import { type Fault, fault } from '../../fault.ts';
import { type Build, nextSide, type PartBuild, type PieceBuild, type Resting } from './build/build.ts';
import { type Copying, copyRows } from './build/copy-rows.ts';
import { resolveGap } from './build/gap.ts';
import { split, takeUp } from './build/part.ts';

/** The whole piece was meant: its sides are worked like the other's. */
export function finishLike(
  build: Build,
  piece: PieceBuild,
  other: PieceBuild,
  source: PartBuild,
  part: PartBuild,
  how: Copying,
): Fault | undefined {
  if (source.end === 'split' && (part.gap || !how.half)) {
    const now = part.gap ? resolveGap(build, piece, part) : partLike(build, piece, other, source, part, how);
    if (now === undefined) return fault('place not known');
    const children = other.parts.filter((one) => one.parent === source);
    for (const child of children) {
      const wrong = copyChild(build, piece, child, now.parent === part ? part : now, how);
      if (wrong) return wrong;
    }
    return undefined;
  }
  if (part.end === undefined && source.end !== undefined && source.end !== 'split') part.end = source.end;
  return undefined;
}

const FROM_RIGHT = ['right', 'middle', 'left'] as const;

/** Parted as the other one by a turn, or by a holder, before the next row; undefined where the sets are no more those. */
function partLike(
  build: Build,
  piece: PieceBuild,
  other: PieceBuild,
  source: PartBuild,
  part: PartBuild,
  { mirrored }: Copying,
): PartBuild | undefined {
  const sets = [
    ...other.parts.flatMap(({ parent, from, start }) =>
      parent === source && 'edge' in from ? [{ edge: from.edge, stitches: start }] : [],
    ),
    ...other.resting.filter(({ parent }) => parent === source),
  ];
  const fromRight = FROM_RIGHT.flatMap((edge) => sets.filter((one) => one.edge === edge)).map(
    ({ stitches }) => stitches,
  );
  if (fromRight.reduce((sum, stitches) => sum + stitches, 0) !== part.live) return undefined;
  const asWorked = mirrored === (nextSide(part) === 'RS') ? fromRight.reverse() : fromRight;
  return split(build, piece, part, asWorked, 0, true);
}

function copyChild(
  build: Build,
  piece: PieceBuild,
  child: PartBuild,
  parent: PartBuild,
  how: Copying,
): Fault | undefined {
  const edge = 'edge' in child.from ? child.from.edge : 'right';
  const wanted = how.mirrored && edge !== 'middle' ? (edge === 'right' ? 'left' : 'right') : edge;
  const started = piece.parts.find(
    (one) => one.parent === parent && one.rows.length === 0 && 'edge' in one.from && one.from.edge === wanted,
  );
  const resting = piece.resting.find((one: Resting) => one.parent === parent && one.edge === wanted);
  const part = started ?? (resting ? takeUp(build, piece, resting, child.firstSide) : undefined);
  if (part === undefined) return undefined;
  build.part = part;
  const wrong = copyRows(build, piece, child, part, 0, child.rows.length, how);
  if (!wrong && part.end === undefined && child.end !== undefined) part.end = child.end;
  return wrong;
}
