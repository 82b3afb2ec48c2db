import { describe, expect, it } from 'vitest';
import { withoutAsides } from '../../../../src/knit/pattern/text/asides.ts';
import { otherTongue } from '../../../../src/knit/pattern/text/other-tongue.ts';
import { meantFor } from '../../../../src/knit/pattern/text/size-names.ts';
import { lex } from '../../../../src/knit/row/read/lex.ts';

/** What only comments is passed over, and what looks like it and says something stays. Common practice, no published source. */
describe('of what is said beside', () => {
  it.each([
    ['dec 1 (once at each side) again', 'dec 1 again'],
    ['dec 1 (worked at each side) again', 'dec 1 again'],
    ['dec 1 (once before next row) again', 'dec 1 ( once before next row ) again'],
    ['at next (RS) row', 'at next rs row'],
    ['at next (WS) rows', 'at next ws rows'],
    ['at foll (RS) row', 'at foll rs row'],
    ['at Next (RS) row', 'at next ( rs ) row'],
    ['at next (RS) edge', 'at next ( rs ) edge'],
    ['at this (RS) row', 'at this ( rs ) row'],
    ['beg with a k (RS) row', 'beg with a k row'],
    ['beg with a p (WS) row', 'beg with a p row'],
    ['beg with a p (RS) row', 'beg with a p ( rs ) row'],
    ['beg with a RS (k) row', 'beg with a rs row'],
    ['beg with a WS (p) row', 'beg with a ws row'],
    ['beg with a WS (k) row', 'beg with a ws ( k ) row'],
    ['k 40, including the st on the needle, p 2', 'k 40 , p 2'],
    ['k 40, counting 1 st on the needle, p 2', 'k 40 , p 2'],
    ['k 40, including 2 sts on the needle, p 2', 'k 40 , including 2 sts on the needle , p 2'],
    ['k 40, including the one on the needle, p 2', 'k 40 , including the one on the needle , p 2'],
    ['cast off loosely 3 sts', 'cast off 3 sts'],
    ['cast on 60 sts loosely and evenly', 'cast on 60 sts'],
    ['cast on 60 sts very loosely', 'cast on 60 sts'],
    ['cast on 60 sts very', 'cast on 60 sts very'],
    ['cast off fairly loosely but firmly 3', 'cast off 3'],
    ['cast off loosely and 3', 'cast off and 3'],
    ['dec 3 time(s)', 'dec 3 time'],
    ['dec 3 time (s)', 'dec 3 time ( s )'],
    ['k2tog, psso (2 sts decreased), k to end', 'k 2 tog , psso , k to end'],
    ['k2tog, psso (2 sts decreased) k to end', 'k 2 tog , psso ( 2 sts decreased ) k to end'],
    ['k2tog (2 sts) k', 'k 2 tog ( 2 sts ) k'],
    ['8 rows (4 ridges) in garter', '8 rows in garter'],
    ['8 rows (5 ridges) in garter', '8 rows ( 5 ridges ) in garter'],
    ['4 ridges (8 rows) in garter', '4 ridges in garter'],
    ['4 ridges (9 rows) in garter', '4 ridges ( 9 rows ) in garter'],
    ['dec 1 (increase on lower edge) again', 'dec 1 again'],
    ['dec 1 (dec made) again', 'dec 1 again'],
    ['dec 1 (dec 3 made) again', 'dec 1 ( dec 3 made ) again'],
    ['dec 1 (keeping one edge even) again', 'dec 1 again'],
    ['dec 1 (keeping one edge free) again', 'dec 1 ( keeping one edge free ) again'],
    ['k (24 rib rows in all), k', 'k , k'],
    ['k (24 rows altogether), k', 'k , k'],
    ['k (24 patt rows in all), k', 'k , k'],
    ['dec 1 (neck dec) again', 'dec 1 again'],
    ['dec 1 (neck side dec) again', 'dec 1 again'],
    ['dec 1 (neck and other side dec) again', 'dec 1 ( neck and other side dec ) again'],
    ['15 in (when stretched to size)', '15 in'],
    ['15 in (when wet)', '15 in ( when wet )'],
    ['15 in (when pressed)', '15 in'],
    ['k6 (garter st border)', 'k 6'],
    ['k6 (right shoulder)', 'k 6'],
    ['k6 sts (right shoulder)', 'k 6 sts'],
    ['k6 (k border)', 'k 6 ( k border )'],
    ['k6 (a b c d border)', 'k 6 ( a b c d border )'],
    ['work even (armhole measures 8 in) and', 'work even and'],
    ['work even (item now measures 8 in) and', 'work even and'],
    ['work even (hem measures 8 in) and', 'work even ( hem measures 8 in ) and'],
    ['1 ball of "wool" yarn', '1 ball of yarn'],
    ['1 ball of "" yarn', '1 ball of " " yarn'],
    ['8" wide" strip', '8 " wide " strip'],
    ['1 ball of "wool 4" yarn', '1 ball of " wool 4 " yarn'],
    ['1 ball of "a b c d e f g h i" yarn', '1 ball of " a b c d e f g h i " yarn'],
  ])('%s is left: %s', (text, wanted) => {
    const left = withoutAsides(lex(text)).map(({ text: word }) => word);
    expect(left.join(' ')).toBe(wanted);
  });
});

describe('sizes of several words', () => {
  const names = ['3 months', '6 months', '12 months'];
  it.each([
    ['For size 12 months only: k 2', [2]],
    ['For sizes 3 months and 12 months only: k 2', [0, 2]],
    ['For size 6 months: k 2', [1]],
  ])('%s', (text, wanted) => {
    const meant = names.flatMap((_, size) => (meantFor(lex(text), names, size).meant ? [size] : []));
    expect(meant).toEqual(wanted);
  });
});

describe('a text in another language', () => {
  const german = 'Maschen anschlagen rechts stricken links stricken';
  const french = 'Monter 40 mailles, tricoter 2 rangs endroit, rabattre les mailles';
  it.each([
    ['six words of German', german, 'de'],
    ['seven of French', french, 'fr'],
    ['five tell nothing', 'Maschen anschlagen rechts stricken links', undefined],
    ['three English ones beside six are half of them', `${german} knit purl rows`, undefined],
    ['two of them are few', `${german} knit purl`, 'de'],
    ['English', 'Cast on 20 sts. Knit 6 rows, purl 2 rows. Bind off.', undefined],
    [
      'parts of words are none',
      'Maschenware Reihenfolge Rechtsanwalt Linkshänder Nadelöhr Undine',
      undefined,
    ],
    ['nothing', '', undefined],
  ])('%s', (_, text, wanted) => {
    expect(otherTongue(text)).toBe(wanted);
  });
});
