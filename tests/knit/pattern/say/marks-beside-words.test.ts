import { describe, it } from 'vitest';
import { table } from '../table.ts';
import { expectReading } from './said.ts';

/** Every mark that may stand before, within or behind a wording: common practice, no published source. */
describe('a mark that says nothing of its own', () => {
  it.each(
    table(`
      At the same time, when armhole measures 7 cm, beg dec 1 st at neck edge every 4th row → at the same time: after {length, mm 70, from armhole} | @51 shape: change -1, edge neck, beats [{every 4}]
      {(|[}At the same time, dec 1 st at neck edge every 4th row → at the same time | @20 shape: change -1, edge neck, beats [{every 4}]
      K 14 rows for the lower border{.|;|,} Bind off → rows: n 14, items 'k to {left 'what follows'}' | @33 bind off
      Work 4 rows in garter st{:|)|]|,|;} bind off → even: fabric {named, name garter}, until {rows, n 4} | @27 bind off
      Work 4 rows in garter st / bind off → even: fabric {named, name garter}, until {rows, n 4} | @28 bind off
      Work 4 rows in garter st, {(|[}k 1 row, p 1 row) twice → even: fabric {named, name garter}, until {rows, n 4} | @28 rows: n 1, items 'k to {left 'what follows'}' | @37 rows: n 1, items 'p to {left 'what follows'}' | @46 repeat rows: last 2, times 1
      Bind off rem 18 sts{,|;} turn → bind off: stitches 18, rest | @22 turn
      Bind off 4 sts at neck edge every other row twice, then rem 13 sts{.|;} Turn → groups: work bo, edge neck, groups [{stitches 4, rows 2, every 2}] | @57 bind off: rest, stitches 13 | @69 turn
      Bind off{, using a larger needle| loosely using a larger needle| using a larger needle} → bind off
      Bind off using a larger needle{.|;} Turn → bind off | @33 turn
      Bind off using a larger needle (24 sts) → bind off (24)
      Change to 2 strands of red{,|;} k 4 rows → yarn: name '2 strands of red' | @29 rows: n 4, items 'k to {left 'what follows'}'
      Change to 2 strands of red. K 4 rows → ✗ stitch or repeat expected @1
      Cast 34 sts onto your 4 mm circular{,|;|.} k 4 → cast on: stitches 34 | @38 row: items 'k ×4'
      Bind off the center 14 sts{,|;|.} k to end → row: items 'bo ×14 in the middle, k to {left 0}'
      Then, cast on 20 sts → @7 cast on: stitches 20
    `),
  )('in what is cast on, worked and bound off: $line', expectReading);

  it.each(
    table(`
      {(Keeping|Keeping} first and last 5 sts in garter st{)|} → borders: borders [{edge both, stitches 5, fabric {named, name garter}}]
      {and|but} keeping first and last 5 sts in garter st{)|} → @5 borders: borders [{edge both, stitches 5, fabric {named, name garter}}]
      Keep first 5 sts{, and last 7 sts| and last 7 sts} in garter st → borders: borders [{edge beginning, stitches 5, fabric {named, name garter}}; {edge end, stitches 7, fabric {named, name garter}}]
      Keep first and last 5 sts in garter st{ (k 5)| (k 5 edge sts)|} as set → borders: borders [{edge both, stitches 5, fabric {named, name garter}}]
      Keep 5{-|} sts at each end in garter st → borders: borders [{edge both, stitches 5, fabric {named, name garter}}]
      {(Omitting buttonholes)|Omitting buttonholes|(Without buttonholes)} → buttonholes: beats [], omitted
      (Omitting buttonholes) bind off → buttonholes: beats [], omitted | @24 bind off
      (Working a buttonhole on every 12th row) bind off → buttonholes: beats [{every 12}] | @42 bind off
      On next row and every 10th row thereafter{,|} make a buttonhole → buttonholes: beats [{first 1, every 1, times 1}; {every 10}]
      Making a buttonhole{, 4 sts in from front edge,| 4 sts in from front edge} on every 12th row → buttonholes: beats [{every 12}]
      Making 5 buttonholes, the first near the edge{.|;|)} Bind off → buttonholes: beats [] | @48 bind off
      Slip first st of every row{, and| and|,} k the last st → slips: work sl, last k
      Pick up 30 sts along neck{, 4 rows above edge|} → pick up: items 'pu ×30', edges [{stitches 30, along neck}]
    `),
  )('in borders, buttonholes and edges: $line', expectReading);

  it.each(
    table(`
      {Starting with p2, |(Starting with p2) }work in 2 x 2 rib → even: fabric {rib, face kkpp}, firstStitches {work p, n 2}
      Work in 2 x 2 rib{, starting with p2| (starting with p2)| starting with p2} → even: fabric {rib, face kkpp}, firstStitches {work p, n 2}
      Work in st st{, beg with a p row| (beg with a p row)| beg with a p row,| beg with a p row.} → even: fabric {named, name stocking}, firstLooks p
      Work in st st {[|(}WS row{]|)} → @15 next side: side WS | even: fabric {named, name stocking}
      Work 6 rows in {(k2, p2) rib|[k2, p2] rib|k2. p2 rib|k2/p2 rib|[k2, p2 rib]|(k2, p2 rib)|rib (k2, p2)} → even: fabric {rib, face kkpp}, until {rows, n 6}
      Work 6 rows in k2, p2, and bind off → even: fabric {rib, face kkpp}, until {rows, n 6} | @28 bind off
      Work 6 rows in k2, p2, bind off → even: fabric {rib, face kkpp}, until {rows, n 6} | @24 bind off
      Work 6 rows in k2, p2{.|;} Bind off → even: fabric {rib, face kkpp}, until {rows, n 6} | @24 bind off
      Work 6 rows in k2, p2 (34 sts) → even: fabric {rib, face kkpp}, until {rows, n 6} (34)
      Work 6 rows in k2, p2, inc 1 st → even: until {rows, n 6} | @16 row: items 'k ×2, p ×2, inc'
      Work 6 rows in k2, p2 cuff → ✗ stitch or repeat expected @23
      {Stock. st. (k 1 row, p 1 row)|Stock. st.} for entire sweater → even: fabric {named, name stocking}, wholly
      Knit 5 ribs{.|;|,|:} bind off → rows: n 10, items 'k to {left 'what follows'}' | @14 bind off
      Knit 5 ribs (24 sts) bind off → rows: n 10, items 'k to {left 'what follows'}' (24) | @22 bind off
      Knit 5 ribs bind off → ✗ stitch or repeat expected @8
      {Row 3:|Row 3 -|Row 3} knit → row: label {rows [3]}, items 'k to {left 'what follows'}'
      {Row 3 (RS)|Row 3 [RS]|Row 3, RS|Row 3 - RS} knit → row: label {rows [3], side RS}, items 'k to {left 'what follows'}'
      5th row of pattern{:|.| -} knit → row: label {rows [5]}, items 'k to {left 'what follows'}'
      5th row of pattern (RS) knit → row: label {rows [5], side RS}, items 'k to {left 'what follows'}'
      Rows 1{ to | - | through | and }6 form moss st → note: about aside
      SLEEVES, in garter st{, 30 rows|}: → heading: title {words sleeves, pattern sleeves, divides false}, sideOnly false, talk false, places [], section {named, name garter}
    `),
  )('in rows and fabrics: $line', expectReading);

  it.each(
    table(`
      Inc 6 sts evenly across next row{, to 72 sts| (to 72 sts)| - to 72 sts| to 72 sts} → evenly: change 6, on next, toCount 72
      Dec 1 st at each end of next row{, thus:| thus:| thus -| thus,| thus} k1, k2tog, k to last 3 sts, ssk, k1 → row: label {rows []}, items 'k, k2tog, k to {left 3}, ssk, k'
      Dec 1 st at each end of every 4th row (k1, k2tog, k to last 3 sts, ssk, k1){,|} to 40 sts → shape: change -1, edge both, beats [{every 4, toCount 40}], items 'k, k2tog, k to {left 3}, ssk, k'
      Dec 1 st at each end of every 4th row 4 times, 15 cm{,|.|;} Bind off → shape: change -1, edge both, beats [{every 4, counted, times 4}] | @48 note: about aside | @55 bind off
      Dec 1 st at each end of every 4th row 4 times, 15 cm (44 sts) → shape: change -1, edge both, beats [{every 4, counted, times 4}] | @48 note: about aside (44)
      Dec 1 st at each end of every row until 54 remain{.|,|;} Bind off → shape: change -1, edge both, beats [{first 1, every 1, toCount 54}] | @52 bind off
      Dec 1 st at each end of every other row{,|;} then every 4th row 3 times → shape: change -1, edge both, beats [{every 2}; {every 4, counted, times 3}]
      On every 4th row{,|:|} dec 1 st at neck edge → shape: change -1, edge neck, beats [{every 4}]
      Dec 1 st, neck edge, every row → shape: change -1, edge neck, beats [{first 1, every 1}]
      Dec 1 st in this way: k2tog, k to end → ✗ stitch or repeat expected @10
      For armholes, bind off 5 sts at beg of next 2 rows → groups: work bo, edge beginning, groups [{stitches 5, rows 2, every 1}]
      For armholes: bind off 5 sts at beg of next 2 rows → heading: title {words 'for armholes', pattern 'for armholes', divides false}, sideOnly false, talk false, places [armhole] | @15 groups: work bo, edge beginning, groups [{stitches 5, rows 2, every 1}]
      Bind off 5 sts at armhole edge{, on| on} every other row twice → groups: work bo, edge armhole, groups [{stitches 5, rows 2, every 2}]
      Bind off at neck edge{:|,| -|} 3 sts once, 2 sts twice → groups: work bo, edge neck, groups [{stitches 3, rows 1, every 2}; {stitches 2, rows 2, every 2}]
      Bind off {4, 3, 2|4-3-2|4/3/2|4, 3 and 2} sts at neck edge every other row → groups: work bo, edge neck, groups [{stitches 4, rows 1, every 2}; {stitches 3, rows 1, every 2}; {stitches 2, rows 1, every 2}]
      Bind off 5 sts at beg of next row, knit to end{.|;|,} bind off → groups: work bo, edge beginning, groups [{stitches 5, rows 1, every 1}] | @49 bind off
      Bind off 5 sts at beg of next 2 rows{ - 24 sts| = 24 sts|: 24 sts|; there are 24 sts|. There are 24 sts|, there are 24 sts| - 24 sts. on needle} → groups: work bo, edge beginning, groups [{stitches 5, rows 2, every 1}] (24)
    `),
  )('in shapings and groups: $line', expectReading);

  it.each(
    table(`
      Work even for 8 cm{, 22 rows| - 22 rows| (22 rows)| = 22 rows| or 22 rows| (that is 22 rows)} → even: until {rows, n 22}
      Work even for 8 cm, 22 rows{,|.|;} bind off → even: until {rows, n 22} | @30 bind off
      Work even for 8 cm{, ending with a WS row| (ending with a WS row)| - ending with a WS row|; ending with a WS row| ending with a WS row} → even: until {length, mm 80, from here, end WS}
      Work even for 8 cm (ending with a WS row) bind off → even: until {length, mm 80, from here, end WS} | @43 bind off
      Work even for 7 cm{, or any length you like,| or any length you like| (or any length you like)} → even: until {length, mm 70, from here}
      Work even for 7 cm, or any length you like{.|,|;|:|)} bind off → even: until {length, mm 70, from here} | @45 bind off
      Work even until it fits{,|.|;} bind off → even: until {open} | @26 bind off
      Work even until it fits (24 sts) → even: until {open} (24)
      Work even until armhole measures 16 cm{, measured straight up,| measured straight up,| (measured straight up)} ending with a WS row → even: until {length, mm 160, from armhole, end WS}
      Work even until armhole measures 16 cm (measuring straight up from the bound off sts) ending with a WS row → even: until {length, mm 160, from armhole, end WS}
      Work even until armhole measures 16 cm, measuring straight up from the edge{.|;|,|)} bind off → even: until {length, mm 160, from armhole} | @78 bind off
      Work even for 15 cm {(6 in)|[6 in]} from beg → even: until {length, mm 150, from start}
      Work even for 15 cm {(6 in)|[6 in]}, ending with a WS row → even: until {length, mm 150, from here, end WS}
      Rep last 2 rows 8 times more, or until the sleeve measures 7 cm{,|;} bind off → repeat rows: last 2, times 8 | @31 note: about aside | @66 bind off
    `),
  )('in lengths and where they end: $line', expectReading);

  it.each(
    table(`
      Gauge{:|,| -} {about |}20 sts = 10 cm → gauge: stitches 20
      {(Gauge 20 sts = 10 cm|Gauge. 20 sts = 10 cm} → gauge: stitches 20
      Using 4 mm needles, 20 sts = 10 cm → gauge: stitches 20, needle 4
      20 sts = 10 cm / 10 cm, 28 rows = 10 cm → gauge: stitches 20, rows 28
      Basket pattern (multiple of 8{):|:)} k 2 → multiple: of 8, plus 0, name basket | @33 row: items 'k ×2'
      Basket pattern [multiple of 8{]:|:]} k 2 → multiple: of 8, plus 0, name basket | @33 row: items 'k ×2'
      Work another sleeve{.|;|} → note: about another, makes 2
      {(Make 2)|Make 2} → note: about another, makes 2
      Make neck hole as follows{:|;| -} → note: about aside
      6 rows worked{.|;} bind off → note: about aside | @16 bind off
      Work left front to correspond{.|;|,} bind off → heading: title {words 'left front', pattern 'left front', divides false, half left}, sideOnly false, talk false, places [], piece {name 'left front', makes 1, half left} | as for: piece {words 'right front', name 'right front'}, reversing | @32 bind off
      Rejoin yarn and work other side to match{.|,|;} bind off → rejoin | @17 other side: reversing false | @43 bind off
    `),
  )('in gauges, patterns and makes: $line', expectReading);
});
