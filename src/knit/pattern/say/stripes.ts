import { readColour, readColourName } from '../../row/read/colour.ts';
import {
  ahead,
  attempt,
  type Cursor,
  isOneOf,
  peekNumber,
  peekWord,
  seesPhrase,
  takeAnyPhrase,
  takePhrase,
  takes,
  takeWhole,
  took,
} from '../../row/read/cursor.ts';
import type { Statement, Stripe } from './statement.ts';

const NAME = 'stripe|stripes|striped|striping|color|colour patt|sequence|seq|stripe|stripes sequence|seq?';

/** 'Stripe pattern: 4 rows A, 2 rows B', 'With A, work 6 rows' below it: what later lines work in, or rows that are worked at once. */
export const readStripesListed = (c: Cursor): Statement | undefined =>
  attempt(c, () => {
    takes(c, 'the', 'patt');
    const titled = takeAnyPhrase(c, NAME, 'stripes') && (takes(c, ':', '-', '.') || c.at >= c.end);
    // 'work 4 rows in A' by itself is an order like any other
    const of = readSequence(c, titled || peekNumber(c) !== undefined ? 1 : 2);
    const goesOn = took(c, 'throughout', 'alternately');
    takes(c, '.', ';');
    const whole = c.at >= c.end && (titled || (of !== undefined && !goesOn));
    return whole ? { is: 'stripes', of: of ?? [], listed: titled ? 'anew' : 'on' } : undefined;
  });

/** 'in stripes of 2 rows A and 2 rows B', 'work 4 rows A, 2 rows B throughout', 'in the stripe sequence': how all rows are coloured. */
export const readStripes = (c: Cursor): Statement | undefined => readByName(c) ?? readOpenly(c);

const readByName = (c: Cursor): Statement | undefined =>
  attempt(c, () => {
    takeAnyPhrase(c, 'work|working|cont|continuing|keep|keeping|changing|alternating');
    takeAnyPhrase(c, 'continuity of', 'to');
    takes(c, 'in', 'with', 'and');
    takes(c, 'the', 'this', 'a', 'same');
    if (!takeAnyPhrase(c, NAME, 'stripes|striped|stripe')) return undefined;
    takeAnyPhrase(c, 'as? foll ,|:|-?', 'of|:');
    const of = readSequence(c, 2);
    if (of) return { is: 'stripes', of };
    if (took(c, ':', 'of', 'foll')) return c.at < c.end ? undefined : { is: 'note', about: 'aside' };
    takeTail(c);
    return seesPhrase(c, 'of|:|as|in|st|stocking|garter') ? undefined : { is: 'stripes' };
  });

/** Without a word for stripes only 'throughout' or 'alternately' says that it goes on. */
const readOpenly = (c: Cursor): Statement | undefined =>
  attempt(c, () => {
    takes(c, 'work', 'working', 'alternating');
    takes(c, 'in');
    const of = readSequence(c, 2);
    return of && took(c, 'throughout', 'alternately') ? { is: 'stripes', of } : undefined;
  });

/** '4 rows A, 2 rows B', 'with A, work 4 rows', '2 rows each of A, B and C'; undefined where a yarn is not known, or there are fewer. */
const readSequence = (c: Cursor, least: number): Stripe[] | undefined =>
  attempt(c, () => {
    const of: Stripe[] = [];
    takes(c, '*', '(');
    for (let more = readStripe(c); more && of.length < 60; ) {
      of.push(...more);
      more = attempt(c, () => {
        takeBetween(c);
        return readStripe(c);
      });
    }
    takes(c, ')');
    takeTail(c);
    return new Set(of.map(({ yarn }) => yarn)).size < least ? undefined : of;
  });

const readStripe = (c: Cursor): Stripe[] | undefined =>
  attempt(c, () => {
    const lead = readColour(c);
    if (lead) takes(c, ',');
    takes(c, 'work', ...(lead ? ['k'] : []));
    const rows = takeWhole(c);
    if (rows === undefined || rows < 1 || !takePhrase(c, 'row|rows')) return undefined;
    if (lead) return isOneOf(peekWord(c), ' . , ;') ? [{ rows, yarn: lead }] : undefined;
    const each = takes(c, 'each');
    takes(c, 'in', 'of', 'with');
    takes(c, 'yarn', 'color', 'colour', 'shade');
    const yarns: string[] = [];
    do {
      const yarn = readColourName(c);
      if (yarn === undefined) return undefined;
      yarns.push(yarn);
    } while (each && attempt(c, () => takeBetween(c) && ahead(c, () => readColourName(c)) !== undefined));
    return yarns.map((yarn) => ({ rows, yarn }));
  });

function takeBetween(c: Cursor): boolean {
  const comma = takes(c, ',', ';', '.');
  return takes(c, 'and', 'then') || comma;
}

/** '; rep from * throughout', ', repeating these 6 rows', 'as set'. */
function takeTail(c: Cursor): void {
  attempt(c, () => {
    takeBetween(c);
    if (!takes(c, 'rep', 'repeating')) return false;
    if (takePhrase(c, 'from *')) return !seesPhrase(c, ',? once|twice') && !ahead(c, () => takeWhole(c));
    if (takePhrase(c, 'these|this|last')) takeWhole(c);
    return takeAnyPhrase(c, 'rows', 'sequence|patt', 'throughout');
  });
  takeAnyPhrase(c, 'for|to|form the? stripe|color patt|sequence');
  takeAnyPhrase(c, 'as set|est|before|above', 'correct|going', 'sequence');
  takeAnyPhrase(c, 'throughout', 'alternately');
}
