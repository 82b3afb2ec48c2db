import { describe, expect, it } from 'vitest';
import { table } from '../table.ts';
import { reading } from './said.ts';

/**
 * Rarer ways of saying rows, labels, yarn and what is worked as something else: common practice, no published source. A word
 * that goes, or stands for another, turns a line red. Columns are held by the tables of the constructs.
 */
const lines: Readonly<Record<string, string>> = {
  'turns and sides': `
    K 20, {wt|w and t|w, t|wrap and turn|wrap next st and turn|wrap the next st, turn|wrap next st, turn work|wrapping next st and turning work} → row: items 'k ×20, wrap next st, {turn}'
    Shape armholes (RS) - bind off 5 sts → heading: title {words 'shape armholes', pattern 'shape armholes', divides false}, sideOnly false, talk false, places [armhole] | next side: side RS | bind off: stitches 5
    Shape armhole (WS): bind off 5 sts → heading: title {words 'shape armhole', pattern 'shape armhole', divides false}, sideOnly false, talk false, places [armhole] | next side: side WS | bind off: stitches 5
    Shape armholes (here) - bind off 5 sts → ✗ stitch or repeat expected @1
    Body (RS) - bind off 5 sts → ✗ stitch or repeat expected @1
    K to end {(82 sts)|[82 sts]|(there are now 82 sts on the needle)} → row: items 'k to {left 0}' (82)
    Dec 1 st every row each {end|side|edge} 4 times → shape: change -1, edge both, beats [{first 1, every 1, times 4, counted}]
    Dec 1 st each {end|side|edge} every other row 4 times → shape: change -1, edge both, beats [{every 2, counted, times 4}]
  `,
  'what is shaped': `
    To shape {neck|the neck|back of neck} {on|in} {the|} next row, k 30, turn → row: label {rows []}, items 'k ×30, {turn}'
    Shape {neck|the neck|back of neck} on next row, k 30, turn → row: label {rows []}, items 'k ×30, {turn}'
    Shaping {side seams|the sides} by dec 1 st at each end of next row → shape: change -1, edge both, beats [{first 1, every 1, times 1}]
    {Shape side seams, dec 1 st at each end of next row|Shape sides, dec 1 st at each end of next row} → shape: change -1, edge both, beats [{first 1, every 1, times 1}]
    {Shape side seams, inc 1 st at each end of next row|Shape sides, inc 1 st at each end of next row} → shape: change 1, edge both, beats [{first 1, every 1, times 1}]
  `,
  beats: `
    {Each end|Each side|Each edge} dec 1 st every 4th row 4 times → shape: change -1, edge both, beats [{every 4, counted, times 4}]
    At each {end|side|edge} dec 1 st every 4th row 4 times → shape: change -1, edge both, beats [{every 4, counted, times 4}]
    Every other row dec 1 st each {end|side|edge} 4 times → shape: change -1, edge both, beats [{every 2, times 4, counted}]
    Every 4th row dec 1 st each {end|side|edge} 4 times → shape: change -1, edge both, beats [{every 4, times 4, counted}]
    {On|In|At} next row dec 1 st at each {end|side|edge} → shape: change -1, edge both, beats [{first 1, every 1, times 1}]
  `,
  label: `
    1st row (RS) k2, p2 to end → row: label {rows [1], side RS}, items '(k ×2, p ×2) to {left 0}'
    1st row of {pattern|patt|the patt|rib|the rib}: k2, p2 → row: label {rows [1]}, items 'k ×2, p ×2'
    1st row of {pattern|the rib} {.|-} k2, p2 → row: label {rows [1]}, items 'k ×2, p ×2'
    1st row of the back: k2, p2 → ✗ stitch or repeat expected @1
    {Next|Foll|Last|Final} row: k2 → row: label {rows []}, items 'k ×2'
    {Last|Final} row {(RS): k2|[RS]: k2} → row: label {rows [], side RS}, items 'k ×2'
    Last row k2 → row: items 'k ×2'
    Final row k2 → ✗ stitch or repeat expected @1
    On next row, k 2, k2 → row: label {rows []}, items 'k ×2, k ×2'
    On next row, p 2, k2 → row: label {rows []}, items 'p ×2, k ×2'
    On next row, work 2, k2 → row: label {rows []}, items 'patt ×2, k ×2'
    On next row, sl 2, k2 → row: label {rows []}, items 'sl ×2, k ×2'
    {On the next row (RS), k to end|On foll next row (RS), k to end|On next row (RS), k to end|In the next row (RS), k to end|In foll next row (RS), k to end|In next row (RS), k to end} → row: label {rows [], side RS}, items 'k to {left 0}'
    On next row k 52 sts, turn → row: label {rows []}, items 'k ×52, {turn}'
    On next row p 52 sts, turn → row: label {rows []}, items 'p ×52, {turn}'
    On next row k 52 → ✗ stitch or repeat expected @1
    On next row cast on 4 sts over those bound off → row: label {rows []}, items 'co ×4'
    Next k row: k2tog, k2 → row: label {rows [], side RS}, items 'k2tog, k ×2'
    Next p row: k2tog, k2 → row: label {rows [], side WS}, items 'k2tog, k ×2'
    Next RS row: k2tog, k2 → row: label {rows [], side RS}, items 'k2tog, k ×2'
    Next WS row: k2tog, k2 → row: label {rows [], side WS}, items 'k2tog, k ×2'
    Work buttonhole {row|} {on|in} {the|} next row {as follows|thus|}: k2, bo 2, k to end → row: label {rows [], name buttonhole}, items 'k ×2, bo ×2, k to {left 0}'
    Make buttonhole {thus|as follows}, k2, bo 2, k to end → row: label {rows [], name buttonhole}, items 'k ×2, bo ×2, k to {left 0}'
    Work buttonhole, k2, bo 2, k to end → buttonholes: beats [] | row: items 'k ×2, bo ×2, k to {left 0}'
    {The next row is a buttonhole row: k2, bo 2, k to end|The next row is the buttonhole row: k2, bo 2, k to end|next row is a buttonhole row: k2, bo 2, k to end|next row is the buttonhole row: k2, bo 2, k to end} → row: label {rows [], name buttonhole}, items 'k ×2, bo ×2, k to {left 0}'
    {The next row is a dec row: k2, bo 2, k to end|The next row is the dec row: k2, bo 2, k to end|next row is a dec row: k2, bo 2, k to end|next row is the dec row: k2, bo 2, k to end} → row: label {rows [], name dec}, items 'k ×2, bo ×2, k to {left 0}'
    {The next row is a inc row: k2, bo 2, k to end|The next row is the inc row: k2, bo 2, k to end|next row is a inc row: k2, bo 2, k to end|next row is the inc row: k2, bo 2, k to end} → row: label {rows [], name inc}, items 'k ×2, bo ×2, k to {left 0}'
    {Make|Work} {the|} next row a buttonhole row: k2, bo 2, k to end → row: label {rows [], name buttonhole}, items 'k ×2, bo ×2, k to {left 0}'
    {Inc row P2, k2|Inc row p 2, k2} → row: label {rows [], name inc}, items 'p ×2, k ×2'
    Inc row K2, k2 → row: label {rows [], name inc}, items 'k ×2, k ×2'
    {Dec row P2, k2|Dec row p 2, k2} → row: label {rows [], name dec}, items 'p ×2, k ×2'
    Dec row K2, k2 → row: label {rows [], name dec}, items 'k ×2, k ×2'
    {Inc row 1: k2, m1|Inc row 2: k2, m1} → row: label {rows [], name inc}, items 'k ×2, m1'
    {Dec row 1: k2, m1|Dec row 2: k2, m1} → row: label {rows [], name dec}, items 'k ×2, m1'
    Set-up row (WS): k2 → row: label {rows [], name set, side WS}, items 'k ×2'
    First row: k2 → row: label {rows [1]}, items 'k ×2'
    Second row: k2 → row: label {rows [2]}, items 'k ×2'
    Third row: k2 → row: label {rows [3]}, items 'k ×2'
    Fourth row: k2 → row: label {rows [4]}, items 'k ×2'
    Fifth row: k2 → row: label {rows [], name fifth}, items 'k ×2'
    2nd and every {alt|other|ws|rs|even|odd} row: p → row: label {rows [2], everyOther}, items 'p to {left 'what follows'}'
    2nd and {all|each} {even|odd} numbered rows: p → row: label {rows [2], everyOther}, items 'p to {left 'what follows'}'
    {2nd and every foll alt row: p|2nd and every foll other row: p} → row: label {rows [2], everyOther}, items 'p to {left 'what follows'}'
    97-98th rows: k → row: label {rows [97; 98]}, items 'k to {left 'what follows'}'
    97 98th rows: k → ✗ stitch or repeat expected @1
    {1st row (RS): k2|1st row (RS facing): k2|1st row (right side): k2|1st row (right side of work): k2} → row: label {rows [1], side RS}, items 'k ×2'
    {1st row (WS): k2|1st row (wrong side of piece): k2} → row: label {rows [1], side WS}, items 'k ×2'
    1st row, RS, k2 → row: label {rows [1], side RS}, items 'k ×2'
    1st row on RS: k2 → row: label {rows [1], side RS}, items 'k ×2'
    1st row = k2 → row: label {rows [1]}, items 'k ×2'
    {On|In} {the|foll|} next row (RS), k to end → row: label {rows [], side RS}, items 'k to {left 0}'
    {On|In} {the|} next row, work {a|} buttonhole as follows: k2, bo 2, k to end → row: label {rows [], name buttonhole}, items 'k ×2, bo ×2, k to {left 0}'
    Row 1 sl 1, k2 → row: label {rows [1]}, items 'sl, k ×2'
    Row 1 yo, k2 → row: label {rows [1]}, items 'yo, k ×2'
    Row 1 ssk, k2 → row: label {rows [1]}, items 'ssk, k ×2'
    Row 1 skp, k2 → row: label {rows [1]}, items 'skp, k ×2'
    Row 1 bo 2, k2 → row: label {rows [1]}, items 'bo ×2, k ×2'
  `,
  'cast-on': `
    Cast 30 sts {on|onto|on to} {your|the|a|} needle → cast on: stitches 30
    Cast 30 sts onto needle in the red wool → cast on: stitches 30 | yarn: name red
    Cast 30 sts onto needle with MC → cast on: stitches 30 | yarn: name MC
    Cast 30 sts onto needle using A → cast on: stitches 30 | yarn: name A
    Cast 30 sts onto needle → cast on: stitches 30
    Cast 30 sts {in the red wool|with MC|using A} {on|onto} → cast on: stitches 30
    {Cast on|Co} 30 sts {loosely|for back|for front|for sleeve|for border|for body|for lower edge|for hem|for rib} → cast on: stitches 30
    {Cast on|Co} 30 sts {using|by|with|in} {the|your preferred|a long-tail} method → cast on: stitches 30
    Cast on a total of 30 sts → cast on: stitches 30
  `,
  row: `
    Row 1: at {the|} {arm|armhole|neck|front|side|shoulder} edge bind off 8 sts, p to end → row: label {rows [1]}, items 'bo ×8, p to {left 0}'
    {Row 1: at neck edge bind off 8 sts, k to end|Row 1: at neck edge cast off 8 sts, k to end} → row: label {rows [1]}, items 'bo ×8, k to {left 0}'
    {Row 1: at neck edge bind off 8 sts, work to end|Row 1: at neck edge bind off 8 sts, patt to end|Row 1: at neck edge cast off 8 sts, work to end|Row 1: at neck edge cast off 8 sts, patt to end} → row: label {rows [1]}, items 'bo ×8, patt to {left 0}'
    Row 5: rep row 1 → row: label {rows [5]}, items '', like 1
    Row 5: rep row 1 to 3 → row: label {rows [5]}, items '', like 1, likeTo 3
    Row 1: k 1 row, dec 4 → row: label {rows [1]}, items '{evenly, change -4, work k}'
    Row 1: p 1 row, dec 4 → row: label {rows [1]}, items '{evenly, change -4, work p}'
    Row 1: k 1 row{,|} {and|} {dec|decreasing} 4 sts {evenly|evenly across row|across row|evenly across|} → row: label {rows [1]}, items '{evenly, change -4, work k}'
    Row 1: p 1 row, {inc|increasing} 4 sts evenly across row → row: label {rows [1]}, items '{evenly, change 4, work p}'
    Rows 5-8: {work|cont} in st st → even: fabric {named, name stocking}, until {rows, n 4}
    {Rows 5-8: beg with a k row, work in st st|Rows 5-8: beginning with a k row, work in st st|Rows 5-8: starting with a k row, work in st st} → even: fabric {named, name stocking}, firstLooks k, until {rows, n 4}
    {Rows 5-8: beg with a p row, work in st st|Rows 5-8: beginning with a p row, work in st st|Rows 5-8: starting with a p row, work in st st} → even: fabric {named, name stocking}, firstLooks p, until {rows, n 4}
    Rows 5-8: in garter st → even: fabric {named, name garter}, until {rows, n 4}
    Rows 35-38: {repeat|rep} {the|these|} {last|previous|preceding} 2 rows {2 more times|twice more|} → repeat rows: last 2, times 2, to 38
    Rows 35-38: rep last 4 rows → repeat rows: last 4, times 1, to 38
    Rows 35-38: rep last 3 rows → ✗ nothing before the repeat @17
    Row 1: rib {across|over} all sts → row: label {rows [1]}, items 'patt to {left 'what follows'}', all
  `,
  yarn: `
    With A only, k 2 rows → yarn: name A | rows: n 2, items 'k to {left 'what follows'}'
    Change to B{,|;|.|:} k 2 rows → yarn: name B | rows: n 2, items 'k to {left 'what follows'}'
    {Change|Changing|Switch} to B and k 2 rows → yarn: name B | rows: n 2, items 'k to {left 'what follows'}'
    Work 4 rows A → yarn: name A | even: until {rows, n 4}
  `,
  'repeat-named': `
    {Rep decreases on 4th row 5 times|Rep increases on 4th row 5 times|Rep shaping on 4th row 5 times} → repeat named: name '', beats [{first 4, every 4, times 5, counted}]
    {Rep decreases on foll 4th row 5 times|Rep increases on foll 4th row 5 times|Rep shaping on foll 4th row 5 times} → repeat named: name '', beats [{every 4, times 5, counted}]
    {Rep decreases every 4th row 5 times|Rep decreases every foll 4th row 5 times|Rep increases every 4th row 5 times|Rep increases every foll 4th row 5 times|Rep shaping every 4th row 5 times|Rep shaping every foll 4th row 5 times} → repeat named: name '', beats [{every 4, counted, times 5}]
    Rep {the|this} {decreases|increases|shaping} every 4th row 5 times → repeat named: name '', beats [{every 4, counted, times 5}]
    Repeating this dec every 4th row 5 times → repeat named: name '', beats [{every 4, counted, times 5}]
    Rep on {each|every} RS row 11 more times → repeat named: name '', beats [{every 2, side RS, counted, times 11, further}]
    {Continue to dec thus every 4th row to 60 sts|Continue to dec in this way every 4th row to 60 sts|Continue to dec in the same way every 4th row to 60 sts|Continue to dec in this manner every 4th row to 60 sts|Continue to dec in same manner every 4th row to 60 sts|Continue to dec as before every 4th row to 60 sts|Continue to dec as set every 4th row to 60 sts|Continue to inc thus every 4th row to 60 sts|Continue to inc in this way every 4th row to 60 sts|Continue to inc in the same way every 4th row to 60 sts|Continue to inc in this manner every 4th row to 60 sts|Continue to inc in same manner every 4th row to 60 sts|Continue to inc as before every 4th row to 60 sts|Continue to inc as set every 4th row to 60 sts|Continue decreasing thus every 4th row to 60 sts|Continue decreasing in this way every 4th row to 60 sts|Continue decreasing in the same way every 4th row to 60 sts|Continue decreasing in this manner every 4th row to 60 sts|Continue decreasing in same manner every 4th row to 60 sts|Continue decreasing as before every 4th row to 60 sts|Continue decreasing as set every 4th row to 60 sts|Continue increasing thus every 4th row to 60 sts|Continue increasing in this way every 4th row to 60 sts|Continue increasing in the same way every 4th row to 60 sts|Continue increasing in this manner every 4th row to 60 sts|Continue increasing in same manner every 4th row to 60 sts|Continue increasing as before every 4th row to 60 sts|Continue increasing as set every 4th row to 60 sts|Cont to dec thus every 4th row to 60 sts|Cont to dec in this way every 4th row to 60 sts|Cont to dec in the same way every 4th row to 60 sts|Cont to dec in this manner every 4th row to 60 sts|Cont to dec in same manner every 4th row to 60 sts|Cont to dec as before every 4th row to 60 sts|Cont to dec as set every 4th row to 60 sts|Cont to inc thus every 4th row to 60 sts|Cont to inc in this way every 4th row to 60 sts|Cont to inc in the same way every 4th row to 60 sts|Cont to inc in this manner every 4th row to 60 sts|Cont to inc in same manner every 4th row to 60 sts|Cont to inc as before every 4th row to 60 sts|Cont to inc as set every 4th row to 60 sts|Cont decreasing thus every 4th row to 60 sts|Cont decreasing in this way every 4th row to 60 sts|Cont decreasing in the same way every 4th row to 60 sts|Cont decreasing in this manner every 4th row to 60 sts|Cont decreasing in same manner every 4th row to 60 sts|Cont decreasing as before every 4th row to 60 sts|Cont decreasing as set every 4th row to 60 sts|Cont increasing thus every 4th row to 60 sts|Cont increasing in this way every 4th row to 60 sts|Cont increasing in the same way every 4th row to 60 sts|Cont increasing in this manner every 4th row to 60 sts|Cont increasing in same manner every 4th row to 60 sts|Cont increasing as before every 4th row to 60 sts|Cont increasing as set every 4th row to 60 sts} → repeat named: name '', beats [{every 4, toCount 60}]
    {Continue to dec in same manner as before every 4th row to 60 sts|Continue to inc in same manner as before every 4th row to 60 sts|Continue decreasing in same manner as before every 4th row to 60 sts|Continue increasing in same manner as before every 4th row to 60 sts|Cont to dec in same manner as before every 4th row to 60 sts|Cont to inc in same manner as before every 4th row to 60 sts|Cont decreasing in same manner as before every 4th row to 60 sts|Cont increasing in same manner as before every 4th row to 60 sts} → ✗ stitch or repeat expected @1
    Row 2 {on|every|each} 4th row 5 times → ✗ stitch or repeat expected @5
  `,
  rejoin: `
    {Sl|Place|Put|Return|Transfer} {the|} {holder|held} sts {to|onto|on} {the|} needle → rejoin
    Return the held sts to working needle{, rejoin yarn| and rejoin yarn|, join yarn|, attach yarn|, and attach yarn} → rejoin
    {Return|Returning|Go} {back|} to {rem|the rem|other|the other} sts → rejoin
  `,
  'work-on': `
    {Cont|Work|Continuing} {working|} {left|right} side {of|} {the|} {back|front|neck} only → work on: which these
    {Cont|Work|Continuing} left side only → work on: which these
    Work on the last side → work on: which last
    Work on the first side → work on: which first
    Work on {these|those|rem} 20 sts → work on: which these, stitches 20
    Work across 25 sts{, | and |, and }{place|put|sl|leave|transfer} {them|these|those} on a holder → row: items 'patt ×25, {parting}'
  `,
  'as-for': `
    Work {same as|exactly as|like|the same as|as|as given for|in same manner as|in the same way as} back → as for: piece {words back, name back}, reversing false
    {Bind off|Cast off} {and|} {dec|} for armhole as for back → as for: piece {words back, name back}, reversing false, only armhole
    Dec for armhole as for back → as for: piece {words back, name back}, reversing false, only armhole
    {Shape|Shaping} {the|} armhole as for back → as for: piece {words back, name back}, reversing false, only armhole
    Armhole {shaping|shapings} as for back → as for: piece {words back, name back}, reversing false, only armhole
    Work as for back until 15 rows have been {worked|completed} {after|past|beyond} armhole {shaping|shapings} → as for: piece {words back, name back}, reversing false, to {rows after, rows 15, from armhole, past}
    Work as for back until 15 rows are {worked|completed} after armhole shaping → as for: piece {words back, name back}, reversing false, to {rows after, rows 15, from armhole, past}
    Work {to armhole|up to armhole} {as|same as|like} back → as for: piece {words back, name back}, reversing false, to {place, place armhole}
    Work in st st; keep 3 sts at each end in garter st → even: fabric {named, name stocking} | borders: borders [{edge both, stitches 3, fabric {named, name garter}}]
    {K 8 rows; keep first 6 sts in garter st|K 8 rows. keep first 6 sts in garter st} → rows: n 8, items 'k to {left 'what follows'}' | borders: borders [{edge beginning, stitches 6, fabric {named, name garter}}]
    {K 8 rows; work first 6 sts in garter st|K 8 rows. work first 6 sts in garter st} → rows: n 8, items 'k to {left 'what follows'}' | row: items 'patt ×6'
    {Knit back and cast on 30 sts.|Knit back and cast on 30 sts;|Knit back and cast on 30 sts} → row: items 'k to {left 'what follows'}, co ×30'
    {Knit back and cast on 30 sts (60 sts)|Knit back and cast on 30 sts [60 sts]} → row: items 'k to {left 'what follows'}, co ×30' (60)
    Knit back and cast on 30 sts, turn → row: items 'k to {left 'what follows'}, co ×30, {turn}'
    Cast 30 {st|sts} on {your|the|a} size 4 needle → cast on: stitches 30
    Row 3: {as|same as|like|work as|the same as} {row 1|1st row|the 1st row|first row} → row: label {rows [3]}, items '', like 1
    {Join|Joining|Attach} {yarn|wool} B → yarn: name B
    {Join|Joining} in {yarn B|B} → yarn: name B
    Change to B, {bind off|cast off} 10 → yarn: name B | bind off: stitches 10
    Rep {the|this|last} {dec|inc} every 4th row 5 times more → repeat named: name '', beats [{every 4, counted, times 5, further}]
    Rep {the|this|last} dec row every 4th row 5 times more → repeat named: name dec, beats [{every 4, counted, times 5, further}]
    {Work|Working|Cont|Continuing} on {the|} first 20 sts{ only| as before only|} → work on: which first, stitches 20
    {Work|Working|Cont|Continuing} on {the|} last 20 sts{ only| as before only|} → work on: which last, stitches 20
    {Work|Working|Cont|Continuing} on {these|those} 20 sts{ only| as before only|} → work on: which these, stitches 20
    With {these|the|rem|} 66 sts, {work|cont|k} in garter st → stated: stitches 66 (66) | even: fabric {named, name garter}
    Having {these|the|rem|} 66 sts {on needle,|on the needle,|left,|rem,|on needle} {work|cont|k} in garter st → stated: stitches 66 (66) | even: fabric {named, name garter}
    Work back {same|exactly|the same} as front → as for: piece {words front, name front}, reversing false
    K 8 rows{;|.} keep first 6 sts in garter st → rows: n 8, items 'k to {left 'what follows'}' | borders: borders [{edge beginning, stitches 6, fabric {named, name garter}}]
    K 8 rows{;|.} work first 6 sts in garter st → rows: n 8, items 'k to {left 'what follows'}' | row: items 'patt ×6'
    Knit back and cast on 30 sts{.|;|} → row: items 'k to {left 'what follows'}, co ×30'
    Knit back and cast on 30 sts {(60 sts)|[60 sts]} → row: items 'k to {left 'what follows'}, co ×30' (60)
  `,
};

describe.each(Object.entries(lines))('rarer wordings of %s', (_, text) => {
  it.each(table(text))('$line', ({ texts, reading: wanted }) => {
    for (const one of texts) expect(reading(one).replace(/@\d+ /g, ''), one).toBe(wanted);
  });
});
