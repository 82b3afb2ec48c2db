import type { Fault } from '../../fault.ts';
import type { Statement } from '../say/statement.ts';
import { type Build, otherEdge, type PartBuild, type PieceBuild, startEdge } from './build/build.ts';
import { countDiffers } from './build/compare.ts';
import { gapOf, resolveGap } from './build/gap.ts';
import { split } from './build/part.ts';
import { doRejoin } from './rejoin.ts';

/** 'working on last 28 sts only', 'work each side separately'. */
export function doWorkOn(
  build: Build,
  piece: PieceBuild,
  part: PartBuild,
  said: Extract<Statement, { is: 'work on' }>,
): Fault | undefined {
  if (said.which === 'both at once' || said.which === 'each side') piece.bothSides = true;
  if (part.gap) {
    const sets = part.gap;
    const which =
      said.which === 'first' ||
      (said.stitches !== undefined && said.stitches === sets[0] && said.stitches !== sets.at(-1))
        ? 'first'
        : 'last';
    const now = resolveGap(build, piece, part, which);
    return said.stitches !== undefined && said.stitches !== now.live
      ? countDiffers(said.stitches, now.live)
      : undefined;
  }
  const { stitches } = said;
  if (part.rows.length > 0 && otherSet(piece, part, said))
    return doRejoin(build, piece, { is: 'rejoin', stitches: stitches as number });
  // the others rest already: no second set is parted from the one that was kept
  const rest = piece.resting.some((one) => one.parent === part.parent);
  if (
    rest &&
    (said.which === 'these' || said.which === 'only') &&
    stitches !== undefined &&
    stitches !== part.live
  )
    return countDiffers(stitches, part.live);
  if (stitches === undefined || stitches === part.live) return undefined;
  if (stitches > part.live) return countDiffers(stitches, part.live);
  // 'work even on 53 sts' says how many there are; it parts none
  if (said.which === 'these') return countDiffers(stitches, part.live);
  // 'K23, turn. Work on the first 23 sts': what the turn left lies in front of the next row
  const turned = part.unworked > 0 && part.unworked + stitches === part.live;
  const last = said.which === 'last' || turned;
  const sets = last ? [part.live - stitches, stitches] : [stitches, part.live - stitches];
  split(build, piece, part, sets, last ? 1 : 0, true);
  return undefined;
}

/** 'Knit 5 ridges on the first 26 sts', where those lie on a holder and the last ones were worked. */
function otherSet(
  piece: PieceBuild,
  { parent, live }: PartBuild,
  { which, stitches }: Extract<Statement, { is: 'work on' }>,
): boolean {
  if (parent === undefined || (which !== 'first' && which !== 'last')) return false;
  const last = parent.rows.at(-1)?.items ?? [];
  // where the row that parted them began, or the next one would
  const parted = gapOf(parent) !== undefined || last.some(({ is }) => is === 'parting');
  const begins = parted ? otherEdge(startEdge(parent)) : startEdge(parent);
  const edge = which === 'first' ? begins : otherEdge(begins);
  return piece.resting.some(
    (one) => one.parent === parent && one.stitches === stitches && (stitches !== live || one.edge === edge),
  );
}
