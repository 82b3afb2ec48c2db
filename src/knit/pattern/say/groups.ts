import { takeBindOff } from '../../row/read/bind-off.ts';
import { takeCastOn } from '../../row/read/cast-on.ts';
import {
  ahead,
  attempt,
  type Cursor,
  isOneOf,
  peekNumber,
  peekWord,
  sees,
  seesPhrase,
  takeAnyPhrase,
  takeNumber,
  takePhrase,
  takes,
  takeWhole,
} from '../../row/read/cursor.ts';
import { readTimes, STS } from '../../row/read/goal.ts';
import { inThoseRows, readPlaceBehind } from './groups-in-rows.ts';
import type { Beat, EdgeName } from './how-far.ts';
import { readBeats, readBeatsBefore, readTimesBehind } from './phrase/beats.ts';
import { readEdgeOf } from './phrase/edge.ts';
import type { GroupSaid, Statement } from './statement.ts';

/** 'bind off 5 sts at beg of next 2 rows, then 7 sts at beg of foll 2 rows', '… at neck edge every other row 3 times'. */
export const readGroups = (c: Cursor): Statement | undefined =>
  attempt(c, () => {
    // 'on next row, starting at front edge, bind off 10 sts'
    attempt(
      c,
      () => takePhrase(c, 'on|in the? next row ,') && seesPhrase(c, 'starting|beg|commencing at|on'),
    );
    if (seesPhrase(c, 'starting|beg|commencing at|on')) takes(c, 'starting', 'beg', 'commencing');
    // 'for armholes, bind off 5 sts at beg of next 2 rows'
    takeFor(c);
    takes(c, ',');
    const lead = readGroupsPlace(c);
    takes(c, ',', ':');
    const work = takeBindOff(c) ? 'bo' : takeCastOn(c) ? 'co' : undefined;
    if (work === undefined) return undefined;
    const byPurpose = lead === undefined ? readByPurpose(c, work) : undefined;
    if (byPurpose) return byPurpose;
    // 'bind off shoulder at armhole edge'
    if (!takeFor(c) && seesPhrase(c, 'the? shoulder at')) takePhrase(c, 'the? shoulder');
    // 'at neck edge, bind off every other row 4 sts once, …'
    const rhythm = lead?.beats.length === 0 ? readBeatsBefore(c) : [];
    const before = lead && rhythm.length > 0 ? { ...lead, beats: rhythm } : (lead ?? readPlaceFirst(c));
    const groups: GroupSaid[] = [];
    let edge: EdgeName | undefined = before?.edge;
    while (groups.length < 30) {
      const next = attempt(c, () => {
        const anew = groups.length > 0 && (skipChain(c, work) || sees(c, 'rem'));
        const one = readGroup(c, before, groups.length > 0 ? edge : undefined, anew);
        if (one?.place === undefined && before === undefined && groups.length === 0) return undefined;
        return isAtOther(edge, one?.place?.edge) ? undefined : one;
      });
      if (next === undefined) break;
      edge = edge ?? next.place?.edge;
      groups.push(...next.groups);
    }
    if (groups.length === 0 || edge === undefined) return undefined;
    takeFor(c);
    skipForEach(c, groups);
    if (groups.length === 1 && groups[0]?.rows === 1) takeRestOfRow(c);
    const inRows = inThoseRows(before, groups);
    return inRows && { is: 'groups', work, edge, groups: inRows };
  });

/** 'Bind off 6 sts for armhole.': of a piece with one armhole the edge is known, though nobody says where. */
const readByPurpose = (c: Cursor, work: 'bo' | 'co'): Statement | undefined =>
  attempt(c, () => {
    const stitches = takeWhole(c);
    if (work !== 'bo' || stitches === undefined || !takePhrase(c, STS)) return undefined;
    const neck = takePhrase(c, 'for the? neck edge?');
    if (!neck && !takePhrase(c, 'for the? armhole|underarm')) return undefined;
    if (c.at < c.end && !isOneOf(peekWord(c), '. ;')) return undefined;
    return {
      is: 'groups',
      work,
      edge: neck ? 'neck' : 'armhole',
      groups: [{ stitches, rows: 1, every: 2 }],
      byPurpose: true,
    };
  });

/** 'At neck edge, bind off 5 sts, work to end of row': the rest of the same row. */
const takeRestOfRow = (c: Cursor): boolean =>
  attempt(
    c,
    () =>
      takeAnyPhrase(
        c,
        ',? and? k|p|work|patt|cont in? patt? across the? row?',
        ',? and? k|p|work|patt in? patt? to the? end of? the? row?',
      ) &&
      (c.at >= c.end || isOneOf(peekWord(c), '. ; ,')),
  );

