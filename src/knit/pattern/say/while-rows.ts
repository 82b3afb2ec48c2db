import { endsOrdinal, isWord } from '../../row/read/cursor.ts';
import type { Token } from '../../row/read/lex.ts';
import type { Item } from '../../row/read/notation.ts';
import { spreadOver } from '../../row/read/row.ts';
import type { Beat, EdgeName } from './how-far.ts';
import type { Said, Statement } from './statement.ts';

type Shape = Extract<Statement, { is: 'shape' }>;
type Rows = Extract<Statement, { is: 'rows' }>;

/**
 * 'Work 6 rows, dec 1 st at neck edge on every row': the shaping lies in the rows just said and ends with them. Behind
 * 'then' it follows them. False where the number of its times is open: 5 rows have two or three of every other row.
 */
export function joinRows(said: Said[], tokens: readonly Token[], at: number): boolean {
  const shape = said.at(-1);
  if (shape?.statement.is === 'row') return joinNth(said, shape.statement.items);
  const beside = said.at(-2)?.statement.is === 'at the same time';
  const before = said.at(beside ? -3 : -2)?.statement;
  if (shape?.statement.is !== 'shape' || before === undefined) return true;
  if (isWord(tokens[at - 1], 'and') && joinEdges(said, shape.statement)) return true;
  const joint = isWord(tokens[at - 1], 'then')
    ? undefined
    : joinStretch(said, shape.statement, before, tokens[at]);
  if (joint) return true;
  const n = rowsSaid(before);
  const { beats } = shape.statement;
  const last = beats.at(-1);
  if (n === undefined || isWord(tokens[at - 1], 'then')) return true;
  if (last === undefined) return before.is !== 'rows' || beside || shapedRow(said, shape.statement, before);
  // 'work 4 rows, dec 1 st at each end of 3rd row': one of them; 'of next row' is the one behind them
  const numbered = (beats[0]?.first ?? 1) > 1 || (beats[0]?.first === 1 && isNumbered(tokens, at));
  const within = numbered && beats.every(({ times }) => times) && rowsOf(beats) <= n;
  if (ends(last) && !within) return true;
  const rows = n - rowsOf(beats.slice(0, -1));
  const first = last.first ?? last.every;
  if (!within && last.every === 2 && last.first === undefined && rows % 2 === 1) return false;
  const times = last.times ?? Math.max(0, Math.floor((rows - first) / last.every) + 1);
  const statement: Shape = { ...shape.statement, beats: [...beats.slice(0, -1), { ...last, times }] };
  const knitted = before.is === 'rows' ? inGarter(before) : before;
  if (knitted === undefined) return false;
  said.splice(beside ? -3 : -2, 1, { ...(said.at(beside ? -3 : -2) as Said), statement: knitted });
  said.splice(
    -1,
    1,
    ...(beside ? [] : [{ ...shape, statement: { is: 'at the same time' } as const, within: true }]),
    {
      ...shape,
      statement,
    },
  );
  return true;
}

const isClosed = ({ beats }: Shape): boolean =>
  beats.length > 0 && beats.every(({ times }) => times !== undefined);

/** '… at armhole edge, then dec 1 st at same edge 3 times and | at neck edge': the edge that is the same. */
function edgeThere(said: readonly Said[]): EdgeName {
  for (let i = said.length - 2; i >= 0; i -= 1) {
    const { statement } = said[i] as Said;
    const edge = statement.is === 'shape' || statement.is === 'groups' ? statement.edge : 'unsaid';
    if (edge !== 'same') return edge;
  }
  return 'same';
}

/**
 * 'Dec 1 st at armhole edge on next 3 rows and 1 st at neck edge on every 4th row 4 times': both go on at once; the one that
 * takes longer has the rows, and the other lies beside it.
 */
function joinEdges(said: Said[], shape: Shape): boolean {
  const [first, second] = said.slice(-2) as [Said, Said];
  const there = edgeThere(said);
  const before = first.statement;
  if ((before.is !== 'shape' && before.is !== 'groups') || !isOtherEdge(there, shape.edge)) return false;
  const other = isClosed(shape);
  // groups are soon bound off
  const one = before.is === 'groups' ? other : isClosed(before);
  if (!one && !other) return false;
  const swapped = one && (!other || before.is === 'groups' || rowsOf(shape.beats) > rowsOf(before.beats));
  // it stands behind the other edge now
  const own = { ...first, statement: { ...before, edge: there } as Statement };
  const [main, beside] = swapped ? [second, own] : [own, second];
  const stated = second.stated === undefined ? {} : { stated: second.stated };
  const { line, column } = beside;
  said.splice(
    -2,
    2,
    { ...main, ...stated },
    { statement: { is: 'at the same time' }, line, column, within: true },
    { statement: beside.statement, line, column },
  );
  return true;
}

