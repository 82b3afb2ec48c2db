import { takeBindOff } from '../../row/read/bind-off.ts';
import { takeCastOn } from '../../row/read/cast-on.ts';
import {
  attempt,
  type Cursor,
  takeAnyPhrase,
  takeNumber,
  takePhrase,
  takes,
  took,
} from '../../row/read/cursor.ts';
import { readTimes, STS } from '../../row/read/goal.ts';
import { readBeats, readBeatsBefore } from './phrase/beats.ts';
import { readEdgeOf } from './phrase/edge.ts';
import type { Beat, EdgeName, GroupSaid, Statement } from './statement.ts';

/** 'bind off 5 sts at beg of next 2 rows, then 7 sts at beg of foll 2 rows', '… at neck edge every other row 3 times'. */
export const readGroups = (c: Cursor): Statement | undefined =>
  attempt(c, () => {
    const start = c.at;
    const before = readGroupsPlace(c);
    takes(c, ',', ':');
    const work = takeBindOff(c) ? 'bo' : takeCastOn(c) ? 'co' : undefined;
    if (work === undefined) return undefined;
    const groups: GroupSaid[] = [];
    let edge: EdgeName | undefined = before?.edge;
    while (groups.length < 30) {
      const at = c.at;
      if (groups.length > 0) skipChain(c, work);
      const first = readGroup(c, before);
      if (first === undefined || (first.place === undefined && before === undefined && groups.length === 0)) {
        c.at = groups.length === 0 ? start : at;
        break;
      }
      edge = edge ?? first.place?.edge;
      if (
        first.place?.edge !== undefined &&
        edge !== undefined &&
        first.place.edge !== edge &&
        first.place.edge !== 'same'
      ) {
        c.at = at;
        break;
      }
      groups.push(...first.groups);
    }
    if (groups.length === 0) return undefined;
    return { is: 'groups', work, edge: edge ?? 'beginning', groups };
  });

function skipChain(c: Cursor, work: 'bo' | 'co'): void {
  takes(c, ',', ';');
  takes(c, 'and', 'then');
  takes(c, 'then');
  if (work === 'bo') takeBindOff(c);
  else takeCastOn(c);
}

interface Place {
  readonly edge: EdgeName;
  readonly beats: readonly Beat[];
}

/** 'at beg of next 2 rows', 'at neck edge', 'at each side', said before or after the count. */
const readGroupsPlace = (c: Cursor): Place | undefined =>
  attempt(c, () => {
    const when = readBeatsBefore(c);
    const edge = readEdgeOf(c);
    if (edge === undefined) return undefined;
    return { edge, beats: when.length > 0 ? when : readBeats(c) };
  });

function readGroup(
  c: Cursor,
  before: Place | undefined,
): { groups: GroupSaid[]; place: Place | undefined } | undefined {
  takes(c, 'the');
  takes(c, 'next', 'first', 'rem');
  const n = takeNumber(c);
  if (n === undefined || !Number.isSafeInteger(n)) return undefined;
  takes(c, 'more', 'new');
  takePhrase(c, STS);
  takes(c, 'in');
  takeAnyPhrase(c, 'patt|rib', 'loosely', 'each');
  const place = readGroupsPlace(c);
  const inline = place ? undefined : readInline(c);
  takes(c, ',');
  const times = place && place.beats.length === 0 ? readTimes(c) : undefined;
  if (!times && took(c, ',')) c.at -= 1;
  const used = place ?? (before && before.beats.length > 0 && inline === undefined ? before : undefined);
  const beats = inline ?? used?.beats ?? [];
  if (place === undefined && inline === undefined && before === undefined) return undefined;
  return { groups: groupsOf(n, used?.edge ?? before?.edge ?? 'beginning', beats, times?.n), place };
}

/** 'bo 4 sts once, 3 sts twice': times without a place. */
function readInline(c: Cursor): Beat[] | undefined {
  takes(c, 'every');
  const other = takeAnyPhrase(c, 'other row', 'alt row');
  if (!other && took(c, 'every')) c.at -= 1;
  const times = readTimes(c);
  return times ? [{ every: 2, times: times.n }] : other ? [{ every: 2, times: 1 }] : undefined;
}

function groupsOf(
  stitches: number,
  edge: EdgeName,
  beats: readonly Beat[],
  times: number | undefined,
): GroupSaid[] {
  if (beats.length === 0)
    return [{ stitches, rows: (times ?? 1) * (edge === 'both' ? 2 : 1), every: edge === 'both' ? 1 : 2 }];
  return beats.map((beat) => ({
    stitches,
    rows: (beat.times ?? 1) * (edge === 'both' ? 2 : 1),
    every: edge === 'both' ? 1 : beat.every,
    ...(beat.toCount === undefined ? {} : { toCount: beat.toCount }),
    ...(beat.side === undefined ? {} : { side: beat.side }),
  }));
}
