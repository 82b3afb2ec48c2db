import { describe, it } from 'vitest';
import { table } from '../table.ts';
import { expectReading } from './said.ts';

/** Wordings of leaflets of all times: common practice, no published source. What each is read as is reckoned by hand. */
describe('further wordings', () => {
  it.each(
    table(`
      Bind off 6 sts for armhole → groups: work bo, edge armhole, groups [{stitches 6, rows 1, every 2}], byPurpose
      Bind off 6 sts for the underarm → groups: work bo, edge armhole, groups [{stitches 6, rows 1, every 2}], byPurpose
      Bind off 6 sts 3 times from armhole side → groups: work bo, edge armhole, groups [{stitches 6, rows 3, every 2}]
      Bind off rem 24 sts k as k and p as p → bind off: stitches 24, rest
      Bind off loosely, knitting the k sts; purling the p sts → bind off
      Bind off 4 sts at beg of next 2 rows, then rem 13 sts → groups: work bo, edge beginning, groups [{stitches 4, rows 2, every 1}] | @44 bind off: rest, stitches 13
      Cast off 2 sts at the beginning of the next row and the next alternate row and 1 st on the next 3 alternate rows → groups: work bo, edge beginning, groups [{stitches 2, rows 1, every 1}; {stitches 2, rows 1, every 2}; {stitches 1, rows 3, every 2}]
      Bind off and decrease for underarm same as back → as for: piece {words back, name back}, reversing false, only armhole
      Slip the first 26 sts off on an extra needle → hold: which first, stitches 26
      Place first 9 sts at neck edge on st-holder → hold: which first, stitches 9
      Slip center 24 sts for back neck to second holder → hold: which centre, stitches 24
      Place rem sts of each shoulder on st holders → hold: which rest
      Finish this side of neck to correspond → other side: reversing false
      Work the other side accordingly → other side: reversing false
      Work left front to correspond → heading: title {words 'left front', pattern 'left front', divides false, half left}, sideOnly false, talk false, places [], piece {name 'left front', makes 1, half left} | as for: piece {words 'right front', name 'right front'}, reversing
      Make right front to match left front, reversing shapings → heading: title {words 'right front', pattern 'right front', divides false, half right}, sideOnly false, talk false, places [], piece {name 'right front', makes 1, half right} | as for: piece {words 'left front', name 'left front'}, reversing
      Work left front to correspond, omitting buttonholes → heading: title {words 'left front', pattern 'left front', divides false, half left}, sideOnly false, talk false, places [], piece {name 'left front', makes 1, half left} | @32 buttonholes: beats [], omitted | as for: piece {words 'right front', name 'right front'}, reversing
      Begin St st → even: fabric {named, name stocking}
      Make 8 rows → even: until {rows, n 8}
      On the remaining sts work in ribbing of k 2, p 2, for 2 inches → even: fabric {rib, face kkpp}, until {length, mm 50.8, from here}
      Knit 2, purl 2 stitches for 4 inches → even: fabric {rib, face kkpp}, until {length, mm 101.6, from here}
      K 1 st, P 1 st (ribbing) for 3 inches → even: fabric {rib, face kp}, until {length, mm 76.19999999999999, from here}
      Knit plain until sweater measures 25 inches → even: fabric {named, name garter}, until {length, mm 635, from start}
      Cont without further inc until sleeve measures 48 cm from beg → even: until {length, mm 480, from start}
      Work straight in st st only until work measures 5 inches → even: fabric {named, name stocking}, until {length, mm 127, from start}
      Work 12 rows in striped st st → even: fabric {named, name stocking}, until {rows, n 12}
      Work as high as back → even: until {same length, piece {words back, name back}}
      Work to same length as back → even: until {same length, piece {words back, name back}}
      Bind off 8 sts at armhole edge every other row until all sts are bound off → groups: work bo, edge armhole, groups [{stitches 8, rows 1, every 2, toCount 0}]
      Work in st st until piece measures 55 rows → even: fabric {named, name stocking}, until {rows in all, n 55, from start}
      Work until 12 rows in all have been made → even: until {rows in all, n 12, from start}
      Work even until armhole measures 8 inches, measuring straight up from where the 7 sts were bound off → even: until {length, mm 203.2, from armhole}
      Work even until piece measures from first row of armhole shaping 7 inches → even: until {length, mm 177.79999999999998, from armhole}
      Work even until piece measures 14 in, or desired length from start to underarm → even: until {length, mm 355.59999999999997, from start}
      Work even until piece measures 4 in from dividing row → even: until {length, mm 101.6, from heading}
      Cont in patt until work measures 68 cm, working last row on wrong side → even: fabric {established}, until {length, mm 680, from start, end WS}
      Dec 1 st at each end of every other row until 54 sts are on needle → shape: change -1, edge both, beats [{every 2, toCount 54}]
      With wrong side facing, cast off 5 sts, p to end → next side: side WS | @25 row: items 'bo ×5, p to {left 0}'
      Right side facing, cast off → next side: side RS | @20 bind off
      On the next row K 52 sts, k2tog, k to end → row: label {rows []}, items 'k ×52, k2tog, k to {left 0}'
      Dec row 1: k2tog, k to end → row: label {rows [], name dec}, items 'k2tog, k to {left 0}'
      Inc row P2, m1, p to end → row: label {rows [], name inc}, items 'p ×2, m1, p to {left 0}'
      Last row [WS]: P16, bo next 25 sts, p to end → row: label {rows [], side WS}, items 'p ×16, bo ×25, p to {left 0}'
      97-98th rows: knit → row: label {rows [97; 98]}, items 'k to {left 'what follows'}'
      2d row: knit → row: label {rows [2]}, items 'k to {left 'what follows'}'
      Row 1 (Right side of work): K1, p1 → row: label {rows [1], side RS}, items 'k, p'
      Row 1: at arm edge bind off 8 sts, p to end → row: label {rows [1]}, items 'bo ×8, p to {left 0}'
      Next 2 rows: bind off 6 sts at beg of each row → groups: work bo, edge beginning, groups [{stitches 6, rows 2, every 1}]
      Continue decreasing thus on next and every following 6th row until 108 sts remain → repeat named: name '', beats [{first 1, every 1, times 1}; {every 6, toCount 108}]
      Cont to dec in this way every 4th row 3 times → repeat named: name '', beats [{every 4, counted, times 3}]
      These 2 rows form the rib, repeat a further 4 times → named rows: name rib, rows 2 | @28 repeat rows: last 2, times 4
      Work 10 rows in 1x1 rib as given for the back → even: fabric {rib, face kp}, until {rows, n 10}
      Work over these last 30 sts as before → work on: which these, stitches 30
      Cont working left side of back only → work on: which these
      Work over 16 left front sts only → work on: which only, stitches 16
      Return holder sts to working needle, join yarn → rejoin
      Cast 3 stitches onto your size 15 needle → cast on: stitches 3
      Make neck hole as follows: → note: about aside
      Begin the crown decreases thus; → heading: title {words 'crown decreases', pattern 'crown decreases', divides false}, sideOnly false, talk false, places []
      Inc 1 st each side 5 times, 13 inches → shape: change 1, edge both, beats [{every 2, times 5}] | @29 note: about aside
      Work across row in pattern to within 4 sts, K2tog, K2 → row: items 'patt to {left 4}, k2tog, k ×2'
      K across 1st 92 sts, turn → row: items 'k ×92, {turn}'
      Rib 2, work 2 tog, rib 2 → row: items 'patt ×2, dec, patt ×2'
      K5, slip 1 as if to p (yarn in back), k5 → row: items 'k ×5, sl wyib, k ×5'
      K7, p1, k1, over the next 7 sts, k7 → row: items 'k ×7, (p, k) ×3, p, k ×7'
      Work 2 in, inc'ing 3 sts on last row → even: until {length, mm 50.8, from here} | @12 evenly: change 3, on last
      Change to rib, dec'ing 4 sts evenly across next row → even: fabric {pattern, words rib, name rib, else rib} | @16 evenly: change -4, on next
      Cast off 3 sts at beg of next row, then 3 sts at neck edge on foll alt rows, 3 times → groups: work bo, edge beginning, groups [{stitches 3, rows 1, every 1}] | @41 groups: work bo, edge neck, groups [{stitches 3, rows 3, every 2}]
      Cast off 3 sts, then 3 sts at neck edge on foll alt rows, 3 times → bind off: stitches 3 | @22 groups: work bo, edge neck, groups [{stitches 3, rows 3, every 2}]
      Increase in first and last st of next row, then in every 6th row 4 times → shape: change 1, edge both, beats [{first 1, every 1, times 1}; {every 6, counted, times 4}]
      P 1 row on WS for ridge → @9 next side: side WS | rows: n 1, items 'p to {left 'what follows'}' | @15 note: about aside
      Break off A and B → note: about yarn
      Work as given for Back until 10 rows less have been worked than on Back to start of shoulder shaping, thus ending with a WS row → as for: piece {words back, name back}, reversing false, to {rows before, rows 10, place shoulder}
      Make another sleeve the same → note: about another, makes 2
      Work a second piece in same way → note: about another, makes 2
      Cast off in rib on right side → bind off
      At neck edge, bo 6 sts once, 2 sts twice, then dec 1 st every other row 3 times → groups: work bo, edge neck, groups [{stitches 6, rows 1, every 2}; {stitches 2, rows 2, every 2}] | @48 shape: change -1, edge neck, beats [{every 2, counted, times 3}]
      Dec 1 st at neck edge every row 4 times, then dec 1 st every other row 3 times → shape: change -1, edge neck, beats [{first 1, every 1, counted, times 4}] | @47 shape: change -1, edge neck, beats [{every 2, counted, times 3}]
      Work 4 rows as follows: → note: about aside, rows 4
      Work 4 rows in st st as follows: → note: about aside, rows 4
      Work 4 rows, then shape the waist as follows: → even: until {rows, n 4}
      Rib 6 rows, inc 1 st in last row → even: fabric {pattern, words rib, name rib, else rib}, until {rows, n 6} | @13 evenly: change 1, on last
      Rib for 5 cm → even: fabric {pattern, words rib, name rib, else rib}, until {length, mm 50, from here}
      Work to armhole as for back → as for: piece {words back, name back}, reversing false, to {place, place armhole}
      Cast on 6 sts at beg of next 2 rows for sleeves → groups: work co, edge beginning, groups [{stitches 6, rows 2, every 1}]
      Pick up and knit 80 sts along neck edge and work in k1, p1 rib for 5 rows → pick up: items 'pu ×80', edges [{stitches 80, along 'neck edge'}] | @45 even: fabric {rib, face kp}, until {rows, n 5}
      Work 4 cm in rib, ending with a 1st rib row → even: fabric {pattern, words rib, name rib, else rib}, until {length, mm 40, from here, endRow 1}
      Shape armholes (RS) – bind off 5 sts at beg of the next 2 rows – 64 sts → heading: title {words 'shape armholes', pattern 'shape armholes', divides false}, sideOnly false, talk false, places [armhole] | @16 next side: side RS | @23 groups: work bo, edge beginning, groups [{stitches 5, rows 2, every 1}] (64)
      Shape left shoulder (RS) cast off 10 sts at beg of next and foll alt row → heading: title {words 'shape left shoulder', pattern 'shape left shoulder', divides, half left}, sideOnly, talk false, places [shoulder] | @21 next side: side RS | @26 groups: work bo, edge beginning, groups [{stitches 10, rows 1, every 1}; {stitches 10, rows 1, every 2}]
      K next row for hem turning → rows: n 1, items 'k to {left 'what follows'}' | @12 note: about aside
      Work even until piece measures 17 in from beg, end by working a right side row → even: until {length, mm 431.79999999999995, from start, end RS}
    `),
  )('are read: $line', expectReading);

  it.each(
    table(`
      Work 10 rows straight and then increase on the next row → even: until {rows, n 10} | ✗ stitch or repeat expected @41
      Knit 7 ridges on each shoulder, cast on 24 sts → ✗ stitch or repeat expected @15
      Bind off 6 sts for armholes on both sides → groups: work bo, edge both, groups [{stitches 6, rows 2, every 1}]
      Slip the first 3 sts on an extra needle and hold in front → ✗ stitch or repeat expected @22
      Work left sleeve to correspond → ✗ stitch or repeat expected @1
      Begin at lower edge → ✗ stitch or repeat expected @1
      Make 2 sleeves → ✗ stitch or repeat expected @8
      Work in k2 sts, p2 rib for 6 rows → ✗ stitch or repeat expected @1
      Until all sts → ✗ stitch or repeat expected @1
      Continue decreasing on next and every following 6th row until 108 sts remain → ✗ stitch or repeat expected @1
      Dec row 1 and 2 → ✗ stitch or repeat expected @9
      Repeat last row 3 times → repeat rows: last 1, times 3
      Make buttonhole as follows: k2, bind off 2 sts, k to end → row: label {rows [], name buttonhole}, items 'k ×2, bo ×2, k to {left 0}'
      Make 4 rows as follows: knit → ✗ stitch or repeat expected @1
      With wrong side facing → note: about facing
      Sl 1, yarn in back → row: items 'sl wyib'
      Rep rows 1 and 2 → repeat rows: from 1, to 2
      Cast 3 stitches off → ✗ stitch or repeat expected @1
      K 1 st, P 1 st → row: items 'k, p'
      Knit 2, p1, k1, over 1 st → ✗ stitch or repeat expected @22
      Work 3 in rib, 6 inches → ✗ stitch or repeat expected @16
      Inc row → row: items inc
      Bind off 5 sts at beg of next 2 rows, then dec 1 st every row 3 times → groups: work bo, edge beginning, groups [{stitches 5, rows 2, every 1}] | ✗ stitch or repeat expected @53
      Bind off 5 sts at neck edge, then 4 sts at armhole edge every other row → groups: work bo, edge neck, groups [{stitches 5, rows 1, every 2}] | ✗ stitch or repeat expected @35
      Make another sleeve reversing shaping → ✗ stitch or repeat expected @1
      Make other sleeve → note: about another, makes 2
      Work 4 rows as follows: knit to end → ✗ stitch or repeat expected @1
      Inc in first and last st → ✗ stitch or repeat expected @8
      Rib 6 sts → row: items 'patt ×6'
      Work until armhole measures same as back → even: until {same length, piece {words back, name back}}
      Neck (RS) → ✗ stitch or repeat expected @1
      Dec row (RS) – k1, k2tog, k to end → row: label {rows [], name dec, side RS}, items 'k, k2tog, k to {left 0}'
      Next row (RS): k2 → row: label {rows [], side RS}, items 'k ×2'
    `),
  )('are not read for more than they say: $line', expectReading);
});
