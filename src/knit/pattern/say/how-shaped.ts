import {
  ahead,
  attempt,
  type Cursor,
  cursorOver,
  isWord,
  sees,
  takeAnyPhrase,
  takes,
  takeTo,
} from '../../row/read/cursor.ts';
import type { Item } from '../../row/read/notation.ts';
import { readRow } from '../../row/read/row.ts';
import { stitches } from '../../stitch.ts';
import type { Beat } from './how-far.ts';
import { readLabel } from './label.ts';
import { statedAtEnd } from './phrase/stated-count.ts';
import { readToCount } from './phrase/until.ts';
import type { Said, Statement } from './statement.ts';

type Shape = Extract<Statement, { is: 'shape' }>;

/**
 * 'Dec 1 st at each end of next row as follows: k1, k2tog, k to last 3 sts, ssk, k1', '… every RS row (k2, k2tog, …) until
 * 40 sts remain': the row says how the shaping is worked and is none of its own. What is only announced ('as follows:
 * Row 1: …') is left to the rows. 'unread' where both would be worked, or nobody knows which.
 */
export const takeHow = (c: Cursor, said: Said[]): 'taken' | 'unread' | undefined =>
  attempt(c, () => {
    const last = said.at(-1);
    if (last?.statement.is !== 'shape') return undefined;
    const shape = last.statement;
    takes(c, ',');
    const bracket = takes(c, '(');
    if (!bracket && !takeAnyPhrase(c, 'as foll', 'thus', 'by? working', 'in? this way|manner :'))
      return undefined;
    const announced = isWord(c.tokens[c.at - 1], 'foll', 'thus');
    takes(c, ':', '-', ',');
    if (announced && (c.at >= c.end || ahead(c, () => readLabel(c)))) {
      if (!isOnce(shape.beats) && !isOpen(shape.beats)) return 'unread';
      said.pop();
      return 'taken';
    }
    const stated = bracket ? undefined : statedAtEnd(c);
    const end = bracket
      ? c.tokens.findIndex((token, i) => i > c.at && token.text === ')')
      : (stated?.end ?? c.end);
    const row =
      end > c.at && sees(c, 'k', 'p', 'sl', 's', 'ssk', 'work')
        ? readRow(cursorOver(c.tokens, c.at, end))
        : undefined;
    if (!row?.ok || !row.value.some(changes)) return bracket || !announced ? undefined : 'unread';
    takeTo(c, bracket ? end + 1 : c.end);
    const items = row.value;
    const count = stated?.stitches ?? last.stated;
    const toCount = bracket ? readToCount(c, ',') : undefined;
    const statement = withItems(shape, items, toCount);
    if (statement === undefined) return 'unread';
    said[said.length - 1] = { ...last, statement, ...(count === undefined ? {} : { stated: count }) };
    return 'taken';
  });

const isOnce = (beats: readonly Beat[]): boolean =>
  beats.length === 0 || (beats.length === 1 && beats[0]?.times === 1 && (beats[0].first ?? 1) === 1);

const isOpen = (beats: readonly Beat[]): boolean => {
  const last = beats.at(-1);
  return (last?.times ?? last?.toCount ?? last?.until) === undefined;
};

/** One row is that row; a rhythm works it each time, and on one side only. */
function withItems(shape: Shape, items: readonly Item[], toCount: number | undefined): Statement | undefined {
  const { beats } = shape;
  const side = beats[0]?.side;
  if (isOnce(beats)) return { is: 'row', label: { rows: [], ...(side ? { side } : {}) }, items };
  if (beats.some(({ every }) => every % 2 === 1)) return undefined;
  const last = beats.at(-1) as Beat;
  return {
    ...shape,
    items,
    beats: toCount === undefined ? beats : [...beats.slice(0, -1), { ...last, toCount }],
  };
}

const changes = (item: Item): boolean => {
  if ('work' in item && item.work) return stitches[item.work].takes !== stitches[item.work].makes;
  return 'items' in item && item.items.some(changes);
};

/** 'Work in rib k 1, * p 2, k 2; rep from * to end': what the row is called before it is spelled. */
export const takeFabricLead = (c: Cursor): boolean =>
  attempt(c, () => {
    if (!takeAnyPhrase(c, 'work|working|cont in rib|patt ,? :?') || !sees(c, 'k', 'p')) return false;
    return c.tokens
      .slice(c.at, c.end)
      .some((token, i, all) => isWord(token, '*') && isWord(all[i + 1], 'k', 'p'));
  });
