import { describe, expect, it } from 'vitest';
import { withoutAsides } from '../../../../src/knit/pattern/text/asides.ts';
import { lex } from '../../../../src/knit/row/read/lex.ts';
import { table } from '../table.ts';

const without = (text: string): string =>
  withoutAsides(lex(text))
    .map(({ text: word }) => word)
    .join(' ');

/** How patterns comment in brackets: common practice, no published source. */
describe('brackets', () => {
  it.each([
    ['bo 5 (for all sizes) at beg', 'bo 5 at beg'],
    ['next row (Buttonhole Row): k', 'next row : k'],
    ['bo 9 [for pocket opening], k', 'bo 9 , k'],
    ['decrease (dec) 1', 'decrease 1'],
    ['dec 1 3 time(s)', 'dec 1 3 time'],
    ['co 42 (or a multiple of 18 plus 6)', 'co 42'],
    ['next row (increase): k', 'next row : k'],
    ['bind (cast) off 4', 'bind off 4'],
    ['cast (bind) off 4', 'cast off 4'],
    ['dec 1 every 4th row (24 rows in all), k', 'dec 1 every 4 th row , k'],
    ['k (24 rib rows in all), k', 'k , k'],
    ['dec 1 (keeping one edge even) again', 'dec 1 again'],
    ['dec 1 (keep side straight) again', 'dec 1 again'],
    ['dec 1 (neck dec) again', 'dec 1 again'],
    ['dec 1 (neck edge shaping) again', 'dec 1 again'],
    ['15 in (when stretched to size)', '15 in'],
    ['15 in (when slightly drawn)', '15 in'],
    ['dec 1 (once at each side) again', 'dec 1 again'],
    ['work even (armhole measures 8 in) and', 'work even and'],
    ['work even (piece measure 8 in) and', 'work even and'],
    ['work even (back should measure 8 in) and', 'work even and'],
    ['work even (sleeve now measures 8 in) and', 'work even and'],
    ['1 ball of “wool-knit” yarn', '1 ball of yarn'],
    ['1 ball of "wool & knit" yarn', '1 ball of yarn'],
    ['of next 2 rows (all sizes) and on', 'of next 2 rows and on'],
    ['of next 2 rows (all sizes) Work even', 'of next 2 rows . work even'],
    ['of next 2 rows (all pieces) Work even', 'of next 2 rows work even'],
  ])('that only comment are passed over: %s', (text, wanted) => {
    expect(without(text)).toBe(wanted);
  });

  it.each([
    ['row 1 (RS): k'],
    ['k 5 (yo, k1)'],
    ['(for all) k'],
    ['sleeves (make two)'],
    ['co 5 (6, 7)'],
    ['size s (m, l)'],
    ['k (24 sts)'],
    ['for (all sizes'],
    ['next row (twice): k'],
    ['next edge (increase): k'],
    ['bind (knit) off 4'],
    ['work (cast) off 4'],
    ['dec 1 (24 rows for neck), k'],
    ['dec 1 (24 rows), k'],
    ['dec 1 (4 sts in all) again'],
    ['dec 1 (neck edge of work dec) again'],
    ['15 in (when pressing to size)'],
    ['k2 (twice), p1'],
    ['k2 (worked 3 times), p1'],
    ['dec 1 (keeping 3 rows)'],
    ['dec 1 (by working to last 3 sts, k2tog) again'],
    ['k 9 (by working 1 st more) again'],
    ['work even 4" more'],
    ['a " b 4 " c'],
  ])('that say something stay: %s', (text) => {
    expect(without(text)).toBe(
      lex(text)
        .map(({ text: word }) => word)
        .join(' '),
    );
  });
});

