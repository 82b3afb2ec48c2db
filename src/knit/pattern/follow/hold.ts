import { type Fault, fault } from '../../fault.ts';
import type { Said, Statement } from '../say/statement.ts';
import type { Build, PartBuild, PieceBuild, Resting } from './build/build.ts';
import { countDiffers } from './build/compare.ts';
import { resolveGap } from './build/gap.ts';
import { makeOwnRow } from './build/make-row.ts';
import { holdSet, split } from './build/part.ts';
import { takeBack } from './build/push-row.ts';

type Hold = Extract<Statement, { is: 'hold' }>;

/** 'place rem 24 sts on holder', 'leave centre 17 sts on a holder'. */
export function doHold(
  build: Build,
  piece: PieceBuild,
  part: PartBuild,
  said: Hold,
  ahead: readonly Said[] = [],
): Fault | undefined {
  if (part.gap) {
    const now = resolveGap(build, piece, part);
    return heldCount(piece, said.stitches, now);
  }
  const waiting = restingBeside(piece, part);
  if (
    waiting.length > 0 &&
    (said.which === 'rest' ||
      said.which === 'first' ||
      said.which === 'last' ||
      said.stitches === waiting[0]?.stitches) &&
    part.rows.length <= 1
  ) {
    return heldCount(piece, said.stitches, part);
  }
  if (said.which === 'half')
    return part.live % 2 === 0
      ? holdSome(build, piece, part, { ...said, stitches: part.live / 2 })
      : fault('place not known');
  if (said.stitches === undefined || said.stitches === part.live) {
    part.end = 'hold';
    return undefined;
  }
  if (said.stitches > part.live) {
    part.end = 'hold';
    return countDiffers(said.stitches, part.live);
  }
  // at the end of a piece the rest is all that is left
  const next = ahead.find(({ statement }) => statement.is !== 'note' && statement.is !== 'stated');
  const goesOn = next !== undefined && !ENDS.has(next.statement.is);
  if (said.which === 'rest' && !goesOn) {
    const found = part.live;
    part.end = 'hold';
    return countDiffers(said.stitches, found);
  }
  // 'slip first 18 sts onto a holder, slip centre 24 sts to another one': what is left is the other side
  const held = waiting.reduce((sum, one) => sum + one.stitches, 0);
  if (said.which === 'centre' && part.rows.length === 0 && held > 0 && part.live - said.stitches === held)
    return holdSome(build, piece, part, { ...said, which: 'first' });
  return said.which === 'centre'
    ? holdCentre(build, piece, part, said.stitches)
    : holdSome(build, piece, part, said);
}

/**
 * 'leave rem 21 sts on a holder. Continue on these 32 sts' behind a row that nobody understood: that row left 53. The count
 * said is taken where the row stated none.
 */
export function countFromSets(
  build: Build,
  part: PartBuild,
  held: number | undefined,
  ahead: readonly Said[],
): void {
  const own = part.rows.at(-1)?.own;
  const next = ahead[0]?.statement;
  if (own === undefined || held === undefined || next?.is !== 'work on' || next.stitches === undefined)
    return;
  if (!part.uncounted || held + next.stitches === part.live) return;
  const { fabric } = part;
  const { line } = build;
  build.line = takeBack(build, part)?.line ?? line;
  makeOwnRow(build, part, own, held + next.stitches);
  Object.assign(part, { fabric });
  build.line = line;
}

/** What follows the end of a piece. */
const ENDS: ReadonlySet<Statement['is']> = new Set(['heading', 'cast on', 'pick up']);

/** 'slip centre 18 sts onto a holder' when the centre rests beside the side that is still to come. */
export function holdOfResting(build: Build, piece: PieceBuild, said: Hold): Fault | undefined {
  const resting = piece.resting[0];
  const { stitches } = said;
  if (
    resting === undefined ||
    stitches === undefined ||
    stitches >= resting.stitches ||
    resting.edge === 'middle'
  )
    return undefined;
  const rest = resting.stitches - stitches;
  const onLeft = resting.edge === 'left';
  piece.resting.splice(0, 1, {
    ...resting,
    stitches: rest,
    column: onLeft ? resting.column + stitches : resting.column,
  });
  holdSet(build, piece, {
    ...resting,
    stitches,
    edge: 'middle',
    column: onLeft ? resting.column : resting.column + rest,
  });
  return undefined;
}

const restingBeside = (piece: PieceBuild, part: PartBuild): Resting[] =>
  piece.resting.filter((one) => one.parent === part.parent);

function heldCount(piece: PieceBuild, stitches: number | undefined, part: PartBuild): Fault | undefined {
  if (stitches === undefined) return undefined;
  const sets = restingBeside(piece, part).map((one) => one.stitches);
  const sum = sets.reduce((a, b) => a + b, 0);
  return sets.includes(stitches) || sum === stitches || part.live === stitches
    ? undefined
    : countDiffers(stitches, sum);
}

function holdCentre(build: Build, piece: PieceBuild, part: PartBuild, stitches: number): Fault | undefined {
  const side = (part.live - stitches) / 2;
  if (!Number.isInteger(side)) {
    return fault('centre not in the middle', { stitches: part.live, centreStitches: stitches });
  }
  split(build, piece, part, [side, stitches, side], 0, true);
  const middle = piece.resting.find((one) => one.parent === part && one.edge === 'middle');
  if (middle) holdSet(build, piece, middle);
  return undefined;
}

function holdSome(build: Build, piece: PieceBuild, part: PartBuild, said: Hold): Fault | undefined {
  const stitches = said.stitches as number;
  const first = said.which === 'first';
  const sets = first ? [stitches, part.live - stitches] : [part.live - stitches, stitches];
  split(build, piece, part, sets, first ? 1 : 0, true);
  return undefined;
}
