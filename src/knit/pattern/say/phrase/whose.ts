import { attempt, type Cursor, takePhrase, takes, takesOne, took } from '../../../row/read/cursor.ts';

/** 'for left side of neck', 'of each shoulder', 'at front edge': whose stitches they are changes nothing. */
export const takeWhose = (c: Cursor): boolean =>
  attempt(c, () => {
    if (!takes(c, 'for', 'of', 'at')) return false;
    while (takesOne(c, 'whose stitches') || takePhrase(c, '1')) {
      // whichever they are
    }
    return !took(c, 'for', 'at', 'the', 'and');
  });