/** In stocking stitch knit rows are those of the right side: common practice, no published source. */
describe('the side of a row in brackets', () => {
  it.each([
    ['at beg of next (RS) row', 'at beg of next rs row'],
    ['at beg of foll (WS) rows', 'at beg of foll ws rows'],
    ['beg with a k (RS) row', 'beg with a k row'],
    ['beg with a p (WS) row', 'beg with a p row'],
  ])('is said as without them, or once: %s', (text, wanted) => {
    expect(without(text)).toBe(wanted);
  });

  it.each([
    ['beg with a k (WS) row'],
    ['beg with a p (RS) row'],
    ['beg with a k (RS) st'],
    ['at beg of last (RS) row'],
    ['at beg. Next (RS) row'],
    ['at beg of next (RS) st'],
    ['at beg of next (RS, WS) row'],
  ])('stays where it is told apart by them: %s', (text) => {
    expect(without(text)).toBe(
      lex(text)
        .map(({ text: word }) => word)
        .join(' '),
    );
  });
});

/** The same table with more than one way of saying a line: common practice, no published source. */
describe('what changes no count and no row', () => {
  it.each(
    table(`
      K 40, {including|counting|incl} the st on the needle, k2 → k 40 , k 2
      K 40, including 1 st on right needle, k2 → k 40 , k 2
      K 40, including 2 sts on the needle, k2 → k 40 , including 2 sts on the needle , k 2
      Cast off {|very |quite |fairly |rather |very very }{loosely|tightly|firmly}{| and evenly| but firmly| and loosely| but evenly| and firmly} 3 sts → cast off 3 sts
      Cast off {quite|very} 3 sts → cast off QUITE 3 sts
      Cast off loosely {or|,} evenly 3 sts → cast off OR evenly 3 sts
      At beg of {next|foll} (RS) row k → at beg of NEXT rs row k
      At beg of {next|foll} (WS) rows k → at beg of NEXT ws rows k
      At beg of {Next|every} (RS) row k → at beg of NEXT ( rs ) row k
      At beg of next {(RS) sts|[RS] row|(RS row} k → at beg of next SIDE k
      Beg with a k (RS) row, k → beg with a k row , k
      Beg with a p (WS) row, k → beg with a p row , k
      Beg with a RS (k) row, k → beg with a rs row , k
      Beg with a WS (p) row, k → beg with a ws row , k
      Beg with a {k (WS)|p (RS)|WS (k)|RS (p)} row, k → beg with a BOTH row , k
      Dec 1 ({dec|inc} {on lower edge|at neck|made}) again → dec 1 again
      Dec 1 (dec on 2 edges) again → dec 1 ( dec on 2 edges ) again
      Dec 1 ({keeping|keep} one edge {even|straight}) again → dec 1 again
      Dec 1 (keeping one edge flat) again → dec 1 ( keeping one edge flat ) again
      Dec 1 (24 {rows|row|rib rows|patt rows|pattern rows|border rows} {in all|altogether|total}), k → dec 1 , k
      Dec 1 (24 rows), k → dec 1 ( 24 rows ) , k
      Dec 1 (24 sts in all), k → dec 1 ( 24 sts in all ) , k
      Dec 1 (24 wide rows in all), k → dec 1 ( 24 wide rows in all ) , k
      15 in (when {stretched|slightly|pressed|blocked}{| out| to size}) k → 15 in k
      15 in (when {dry|worn} to size) k → 15 in ( when DRY to size ) k
      Dec 1 ({once|worked} at each side) again → dec 1 again
      Dec 1 (twice at each side) again → dec 1 ( twice at each side ) again
      Of next 4 rows (twice at each side) again → of next 4 rows again
      Dec 1 (twice) again → dec 1 ( twice ) again
      Dec 1 (worked 3 times) again → dec 1 ( worked 3 times ) again
      Dec 1 (once before next dec) again → dec 1 ( once before next dec ) again
      Work even ({armhole|armholes|piece|work|back|front|sleeve} {measures|measure|should measure|now measures|now measure|should measures} 8 in) and → work even and
      Work even ({body|rib} measures 8 in) and → work even ( BODY measures 8 in ) and
      Work even (armhole {will|that} measure 8 in) and → work even ( armhole WILL measure 8 in ) and
    `),
  )('is left out, and nothing else: $line', ({ texts, reading }) => {
    for (const text of texts) {
      const wanted = reading
        .split(' ')
        .map((word) => (/^[A-Z]+$/.test(word) ? '.+' : word.replace(/[()]/g, '\\$&')));
      expect(without(text), text).toMatch(new RegExp(`^${wanted.join(' ')}$`));
    }
  });

  it.each(
    table(`
      K 4, k3tog (2 sts decreased), k to end → k 4 , k 3 tog , k to end
      K 4, k3tog (2 sts decreased); k to end → k 4 , k 3 tog ; k to end
      K 4, k3tog (2 sts decreased) k to end → k 4 , k 3 tog ( 2 sts decreased ) k to end
      K 4, k3tog (2 sts worked), k to end → k 4 , k 3 tog ( 2 sts worked ) , k to end
      K 4, k3tog (st decreased), k to end → k 4 , k 3 tog ( st decreased ) , k to end
      Work 8 rows (4 ridges) in garter → work 8 rows in garter
      Work 4 ridges (8 rows) in garter → work 4 ridges in garter
      Work 8 rows (5 ridges) in garter → work 8 rows ( 5 ridges ) in garter
      Work 4 ridges (9 rows) in garter → work 4 ridges ( 9 rows ) in garter
      Work 8 rows (4 ridges more) in garter → work 8 rows ( 4 ridges more ) in garter
      Work 8 sts (4 ridges) in garter → work 8 sts ( 4 ridges ) in garter
      Dec 1 (neck dec) again → dec 1 again
      Dec 1 (neck edge side dec) again → dec 1 ( neck edge side dec ) again
      Dec 1 (dec made) again → dec 1 again
      Dec 1 (dec) again → dec 1 ( dec ) again
      Dec 1 (inc at 2 edges) again → dec 1 ( inc at 2 edges ) again
      Dec 1 (12 rib rows) again → dec 1 ( 12 rib rows ) again
      Dec 1 (12 rows altogether) again → dec 1 again
      Dec 1 (12 rows on needle) again → dec 1 ( 12 rows on needle ) again
      Dec 1 (once before next dec) again → dec 1 ( once before next dec ) again
      Dec 1 (that is at both sides) again → dec 1 again
      Dec 1 (that is 3 times) again → dec 1 ( that is 3 times ) again
      Dec 1 (that is) again → dec 1 again
      At beg of next (RS) row → at beg of next rs row
      At beg of next (RS) rows → at beg of next rs rows
      At beg of next (WS) st → at beg of next ( ws ) st
      At beg of foll (RS) row → at beg of foll rs row
      Cast on 4, k 40, including the st on the needle, p 2 → cast on 4 , k 40 , p 2
      Cast on 4, k 40, including the 2 sts on the needle, p 2 → cast on 4 , k 40 , including the 2 sts on the needle , p 2
      Cast on 4, k 40, including those on the needle, p 2 → cast on 4 , k 40 , including those on the needle , p 2
      Cast off 3 loosely and evenly, k → cast off 3 , k
      Cast off 3 firmly but loosely, k → cast off 3 , k
      Cast off 3 loosely and k → cast off 3 and k
      Cast off 3 very loosely and evenly, k → cast off 3 , k
      1 ball of “Wool-Knit” yarn, k → 1 ball of yarn , k
      1 ball of "Wool & Knit" yarn, k → 1 ball of yarn , k
      1 ball of "Wool, Knit" yarn, k → 1 ball of " wool , knit " yarn , k
      1 ball of "" yarn, k → 1 ball of " " yarn , k
      Work 4" of rib, 5" more → work 4 " of rib , 5 " more
    `),
  )('word for word: $line', ({ texts, reading }) => {
    for (const text of texts) expect(without(text), text).toBe(reading);
  });
});
