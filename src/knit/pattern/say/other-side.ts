import { attempt, type Cursor, peek, seesPhrase, takeAnyPhrase, takes } from '../../row/read/cursor.ts';
import type { Statement } from './statement.ts';

const MATCHING = [
  'to match|correspond',
  'to correspond with|to',
  'to match first|1st|other|right|left',
  'the same',
  'in same manner|way',
  'in the same manner|way',
  'same as|to',
  'same',
  'likewise',
  'as for|given|on first',
  'as first|1st|for',
  'as',
  'similarly',
];

/** 'complete other side to match, reversing shaping', 'work second side as first'. */
export const readOtherSide = (c: Cursor): Statement | undefined =>
  attempt(c, () => {
    takes(c, 'then', 'and');
    const verb = takes(c, 'complete', 'work', 'finish', 'k', 'completing', 'make', 'shape');
    takes(c, 'the');
    takes(c, 'rem');
    const other = takes(c, 'other', 'second', '2nd', 'opposite', 'left', 'right') || takeOrdinal(c, 'nd');
    const what = takes(c, 'side', 'shoulder', 'half', 'neck', 'edge', 'sts');
    const matches = takeAnyPhrase(c, ...MATCHING);
    takeAnyPhrase(c, 'for', 'with', 'to');
    takes(c, 'the', 'other');
    const first = takes(c, 'first', '1st', 'one', 'right', 'left') || takeOrdinal(c, 'st');
    const firstWhat = takes(c, 'side', 'shoulder', 'half', 'one');
    if (verb && matches && ((other && what) || (first && firstWhat))) {
      return { is: 'other side', reversing: readReversing(c) };
    }
  });

export const readReversing = (c: Cursor): boolean =>
  attempt(c, () => {
    takes(c, ',', '(', 'but', ';');
    takes(c, 'but', 'with', 'and');
    if (takes(c, 'reversing', 'rev')) {
      takeAnyPhrase(c, 'all', 'the');
      takes(c, 'all', 'shaping', 'shapings', 'shape', 'shaped');
      takes(c, 'shaping', 'shapings');
      takes(c, ')');
      return true;
    }
    if (takeAnyPhrase(c, 'all shaping|shapings rev', 'shaping|shapings rev', 'shaping at opposite edge|side'))
      return true;
    return false;
  });

/** '2nd', '1st': a number with its ending. */
function takeOrdinal(c: Cursor, ending: 'st' | 'nd'): boolean {
  if (peek(c)?.kind !== 'number' || !seesPhrase({ ...c, at: c.at + 1 }, ending)) return false;
  c.at += 2;
  return true;
}
