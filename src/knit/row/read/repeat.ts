import type { Fault } from '../../fault.ts';
import {
  attempt,
  type Cursor,
  expected,
  peekWord,
  takeAnyPhrase,
  takePhrase,
  takes,
  takeWhole,
} from './cursor.ts';
import { readGoal, readTimes, type Times } from './goal.ts';
import { END, type Goal, type Item } from './notation.ts';

export const STARS = ['*', '†', '‡', '#', '+'];

export interface Level {
  readonly items: Item[];
  /** index in `items` of the last open star; -1 when none is open */
  star: number;
  /** index of the group that the last pair of stars made */
  starred: number;
  readonly close: string | undefined;
  /** index in `items` behind the last semicolon */
  parted?: number;
}

function takeStars(c: Cursor): boolean {
  if (!STARS.includes(peekWord(c))) return false;
  while (STARS.includes(peekWord(c))) c.at += 1;
  takes(c, 's');
  return true;
}

export function readStar(c: Cursor, level: Level): Fault | undefined {
  takeStars(c);
  if (level.star < 0 || level.star >= level.items.length) {
    level.star = level.items.length;
    return undefined;
  }
  const inner = level.items.splice(level.star);
  level.star = -1;
  level.starred = level.items.length;
  const spec = attempt(c, () => {
    takes(c, ';');
    return readSpec(c, false);
  });
  level.items.push(repeated(inner, spec));
  return undefined;
}

type Spec = { readonly times: number } | { readonly goal: Goal } | { readonly over: number };

/** How often 'rep from *' goes: further times unless 'in all' is said. */
const readSpec = (c: Cursor, further: boolean): Spec | undefined =>
  attempt(c, () => {
    takes(c, ',');
    const times = readTimes(c);
    if (times) return { times: totalOf(times, further) };
    const goal = readGoal(c);
    if (goal) return { goal };
    if (takes(c, 'over', 'across', 'on', 'for')) {
      takes(c, 'the');
      takes(c, 'next', 'first');
      const n = takeWhole(c);
      if (n !== undefined && takePhrase(c, 'st|sts')) return { over: n };
    }
  });

const totalOf = (times: Times, further: boolean): number => (further && !times.total ? times.n + 1 : times.n);

export function repeated(inner: Item[], spec: Spec | undefined): Item {
  if (spec === undefined) return { is: 'group to', items: inner, goal: END };
  if ('times' in spec) return { is: 'group', items: inner, times: spec.times };
  if ('over' in spec) return { is: 'group over', items: inner, stitches: spec.over };
  return { is: 'group to', items: inner, goal: spec.goal };
}

/** 'rep from * to end', 'repeat from * 3 times', 'rep between *s twice', 'rep to last st'. */
export function readRepeat(c: Cursor, level: Level): Fault | undefined {
  if (!takePhrase(c, 'cont in? this way|manner')) c.at += 1;
  takeAnyPhrase(c, 'instructions|directions', 'these|those|the sts|instructions|directions', 'this');
  takes(c, 'from', 'between');
  takeAnyPhrase(c, 'the? first', 'the? 1 st', 'the');
  const starred = takeStars(c) || takes(c, 'stars', 'asterisks');
  if (starred)
    attempt(c, () => {
      takes(c, 'to', 'and', 'through', '-');
      return takeStars(c);
    });
  const inner = repeatedItems(level);
  if (inner.length === 0) return expected(c, 'nothing before the repeat');
  const spec = readSpec(c, true);
  level.starred = level.items.length;
  level.items.push(repeated(inner, spec));
  return undefined;
}

/** What a 'rep' refers to: since the open star, the last starred group once more, or all so far. */
function repeatedItems(level: Level): Item[] {
  if (level.star >= 0 && level.star < level.items.length) {
    const inner = level.items.splice(level.star);
    level.star = -1;
    return inner;
  }
  level.star = -1;
  const last = level.items[level.starred];
  if (last && (last.is === 'group' || last.is === 'group to')) {
    if (level.starred === level.items.length - 1) level.items.pop();
    return [...last.items];
  }
  return level.items.splice(0);
}
