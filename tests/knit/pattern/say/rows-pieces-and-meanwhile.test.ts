import { describe, it } from 'vitest';
import { table } from '../table.ts';
import { expectReading } from './said.ts';

/** Rows and their repeats, pieces as another one, what is done when and meanwhile; what looks like them and is told has ✗. Common practice, no published source. */
const lines: Readonly<Record<string, string>> = {
  'rows and repeats': `
    Work 6 rows → even: until {rows, n 6}
    Work 6 rows in st st → even: fabric {named, name stocking}, until {rows, n 6}
    Work 6 rows even → even: until {rows, n 6}
    Work even for 6 rows → even: until {rows, n 6}
    Work in st st for 6 rows, ending with a WS row → even: fabric {named, name stocking}, until {rows, n 6, end WS}
    Work 2 rows in garter st, then 4 rows in st st → even: fabric {named, name garter}, until {rows, n 2} | @32 even: fabric {named, name stocking}, until {rows, n 4}
    Work straight for 6 rows → even: until {rows, n 6}
    Cont straight until work measures 10 cm → even: until {length, mm 100, from start}
    Cont in rib until work measures 10 cm → even: fabric {pattern, words rib, name rib, else rib}, until {length, mm 100, from start}
    Cont in patt for 6 more rows → even: fabric {established}, until {rows, n 6}
    Cont in patt as set → even: fabric {established}
    Cont in patt as established → even: fabric {established}
    Beg with a k row, work 6 rows in st st → even: fabric {named, name stocking}, until {rows, n 6}, firstLooks k
    Beg with a p row, cont in st st for 5 rows → even: fabric {named, name stocking}, until {rows, n 5}, firstLooks p
    Knit 6 rows → rows: n 6, items 'k to {left 'what follows'}'
    Knit 1 row, purl 1 row → rows: n 1, items 'k to {left 'what follows'}' | @13 rows: n 1, items 'p to {left 'what follows'}'
    Knit 1 row, purl 1 row for 20 rows → even: fabric {named, name stocking}, until {rows, n 20}, firstLooks k
    Purl next row → rows: n 1, items 'p to {left 'what follows'}'
    Purl the next row → rows: n 1, items 'p to {left 'what follows'}'
    Knit across next row → row: items 'k to {left 'what follows'}'
    Knit next 3 rows → ✗ stitch or repeat expected @13
    K every row → even: fabric {named, name garter}
    P every row → even: fabric {named, name garter}
    Knit all rows → even: fabric {named, name garter}
    Work in k1, p1 rib for 6 rows → even: fabric {rib, face kp}, until {rows, n 6}
    Work in k2, p2 rib for 3 cm → even: fabric {rib, face kkpp}, until {length, mm 30, from here}
    Work in garter st (k every row) for 6 rows → even: fabric {named, name garter}, until {rows, n 6}
    Work in st st (k on RS, p on WS) for 6 rows → even: fabric {named, name stocking}, until {rows, n 6}
    Work in rev st st for 6 rows → even: fabric {named, name 'reverse stocking'}, until {rows, n 6}
    Work in moss st for 6 rows → even: fabric {named, name moss}, until {rows, n 6}
    Work in seed st for 6 rows → even: fabric {named, name moss}, until {rows, n 6}
    Work in ribbing for 6 rows → even: fabric {pattern, words rib, name rib, else rib}, until {rows, n 6}
    Work 8 rows (4 ridges) in garter st → ✗ stitch or repeat expected @14
    Work 4 ridges → even: until {rows, n 8}
    Work 4 ridges in garter st → even: fabric {named, name garter}, until {rows, n 8}
    Rep these 2 rows → repeat rows: last 2
    Rep these 2 rows twice more → repeat rows: last 2, times 2
    Rep these 2 rows 3 times → repeat rows: last 2, times 3
    Rep these 2 rows 3 times more → repeat rows: last 2, times 3
    Rep these 2 rows 3 times in all → repeat rows: last 2, times 2
    Rep last 2 rows until 20 sts rem → repeat rows: last 2, until {count, stitches 20}
    Rep last 2 rows until work measures 10 cm → repeat rows: last 2, until {length, mm 100, from start}
    Rep last row → repeat rows: last 1
    Rep last row 4 times → repeat rows: last 1, times 4
    Rep rows 1 and 2 → repeat rows: from 1, to 2
    Rep rows 1-4 twice → repeat rows: from 1, to 4, times 2
    Rep rows 1 to 4 until piece measures 10 cm, ending with row 4 → repeat rows: from 1, to 4, until {length, mm 100, from start, endRow 4}
    Rep from * to end → ✗ nothing before the repeat @12
    Rep from * 3 times → repeat from stars: stars 1, times 3
    Repeat Row 2 → repeat rows: from 2, to 2
    Repeat 1st and 2nd rows 3 times → repeat rows: from 1, to 2, times 3
    Rep dec row → ✗ nothing before the repeat @5
    Rep dec row every 4th row 5 times → repeat named: name dec, beats [{every 4, counted, times 5}]
    Rep the last 2 rows once → repeat rows: last 2, times 1
    Rep the last 2 rows 0 times → repeat rows: last 2, times 0
    Rep these 2 rows for pattern → repeat rows: last 2
    Rep these 4 rows for patt until work measures 10 cm → repeat rows: last 4, until {length, mm 100, from start}
    Repeat the above → ✗ nothing before the repeat @12
    Rows 1 and 2 form the pattern → note: about aside
    These 2 rows form st st → named rows: name '', rows 2
    These 2 rows form moss pattern → named rows: name moss, rows 2
  `,
  'as another': `
    Work as for back → as for: piece {words back, name back}, reversing false
    Work as for back, reversing shaping → as for: piece {words back, name back}, reversing
    Work same as back → as for: piece {words back, name back}, reversing false
    Work the same as for back → as for: piece {words back, name back}, reversing false
    Work exactly as back → as for: piece {words back, name back}, reversing false
    Work as given for back → as for: piece {words back, name back}, reversing false
    Work as for back to armhole → as for: piece {words back, name back}, reversing false, to {place, place armhole}
    Work as for back until there are 20 sts → as for: piece {words back, name back}, reversing false, to {count, stitches 20}
    Work as for back until 20 sts rem → as for: piece {words back, name back}, reversing false, to {count, stitches 20}
    Work as for back until work measures 10 cm → as for: piece {words back, name back}, reversing false, to {length, mm 100, from start}
    Work as for back until 4 rows before shoulder shaping → as for: piece {words back, name back}, reversing false, to {rows before, rows 4, place shoulder}
    Work as for back for 12 rows → ✗ stitch or repeat expected @18
    Work as for back to 5 cm less than back → as for: piece {words back, name back}, reversing false, to {less, mm 50}
    Work as for right front, reversing all shapings → as for: piece {words 'right front', name 'right front'}, reversing
    Work to match right front, reversing shaping → as for: piece {words 'right front', name 'right front'}, reversing
    Work as for left front but omitting buttonholes → @28 buttonholes: beats [], omitted | as for: piece {words 'left front', name 'left front'}, reversing false
    Same as back → as for: piece {words back, name back}, reversing false
    Same as for back until armhole → as for: piece {words back, name back}, reversing false, to {place, place armhole}
    Shape armhole as for back → as for: piece {words back, name back}, reversing false, only armhole
    Shape armholes same as back → as for: piece {words back, name back}, reversing false, only armhole
    Shape shoulder as for back → as for: piece {words back, name back}, reversing false, only shoulder
    Shape cap as for other sleeve → as for: piece {words 'other sleeve', name sleeve}, reversing false, only cap
    Complete as for back → as for: piece {words back, name back}, reversing false
    Complete as given for first side → as for: piece {words 'first side'}, reversing false
    Finish as for right side → other side: reversing false
    Make another sleeve → note: about another, makes 2
    Make 2 → note: about another, makes 2
    Make a second piece the same → note: about another, makes 2
    Make another one in the same way → ✗ stitch or repeat expected @25
  `,
  'when and meanwhile': `
    When work measures 10 cm, bind off 5 sts at beg of next 2 rows → even: until {length, mm 100, from start} | @27 groups: work bo, edge beginning, groups [{stitches 5, rows 2, every 1}]
    When piece measures 10 cm from beg, shape armholes → even: until {length, mm 100, from start} | @37 heading: title {words 'shape armholes', pattern 'shape armholes', divides false}, sideOnly false, talk false, places [armhole]
    When there are 20 sts, work even → even: until {count, stitches 20} | @24 even
    When 20 sts remain, bind off → even: until {count, stitches 20} | @21 bind off
    When armhole measures 10 cm, shape shoulders: bind off 5 sts at beg of next 4 rows → even: until {length, mm 100, from armhole} | @47 groups: work bo, edge beginning, groups [{stitches 5, rows 4, every 1}]
    When front measures same as back to shoulder, bind off → even: until {same length, piece {words back, name back}, to shoulder} | @47 bind off
    At 10 cm, dec 1 st at each end → ✗ stitch or repeat expected @1
    At the same time, when work measures 10 cm, dec 1 st at neck edge every row 3 times → at the same time: after {length, mm 100, from start} | @45 shape: change -1, edge neck, beats [{first 1, every 1, counted, times 3}]
    At the same time dec 1 st at neck edge every row 3 times → at the same time | @18 shape: change -1, edge neck, beats [{first 1, every 1, counted, times 3}]
    AT SAME TIME, shape neck → at the same time | ✗ stitch or repeat expected @15
    And at the same time dec 1 st at each end of every 4th row → @5 at the same time | @22 shape: change -1, edge both, beats [{every 4}]
    Meanwhile, dec 1 st at each end of every 4th row → at the same time | @12 shape: change -1, edge both, beats [{every 4}]
    While working these rows, dec 1 st at each end of every 4th row → ✗ stitch or repeat expected @7
    Then bind off → @6 bind off
    Now work in st st for 6 rows → @5 even: fabric {named, name stocking}, until {rows, n 6}
    Next, bind off → row: items 'bo to {left 'what follows'}'
    Finally, bind off → ✗ stitch or repeat expected @1
    Bind off → bind off
    Bind off all sts → bind off: rest
    Bind off loosely → bind off
    Bind off in pattern → bind off
    Bind off in rib → bind off
    Bind off rem sts → bind off: rest
    Bind off rem 20 sts → bind off: stitches 20, rest
    Bind off 5 sts → bind off: stitches 5
    Bind off 5 sts, k to end → row: items 'bo ×5, k to {left 0}'
    Bind off centre 20 sts → row: items 'bo ×20 in the middle'
    Bind off the center 20 sts → row: items 'bo ×20 in the middle'
    Cast off → bind off
    Cast off knitwise → bind off
    Fasten off → note: about yarn
    Cast on 20 sts → cast on: stitches 20
    Cast on 20 sts loosely → cast on: stitches 20
    Cast on 20 sts with 4 mm needles → cast on: stitches 20 | @16 needle: mm 4
    Cast on 20 sts in A → cast on: stitches 20 | @16 yarn: name A
    Cast on 20 → cast on: stitches 20
    Loosely cast on 20 sts → cast on: stitches 20
    Cast on 20 sts, turn → cast on: stitches 20 | @17 turn
    Turn, cast on 20 sts → turn | @7 row: items 'co ×20'
    Turn → turn
    Turn work → turn
    Turn and cast on 5 sts → turn | @10 row: items 'co ×5'
  `,
};

describe.each(Object.entries(lines))('%s', (_, some) => {
  it.each(table(some))('$line', expectReading);
});
