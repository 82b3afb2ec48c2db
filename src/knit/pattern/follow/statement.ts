import { type Fault, fault } from '../../fault.ts';
import { END, type Item } from '../../row/read/notation.ts';
import type { Side } from '../../row/step.ts';
import type { Said, Statement } from '../say/statement.ts';
import { doAsFor } from './as-for.ts';
import { doBindOff } from './bind-off.ts';
import { doBorders } from './borders.ts';
import { type Build, nextSide, type PartBuild, type PieceBuild } from './build/build.ts';
import { resolveGap } from './build/gap.ts';
import { isDone, setMark } from './build/part.ts';
import { pieceInHand, startPending } from './build/piece-in-hand.ts';
import { wantSide } from './build/want-side.ts';
import { doCastOn } from './cast-on.ts';
import { defineRow, definingHere, rowsWithoutLabel } from './define-row.ts';
import { doEnding } from './ending.ts';
import { doEven } from './even.ts';
import { doEvenly } from './evenly.ts';
import { doGauge, joinGauge } from './gauge.ts';
import { doGroups } from './groups.ts';
import { doHeading } from './heading.ts';
import { countFromSets, doHold, holdOfResting } from './hold.ts';
import { doMultiple } from './multiple.ts';
import { nameRows } from './named-rows.ts';
import { doNeedle } from './needle.ts';
import { doOtherSide } from './other-side.ts';
import { doPickUp } from './pick-up.ts';
import { doRejoin } from './rejoin.ts';
import { doRepeatNamed } from './repeat-named.ts';
import { doRepeatRows } from './repeat-rows.ts';
import { doRow, flushCycle } from './row.ts';
import { doRows } from './rows.ts';
import { doShape } from './shape.ts';
import { doWorkOn } from './work-on.ts';

/** Does what a statement says; the statements after it help to tell a short row from a divided neck. */
export function doStatement(build: Build, said: Said, ahead: readonly Said[]): Fault | undefined {
  const { statement } = said;
  build.line = said.line;
  switch (statement.is) {
    case 'heading':
      doHeading(build, statement);
      return undefined;
    case 'note':
      if (statement.about === 'another' && build.piece && isDone(build.part))
        build.piece.makes = Math.max(2, build.piece.makes);
      if (statement.about === 'marker' && build.piece && build.part)
        setMark(build.piece, 'marker', build.part);
      return undefined;
    case 'stars':
      if (build.piece && build.part) markStars(build.piece, build.part);
      return undefined;
    case 'next side':
      return doNextSide(build, statement.side);
    case 'named rows':
      nameRows(build, statement.name);
      return undefined;
    case 'yarn':
      takeYarn(build, statement.name);
      return undefined;
    case 'turn':
    case 'star':
    case 'at the same time':
      return undefined;
    case 'repeat from stars':
      return fault('no rows to repeat');
    case 'needle':
      return doNeedle(build, statement.mm);
    case 'gauge':
      doGauge(build, joinGauge(build, statement));
      return undefined;
    case 'multiple':
      doMultiple(build, statement);
      return undefined;
    case 'cast on':
      return doCastOn(build, statement.stitches, said.anew === true);
    case 'pick up':
      return doPickUp(build, statement);
    case 'stated':
      return undefined;
    case 'row':
      return doRowOrDefine(build, statement, ahead);
    default:
      return doOnNeedle(build, said, statement, ahead);
  }
}

/** The part in work goes on in that yarn; before a cast-on it is that of the whole piece and says nothing. */
function takeYarn({ part }: Build, name: string): void {
  if (part === undefined || isDone(part) || part.yarn === name) return;
  part.yarn = name;
  part.closed = true;
}

/** Where the second of two stars stands is what other pieces are worked to. */
const markStars = (piece: PieceBuild, part: PartBuild): void => setMark(piece, 'stars', part);

function doNextSide(build: Build, side: Side): Fault | undefined {
  const { part } = build;
  if (part === undefined || isDone(part) || wantSide(build, part, side)) return undefined;
  return fault('side differs', { saidSide: side, foundSide: nextSide(part) });
}

