import { readColour } from '../../row/read/colour.ts';
import {
  ahead,
  attempt,
  type Cursor,
  isWord,
  peek,
  peekNumber,
  peekWord,
  sees,
  seesPhrase,
  takeAnyPhrase,
  takeNumber,
  takePhrase,
  takes,
  takesOne,
  takeWhole,
  took,
} from '../../row/read/cursor.ts';
import { takeKeptPattern } from './announced-pattern.ts';
import type { Until } from './how-far.ts';
import { ending } from './phrase/ending.ts';
import { patternNamed, readBracketed, readFabric, readSpelledRib } from './phrase/fabric.ts';
import { readFabricAnew, readFabricHere } from './phrase/fabric-here.ts';
import { readOver, readThese } from './phrase/over.ts';
import { readRowsThen } from './phrase/rows-then.ts';
import { readSeenEnd, readUntil } from './phrase/until.ts';
import type { FabricSaid, Statement } from './statement.ts';

const EVEN = [
  'even',
  'straight',
  'evenly',
  'plain',
  '(? without any? further|more? shaping|inc|dec|increasing|decreasing )?',
  'on|over|across all? the|these|rem? rem? sts only?',
  'on these 2 sets',
  'on|over the? left|right front|back|side|shoulder sts only?',
  'throughout',
];

const KEEPS = [
  'keeping|keep the? rib|patt|pats|border|borders|rhythm going|correct|continuous',
  'keeping|keep continuity|correctness',
];

/** 'work even until armhole measures 20 cm', 'beg with a k row, st st 6 rows', 'k every row for 5 cm', 'K1, P1 in ribbing for 2 in'. */
export const readEven = (c: Cursor): Statement | undefined =>
  attempt(c, () => {
    // 'keeping the rib going, cast off …' says how, and works nothing
    if (takeAnyPhrase({ ...c }, ...KEEPS) || takeKeptPattern({ ...c })) return undefined;
    // 'on the remaining sts work in rib'
    takeAnyPhrase(c, 'on|over the? rem sts ,?');
    const first = readFirstStitches(c);
    const looks = readBegin(c);
    if (looks) takes(c, 'and', 'then');
    const begins = sees(c, 'begin', 'beg', 'start', 'commence');
    const every = readEveryRow(c);
    const verb =
      every === undefined &&
      (takesOne(c, 'goes on') ||
        attempt(
          c,
          () => takes(c, 'k') && seesPhrase(c, 'in|even') && ahead(c, () => readFabric(c) !== undefined),
        ) ||
        takePhrase(c, 'beg|start working') ||
        attempt(c, () => takes(c, 'beg', 'start') && ahead(c, () => startsFabric(c))) ||
        takeEndWith(c));
    if (verb) {
      if (!seesPhrase(c, 'to the? underarm|armhole|same|desired|required|wanted')) takes(c, 'to', 'on');
      if (peekNumber(c, 1) === undefined) takes(c, 'work', 'working', 'k', 'in');
      else takes(c, 'work', 'in');
      takeAnyPhrase(c, 'a|the? border|band|edge|neckband|collar of|in', 'border|band of');
    }
    // 'work across in garter st'
    if (verb) attempt(c, () => takes(c, 'across') && sees(c, 'in'));
    if (verb) takeAnyPhrase(c, 'this|the panel|piece|section|part|strip in', 'back and forth');
    // 'work these 8 sts in st st until …'
    const these = verb ? readThese(c) : undefined;
    // 'rib 6 rows'
    const ribbed = verb && took(c, 'rib') && !seesPhrase(c, 'in|as');
    const even = skipEven(c);
    const looks2 = looks ?? readBegin(c);
    const rows = readRows(c);
    const fabric =
      every ??
      readFabricAnew(c, begins) ??
      (rows && took(c, 'of', 'in') ? readSpelledRib(c) : ribbed && rows ? readBracketed(c) : undefined);
    if (fabric) skipAsFor(c);
    // 'begin pattern above'
    if (fabric && took(c, 'patt')) takes(c, 'above');
    if (fabric?.is === 'rib') skipLastStitch(c);
    const first2 = first ?? readFirstStitches(c);
    const even2 = skipEven(c) || even;
    // 'in st st only'
    if (fabric !== undefined) takes(c, 'only');
    const over = readOver(c) ?? these;
    skipNotes(c);
    const fromRow = readFromRow(c);
    const looks3 = looks2 ?? readBegin(c);
    // 'work in pattern to end of row' is a row
    if (seesPhrase(c, 'to the? end|last') && !even2) return undefined;
    takes(c, ',');
    const long = rows ? undefined : (readUntil(c) ?? (verb || even2 || every ? readSeenEnd(c) : undefined));
    const until = rows ? { ...rows, ...ending(c) } : (readRowsThen(c, long) ?? long ?? readOnlyEnding(c));
    const more = skipEven(c) || even2;
    const looks4 = looks3 ?? readBegin(c);
    const late =
      fabric ?? (until ? readFabricHere(c) : undefined) ?? (ribbed && rows ? patternNamed('rib') : undefined);
    if (first2 !== undefined && late?.is !== 'rib') return undefined;
    // 'work 4 cm | in rib, ending with a 1st rib row'
    const whole =
      until && late && until.is !== 'count' && until.is !== 'rows in all'
        ? { ...until, ...ending(c) }
        : until;
    if (until === undefined && late === undefined && !(verb && more)) return undefined;
    // 'patt 17, bind off 9 sts' is a row
    if (until === undefined && late?.is === 'established' && peekNumber(c) !== undefined) return undefined;
    if (until === undefined && late?.is === 'pattern' && !verb) return undefined;
    if (!verb && late === undefined && until !== undefined && every === undefined && !more && !looks4)
      return undefined;
    return {
      is: 'even',
      ...(late === undefined ? {} : { fabric: late }),
      ...(whole === undefined ? {} : { until: whole }),
      ...(looks4 === undefined ? {} : { firstLooks: looks4 }),
      ...(over === undefined ? {} : { over }),
      ...(first2 === undefined ? {} : { firstStitches: first2 }),
      ...(fromRow === undefined ? {} : { fromRow }),
    };
  });

