import { type Cursor, sees } from '../../row/read/cursor.ts';
import { readAsFor } from './as-for.ts';
import { readAtTheSameTime } from './at-the-same-time.ts';
import { readBindOff, readRestElided } from './bind-off.ts';
import { readBorders } from './borders.ts';
import { readButtonholes } from './buttonholes.ts';
import { readCastOn } from './cast-on.ts';
import { readCentre } from './centre.ts';
import { readChange } from './change.ts';
import { readElidedGroups } from './elided-groups.ts';
import { readEnding } from './ending.ts';
import { readEven } from './even.ts';
import { readGroups } from './groups.ts';
import { readHold } from './hold.ts';
import { readNamedRows } from './named-rows.ts';
import { readNeedle } from './needle.ts';
import { readNextFacing, readNextSide } from './next-side.ts';
import { readNote, readPassing } from './note.ts';
import { readOtherSide } from './other-side.ts';
import { readUntil } from './phrase/until.ts';
import { readPickUp, seesPickUp } from './pick-up.ts';
import { readRejoin, readTakenUp } from './rejoin.ts';
import { readRepeatNamed } from './repeat-named.ts';
import { readRepeatJustNamed, readRepeatRows, readRowsAgain } from './repeat-rows.ts';
import { readRepeatStars } from './repeat-stars.ts';
import { readRows, readRowsElided } from './rows.ts';
import { readElidedShape, readEvenThere, readShape, readShapeThere } from './shape.ts';
import { readSlips } from './slips.ts';
import { readStars } from './stars.ts';
import { readStated } from './stated.ts';
import type { Said, Statement } from './statement.ts';
import { readStripes } from './stripes.ts';
import { readTurn } from './turn.ts';
import { readShaping, readWhen } from './when.ts';
import { readWholly } from './wholly.ts';
import { readWorkOn } from './work-on.ts';
import { readYarn } from './yarn.ts';

function readElided(c: Cursor, said: readonly Said[]): Statement | undefined {
  const last = said.at(-1)?.statement;
  const even = said.at(-2)?.statement;
  // 'cont in garter st on these 23 sts | until …'
  if (last?.is === 'work on' && (even?.is !== 'even' || even.until === undefined)) {
    const until = readUntil(c);
    return until && { is: 'even', fabric: { is: 'established' }, until };
  }
  // 'keeping 6 sts in garter st and the rest in st st | until …'
  if (last?.is === 'borders' && last.main !== undefined) {
    const until = readUntil(c);
    return until && { is: 'even', fabric: { is: 'established' }, until };
  }
  // 'in st st in stripes of 2 rows A, 2 rows B | until …'
  if (last?.is === 'stripes') {
    const until = readUntil(c);
    return until && { is: 'even', until };
  }
  // 'st st, keeping 3 sts at each end in garter st, | until …'
  // 'work on these 16 sts, keeping 4 sts at front opening in garter st, | for 4 rows'
  if (
    ((even?.is === 'borders' || even?.is === 'buttonholes') &&
      last?.is === 'even' &&
      last.until === undefined) ||
    (last?.is === 'borders' && even?.is === 'work on')
  ) {
    const until = readUntil(c);
    return until && { is: 'even', fabric: { is: 'established' }, until };
  }
  // 'cont in st st, inc 1 st at each end of first row, | until work measures 8 cm'
  if (last?.is === 'shape' && even?.is === 'even' && even.until === undefined && sees(c, 'until')) {
    const until = last.beats.every(({ times }) => times !== undefined) ? readUntil(c) : undefined;
    if (until) return { is: 'even', fabric: { is: 'established' }, until };
  }
  // 'bind off 4 sts at beg of next 2 rows, | then rem 13 sts', '… | then dec 1 st every row 3 times'
  if (last?.is === 'groups')
    return (
      (last.work === 'bo' ? readRestElided(c) : undefined) ??
      readElidedGroups(c, last.work, last.edge) ??
      readShapeThere(c, last.edge)
    );
  if (last?.is === 'bind off' && !last.rest) return readElidedGroups(c, 'bo');
  return last?.is === 'shape' ? (readElidedShape(c, last) ?? readShapeThere(c, last.edge)) : undefined;
}

