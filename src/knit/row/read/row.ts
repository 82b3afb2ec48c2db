import { type Fault, fault, ok, type Result, refuse } from '../../fault.ts';
import type { StitchName } from '../../stitch.ts';
import { openLast, readSpecial, skipPurpose } from './between.ts';
import { takeColourBehind, takeColourInRow, takeColoursAsSet } from './colour.ts';
import {
  atEnd,
  attempt,
  bracketExpected,
  type Cursor,
  expected,
  isWord,
  peek,
  peekWord,
  sees,
  seesPhrase,
  takes,
  takeTo,
  takeWhole,
} from './cursor.ts';
import { readGoal, readTimes } from './goal.ts';
import { type GroupEnd, readGroupEnd, readInOneStitch } from './group-end.ts';
import { inOneStitch } from './in-one-stitch.ts';
import { means } from './meanings.ts';
import { END, type Goal, type Item, TO_END } from './notation.ts';
import type { ReadItem } from './plain.ts';
import { type Level, readRepeat, readStar, STARS } from './repeat.ts';
import { ribOver } from './rib-over.ts';
import { shapesEnds } from './shaped-ends.ts';
import { readStitch } from './stitch.ts';

/** Brackets within brackets beyond this are a slip of the keyboard, not knitting. */
const DEEPEST = 12;

const CLOSING: Readonly<Record<string, string>> = { '(': ')', '[': ']', '{': '}' };

/** Reads a row up to the end of the cursor. */
export function readRow(c: Cursor): Result<Item[]> {
  // 'knit back, slipping the first st': not the last one
  const slips = c.tokens.findIndex(({ text }, i) => i > c.at && i < c.end && text === 'slipping');
  if (slips > 0 && seesPhrase({ ...c, at: slips }, 'sl the? first|1 st'))
    return refuse(expected({ ...c, at: slips }, 'stitch or repeat expected'));
  const whole = sees(c, 'k', 'p') && peekWord(c, 1) === ',';
  const items = readLevel(c, undefined, 0);
  if (!items.ok) return items;
  if (items.value.length === 0) return refuse(expected(c, 'stitch expected'));
  // 'k to end, work back': another row, and no part of this one
  const ended = items.value.findIndex((item) => 'goal' in item && item.goal === TO_END);
  if (ended >= 0 && items.value.slice(ended + 1).some((item) => 'goal' in item))
    return refuse(expected(c, 'stitch or repeat expected'));
  // 'slip these sts to a spare needle' by itself: what is on the needle
  if (items.value.length === 1 && items.value[0]?.is === 'parting')
    return ok([{ is: 'stitches to', work: 'hold', goal: END }]);
  return ok(spreadOver(items.value, whole));
}

/**
 * 'knit across, inc 4 sts evenly', 'purl, dec 4 evenly': the changes lie in the row that is knitted or purled.
 * `whole`: it begins with a stitch that has no number; 'k1, inc 4 evenly' is one stitch and then the rest.
 */
export function spreadOver(items: Item[], whole: boolean): Item[] {
  const [first, second] = items;
  // 'knit, casting on 2 sts over those bound off'
  if (whole && first?.is === 'stitches' && second?.is === 'stitches' && second.over)
    return [{ is: 'stitches to', work: first.work, goal: END }, ...items.slice(1)];
  const nth = second?.is === 'group to' && second.nth;
  if (items.length !== 2 || (second?.is !== 'evenly' && !nth)) return items;
  if (first?.is !== 'stitches to' && !(whole && first?.is === 'stitches')) return items;
  if (first.work !== 'k' && first.work !== 'p') return nth ? items : [second];
  if (second.is === 'evenly') return [{ ...second, work: first.work }];
  const [plain, ...rest] = second.items;
  return [{ ...second, items: [{ ...(plain as typeof first), work: first.work }, ...rest] }];
}

