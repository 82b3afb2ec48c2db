import {
  ahead,
  attempt,
  type Cursor,
  endsOrdinal,
  isOneOf,
  peek,
  peekNumber,
  peekWord,
  sees,
  seesOne,
  seesPhrase,
  takeAnyPhrase,
  takeNumber,
  takePhrase,
  takes,
  takeTo,
  takeWhole,
  took,
} from '../../row/read/cursor.ts';
import { means } from '../../row/read/meanings.ts';
import { skipDivide } from './phrase/row-kind.ts';
import { ROWS, readNumbers } from './phrase/row-numbers.ts';
import { readSide } from './phrase/side.ts';
import type { Label } from './statement.ts';

/** 'Row 1 (RS):', '2nd and every alt row:', 'Rows 3–20:', 'Next row (WS):', 'Next 4 rows:', 'Inc row:'. */
export const readLabel = (c: Cursor): Label | undefined =>
  attempt(c, () => {
    // 'Next row:' would be a row of that name
    const label =
      numbered(c) ??
      ordinal(c) ??
      bareNumber(c) ??
      onNext(c) ??
      nextIs(c) ??
      next(c) ??
      buttonhole(c) ??
      namedRow(c);
    if (label === undefined) return undefined;
    const early = takeWhatItDoes(c);
    const side = label.side ?? sideAfter(c);
    const does = early ?? takeWhatItDoes(c);
    takes(c, ',');
    if (
      !takes(c, ':', '.', '-', '=') &&
      !skipDivide({ ...c }) &&
      !looksLikeRow(c) &&
      !ahead(c, () => takeHole(c))
    )
      return undefined;
    const later = side ?? sideAfter(c);
    takes(c, ':', '-');
    skipDivide(c);
    // 'Next row: make buttonhole, k 2, yo, …'
    const hole = takeHole(c);
    const known = label.rows.length === 0 && does !== undefined ? { name: does } : {};
    const name = hole ? { name: 'buttonhole' } : known;
    return { ...label, ...name, ...(later === undefined ? {} : { side: later }) };
  });

/** 'Next row (dec): k1, k2tog, k to end': what the row is, and no stitch of it. */
const takeWhatItDoes = (c: Cursor): 'dec' | 'inc' | undefined =>
  attempt(c, () => {
    if (!takes(c, '(')) return undefined;
    const what = takes(c, 'dec') ? 'dec' : takes(c, 'inc') ? 'inc' : undefined;
    takes(c, 'row');
    return takes(c, ')') ? what : undefined;
  });

const takeHole = (c: Cursor): boolean =>
  attempt(
    c,
    () =>
      takeAnyPhrase(
        c,
        'make|work|form a|the? buttonhole as? foll? :|,|-',
        'make|work|form a|the? button hole as? foll? :',
      ) && looksLikeRow(c),
  );

const sideAfter = (c: Cursor): 'RS' | 'WS' | undefined =>
  attempt(c, () => {
    const open = takes(c, '(', '[', ',', '-');
    takes(c, 'on');
    if (open || sees(c, 'rs', 'ws', 'right', 'wrong')) {
      const word = peekWord(c);
      const side = word === 'k' || word === 'p' ? undefined : readSide(c);
      if (side !== undefined) {
        takes(c, 'facing', 'row', 'side');
        takeAnyPhrase(c, 'of work|piece');
        takes(c, ')', ']');
        return side;
      }
    }
  });

/** A label without a colon is one only where a row follows at once: 'Row 1 K2, p2'. */
const looksLikeRow = (c: Cursor): boolean =>
  seesOne(c, 'beginning of a row') || seesPhrase(c, 'beg|starting|commencing with|on a? rs|ws? k|p row');

function numbered(c: Cursor): Label | undefined {
  if (!takePhrase(c, ROWS)) return undefined;
  takes(c, 'no', 'nos', '#');
  const rows = readNumbers(c);
  if (rows.length === 0) return undefined;
  const everyOther = readEveryOther(c);
  return { rows, ...(everyOther ? { everyOther: true } : {}) };
}

/** '3: K1, ssk, k to end', '4-6: as rows 1-2': at the start of a line a number alone says which row it is. */
const bareNumber = (c: Cursor): Label | undefined =>
  attempt(c, () => {
    const first = peek(c);
    if (first?.kind !== 'number' || c.tokens[c.at - 1]?.line === first.line) return undefined;
    const rows = readNumbers(c);
    if (rows.length === 0 || !sees(c, ':')) return undefined;
    return spellsRow({ ...c, at: c.at + 1 }) ? { rows } : undefined;
  });

