import { attempt, type Cursor, seesPhrase, takePhrase, takeWhole } from '../../row/read/cursor.ts';
import { STS } from '../../row/read/goal.ts';
import { endsHere, groupsOf, readGroup } from './groups.ts';
import type { EdgeName } from './how-far.ts';
import { readBeats } from './phrase/beats.ts';
import type { GroupSaid, Statement } from './statement.ts';

const readOnNext = (c: Cursor, edge: EdgeName): GroupSaid[] | undefined => {
  const stitches = takeWhole(c);
  if (stitches === undefined || !takePhrase(c, STS) || !seesPhrase(c, 'on|in each? of? the? next|foll'))
    return undefined;
  const beats = readBeats(c);
  const closed = beats.length > 0 && beats.every(({ times }) => times !== undefined);
  return closed && endsHere(c) ? groupsOf(stitches, edge, beats, undefined) : undefined;
};

/** '… at beg of next row, | then 3 sts at neck edge on foll alt rows 3 times': what is done stands before the first of them only. */
export const readElidedGroups = (c: Cursor, work: 'bo' | 'co', edge?: EdgeName): Statement | undefined =>
  attempt(c, () => {
    // '3 sts on next 8 rows': at the edge of those before
    const there = edge === undefined ? undefined : attempt(c, () => readOnNext(c, edge));
    if (there) return { is: 'groups', work, edge: edge as EdgeName, groups: there };
    const one = readGroup(c, undefined, undefined);
    const closed = one?.place?.beats.every(
      ({ times, toCount }) => times !== undefined || toCount !== undefined,
    );
    return closed && one?.place
      ? { is: 'groups', work, edge: one.place.edge, groups: one.groups }
      : undefined;
  });
