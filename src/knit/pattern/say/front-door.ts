import { readColourName, YARN } from '../../row/read/colour.ts';
import {
  ahead,
  attempt,
  type Cursor,
  isWord,
  peek,
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
import type { Add, Said } from './statement.ts';
import { readYarn } from './yarn.ts';

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

/** 'Cast 3 sts onto your needle', 'cast 20 stitches on'. */
export const takesCastOnto = (c: Cursor): number | false => {
  const n = takes(c, 'cast', 'cable') ? takeNumber(c) : undefined;
  if (n === undefined || !Number.isSafeInteger(n) || n < 1 || !takePhrase(c, 'st|sts')) return false;
  attempt(c, () => takesYarn(c) && sees(c, 'on', 'onto'));
  return takeAnyPhrase(c, 'on|onto|on to your|the|a? needle', 'onto', 'on') && n;
};

/** '… in the red wool', '… with MC'. */
function takesYarn(c: Cursor): boolean {
  if (!takes(c, 'in', 'with', 'using')) return false;
  for (let far = 0; far < 5 && !sees(c, 'on', 'onto') && c.tokens[c.at]?.kind === 'word'; far += 1)
    takeTo(c, c.at + 1);
  return true;
}

/** 'Cable on 80 stitches' begins a sentence; 'work cable on 12 sts' works them. */
export const takesCableOn = (c: Cursor): boolean => peek(c)?.capital === true && takePhrase(c, 'cable on');

const castsOn = (c: Cursor): boolean =>
  ahead(c, () => {
    takes(c, 'loosely');
    if (attempt(c, () => takesCastOnto(c))) return true;
    if (!takeAnyPhrase(c, 'cast -? on', 'co') && !takesCableOn(c)) return false;
    takes(c, 'loosely', 'on', 'a');
    takePhrase(c, 'total of');
    // a list of sizes that is not understood casts on all the same
    takes(c, '(', '[');
    const n = takeNumber(c);
    if (n === undefined || !Number.isSafeInteger(n) || takes(c, 'more', 'additional', 'new', 'extra'))
      return false;
    if (sees(c, 'mm', 'cm', 'inch')) return false;
    takePhrase(c, 'st|sts');
    return (
      !seesPhrase(c, 'at|over|on each|both|either') && !isWord(c.tokens[c.at], 'each') && !worksAcross(c)
    );
  });

/** 'cast on 12 sts and continue across the remaining 80 sts': in the row that is worked over those. */
export const worksAcross = (c: Cursor): boolean =>
  ahead(c, () => {
    takes(c, ',');
    takes(c, 'and', 'then');
    return takePhrase(c, 'k|p|work|patt|cont in? patt? across|over the? rem|next|other|held');
  });

/**
 * Passes over what stands before the cast-on, but for needles and yarn.
 * @returns whether something is begun, where that is said: 'To make flap, cast on 18 sts' says so, 'For front of neck, cast
 * on 9 sts' says that nothing is, 'then cast on 9 sts' neither
 */
export function takeFrontDoor(c: Cursor, add: Add): Said['begins'] {
  const at = castOnAhead(c);
  if (at === undefined || at === c.at) return undefined;
  const says = c.tokens.slice(c.at, at).some(({ word }) => !means(word, 'joins two orders') && word !== ',');
  const begins = forAnEdge(c) ?? (says ? 'anew' : undefined);
  while (c.at < at) {
    const needle = { ...c, end: at };
    // 'using 4 mm needles and colour A', '… and MC'
    const name = alsoYarn(needle);
    const said = name ? ({ is: 'yarn', name } as const) : (readNeedle(needle) ?? readYarn(needle));
    if (said) add(said, c.at);
    takeTo(c, said ? needle.at : c.at + 1);
  }
  return begins;
}

/** 'For front of neck, …': stitches more on a piece that has them. */
const forAnEdge = (c: Cursor): Said['begins'] =>
  ahead(c, () => {
    if (!takes(c, 'for')) return undefined;
    takeAnyPhrase(c, 'the? front|back of? the?', 'the');
    const edge = takes(c, 'neck', 'neckline') ? 'at neck' : 'at armhole';
    if (edge === 'at armhole' && !takes(c, 'armhole', 'underarm')) return undefined;
    return sees(c, ',', 'cast', 'co') ? edge : undefined;
  });

/** 'with 4 mm needles | and MC, …'; behind another yarn it is worked with that one, and is none of its own. */
const alsoYarn = (c: Cursor): string | undefined =>
  attempt(c, () => {
    const needle = isWord(c.tokens[c.at - 1], 'needle', 'mm', ')');
    if (!takes(c, 'and')) return undefined;
    const named = takes(c, ...YARN);
    const name = readColourName(c);
    return named || (needle && (c.at >= c.end || sees(c, ','))) ? name : undefined;
  });
