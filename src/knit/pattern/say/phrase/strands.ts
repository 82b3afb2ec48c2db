import { readColourName, YARN } from '../../../row/read/colour.ts';
import {
  ahead,
  attempt,
  type Cursor,
  peek,
  peekNumber,
  sees,
  takes,
  takeTo,
} from '../../../row/read/cursor.ts';
import { wordsIn } from './words-in.ts';

const THREADS = ['strand', 'strands', 'thread', 'threads', 'end', 'ends'];
const YARNS = [...YARN, ...YARN.map((yarn) => `${yarn}s`)];
const BETWEEN = 'of the both a an and & held each one ball balls'.split(' ').concat(THREADS, YARNS);
const HOW = ['tog', 'dbl', 'doubled', 'single', 'singly'];

/** 'with 2 strands held together', 'holding A and B together', 'using yarn double': how many at once, in the text's own words. */
export const readStrands = (c: Cursor): string | undefined =>
  attempt(c, () => {
    if (!takes(c, 'with', 'using', 'use', 'holding', 'hold', 'work', 'k', 'working')) return undefined;
    takes(c, 'with', 'the', 'your');
    const from = c.at;
    let how = false;
    while (c.at < c.end && c.at < from + 14) {
      if (takes(c, ...HOW)) how = true;
      else if (!takesYarn(c)) break;
    }
    const words = c.tokens.slice(from, c.at);
    const threads = words.some(({ text }) => THREADS.includes(text));
    const some = words.some(({ text }) => YARNS.includes(text));
    return threads || (how && (some || words.length > 2)) ? wordsIn(words) : undefined;
  });

function takesYarn(c: Cursor): boolean {
  const first = peek(c);
  if (first && (BETWEEN.includes(first.text) || (peekNumber(c) !== undefined && seesThread(c)))) {
    takeTo(c, c.at + 1);
    return true;
  }
  return readColourName(c) !== undefined;
}

const seesThread = (c: Cursor): boolean =>
  ahead(c, () => {
    takeTo(c, c.at + 1);
    return sees(c, ...THREADS) || sees(c, ...HOW);
  });