/** A row stitch by stitch, or as another; 'knit 4 rows' and 'cast on' are steps of a list. */
const spellsRow = (c: Cursor): boolean => {
  if (sees(c, '*', '(', '[', 'sl', 'yo', 'ssk', 'skp', 'as', 'bo', 's')) return true;
  if (!sees(c, 'k', 'p')) return false;
  const next = peek(c, 1);
  if (next?.kind === 'number') return !isOneOf(peekWord(c, 2), 'row rows ridge inch cm mm');
  return next === undefined || isOneOf(next.word, ', . ; to across tog');
};

/** 'and every (foll) alt row', 'and all WS rows', 'and all even rows'. */
const readEveryOther = (c: Cursor): boolean =>
  attempt(c, () => {
    takes(c, ',', ':');
    if (takes(c, 'and')) {
      takes(c, 'every', 'all', 'each');
      takes(c, '-');
      takes(c, 'foll', 'other', 'subsequent', 'rem');
      if (
        takeAnyPhrase(
          c,
          `alt|other|ws|rs|even|odd|p ${ROWS}`,
          `wrong|right side ${ROWS}`,
          `even|odd numbered ${ROWS}`,
          `2 nd ${ROWS}`,
          `even - numbered ${ROWS}`,
        )
      )
        return true;
      if (took(c, 'alt', 'other') && takePhrase(c, ROWS)) return true;
    }
    return false;
  });

/** '1st row:', '2nd and 4th rows:', '1st to 4th rows'. */
function ordinal(c: Cursor): Label | undefined {
  const n = peekNumber(c);
  // '97-98th rows'
  const span = peekWord(c, 1) === '-' && peekNumber(c, 2) !== undefined && endsOrdinal(peek(c, 3));
  if (n === undefined || !(span || endsOrdinal(peek(c, 1)))) return ordinalWord(c);
  const rows = readNumbers(c);
  if (rows.length === 0) return undefined;
  if (readEveryOther(c)) return { rows, everyOther: true };
  if (!takePhrase(c, ROWS)) return undefined;
  // '1st row of pattern:'
  attempt(c, () => takeAnyPhrase(c, 'of the? patt|rib') && sees(c, ':', '.', '-', '('));
  return readEveryOther(c) ? { rows, everyOther: true } : { rows };
}

function ordinalWord(c: Cursor): Label | undefined {
  const at = ['first', 'second', 'third', 'fourth'].indexOf(peekWord(c));
  if (at < 0 || !seesPhrase({ ...c, at: c.at + 1 }, ROWS)) return undefined;
  c.at += 2;
  return { rows: [at + 1] };
}

/** 'Next row is a buttonhole row:' */
const nextIs = (c: Cursor): Label | undefined =>
  attempt(c, () => {
    if (!takeAnyPhrase(c, 'the? next row is a|the', 'make|work the? next row a')) return undefined;
    const name = rowName(peekWord(c));
    takeTo(c, c.at + 1);
    return takePhrase(c, ROWS) && sees(c, ':') ? { rows: [], name } : undefined;
  });

/** 'Work buttonhole as follows: k2, bind off 2 sts, k to end', 'make buttonhole on next row:'. */
const buttonhole = (c: Cursor): Label | undefined =>
  attempt(c, () => {
    takeAnyPhrase(c, 'on|in the? next row ,?');
    if (!takes(c, 'work', 'make', 'form')) return undefined;
    takes(c, 'a', 'the', 'first', 'next');
    if (!takes(c, 'buttonhole')) return undefined;
    takePhrase(c, ROWS);
    takeAnyPhrase(c, 'on|in the? next row', 'on|in|over the? next 2 rows');
    return (takeAnyPhrase(c, 'as foll', 'thus') || took(c, 'row') || sees(c, ':')) &&
      sees(c, ':', ',') &&
      c.at < c.end - 1
      ? { rows: [], name: 'buttonhole' }
      : undefined;
  });

/** 'cast on 4 sts over those bound off' is a whole row. */
const castsOver = (c: Cursor): boolean =>
  ahead(
    c,
    () =>
      takePhrase(c, 'cast on') && takeNumber(c) !== undefined && takePhrase(c, 'st|sts') && sees(c, 'over'),
  );