type Construct = (c: Cursor, said: readonly Said[]) => Statement | undefined;

/**
 * Everything but rows spelled out, in the order in which it is tried: the first that makes something of the text has it.
 * Where two read the same words the first of them has the reason; the others may stand anywhere.
 */
const CONSTRUCTS: readonly Construct[] = [
  // '(24 sts)' would be a group of stitches in a row
  readStated,
  readAtTheSameTime,
  // 'slip the first st of every row' would be a row
  readSlips,
  // 'the whole jacket is in garter st' would be passed over
  (c, said) => (said.every(({ statement }) => statement.is === 'heading') ? readWholly(c) : undefined),
  // 'these 2 rows form rib' would be a note
  readNamedRows,
  // 'when piece measures 10 cm, …' would be a note
  readWhen,
  // 'join shoulder seams' would rejoin the yarn, and 'stitch together' be worked in a fabric
  readNote,
  // 'with 5 sts at each end of needle in moss st' would be another needle, and 'keeping 5 sts …' the fabric of them all
  readBorders,
  // 'with 4 mm needles, pick up …' would be picked up, and 'with larger needles' passed over, the needle unsaid
  readNeedle,
  // 'in stripe pattern' would be one that the text defines, and 'work 4 rows A, 2 rows B throughout' six rows
  readStripes,
  // 'with MC' and 'join B' would be passed over, the yarn forgotten
  readYarn,
  // 'change to st st' would be talk, and with 'needles' behind it a fabric
  readChange,
  // 'cast on 5 sts' would be a group at an edge; behind a row it is no piece of its own ('knit back and cast on 5 sts')
  (c, said) => (said.some(({ statement }) => WORKED.has(statement.is)) ? undefined : readCastOn(c)),
  // '…, shape neck' behind a length: what comes is the neck's
  (c, said) => (said.at(-1)?.statement.is === 'even' && sees(c, 'shape') ? readShaping(c) : undefined),
  readRepeatJustNamed,
  readRepeatStars,
  readRepeatNamed,
  // 'making a buttonhole every 12 rows' would be a row spelled out
  readButtonholes,
  // 'k 1 row' would be a stitch in a row
  readRows,
  readRowsElided,
  readRowsAgain,
  (c, said) => readRepeatRows(c, REPEATS.has(said.at(-1)?.statement.is ?? 'turn')),
  readElided,
  // 'bind off center 12 sts and …' would be bound off where the row begins
  readCentre,
  readGroups,
  readBindOff,
  readShape,
  // 'complete to match first side' would be worked as for a piece called 'first'
  readOtherSide,
  readAsFor,
  // 'pick up the 20 sts left on holder' would be picked up along an edge
  readTakenUp,
  // 'with RS facing, pick up …' would be passed over up to the comma
  (c) => (seesPickUp(c) ? readPickUp(c) : undefined),
  // 'with RS facing, rejoin yarn …' too
  readRejoin,
  readWorkOn,
  readHold,
  readTurn,
  // 'work even at armhole and dec …' would be worked even
  readEvenThere,
  // 'in st st, …' would be passed over as a yarn
  readEven,
  readEnding,
  readStars,
  readNextSide,
  // 'with WS facing, cast off 5 sts, …' would be passed over, the side forgotten
  readNextFacing,
  // what is left to be passed over
  readPassing,
];

/** 'rep from ** to ** 9 times, then rows 2-6 once' */
const REPEATS: ReadonlySet<Statement['is']> = new Set(['repeat rows', 'repeat from stars']);

const WORKED: ReadonlySet<Statement['is']> = new Set(['row', 'rows', 'turn']);

/** One statement that is no row spelled out; nothing is taken where there is none. */
export function readSimple(c: Cursor, said: readonly Said[]): Statement | undefined {
  for (const read of CONSTRUCTS) {
    const statement = read(c, said);
    if (statement) return statement;
  }
  return undefined;
}
