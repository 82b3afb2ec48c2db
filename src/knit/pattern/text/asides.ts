import { isWord } from '../../row/read/cursor.ts';
import type { Token } from '../../row/read/lex.ts';
import { means } from '../../row/read/meanings.ts';

const CLOSING: Readonly<Record<string, string>> = { '(': ')', '[': ']' };

/** Farther on a bracket is not looked for. */
const LONGEST = 60;

/**
 * The tokens without brackets that only comment: words alone, none of them a stitch, a side or a number ('(for all sizes)',
 * '(Buttonhole Row)', '(for pocket opening)'), or the abbreviation of the word before.
 */
export function withoutAsides(tokens: readonly Token[]): readonly Token[] {
  const out: Token[] = [];
  for (let i = 0; i < tokens.length; i += 1) {
    // 'at beg of next (RS) row' says it as 'next RS row' does
    if (sideInBrackets(tokens, i)) {
      out.push(tokens[i + 1] as Token);
      i += 2;
      continue;
    }
    // 'beg with a k (RS) row', 'beg with a RS (k) row'
    if (sayKnitSide(tokens, i)) {
      i += 2;
      continue;
    }
    const all = allSizesAt(tokens, i);
    if (all > 0) {
      i += all - 1;
      continue;
    }
    const counts = includingAt(tokens, i);
    if (counts > 0) {
      i += counts - 1;
      continue;
    }
    const manner = mannerAt(tokens, i);
    if (manner > 0) {
      i += manner - 1;
      continue;
    }
    const end = asideEnd(tokens, i) ?? quoteEnd(tokens, i);
    if (end === undefined) out.push(tokens[i] as Token);
    else {
      const next = tokens[end + 1];
      // '… of next 2 rows (all sizes) Work even': what comes behind begins anew
      const sizes = tokens.slice(i, end).some((token) => isWord(token, 'sizes', 'size'));
      if (sizes && next?.capital && means(next.word, 'beginning of a sentence'))
        out.push({ ...(tokens[i] as Token), kind: 'mark', text: '.', word: '.' });
      i = end;
    }
  }
  return out;
}

/** 'K3 (5, 7) sts; on all sizes: * p1, k7': the row goes on, whatever the size. */
function allSizesAt(tokens: readonly Token[], at: number): number {
  const before = tokens[at - 1];
  if (before === undefined || isWord(before, '.', ':') || !isWord(tokens[at], 'on', 'for')) return 0;
  return isWord(tokens[at + 1], 'all') && isWord(tokens[at + 2], 'sizes') && isWord(tokens[at + 3], ':')
    ? 4
    : 0;
}

/** 'cast off 4, k 40, including the st on the needle, …': as stitches are counted in a row anyway. */
function includingAt(tokens: readonly Token[], at: number): number {
  if (!isWord(tokens[at], ',') || !isWord(tokens[at + 1], 'including', 'counting', 'incl')) return 0;
  const end = tokens.slice(at, at + 11).findIndex((token) => isWord(token, 'needle'));
  const one = tokens.slice(at, at + Math.max(0, end));
  return one.some((token) => isWord(token, 'st')) &&
    one.every(({ kind, text }) => kind !== 'number' || text === '1')
    ? end + 1
    : 0;
}

/** 'cast off loosely 3 sts', 'work tightly in rib', 'cast on 60 sts loosely and evenly': changes no count and no row. */
function mannerAt(tokens: readonly Token[], at: number): number {
  if (isWord(tokens[at], 'very', 'quite', 'fairly', 'rather')) {
    const more = mannerAt(tokens, at + 1);
    return more === 0 ? 0 : more + 1;
  }
  if (!isWord(tokens[at], 'loosely', 'tightly', 'firmly')) return 0;
  return isWord(tokens[at + 1], 'and', 'but') && isWord(tokens[at + 2], 'evenly', 'loosely', 'firmly')
    ? 3
    : 1;
}

/** In stocking stitch a knit row is one of the right side. */
const sayKnitSide = (tokens: readonly Token[], at: number): boolean =>
  isWord(tokens[at], '(') &&
  isWord(tokens[at + 2], ')') &&
  isWord(tokens[at + 3], 'row') &&
  (knitsSide(tokens[at - 1], tokens[at + 1]) || knitsSide(tokens[at + 1], tokens[at - 1]));

