import { describe, it } from 'vitest';
import { table } from '../table.ts';
import { expectReading } from './said.ts';

/** How patterns are usually worded: common practice, no published source. */
describe('rows that are worked even, in all their wordings,', () => {
  it.each(
    table(`
      {Work even for 6 rows|Work straight for 6 rows|Work evenly for 6 rows|Work plain for 6 rows|Work without shaping for 6 rows|Work without further shaping for 6 rows|Work without more shaping for 6 rows|Work without inc for 6 rows|Work without decreasing for 6 rows|Work across all the sts for 6 rows|Work over right shoulder sts for 6 rows|Work throughout for 6 rows} → even: until {rows, n 6}
      Work over these sts for 6 rows → work on: which these | @21 even: fabric {established}, until {rows, n 6}
      Work even on these sts only for 6 rows → even: until {rows, n 6}
      On the remaining sts{,|} work in rib for 6 rows → even: fabric {pattern, words rib, name rib, else rib}, until {rows, n 6}
      Over remaining sts work in garter st for 6 rows → even: fabric {named, name garter}, until {rows, n 6}
      {Starting|Beg|Beginning|Commencing} with {a k|an RS|a knit} row, work in st st for 6 rows → even: fabric {named, name stocking}, until {rows, n 6}, firstLooks k
      {Starting|Beg} {on|by} a p row, work in st st for 6 rows → even: fabric {named, name stocking}, until {rows, n 6}, firstLooks p
      Starting with a {WS|purl} row, work 6 rows in st st → even: fabric {named, name stocking}, until {rows, n 6}, firstLooks p
      Work in st st, starting with a purl row, for 6 rows → even: fabric {named, name stocking}, until {rows, n 6}, firstLooks p
      Work in st st (starting with a purl row) for 6 rows → even: fabric {named, name stocking}, until {rows, n 6}, firstLooks p
      Work in st st for 6 rows, starting with a purl row → even: fabric {named, name stocking}, until {rows, n 6}, firstLooks p
      Work 6 rows in st st beg with a k row → even: fabric {named, name stocking}, until {rows, n 6}, firstLooks k
      Beg k row, work in st st for 6 rows → even: fabric {named, name stocking}, until {rows, n 6}, firstLooks k
      Starting with a k row and work in st st for 6 rows → even: fabric {named, name stocking}, until {rows, n 6}, firstLooks k
      {Keep on knit every row for 6 cm|Continue to knit every row for 6 cm|Work knit every row for 6 cm} → even: fabric {named, name garter}, until {length, mm 60, from here}
      {Knit|K|Knitting} {every row|each row|all rows|every rows|across every row|plain} for 6 cm → even: fabric {named, name garter}, until {length, mm 60, from here}
      {Knit|K} {even|straight} for 6 cm → even: fabric {knit on}, until {length, mm 60, from here}
      {Knit|K} until piece measures 6 cm → even: fabric {knit on}, until {length, mm 60, from start}
      {Knit for 6 cm|K for 6 cm} → even: fabric {knit on}, until {length, mm 60, from here}
      {Knit for 6 in|Knit for 6 inches|K for 6 in|K for 6 inches} → even: fabric {knit on}, until {length, mm 152.39999999999998, from here}
      {Knit for 6 mm|K for 6 mm} → even: fabric {knit on}, until {length, mm 6, from here}
      Knit 6 cm → even: fabric {knit on}, until {length, mm 60, from here}
      {Knit 6 in|Knit 6 inches} → even: fabric {knit on}, until {length, mm 152.39999999999998, from here}
      Knit 6 mm → even: fabric {knit on}, until {length, mm 6, from here}
      Knit in garter st for 6 cm → even: fabric {named, name garter}, until {length, mm 60, from here}
      K in rib for 6 rows → even: fabric {pattern, words rib, name rib, else rib}, until {rows, n 6}
      {Begin|Start} {working|} st st → even: fabric {named, name stocking}
      {Begin garter st|Start garter st} → even: fabric {named, name garter}
      {Begin k1, p1 rib|Start k1, p1 rib} → even: fabric {rib, face kp}
      Begin pattern → even: fabric {pattern, words patt, name '', else 'the pattern'}
      Start working in st st for 6 rows → even: fabric {named, name stocking}, until {rows, n 6}
      {End|Finish|Ending|Finishing} with 6 rows in garter st → even: fabric {named, name garter}, until {rows, n 6}
      {Work 6 rows|Cont 6 rows|Continue 6 rows} → even: until {rows, n 6}
      Patt 6 rows → even: fabric {established}, until {rows, n 6}
      {Work|Continue} in {a|the} {border|band|edge|neckband|collar} of garter st for 6 rows → even: fabric {named, name garter}, until {rows, n 6}
      Work border of garter st for 6 rows → even: fabric {named, name garter}, until {rows, n 6}
      Work across in garter st for 6 rows → even: fabric {named, name garter}, until {rows, n 6}
      Work this {panel|piece|section|part|strip} in garter st for 6 rows → even: fabric {named, name garter}, until {rows, n 6}
      Work back and forth in garter st for 6 rows → even: fabric {named, name garter}, until {rows, n 6}
      Work these 8 sts in st st for 6 rows → even: fabric {named, name stocking}, until {rows, n 6}, over 8
      Rib 6 rows (k 1, p 1) → even: fabric {rib, face kp}, until {rows, n 6}
      Rib for 6 rows → even: fabric {pattern, words rib, name rib, else rib}, until {rows, n 6}
      Rib in k1, p1 for 6 rows → even: fabric {rib, face kp}, until {rows, n 6}
      Work 6 rows {of|in} k2, p2 → even: fabric {rib, face kkpp}, until {rows, n 6}
      Work 6 rows in k2, p2 and bind off → even: fabric {rib, face kkpp}, until {rows, n 6} | @27 bind off
      Work in rib as given for {back|front|the sleeve|sleeves} for 6 rows → even: fabric {pattern, words rib, name rib, else rib}, until {rows, n 6}
      Work in rib as {for left front|on the right front|before|given above|above|worked for back|set on the back} for 6 rows → even: fabric {pattern, words rib, name rib, else rib}, until {rows, n 6}
      Work in k2, p2 rib, ending with k2, for 6 rows → even: fabric {rib, face kkpp}, until {rows, n 6}
      Work in k2, p2 rib (ending with k2) for 6 rows → even: fabric {rib, face kkpp}, until {rows, n 6}
      Starting with p2, work in 2 x 2 rib for 6 rows → even: fabric {rib, face kkpp}, until {rows, n 6}, firstStitches {work p, n 2}
      Work in k1, p1 rib, starting with k1, for 6 rows → even: fabric {rib, face kp}, until {rows, n 6}, firstStitches {work k, n 1}
      Work in st st only for 6 rows → even: fabric {named, name stocking}, until {rows, n 6}
      Work in st st only → even: fabric {named, name stocking}
      Work in garter st (k every row) for 6 rows → even: fabric {named, name garter}, until {rows, n 6}
      Work in st st (k 1 row, p 1 row) for 6 rows → even: fabric {named, name stocking}, until {rows, n 6}
      Work in st st (k on RS, p on WS) for 6 rows → even: fabric {named, name stocking}, until {rows, n 6}
      K 1, P 1 in ribbing for 6 cm → even: fabric {rib, face kp}, until {length, mm 60, from here}
      K 2, P 2 for 6 cm → even: fabric {rib, face kkpp}, until {length, mm 60, from here}
      *K 2, P 2* for 6 cm → even: fabric {rib, face kkpp}, until {length, mm 60, from here}
      *K 2, P 2* rib for 6 cm → even: fabric {rib, face kkpp}, until {length, mm 60, from here}
      K 2, P 2 sts for 6 cm → even: fabric {rib, face kkpp}, until {length, mm 60, from here}
      K 1 st, P 1 st for 6 cm → even: fabric {rib, face kp}, until {length, mm 60, from here}
      K 1 and P 1 rib for 6 cm → even: fabric {rib, face kp}, until {length, mm 60, from here}
      Work {another|a further|the next|the first|for the next|a} 6 rows → even: until {rows, n 6}
      Work 6 {more|further|complete} rows → even: until {rows, n 6}
      Work 6 rows more in st st → even: fabric {named, name stocking}, until {rows, n 6}
      Work 6 ridges of garter st → even: fabric {named, name garter}, until {rows, n 12}
      Work 6 ridges → even: until {rows, n 12}
      Work 4 rows in A → @13 yarn: name A | even: until {rows, n 4}
      Work 6 rows in rib, ending with a WS row → even: fabric {pattern, words rib, name rib, else rib}, until {rows, n 6, end WS}
      Work {4 cm|for 4 cm} in rib, ending with a RS row → even: fabric {pattern, words rib, name rib, else rib}, until {length, mm 40, from here, end RS}
      Work even, ending with a WS row → even: until {open, only, end WS}
      Work in st st, ending with a WS row → even: fabric {named, name stocking}, until {open, only, end WS}
      Work in st st, ending at neck edge → even: fabric {named, name stocking}, until {open, only, endEdge neck}
      Knit even to underarm, 20 cm → even: fabric {knit on}, until {length, mm 200, from start}
      Work to {the armhole, 20|underarm, 20} cm → even: until {length, mm 200, from start}
      Work even to same length as back → even: until {same length, piece {words back, name back}}
    `),
  )('are read: $line', expectReading);

  it.each(
    table(`
      Keeping rib going, bind off 5 sts → note: about aside | @20 bind off: stitches 5
      Keeping rib correct, bind off 5 sts → note: about aside | @22 bind off: stitches 5
      Keeping rib continuous, bind off 5 sts → note: about aside | @25 bind off: stitches 5
      Keeping pattern going, bind off 5 sts → note: about pattern | @24 bind off: stitches 5
      Keeping pattern correct, bind off 5 sts → note: about pattern | @26 bind off: stitches 5
      Keeping pattern continuous, bind off 5 sts → note: about pattern | @29 bind off: stitches 5
      Keeping the border going, bind off 5 sts → borders: borders [] | @27 bind off: stitches 5
      Keeping the border correct, bind off 5 sts → borders: borders [] | @29 bind off: stitches 5
      Keeping the border continuous, bind off 5 sts → note: about aside | @32 bind off: stitches 5
      Keep continuity of patt, bind off 5 sts → note: about pattern | @26 bind off: stitches 5
      Work in pattern to end of row → row: items 'patt to {left 0}'
      Work in pattern to last 5 sts → row: items 'patt to {left 5}'
      Work in st st to end of row → row: items 'patt to {left 0}'
      Work in st st to last 5 sts → row: items 'patt to {left 5}'
      Work even to end of row → ✗ stitch expected @24
      Starting with k0, work in 2 x 2 rib for 6 rows → ✗ stitch or repeat expected @1
      Starting with p2, work in st st for 6 rows → ✗ stitch or repeat expected @1
      Starting with 2, work in rib for 6 rows → ✗ stitch or repeat expected @1
      Starting with k2 sts, work in rib for 6 rows → ✗ stitch or repeat expected @1
      Starting with a {blue|6} row, work in st st for 6 rows → ✗ stitch or repeat expected @1
      K 2 sts, p 2 for 6 cm → ✗ stitch or repeat expected @14
      *K 2, P 2 for 6 cm → ✗ stitch or repeat expected @11
      K 2, k 2 for 6 cm → ✗ stitch or repeat expected @10
      K 2, p 30 for 6 cm → ✗ stitch or repeat expected @11
      K 2, p 2 rib to end → row: items '(k ×2, p ×2) to {left 0}'
      Knit 6 sts → row: items 'k ×6'
      Knit until nice → ✗ stitch or repeat expected @6
      End with 6 sts in garter st → ending
      End with garter st → ending
      Start with garter st → even: fabric {named, name garter}
      Begin at neck → ✗ stitch or repeat expected @1
      Work in garter st (slowly) for 6 rows → ✗ stitch or repeat expected @20
      Work in garter st (every row) for 6 rows → ✗ stitch or repeat expected @20
      6 rows → ✗ stitch or repeat expected @1
      For 6 rows → ✗ stitch or repeat expected @1
      In garter st → even: fabric {named, name garter}
      In basket pattern → ✗ stitch or repeat expected @1
      Even → ✗ stitch or repeat expected @1
      Work even → even
      Work → ✗ stitch or repeat expected @1
      Rib → heading: title {words rib, pattern rib, divides false}, sideOnly false, talk false, places []
    `),
  )('are not read for more than they say: $line', expectReading);
});
