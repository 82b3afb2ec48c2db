import {
  ahead,
  attempt,
  type Cursor,
  isOneOf,
  peekWord,
  sees,
  seesPhrase,
  takeAnyPhrase,
  takeNumber,
  takePhrase,
  takes,
  took,
} from '../../row/read/cursor.ts';
import { STS } from '../../row/read/goal.ts';
import { type BorderRows, readBorderRows } from './border-rows.ts';
import { skipNotes } from './even.ts';
import type { EdgeName } from './how-far.ts';
import { readEdgeOf } from './phrase/edge.ts';
import { readFabric } from './phrase/fabric.ts';
import { takeFirst } from './phrase/ordinal.ts';
import type { BorderSaid, FabricSaid, Statement } from './statement.ts';

/**
 * 'keeping 6 sts at each end in garter st', 'with first and last 5 sts in moss st', 'keep garter st borders': edges that
 * are worked in a fabric of their own while the rest goes on.
 */
export const readBorders = (c: Cursor): Statement | undefined =>
  attempt(c, () => {
    const start = c.at;
    takes(c, 'and', 'but', '(');
    takes(c, 'still', 'then');
    const lead = readLead(c);
    if (lead === undefined) return undefined;
    const borders =
      lead === 'knit' || lead === 'always knit'
        ? readKnitted(c, lead !== 'knit')
        : readBorder(c, lead === 'work');
    if (borders === undefined) return undefined;
    while (borders.length < 4) {
      const more = attempt(c, () => {
        takes(c, ',');
        takes(c, 'and');
        return sees(c, 'work', 'k') ? undefined : readBorder(c, false);
      });
      if (more === undefined) break;
      borders.push(...more);
    }
    skipNotes(c);
    skipTail(c);
    const main = readRest(c);
    // '… in st st (k 1 row, p 1 row)' is said twice
    if (main) skipNotes(c);
    skipTail(c);
    takes(c, ')');
    const throughout = c.tokens.slice(start, c.at).some(({ word }) => word === 'throughout');
    return {
      is: 'borders',
      borders,
      ...(main === undefined ? {} : { main }),
      ...(throughout && borders.length > 0 ? { throughout } : {}),
    };
  });

/** How it is asked for; 'work first 3 sts in moss st' may be the beginning of a row. */
function readLead(c: Cursor): 'keep' | 'work' | 'knit' | 'always knit' | undefined {
  if (takeAnyPhrase(c, 'except|excepting for?', 'other than')) return 'keep';
  const always = takes(c, 'always');
  if (takes(c, 'keep', 'keeping', 'maintain', 'maintaining', 'with', 'having')) return 'keep';
  if (takes(c, 'work')) return always ? 'keep' : 'work';
  if (takes(c, 'k', 'knitting')) return always ? 'always knit' : 'knit';
  return takes(c, 'working') || always ? 'keep' : undefined;
}

/** 'k the first and last 3 sts on every row': garter stitch. */
const readKnitted = (c: Cursor, always: boolean): BorderSaid[] | undefined =>
  attempt(c, () => {
    const edges = readCounted(c);
    if (edges === undefined) return undefined;
    const garter: FabricSaid = { is: 'named', name: 'garter' };
    if (!takeEveryRow(c) && !always && !ahead(c, () => readFabric(c)?.is === 'named')) return undefined;
    return edges.map((one) => ({ ...one, fabric: readFabric(c) ?? garter }));
  });

const takeEveryRow = (c: Cursor): boolean =>
  takeAnyPhrase(c, 'of|on|in every|each|all p|ws? row|rows', 'every|each row', 'throughout');

interface Counted {
  readonly edge: EdgeName;
  readonly stitches: number;
}

const readBorder = (c: Cursor, mayBeRow: boolean): BorderSaid[] | undefined =>
  attempt(c, () => {
    const said = readNamed(c) ?? readCountedIn(c) ?? readOfFabric(c) ?? readOldOnes(c);
    if (said === undefined || !mayBeRow) return said;
    // 'work first 3 sts in moss st, k to last 3 sts' spells a row
    const both = said.length === 2 || said[0]?.edge === 'both' || said[0]?.edge === 'neck';
    return both && (c.at >= c.end || isOneOf(peekWord(c), ', ; . until throughout on every and'))
      ? said
      : undefined;
  });

