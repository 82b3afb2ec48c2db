import { type Fault, fault, ok, type Result, refuse } from '../fault.ts';
import type { StitchName } from '../stitch.ts';
import {
  atEnd,
  type Cursor,
  expected,
  peek,
  peekText,
  sees,
  takeAnyPhrase,
  takeNumber,
  takePhrase,
  takes,
} from './cursor.ts';
import { END, type Goal, type Item, takenBy } from './notation.ts';
import { readGoal, readTimes, type Times } from './read-goal.ts';
import { type GroupEnd, readGroupEnd, readInOneStitch } from './read-group-end.ts';
import { readStitch } from './read-stitch.ts';

/** Brackets within brackets beyond this are a slip of the keyboard, not knitting. */
const DEEPEST = 12;

const CLOSING: Readonly<Record<string, string>> = { '(': ')', '[': ']', '{': '}' };
const STARS = ['*', '†', '‡', '#', '+'];
/** What may stand between two stitches and says nothing. */
const BETWEEN = new Set([
  ',',
  ';',
  ':',
  '.',
  '-',
  '/',
  'and',
  '&',
  'then',
  'end',
  'ending',
  'ends',
  'with',
  'finish',
  'finishing',
  'now',
  'to',
  'loosely',
  'firmly',
  'across',
  'row',
  'by',
  'the',
  'also',
  'again',
  'last',
  'next',
  'sts',
  'st',
  'thus',
  'as',
  'follows',
  'of',
  'is',
  'are',
  '=',
  '!',
  'wyif',
  'wyib',
  'yb',
  'yarn',
  'back',
  'front',
  'bring',
  'turning',
]);

interface Level {
  readonly items: Item[];
  /** index in `items` of the last open star; -1 when none is open */
  star: number;
  /** index of the group that the last pair of stars made */
  starred: number;
  readonly close: string | undefined;
}

/** Reads a row up to the end of the cursor. */
export function readRow(c: Cursor): Result<Item[]> {
  const items = readLevel(c, undefined, 0);
  if (!Array.isArray(items)) return refuse(items);
  if (items.length === 0) return refuse(expected(c, 'a stitch'));
  return ok(spreadOver(items));
}

/** 'knit, inc 4 sts evenly': the increases lie in the row that is knitted. */
function spreadOver(items: Item[]): Item[] {
  const [first, second] = items;
  if (items.length !== 2 || first?.is !== 'stitches to' || second?.is !== 'evenly') return items;
  return first.work === 'k' || first.work === 'p' ? [{ ...second, work: first.work }] : [second];
}

function readLevel(c: Cursor, close: string | undefined, depth: number): Item[] | Fault {
  if (depth > DEEPEST) {
    return fault(
      'nested too deep',
      'Line {line}: brackets stand {depth} deep here.',
      { line: peek(c)?.line ?? 1, depth },
      { line: peek(c)?.line ?? 1 },
    );
  }
  const level: Level = { items: [], star: -1, starred: -1, close };
  while (!atEnd(c)) {
    if (close !== undefined && takes(c, close)) return level.items;
    const trouble = readOne(c, level, depth);
    if (trouble) return trouble;
  }
  if (close !== undefined) return expected(c, `“${close}”`);
  return level.items;
}

function readOne(c: Cursor, level: Level, depth: number): Fault | undefined {
  const text = peekText(c);
  if (STARS.includes(text)) return readStar(c, level);
  if (CLOSING[text] !== undefined) return readBrackets(c, level, depth, CLOSING[text] as string);
  if (text === 'rep' || text === 'repeat' || text === 'rpt' || text === 'repeating')
    return readRepeat(c, level);
  if (SPECIAL.has(text)) {
    const special = readSpecial(c, level);
    if (special) return undefined;
  }
  if (text === 'for' && skipPurpose(c)) return undefined;
  const read = readStitch(c);
  if (read) return addStitch(c, level, read.item, read.said);
  if (peek(c)?.kind === 'number') return readTimesFirst(c, level, depth);
  if (BETWEEN.has(text)) {
    if (/^(end|ending|ends|finish|finishing)$/.test(text)) openLast(level);
    c.at += 1;
    return undefined;
  }
  return expected(c, 'a stitch or a repeat');
}

const SPECIAL = new Set(['join', 'attach', 'add', 'turn', 'turning', 'w', 'wrap', 'end', 'ending', 'last', 'instead']);

const text = (c: Cursor): string => peekText(c);

/** 'join a second ball of yarn' within a row. */
function skipJoin(c: Cursor): boolean {
  for (let i = c.at + 1; i < Math.min(c.end, c.at + 9); i += 1) {
    const word = c.tokens[i]?.text ?? '';
    if (word === ',' || word === ';') break;
    if (/^(yarn|ball|wool|skein)$/.test(word)) {
      c.at = i + 1;
      takeAnyPhrase(c, 'of yarn|wool', 'and');
      return true;
    }
  }
  return false;
}