const knitsSide = (work: Token | undefined, side: Token | undefined): boolean =>
  (isWord(work, 'k') && isWord(side, 'rs')) || (isWord(work, 'p') && isWord(side, 'ws'));

const sideInBrackets = (tokens: readonly Token[], at: number): boolean =>
  isWord(tokens[at], '(') &&
  isWord(tokens[at + 1], 'rs', 'ws') &&
  isWord(tokens[at + 2], ')') &&
  isWord(tokens[at - 1], 'next', 'foll') &&
  !tokens[at - 1]?.capital &&
  isWord(tokens[at + 3], 'row', 'rows');

/** The closing bracket of a comment that begins here. */
function asideEnd(tokens: readonly Token[], at: number): number | undefined {
  const close = CLOSING[tokens[at]?.text ?? ''];
  if (close === undefined || at === 0) return undefined;
  const comment = commentEnd(tokens, at, close);
  if (comment !== undefined) return comment;
  for (let i = at + 1; i < Math.min(tokens.length, at + LONGEST); i += 1) {
    const token = tokens[i] as Token;
    if (token.text === close) {
      const said = i - at > 1 && !(i - at === 2 && isShort(tokens[at + 1] as Token));
      // 'time(s)'
      if (i - at === 2 && tokens[at]?.glued && tokens[at + 1]?.text === 's') return i;
      const again = i - at === 2 && tokens[at - 1]?.word === tokens[at + 1]?.word;
      return said || again ? i : undefined;
    }
    const again = i === at + 1 && tokens[i + 1]?.text === close && tokens[at - 1]?.word === token.word;
    const plural = i === at + 1 && token.text === 's' && tokens[at]?.glued && tokens[i + 1]?.text === close;
    if (again || plural) continue;
    if (isWord(tokens[at + 1], 'or') || tellsMeasure(tokens, at + 1)) continue;
    if (token.kind === 'number' || means(token.word, 'in brackets that say something')) return undefined;
    if (token.kind === 'mark' && token.text !== ',' && token.text !== '-') return undefined;
  }
  return undefined;
}

/**
 * '(that is, 8 decreased each side)', '(once at each side)', '(24 rows in all)', '(neck dec)', 'bind (cast) off': what was
 * said is said again. A count of stitches in it is stated, and stays.
 */
function commentEnd(tokens: readonly Token[], at: number, close: string): number | undefined {
  const length = tokens.slice(at + 1, at + LONGEST).findIndex((token) => token.text === close);
  if (length < 0) return undefined;
  const end = at + 1 + length;
  const inner = tokens.slice(at + 1, end);
  const first = inner[0];
  if (first === undefined) return undefined;
  // 'Next row (increase):'
  if (
    inner.length === 1 &&
    isWord(tokens[at - 1], 'row') &&
    means(first.word, 'row with a number of its own')
  )
    return end;
  if (inner.length === 1 && isWord(tokens[at - 1], 'bind', 'cast') && isWord(first, 'bind', 'cast'))
    return end;
  // 'k2tog, psso (2 sts decreased), k to end': what the stitch before it does
  const does = inner.length === 3 && isWord(inner[1], 'st', 'sts') && means(inner[2]?.word, 'changed');
  if (does && isWord(tokens[end + 1], ',', ';')) return end;
  // '(4 sts decreased in 3 rows)': what the rows before it come to
  if (inner[0]?.kind === 'number' && isWord(inner[1], 'st', 'sts') && means(inner[2]?.word, 'changed')) {
    if (isWord(inner[3], 'in', 'over') && isWord(inner.at(-1), 'row', 'rows')) return end;
  }
  if (inner.some((token, i) => isWord(token, 'st', 'sts') && inner[i - 1]?.kind === 'number'))
    return undefined;
  if (namesStitches(tokens[at - 1], inner)) return end;
  if (ridgesOfRows(tokens[at - 2], tokens[at - 1], inner)) return end;
  // '(increase on lower edge)', '(dec made)'
  if (means(first.word, 'shaping by name') && isWord(inner[1], 'on', 'at', 'made') && inner.length > 1)
    return inner.every((token) => token.kind !== 'number') ? end : undefined;
  // '(keeping one edge even)'
  if (isWord(first, 'keeping', 'keep') && isWord(inner.at(-1), 'even', 'straight')) return end;
  // '(this forms a yoke)'
  if (isWord(first, 'this') && isWord(inner[1], 'forms', 'completes', 'makes', 'marks')) return end;
  const named = isWord(inner[1], 'rib', 'patt', 'pattern', 'border') ? 1 : 0;
  const rows = first.kind === 'number' && isWord(inner[1 + named], 'row', 'rows') && inner.length > 2 + named;
  if (rows)
    return inner.slice(2 + named).every((token) => means(token.word, 'beside rows in all')) ? end : undefined;
  const place = inner.length < 4 && means(first.word, 'place of a shaping');
  if (place && means(inner.at(-1)?.word, 'shaping by name')) return end;
  // '(when stretched to correct width)'
  if (isWord(first, 'when') && isWord(inner[1], 'stretched', 'slightly', 'pressed', 'blocked')) return end;
  // 'in moss st (moss st: * k1, p1; rep from * to end)': how it is worked, by its name
  const colon = inner.findIndex((token) => isWord(token, ':'));
  const name = inner.slice(0, Math.max(0, colon));
  if (
    means(name[0]?.word, 'fabric by name') &&
    name.length < 3 &&
    name.every((token) => token.kind === 'word')
  )
    return end;
  // '(twice)' and '(worked 3 times)' say how often
  if (inner.length < 3 || inner.some((token) => isWord(token, 'time', 'x'))) return undefined;
  // '… at beg of next 4 rows (twice at each side)' says it again; '3 sts (twice at each side)' says how often
  if (isWord(first, 'twice') && !tokens.slice(Math.max(0, at - 9), at).some(({ word }) => word === 'rows'))
    return undefined;
  const counts = isWord(first, 'once', 'twice', 'worked') && !means(inner[1]?.word, 'before next');
  return !counts && means(first.text, 'beginning of a comment') ? end : undefined;
}

