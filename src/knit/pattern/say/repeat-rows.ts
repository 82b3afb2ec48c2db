import { readColourName } from '../../row/read/colour.ts';
import {
  ahead,
  attempt,
  type Cursor,
  peekWord,
  sees,
  seesPhrase,
  takeAnyPhrase,
  takeNumber,
  takePhrase,
  takes,
  takeWhole,
  took,
} from '../../row/read/cursor.ts';
import { readTimes } from '../../row/read/goal.ts';
import { readBorders } from './borders.ts';
import { readFabric } from './phrase/fabric.ts';
import { takeStated } from './phrase/stated-count.ts';
import { readToCount, readUntil } from './phrase/until.ts';
import type { Said, Statement } from './statement.ts';

/** 'These 2 rows form rib, | repeat a further 4 times'. */
export const readRepeatJustNamed = (c: Cursor, said: readonly Said[]): Statement | undefined =>
  attempt(c, () => {
    const named = said.at(-1)?.statement;
    if (named?.is !== 'named rows' || named.rows === undefined || !takes(c, 'rep')) return undefined;
    takes(c, 'them', 'these');
    takes(c, 'a');
    const further = takes(c, 'further');
    const times = readTimes(c);
    if (times === undefined) return undefined;
    const more = further || times.more || !times.total;
    return { is: 'repeat rows', last: named.rows, times: more ? times.n : Math.max(0, times.n - 1) };
  });

/** 'rep rows 1–4 until …', 'rep last 2 rows 5 times more', 'work rows 1 to 8 twice', 'these 2 rows form pattern'. */
export const readRepeatRows = (c: Cursor, goesOn = false): Statement | undefined =>
  attempt(c, () => {
    if (takePhrase(c, 'the? first row is|are repeated throughout?'))
      return { is: 'repeat rows', from: 1, to: 1 };
    const closing = takeAnyPhrase(c, 'end|ending|finish|finishing with a rep of');
    // '[Repeat rows 1 to 4] twice more'
    const open = seesPhrase(c, '[|( rep') && takes(c, '[', '(');
    const rep = takes(c, 'rep', 'repeating') || closing;
    if (!rep && !(goesOn && seesPhrase(c, 'row|rows')) && !takes(c, 'work', 'working', 'cont', 'then'))
      return undefined;
    takes(c, 'to', 'in');
    takes(c, 'rep', 'working', 'work');
    takes(c, 'from', 'the', 'through');
    // 'Repeat until it measures 6 cm'
    const which =
      readWhich(c) ?? (rep && sees(c, 'until') ? { last: 0 } : rep && seesOnceMore(c) ? JUST : undefined);
    if (which === undefined || (!rep && (which.last !== undefined || !which.named))) return undefined;
    const { named: _, ...range } = which;
    // the rows of a chart are not in the text
    if (!rep && seesPhrase(c, 'of|from the? chart')) return undefined;
    takeAnyPhrase(
      c,
      'of stripe patt',
      'of patt|chart|rib',
      'of the patt',
      'for panel|main|body|stitch|rib patt',
      'for the? rib|patt patt?',
      'for|in patt',
      'inclusive|incl',
    );
    takeAnyPhrase(c, 'for|throughout the? whole|entire? piece|work|sweater', 'throughout');
    attempt(c, () => takes(c, 'for') && readFabric(c)?.is === 'rib' && c.at >= c.end);
    takes(c, 'alternately');
    skipKept(c);
    takes(c, ',');
    if (open && !takes(c, ']', ')')) return undefined;
    const times = readTimes(c) ?? takesAgain(c);
    if (times) {
      readToCount(c, ',', '-');
      // '(12 rows)': what it comes to
      attempt(c, () => takes(c, '(') && takeNumber(c) !== undefined && takePhrase(c, 'rows )'));
      // '= 16 rows rib'
      attempt(
        c,
        () =>
          takes(c, '=', '-') &&
          takeNumber(c) !== undefined &&
          takePhrase(c, 'rows of? rib|patt?') &&
          c.at >= c.end,
      );
      const n = times.total ? times.n - 1 : times.n;
      return { is: 'repeat rows', ...range, times: Math.max(0, n) };
    }
    const until = readUntil(c);
    // 'Rep last 2 rows. 28 sts': once more, and that is what there is then
    const counted =
      (which.last ?? 0) > 0 && until === undefined && ahead(c, () => takeStated(c)) !== undefined;
    const once = closing || counted ? { times: 1 } : {};
    const endYarn = until === undefined ? undefined : readLastYarn(c);
    return {
      is: 'repeat rows',
      ...range,
      ...once,
      ...(until ? { until } : {}),
      ...(endYarn === undefined ? {} : { endYarn }),
    };
  });

/** 'Rep rows 1 and 2 again.' */
const takesAgain = (c: Cursor) =>
  attempt(c, () => takes(c, 'again') && (c.at >= c.end || sees(c, '.', ';', ',')) && { n: 1, total: false });

