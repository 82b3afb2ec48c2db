import { type Fault, fault } from '../../fault.ts';
import type { Said, Statement } from '../say/statement.ts';
import { doAsFor } from './as-for.ts';
import { doBindOff } from './bind-off.ts';
import { doBorders } from './borders.ts';
import type { Build, PartBuild, PieceBuild } from './build/build.ts';
import { useCycle } from './build/cycle.ts';
import { endDiffers } from './build/end-differs.ts';
import { unsaidFabric } from './build/fabric.ts';
import { resolveGap } from './build/gap.ts';
import { isDone } from './build/part.ts';
import { pieceInHand, startPending } from './build/piece-in-hand.ts';
import { doneOmitting } from './buttonholes.ts';
import { doEnding } from './ending.ts';
import { doEven, leaveUnsaid } from './even.ts';
import { doEvenly } from './evenly.ts';
import { doGroups } from './groups.ts';
import { countFromSets, doHold, holdOfResting } from './hold.ts';
import { makesRows } from './makes-rows.ts';
import { doOtherSide } from './other-side.ts';
import { doRejoin } from './rejoin.ts';
import { doRepeatNamed } from './repeat-named.ts';
import { doRepeatRows } from './repeat-rows.ts';
import { flushCycle } from './row.ts';
import { doRows } from './rows.ts';
import { doShape } from './shape.ts';
import { listDiffers, listOne } from './stripes.ts';
import { doWorkOn } from './work-on.ts';

type OnNeedle = Exclude<
  Statement,
  {
    is:
      | 'heading'
      | 'note'
      | 'turn'
      | 'at the same time'
      | 'needle'
      | 'gauge'
      | 'multiple'
      | 'cast on'
      | 'pick up'
      | 'stated'
      | 'row'
      | 'named rows'
      | 'stars'
      | 'star'
      | 'yarn'
      | 'stripes'
      | 'slips'
      | 'buttonholes'
      | 'repeat from stars'
      | 'next side';
  }
>;

/** What is done with the stitches that are on the needle, or with those that rest. */
export function doOnNeedle(
  build: Build,
  said: Said,
  statement: OnNeedle,
  ahead: readonly Said[],
): Fault | undefined {
  const wasDefining = build.defining;
  // 'rep rows 3-4 until 15 sts rem' is no repeat of a stitch pattern
  const counts = statement.is === 'repeat rows' && statement.until?.is === 'count';
  if (wasDefining && statement.is === 'repeat rows')
    return counts ? fault('nothing on the needle') : undefined;
  build.defining = undefined;
  const piece = statement.is === 'as for' ? (leadPiece(build) ?? pieceInHand(build)) : pieceInHand(build);
  switch (statement.is) {
    case 'rejoin':
      return doRejoin(build, piece, statement);
    case 'other side':
      return doOtherSide(build, piece) ?? doneOmitting(build);
    case 'as for':
      if (build.part?.gap) resolveGap(build, piece, build.part);
      return doAsFor(build, piece, statement, ahead) ?? doneOmitting(build);
    default:
      break;
  }
  const { part } = build;
  if (part === undefined || isDone(part)) {
    if (statement.is === 'repeat rows') return listDiffers(build, statement.last);
    // 'work other side to correspond, ending with a p row'
    if (statement.is === 'ending' && part && build.recent.at(-1)?.statement.is === 'other side')
      return endDiffers(piece, part, statement);
    if (statement.is === 'ending' || (statement.is === 'even' && statement.until === undefined))
      return undefined;
    if (statement.is === 'hold' && (part?.end !== undefined || piece.resting.length > 0))
      return holdOfResting(build, piece, statement);
    if (piece.resting.length > 0 && statement.is !== 'hold') {
      doRejoin(build, piece, { is: 'rejoin' });
      return doOnNeedle(build, said, statement, ahead);
    }
    if (statement.is === 'even' && statement.until?.is === 'rows' && listOne(build, statement.until.n))
      return undefined;
    return fault('nothing on the needle');
  }
  if (statement.is === 'hold') {
    countFromSets(build, part, statement.stitches, ahead);
    return doHold(build, piece, part, statement, ahead);
  }
  if (statement.is === 'work on') return doWorkOn(build, piece, part, statement);
  const now = resolveGap(build, piece, part);
  const pending = flushCycle(build, piece, now);
  const unsaid = beginsUnsaid(build, now, statement);
  return (
    pending ??
    doWork(build, piece, now, said, statement, ahead) ??
    (unsaid ? fault('fabric not known', { name: 'pattern' }) : undefined)
  );
}

/** A piece is begun without a word of its fabric, and none before it was in stocking st: in what, nobody says. */
function beginsUnsaid({ begun, piece }: Build, part: PartBuild, statement: Statement): boolean {
  if (part.rows.length > 0 || part.parent !== undefined || part.fabric !== unsaidFabric) return false;
  const bare = statement.is === 'even' && statement.fabric === undefined && statement.until !== undefined;
  if (!bare && statement.is !== 'shape' && statement.is !== 'groups') return false;
  const others = begun
    .filter((one) => one !== piece)
    .flatMap(({ parts }) => parts.flatMap(({ rows }) => rows));
  return (
    others.length > 0 &&
    others.every(
      ({ fabric, items }) => fabric.label !== 'stocking' || (items !== undefined && fabric === unsaidFabric),
    )
  );
}

/** 'Work as for back' below a heading begins the piece that the heading names. */
const leadPiece = (build: Build): PieceBuild | undefined => (build.pending ? startPending(build) : undefined);

type Work = Extract<
  Statement,
  {
    is:
      | 'even'
      | 'borders'
      | 'ending'
      | 'rows'
      | 'shape'
      | 'evenly'
      | 'groups'
      | 'bind off'
      | 'repeat rows'
      | 'repeat named';
  }
>;

function doWork(
  build: Build,
  piece: PieceBuild,
  part: PartBuild,
  said: Said,
  statement: Exclude<OnNeedle, { is: 'rejoin' | 'other side' | 'as for' | 'hold' | 'work on' }>,
  ahead: readonly Said[],
): Fault | undefined {
  const work: Work = statement;
  if (work.is === 'shape' || work.is === 'groups') {
    if (part.cycle?.repeated) useCycle(part);
    leaveUnsaid(part);
  }
  switch (work.is) {
    case 'even':
      return doEven(build, piece, part, work);
    case 'borders':
      return doBorders(build, piece, part, work);
    case 'ending':
      return doEnding(build, piece, part, work);
    case 'rows':
      return doRows(build, part, work, ahead);
    case 'shape':
      return doShape(build, piece, part, said, work);
    case 'evenly':
      return doEvenly(
        build,
        piece,
        part,
        work,
        build.recent.some((one) => makesRows(one.statement)),
      );
    case 'groups':
      return doGroups(build, piece, part, work);
    case 'bind off':
      return doBindOff(build, part, work);
    case 'repeat rows':
      return doRepeatRows(build, piece, part, work);
    case 'repeat named':
      return doRepeatNamed(build, piece, part, work, said.stated);
  }
}