/** 'k6 (garter st border)', 'k22 (right shoulder)': what those stitches are. */
const namesStitches = (before: Token | undefined, inner: readonly Token[]): boolean =>
  (before?.kind === 'number' || isWord(before, 'st', 'sts')) &&
  inner.length < 5 &&
  inner.every(({ kind, word }, i) => kind === 'word' && (i === 0 || !means(word, 'changes the count'))) &&
  means(inner.at(-1)?.word, 'stitches of a row by name') &&
  !means(inner[0]?.word, 'beginning of an order');

/** '8 rows (4 ridges)', '4 ridges (8 rows)': said twice. */
const ridgesOfRows = (n: Token | undefined, what: Token | undefined, inner: readonly Token[]): boolean =>
  inner.length === 2 &&
  ((isWord(what, 'rows') && isWord(inner[1], 'ridge') && n?.value === 2 * (inner[0]?.value ?? 0)) ||
    (isWord(what, 'ridge') && isWord(inner[1], 'rows') && inner[0]?.value === 2 * (n?.value ?? 0)));

/** '(armhole measures 8 in)': what it comes to by then. */
const tellsMeasure = (tokens: readonly Token[], at: number): boolean =>
  isWord(tokens[at], 'armhole', 'armholes', 'piece', 'work', 'back', 'front', 'sleeve', 'item') &&
  (isWord(tokens[at + 1], 'measures', 'measure') ||
    (isWord(tokens[at + 1], 'should', 'now') && isWord(tokens[at + 2], 'measures', 'measure')));

/** A yarn's name in quotes ('1 ball of "Wool-Knit"') may sound like an order; behind a number the mark is inches. */
function quoteEnd(tokens: readonly Token[], at: number): number | undefined {
  const close = QUOTES[tokens[at]?.text ?? ''];
  if (close === undefined || tokens[at - 1]?.kind === 'number') return undefined;
  for (let i = at + 1; i < Math.min(tokens.length, at + 9); i += 1) {
    const token = tokens[i] as Token;
    if (token.text === close) return i > at + 1 ? i : undefined;
    if (token.kind === 'number' || (token.kind === 'mark' && token.text !== '-' && token.text !== '&'))
      return undefined;
  }
  return undefined;
}

const QUOTES: Readonly<Record<string, string>> = { '"': '"', '“': '”' };

/** One letter may be a size, a colour or a stitch. */
const isShort = (token: Token): boolean => token.text.length < 4;
