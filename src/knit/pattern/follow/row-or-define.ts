import { type Fault, fault } from '../../fault.ts';
import { END, type Item, takenBy } from '../../row/read/notation.ts';
import type { Said, Statement } from '../say/statement.ts';
import type { Build, PartBuild, PieceBuild } from './build/build.ts';
import { resolveGap } from './build/gap.ts';
import { isDone } from './build/part.ts';
import { pieceInHand } from './build/piece-in-hand.ts';
import { defineRow, definingHere, rowsWithoutLabel } from './define-row.ts';
import { closePiece } from './other-side.ts';
import { doRejoin } from './rejoin.ts';
import { doRow } from './row.ts';

export function doRowOrDefine(
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
    if (build.defining === undefined && build.piece && build.piece.parts.length > 0)
      return fault('nothing on the needle');
    // 'next row' is no row of a stitch pattern, nor one without a label that binds off or stands below a piece's name
    const label = statement.label?.rows.length ?? rowsWithoutLabel(build, statement);
    if (label === 0 && build.defining === undefined) return fault('nothing on the needle');
    defineRow(build, build.defining ?? definingHere(build), statement);
    return undefined;
  }
  const piece = pieceInHand(build);
  if (part) joinBothSides(build, piece, part, statement.items);
  const items = closingGap(statement, (part as PartBuild).gap);
  const now = readyFor(build, piece, part as PartBuild, castsOn(statement));
  return doRow(build, piece, now, { ...statement, items }, ahead);
}

/** Both sides were worked at once, and the row goes over them both: the other one is what the first was. */
function joinBothSides(build: Build, piece: PieceBuild, part: PartBuild, items: readonly Item[]): void {
  const taken = takenBy(items) ?? 0;
  if (!piece.bothSides || !items.some(isCastOn) || taken === 0 || taken !== 2 * part.live) return;
  closePiece(build, piece);
  part.end = undefined;
  build.part = part;
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
