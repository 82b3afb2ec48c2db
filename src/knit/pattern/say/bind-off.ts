import { takeBindOff } from '../../row/read/bind-off.ts';
import { takeRest } from '../../row/read/counted-edge.ts';
import {
  attempt,
  type Cursor,
  isOneOf,
  isWord,
  peekNumber,
  peekWord,
  sees,
  seesPhrase,
  takeAnyPhrase,
  takeNumber,
  takePhrase,
  takes,
} from '../../row/read/cursor.ts';
import { STS } from '../../row/read/goal.ts';
import type { Statement } from './statement.ts';

/** 'Bind off.', 'bind off rem 24 sts in pattern', 'cast off all sts loosely', 'bind off 24 sts'. */
export function readBindOff(c: Cursor): Statement | undefined {
  const rest = readRestFirst(c);
  if (rest) return rest;
  // said before anything else it says nothing, and is passed over
  takes(c, 'loosely');
  return attempt(c, () => {
    // 'then, on next row, cast off all sts'
    takeAnyPhrase(c, 'on|in the? next row ,?', 'finish|end by');
    if (!takeBindOff(c)) return undefined;
    skipHow(c);
    takePhrase(c, 'the? next');
    const all = takeRest(c) || takes(c, 'rem', 'all', 'the', 'these');
    if (all) takes(c, 'rem', 'the');
    const stitches = peekNumber(c);
    if (stitches !== undefined) c.at += 1;
    // 'bind off 3, 2, 1 sts' are several groups
    if (!takePhrase(c, STS) && sees(c, ',') && peekNumber(c, 1) !== undefined) return undefined;
    takeAnyPhrase(
      c,
      'for back|front of? neck',
      'for|of neck|back|shoulder|sleeve',
      'for|on|at? each side|shoulder',
    );
    skipHow(c);
    takeAnyPhrase(c, 'at same gauge', 'in 1 row', 'on next row');
    skipHow(c);
    const done =
      c.at >= c.end ||
      isOneOf(peekWord(c), '. , ; ( [ : -') ||
      seesPhrase(c, 'and on the? rem|first|last') ||
      seesPhrase(c, 'and work|complete|finish the? other|second|opposite side|shoulder|half|front') ||
      seesPhrase(c, 'and weave|darn|fasten|break|cut|sew|leave|draw|finish');
    const more =
      isOneOf(peekWord(c), ', .') &&
      isWord(
        c.tokens[c.at + 1],
        'k',
        'p',
        'work',
        'patt',
        'sl',
        'dec',
        'ssk',
        'inc',
        'rib',
        'finish',
        'complete',
      );
    if (!done || (more && !all)) return undefined;
    return {
      is: 'bind off',
      ...(stitches === undefined ? {} : { stitches }),
      ...(all ? { rest: true } : {}),
    };
  });
}

/** 'rem 22 sts bind off for neck': what is bound off is said first. */
const readRestFirst = (c: Cursor): Statement | undefined =>
  attempt(c, () => {
    takes(c, 'the');
    if (!takes(c, 'rem')) return undefined;
    const stitches = takeNumber(c);
    if (!takePhrase(c, STS)) return undefined;
    takes(c, ',');
    if (!takeBindOff(c)) return undefined;
    takeAnyPhrase(c, 'for the? back? of? neck|shoulder');
    skipHow(c);
    skipHow(c);
    if (c.at < c.end && !isOneOf(peekWord(c), '. , ;')) return undefined;
    return { is: 'bind off', rest: true, ...(stitches === undefined ? {} : { stitches }) };
  });

/** '… then rem 13 sts' behind groups that were bound off. */
export const readRestElided = (c: Cursor): Statement | undefined =>
  attempt(c, () => {
    takes(c, 'the');
    if (!takes(c, 'rem')) return undefined;
    const stitches = takeNumber(c);
    if (!takePhrase(c, STS)) return undefined;
    skipHow(c);
    if (c.at < c.end && !isOneOf(peekWord(c), '. ;')) return undefined;
    return { is: 'bind off', rest: true, ...(stitches === undefined ? {} : { stitches }) };
  });

/** 'using a larger needle', 'with a stretchy bind-off': up to its end, where no stitches are counted. */
const takeWith = (c: Cursor): boolean =>
  attempt(c, () => {
    takes(c, 'loosely', ',');
    if (!takes(c, 'using', 'with')) return false;
    for (let far = 0; far < 9 && c.at < c.end && !isOneOf(peekWord(c), '. ; ('); far += 1) {
      if (peekNumber(c) !== undefined || isOneOf(peekWord(c), 'st sts row rows : , rs ws right wrong'))
        return false;
      c.at += 1;
    }
    return (
      isWord(c.tokens[c.at - 1], 'needle', 'off', 'method', 'hook') &&
      (c.at >= c.end || isOneOf(peekWord(c), '. ; ('))
    );
  });

function skipHow(c: Cursor): void {
  if (takeWith(c)) return;
  takeAnyPhrase(
    c,
    'loosely in patt|rib',
    'loosely? ,? k|knitting the? k sts? ,|;|and? p|purling the? p sts?',
    'loosely? k as k and p as p',
    'in garter|moss st',
    'in patt|rib|knitting|k|p',
    'kwise|pwise|ribwise',
    'as if to k|p',
    'very? loosely',
    'evenly',
    'loose|firmly',
    'on rs|ws',
    'on right|wrong side',
  );
}
