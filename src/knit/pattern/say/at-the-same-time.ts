import { attempt, type Cursor, seesPhrase, takeAnyPhrase, takes } from '../../row/read/cursor.ts';
import { readUntil } from './phrase/until.ts';
import type { Statement } from './statement.ts';

/** 'AT THE SAME TIME', 'at the same time, when armhole measures 5 cm, …'. */
export const readAtTheSameTime = (c: Cursor): Statement | undefined =>
  attempt(c, () => {
    takes(c, '(', '[');
    if (!takeAnyPhrase(c, 'at the? same time', 'meanwhile', 'simultaneously')) return undefined;
    takes(c, ',', ':', '-', ')');
    const after = seesPhrase(c, 'when|once|after') ? readUntil(c) : undefined;
    takes(c, ',');
    takes(c, 'beg', 'starting');
    return after === undefined ? { is: 'at the same time' } : { is: 'at the same time', after };
  });