/** '6 sts at each end in garter st', 'first and last 5 sts in moss st', '5 sts in garter st at front edge'. */
const readCountedIn = (c: Cursor): BorderSaid[] | undefined =>
  attempt(c, () => {
    const edges = readCounted(c);
    if (edges !== undefined) {
      takeEveryRow(c);
      const rows = readRowsOf(c, edges);
      if (rows) return edges.map((one) => ({ ...one, fabric: rows }));
      takeAnyPhrase(c, 'which|that? are|is? worked|kept|k?');
      const fabric = readBorderFabric(c);
      return fabric && edges.map((one) => ({ ...one, fabric }));
    }
    takes(c, 'the', 'a');
    const stitches = takeNumber(c);
    const named = sees(c, 'border', 'band');
    if (stitches === undefined || !takeStitches(c)) return undefined;
    const ofFront = takeAnyPhrase(c, 'of|for the? front|button|buttonhole? border|band');
    const rows = ofFront ? readBorderRows(c, stitches) : undefined;
    if (rows) return [{ edge: 'unsaid', stitches, fabric: rows }];
    // '7 sts in pattern for front border' are those that are kept already
    if (!ofFront && takePhrase(c, 'in? patt for|at|of the? front|button|buttonhole? border|band')) return [];
    const border = takes(c, 'border', 'band') || named || ofFront;
    const fabric = readBorderFabric(c);
    const forIt = seesPhrase(c, 'for the? front|button|buttonhole? border|band');
    const edge = fabric && (readEdgeOf(c) ?? (border || forIt ? 'unsaid' : undefined));
    return fabric && edge ? [{ edge, stitches, fabric }] : undefined;
  });

const readRowsOf = (c: Cursor, edges: readonly Counted[]): BorderRows | undefined => {
  const [first] = edges;
  return first !== undefined && edges.every(({ stitches }) => stitches === first.stitches)
    ? readBorderRows(c, first.stitches)
    : undefined;
};

/** Which stitches: '6 sts at each end', 'first and last 5 sts', 'first 5 and last 7 sts'. */
const readCounted = (c: Cursor): Counted[] | undefined =>
  attempt(c, () => {
    takes(c, 'the');
    const first = readOuter(c, 'beginning');
    const and = first !== undefined && attempt(c, () => takeAnd(c) && (takes(c, 'the') || true));
    const last = first === undefined || and ? readOuter(c, 'end') : undefined;
    if (first && last) {
      const stitches = last.stitches;
      const both = first.stitches === 0 || first.stitches === stitches;
      return both ? whole([{ edge: 'both', stitches }]) : whole([first, last]);
    }
    const one = first ?? last;
    if (one !== undefined) return and ? undefined : whole([one]);
    // 'the front 6 sts', '7 center front sts'
    const front = () => takeAnyPhrase(c, 'center? front', 'at|on the? center front');
    const before = front();
    const stitches = takeNumber(c);
    const neck = (stitches !== undefined && front()) || before;
    if (stitches === undefined || !takeStitches(c)) return undefined;
    const edge = neck ? 'neck' : readEdgeOf(c);
    takeAnyPhrase(c, 'of row|rows', 'of the row');
    return edge === undefined ? undefined : whole([{ edge, stitches }]);
  });

const takeAnd = (c: Cursor): boolean => {
  takes(c, ',');
  return takes(c, 'and');
};

/** 'first 5 sts', 'last 5'; 'first' by itself leaves the number to what follows. */
const readOuter = (c: Cursor, edge: 'beginning' | 'end'): Counted | undefined =>
  attempt(c, () => {
    if (!(edge === 'beginning' ? takeFirst(c) : takes(c, 'last'))) return undefined;
    const n = takeNumber(c);
    const one = takeStitches(c) && took(c, 'st');
    if (n === undefined && !one)
      return edge === 'beginning' && sees(c, 'and') ? { edge, stitches: 0 } : undefined;
    return { edge, stitches: n ?? 1 };
  });

const whole = (said: Counted[]): Counted[] | undefined =>
  said.every(({ stitches }) => Number.isSafeInteger(stitches) && stitches > 0) ? said : undefined;

const takeStitches = (c: Cursor): boolean => {
  takes(c, '-', 'edge', 'border', 'outer', 'band');
  return takePhrase(c, STS);
};