/** 'for the armhole', 'for each shoulder': wherever it is said, the edge says it too. */
const takeFor = (c: Cursor): boolean =>
  takeAnyPhrase(
    c,
    'for the? armhole|underarm|shoulder|neck|raglan',
    'for back|front of? neck',
    'for each|first|second shoulder',
    'for the? sleeve|sleeves',
  );

/** 'bind off 8 sts at beg of next 6 rows (24 sts for each shoulder)': what is bound off, and none that are left. */
const skipForEach = (c: Cursor, groups: readonly GroupSaid[]): boolean =>
  attempt(c, () => {
    const all = groups.reduce((sum, { stitches, rows }) => sum + stitches * rows, 0);
    return takes(c, '(') && 2 * (takeWhole(c) ?? 0) === all && takePhrase(c, 'sts? for|on each shoulder )');
  });

/** Groups of one instruction lie at one edge. */
const isAtOther = (edge: EdgeName | undefined, next: EdgeName | undefined): boolean =>
  edge !== undefined && next !== undefined && next !== edge && next !== 'same';

const skipChain = (c: Cursor, work: 'bo' | 'co'): boolean => {
  takes(c, ',', ';');
  takes(c, 'and', 'then');
  takes(c, 'then');
  return work === 'bo' ? takeBindOff(c) : takeCastOn(c);
};

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
    if (seesPhrase(c, ', in|on|at every|each')) takes(c, ',');
    // 'at armhole edge, at the beg of next row'
    if (edge !== 'beginning' && edge !== 'end')
      attempt(c, () => takePhrase(c, 'at the? beg of') && sees(c, 'the', 'next', 'every', 'each'));
    const beats = when.length > 0 ? when : readBeats(c);
    if (beats.some(({ everyMm }) => everyMm)) return undefined;
    // 'at beg of every row at both sides'
    const sides = edge === 'beginning' && beats[0]?.every === 1 && beats[0].times === undefined;
    if (sides && attempt(c, () => readEdgeOf(c) === 'both')) return { edge: 'both', beats: [] };
    const named =
      edge === 'beginning' && beats.length === 1 ? readPlaceBehind(c, beats[0]?.times) : undefined;
    return { edge: named ?? edge, beats };
  });

/** 'bind off | at each side every other row: 3 sts once, 2 sts twice'. */
const readPlaceFirst = (c: Cursor): Place | undefined =>
  attempt(c, () => {
    const place = readGroupsPlace(c);
    takeFor(c);
    takes(c, ':', ',', '-');
    return peekNumber(c) === undefined ? undefined : place;
  });

export function readGroup(
  c: Cursor,
  before: Place | undefined,
  chained: EdgeName | undefined,
  anew = false,
): { groups: GroupSaid[]; place: Place | undefined } | undefined {
  const early = attempt(c, () => {
    const said = readGroupsPlace(c);
    return said && peekNumber(c) !== undefined ? said : undefined;
  });
  takes(c, 'the');
  takes(c, 'next', 'first', 'rem');
  const often = takeOften(c);
  const n = takeNumber(c);
  if (n === undefined || !Number.isSafeInteger(n)) return undefined;
  const others = readList(c, n);
  takes(c, 'more', 'new');
  takePhrase(c, STS);
  takes(c, 'in');
  takeAnyPhrase(c, 'patt|rib', 'loosely');
  if (before === undefined) takeFor(c);
  // '6 sts 3 times from armhole side'
  const timesEarly = attempt(c, () => {
    const read = readTimes(c);
    return read && ahead(c, () => readGroupsPlace(c)?.beats.length === 0) ? read : undefined;
  });
  if (!seesPhrase(c, 'each armhole|arm|neck|front|underarm|shoulder? side|sides|end|edge')) takes(c, 'each');
  // 'bind off 4 sts, at the beg of next 2 rows'
  attempt(
    c,
    () => takes(c, ',') && ahead(c, () => (readGroupsPlace(c)?.beats.length ?? 0) > 0 && endsHere(c)),
  );
  const place = early ?? readGroupsPlace(c);
  // '… at beg of next row, and 1 st on the next 3 alt rows': at the edge said before
  const rhythm = place || chained === undefined || !sees(c, 'on', 'in') ? [] : readBeats(c);
  const inline = place
    ? undefined
    : rhythm.length > 0
      ? rhythm
      : often
        ? [{ every: 2, times: often }]
        : readInline(c);
  if (inline) attempt(c, () => readEdgeOf(c) === 'same');
  const times =
    timesEarly ?? attempt(c, () => ((place ?? before)?.beats.length === 0 ? readTimesBehind(c) : undefined));
  const used = place ?? (before && before.beats.length > 0 && inline === undefined ? before : undefined);
  const beats = bothSides(c, inline ?? used?.beats ?? []);
  if (place === undefined && inline === undefined && before === undefined) return undefined;
  // 'at beg of next 4 rows 6 sts, bind off 20 sts': not in four rows as well
  const again = before?.beats.some((beat) => beat.times ?? beat.toCount) === true;
  if (anew && place === undefined && inline === undefined && again) return undefined;
  const at = used?.edge ?? before?.edge ?? chained ?? 'beginning';
  if (others.length === 0) return { groups: groupsOf(n, at, beats, times?.n), place };
  const shared = sharedOut(beats, 1 + others.length);
  if (times !== undefined || shared === undefined) return undefined;
  return { groups: [n, ...others].flatMap((stitches) => groupsOf(stitches, at, shared, undefined)), place };
}

