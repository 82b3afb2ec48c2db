import { takeBindOff } from '../../row/read/bind-off.ts';
import { takeRest } from '../../row/read/counted-edge.ts';
import {
  attempt,
  type Cursor,
  isOneOf,
  isWord,
  peekNumber,
  peekWord,
  seesPhrase,
  takeAnyPhrase,
  takePhrase,
  takes,
} from '../../row/read/cursor.ts';
import { STS } from '../../row/read/goal.ts';
import type { Statement } from './statement.ts';

/** 'Bind off.', 'bind off rem 24 sts in pattern', 'cast off all sts loosely', 'bind off 24 sts'. */
export function readBindOff(c: Cursor): Statement | undefined {
  // said before anything else it says nothing, and is passed over
  takes(c, 'loosely');
  return attempt(c, () => {
    if (!takeBindOff(c)) return undefined;
    skipHow(c);
    const all = takeRest(c) || takes(c, 'rem', 'all', 'the', 'these');
    if (all) takes(c, 'rem', 'the');
    const stitches = peekNumber(c);
    if (stitches !== undefined) c.at += 1;
    takePhrase(c, STS);
    takeAnyPhrase(
      c,
      'for back|front of? neck',
      'for neck|back|shoulder',
      'for each shoulder',
      'on each side',
      'each side|shoulder',
      'at each side',
    );
    skipHow(c);
    takeAnyPhrase(c, 'at same gauge', 'in 1 row', 'on next row');
    skipHow(c);
    const done =
      c.at >= c.end ||
      isOneOf(peekWord(c), '. , ; ( [ : -') ||
      seesPhrase(c, 'and weave|darn|fasten|break|cut|sew|leave|draw|finish');
    const more =
      peekWord(c) === ',' &&
      isWord(c.tokens[c.at + 1], 'k', 'p', 'work', 'patt', 'sl', 'dec', 'ssk', 'inc', 'rib');
    if (!done || (more && !all)) return undefined;
    return {
      is: 'bind off',
      ...(stitches === undefined ? {} : { stitches }),
      ...(all ? { rest: true } : {}),
    };
  });
}

function skipHow(c: Cursor): void {
  takeAnyPhrase(
    c,
    'loosely in patt|rib',
    'in patt|rib|knitting',
    'loosely',
    'in garter|moss st',
    'kwise|pwise|ribwise',
    'as if to k|p',
    'in k',
    'very loosely',
    'firmly',
    'on rs|ws',
    'in p',
  );
}
