import {
  ahead,
  type Cursor,
  isWord,
  sees,
  seesPhrase,
  takeAnyPhrase,
  takeNumber,
  takePhrase,
  takes,
  takeTo,
} from '../../row/read/cursor.ts';
import { means } from '../../row/read/meanings.ts';
import { readNeedle } from './needle.ts';
import type { Add } from './statement.ts';

/** Farther into a sentence nothing is cast on for the first time. */
const FARTHEST = 60;

/**
 * Where a sentence casts on for the first time, whatever stands before: needle, colour, edge ('Starting at lower edge,
 * with 4 mm needles and yarn A, cast on 80 sts'). A sentence that works something before that casts on within a row.
 */
export function castOnAhead(c: Cursor): number | undefined {
  for (let i = c.at; i < Math.min(c.end, c.at + FARTHEST); i += 1) {
    if (castsOn({ ...c, at: i })) return i;
    if (means(c.tokens[i]?.word, 'works before a cast-on')) return undefined;
  }
  return undefined;
}

/** The same, whatever it works before that: nobody passes it over. */
export function castsOnSomewhere(c: Cursor): boolean {
  for (let i = c.at; i < Math.min(c.end, c.at + FARTHEST); i += 1) if (castsOn({ ...c, at: i })) return true;
  return false;
}

const castsOn = (c: Cursor): boolean =>
  ahead(c, () => {
    takes(c, 'loosely');
    if (!takeAnyPhrase(c, 'cast -? on', 'co')) return false;
    takes(c, 'loosely', 'on', 'a');
    takePhrase(c, 'total of');
    const n = takeNumber(c);
    if (n === undefined || !Number.isSafeInteger(n) || takes(c, 'more', 'additional', 'new', 'extra'))
      return false;
    if (sees(c, 'mm', 'cm', 'inch')) return false;
    takePhrase(c, 'st|sts');
    return !seesPhrase(c, 'at|over|on each|both|either') && !isWord(c.tokens[c.at], 'each');
  });

/** Passes over what stands before the cast-on, but for the needles. */
export function takeFrontDoor(c: Cursor, add: Add): void {
  const at = castOnAhead(c);
  if (at === undefined || at === c.at) return;
  while (c.at < at) {
    const needle = { ...c, end: at };
    const said = readNeedle(needle);
    if (said) add(said, c.at);
    takeTo(c, said ? needle.at : c.at + 1);
  }
}
