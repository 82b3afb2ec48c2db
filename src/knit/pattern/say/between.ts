import {
  attempt,
  type Cursor,
  isOneOf,
  isWord,
  peekWord,
  sees,
  seesPhrase,
  takeAnyPhrase,
  takePhrase,
  takes,
} from '../../row/read/cursor.ts';

/** What joins two instructions of a sentence. */
export function skipBetween(c: Cursor): void {
  while (
    takes(
      c,
      ',',
      ';',
      ':',
      '-',
      'and',
      'then',
      '.',
      ')',
      ']',
      'while',
      'but',
      'now',
      'also',
      'hereafter',
      '/',
    )
  ) {
    // what joins two instructions says nothing of its own
  }
  if (skipWhatFor(c)) skipBetween(c);
  skipShapingBy(c);
  // 'to finish, end with knit 4 rows'
  attempt(
    c,
    () =>
      takePhrase(c, 'end|ending|finish|finishing with') &&
      sees(c, 'k', 'p') &&
      isWord(c.tokens[c.at + 2], 'rows'),
  );
  // '(k 1 row, p 1 row) twice'
  if (
    isOneOf(peekWord(c), '( [') &&
    isWord(c.tokens[c.at + 1], 'k', 'p') &&
    isWord(c.tokens[c.at + 3], 'row', 'rows')
  )
    c.at += 1;
}

/** '… for bottom border', '… and set aside for later': the end of a sentence that works nothing. */
const skipWhatFor = (c: Cursor): boolean =>
  attempt(
    c,
    () =>
      takeAnyPhrase(
        c,
        'set aside for? later|now?',
        'to form|make the? armhole|armholes|neck|shoulder|shoulders',
        'for the? bottom|lower|upper|top|garter|moss|rib? st? border|edge|edging|hem|waistband|welt|yoke',
      ) &&
      (c.at >= c.end || sees(c, '.', ';', ',')),
  );

/** 'shaping side seams by dec 1 st …': what is shaped says nothing of how. */
function skipShapingBy(c: Cursor): void {
  // 'For V neck dec 1 st at …'
  attempt(
    c,
    () =>
      takePhrase(c, 'for the? v? neck|armhole|armholes|shoulder|raglan') &&
      // of a neck it says at which edge
      (sees(c, 'bind', 'bo', 'cast') || (!isWord(c.tokens[c.at - 1], 'neck') && sees(c, 'dec', 'inc'))),
  );
  attempt(c, () => takePhrase(c, 'proceed|cont|continue to') && sees(c, 'shape'));
  if (!sees(c, 'shaping', 'shape') && !seesPhrase(c, 'to shape')) return;
  for (let i = 1; i < 6; i += 1) {
    const word = c.tokens[c.at + i]?.text;
    const comma =
      word === ',' && isWord(c.tokens[c.at + i + 1], 'bind', 'bo', 'cast', 'dec', 'inc', 'beg', 'starting');
    // 'to shape neck on next row, k 30, …'
    const on = isWord(c.tokens[c.at + i], 'on', 'in') && seesPhrase({ ...c, at: c.at + i + 1 }, 'the? next');
    if (on) {
      c.at += i;
      return;
    }
    // 'to shape the armholes cast off 5 sts at …'
    const then =
      i > 1 && isWord(c.tokens[c.at + i], 'bind', 'bo', 'cast') && sees(c, 'to', 'shape', 'shaping');
    if (then) {
      c.at += i;
      return;
    }
    if ((word === 'by' || word === ':' || comma) && c.at + i < c.end) {
      c.at += i + 1;
      return;
    }
  }
}
