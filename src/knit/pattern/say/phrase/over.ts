import { attempt, type Cursor, takeNumber, takePhrase, takes } from '../../../row/read/cursor.ts';

/** 'work these 8 sts in st st', before the fabric. */
export const readThese = (c: Cursor): number | undefined =>
  attempt(c, () => {
    takes(c, 'the');
    if (!takes(c, 'these', 'those', 'rem')) return undefined;
    takes(c, 'rem');
    const n = takeNumber(c);
    return n !== undefined && takePhrase(c, 'st|sts') && takes(c, 'in') ? n : undefined;
  });

/** 'in st st over center 38 sts', 'on these 20 sts': what is on the needle. */
export const readOver = (c: Cursor): number | undefined =>
  attempt(c, () => {
    if (!takes(c, 'over', 'on', 'across')) return undefined;
    takes(c, 'the', 'these');
    takes(c, 'center', 'rem', 'middle');
    const n = takeNumber(c);
    if (n === undefined || !takePhrase(c, 'st|sts')) return undefined;
    takes(c, 'only');
    return n;
  });