function readLevel(c: Cursor, close: string | undefined, depth: number): Result<Item[]> {
  if (depth > DEEPEST) {
    return refuse(fault('nested too deep', { depth }, { line: peek(c)?.line ?? 1 }));
  }
  const level: Level = { items: [], star: -1, starred: -1, close };
  while (!atEnd(c)) {
    if (close !== undefined && takes(c, close)) return ok(level.items);
    const trouble = readOne(c, level, depth);
    if (trouble) return refuse(trouble);
  }
  if (close !== undefined) return refuse(bracketExpected(c, close));
  return ok(level.items);
}

function readOne(c: Cursor, level: Level, depth: number): Fault | undefined {
  const text = peekWord(c);
  if (means(text, 'takes up wraps') && takeWraps(c)) {
    level.items.push({ is: 'stitches', work: 'picking up each wrap', times: 1 });
    return undefined;
  }
  if (text === '(' && skipUnworked(c)) return undefined;
  if (STARS.includes(text)) return readStar(c, level);
  if (CLOSING[text] !== undefined) return readBrackets(c, level, depth, CLOSING[text] as string);
  if (text === 'rep' || text === 'repeating' || seesPhrase(c, 'cont in? this way|manner'))
    return readRepeat(c, level);
  if (means(text, 'special in a row')) {
    const special = readSpecial(c, level);
    if (special) return undefined;
  }
  if (text === 'for' && skipPurpose(c)) return undefined;
  if (depth === 0 && level.items.length > 0 && means(text, 'changes the count') && shapesEnds(c, level))
    return undefined;
  if (takeColoursAsSet(c) || takeColourInRow(c)) return undefined;
  if (sees(c, 'over', ',', 'rib') && ribOver(c, level)) return undefined;
  const read = readStitch(c);
  // 'turn, leaving rem sts unworked' says it twice
  const left = read?.item.is === 'stitches to' && read.item.work === 'unworked';
  if (left && level.items.at(-1)?.is === 'turn') return undefined;
  if (read) return addStitch(c, level, read);
  if (peek(c)?.kind === 'number') return asBefore(c, level) ? undefined : readTimesFirst(c, level, depth);
  if (means(text, 'says nothing between stitches')) {
    if (means(text, 'end of a row')) openLast(level);
    if (text === ';' || text === 'then') level.parted = level.items.length;
    c.at += 1;
    return undefined;
  }
  return expected(c, 'stitch or repeat expected');
}

/** 'k to end, working wraps tog with wrapped sts': changes no count. */
const takeWraps = (c: Cursor): boolean =>
  attempt(c, () => {
    takeTo(c, c.at + 1);
    takes(c, 'up');
    takes(c, 'all', 'the', 'each', 'every');
    takes(c, 'rem');
    if (!takes(c, 'wraps', 'wrap')) return false;
    while (!atEnd(c) && !sees(c, ',', '.', ';', ']')) takeTo(c, c.at + 1);
    return true;
  });

/** 'k to last st (leave last st unworked), turn' says it twice. */
const skipUnworked = (c: Cursor): boolean =>
  attempt(c, () => {
    takes(c, '(');
    if (!takes(c, 'leave', 'leaving')) return false;
    while (!atEnd(c) && !sees(c, ')', ',', '.')) takeTo(c, c.at + 1);
    return isWord(c.tokens[c.at - 1], 'unworked') && takes(c, ')');
  });

function addStitch(c: Cursor, level: Level, { item, bare }: ReadItem): Fault | undefined {
  if (readInOneStitch(c)) return mergeIntoOne(level, item);
  if (item.is === 'stitches') {
    const times = readTimes(c);
    if (times) {
      level.items.push({ ...item, times: item.times * times.n });
      return undefined;
    }
    if (takeColourBehind(c)) {
      level.items.push(item);
      return undefined;
    }
    if (bare && (endsRow(c, level) || takesColours(c, level))) {
      level.items.push({ is: 'stitches to', work: item.work, goal: END });
      return undefined;
    }
    // 'k 1, p 1, across row'
    const all = seesPhrase(c, ', across the? row|all') && takes(c, ',');
    const goal = readGoal(c);
    if (goal) return addWithGoal(level, item, goal, all);
  }
  level.items.push(item);
  return undefined;
}