/** 'Begin St st', 'start pattern': not 'beg with', not 'start at'. */
const startsFabric = (c: Cursor): boolean => {
  const fabric = readFabric(c);
  return (
    fabric?.is === 'named' || fabric?.is === 'rib' || (fabric?.is === 'pattern' && took(c, 'patt', 'above'))
  );
};

/** 'End with 6 rows in garter st': rows of their own. */
const takeEndWith = (c: Cursor): boolean =>
  attempt(c, () => {
    takes(c, ',');
    return (
      takeAnyPhrase(c, 'end|ending|finish|finishing with') &&
      peekNumber(c) !== undefined &&
      peekWord(c, 1) === 'rows'
    );
  });

/** 'in rib as given for back for 16 rows'. */
function skipAsFor(c: Cursor): void {
  takeAnyPhrase(
    c,
    'as given|worked|set? for|on the? back|front|sleeve|sleeves',
    'as for|on the? left|right front',
    'as before',
    'as given? above',
  );
}

/** 'Starting with p2, work in 2 x 2 rib'. */
const readFirstStitches = (c: Cursor): { work: 'k' | 'p'; n: number } | undefined =>
  attempt(c, () => {
    takes(c, ',', '(');
    if (!takes(c, 'beg', 'starting', 'commencing', 'start', 'begin') || !takes(c, 'with')) return undefined;
    const work = takes(c, 'k') ? 'k' : takes(c, 'p') ? 'p' : undefined;
    const n = takeNumber(c);
    if (work === undefined || n === undefined || n < 1 || isWord(peek(c), 'row', 'rows', 'st', 'sts'))
      return undefined;
    takes(c, ',', ')');
    return { work, n };
  });

/** 'in pattern stitch, starting with row 2': which of its rows is the next. */
const readFromRow = (c: Cursor): number | undefined =>
  attempt(c, () => {
    takes(c, ',', '(');
    if (!takeAnyPhrase(c, 'beg|starting|commencing|start|begin with|on|at row')) return undefined;
    const n = takeWhole(c);
    takes(c, ')');
    return n !== undefined && (c.at >= c.end || sees(c, ',', '.', ';', 'until', 'for')) ? n : undefined;
  });

