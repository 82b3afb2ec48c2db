import { describe, it } from 'vitest';
import { table } from '../table.ts';
import { expectReading } from './said.ts';

/** Where a wording ends and another begins, on both sides of each border: common practice, no published source. */
describe('where a wording ends:', () => {
  it.each(
    table(`
      Work as for back{, until| until| to} 4 rows {before|below} shoulder{| shaping} → as for: piece {words back, name back}, reversing false, to {rows before, rows 4, place shoulder}
      Work as for back until 4½ rows before shoulder shaping → ✗ stitch or repeat expected @32
      Work as for back until rows before shoulder shaping → ✗ stitch or repeat expected @18
      Work as for back{, until| until| to} 15 rows {have been worked|have been completed|are worked|are completed|} {after|past|beyond} armhole {shaping|shapings} → as for: piece {words back, name back}, reversing false, to {rows after, rows 15, from armhole, past}
      Work as for back until 15 rows have been worked after armhole → ✗ stitch or repeat expected @18
    `),
  )('as another piece so far: $line', expectReading);

  it.each(
    table(`
      {On|In} {|the }next row, {starting|beg|commencing} {at|on} neck edge, bind off 10 sts → groups: work bo, edge neck, groups [{stitches 10, rows 1, every 2}]
      On next row, beg with a p st, bind off 10 sts → ✗ stitch or repeat expected @1
      {Starting|Beg|Commencing} {at|on} {|the }armhole edge, bind off 5 sts every other row 3 times → groups: work bo, edge armhole, groups [{stitches 5, rows 3, every 2}]
      Bind off 6 sts for {|the }{armhole|underarm} → groups: work bo, edge armhole, groups [{stitches 6, rows 1, every 2}], byPurpose
      Bind off 6 sts for neck{| edge} → groups: work bo, edge neck, groups [{stitches 6, rows 1, every 2}], byPurpose
      Bind off 6 sts for armhole; k 4 → groups: work bo, edge armhole, groups [{stitches 6, rows 1, every 2}], byPurpose | @29 row: items 'k ×4'
      Bind off 6 sts for armhole. K 4 → groups: work bo, edge armhole, groups [{stitches 6, rows 1, every 2}], byPurpose | @29 row: items 'k ×4'
      Bind off 6 sts for neck, k 4 → row: items 'bo ×6, k ×4'
      Cast on 12 sts at beg of next 2 rows → groups: work co, edge beginning, groups [{stitches 12, rows 2, every 1}]
      Cast on {|a total of }12 {|sts} → cast on: stitches 12
      Cast on 12 more sts → row: items 'co ×12'
      Cast on 12 sts {and|then|, then|,} {k|knit} across the rem 80 sts → row: items 'co ×12, k ×80'
    `),
  )('bound off and cast on in groups: $line', expectReading);

  it.each(
    table(`
      {Now divide|Now divide the work} for {|the }neck → @5 note: about divides
      Dividing {sts|the work} for {|the }neck → note: about divides
      Divide for neck Row 1 (RS) K 20, turn → note: about divides | @17 row: label {rows [1], side RS}, items 'k ×20, {turn}'
      Divide for the neck Row 1 (RS) K 20, turn → note: about divides | @21 row: label {rows [1], side RS}, items 'k ×20, {turn}'
      Divide for the V neck Row 1 (RS) K 20, turn → note: about divides | @23 row: label {rows [1], side RS}, items 'k ×20, {turn}'
      {Cont|Continue|Work} on {|the }{back|front} and {|the }{fronts|front|back} separately → note: about divides
      … Shape neck → heading: title {words 'shape neck', pattern 'shape neck', divides}, sideOnly false, talk false, places [neck]
      … Shape left front neck → heading: title {words 'shape left front neck', pattern 'shape left front neck', divides, half left}, sideOnly false, talk false, places [neck]
      … Shape the left front neck → ✗ stitch or repeat expected @1
      … shape neck → ✗ stitch or repeat expected @1
      Shape neck thus; → heading: title {words 'shape neck', pattern 'shape neck', divides}, sideOnly false, talk false, places [neck]
      Shape armholes thus; → heading: title {words 'shape armholes', pattern 'shape armholes', divides false}, sideOnly false, talk false, places [armhole]
      Shape armhole (WS) bind off 5 sts at beg of next row → heading: title {words 'shape armhole', pattern 'shape armhole', divides false}, sideOnly false, talk false, places [armhole] | @15 next side: side WS | @20 groups: work bo, edge beginning, groups [{stitches 5, rows 1, every 1}]
      Shape left front armhole (RS) – bind off 5 sts at beg of next row → heading: title {words 'shape left front armhole', pattern 'shape left front armhole', divides false, half left}, sideOnly false, talk false, places [armhole] | @26 next side: side RS | @33 groups: work bo, edge beginning, groups [{stitches 5, rows 1, every 1}]
      Shape the left front armhole edge (RS): bind off 5 sts at beg of next row → heading: title {words 'shape the left front armhole edge', pattern 'shape the left front armhole edge', divides false, half left}, sideOnly false, talk false, places [armhole] | @35 next side: side RS | @41 groups: work bo, edge beginning, groups [{stitches 5, rows 1, every 1}]
    `),
  )('a place that is announced: $line', expectReading);

  it.each(
    table(`
      Inc 1 st {6 times|six times} at left end → shape: change 1, edge left, beats [{every 2, times 6, counted}]
      Inc 1 st 6 times at left end on every 4th row → shape: change 1, edge left, beats [{every 4, times 6, counted}]
      Inc 1 st once at left end → shape: change 1, edge left, beats [{every 2, times 1, counted}]
      Dec 1 st 3 times at neck edge → shape: change -1, edge neck, beats [{every 2, times 3, counted}]
      Inc 1 st 6 times at each end of every {alt|other} row → shape: change 1, edge both, beats [{every 2, times 6, counted}]
      Dec 1 st at each end of {|the }{foll|following} 3 rows → shape: change -1, edge both, beats [{every 1, times 3}]
      Dec 1 st at each end of 3 {foll|following} alt rows → shape: change -1, edge both, beats [{every 2, times 3}]
      Dec 1 st at each end of 3 {foll|following} 4th rows → shape: change -1, edge both, beats [{every 4, times 3}]
      Dec 1 st at each end of the following row → shape: change -1, edge both, beats [{first 1, every 1, times 1}]
      Dec 1 st at armhole edge on next 3 rows and 1 st at neck edge on every 4th row 4 times → @45 shape: change -1, edge neck, beats [{every 4, counted, times 4}] | at the same time | shape: change -1, edge armhole, beats [{first 1, every 1, times 3}]
      Dec 1 st at neck edge on next 3 rows and 1 st at armhole edge on every 4th row 4 times → @42 shape: change -1, edge armhole, beats [{every 4, counted, times 4}] | at the same time | shape: change -1, edge neck, beats [{first 1, every 1, times 3}]
      Dec 1 st at armhole edge on next 8 rows and 1 st at neck edge on every 2nd row twice → shape: change -1, edge armhole, beats [{first 1, every 1, times 8}] | @45 at the same time | @45 shape: change -1, edge neck, beats [{every 2, counted, times 2}]
      Dec 1 st at armhole edge on every row 3 times and 1 st at neck edge on every 4th row → @51 shape: change -1, edge neck, beats [{every 4}] | at the same time | shape: change -1, edge armhole, beats [{first 1, every 1, counted, times 3}]
      Dec 1 st at armhole edge on every row and 1 st at neck edge on every 4th row 4 times → shape: change -1, edge armhole, beats [{first 1, every 1}] | @43 at the same time | @43 shape: change -1, edge neck, beats [{every 4, counted, times 4}]
      Dec 1 st (by working across to last 3 sts, k2tog, k1) → row: items 'dec, patt to {left 3}, k2tog, k'
    `),
  )('what is shaped, where and how often: $line', expectReading);

  it.each(
    table(`
      {Transfer|Place} left front sts {from holder|on needle} → rejoin: edge left
      {Transfer|Place} right front sts {from holder|on needle} → rejoin: edge right
      {Transfer|Place} back sts {from holder|on needle} → rejoin: edge middle
      Next row (RS): cont in rib as set, bind off 4 sts at beg of next 2 rows → next side: side RS | even: fabric {pattern, words rib, name rib, else rib} | even: fabric {established} | groups: work bo, edge beginning, groups [{stitches 4, rows 2, every 1}]
      Next row: cont in rib, dec 1 st each end of every 4th row 3 times → even: fabric {pattern, words rib, name rib, else rib} | shape: change -1, edge both, beats [{every 4, counted, times 3}]
      Next row: work in st st, inc 1 st each side every 8th row 4 times → even: fabric {named, name stocking} | shape: change 1, edge both, beats [{every 8, counted, times 4}]
      Next row: inc 8 sts at even intervals, work in st st for 6 rows → evenly: change 8, on unsaid | even: fabric {named, name stocking}, until {rows, n 6}
      Next row: dec 4 sts evenly, cont in st st for 10 cm → evenly: change -4, on unsaid | even: fabric {named, name stocking}, until {length, mm 100, from here}
      Next row: as {first|1st} row → row: label {rows []}, items '', like 1
      Next row: as {second|2nd} row → row: label {rows []}, items '', like 2
      Next row: as {third|3rd} row → row: label {rows []}, items '', like 3
      Next row: as {fourth|4th} row → row: label {rows []}, items '', like 4
      Rows 1-4: {beg|starting} with {|a }k row, {|work |work in |in }st st → even: fabric {named, name stocking}, firstLooks k, until {rows, n 4}
      Rows 1-4: {work in |cont in |in |}st st → even: fabric {named, name stocking}, until {rows, n 4}
      Rep last 2 rows for {|the }rib → repeat rows: last 2
      Rep rows 1 and 2 for {|the }rib → repeat rows: from 1, to 2
      Rep last 2 rows for the rib 4 times → repeat rows: last 2, times 4
      Rep last 2 rows for rib until piece measures 5 cm → repeat rows: last 2, until {length, mm 50, from start}
      These 2 rows form rib, rep {4 times|4 times more|them 4 times more|these 4 times more|a further 4 times|them a further 4 times} → named rows: name rib, rows 2 | @24 repeat rows: last 2, times 4
      These 2 rows form rib, rep 4 times in all → named rows: name rib, rows 2 | @24 repeat rows: last 2, times 3
    `),
  )('rows that begin so or come again: $line', expectReading);

  it.each(
    table(`
      Work even until piece measures 30 cm{, or desired length| (or desired length to underarm)| or desired length|, or any length desired} → even: until {length, mm 300, from start}
      Work even until piece measures 30 cm, or desired length: turn → even: until {length, mm 300, from start} | @58 turn
      Work even until piece measures 30 cm, or until you run out of yarn, k 4 → even: until {length, mm 300, from start} | @69 row: items 'k ×4'
      Work even until piece measures 30 cm, measured straight up, turn → even: until {length, mm 300, from start} | @61 turn
      Work even until piece measures 30 cm, measuring straight up from the bound off sts, k 4 → even: until {length, mm 300, from start} | @85 row: items 'k ×4'
      Work even until piece measures 30 cm (measured at the middle of the back), k 4 → even: until {length, mm 300, from start} | @76 row: items 'k ×4'
      Work {4 more|4 further|4 complete|a further 4|another 4|the next 4|the first 4} rows in {st st|stocking st} → even: fabric {named, name stocking}, until {rows, n 4}
      {K1, p1 rib|Rib k1, p1|Work in rib of k1, p1|Work in k1, p1 rib} for 6 rows → even: fabric {rib, face kp}, until {rows, n 6}
      Work 6 rows {in|of} k2, p2 rib → even: fabric {rib, face kkpp}, until {rows, n 6}
      {Rib|Work in rib} for 6 rows → even: fabric {pattern, words rib, name rib, else rib}, until {rows, n 6}
      {Rib|Work in rib} until piece measures 5 cm → even: fabric {pattern, words rib, name rib, else rib}, until {length, mm 50, from start}
      Break yarn, leaving a tail, turn → note: about yarn | @29 turn
      Break yarn, leaving a long tail, turn → note: about yarn | @34 turn
      Break yarn, leaving a very long tail, turn → note: about yarn | @39 turn
      Break yarn (leaving a tail), turn → note: about yarn | @30 turn
      Break yarn (leaving a long tail of 20 cm), turn → note: about yarn | @44 turn
      Break yarn, leaving a tail and turn → note: about yarn | @32 turn
      Break yarn, leaving a long tail and turn → note: about yarn | @37 turn
      Bind off{| evenly| loosely| firmly| in patt| loosely knitwise| on RS| on wrong side| very loosely} → bind off
      Bind off all sts evenly in rib → bind off: rest
      Make buttonhole 3 sts in from edge in same way on every 10th row → buttonholes: beats [{every 10}]
      Make a buttonhole at right front edge on next row and every 16th row → buttonholes: beats [{first 1, every 1, times 1}; {every 16}]
      Make a buttonhole {along|in|on|at} the {button|buttonhole} {band|border} on every 12th row → buttonholes: beats [{every 12}]
      Make a buttonhole in the {left|right} {border|band|edge|side} 2 sts from edge on every 12th row → buttonholes: beats [{every 12}]
      On every 10th row make a buttonhole{| 2 sts from edge} → buttonholes: beats [{every 10}]
    `),
  )('how far, how it ends and what is beside it: $line', expectReading);

  it.each(
    table(`
      Keep 3 sts in garter st at each edge → borders: borders [{edge both, stitches 3, fabric {named, name garter}}]
      Keep 3 sts at each edge in garter st and k 5 → borders: borders [{edge both, stitches 3, fabric {named, name garter}}] | @42 row: items 'k ×5'
      Keeping 3 sts at front edge in garter st, work even → borders: borders [{edge neck, stitches 3, fabric {named, name garter}}] | @43 even
      Keep 3 edge sts in seed st at both sides throughout → borders: borders [{edge both, stitches 3, fabric {named, name moss}}], throughout
      K first and last 3 sts of every row → borders: borders [{edge both, stitches 3, fabric {named, name garter}}]
      K the first 3 sts on every row → borders: borders [{edge beginning, stitches 3, fabric {named, name garter}}]
      Always k first 4 sts → borders: borders [{edge beginning, stitches 4, fabric {named, name garter}}]
      With first 4 and last 4 sts in garter st → borders: borders [{edge both, stitches 4, fabric {named, name garter}}]
      Rep from * to end → ✗ nothing before the repeat @12
      Rep from * to last 4 sts, k4 → ✗ nothing before the repeat @12
      Rep between * and * twice → repeat from stars: stars 1, times 2
      Rep last 2 rows 4 times more → repeat rows: last 2, times 4
      Rep last 2 rows until 20 sts rem → repeat rows: last 2, until {count, stitches 20}
      Rep last 2 rows to 20 sts → repeat rows: last 2, until {count, stitches 20}
      Rep these 2 rows for 10 cm → repeat rows: last 2, until {length, mm 100, from here}
      Rep rows 1 to 4 twice → repeat rows: from 1, to 4, times 2
      Rep rows 1-4 until piece measures 10 cm, ending with row 2 → repeat rows: from 1, to 4, until {length, mm 100, from start, endRow 2}
      Rep row 2 to end → repeat rows: from 2, to 2 | @14 ending
      Rep the last row once → repeat rows: last 1, times 1
      Rep the 2nd and 3rd rows 4 times → repeat rows: from 2, to 3, times 4
      Inc 6 sts evenly on last row → evenly: change 6, on last
      Inc in every 4th st → row: items '(k ×3, inc) to {left 'what follows'}'
      Dec 6 sts evenly spaced across row → evenly: change -6, on unsaid
      Dec evenly to 60 sts → evenly: change -1, on unsaid, toCount 60, all
      Dec 1 st at beg and end of next row → shape: change -1, edge both, beats [{first 1, every 1, times 1}]
      Dec 1 st at beg of next 4 rows → shape: change -1, edge beginning, beats [{first 1, every 1, times 4}]
      Dec 1 st at neck edge every row 3 times, then every other row twice → shape: change -1, edge neck, beats [{first 1, every 1, counted, times 3}; {every 2, counted, times 2}]
      Dec 1 st at each end of every RS row until 20 sts rem → shape: change -1, edge both, beats [{every 2, side RS, toCount 20}]
      Dec 1 st at each end of every 2nd and 3rd row → shape: change -1, edge both, beats [{every 2, and 3}]
      Dec 1 st at each end of next and every foll 4th row to 40 sts → shape: change -1, edge both, beats [{first 1, every 1, times 1}; {every 4, toCount 40}]
      Dec 1 st at each end of next and foll 4th row → shape: change -1, edge both, beats [{first 1, every 1, times 1}; {every 4, times 1}]
      Dec 1 st at each end of next and foll 3 alt rows → shape: change -1, edge both, beats [{first 1, every 1, times 1}; {every 2, times 3}]
      Dec 1 st at each end of every row 3 times and every alt row 4 times → shape: change -1, edge both, beats [{first 1, every 1, counted, times 3}; {every 2, counted, times 4}]
      Inc 1 st at each side every 5 cm 4 times → shape: change 1, edge both, beats [{every 1, everyMm 50, counted, times 4}]
      Inc 1 st at each side every inch twice → shape: change 1, edge both, beats [{every 1, everyMm 25.4, counted, times 2}]
      Inc 1 st at both ends of this row → shape: change 1, edge both, beats [{first 1, every 1, times 1}]
      Inc 1 st each end every 6th row, 8 times in all → shape: change 1, edge both, beats [{every 6, counted, times 8, total}]
      Inc 1 st each end of 5th and every foll 6th row until there are 60 sts → shape: change 1, edge both, beats [{first 5, every 5, times 1}; {every 6, toCount 60}]
      Inc 1 st each end of 5th row then every 6th row until there are 60 sts → shape: change 1, edge both, beats [{first 5, every 5, times 1}; {every 6, toCount 60}]
    `),
  )('borders, repeats and rhythms: $line', expectReading);

  it.each(
    table(`
      Bind off using crochet hook → bind off
      Bind off with a crochet hook → bind off
      Bind off loosely with larger needle → bind off
      Bind off 3 sts at beg of next 2 rows 4 times → groups: work bo, edge beginning, groups [{stitches 3, rows 8, every 1}]
      Bind off 3 sts 4 x at armhole edge → groups: work bo, edge armhole, groups [{stitches 3, rows 4, every 2}]
      Bind off 3 sts 4 times at armhole edge → groups: work bo, edge armhole, groups [{stitches 3, rows 4, every 2}]
      At neck edge bind off 3 sts every other row 4x → groups: work bo, edge neck, groups [{stitches 3, rows 4, every 2}]
      At beg of next 2 rows, bind off 5 sts → groups: work bo, edge beginning, groups [{stitches 5, rows 2, every 1}]
      At beg of next row bind off 5 sts → groups: work bo, edge beginning, groups [{stitches 5, rows 1, every 1}]
      At beg of each of next 4 rows cast on 5 sts → groups: work co, edge beginning, groups [{stitches 5, rows 4, every 1}]
      At armhole edge, bind off 5 sts once, then 3 sts twice → groups: work bo, edge armhole, groups [{stitches 5, rows 1, every 2}; {stitches 3, rows 2, every 2}]
      At armhole edge bind off 5 sts once, 3 sts twice, 1 st 3 times → groups: work bo, edge armhole, groups [{stitches 5, rows 1, every 2}; {stitches 3, rows 2, every 2}; {stitches 1, rows 3, every 2}]
      Bind off 5, 4 and 3 sts at neck edge → groups: work bo, edge neck, groups [{stitches 5, rows 1, every 2}; {stitches 4, rows 1, every 2}; {stitches 3, rows 1, every 2}]
      Bind off 5, 4, 3 sts at neck edge every other row → groups: work bo, edge neck, groups [{stitches 5, rows 1, every 2}; {stitches 4, rows 1, every 2}; {stitches 3, rows 1, every 2}]
      Work in same way as for back → as for: piece {words back, name back}, reversing false
      Work same as back to armhole → as for: piece {words back, name back}, reversing false, to {place, place armhole}
      Work exactly as for back → as for: piece {words back, name back}, reversing false
      Work as for back to completion of armhole shaping → as for: piece {words back, name back}, reversing false, to {rows after, rows 0, from armhole, past}
      Work as for back to completion of the armhole → as for: piece {words back, name back}, reversing false, to {place, place armhole}
      Work to armhole as for back → as for: piece {words back, name back}, reversing false, to {place, place armhole}
      Work in st st, ending with a k row → even: fabric {named, name stocking}, until {open, only, end RS}
      Work in st st (k 1 row, p 1 row) for 10 cm → even: fabric {named, name stocking}, until {length, mm 100, from here}
      Work in st st (p 1 row, k 1 row) for 10 cm → even: fabric {named, name stocking}, until {length, mm 100, from here}
      Work 4 ridges → even: until {rows, n 8}
      At the same time, dec 1 st at neck edge every 4th row → at the same time | @19 shape: change -1, edge neck, beats [{every 4}]
      And at the same time dec 1 st at neck edge every 4th row → @5 at the same time | @22 shape: change -1, edge neck, beats [{every 4}]
      Make buttonhole on next row and every 16th row {until 5 are made|until 5 have been made|until 5 in all are made|until 5 in all|until there are 5 in all|until there are 5 buttonholes} → buttonholes: beats [{first 1, every 1, times 1}; {every 16, times 4}]
      Make buttonhole on next row and every 16th row 4 times more → buttonholes: beats [{first 1, every 1, times 1}; {every 16, counted, times 4, further}]
    `),
  )('groups, other pieces and buttonholes: $line', expectReading);
});