const isBare = (work: StitchName): boolean => work === 'k' || work === 'p' || work === 'sl';

/** A bare 'k' is the whole rest of the row where nothing follows it. */
function endsRow(c: Cursor, level: Level): boolean {
  if (level.close !== undefined || level.star >= 0) return false;
  let i = c.at;
  while (i < c.end && isWord(c.tokens[i], '.', ',', ';', ':', 'then', 'and')) i += 1;
  return i >= c.end;
}

/** 'P, working A over A and B over B': a bare 'p' is the whole row here as well. */
const takesColours = (c: Cursor, level: Level): boolean =>
  level.close === undefined && level.star < 0 && takeColoursAsSet(c);

/** 'k1, p1 to end': what came before is repeated with it, and all of 'k2, k2tog, across row'; 'k2, k2tog to end' repeats the last only. */
function addWithGoal(
  level: Level,
  item: Extract<Item, { is: 'stitches' }>,
  goal: Goal,
  all: boolean,
): undefined {
  // 'k 4; p 1, k 1 across': what is repeated begins behind the semicolon
  const { parted = 0 } = level;
  const from = parted < level.items.length ? parted : 0;
  const before = level.items.slice(from);
  const plainOnly = isBare(item.work) && before.every((one) => one.is === 'stitches' && isBare(one.work));
  if (level.items.length > 0 && level.star < 0 && (all || plainOnly)) {
    const inner = [...level.items.splice(from), item];
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
  let from = level.items.length;
  while (from > level.star && isLoop(level.items[from - 1])) from -= 1;
  const inner = [...level.items.splice(from), last];
  const one = inOneStitch(inner);
  if (one) level.items.push({ is: 'stitches', work: one, times: 1 });
  else level.items.push(...inner);
  return undefined;
}

const isLoop = (item: Item | undefined): boolean =>
  item?.is === 'stitches' && item.times === 1 && ['k', 'p', 'yo'].includes(item.work);

function readBrackets(c: Cursor, level: Level, depth: number, close: string): Fault | undefined {
  c.at += 1;
  const inner = readLevel(c, close, depth + 1);
  if (!inner.ok) return inner.faults[0];
  addGroup(level, inner.value, readGroupEnd(c));
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

/** 'K 2 white, | 4 blue': worked as the ones before. */
const asBefore = (c: Cursor, level: Level): boolean =>
  attempt(c, () => {
    const times = takeWhole(c);
    const last = level.items.at(-1);
    if (times === undefined || last?.is !== 'stitches' || !isBare(last.work) || !takeColourBehind(c))
      return false;
    level.items.push({ is: 'stitches', work: last.work, times });
    return true;
  });

/** '3 × [k2, p2]', '5 times (k1, p1)'. */
function readTimesFirst(c: Cursor, level: Level, depth: number): Fault | undefined {
  const opened = readTimesAndBracket(c);
  if (!opened) return expected(c, 'stitch or repeat expected');
  const inner = readLevel(c, opened.close, depth + 1);
  if (!inner.ok) return inner.faults[0];
  level.items.push({ is: 'group', items: inner.value, times: opened.times });
  return undefined;
}

const readTimesAndBracket = (c: Cursor): { times: number; close: string } | undefined =>
  attempt(c, () => {
    const times = takeWhole(c);
    if (times === undefined || !takes(c, 'x', 'time')) return undefined;
    takes(c, ',', ':');
    const close = CLOSING[peekWord(c)];
    if (close === undefined) return undefined;
    c.at += 1;
    return { times, close };
  });