/** 'in k2, p2 rib, ending with k2': as the count leaves it. */
const skipLastStitch = (c: Cursor): boolean =>
  attempt(c, () => {
    takes(c, ',');
    takes(c, '(');
    if (!takes(c, 'ending', 'end') || !takes(c, 'with') || !takes(c, 'k', 'p')) return false;
    if (takeNumber(c) === undefined) return false;
    takes(c, ')');
    return true;
  });

/** 'knit every row', 'k each row', 'purl every row', 'knit plain'. */
const readEveryRow = (c: Cursor): FabricSaid | undefined =>
  attempt(c, () => {
    if (!takeAnyPhrase(c, 'keep on?', 'cont to?')) takes(c, 'work', 'and');
    if (takes(c, 'k', 'p', 'knitting')) {
      if (takeAnyPhrase(c, 'every|each row|rows', 'across every row', 'all rows', 'plain'))
        return { is: 'named', name: 'garter' };
      if (
        takes(c, 'even', 'straight') ||
        seesPhrase(c, 'until') ||
        (seesPhrase(c, 'for') && peekNumber(c, 1) !== undefined)
      ) {
        return { is: 'knit on' };
      }
      const n = peekNumber(c);
      if (n !== undefined && isWord(peek(c, 1), 'in', 'inch', 'cm', 'mm')) return { is: 'knit on' };
    }
  });

/** 'beg with a k row', 'starting with a purl row'. */
const readBegin = (c: Cursor): 'k' | 'p' | undefined =>
  attempt(c, () => {
    takes(c, ',', '(');
    if (
      takes(c, 'beg', 'starting', 'commencing', 'start', 'begin') &&
      (takes(c, 'with', 'on', 'by') || seesPhrase(c, 'k|p|rs|ws row'))
    ) {
      takes(c, 'a', 'an');
      // 'a RS knit row'
      if (seesPhrase(c, 'rs k|knit row') || seesPhrase(c, 'ws p row')) takes(c, 'rs', 'ws');
      const looks = takes(c, 'k', 'rs') ? 'k' : takes(c, 'p', 'ws') ? 'p' : undefined;
      if (looks && takes(c, 'row', 'rows')) {
        takes(c, ',', ')', '.');
        return looks;
      }
    }
  });

function skipEven(c: Cursor): boolean {
  let any = false;
  while (!seesPhrase(c, 'plain knitting') && takeAnyPhrase(c, ...EVEN)) any = true;
  return any;
}

/** '(k every row)', '(k 1 row, p 1 row)', '(k on RS, p on WS)' beside a fabric's name. */
export const skipNotes = (c: Cursor): boolean =>
  attempt(c, () => {
    if (!takes(c, '(')) return false;
    let knits = false;
    do knits ||= sees(c, 'k', 'p');
    while (takePhrase(c, '1') || takesOne(c, 'how a fabric is worked'));
    return knits && takes(c, ')');
  });

/** '6 rows', 'another 4 rows' directly after the verb. */
const readRows = (c: Cursor): Extract<Until, { is: 'rows' }> | undefined =>
  attempt(c, () => {
    takes(c, 'for', 'another', 'a', 'further', 'the', 'next', 'first');
    const n = takeNumber(c);
    takes(c, 'more', 'further', 'complete');
    if (n !== undefined && takes(c, 'row', 'rows')) {
      // 'work 4 rows in A'
      if (ahead(c, () => readColour(c)) === undefined) takes(c, 'of', 'in', 'more');
      return { is: 'rows', n };
    }
    if (n !== undefined && takePhrase(c, 'ridge')) {
      takes(c, 'of', 'in');
      return { is: 'rows', n: 2 * n };
    }
  });

const readOnlyEnding = (c: Cursor): Until | undefined =>
  attempt(c, () => {
    const end = ending(c);
    if (end.end !== undefined || end.endEdge !== undefined) return { is: 'open', only: true, ...end };
  });
