import { describe, it } from 'vitest';
import { table } from '../table.ts';
import { expectReading } from './said.ts';

/** How patterns are worded on pages of today: common practice, no published source. */
describe('what is pasted from a page', () => {
  it.each(
    table(`
      3: K1, ssk, k to last 4 sts, p1 → row: label {rows [3]}, items 'k, ssk, k to {left 4}, p'
      1-2: *K1, p1; rep from * to end → row: label {rows [1; 2]}, items '(k, p) to {left 0}'
      {4-6: as rows 1-2|Rows 4-6: as rows 1 to 2|Rows 4-6: work as rows 1 and 2} → row: label {rows [4; 5; 6]}, items '', like 1, likeTo 2
      28: Purl. → row: label {rows [28]}, items 'p to {left 'what follows'}'
      2: Knit 4 rows → ✗ stitch or repeat expected @1
      2: Knit until piece measures 5 in → ✗ stitch or repeat expected @1
      2: Cast on 20 sts → @4 cast on: stitches 20
      Rows 5-8: {work|cont} in {st st|stocking stitch} → even: fabric {named, name stocking}, until {rows, n 4}
      Rows 5-8: work in st st, ending with a WS row → even: fabric {named, name stocking}, until {rows, n 4, end WS}
      Rows 5-8: work in patt → row: label {rows [5; 6; 7; 8]}, items 'patt to {left 'what follows'}'
      Rows 35-38: rep {last 2 rows 2 more times|last 2 rows 2 times|the last 2 rows} → repeat rows: last 2, times 2, to 38
      Rows 35-38: rep last 2 rows once → ✗ nothing before the repeat @17
      Cast on 48 sts {onto larger needles|for lower edge of back|for the shoulder} → cast on: stitches 48
      Cast on 48 sts for back; k 1 row → cast on: stitches 48 | @26 rows: n 1, items 'k to {left 'what follows'}'
      Cast 48 sts {in the red wool|with MC} {on to|onto} a number 11 needle → cast on: stitches 48
      Cast 48 sts onto the needle, and k 1 row → cast on: stitches 48 | @34 rows: n 1, items 'k to {left 'what follows'}'
      Leave {the|} rem 17 sts on a {holder|spare needle or holder|spare needle, or stitch holder} {for the shoulder|for later|} → hold: which rest, stitches 17
      Leave sts on a holder for 3 needle bind off → hold: which all
      K1 [p1, k1], rpt to end → row: items 'k, (p, k) to {left 0}'
      K1 (p1, k1), k3 → row: items 'k, p, k, k ×3'
      {On next row|On the next row} cast off all sts knitways → bind off: rest
      Bind off 5 sts at neck edge, {work to end of row|k to end|work across} → groups: work bo, edge neck, groups [{stitches 5, rows 1, every 2}]
      Bind off 5 sts at neck edge, k to last 3 sts → groups: work bo, edge neck, groups [{stitches 5, rows 1, every 2}] | @30 row: items 'k to {left 3}'
      Rep {these 10 patt rows|these 10 rows} {4 times|another 4 times} → repeat rows: last 10, times 4
      Work rows 1-9 {of chart|from the chart} → ✗ stitch or repeat expected @1
      Work in rib for 3 cm, {10 rows|approx 10 rows} → even: fabric {pattern, words rib, name rib, else rib}, until {rows, n 10}
      Cont in st st until work measures 6 cm, 20 rows {total|in all|} → even: fabric {named, name stocking}, until {rows in all, n 20, from start}
      This is shaped as follows: cast off 4 sts at beg of next 2 rows → note: about aside | @28 groups: work bo, edge beginning, groups [{stitches 4, rows 2, every 1}]
      Rep this inc on every foll 8th row 2 times, then on every foll 6th row 3 times → repeat named: name '', beats [{every 8, counted, times 2}; {every 6, counted, times 3}]
      Cont in rib until work measures 5 cm, ending on a 2nd row and inc 17 sts evenly across last row → even: fabric {pattern, words rib, name rib, else rib}, until {length, mm 50, from start} | @63 evenly: change 17, on last
      Work {these|the rem|those} 8 sts in st st for 6 rows → even: fabric {named, name stocking}, until {rows, n 6}, over 8
      Break yarn, leaving a tail, k 2 rows → note: about yarn | @29 rows: n 2, items 'k to {left 'what follows'}'
      Break yarn, leaving a long tail, k 2 rows → note: about yarn | @34 rows: n 2, items 'k to {left 'what follows'}'
      Break yarn, leaving a tail of 20 cm, k 2 rows → note: about yarn | @38 rows: n 2, items 'k to {left 'what follows'}'
      Break yarn, leaving an end for sewing, k 2 rows → note: about yarn | @40 rows: n 2, items 'k to {left 'what follows'}'
      Break yarn, leaving a tail approx. 8 inches long, and place sts on st holder → note: about yarn | @55 hold: which all
      From 1st to 8th row sets patt → note: about aside
      Rows 1 to 8 form the pattern → note: about aside
      Sizes XS, M and L only: work in st st for 8 rows → ✗ stitch or repeat expected @1
      Row 25 (RS): join yarn A, k2, k to end → yarn: name A | row: told led, label {rows [25], side RS}, items 'k ×2, k to {left 0}'
      Rows 9-24: starting with a k row work 16 rows of st st → even: fabric {named, name stocking}, until {rows, n 16}, firstLooks k
      Knit 1 row, inc in every 10th st → @13 row: items '(k ×9, inc) to {left 'what follows'}'
      Cast on 48 sts on circular needle size 3 mm {/ US 2.5|(US 2.5)|} → cast on: stitches 48 | @16 needle: mm 3
      When piece measures 10 cm {bind|cast} off 3 sts at beg of next 2 rows → even: until {length, mm 100, from start} | @27 groups: work bo, edge beginning, groups [{stitches 3, rows 2, every 1}]
      When piece measures 10 cm you are done → ✗ stitch or repeat expected @1
      Work as for back until 15 rows {have been worked after|are completed past|after} armhole shaping → as for: piece {words back, name back}, reversing false, to {rows after, rows 15, from armhole, past}
      Work as for back until 15 rows from armhole → as for: piece {words back, name back}, reversing false, to {rows after, rows 15, from armhole}
      {Continue to work|Continue working|Work} on these 36 sts → work on: which these, stitches 36
      Row 1: k 36, turn and continue to work on these 36 sts → row: label {rows [1]}, items 'k ×36, {turn}' | @23 work on: which these, stitches 36
      Continue in st st, repeating inc row every 8th row 5 times → even: fabric {named, name stocking} | @20 repeat named: name inc, beats [{every 8, counted, times 5}]
      Decrease the back with following pattern: → note: about aside
      Decrease 2 sts with following pattern: → ✗ stitch or repeat expected @31
      Work this panel in k1, p1 rib as follows: → even: fabric {rib, face kp} | @31 note: about aside
      1st row of {pattern|the pattern|patt}: k 4, p 2 → row: label {rows [1]}, items 'k ×4, p ×2'
      Repeat rows 1 through 8 for {panel pattern|main pattern|rib} → repeat rows: from 1, to 8
      Work the same on the other side of the neck → other side: reversing false
      Keeping the rib going, cast off 15 sts at beg of next 2 rows → note: about aside | @24 groups: work bo, edge beginning, groups [{stitches 15, rows 2, every 1}]
      Keeping continuity of patt as set, work 6 rows → note: about pattern | @36 even: until {rows, n 6}
      Keeping continuity of patt and front border as set, work 6 rows → note: about pattern | @53 even: until {rows, n 6}
      Next row: k 9, turn, leaving rem sts {unworked|on needle} → row: label {rows []}, items 'k ×9, {turn}'
      Next row: k 9, leaving rem sts unworked → row: label {rows []}, items 'k ×9, unworked to {left 'what follows'}'
      Rep the last 2 rows 8 times more, or until {the sleeve measures about 3 in|work measures 8 cm} → repeat rows: last 2, times 8 | @35 note: about aside
      Rows 9-24 join yarn B, work 16 rows of st st → yarn: name B | even: fabric {named, name stocking}, until {rows, n 16}
      K2 (1st row = RS) → ✗ stitch or repeat expected @5
      Row 2 dec 3 sts each end → shape: change -3, edge both, beats []
    `),
  )('is read: $line', expectReading);
});