/** 'rep rows 4–7, keeping first and last 3 sts in garter st, until …': the rows spell their own edges. */
const skipKept = (c: Cursor): boolean =>
  attempt(c, () => {
    takes(c, ',');
    return readBorders(c) !== undefined && takes(c, ',') && sees(c, 'until', 'for', 'to');
  });

/** 'Repeat 2 more times', and nothing else: the row or two that stand alone above it. */
const JUST: Which = { last: 0, just: true };

const seesOnceMore = (c: Cursor): boolean =>
  ahead(c, () => readTimes(c)?.more === true && (c.at >= c.end || sees(c, '.', ';')));

/** ', ending with 2 rows of A': the stripe that is the last. */
const readLastYarn = (c: Cursor): string | undefined =>
  attempt(c, () => {
    takes(c, ',');
    if (!takeAnyPhrase(c, 'end|ending|finish|finishing with|after')) return undefined;
    if (takeNumber(c) === undefined || !takes(c, 'rows') || !takes(c, 'of', 'in', 'with')) return undefined;
    takes(c, 'color', 'colour', 'yarn');
    return readColourName(c);
  });

interface Which {
  readonly from?: number;
  readonly to?: number;
  readonly last?: number;
  readonly just?: true;
  readonly named?: boolean;
}

const readWhich = (c: Cursor): Which | undefined => readLastRows(c) ?? readSoMany(c) ?? readNumbered(c);

/** 'the 2 rows', and not the row of that number. */
const readSoMany = (c: Cursor): Which | undefined =>
  attempt(c, () => {
    const n = takeWhole(c);
    return n !== undefined && takes(c, 'rows') ? { last: n } : undefined;
  });

/** 'last 2 rows', 'these rows'. */
const readLastRows = (c: Cursor): Which | undefined =>
  attempt(c, () => {
    if (!takes(c, 'last', 'these', 'above', 'previous', 'those', 'this', 'preceding', 'them'))
      return undefined;
    // 'rep this ribbing for 2 in'
    if (took(c, 'this') && takes(c, 'rib')) return { last: 0 };
    takes(c, 'last');
    if (took(c, 'them')) return { last: 0 };
    const n = takeNumber(c);
    // 'these 10 patt rows'
    if (n !== undefined) takes(c, 'patt', 'rib');
    if (!takes(c, 'row', 'rows')) return undefined;
    const one = took(c, 'row') && n === undefined;
    return { last: one ? 1 : (n ?? 0) };
  });

const ORDINALS = ['first', 'second', 'third', 'fourth'];

/** 'the first and second rows'. */
function takeOrdinal(c: Cursor): number | undefined {
  const at = ORDINALS.indexOf(peekWord(c));
  return at >= 0 && takes(c, ...ORDINALS) ? at + 1 : undefined;
}

/** A number that says which row, not how often: 'rows 1 to 4, 5 times'. */
const takeRowNumber = (c: Cursor): number | undefined =>
  readTimes({ ...c }) === undefined ? takeNumber(c) : undefined;

/** 'rows 1–4', '1st to 4th rows', 'rows 1, 2 and 3'. */
const readNumbered = (c: Cursor): Which | undefined =>
  attempt(c, () => {
    const rowsFirst = takes(c, 'row', 'rows');
    const from = takeNumber(c) ?? takeOrdinal(c);
    if (from !== undefined) {
      takes(c, 'st', 'nd', 'rd', 'th', 'd');
      const early = takePhrase(c, 'row');
      let to = from;
      if (takes(c, '-', 'to', 'through', 'and', ',')) {
        takes(c, 'rows', 'row');
        const n = takeNumber(c) ?? takeOrdinal(c);
        if (n !== undefined) to = n;
        takes(c, 'st', 'nd', 'rd', 'th', 'd');
      }
      for (let n: number | undefined = to; n !== undefined; ) {
        to = n;
        n = attempt(c, () => (takes(c, ',', 'and') ? takeRowNumber(c) : undefined));
        if (n !== undefined) takes(c, 'st', 'nd', 'rd', 'th', 'd');
      }
      const after = takePhrase(c, 'row|rows');
      if ((rowsFirst || early || after) && Number.isSafeInteger(from) && Number.isSafeInteger(to))
        return { from, to, named: rowsFirst };
    }
    return undefined;
  });

/** 'K 1 row, p 1 row until piece measures 12 in': the rows just named go on. */
export const readRowsAgain = (c: Cursor, said: readonly Said[]): Statement | undefined =>
  attempt(c, () => {
    let rows = 0;
    for (let i = said.length - 1; i >= 0; i -= 1) {
      const { statement } = said[i] as Said;
      if (statement.is !== 'rows') break;
      rows += statement.n;
    }
    if (rows === 0 || rows > 40) return undefined;
    takes(c, 'alternately', 'rep');
    const until = readUntil(c);
    if (until) return { is: 'repeat rows', last: rows, until };
    const times = readTimes(c);
    if (times)
      return { is: 'repeat rows', last: rows, times: times.more ? times.n : Math.max(0, times.n - 1) };
  });
