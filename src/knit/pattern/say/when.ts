import { attempt, type Cursor, seesPhrase, takes } from '../../row/read/cursor.ts';
import { readUntil } from './phrase/until.ts';
import type { Statement } from './statement.ts';

/** 'When piece measures 38 cm, bind off 5 sts …', 'when there are 29 sts, …': what is on the needle goes on until then. */
export const readWhen = (c: Cursor): Statement | undefined =>
  attempt(c, () => {
    if (!seesPhrase(c, 'when|once|after')) return undefined;
    const until = readUntil(c);
    if (until === undefined || until.is === 'rows' || !takes(c, ',', ':')) return undefined;
    return { is: 'even', until };
  });
