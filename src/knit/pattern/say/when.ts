import { attempt, type Cursor, sees, seesPhrase, takeAll, takes } from '../../row/read/cursor.ts';
import { headingOf } from './heading.ts';
import type { Until } from './how-far.ts';
import { readLength } from './phrase/measure.ts';
import { readFrom } from './phrase/place.ts';
import { readUntil } from './phrase/until.ts';
import type { Statement } from './statement.ts';

/** What begins what is done then, also without a comma. */
const ORDERS = [
  'bind',
  'cast',
  'bo',
  'co',
  'dec',
  'inc',
  'beg',
  'start',
  'begin',
  'change',
  'work',
  'k',
  'p',
  'shape',
  'shaping',
];

/** 'When piece measures 38 cm, bind off 5 sts …', 'when there are 29 sts, …': what is on the needle goes on until then. */
export const readWhen = (c: Cursor): Statement | undefined =>
  attempt(c, () => {
    const at = readAtLength(c);
    if (at === undefined && !seesPhrase(c, 'when|once|after')) return undefined;
    const until = at ?? readUntil(c);
    if (until === undefined || until.is === 'rows') return undefined;
    const length = until.is === 'length';
    // 'When work measures 34 cm.' and what is done then in the line below
    if (!takes(c, ',', ':') && !(length && ((at === undefined && c.at >= c.end) || sees(c, ...ORDERS))))
      return undefined;
    return { is: 'even', until };
  });

/** 'At 12 cm from beg, bind off …'. */
const readAtLength = (c: Cursor): Until | undefined =>
  attempt(c, () => {
    const mm = takes(c, 'at') ? readLength(c) : undefined;
    const from = mm === undefined ? undefined : readFrom(c);
    return mm === undefined || from === undefined ? undefined : { is: 'length', mm, from };
  });

/** 'When work measures 20 cm, | shape neck.' */
export const readShaping = (c: Cursor): Statement | undefined =>
  attempt(c, () => {
    const words = c.tokens.slice(c.at, c.end).filter(({ text }) => text !== '.');
    const heading = headingOf(words, true, true);
    takeAll(c);
    return heading?.is === 'heading' && heading.places.length > 0 ? heading : undefined;
  });
