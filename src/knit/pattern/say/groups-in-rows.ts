import { attempt, type Cursor, takeAnyPhrase } from '../../row/read/cursor.ts';
import type { Beat, EdgeName } from './how-far.ts';
import { readEdgeOf } from './phrase/edge.ts';
import type { GroupSaid } from './statement.ts';

/**
 * 'Cast off at the beg of each of the next 6 rows 7 sts 4 times and 6 sts twice': the groups lie in those rows one after
 * the other; of twice as many rows each is said of one side. Undefined where they do not come out.
 */
export function inThoseRows(
  before: { readonly edge: EdgeName; readonly beats: readonly Beat[] } | undefined,
  groups: readonly GroupSaid[],
): readonly GroupSaid[] | undefined {
  const [only] = before?.beats ?? [];
  const rows = only?.times;
  if (before === undefined || before.beats.length !== 1 || only?.every !== 1 || rows === undefined)
    return groups;
  if ((before.edge !== 'beginning' && before.edge !== 'end') || !groups.every(({ every }) => every === 2))
    return groups;
  const said = groups.reduce((sum, group) => sum + group.rows, 0);
  if (said !== rows && 2 * said !== rows) return undefined;
  return groups.map((group) => ({ ...group, rows: (group.rows * rows) / said, every: 1 }));
}

/** '… at beg of next row | at armhole edge': of one row it says at which; 'at beg of next 2 rows | at underarms' are both. */
export const readPlaceBehind = (c: Cursor, rows: number | undefined): EdgeName | undefined =>
  attempt(c, () => {
    if (rows === 1) {
      const edge = attempt(c, () => readEdgeOf(c));
      if (edge === 'neck' || edge === 'armhole') return edge;
      return edge === undefined && takeAnyPhrase(c, 'at the? underarm') ? 'armhole' : undefined;
    }
    const both = rows !== undefined && rows % 2 === 0;
    return both && takeAnyPhrase(c, 'at|for the? underarm|armhole|shoulder') ? 'beginning' : undefined;
  });
