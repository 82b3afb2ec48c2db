import {
  attempt,
  type Cursor,
  isWord,
  peek,
  sees,
  seesPhrase,
  takeAll,
  takeAnyPhrase,
  takePhrase,
  takes,
  takeTo,
  took,
} from '../../row/read/cursor.ts';
import { means } from '../../row/read/meanings.ts';
import type { Statement } from './statement.ts';

/**
 * 'To dec, k2tog at beg of row and ssk at end', 'all decreases are made 2 sts in from edge', 'use the cable cast-on
 * method', 'to make a buttonhole: …': a whole sentence that says how something is made, and works nothing here.
 */
export const readTechnique = (c: Cursor): Statement | undefined =>
  attempt(c, () => {
    if (takeHoles(c)) {
      takeAll(c);
      return { is: 'note', about: 'hole' };
    }
    if (saysRows(c) || !TOLD.some((told) => attempt(c, () => told(c)))) return undefined;
    takeAll(c);
    return { is: 'note', about: 'aside' };
  });

/** 'To make a buttonhole: …', 'buttonholes are worked as follows: …'. */
const takeHoles = (c: Cursor): boolean =>
  takeAnyPhrase(
    c,
    'to make|work|form a|each|the? buttonhole|buttonholes ,|:',
    'buttonholes are worked|made as foll|follows :|,',
  );

/** Which rows, or how often: then it is an order. */
const saysRows = (c: Cursor): boolean =>
  c.tokens
    .slice(c.at, c.end)
    .some(
      (token, i, all) =>
        isWord(token, 'until', 'time', 'once', 'next', 'alt', 'rows', 'every', 'evenly') ||
        (isWord(token, 'foll') && !isWord(all[i - 1], 'as')) ||
        (isWord(token, 'each') && !isWord(all[i - 1], 'from')) ||
        (isWord(token, 'twice') && !isWord(all[i + 1], 'in', 'into')) ||
        (token.kind === 'number' && isWord(all[i + 1], 'row', 'inch', 'cm')),
    );

const DEC = 'dec|inc|decreasing|increasing';

/** 'To dec,', 'to inc 1 st:', and then a stitch. */
const takeToShape = (c: Cursor): boolean => {
  if (!takePhrase(c, `to ${DEC}`)) return false;
  takeAnyPhrase(c, '1|a st');
  takeAnyPhrase(c, 'at|on the? beg|end|right|left of? the? row|side|edge?');
  return takes(c, ',', ':', '-', '–', '=') && means(peek(c)?.text, 'beginning of a row');
};

const takeAreMade = (c: Cursor): boolean => {
  takes(c, 'all', 'the', 'these');
  return (
    takePhrase(c, `${DEC}|shapings|shaping`) &&
    takePhrase(c, 'are|is|should always? to? be? made|worked|done|formed') &&
    c.at < c.end
  );
};

/** 'Increase by working twice in one stitch', 'work decs as k2tog at beg …'. */
const takeByMaking = (c: Cursor): boolean => {
  if (takePhrase(c, `work|make all? the? ${DEC}`)) return takeAnyPhrase(c, 'as', 'thus', 'by');
  if (!takePhrase(c, DEC)) return false;
  takeAnyPhrase(c, '1|a st');
  if (!takes(c, 'by')) return false;
  return takeAnyPhrase(c, 'knitting|working|purling|making|picking|k|p') && !sees(c, 'to');
};

/** 'Use the cable cast-on method', 'cast on loosely using two needles': no stitches are counted. */
const takeMethod = (c: Cursor): boolean => {
  const use = takes(c, 'use', 'using');
  if (use) {
    for (let far = 0; far < 5 && peek(c)?.kind === 'word'; far += 1) {
      if (seesPhrase(c, 'cast|bind -? on|off')) return takeToEnd(c);
      takeTo(c, c.at + 1);
    }
    return false;
  }
  if (!takeAnyPhrase(c, 'cast -? on')) return false;
  takes(c, 'loosely', 'firmly');
  return takes(c, 'using', 'by', 'with') && takeToEnd(c);
};

const takeToEnd = (c: Cursor): boolean => {
  while (c.at < c.end) {
    if (isWord(peek(c), 'st', 'sts', ',', ';', ':', 'and', 'then')) return false;
    takeTo(c, c.at + 1);
  }
  return true;
};

/** 'Work the first row into the back of the sts': how a row is worked that is asked for elsewhere. */
const takeIntoBack = (c: Cursor): boolean => {
  if (!takes(c, 'work', 'k', 'knitting')) return false;
  if (takeAnyPhrase(c, 'the? first row'))
    return takeAnyPhrase(c, 'in|into the? back|backs of the? sts|st|loop') && ended(c);
  return (
    took(c, 'k', 'work') &&
    takeAnyPhrase(c, 'in|into the? back|backs of the? sts|st|loop on|in|of the? first row') &&
    ended(c)
  );
};

/** 'Leave a long tail for sewing up'. */
const takeLongTail = (c: Cursor): boolean => {
  if (!takePhrase(c, 'leave a very|nice? long')) return false;
  return takes(c, 'tail', 'end') && takeToEnd(c);
};

const ended = (c: Cursor): boolean => c.at >= c.end;

const TOLD = [takeToShape, takeAreMade, takeByMaking, takeMethod, takeIntoBack, takeLongTail];
