import { describe, it } from 'vitest';
import { annotatedIn, expectAnnotated } from './annotated.ts';

/** How patterns are usually worded: common practice, no published source. Rows and counts reckoned by hand. */
describe('what is kept, where it ends, what is parted, followed row by row,', () => {
  it.each(
    annotatedIn(`
### what is kept at the edges
Cast on 30 sts.
  > →30
Work in st st, keeping first and last 4 sts in garter st, for 3 rows.
  > 30 Piece/body 1 RS knit · WS k4, purl to last 4 sts, k4 · RS knit
Keeping 2 sts at neck edge in moss st, work 2 rows.
  > 30 Piece/body 4 WS k1, purl to last 4 sts, k4 · RS knit to last 2 sts, p1, k1
Keep first 5 sts in garter st.
  > 30
Work 2 rows.
  > 30 Piece/body 6 WS k5, purl to last 4 sts, k4 · RS knit
Keeping last 3 sts in k1, p1 rib, work 2 rows.
  > 30 Piece/body 8 WS k5, purl to last 2 sts, k1, p1 · RS k1, p1, knit to end
Dec 1 st at each end of next row.
  > 30→28 Piece/body 10 WS k5, dec, purl to last 5 sts, dec, p1, k1, p1 (28)
Bind off 4 sts at beg of next 2 rows.
  > 28→20 Piece/body 11 RS bind off 4 sts, knit to end (24) · WS bind off 4 sts, k1, purl to end (20)
Work 2 rows.
  > 20 Piece/body 13 RS knit · WS purl
Keeping borders as set, work 2 rows.
  > 20 Piece/body 15 RS knit · WS purl
  > ✗ place not known @10:1
Keeping first and last 20 sts in garter st, work 2 rows.
  > 20 Piece/body 17 RS knit · WS purl
  > ✗ not enough stitches @11:1 needStitches 40, haveStitches 20
Work 2 rows in garter st.
  > 20 Piece/body 19 RS knit · WS knit
Keeping borders as set, work 2 rows.
  > 20 Piece/body 21 RS knit · WS knit
  > ✗ place not known @13:1
  > = Piece, other, 1 to make, lines 2 3 5 6 7 8 9 10 11 12 13
  > =   body from {castOn 30}, RS: 18 stocking 4 mm; 4 garter 4 mm; hold

### ends at an edge, at a side, after so many rows in all {"gauge":{"stitches":20,"rows":25}}
Left Front
  > heading
Cast on 20 sts.
  > →20
Work in st st until piece measures 4 cm, ending at side edge.
  > 20 long: 10 rows Left front/body 1 RS knit · [WS purl · RS knit] ×4 · WS purl
Work even until piece measures 8 cm, ending at neck edge.
  > 20 long: 11 rows Left front/body 11 RS knit · [WS purl · RS knit] ×5
Work even until 26 rows have been worked in all.
  > 20 Left front/body 22 WS purl · [RS knit · WS purl] ×2
Work even for 2 cm, working an odd number of rows.
  > 20 long: 5 rows Left front/body 27 RS knit · [WS purl · RS knit] ×2
Work even for 2 cm, working an even number of rows.
  > 20 long: 6 rows Left front/body 32 WS purl · [RS knit · WS purl] ×2 · RS knit
Work even until piece measures 10 cm.
  > 20 long: 1 rows Left front/body 38 WS purl
  > ✗ longer already @8:1 wantedMm 100, overMm 48
Bind off.
  > 20→0 Left front/body 39 RS bind off all sts in pattern (0)
Right Front
  > heading
Cast on 20 sts.
  > →20
Work in st st until piece measures 4 cm, ending at side edge.
  > 20 long: 11 rows Right front/body 1 RS knit · [WS purl · RS knit] ×5
Work even until piece measures 8 cm, ending at neck edge.
  > 20 long: 9 rows Right front/body 12 WS purl · [RS knit · WS purl] ×4
Work even until same length as left front.
  > 20 Right front/body 21 RS knit · [WS purl · RS knit] ×9
Bind off.
  > 20→0 Right front/body 40 WS bind off all sts in pattern (0)
Sleeve
  > heading
Cast on 20 sts.
  > →20
Work in st st until 2 rows less than left front.
  > 20 Sleeve/body 1 RS knit · [WS purl · RS knit] ×18
Work even until same length as hood.
  > 20 as long as she likes: 3 rows Sleeve/body 38 WS purl · RS knit · WS purl
Work even until same length as left front to armhole.
  > 20 as long as she likes: 2 rows Sleeve/body 41 RS knit · WS purl
  > = gauge stitches 20, rows 25
  > = Left front, left front, 1 to make, lines 3 4 5 6 7 8 9
  > =   body from {castOn 20}, RS: 10 stocking 4 mm (length {id 'left front/1', open false, mm 40, endSide WS, from start}); 11 stocking 4 mm (length {id 'left front/2', open false, mm 80, endSide RS, from start}); 5 stocking 4 mm; 5 stocking 4 mm (length {id 'left front/3', open false, mm 20, endSide RS, from here}); 6 stocking 4 mm (length {id 'left front/4', open false, mm 20, endSide RS, from here}); 1 stocking 4 mm (length {id 'left front/5', open false, mm 100, from start}); bind off
  > = Right front, right front, 1 to make, lines 12 13 14 15
  > =   body from {castOn 20}, RS: 11 stocking 4 mm (length {id 'right front/1', open false, mm 40, endSide RS, from start}); 9 stocking 4 mm (length {id 'right front/2', open false, mm 80, endSide WS, from start}); 19 stocking 4 mm; bind off
  > = Sleeve, sleeve, 1 to make, lines 18 19 20
  > =   body from {castOn 20}, RS: 37 stocking 4 mm; 3 stocking 4 mm (length {id 'sleeve/1', open, from start}); 2 stocking 4 mm (length {id 'sleeve/2', open, from start}); hold

### a row that is parted by a turn, and what brings it together again
Cast on 60 sts.
  > →60
Work 2 rows in st st.
  > 60 Piece/body 1 RS knit · WS purl
Next row: K28, turn.
  > 60→28 Piece/right side 1 RS k28
Working on these 28 sts only, work 3 rows in st st.
  > 28 Piece/right side 2 WS purl · RS knit · WS purl
Place these sts on holder.
  > 28
Rejoin yarn to rem sts and bind off 4 sts, k to end.
  > 32→28 Piece/left side 1 RS bind off 4 sts, knit to end (28)
Work 3 rows in st st.
  > 28 Piece/left side 2 WS purl · RS knit · WS purl
Next row: K28, cast on 4 sts, k28.
  > 28→60 Piece/joined 1 RS k28, cast on 4 sts, k28 (60)
Work 2 rows in st st.
  > 60 Piece/joined 2 WS purl · RS knit
  > = Piece, other, 1 to make, lines 2 3 4 6 7 8 9
  > =   body from {castOn 60}, RS: 2 stocking 4 mm; split
  > =   right side from {part body, stitches 28, edge right}, RS: 4 stocking 4 mm; hold
  > =   left side from {part body, stitches 32, edge left}, RS: 4 stocking 4 mm; hold
  > =   joined from {pickUp [{along 'left side', stitches 28, held}; {along 'right side', stitches 28, held}]}, RS: 3 stocking 4 mm; hold

### stitches placed within a row
Cast on 40 sts.
  > →40
Work 2 rows in st st.
  > 40 Piece/body 1 RS knit · WS purl
Next row: K12, place next 16 sts on a holder, k to end.
  > 40→24 Piece/body 3 RS k12, place 16 sts on holder, knit to end (24)
Work 2 rows in st st.
  > 24→12 Piece/left side 1 WS purl · RS knit
Bind off.
  > 12→0 Piece/left side 3 WS bind off all sts in pattern (0)
Rejoin yarn to rem sts and work 2 rows in st st.
  > 12 Piece/right side 1 WS purl · RS knit
Bind off.
  > 12→0 Piece/right side 3 WS bind off all sts in pattern (0)
  > = Piece, other, 1 to make, lines 2 3 4 5 6 7
  > =   body from {castOn 40}, RS: 3 stocking 4 mm; split
  > =   left side from {part body, stitches 12, edge left}, WS: 2 stocking 4 mm; bind off
  > =   right side from {part body, stitches 12, edge right}, WS: 2 stocking 4 mm; bind off

### a buttonhole
Cast on 20 sts.
  > →20
Work 2 rows in st st.
  > 20 Piece/body 1 RS knit · WS purl
Next row: K5, bind off 2 sts, k to end.
  > 20→18 Piece/body 3 RS k5, bind off 2 sts, knit to end (18)
Next row: Cast on 2 sts over bound off sts.
  > 18→20 Piece/body 4 WS purl to last 5 sts, cast on 2 sts, p5 (20)
Work 2 rows in st st.
  > 20 Piece/body 5 RS knit · WS purl
  > = Piece, other, 1 to make, lines 2 3 4 5
  > =   body from {castOn 20}, RS: 6 stocking 4 mm; hold

### stitch patterns before the first cast-on
Basket stitch:
  > talk
Row 1: *K1, p1; rep from * to end.
Row 2: *P1, k1; rep from * to end.
Lace pattern:
  > talk
Row 1: Knit.
Row 2 and every other row: Purl.
Row 3: Purl.
Row 4: As row 2.
Row 5: As row 1.
Row 1: *K3, p1; rep from * to end.

Back
  > heading
Cast on 20 sts.
  > →20
Work in lace pattern for 6 rows.
  > 20 Back/body 1 RS knit · WS purl · RS purl · WS purl · RS knit · WS purl
Work in basket st for 3 rows.
  > 20 Back/body 7 RS *k1, p1; repeat from * to end · WS *p1, k1; repeat from * to end · RS *k1, p1; repeat from * to end
Work in lace pattern 2 for 2 rows.
  > own words 20 asks the count Back/body 10 WS work in pattern 'Work in lace pattern 2 for 2 rows' · RS work in pattern 'Work in lace pattern 2 for 2 rows'
  > ✗ stitch or repeat expected @16:22 column 22
  > = pattern basket of 2 plus 0 over 4: *k1, p1; repeat from * to end (4) · *p1, k1; repeat from * to end (4)
  > = pattern lace of 1 plus 0 over 2: knit (2) · purl (2) · purl (2) · purl (2) · knit (2) · purl (2)
  > = pattern 'lace 2' of 4 plus 0 over 8: *k3, p1; repeat from * to end (8)
  > = Back, back, 1 to make, lines 13 14 15
  > =   body from {castOn 20}, RS: 6 lace in stocking 4 mm; 5 basket in stocking 4 mm (own words 4 5); hold
`),
  )('comes out as $title', expectAnnotated);
});