const isOtherEdge = (one: EdgeName, other: EdgeName): boolean =>
  (one === 'neck' && other === 'armhole') || (one === 'armhole' && other === 'neck');

/** 'of 1st and 3rd rows' are rows of those before; 'of next row' is the one behind them. */
function isNumbered(tokens: readonly Token[], at: number): boolean {
  for (
    let i = at;
    i < Math.min(at + 14, tokens.length) && !isWord(tokens[i], 'row', 'rows', 'next');
    i += 1
  ) {
    const first = tokens[i];
    if (
      first?.value === 1 &&
      endsOrdinal(tokens[i + 1]) &&
      tokens[i + 1]?.glued &&
      !isWord(tokens[i + 2], 'st')
    )
      return true;
    if (
      isWord(first, 'first') &&
      !isWord(tokens[i + 1], 'st', 'sts') &&
      isWord(tokens[i - 1], 'of', 'on', 'in', 'the')
    )
      return !isWord(tokens[i + 2], 'last');
  }
  return false;
}

/**
 * 'Work until there are 64 sts, inc 1 st each end every 4th row' is that shaping up to that count; 'work in st st for 5 cm,
 * increasing 1 st each end every 4th row' lies in those rows.
 */
function joinStretch(said: Said[], shape: Shape, before: Statement, word: Token | undefined): boolean {
  const last = shape.beats.at(-1);
  if (said.length < 2 || before.is !== 'even' || said.at(-2)?.statement !== before || last === undefined)
    return false;
  const { until, ...even } = before;
  if (until?.is === 'count' && !ends(last) && last.every > 1) {
    const beats = [...shape.beats.slice(0, -1), { ...last, toCount: until.stitches }];
    const [first, second] = said.splice(-2, 2) as [Said, Said];
    if (even.fabric) said.push({ ...first, statement: even });
    said.push({ ...second, statement: { ...shape, beats } });
    return true;
  }
  if (until === undefined || until.is === 'rows' || until.is === 'count' || until.is === 'rows in all')
    return false;
  if (!isWord(word, 'increasing', 'decreasing')) return false;
  const within = ends(last) ? shape.beats : [...shape.beats.slice(0, -1), { ...last, until }];
  const [shaped] = said.splice(-1, 1) as [Said];
  const { line, column } = shaped;
  said.push({ statement: { is: 'at the same time' }, line, column, within: true });
  said.push({ ...shaped, statement: { ...shape, beats: within } });
  return true;
}

/** 'Purl 1 row, inc 1 st at each end': in that row; of more rows nobody knows in which. */
function shapedRow(said: Said[], { edge, change }: Shape, { n, items }: Rows): boolean {
  if (n !== 1 || Math.abs(change) > 2 || !['both', 'beginning', 'end'].includes(edge)) return false;
  const sign = change < 0 ? 'dec' : 'inc';
  const shaped: Item = { is: 'stitches', work: Math.abs(change) === 2 ? `${sign} 2` : sign, times: 1 };
  const row = [...(edge === 'end' ? [] : [shaped]), ...items, ...(edge === 'beginning' ? [] : [shaped])];
  const [before, shape] = said.splice(-2, 2) as [Said, Said];
  const stated = shape.stated ?? before.stated;
  said.push({ ...before, statement: { is: 'row', items: row }, ...(stated === undefined ? {} : { stated }) });
  return true;
}

/** 'K 1 row, inc in every 10th st': that is the row. */
function joinNth(said: Said[], items: readonly Item[]): boolean {
  const [before, row] = said.slice(-2) as [Said, Said | undefined];
  const [first, second] = items;
  const rows = before.statement;
  if (
    second !== undefined ||
    first?.is !== 'group to' ||
    !first.nth ||
    row === undefined ||
    rows.is !== 'rows'
  )
    return true;
  if (rows.n !== 1) return false;
  said.splice(-2, 2, { ...row, statement: { is: 'row', items: spreadOver([...rows.items, first], true) } });
  return true;
}

export const rowsSaid = (said: Statement): number | undefined =>
  said.is === 'rows' ? said.n : said.is === 'even' && said.until?.is === 'rows' ? said.until.n : undefined;

/** 'Knit 6 rows, dec …': rows of garter stitch, since its edges are shaped. */
export function inGarter({ n, items }: Rows): Statement | undefined {
  const [only] = items;
  if (items.length !== 1 || only?.is !== 'stitches to' || only.work !== 'k') return undefined;
  return { is: 'even', fabric: { is: 'named', name: 'garter' }, until: { is: 'rows', n } };
}

const ends = ({ times, toCount, until }: Beat): boolean =>
  times !== undefined || toCount !== undefined || until !== undefined;

const rowsOf = (beats: readonly Beat[]): number =>
  beats.reduce((sum, { first, every, times = 1 }) => sum + (first ?? every) + (times - 1) * every, 0);