/** 'a 5-st garter st border at each end', 'garter st borders of 5 sts at each edge'. */
const readNamed = (c: Cursor): BorderSaid[] | undefined =>
  attempt(c, () => {
    takes(c, 'a', 'the');
    const early = attempt(c, () => {
      const n = takeNumber(c);
      takes(c, '-');
      return n !== undefined && takePhrase(c, STS) ? n : undefined;
    });
    const fabric = readBorderFabric(c);
    if (fabric === undefined) return undefined;
    const each = takes(c, 'borders', 'bands');
    if (!each && !takes(c, 'border', 'band', 'edge') && !isWordBefore(c, 'border')) return undefined;
    const there = readEdgeOf(c);
    const stitches =
      early ??
      attempt(c, () => {
        const n = takes(c, 'of', 'over', 'on') ? takeNumber(c) : undefined;
        return n !== undefined && takePhrase(c, STS) ? n : undefined;
      });
    if (stitches === undefined) return seesEnd(c) && there === undefined ? [] : undefined;
    const edge = there ?? readEdgeOf(c) ?? (each ? 'both' : undefined);
    return edge === undefined ? undefined : [{ edge, stitches, fabric }];
  });

/** '5 garter sts at each end'. */
const readOfFabric = (c: Cursor): BorderSaid[] | undefined =>
  attempt(c, () => {
    const stitches = takeNumber(c);
    const fabric = stitches === undefined ? undefined : readBorderFabric(c);
    const edge = fabric && readEdgeOf(c);
    return fabric && edge && stitches ? [{ edge, stitches, fabric }] : undefined;
  });

/** 'keeping the borders in garter st', 'border sts in moss st as before'. */
const readOldOnes = (c: Cursor): BorderSaid[] | undefined =>
  attempt(c, () => {
    takes(c, 'the', 'all');
    takeAnyPhrase(c, 'front', 'garter st?', 'moss st?', 'side');
    if (!takeAnyPhrase(c, 'border|edge|band sts', 'border|edge|band', 'borders|bands')) return undefined;
    const fabric = readBorderFabric(c);
    const set = takeAnyPhrase(c, 'as set|est|before', 'correct', 'throughout', 'going');
    return fabric !== undefined || set ? [] : undefined;
  });

const isWordBefore = (c: Cursor, word: string): boolean => c.tokens[c.at - 1]?.word === word;

const seesEnd = (c: Cursor): boolean =>
  c.at >= c.end || isOneOf(peekWord(c), ', ; . until for') || sees(c, 'as', 'throughout', 'correct');

/** A fabric with a name of its own: 'in pattern' would be the rest's. */
const readBorderFabric = (c: Cursor): FabricSaid | undefined =>
  attempt(c, () => {
    if (takePhrase(c, 'in a? k|knitted|garter border|edge')) return { is: 'named', name: 'garter' };
    const fabric = readFabric(c);
    const known = fabric?.is === 'named' || fabric?.is === 'rib';
    return known || (fabric?.is === 'pattern' && fabric.else !== undefined && fabric.else !== 'the pattern')
      ? fabric
      : undefined;
  });

/** 'and the rest in st st', '; remaining sts in stockinette st', 'and work center 40 sts in pattern'. */
const readRest = (c: Cursor): FabricSaid | undefined =>
  attempt(c, () => {
    takes(c, ',', ';');
    takes(c, 'and', 'with');
    takes(c, 'work', 'working', 'k');
    takes(c, 'all', 'the');
    if (!takes(c, 'rem', 'other', 'rest', 'center', 'remainder', 'others', 'middle')) return undefined;
    takeAnyPhrase(c, 'of sts', 'of row', 'of the row');
    takeNumber(c);
    takePhrase(c, STS);
    return readFabric(c);
  });

function skipTail(c: Cursor): void {
  takePhrase(c, '( selvedge|selvage|edge|border st|sts )');
  // '(k 6)' says it twice
  attempt(c, () => {
    if (!takes(c, '(') || !takes(c, 'k') || takeNumber(c) === undefined) return false;
    takeStitches(c);
    return takes(c, ')');
  });
  takeAnyPhrase(c, 'as set|est|before', 'correct');
  takeEveryRow(c);
  takeAnyPhrase(
    c,
    'for the? front|button|buttonhole|neck|armhole? band|border|edge|edging|bands|borders',
    'for border|borders|band|bands',
  );
  takePhrase(c, 'down|along|up the? front|fronts|edge|edges of? the? jacket|coat|cardigan?');
  takeAnyPhrase(c, 'throughout', 'as before', 'as set');
}
