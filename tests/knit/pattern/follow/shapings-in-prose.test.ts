import { describe, it } from 'vitest';
import { annotatedIn, expectAnnotated } from './annotated.ts';

/** Wordings of magazines from 1916 on, reworded; counts reckoned by hand. Common practice, no published source. */
describe('shapings and groups told in prose,', () => {
  it.each(
    annotatedIn(`
### the count says at how many ends
Back
  > heading
Cast on 70 sts. Knit 4 rows.
  > 70 Back/body 1 RS knit · WS knit · RS knit · WS knit
Bind off 4 sts at beg of next 2 rows, then dec 1 st every other row 5 times (52 sts).
  > 70→52 says 52 Back/body 5 RS bind off 4 sts, knit to end (66) · WS bind off 4 sts, knit to end (62) · RS dec, knit to last 2 sts, dec (60) · WS knit · RS dec, knit to last 2 sts, dec (58) · WS knit · RS dec, knit to last 2 sts, dec (56) · WS knit · RS dec, knit to last 2 sts, dec (54) · WS knit · RS dec, knit to last 2 sts, dec (52)
  > = Back, back, 1 to make, lines 2 3
  > =   body from {castOn 70}, RS: 4 garter 4 mm; 11 garter 4 mm; hold

### the count says at one end, where one was shaped before
Left front
  > heading
Cast on 30 sts. Knit 4 rows.
  > 30 Left front/body 1 RS knit · WS knit · RS knit · WS knit
At armhole edge bind off 3 sts; work 1 row. Dec 1 st every other row 4 times. 23 sts. on needle.
  > 30→23 says 23 Left front/body 5 RS bind off 3 sts, knit to end (27) · WS knit · RS dec, knit to end (26) · WS knit · RS dec, knit to end (25) · WS knit · RS dec, knit to end (24) · WS knit · RS dec, knit to end (23)
  > = Left front, left front, 1 to make, lines 2 3
  > =   body from {castOn 30}, RS: 4 garter 4 mm; 9 garter 4 mm; hold

### neither does, or nobody says a count
Back
  > heading
Cast on 60 sts. Knit 4 rows.
  > 60 Back/body 1 RS knit · WS knit · RS knit · WS knit
Dec 1 st every other row 5 times (57 sts).
  > 60→57 says 57 Back/body 5 RS [dec] 3 times, work in pattern to end 'Dec 1 st every other row 5 times (57 sts)' (57)
  > ✗ place not known @3:1
Dec 1 st every other row 5 times.
  > own words 57 asks the count Back/body 6 WS work in pattern 'Dec 1 st every other row 5 times'
  > ✗ stitch or repeat expected @4:10 column 10
Dec 1 st every other row 5 times (50 sts).
  > 57→50 says 50 Back/body 7 RS [dec] 7 times, work in pattern to end 'Dec 1 st every other row 5 times (50 sts)' (50)
  > ✗ place not known @5:1
  > = Back, back, 1 to make, lines 2 3 4 5
  > =   body from {castOn 60}, RS: 4 garter 4 mm; 2 garter 4 mm (own words 1 2); 1 pattern in stocking 4 mm (own words 1); hold

### a shaping that goes on needs its rhythm
Back
  > heading
Cast on 60 sts. Knit 4 rows.
  > 60 Back/body 1 RS knit · WS knit · RS knit · WS knit
Continue to dec 1 st at each end in the same manner as before every other row 3 times.
  > 60→54 Back/body 5 RS dec, knit to last 2 sts, dec (58) · WS knit · RS dec, knit to last 2 sts, dec (56) · WS knit · RS dec, knit to last 2 sts, dec (54)
Continue to dec 1 st at each end twice more.
  > own words 54 asks the count Back/body 10 WS work in pattern 'Continue to dec 1 st at each end twice more'
  > ✗ stitch or repeat expected @4:1 column 1
Cont dec at each end, and work in rib.
  > own words 54 asks the count Back/body 11 RS work in pattern 'Cont dec at each end, and work in rib'
  > ✗ stitch or repeat expected @5:1 column 1
Continue dec 1 st at each end as before to 44 sts.
  > own words 54 asks the count Back/body 12 WS work in pattern 'Continue dec 1 st at each end as before to 44 sts'
  > ✗ stitch or repeat expected @6:1 column 1
  > = Back, back, 1 to make, lines 2 3 4 5 6
  > =   body from {castOn 60}, RS: 4 garter 4 mm; 6 garter 4 mm (own words 6); 2 pattern in stocking 4 mm (own words 1 2); hold

### groups at an edge, at the beginning of rows
Left front
  > heading
Cast on 40 sts. Knit 4 rows.
  > 40 Left front/body 1 RS knit · WS knit · RS knit · WS knit
Bind off at neck edge at beg of every other row 4 sts once, then 3 sts once.
  > 40→33 Left front/body 5 RS knit · WS bind off 4 sts, knit to end (36) · RS knit · WS bind off 3 sts, knit to end (33)
Bind off shoulder at armhole edge 8 sts 4 times.
  > 33→1 Left front/body 9 RS bind off 8 sts, knit to end (25) · WS knit · RS bind off 8 sts, knit to end (17) · WS knit · RS bind off 8 sts, knit to end (9) · WS knit · RS bind off 8 sts, k1 (1)
  > = Left front, left front, 1 to make, lines 2 3 4
  > =   body from {castOn 40}, RS: 4 garter 4 mm; 11 garter 4 mm; hold

### what is bound off for each shoulder is none that is left
Back
  > heading
Cast on 60 sts. Knit 4 rows.
  > 60 Back/body 1 RS knit · WS knit · RS knit · WS knit
Bind off 6 sts at beg of next 6 rows (18 sts for each shoulder).
  > 60→24 Back/body 5 RS bind off 6 sts, knit to end (54) · WS bind off 6 sts, knit to end (48) · RS bind off 6 sts, knit to end (42) · WS bind off 6 sts, knit to end (36) · RS bind off 6 sts, knit to end (30) · WS bind off 6 sts, knit to end (24)
Bind off remaining 24 sts.
  > 24→0 Back/body 11 RS bind off all sts in pattern (0)
  > = Back, back, 1 to make, lines 2 3 4
  > =   body from {castOn 60}, RS: 4 garter 4 mm; 6 garter 4 mm; bind off

### where it ends is not said of it
Back
  > heading
Cast on 60 sts. Knit 4 rows.
  > 60 Back/body 1 RS knit · WS knit · RS knit · WS knit
Bind off 6 sts at beg of next 6 rows (24 sts left).
  > 60→24 says 24 Back/body 5 RS bind off 6 sts, knit to end (54) · WS bind off 6 sts, knit to end (48) · RS bind off 6 sts, knit to end (42) · WS bind off 6 sts, knit to end (36) · RS bind off 6 sts, knit to end (30) · WS bind off 6 sts, knit to end (24)
Bind off 4 sts at beg of every row until all sts are worked off.
  > 24→0 Back/body 11 RS bind off 4 sts, knit to end (20) · WS bind off 4 sts, knit to end (16) · RS bind off 4 sts, knit to end (12) · WS bind off 4 sts, knit to end (8) · RS bind off 4 sts, knit to end (4) · WS bind off all sts in pattern (0)
  > = Back, back, 1 to make, lines 2 3 4
  > =   body from {castOn 60}, RS: 4 garter 4 mm; 11 garter 4 mm; bind off

### ribs that are ridges, and a bound off neck between its shoulders
Shrug
  > talk
Cast on 50 sts. Knit 6 rows.
  > 50 Shrug/body 1 RS knit · [WS knit · RS knit] ×2 · WS knit
Slip the first 15 sts on a holder, bind off the next 20 sts and on the remaining 15 sts knit 4 ribs: now knit 4 ribs on the first 15 sts.
  > 50→15 Shrug/left side 1 RS bind off 20 sts, k15 (15) · [WS knit · RS knit] ×4 · Shrug/right side 1 RS knit · [WS knit · RS knit] ×3 · WS knit
  > = Shrug, other, 1 to make, lines 2 3
  > =   body from {castOn 50}, RS: 6 garter 4 mm; split
  > =   left side from {part body, stitches 35, edge left}, RS: 9 garter 4 mm; hold
  > =   right side from {part body, stitches 15, edge right}, RS: 8 garter 4 mm; hold

### a rib that is spelled, and no stitches of a row
Cuff
  > heading
Cast on 24 sts. Work 4 rows of k1, p1, and bind off.
  > 24→0 Cuff/body 1 RS *k1, p1; repeat from * to end · WS *k1, p1; repeat from * to end · RS *k1, p1; repeat from * to end · WS *k1, p1; repeat from * to end · RS bind off all sts in pattern (0)
  > = Cuff, other, 1 to make, lines 2
  > =   body from {castOn 24}, RS: 4 rib in rib 1x1 4 mm; bind off

### a change to a rib that is spelled
Cuff
  > heading
Cast on 24 sts. Knit 2 rows. Change to k2, p2 (for the cuff).
  > 24 Cuff/body 1 RS knit · WS knit
Work 6 rows.
  > 24 Cuff/body 3 RS *k2, p2; repeat from * to end · [WS *k2, p2; repeat from * to end · RS *k2, p2; repeat from * to end] ×2 · WS *k2, p2; repeat from * to end
Next row: work 4 rows of k2, p2, k2tog.
  > own words 24 asks the count Cuff/body 9 RS work in pattern 'Next row: work 4 rows of k2, p2, k2tog'
  > ✗ stitch or repeat expected @4:11 column 11
  > = Cuff, other, 1 to make, lines 2 3 4
  > =   body from {castOn 24}, RS: 2 stocking 4 mm; 7 rib in rib 2x2 4 mm (own words 7); hold

### keeping an edge even, short rows that are announced, rows that succeed
Left front
  > heading
Cast on 30 sts. Knit 4 rows.
  > 30 Left front/body 1 RS knit · WS knit · RS knit · WS knit
Keeping front edge even, dec 1 st at side edge every 4th row twice.
  > 30→28 Left front/body 5 RS knit · WS knit · RS dec, knit to end (29) · WS knit · RS knit · WS knit · RS dec, knit to end (28)
Begin short rows: 1st row: K10, turn.
  > 28 Left front/body 12 WS k10, turn
2nd row: Knit.
  > 28 Left front/body 13 RS leave 18 sts unworked, knit to end
Dec 1 st at beg of succeeding rows until 24 sts remain.
  > 28→24 Left front/body 14 WS dec, knit to end (27) · RS dec, knit to end (26) · WS dec, knit to end (25) · RS dec, knit to end (24)
  > = Left front, left front, 1 to make, lines 2 3 4 5 6
  > =   body from {castOn 30}, RS: 4 garter 4 mm; 13 garter 4 mm; hold

### inside of a border
Left front
  > heading
Cast on 30 sts.
  > →30
Keeping 5 sts at front edge in garter st, work 4 rows in stocking st.
  > 30 Left front/body 1 RS knit · WS k5, purl to end · RS knit · WS k5, purl to end
Dec 1 st inside of border every other row 3 times.
  > 30→27 Left front/body 5 RS knit to last 7 sts, dec, k5 (29) · WS k5, purl to end · RS knit to last 7 sts, dec, k5 (28) · WS k5, purl to end · RS knit to last 7 sts, dec, k5 (27)
  > = Left front, left front, 1 to make, lines 3 4
  > =   body from {castOn 30}, RS: 9 stocking 4 mm; hold

### inside of one of two
Collar
  > heading
Cast on 30 sts.
  > →30
Keeping 5 sts at each end in garter st, work 4 rows in stocking st.
  > 30 Collar/body 1 RS knit · WS k5, purl to last 5 sts, k5 · RS knit · WS k5, purl to last 5 sts, k5
Inc 1 st inside of border every other row 3 times.
  > 30→33 Collar/body 5 RS knit to last 6 sts, inc, k5 (31) · WS k5, purl to last 5 sts, k5 · RS knit to last 6 sts, inc, k5 (32) · WS k5, purl to last 5 sts, k5 · RS knit to last 6 sts, inc, k5 (33)
  > ✗ place not known @4:1
  > = Collar, neckband, 1 to make, lines 3 4
  > =   body from {castOn 30}, RS: 9 stocking 4 mm; hold
    `),
  )('$title', expectAnnotated);
});
