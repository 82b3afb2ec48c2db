import { attempt, type Cursor, sees, takeAnyPhrase, takes } from '../../row/read/cursor.ts';
import { takeFirst } from './phrase/ordinal.ts';
import type { Statement } from './statement.ts';

const MANNER = [
  'kwise|pwise',
  'k|p -? wise',
  'as if? to k|p',
  'wyib',
  'with yarn|wool in|at back of? work?',
  'wyif',
  'with yarn|wool in|at front of? work?',
];

const EVERY_ROW = 'at? the? beg? of|on|in|at every|each|all row|rows';

/** 'Always slip the first st', 'always k the first st', 'sl first st of every row purlwise and k the last': from here on every row begins so. */
export const readSlips = (c: Cursor): Statement | undefined =>
  attempt(c, () => {
    takes(c, '(');
    const end = attempt(c, () => {
      const last = readLastStitch(c);
      return takeAnyPhrase(c, 'at the? end of every|each row') ? last : undefined;
    });
    if (end) return c.at < c.end && !sees(c, '.', ';', ')') ? undefined : { is: 'slips', last: end };
    const always = takes(c, 'always');
    const knits = always && takes(c, 'k');
    const told = !knits && !takes(c, 'sl');
    if (told && !takes(c, 'the') && !takeFirst({ ...c })) return undefined;
    takes(c, 'the');
    if (!takeFirst(c) || !takes(c, 'st')) return undefined;
    let front = skipManner(c);
    const every = takeAnyPhrase(c, EVERY_ROW);
    if (told && !takeAnyPhrase(c, 'is|should|must always? be? slipped')) return undefined;
    front = skipManner(c) || front;
    const last = readLastStitch(c);
    const all = takeAnyPhrase(c, EVERY_ROW) || every || always;
    takes(c, 'throughout');
    takes(c, ')');
    if (!all || (c.at < c.end && !sees(c, '.', ',', ';'))) return undefined;
    return {
      is: 'slips',
      work: knits ? 'k' : front ? 'sl wyif' : 'sl',
      ...(last === undefined ? {} : { last }),
    };
  });

/** Whether the yarn is to lie in front. */
function skipManner(c: Cursor): boolean {
  let front = false;
  for (let i = 0; i < 2; i += 1) {
    takes(c, ',');
    if (!takeAnyPhrase(c, ...MANNER)) break;
    front ||= c.tokens.slice(c.at - 4, c.at).some(({ word }) => word === 'wyif' || word === 'front');
  }
  return front;
}

/** '… and k the last st'. */
const readLastStitch = (c: Cursor): 'k' | 'p' | undefined =>
  attempt(c, () => {
    takes(c, ',');
    takes(c, 'and');
    const work = takes(c, 'k') ? 'k' : takes(c, 'p') ? 'p' : undefined;
    return work && takeAnyPhrase(c, 'the? last st') ? work : undefined;
  });