/** Turns, cut-short last repeats and 'instead of'; whether it was one of them. */
function readSpecial(c: Cursor, level: Level): boolean {
  if (takeAnyPhrase(c, 'turn', 'turning', 'w & t', 'wrap and|& turn', 'wrap next st and turn')) {
    level.items.push({ is: 'turn' });
    return true;
  }
  if (/^(join|attach|add)$/.test(text(c))) return skipJoin(c);
  if (takeAnyPhrase(c, 'end last rep|repeat', 'ending last rep|repeat', 'last rep|repeat')) {
    readLastRepeat(c, level);
    return true;
  }
  if (!takeAnyPhrase(c, 'instead of')) return false;
  readStitch(c);
  return true;
}

/** 'k across for hem', 'bind off 5 sts for underarm': what a row is for says nothing of its stitches. */
function skipPurpose(c: Cursor): boolean {
  let end = c.at + 1;
  while (end < c.end && end - c.at < 7 && !/^[,.;:]$/.test(c.tokens[end]?.text ?? '')) {
    if (c.tokens[end]?.kind !== 'word') return false;
    end += 1;
  }
  c.at = end;
  return true;
}

/** 'rep from * to end, ending k1': the end was not the end. */
function openLast(level: Level): void {
  const last = level.items.at(-1);
  if (last && 'goal' in last && 'left' in last.goal && last.goal.left === 0)
    level.items[level.items.length - 1] = { ...last, goal: END };
}

function addStitch(c: Cursor, level: Level, item: Item, said: boolean): Fault | undefined {
  if (readInOneStitch(c)) return mergeIntoOne(level, item);
  if (item.is === 'stitches') {
    const times = readTimes(c);
    if (times) {
      level.items.push({ ...item, times: item.times * times.n });
      return undefined;
    }
    if (!said && isBare(item.work) && endsRow(c, level)) {
      level.items.push({ is: 'stitches to', work: item.work, goal: END });
      return undefined;
    }
    const goal = readGoal(c);
    if (goal) return addWithGoal(level, item, goal);
  }
  level.items.push(item);
  return undefined;
}

const isBare = (work: StitchName): boolean => work === 'k' || work === 'p' || work === 'sl';

/** A bare 'k' is the whole rest of the row where nothing follows it. */
function endsRow(c: Cursor, level: Level): boolean {
  if (level.close !== undefined || level.star >= 0) return false;
  let i = c.at;
  while (i < c.end && /^[.,;:]$/.test(c.tokens[i]?.text ?? '')) i += 1;
  return i >= c.end;
}

/** 'k1, p1 to end': what came before is repeated with it; 'k2, k2tog to end' repeats the last only. */
function addWithGoal(level: Level, item: Extract<Item, { is: 'stitches' }>, goal: Goal): undefined {
  const plainOnly = level.items.every((one) => one.is === 'stitches' && isBare(one.work));
  if (level.items.length > 0 && level.star < 0 && plainOnly && isBare(item.work)) {
    const inner = [...level.items, item];
    level.items.length = 0;
    level.items.push({ is: 'group to', items: inner, goal });
    return undefined;
  }
  if (level.star >= 0) {
    // '*k2, k2tog to end': the star was never closed
    const inner = [...level.items.splice(level.star), item];
    level.star = -1;
    level.items.push({ is: 'group to', items: inner, goal });
    return undefined;
  }
  level.items.push(
    item.times === 1 ? { is: 'stitches to', work: item.work, goal } : { is: 'group to', items: [item], goal },
  );
  return undefined;
}

/** 'k1, p1 in same st': one stitch holds them all. */
function mergeIntoOne(level: Level, last: Item): Fault | undefined {
  const inner: Item[] = [last];
  while (inner.length < 7) {
    const before = level.items.at(-1);
    if (before?.is !== 'stitches' || before.times !== 1 || !/^(k|p|yo)$/.test(before.work)) break;
    if (level.star >= 0 && level.items.length <= level.star) break;
    inner.unshift(before);
    level.items.pop();
  }
  const one = inOneStitch(inner);
  if (one) level.items.push({ is: 'stitches', work: one, times: 1 });
  else level.items.push(...inner);
  return undefined;
}

const IN_ONE: Readonly<Record<string, StitchName>> = {
  'k p': 'k1 p1',
  'p k': 'k1 p1',
  'k p k': 'k1 p1 k1',
  'p k p': 'p1 k1 p1',
  'k p k p': 'k1 p1 k1 p1',
  'k p k p k': 'k1 p1 k1 p1 k1',
  'k yo k': 'k1 yo k1',
  'k yo k yo k': 'k1 yo k1 yo k1',
};
const BY_LOOPS: readonly (StitchName | undefined)[] = [
  undefined,
  undefined,
  'inc',
  'inc 2',
  'inc 3',
  'inc 4',
];

/** The stitch that '(k1, p1, k1) in next st' is. */
function inOneStitch(items: readonly Item[]): StitchName | undefined {
  const works: string[] = [];
  for (const item of items) {
    if (item.is !== 'stitches' || item.times > 9) return undefined;
    for (let i = 0; i < item.times; i += 1)
      works.push(item.work === 'k tbl' ? 'k' : item.work === 'p tbl' ? 'p' : item.work);
  }
  return IN_ONE[works.join(' ')] ?? BY_LOOPS[works.length];
}

