import { describe, it } from 'vitest';
import { table } from '../table.ts';
import { expectReading } from './said.ts';

/** How patterns are usually worded: common practice, no published source. */
describe('a row that is named, in all wordings,', () => {
  it.each(
    table(`
      Row 1{ (RS):| (RS) -|, RS:| [RS]:| (on RS):| (right side):| (RS facing):| - RS:} k → row: label {rows [1], side RS}, items 'k to {left 'what follows'}'
      {Row no 1|Row # 1|Rows 1}: k → row: label {rows [1]}, items 'k to {left 'what follows'}'
      1st row: k → row: label {rows [1]}, items 'k to {left 'what follows'}'
      First row: k → row: label {rows [1]}, items 'k to {left 'what follows'}'
      Second row: k → row: label {rows [2]}, items 'k to {left 'what follows'}'
      {1st and 3rd rows|Rows 1 and 3}: k → row: label {rows [1; 3]}, items 'k to {left 'what follows'}'
      {1st to 4th rows|Rows 1-4|Rows 1 to 4}: k → row: label {rows [1; 2; 3; 4]}, items 'k to {left 'what follows'}'
      97-98th rows: k → row: label {rows [97; 98]}, items 'k to {left 'what follows'}'
      2nd and every {alt|other|foll alt|even|p|WS} row: p → row: label {rows [2], everyOther}, items 'p to {left 'what follows'}'
      2nd {and every WS row|and all WS rows|and all even numbered rows|, and all even-numbered rows|and each alt row|and all subsequent alt rows|and every wrong side row|and every 2nd row|and rem WS rows|and all other rows}: p → row: label {rows [2], everyOther}, items 'p to {left 'what follows'}'
      Row 2 and all {WS|even} rows: p → row: label {rows [2], everyOther}, items 'p to {left 'what follows'}'
      1st row of {pattern|the pattern|rib}: k → row: label {rows [1]}, items 'k to {left 'what follows'}'
      3: K1, ssk, k to end → row: label {rows [3]}, items 'k, ssk, k to {left 0}'
      4-6: as rows 1-2 → row: label {rows [4; 5; 6]}, items '', like 1, likeTo 2
      3: k to end → row: label {rows [3]}, items 'k to {left 0}'
      3: p to end → row: label {rows [3]}, items 'p to {left 0}'
      3: sl 1, k to end → row: label {rows [3]}, items 'sl, k to {left 0}'
      3: * k1, p1; rep from * → row: label {rows [3]}, items '(k, p) to {left 'what follows'}'
      3: k1, p1 → row: label {rows [3]}, items 'k, p'
      3: k, p → row: label {rows [3]}, items 'k, p to {left 'what follows'}'
      {Next row (WS): p|Next row WS: p|Next row (WS) - p} → row: label {rows [], side WS}, items 'p to {left 'what follows'}'
      Next row: p → row: label {rows []}, items 'p to {left 'what follows'}'
      Next RS row: k2tog, k to end → row: label {rows [], side RS}, items 'k2tog, k to {left 0}'
      Next WS row: k2tog, k to end → row: label {rows [], side WS}, items 'k2tog, k to {left 0}'
      Next k row: k2tog, k to end → row: label {rows [], side RS}, items 'k2tog, k to {left 0}'
      Next p row: k2tog, k to end → row: label {rows [], side WS}, items 'k2tog, k to {left 0}'
      {Next row (dec)|Next row (dec row)|Next row (decrease)|Next row (decrease row)}: k2tog, k to end → row: label {rows [], name dec}, items 'k2tog, k to {left 0}'
      Next row (inc): k1, m1, k to end → row: label {rows [], name inc}, items 'k, m1, k to {left 0}'
      Next row (dec) (WS): k2tog, k to end → row: label {rows [], name dec, side WS}, items 'k2tog, k to {left 0}'
      Next row (WS) (dec): k2tog, k to end → row: label {rows [], name dec, side WS}, items 'k2tog, k to {left 0}'
      Row 5 (dec): k2tog, k to end → row: label {rows [5]}, items 'k2tog, k to {left 0}'
      {1st row (inc row)|Row 1 (inc)}: k1, m1, k to end → row: label {rows [1]}, items 'k, m1, k to {left 0}'
      Next (inc) row: k1, m1, k to end → row: label {name inc, rows []}, items 'k, m1, k to {left 0}'
      {Foll|Last} row: k2tog, k to end → row: label {rows []}, items 'k2tog, k to {left 0}'
      Last row (WS): p → row: label {rows [], side WS}, items 'p to {left 'what follows'}'
      Next 4 rows: k → row: label {rows [], next 4}, items 'k to {left 'what follows'}'
      {Inc row: k1, k2tog, k to end|Increase row: k1, k2tog, k to end} → row: label {rows [], name inc}, items 'k, k2tog, k to {left 0}'
      Dec row: k1, k2tog, k to end → row: label {rows [], name dec}, items 'k, k2tog, k to {left 0}'
      Set-up row: k1, k2tog, k to end → row: label {rows [], name set}, items 'k, k2tog, k to {left 0}'
      Foundation row: k1, k2tog, k to end → row: label {rows [], name foundation}, items 'k, k2tog, k to {left 0}'
      Buttonhole row: k1, k2tog, k to end → row: label {rows [], name buttonhole}, items 'k, k2tog, k to {left 0}'
      Lace row: k1, k2tog, k to end → row: label {rows [], name lace}, items 'k, k2tog, k to {left 0}'
      Dec row 1: k1, k2tog, k to end → row: label {rows [], name dec}, items 'k, k2tog, k to {left 0}'
      {Dec row (WS)|Dec row WS}: p1, p2tog, p to end → row: label {rows [], name dec, side WS}, items 'p, p2tog, p to {left 0}'
      Inc row k2, m1, k to end → row: label {rows [], name inc}, items 'k ×2, m1, k to {left 0}'
      Lace row k2, yo, k to end → ✗ stitch or repeat expected @1
      Buttonhole row 2: k2, yo, k to end → row: label {rows [], name 'buttonhole 2'}, items 'k ×2, yo, k to {left 0}'
      On next row, k to last 2 sts, k2tog → row: label {rows []}, items 'k to {left 2}, k2tog'
      {In|On} {the next|next|foll|the return|return} row{,|:} k to last 2 sts, k2tog → row: label {rows []}, items 'k to {left 2}, k2tog'
      On the next row (WS), p to last 2 sts → row: label {rows [], side WS}, items 'p to {left 2}'
      At the beg of next row, k 5, k2tog → row: label {rows []}, items 'k ×5, k2tog'
      On next row cast on 4 sts over those bound off → row: label {rows []}, items 'co ×4'
      On the next row K 52 sts, turn → row: label {rows []}, items 'k ×52, {turn}'
      On next row work buttonhole → buttonholes: beats [{first 1, every 1, times 1}]
      Next row is a buttonhole row: k2, yo, k to end → row: label {rows [], name buttonhole}, items 'k ×2, yo, k to {left 0}'
      {The next row is the|Make the next row a|Work next row a} dec row: k2tog, k to end → row: label {rows [], name dec}, items 'k2tog, k to {left 0}'
      Work buttonhole as follows: k2, bind off 2 sts, k to end → row: label {rows [], name buttonhole}, items 'k ×2, bo ×2, k to {left 0}'
      {Make|Form|Work} {a|the|first|next} buttonhole {on next row|over the next 2 rows|in the next row}: k2, bind off 2 sts, k to end → row: label {rows [], name buttonhole}, items 'k ×2, bo ×2, k to {left 0}'
      Next row: make buttonhole, k2, yo, k to end → row: label {rows [], name buttonhole}, items 'k ×2, yo, k to {left 0}'
      Next row: {work a|make the|form a} {buttonhole|button hole} {as follows|}: k2, yo, k to end → row: label {rows [], name buttonhole}, items 'k ×2, yo, k to {left 0}'
      {Row 5: as row 1|Row 5: same as row 1|Row 5: work as for row 1|Row 5: like row 1|Row 5: rep row 1|Row 5: as 1st row|Row 5: as the first row} → row: label {rows [5]}, items '', like 1
      Row 5: as for the second row → row: label {rows [5]}, items '', like 2
      Rows 5-6: as rows {1-2|1 and 2|1 to 2|1 through 2} → row: label {rows [5; 6]}, items '', like 1, likeTo 2
      Row 5: rep row 1 to end → row: label {rows [5]}, items '', like 1
      Row 6: as row 2 to row 1 → row: label {rows [6]}, items '', like 2
      Row 1: k 1 row, dec 4 → row: label {rows [1]}, items '{evenly, change -4, work k}'
      Row 1: k 1 row, inc 4 → row: label {rows [1]}, items '{evenly, change 4, work k}'
      Row 1: p 1 row, dec 4 → row: label {rows [1]}, items '{evenly, change -4, work p}'
      Row 1: p 1 row, inc 4 → row: label {rows [1]}, items '{evenly, change 4, work p}'
      Row 1: k 1 row, and {dec|decreasing} 4 sts {evenly|evenly across row|across} → row: label {rows [1]}, items '{evenly, change -4, work k}'
      {Next row: dec 1 st at each end|Next row: dec 1 st at both ends|Next row: dec 1 st each side|Next row: dec 1 st at each edge|Next row: dec 1 st at beg and end|Next row: dec 1 st each end of row|Next row: dec 1 st at each end of needle} → row: label {rows []}, items 'dec, patt to {left 'what follows'}, dec'
      {Next row: inc 1 st at each end|Next row: inc 1 st at both ends|Next row: inc 1 st each side|Next row: inc 1 st at each edge|Next row: inc 1 st at beg and end|Next row: inc 1 st each end of row|Next row: inc 1 st at each end of needle} → row: label {rows []}, items 'inc, patt to {left 'what follows'}, inc'
      Next row (WS): work in pattern, inc 1 st at each end → row: label {rows [], side WS}, items 'inc, patt to {left 'what follows'}, inc'
      Next row: k, dec 2 sts at each end → row: label {rows []}, items 'dec 2, patt to {left 'what follows'}, dec 2'
      Next row: p across, dec 1 st at each end (20 sts) → row: label {rows []}, items 'dec, patt to {left 'what follows'}, dec' (20)
      Next row: inc in first and last st → row: label {rows []}, items 'inc, patt to {left 'what follows'}, inc'
      Next 2 rows: bind off 6 sts at beg of each row → groups: work bo, edge beginning, groups [{stitches 6, rows 2, every 1}]
      Next 2 rows: bind off 6 sts at beg of each row (20 sts) → groups: work bo, edge beginning, groups [{stitches 6, rows 2, every 1}] (20)
      Next 4 rows: dec 1 st at each end → row: label {rows [], next 4}, items 'dec, patt to {left 'what follows'}, dec'
      Next 5 rows: work in rib → row: label {rows [], next 5}, items 'patt to {left 'what follows'}'
      Rows 5-8: work in st st → even: fabric {named, name stocking}, until {rows, n 4}
      Rows 5-8: in garter st → even: fabric {named, name garter}, until {rows, n 4}
      Rows 5-8: cont in k1, p1 rib → even: fabric {rib, face kp}, until {rows, n 4}
      Rows 5-8: work in st st, ending with a WS row → even: fabric {named, name stocking}, until {rows, n 4, end WS}
      Rows 5-8: starting with a k row, work in st st → even: fabric {named, name stocking}, firstLooks k, until {rows, n 4}
      Rows 7-50: work even in st st → even: fabric {named, name stocking}, until {rows, n 44}
      Row 4: dec 1 st at each end of this and every 3rd row 14 times more → shape: change -1, edge both, beats [{first 1, every 1, times 1}; {every 3, counted, times 14, further}]
      Rows 35-38: rep {last 2 rows|the last 2 rows|the previous 2 rows} {2 more times|twice|another 2 times|} → repeat rows: last 2, times 2, to 38
      Row 1: at arm edge bind off 8 sts, p to end → row: label {rows [1]}, items 'bo ×8, p to {left 0}'
      Row 1: at the {neck|front|armhole|shoulder} edge, bind off 8 sts, k to end → row: label {rows [1]}, items 'bo ×8, k to {left 0}'
      Row 1: rib across all sts → row: label {rows [1]}, items 'patt to {left 'what follows'}', all
      Row 1: k over all sts → row: label {rows [1]}, items 'k to {left 'what follows'}', all
    `),
  )('is read with what it works: $line', expectReading);

  it.each(
    table(`
      Row: k → row: items 'k to {left 'what follows'}'
      1 row: k → ✗ stitch or repeat expected @1
      Next row (dec: k2tog → ✗ bracket expected @21 )
      Next row (dec 1, k to last 3 sts) → row: label {rows []}, items 'dec, k to {left 3}'
      Row 5: (dec, k1) to end → row: label {rows [5]}, items '(dec, k) to {left 0}'
      Next row: dec 3 sts at each end → shape: change -3, edge both, beats []
      Next row: dec 1 st at beg → shape: change -1, edge beginning, beats []
      Next row: dec 1 st at each end and k 2 → ✗ stitch or repeat expected @20
      Rows 35-38: rep last 3 rows 2 more times → ✗ nothing before the repeat @17
      Rows 35-38: rep last 2 rows 3 more times → ✗ nothing before the repeat @17
      Row 35: rep last row 3 more times → ✗ nothing before the repeat @13
      Row 5: as row → ✗ stitch expected @14
      Row 5: as 2 sts → ✗ stitch or repeat expected @11
      Row 1: k 2 rows, dec 4 → ✗ stitch or repeat expected @12
      Row 1: k 1 row, dec → row: label {rows [1]}, items 'k, dec'
      2nd and every row: p → ✗ stitch or repeat expected @1
      3: k 4 rows → ✗ stitch or repeat expected @1
      3: cast on 10 sts → @4 cast on: stitches 10
      3: k 6 cm → ✗ stitch or repeat expected @1
      Next row: bind off 6 sts at beg of each row → row: label {rows []}, items 'bo ×6'
      Next 2 rows: k 5 sts → row: label {rows [], next 2}, items 'k ×5'
    `),
  )('is not read for more than it says: $line', expectReading);
});