function doRowOrDefine(
  build: Build,
  statement: Extract<Statement, { is: 'row' }>,
  ahead: readonly Said[],
): Fault | undefined {
  const { part } = build;
  const defines = build.defining !== undefined || isDone(part);
  if (statement.words !== undefined && (statement.told === 'within' || defines))
    build.yarnWords.set(statement.items, statement.words);
  if (defines) {
    if (build.defining === undefined && build.piece && build.piece.resting.length > 0) {
      doRejoin(build, build.piece, { is: 'rejoin' });
      return doRowOrDefine(build, statement, ahead);
    }
    if (build.defining === undefined && build.piece && build.piece.parts.length > 0) return nothingOnNeedle();
    // 'next row' is no row of a stitch pattern, nor one without a label that binds off or stands below a piece's name
    const label = statement.label?.rows.length ?? rowsWithoutLabel(build, statement);
    if (label === 0 && build.defining === undefined) return nothingOnNeedle();
    defineRow(build, build.defining ?? definingHere(build), statement);
    return undefined;
  }
  const piece = pieceInHand(build);
  const items = closingGap(statement, (part as PartBuild).gap);
  const now = readyFor(build, piece, part as PartBuild, castsOn(statement));
  return doRow(build, piece, now, { ...statement, items }, ahead);
}

/** 'Next row: cast on 2 sts over bound off sts' and no more: what lies on either side of the gap is worked as well. */
function closingGap({ items }: Extract<Statement, { is: 'row' }>, gap: PartBuild['gap']): readonly Item[] {
  const [only] = items;
  if (items.length !== 1 || only?.is !== 'stitches' || only.work !== 'co' || gap?.length !== 2) return items;
  return [
    { is: 'stitches', work: 'patt', times: gap[1] as number },
    only,
    { is: 'stitches to', work: 'patt', goal: END },
  ];
}

/** A row that casts on over the gap closes a buttonhole; any other row parts the stitches there. */
const castsOn = (statement: Extract<Statement, { is: 'row' }>): boolean => statement.items.some(isCastOn);

const isCastOn = (item: Item): boolean =>
  'items' in item ? item.items.some(isCastOn) : item.is === 'stitches' && item.work === 'co';

function readyFor(build: Build, piece: PieceBuild, part: PartBuild, closes: boolean): PartBuild {
  if (part.gap === undefined) return part;
  if (closes) {
    part.gap = undefined;
    return part;
  }
  return resolveGap(build, piece, part);
}

const nothingOnNeedle = (): Fault => fault('nothing on the needle');

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
      | 'repeat from stars'
      | 'next side';
  }
>;

function doOnNeedle(
  build: Build,
  said: Said,
  statement: OnNeedle,
  ahead: readonly Said[],
): Fault | undefined {
  const wasDefining = build.defining;
  if (wasDefining && statement.is === 'repeat rows') return undefined;
  build.defining = undefined;
  const piece = statement.is === 'as for' ? (leadPiece(build) ?? pieceInHand(build)) : pieceInHand(build);
  switch (statement.is) {
    case 'rejoin':
      return doRejoin(build, piece, statement);
    case 'other side':
      return doOtherSide(build, piece);
    case 'as for':
      if (build.part?.gap) resolveGap(build, piece, build.part);
      return doAsFor(build, piece, statement, ahead);
    default:
      break;
  }
  const { part } = build;
  if (part === undefined || isDone(part)) {
    if (
      statement.is === 'repeat rows' ||
      statement.is === 'ending' ||
      (statement.is === 'even' && statement.until === undefined)
    )
      return undefined;
    if (statement.is === 'hold' && (part?.end !== undefined || piece.resting.length > 0))
      return holdOfResting(build, piece, statement);
    if (piece.resting.length > 0 && statement.is !== 'hold') {
      doRejoin(build, piece, { is: 'rejoin' });
      return doOnNeedle(build, said, statement, ahead);
    }
    return nothingOnNeedle();
  }
  if (statement.is === 'hold') {
    countFromSets(build, part, statement.stitches, ahead);
    return doHold(build, piece, part, statement, ahead);
  }
  if (statement.is === 'work on') return doWorkOn(build, piece, part, statement);
  const now = resolveGap(build, piece, part);
  const pending = flushCycle(build, piece, now);
  return pending ?? doWork(build, piece, now, said, statement);
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
): Fault | undefined {
  const work: Work = statement;
  switch (work.is) {
    case 'even':
      return doEven(build, piece, part, work);
    case 'borders':
      return doBorders(build, piece, part, work);
    case 'ending':
      return doEnding(build, piece, part, work);
    case 'rows':
      return doRows(build, part, work);
    case 'shape':
      return doShape(build, piece, part, said, work);
    case 'evenly':
      return doEvenly(
        build,
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

const ROW_MAKERS = new Set<Statement['is']>([
  'row',
  'rows',
  'even',
  'shape',
  'evenly',
  'groups',
  'bind off',
  'repeat rows',
  'repeat named',
  'as for',
  'other side',
]);

export const makesRows = (statement: Statement): boolean => ROW_MAKERS.has(statement.is);
