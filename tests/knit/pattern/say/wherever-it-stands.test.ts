import { describe, it } from 'vitest';
import { table } from '../table.ts';
import { expectReading } from './said.ts';

/** The same orders with their parts in another place, and what looks like them and is told (✗). Common practice, no published source. */
const lines: Readonly<Record<string, string>> = {
  'what comes now': `
    Begin with the sleeves → heading: title {words sleeves, pattern sleeves, divides false}, sideOnly false, talk false, places [], piece {name sleeves, makes 2}
    Start with the left front → heading: title {words 'left front', pattern 'left front', divides false, half left}, sideOnly false, talk false, places [], piece {name 'left front', makes 1, half left}
    Make the back → heading: title {words back, pattern back, divides false}, sideOnly false, talk false, places [], piece {name back, makes 1}
    Work the left front → heading: title {words 'left front', pattern 'left front', divides false, half left}, sideOnly false, talk false, places [], piece {name 'left front', makes 1, half left}
    K the back → heading: title {words back, pattern back, divides false}, sideOnly false, talk false, places [], piece {name back, makes 1}
    Knit the upper back → heading: title {words 'upper back', pattern 'upper back', divides false}, sideOnly false, talk false, places [], piece {name 'upper back', makes 1}
    Beg the sleeves: → heading: title {words sleeves, pattern sleeves, divides false}, sideOnly false, talk false, places [], piece {name sleeves, makes 2}
    Work left front → ✗ stitch or repeat expected @1
    Divide the work for the neck → heading: title {words 'for the neck', pattern 'for the neck', divides}, sideOnly false, talk false, places [neck]
    Divide work for neck → heading: title {words 'for neck', pattern 'for neck', divides}, sideOnly false, talk false, places [neck]
    Divide sts for neck → heading: title {words 'for neck', pattern 'for neck', divides}, sideOnly false, talk false, places [neck]
    Instructions for back → heading: title {words back, pattern back, divides false}, sideOnly false, talk false, places [], piece {name back, makes 1}
    Instructions back → heading: title {words 'instructions back', pattern 'instructions back', divides false}, sideOnly false, talk false, places []
    Divide for neck as follows: → heading: title {words 'divide for neck', pattern 'divide for neck', divides}, sideOnly false, talk false, places [neck]
    Left front (make 2, the second as a mirror image: first the left front): → heading: title {words 'left front', pattern 'left front', divides false, half left}, sideOnly false, talk false, places [], piece {name 'left front', makes 2, mirrored, half left}
    … LEFT FRONT → heading: title {words 'left front', pattern 'left front', divides false, half left}, sideOnly false, talk false, places [], piece {name 'left front', makes 1, half left}
    … Shape neck → heading: title {words 'shape neck', pattern 'shape neck', divides}, sideOnly false, talk false, places [neck]
    … shape neck → ✗ stitch or repeat expected @1
    … Shape the left back neck → ✗ stitch or repeat expected @1
  `,
  'what is only told': `
    Back now measures about 40 cm → note: about aside
    Piece should measure 40 cm from cast-on → note: about aside
    Make neck hole as follows: → note: about aside
    Decrease the back with following pattern: → note: about aside
    Keeping neck edge straight → note: about aside
    Keep the armhole edge even → note: about aside
    For a fold line → note: about aside
    Work in rows back and forth on the circular needle → note: about aside
    Beg with row 1 of patt, → note: about aside
    Begin to shape the neck → note: about aside
  `,
  'how far it goes': `
    Work even until piece measures 10 cm, ending with row 4 of pattern → even: until {length, mm 100, from start, endRow 4}
    Work even until piece measures 10 cm, ending with a 4th patt row → even: until {length, mm 100, from start, endRow 4}
    Work even until piece measures 10 cm, ending with third row of patt → even: until {length, mm 100, from start, endRow 3}
    Work even until piece measures 10 cm, ending with first row → even: until {length, mm 100, from start, endRow 1}
    Work even until piece measures 10 cm, with RS facing for next row → even: until {length, mm 100, from start, end WS}
    Work even until piece measures 10 cm, with WS facing for the next row → even: until {length, mm 100, from start, end RS}
    Work even for 3 cm, 10 rows → even: until {rows, n 10}
    Work even for 3 cm, that is 10 rows → even: until {rows, n 10}
    Work even for 3 cm (approx 10 rows), ending with a WS row → even: until {rows, n 10, end WS}
    Work even until work measures 6 cm, 20 rows in all → even: until {rows in all, n 20, from start}
    Work even until work measures 6 cm, 20 rows → even: until {rows in all, n 20, from start}
    Work even for 3 cm, 10 rows from start → even: until {rows in all, n 10, from start}
  `,
  'shaping beside rows': `
    Work 6 rows, dec 1 st at neck edge on every row → even: until {rows, n 6} | @14 at the same time | @14 shape: change -1, edge neck, beats [{first 1, every 1, times 6}]
    Work 6 rows, then dec 1 st at neck edge on every row → even: until {rows, n 6} | @19 shape: change -1, edge neck, beats [{first 1, every 1}]
    Work 5 rows, dec 1 st at neck edge on every other row → ✗ stitch or repeat expected @54
    Work 6 rows, dec 1 st at neck edge on every other row → even: until {rows, n 6} | @14 at the same time | @14 shape: change -1, edge neck, beats [{every 2, times 3}]
    Knit 6 rows, dec 1 st at each end of every other row → even: fabric {named, name garter}, until {rows, n 6} | @14 at the same time | @14 shape: change -1, edge both, beats [{every 2, times 3}]
    Purl 6 rows, dec 1 st at each end of every other row → ✗ stitch or repeat expected @53
    Work 4 rows, dec 1 st at each end of 3rd row → even: until {rows, n 4} | @14 at the same time | @14 shape: change -1, edge both, beats [{first 3, every 3, times 1}]
    Work 4 rows, dec 1 st at each end of next row → even: until {rows, n 4} | @14 shape: change -1, edge both, beats [{first 1, every 1, times 1}]
    Work 4 rows, at the same time dec 1 st at each end of 1st and 3rd rows → even: until {rows, n 4} | @14 at the same time | @31 shape: change -1, edge both, beats [{first 1, every 1, times 1}; {every 2, times 1}]
    Work until there are 64 sts, inc 1 st each end every 4th row → @30 shape: change 1, edge both, beats [{every 4, toCount 64}]
    Work in st st until there are 64 sts, inc 1 st each end every 4th row → even: fabric {named, name stocking} | @39 shape: change 1, edge both, beats [{every 4, toCount 64}]
    Work in st st for 5 cm, increasing 1 st each end every 4th row → even: fabric {named, name stocking}, until {length, mm 50, from here} | @25 at the same time | @25 shape: change 1, edge both, beats [{every 4, until {length, mm 50, from here}}]
    Purl 1 row, inc 1 st at each end → row: items 'inc, p to {left 'what follows'}, inc'
    Purl 1 row, inc 1 st at end → row: items 'p to {left 'what follows'}, inc'
    Purl 1 row, dec 2 sts at beg → row: items 'dec 2, p to {left 'what follows'}'
    Purl 1 row, dec 1 st at neck edge → ✗ stitch or repeat expected @34
    Purl 2 rows, inc 1 st at each end → ✗ stitch or repeat expected @34
    K 1 row, inc in every 10th st → @10 row: items '(k ×9, inc) to {left 'what follows'}'
    K 2 rows, inc in every 10th st → ✗ stitch or repeat expected @31
    Dec 1 st at armhole edge on next 3 rows and 1 st at neck edge on every 4th row 4 times → @45 shape: change -1, edge neck, beats [{every 4, counted, times 4}] | at the same time | shape: change -1, edge armhole, beats [{first 1, every 1, times 3}]
    Dec 1 st at neck edge on next 3 rows and 1 st at armhole edge on every 4th row 4 times → @42 shape: change -1, edge armhole, beats [{every 4, counted, times 4}] | at the same time | shape: change -1, edge neck, beats [{first 1, every 1, times 3}]
    Bind off 3 sts at armhole edge and dec 1 st at neck edge on next 3 rows → @36 shape: change -1, edge neck, beats [{first 1, every 1, times 3}] | at the same time | groups: work bo, edge armhole, groups [{stitches 3, rows 1, every 2}]
  `,
  'how often and in which rows': `
    Inc 1 st 6 times at left end on every 4th row → shape: change 1, edge left, beats [{every 4, times 6, counted}]
    Inc 1 st 6 times at left end → shape: change 1, edge left, beats [{every 2, times 6, counted}]
    Inc 1 st 6 times at left end on next 3 rows → ✗ stitch or repeat expected @18
    Inc 1 st 6 times at left end on every 4th row until there are 40 sts → ✗ stitch or repeat expected @18
    Inc 1 st 6 times at left end on every 4th row, then every 6th row → ✗ stitch or repeat expected @18
    Dec 1 st at beg of row → shape: change -1, edge beginning, beats []
    Dec 1 st at end of the row → shape: change -1, edge end, beats []
    Dec 1 st at beg of row, knit to end → shape: change -1, edge beginning, beats [] | @25 row: items 'k to {left 0}'
    Dec 1 st at beg of row 4 → shape: change -1, edge beginning, beats [{first 4, every 4, times 1}]
    Dec 1 st at neck edge and 1 st at armhole edge on next 3 rows → shape: change -1, edge both, beats [{first 1, every 1, times 3}]
    Dec 1 st at neck edge and 2 sts at armhole edge on next 3 rows → ✗ stitch or repeat expected @27
    Work 2 sts tog at neck edge on every row 3 times → shape: change -1, edge neck, beats [{first 1, every 1, counted, times 3}]
    2 sts tog at neck edge on next 3 rows → shape: change -1, edge neck, beats [{first 1, every 1, times 3}]
    Dec 1 st each end every 4th row and foll 2 rows → shape: change -1, edge both, beats [{every 4}; {every 1, times 2}]
    Dec 1 st each end each RS row 3 times → shape: change -1, edge both, beats [{every 2, side RS, counted, times 3}]
    Dec 1 st each end every 2nd ridge 3 times → shape: change -1, edge both, beats [{every 4, counted, times 3}]
    Dec 1 st each end every inch 3 times → shape: change -1, edge both, beats [{every 1, everyMm 25.4, counted, times 3}]
    Dec 1 st each end every 2 cm 3 times → shape: change -1, edge both, beats [{every 1, everyMm 20, counted, times 3}]
    Dec 1 st each end every alt row foll 3 times → shape: change -1, edge both, beats [{every 2, counted, times 3}]
    Dec 1 st each end every 4th → shape: change -1, edge both, beats [{every 4}]
    Dec 1 st each end each 4th row, 3 times → shape: change -1, edge both, beats [{every 4, counted, times 3}]
    Dec 1 st each end alternately every 2nd and 4th row 6 times → shape: change -1, edge both, beats [{every 2, and 4, counted, times 6}]
    Next 3 rows: dec 1 st at each end of each row → shape: change -1, edge both, beats [{first 1, every 1, times 3}]
    Next 4 rows: dec 1 st at neck edge on every other row → shape: change -1, edge neck, beats [{every 2}]
    Next 4 rows: dec 1 st at neck edge until 20 sts remain → ✗ stitch or repeat expected @23
    Next 4 rows: dec 1 st at neck edge twice → shape: change -1, edge neck, beats [{every 2, times 2}]
  `,
  groups: `
    For armholes, bind off 5 sts at beg of next 2 rows → groups: work bo, edge beginning, groups [{stitches 5, rows 2, every 1}]
    For shoulder bind off 5 sts at armhole edge twice → @14 groups: work bo, edge armhole, groups [{stitches 5, rows 2, every 2}]
    Bind off shoulder at armhole edge 5 sts twice → groups: work bo, edge armhole, groups [{stitches 5, rows 2, every 2}]
    At armhole edge bind off 5 sts every other row twice → groups: work bo, edge armhole, groups [{stitches 5, rows 2, every 2}]
    At armhole edge, bind off 5 sts, then 3 sts, then 2 sts every other row → groups: work bo, edge armhole, groups [{stitches 5, rows 1, every 2}; {stitches 3, rows 1, every 2}; {stitches 2, rows 1, every 2}]
    At each end of next 2 rows bind off 5 sts → groups: work bo, edge both, groups [{stitches 5, rows 2, every 1}]
    Bind off 5 sts at each end of next 2 rows → groups: work bo, edge both, groups [{stitches 5, rows 2, every 1}]
    Bind off 5 sts at each end of next 3 rows → groups: work bo, edge both, groups [{stitches 5, rows 6, every 1}]
    Bind off 5 sts at each end of next row → groups: work bo, edge both, groups [{stitches 5, rows 2, every 1}]
    Bind off 5 sts at each end of every other row twice → groups: work bo, edge both, groups [{stitches 5, rows 4, every 1}]
    Bind off 5 sts at each end → groups: work bo, edge both, groups [{stitches 5, rows 2, every 1}]
    Bind off 5 sts at beg of next row, knit to end → groups: work bo, edge beginning, groups [{stitches 5, rows 1, every 1}]
    Bind off 5 sts at neck edge once, 3 sts at armhole edge once → groups: work bo, edge neck, groups [{stitches 5, rows 1, every 2}] | @35 groups: work bo, edge armhole, groups [{stitches 3, rows 1, every 2}]
    Cast on 5 sts at end of next 2 rows → groups: work co, edge end, groups [{stitches 5, rows 2, every 1}]
    Bind off 6 sts for armhole. → groups: work bo, edge armhole, groups [{stitches 6, rows 1, every 2}], byPurpose
    Bind off 6 sts for neck edge. → groups: work bo, edge neck, groups [{stitches 6, rows 1, every 2}], byPurpose
    Commencing at armhole edge, bind off 5 sts every other row twice → groups: work bo, edge armhole, groups [{stitches 5, rows 2, every 2}]
    Bind off 4 sts at armhole edge every other row until 12 sts remain → groups: work bo, edge armhole, groups [{stitches 4, rows 1, every 2, toCount 12}]
    Next 2 rows: bind off 3 sts at the beginning of each row → groups: work bo, edge beginning, groups [{stitches 3, rows 2, every 1}]
    Rem 22 sts bind off for neck → bind off: rest, stitches 22
    Rem 22 sts bind off loosely in pattern → bind off: rest, stitches 22
    Rem sts bind off for the neck in rib → bind off: rest
    Rem 22 sts bind off for neck and fasten off → ✗ stitch or repeat expected @1
  `,
  'rows that are spelled': `
    Dec 1 st at each end of next row as follows: k2, ssk, k to last 4 sts, k2tog, k2 → row: label {rows []}, items 'k ×2, ssk, k to {left 4}, k2tog, k ×2'
    Dec 1 st at each end of every 4th row as follows: k2, ssk, k to last 4 sts, k2tog, k2 → shape: change -1, edge both, beats [{every 4}], items 'k ×2, ssk, k to {left 4}, k2tog, k ×2'
    Dec 1 st at each end every 4th row 5 times as follows: → ✗ stitch or repeat expected @55
    Dec 1 st at each end of next row (k2, ssk, k to last 4 sts, k2tog, k2) → row: label {rows []}, items 'k ×2, ssk, k to {left 4}, k2tog, k ×2'
    Dec 1 st at each end of next row (k2, ssk, k to last 4 sts, k2tog, k2), 20 sts → row: label {rows []}, items 'k ×2, ssk, k to {left 4}, k2tog, k ×2' | @73 stated: stitches 20 (20)
    Dec 1 st at each end of next row thus: k2, ssk, k to last 4 sts, k2tog, k2. (20 sts) → row: label {rows []}, items 'k ×2, ssk, k to {left 4}, k2tog, k ×2' (20)
    Dec 1 st at each end of next row as follows: knit → ✗ stitch or repeat expected @46
    Rows 35-38: repeat last 2 rows → repeat rows: last 2, times 2, to 38
    Rows 35-38: repeat the last 2 rows another 2 times → repeat rows: last 2, times 2, to 38
    Rows 35-38: repeat last 3 rows → ✗ nothing before the repeat @20
    Rows 35-38: repeat last 2 rows once → ✗ nothing before the repeat @20
    Rows 35-40: rep these previous 2 rows → repeat rows: last 2, times 3, to 40
    Rows 3, 4 and 5: k → row: label {rows [3; 4; 5]}, items 'k to {left 'what follows'}'
    Row 3 and every other row: k → row: label {rows [3], everyOther}, items 'k to {left 'what follows'}'
    Row 3 and all following WS rows: p → row: label {rows [3], everyOther}, items 'p to {left 'what follows'}'
    Row #3: k → row: label {rows [3]}, items 'k to {left 'what follows'}'
    Rows nos 3 and 4: k → row: label {rows [3; 4]}, items 'k to {left 'what follows'}'
    3: K1, ssk, k to end → row: label {rows [3]}, items 'k, ssk, k to {left 0}'
    4-6: as rows 1-2 → row: label {rows [4; 5; 6]}, items '', like 1, likeTo 2
    4, 5 and 6: as rows 1-3 → row: label {rows [4; 5; 6]}, items '', like 1, likeTo 3
    3: knit 4 rows → ✗ stitch or repeat expected @1
    3: cast on 20 sts → @4 cast on: stitches 20
    3: knit → row: label {rows [3]}, items 'k to {left 'what follows'}'
    3: p3, k to end → row: label {rows [3]}, items 'p ×3, k to {left 0}'
    3: *k2, p2; rep from * to end → row: label {rows [3]}, items '(k ×2, p ×2) to {left 0}'
    3: work 4 rows → ✗ stitch or repeat expected @1
    1st and 3rd rows: k → row: label {rows [1; 3]}, items 'k to {left 'what follows'}'
    1st and every alt row: k → row: label {rows [1], everyOther}, items 'k to {left 'what follows'}'
    1st to 4th rows: k → row: label {rows [1; 2; 3; 4]}, items 'k to {left 'what follows'}'
    Row 1 (right side facing): k → row: label {rows [1], side RS}, items 'k to {left 'what follows'}'
    Row 1 - RS: k → row: label {rows [1], side RS}, items 'k to {left 'what follows'}'
    Next RS row: k → row: label {rows [], side RS}, items 'k to {left 'what follows'}'
    Next row (decrease): k2tog, k to end → row: label {rows [], name dec}, items 'k2tog, k to {left 0}'
    Decrease row 2: k2tog, k to end → row: label {rows [], name dec}, items 'k2tog, k to {left 0}'
    Foundation row (WS): p → row: label {rows [], name foundation, side WS}, items 'p to {left 'what follows'}'
  `,
  'the other side, and what is stated, made and told': `
    Work second side to match first side → other side: reversing false
    Work other side to correspond → other side: reversing false
    Work the other half to match, reversing shapings → other side: reversing
    Work to correspond → other side: reversing false
    Work to match. → ✗ stitch or repeat expected @1
    Work in reverse → other side: reversing
    Left front: work in reverse. → heading: title {words 'left front', pattern 'left front', divides false, half left}, sideOnly false, talk false, places [], piece {name 'left front', makes 1, half left} | @13 other side: reversing
    Work right side to match left side → other side: reversing false
    Complete to match first side, reversing all shaping → other side: reversing
    Repeat for the other shoulder → other side: reversing false
    Do the same at the other side → other side: reversing false
    Work the remaining 20 sts in the same way → other side: reversing false
    Knit 2 rows (29 sts on needle) → rows: n 2, items 'k to {left 'what follows'}' (29)
    Knit 2 rows - 29 sts on needle → rows: n 2, items 'k to {left 'what follows'}' (29)
    Knit 2 rows = 29 sts → rows: n 2, items 'k to {left 'what follows'}' (29)
    Knit 2 rows: 29 sts → rows: n 2, items 'k to {left 'what follows'}' (29)
    Knit 2 rows. 29 sts. on needle → rows: n 2, items 'k to {left 'what follows'}' (29)
    Knit 2 rows, leaving 29 sts → rows: n 2, items 'k to {left 'what follows'}' | ✗ stitch or repeat expected @14
    Knit 2 rows, now 29 sts remain → rows: n 2, items 'k to {left 'what follows'}' (29)
    Knit 2 rows [29 sts] → rows: n 2, items 'k to {left 'what follows'}' (29)
    Knit 2 rows (29 rem) → ✗ stitch or repeat expected @14
    Knit 2 rows {29 sts} → rows: n 2, items 'k to {left 'what follows'}' (29)
    Knit 2 rows (there are 29 sts) → rows: n 2, items 'k to {left 'what follows'}' (29)
    Knit 2 rows, you should now have 29 sts on the needle → rows: n 2, items 'k to {left 'what follows'}' (29)
    Knit 2 rows, 29 sts decreased → rows: n 2, items 'k to {left 'what follows'}' | @14 note: about change
    Knit 2 rows (29.5 sts) → ✗ stitch or repeat expected @14
    To make a buttonhole: k2, yo, k2tog → note: about hole
    Buttonholes are worked as follows: k2, yo → note: about hole
    All decreases are made 2 sts in from edge → note: about aside
    To dec, k2tog at beg of row and ssk at end → note: about aside
    Use the cable cast-on method → note: about aside
    Use cable cast on to cast on 20 sts → @22 cast on: stitches 20
    STRAPS – make two → heading: title {words straps, pattern straps, divides false}, sideOnly false, talk false, places [], piece {name straps, makes 2}
    Straps, make 2. → heading: title {words straps, pattern straps, divides false}, sideOnly false, talk false, places [], piece {name straps, makes 2}
    Cuffs: make two → heading: title {words cuffs, pattern cuffs, divides false}, sideOnly false, talk false, places [], piece {name cuffs, makes 2} | @8 note: about another, makes 2
    Make two → note: about another, makes 2
  `,
  evenly: `
    On next row dec 5 sts evenly → evenly: change -5, on unsaid
    Across next row inc 5 sts evenly → row: items '{evenly, change 5}'
    Dec 5 sts evenly across next row to 30 sts → evenly: change -5, on next, toCount 30
    Inc to 30 sts evenly across next row → evenly: change 1, on next, toCount 30, all
    Inc 1 st in every 5th st across → row: items '(k ×4, inc) to {left 'what follows'}'
    Knit 5 rows, dec 5 sts evenly across last row → rows: n 5, items 'k to {left 'what follows'}' | @14 evenly: change -5, on last
    Knit 5 rows, inc 4 sts evenly on 3rd row → rows: n 5, items 'k to {left 'what follows'}' | ✗ stitch or repeat expected @31
    Keep 5 garter sts at each end → borders: borders [{edge both, stitches 5, fabric {named, name garter}}]
  `,
};

describe.each(Object.entries(lines))('%s', (_, some) => {
  it.each(table(some))('$line', expectReading);
});