export const endsHere = (c: Cursor): boolean => c.at >= c.end || isOneOf(peekWord(c), '. ; , ( and');

/** '2 x 3 sts': how often stands first. */
const takeOften = (c: Cursor): number | undefined =>
  attempt(c, () => {
    const n = takeWhole(c);
    return n !== undefined && takes(c, 'x', 'time') && seesPhrase({ ...c, at: c.at + 1 }, STS)
      ? n
      : undefined;
  });

/** 'bind off 3, 2, 1, 1 sts': one group after the other. Numbers that grow by more may be of sizes. */
function readList(c: Cursor, first: number): number[] {
  const list: number[] = [];
  const next = () =>
    attempt(c, () => {
      const n = takes(c, ',', '-', '/', ...(list.length > 0 ? ['and'] : [])) ? takeWhole(c) : undefined;
      // '3 sts, 2 times'
      return n !== undefined && n <= (list.at(-1) ?? first) + 1 && !sees(c, 'time', 'x') ? n : undefined;
    });
  for (let n = next(); n !== undefined; n = next()) list.push(n);
  return list;
}

/** 'at beg of next 8 rows' of four groups is two rows for each of them, 'every other row' one. */
function sharedOut(beats: readonly Beat[], groups: number): readonly Beat[] | undefined {
  const [only] = beats;
  if (only === undefined) return [];
  if (beats.length > 1 || only.toCount !== undefined || only.until !== undefined) return undefined;
  const { times = groups } = only;
  return times % groups === 0 ? [{ ...only, times: times / groups }] : undefined;
}

/** 'at beg of each row 3 times each side': three of each side. */
const bothSides = (c: Cursor, beats: readonly Beat[]): readonly Beat[] => {
  const [only] = beats;
  if (beats.length !== 1 || only?.every !== 1 || only.times === undefined) return beats;
  return takeAnyPhrase(c, 'at|on? each side|end|edge') ? [{ ...only, times: 2 * only.times }] : beats;
};

/** 'bo 4 sts once, 3 sts twice': times without a place. */
function readInline(c: Cursor): Beat[] | undefined {
  const other = attempt(c, () => {
    takes(c, 'every');
    return takeAnyPhrase(c, 'other row', 'alt row');
  });
  const times = readTimes(c);
  return times ? [{ every: 2, times: times.n }] : other ? [{ every: 2, times: 1 }] : undefined;
}

export function groupsOf(
  stitches: number,
  edge: EdgeName,
  beats: readonly Beat[],
  times: number | undefined,
): GroupSaid[] {
  if (beats.length === 0)
    return [{ stitches, rows: (times ?? 1) * (edge === 'both' ? 2 : 1), every: edge === 'both' ? 1 : 2 }];
  return beats.map((beat) => ({
    stitches,
    // stitches are bound off at the beginning of a row: both ends of the next 2 rows are one of each
    rows: (beat.times ?? 1) * (edge === 'both' && !(beat.every === 1 && (beat.times ?? 1) % 2 === 0) ? 2 : 1),
    every: edge === 'both' ? 1 : beat.every,
    ...(beat.toCount === undefined ? {} : { toCount: beat.toCount }),
    ...(beat.side === undefined ? {} : { side: beat.side }),
  }));
}