function readBrackets(c: Cursor, level: Level, depth: number, close: string): Fault | undefined {
  c.at += 1;
  const inner = readLevel(c, close, depth + 1);
  if (!Array.isArray(inner)) return inner;
  addGroup(level, inner, readGroupEnd(c));
  return undefined;
}

function addGroup(level: Level, inner: Item[], end: GroupEnd): void {
  if (inner.length === 0) return;
  switch (end.is) {
    case 'times':
      level.items.push({ is: 'group', items: inner, times: end.n });
      return;
    case 'goal':
      level.items.push({ is: 'group to', items: inner, goal: end.goal });
      return;
    case 'over':
      level.items.push({ is: 'group over', items: inner, stitches: end.stitches });
      return;
    case 'in one': {
      const one = inOneStitch(inner);
      if (one) level.items.push({ is: 'stitches', work: one, times: end.times });
      else level.items.push(...inner);
      return;
    }
    default:
      level.items.push(...inner);
  }
}

/** '3 × [k2, p2]', '5 times (k1, p1)'. */
function readTimesFirst(c: Cursor, level: Level, depth: number): Fault | undefined {
  const start = c.at;
  const n = takeNumber(c);
  if (n !== undefined && Number.isSafeInteger(n) && takes(c, 'x', '×', 'times')) {
    takes(c, ',', ':');
    const close = CLOSING[peekText(c)];
    if (close !== undefined) {
      c.at += 1;
      const inner = readLevel(c, close, depth + 1);
      if (!Array.isArray(inner)) return inner;
      level.items.push({ is: 'group', items: inner, times: n });
      return undefined;
    }
  }
  c.at = start;
  return expected(c, 'a stitch or a repeat');
}

function takeStars(c: Cursor): boolean {
  if (!STARS.includes(peekText(c))) return false;
  while (STARS.includes(peekText(c))) c.at += 1;
  takes(c, 's');
  return true;
}

function readStar(c: Cursor, level: Level): Fault | undefined {
  takeStars(c);
  if (level.star < 0 || level.star >= level.items.length) {
    level.star = level.items.length;
    return undefined;
  }
  const inner = level.items.splice(level.star);
  level.star = -1;
  level.starred = level.items.length;
  const comma = c.at;
  takes(c, ',', ';');
  const spec = readSpec(c, false);
  if (spec === undefined) c.at = comma;
  level.items.push(repeated(inner, spec));
  return undefined;
}

type Spec = { readonly times: number } | { readonly goal: Goal } | { readonly over: number };

/** How often 'rep from *' goes: further times unless 'in all' is said. */
function readSpec(c: Cursor, further: boolean): Spec | undefined {
  const start = c.at;
  takes(c, ',');
  const times = readTimes(c);
  if (times) return { times: totalOf(times, further) };
  const goal = readGoal(c);
  if (goal) return { goal };
  if (takes(c, 'over', 'across', 'on', 'for')) {
    takes(c, 'the');
    takes(c, 'next', 'first');
    const n = takeNumber(c);
    if (n !== undefined && Number.isSafeInteger(n) && takePhrase(c, 'st|sts|stitches')) return { over: n };
  }
  c.at = start;
  return undefined;
}

const totalOf = (times: Times, further: boolean): number => (further && !times.total ? times.n + 1 : times.n);

function repeated(inner: Item[], spec: Spec | undefined): Item {
  if (spec === undefined) return { is: 'group to', items: inner, goal: END };
  if ('times' in spec) return { is: 'group', items: inner, times: spec.times };
  if ('over' in spec) return { is: 'group over', items: inner, stitches: spec.over };
  return { is: 'group to', items: inner, goal: spec.goal };
}

/** 'rep from * to end', 'repeat from * 3 times', 'rep between *s twice', 'rep to last st'. */
function readRepeat(c: Cursor, level: Level): Fault | undefined {
  c.at += 1;
  takeAnyPhrase(c, 'instructions|directions', 'these|those|the sts|stitches|instructions|directions', 'this');
  takes(c, 'from', 'between', 'bet', 'btw');
  takes(c, 'first', '1st', 'the');
  const starred = takeStars(c);
  if (starred) {
    const start = c.at;
    takes(c, 'to', 'and', 'through', '-');
    if (!takeStars(c)) c.at = start;
  }
  const inner = repeatedItems(level);
  if (inner.length === 0) return expected(c, 'stitches before the repeat');
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

/** 'ending last rep k1 instead of k3': the last repeat stops before its last stitches. */
function readLastRepeat(c: Cursor, level: Level): void {
  takes(c, 'with', 'as', ',', ':');
  const last = level.items.at(-1);
  if (last?.is === 'group to' && takenBy(last.items.slice(0, -1)) !== undefined)
    level.items.push(...last.items.slice(0, -1));
}
