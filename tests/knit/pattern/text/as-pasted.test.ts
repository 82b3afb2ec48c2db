import { describe, expect, it } from 'vitest';
import { withoutAsides } from '../../../../src/knit/pattern/text/asides.ts';
import { lex } from '../../../../src/knit/row/read/lex.ts';
import { table } from '../table.ts';
import { expectCut } from './cut.ts';

/** How pages and printed sheets break patterns: common practice, no published source. */
describe('a text that was pasted is cut into the lines that its writer meant', () => {
  it.each(
    table(`
      5th Row: ¶ Knit → 1-2: 5th Row: Knit
      Row 5 (RS): ¶ *K2, p2 → 1-2: Row 5 (RS): *K2, p2
      Row 5: ¶ Back → 1: Row 5: | 2: Back
      Next Row: Cast off ¶ 2sts, knit to end → 1-2: Next Row: Cast off 2sts, knit to end
      Cast off ¶ Sleeves → 1: Cast off | 2: Sleeves
      Knit ¶ 3 rows → 1-2: Knit 3 rows
      Knit ¶ Purl → 1: Knit | 2: Purl
      On every 8th row 2 (3: 4: ¶ 6: 7) times → 1-2: On every 8th row 2 (3: 4: 6: 7) times
      K18 (21: 25: ¶  ¶ 28: 32), turn → 1-3: K18 (21: 25: 28: 32), turn
      K18 (21: 25: ¶  ¶ Sleeves → 1: K18 (21: 25: | 3: Sleeves
      1: K2 ¶ 2: P2 → 1: 1: K2 | 2: 2: P2
      At beg of next row. 12 ¶ [13, 15] sts → 1-2: At beg of next row. 12 [13, 15] sts
      Cont in rib for 7 more rows ¶ k1(k2tog yo k1) to end → 1: Cont in rib for 7 more rows | 2: k1(k2tog yo k1) to end
      1st row: (RS). K7. *C6B. K4. ¶ Rep from * to last 10 sts. C6B. ¶ K4. → 1-3: 1st row: (RS). K7. *C6B. K4. Rep from * to last 10 sts. C6B. K4.
      K1 (k2tog, yo) to last stitch, k1 ¶ 7 more rows in rib → 1: K1 (k2tog, yo) to last stitch, k1 | 2: 7 more rows in rib
      Next Row [RS]: Work 22[24, 26] sts. ¶ Place remaining sts on holder. ¶ Turn work. → 1-2: Next Row [RS]: Work 22[24, 26] sts. Place remaining sts on holder. | 3: Turn work.
      Next Row: Work to end. ¶ Place remaining sts on holder. → 1: Next Row: Work to end. | 2: Place remaining sts on holder.
      Step 1: Knit 4 rows ¶ Step 2: Work in rib → 1: Knit 4 rows | 2: Work in rib
      Step by step ¶ Step 2 rows → 1: Step by step | 2: Step 2 rows
      1st row: K7. ¶ K4. → 1: 1st row: K7. | 2: K4.
    `),
  )('lines: $line', expectCut('lines'));

  it.each(
    table(`
      1st row: (RS). K3. *P3. K3. Rep from * to end. 2nd row: P → 1 st row : ( rs ) . k 3 . * p 3 . k 3 . rep from * to end | 2 nd row : p
      Next row: (RS). K2. K2tog. Knit to last 4 sts. ssk. K2 → next row : ( rs ) . k 2 . k 2 tog . knit to last 4 sts ssk . k 2
      Next row: K30. Turn. Leave rem sts on a spare needle. Purl → next row : k 30 . turn . leave rem sts on a spare needle | purl
      Next row: Knit. Turn. Leave it → next row : knit | turn | leave it
      1st row: *C6B. K4. Cr3L. P2 → 1 st row : * c 6 b . k 4 . cr 3 l . p 2
      1st row: K2tog. Knit to last 5 sts. ssk. K3 → 1 st row : k 2 tog . knit to last 5 sts ssk . k 3
      Knit to last 4 sts. Yo, k2 → knit to last 4 sts . yo , k 2
      1st row. Knit. 2nd and every foll alt row. Purl. 3rd row. K2 → 1 st row . knit | 2 nd and every foll alt row . purl | 3 rd row . k 2
      Shape neck Next row. Patt to last 4 sts → shape neck next row . patt to last 4 sts
      K next row. Purl 1 row → k next row | purl 1 row
      Next row: Work 22 sts. Place the remaining sts on holder. Turn → next row : work 22 sts . place the remaining sts on holder | turn
      Next row: Work 22 sts. Place the piece flat → next row : work 22 sts | place the piece flat
      Row 2 AND EVERY EVEN ROW: P → row 2 and every even row : p
      Work 2 rows Row 3: P → work 2 rows | row 3 : p
      Row 1 (k1, p1) to end of row Rep row 1 twice → row 1 ( k 1 , p 1 ) to end of row | rep row 1 twice
      Row 1 *k1, p1 to end of row Rep from * → row 1 * k 1 , p 1 to end of row rep from *
    `),
  )('sentences: $line', expectCut('sentences'));

  it.each(
    table(`
      7: cast on (34) 37-44-48-52 (55-62) sts → 7 sizes: cast on 34 sts | cast on 37 sts | cast on 44 sts | cast on 48 sts | cast on 52 sts | cast on 55 sts | cast on 62 sts
      5: cast on 96-104-112-120-128 sts → 5 sizes: cast on 96 sts | cast on 104 sts | cast on 112 sts | cast on 120 sts | cast on 128 sts
      3: work rows 1-3 → 1 sizes: work rows 1 - 3 | work rows 1 - 3 | work rows 1 - 3
    `),
  )('sizes: $line', expectCut('sizes'));

  it.each(
    table(`
      For medium size only k 1 row → S M L: for medium size only k 1 row
      For the smallest size only k 1 row → S: k 1 row
      Largest size only: k 1 row → L: k 1 row
    `),
  )('sizes that are meant: $line', expectCut('meant'));

  const without = (text: string): string =>
    withoutAsides(lex(text))
      .map(({ text: word }) => word)
      .join(' ');

  it.each([
    ['cast off loosely 3 sts', 'cast off 3 sts'],
    ['cast on 60 sts loosely and evenly using 4 mm', 'cast on 60 sts using 4 mm'],
    ['work tightly in rib', 'work in rib'],
    ['cast off very loosely', 'cast off'],
    ['cast off 4, k40, including the st on the rh needle, k to end', 'cast off 4 , k 40 , k to end'],
    ['k36 (including the st on the needle), turn', 'k 36 , turn'],
    ['k 40, including 3 sts on the needle', 'k 40 , including 3 sts on the needle'],
    ['inc 3 sts evenly', 'inc 3 sts evenly'],
    ['beg with a rs (knit) row', 'beg with a rs row'],
    ['beg with a rs (purl) row', 'beg with a rs ( purl ) row'],
    ['kfb (increase on lower/underarm edge), k', 'kfb , k'],
    ['k (inc 1 at each end)', 'k ( inc 1 at each end )'],
  ])('what changes nothing is passed over: %s', (text, wanted) => {
    expect(without(text)).toBe(wanted);
  });
});