/** 'On next row, k to last 2 sts', 'in the next row (RS): …'; 'on next row and every 4th row' is a rhythm. */
const onNext = (c: Cursor): Label | undefined =>
  attempt(c, () => {
    if (!takePhrase(c, 'at the? beg of') && !takes(c, 'on', 'in')) return undefined;
    takes(c, 'the', 'foll');
    const label = sees(c, 'next') ? next(c) : returnRow(c);
    if (label === undefined || label.next !== undefined) return undefined;
    const side = label.side ?? sideAfter(c);
    // 'on the next row K 52 sts, …'
    const counted =
      sees(c, 'k', 'p') && peekNumber(c, 1) !== undefined && seesPhrase({ ...c, at: c.at + 2 }, 'st|sts ,');
    const parted = takes(c, ',', ':') || counted;
    if (parted ? !sees(c, 'k', 'p', 'work', 'sl', 'cast') : !castsOver(c)) return undefined;
    if (seesPhrase(c, 'work a? buttonhole')) return undefined;
    return side === undefined ? label : { ...label, side };
  });

/** 'On the return row', 'on foll row': the one that comes next. */
const returnRow = (c: Cursor): Label | undefined =>
  (took(c, 'foll') || takes(c, 'return')) && takes(c, 'row') ? { rows: [] } : undefined;

/** 'Last row (WS):'; 'last row' elsewhere is one that was worked. */
const seesLastLabel = (c: Cursor): boolean => seesPhrase(c, 'last|final row :|(|[');

function next(c: Cursor): Label | undefined {
  if (!(seesLastLabel(c) && takes(c, 'last', 'final')) && !takes(c, 'next', 'foll')) return undefined;
  const n = takeNumber(c);
  const side = readSideWord(c);
  const name = attempt(c, () =>
    takes(c, '(') && takes(c, 'dec', 'inc') ? c.tokens[c.at - 1]?.word : undefined,
  );
  if (name !== undefined && !takes(c, ')')) return undefined;
  if (!takePhrase(c, ROWS)) return undefined;
  return {
    ...(name === undefined ? {} : { name }),
    rows: n === undefined ? readNumberBehind(c) : [],
    ...(n === undefined ? {} : { next: n }),
    ...(side === undefined ? {} : { side }),
  };
}

/** 'Next row 1:', 'Next row 2 (WS):'. */
const readNumberBehind = (c: Cursor): readonly number[] =>
  attempt(c, () => {
    const n = takeWhole(c);
    return n !== undefined && sees(c, ':', '(') ? [n] : undefined;
  }) ?? [];

/** 'next RS row', 'next k row', in stocking stitch on the right side. */
const readSideWord = (c: Cursor): 'RS' | 'WS' | undefined => {
  if (takes(c, 'rs')) return 'RS';
  if (takes(c, 'ws')) return 'WS';
  if (!seesPhrase(c, 'k|p row')) return undefined;
  return takes(c, 'k') ? 'RS' : takes(c, 'p') ? 'WS' : undefined;
};

/** 'Inc row:', 'Set-up row (WS):', 'Foundation row', 'Buttonhole row'. */
const namedRow = (c: Cursor): Label | undefined =>
  attempt(c, () => {
    const start = c.at;
    let words = 0;
    while (words < 4 && peek(c)?.kind === 'word' && !seesPhrase(c, ROWS)) {
      if (seesOne(c, 'not in a name of a row') && !(words === 0 && sees(c, 'dec', 'inc'))) return undefined;
      c.at += 1;
      takes(c, '-');
      words += 1;
    }
    if (words === 0 || !takePhrase(c, ROWS)) return undefined;
    // 'Dec row 1:', 'Dec row 2:'
    const n = words === 1 && seesNumberedShaping(c, start) ? takeNumber(c) : undefined;
    const side = sideAfter(c);
    const word = c.tokens[start]?.text ?? '';
    const name = word === 'buttonhole' && (n ?? 1) > 1 ? `buttonhole ${n}` : rowName(word);
    // 'Inc row P2, k2, …': what is named and worked at once
    const bare = (name === 'dec' || name === 'inc') && sees(c, 'k', 'p') && peekNumber(c, 1) !== undefined;
    const dash = sees(c, '-') && looksLikeRow({ ...c, at: c.at + 1 });
    return seesPhrase(c, ':') || dash || side !== undefined || bare
      ? { rows: [], name, ...(side === undefined ? {} : { side }) }
      : undefined;
  });

const seesNumberedShaping = (c: Cursor, start: number): boolean =>
  peekNumber(c) !== undefined && means(c.tokens[start]?.word, 'row with a number of its own');

/** 'Decrease row' and 'Dec row' are one. */
export const rowName = (word: string): string =>
  word.startsWith('dec') ? 'dec' : word.startsWith('inc') ? 'inc' : word;
