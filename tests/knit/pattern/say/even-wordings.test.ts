import { describe, it } from 'vitest';
import { table } from '../table.ts';
import { expectReading } from './said.ts';

/** How patterns are usually worded: common practice, no published source. */
describe('even, in all its wordings,', () => {
  it.each(
    table(`
      {Work|Cont|Continue|Proceed|Working|Keep|Keeping|Go|Carry|Continuing} {even|straight|plain|evenly} for 6 rows → even: until {rows, n 6}
      Work even {without further shaping|without more shaping|without shaping|without dec|without inc|without decreasing|without increasing|on these sts|on all sts|on rem sts|on these 2 sets} for 6 rows → even: until {rows, n 6}
      Work {even|straight} → even
      {Continue in rib|Rib in rib} → even: fabric {pattern, words rib, name rib, else rib}
      Work {a border of|the border of|a band of|border of|band of|a edge in} k1, p1 rib for 6 rows → even: fabric {rib, face kp}, until {rows, n 6}
      Work {in a border in|a band in|border of} moss st for 6 rows → even: fabric {named, name moss}, until {rows, n 6}
      Work 6 rows {even|straight|plain} → even: until {rows, n 6}
      Work {6 rows|another 6 rows|a further 6 rows|the next 6 rows|for 6 rows|first 6 rows|6 more rows|6 further rows|6 complete rows} in st st → even: fabric {named, name stocking}, until {rows, n 6}
      Work 6 rows {of|in} garter st → even: fabric {named, name garter}, until {rows, n 6}
      Work 3 ridges in garter st → even: fabric {named, name garter}, until {rows, n 6}
      Work 6 rows more in garter st → even: fabric {named, name garter}, until {rows, n 6}
      Work 6 rows in rib {as given for back|as worked for front|as set on sleeve|as for back|as for left front|as on right front|as before|as for front|as on front|as for sleeve|as given for sleeves} → even: fabric {pattern, words rib, name rib, else rib}, until {rows, n 6}
      Work 6 rows in rib as on sleeves → even: fabric {pattern, words rib, name rib, else rib}, until {rows, n 6}
      {K|P|Knitting|Work k} {every row|each row|across every row|all rows} for 6 rows → even: fabric {named, name garter}, until {rows, n 6}
      K {every rows|plain} until piece measures 10 cm → even: fabric {named, name garter}, until {length, mm 100, from start}
      K {even|straight} for 6 rows → even: fabric {knit on}, until {rows, n 6}
      K until piece measures 10 cm → even: fabric {knit on}, until {length, mm 100, from start}
      {K for 10 cm|K 10 cm} → even: fabric {knit on}, until {length, mm 100, from here}
      K 10 mm → even: fabric {knit on}, until {length, mm 10, from here}
      K {4 in|4 inches} → even: fabric {knit on}, until {length, mm 101.6, from here}
      P for 6 rows → even: fabric {knit on}, until {rows, n 6}
      {Beg|Starting|Commencing|Start|Begin} {with|on|by} a k row, work 6 rows in st st → even: fabric {named, name stocking}, until {rows, n 6}, firstLooks k
      Beg with {a k|an RS|k|RS} row, work in st st → even: fabric {named, name stocking}, firstLooks k
      Beg with {a p|a WS|a purl} row, work in st st → even: fabric {named, name stocking}, firstLooks p
      Beg with a k row {and|then} cont in st st for 6 rows → even: fabric {named, name stocking}, until {rows, n 6}, firstLooks k
      Beg with a k row st st 6 rows → even: fabric {named, name stocking}, until {rows, n 6}, firstLooks k
      Work in st st{, beg with a p row| (beg with a p row)|, beg with p rows}, for 6 rows → even: fabric {named, name stocking}, until {rows, n 6}, firstLooks p
      Work 6 rows in st st, beg with a p row → even: fabric {named, name stocking}, until {rows, n 6}, firstLooks p
      Work st st for 6 rows, beg with a p row, → even: fabric {named, name stocking}, until {rows, n 6}, firstLooks p
      Work in st st{ (k every row)| (k each row)| (k 1 row, p 1 row)| (k on RS, p on WS)| (k on right side, p on wrong side)| (k 1 row p 1 row)| (k all rows)| (k 1, p 1)} for 6 rows → even: fabric {named, name stocking}, until {rows, n 6}
      {K1, P1 in ribbing for 2 in|K1, p1 rib for 2 in|K1 and p1 in rib for 2 in} → even: fabric {rib, face kp}, until {length, mm 50.8, from here}
      *K1, p1* {rib|in rib} for 2 in → even: fabric {rib, face kp}, until {length, mm 50.8, from here}
      K2, p2 for 4 inches → even: fabric {rib, face kkpp}, until {length, mm 101.6, from here}
      K2, p2 until piece measures 10 cm → even: fabric {rib, face kkpp}, until {length, mm 100, from start}
      Rib for 2 in → even: fabric {pattern, words rib, name rib, else rib}, until {length, mm 50.8, from here}
      Rib 6 rows → even: fabric {pattern, words rib, name rib, else rib}, until {rows, n 6}
      Rib until piece measures 10 cm → even: fabric {pattern, words rib, name rib, else rib}, until {length, mm 100, from start}
      Work in pattern → even: fabric {established}
      Work in Basket pattern for 6 rows → even: fabric {pattern, words basket, name basket}, until {rows, n 6}
      Basket pattern for 6 rows → even: fabric {pattern, words basket, name basket}, until {rows, n 6}
      Work in st st, ending with a WS row → even: fabric {named, name stocking}, until {open, only, end WS}
      Work even, ending at side edge → even: until {open, only, endEdge armhole}
      Work even to 2 in above rib → even: until {length, mm 50.8, from rib}
      Work even for 6 rows in st st → even: fabric {named, name stocking}, until {rows, n 6}
      Work 6 rows → even: until {rows, n 6}
      Cont as est → even: fabric {established}
      Work even in k1, p1 for 4 in → even: fabric {rib, face kp}, until {length, mm 101.6, from here}
      Work {further|another} 6 rows in st st → even: fabric {named, name stocking}, until {rows, n 6}
      Keeping in patt for 6 rows → even: fabric {established}, until {rows, n 6}
      Rib in rib for 6 rows → even: fabric {pattern, words rib, name rib, else rib}, until {rows, n 6}
      Work 6 more rows in st st → even: fabric {named, name stocking}, until {rows, n 6}
      Work 4 rows {straight|even|without shaping} in rib → even: fabric {pattern, words rib, name rib, else rib}, until {rows, n 4}
      Work 4 rows {straight|even|without shaping} in moss st → even: fabric {named, name moss}, until {rows, n 4}
    `),
  )('is read: $line', expectReading);

  it.each(
    table(`
      *K1, p1 rib for 2 in → ✗ stitch or repeat expected @9
      Cont to rib in rib → ✗ stitch or repeat expected @13
      Work in an edge in k1, p1 rib for 6 rows → ✗ stitch or repeat expected @1
      Work every row k for 6 rows → ✗ stitch or repeat expected @1
      K2, p2 to end → row: items '(k ×2, p ×2) to {left 0}'
      K1, p1 to last st, k1 → row: items '(k, p) to {left 1}, k'
      K20, p1 for 6 rows → even: fabric {rib, face kkkkkkkkkkkkkkkkkkkkp}, until {rows, n 6}
      K21, p1 for 6 rows → ✗ stitch or repeat expected @9
      K every st → row: items 'k to {left 'what follows'}'
      Even → ✗ stitch or repeat expected @1
      6 rows → ✗ stitch or repeat expected @1
      Beg with a new row → ✗ stitch or repeat expected @1
      P2, p2 for 6 rows → ✗ stitch or repeat expected @8
      K2, k2 for 6 rows → ✗ stitch or repeat expected @8
      K2½, p2 for 6 rows → ✗ stitch or repeat expected @2
      K0, p2 for 6 rows → ✗ stitch or repeat expected @8
      K 5 even → row: items '(k ×5) to {left 'what follows'}'
      K every 6 rows → ✗ stitch or repeat expected @3
    `),
  )('is not read for more than it says: $line', expectReading);
});
