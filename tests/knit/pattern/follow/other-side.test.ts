import { describe, it } from 'vitest';
import { annotatedIn, expectAnnotated } from './annotated.ts';

/** How patterns are usually worded: common practice, no published source. What a line comes out as stands below it. */
describe('other side, followed row by row,', () => {
  it.each(
    annotatedIn(`
### the mirror image, row for row
BACK
  > heading
Cast on 30 sts.
  > →30
Work 2 rows in st st.
  > 30 Back/body 1 RS knit · WS purl
Next row: k12, turn and leave rem 18 sts on a holder.
  > 30→12 Back/right side 1 RS k12
Dec 1 st at neck edge of next 2 rows.
  > 12→10 Back/right side 2 WS dec, purl to end (11) · RS knit to last 2 sts, dec (10)
Row 1: p1, k2tog, p to end.
  > 10→9 Back/right side 4 WS p1, k2tog, purl to end (9)
Row 2: k2, ssk, k to end.
  > 9→8 Back/right side 5 RS k2, ssk, knit to end (8)
Bind off 4 sts at beg of next row.
  > 8→4 Back/right side 6 WS bind off 4 sts, purl to end (4)
Work 1 row.
  > 4 Back/right side 7 RS knit
Bind off.
  > 4→0 Back/right side 8 WS bind off all sts in pattern (0)
Complete other side to match, reversing shaping.
  > →0 Back/left side 1 RS knit · WS purl to last 2 sts, dec (17) · RS dec, knit to end (16) · WS p1, k2tog, purl to end (15) · RS k2, ssk, knit to end (14) · WS purl · RS bind off 4 sts, knit to end (10) · WS bind off all sts in pattern (0)
  > = Back, back, 1 to make, lines 3 4 5 6 7 8 9 10 11
  > =   body from {castOn 30}, RS: 2 stocking 4 mm; split
  > =   right side from {part body, stitches 12, edge right}, RS: 7 stocking 4 mm; bind off
  > =   left side from {part body, stitches 18, edge left}, RS: 7 stocking 4 mm; bind off

### after the centre is bound off
BACK
  > heading
Cast on 30 sts.
  > →30
Work 2 rows in k1, p1 rib.
  > 30 Back/body 1 RS *k1, p1; repeat from * to end · WS *k1, p1; repeat from * to end
Next row: k12, turn and leave rem 18 sts on a holder.
  > 30→12 Back/right side 1 RS k12
Dec 1 st at neck edge of next 2 rows.
  > 12→10 Back/right side 2 WS dec, *k1, p1; repeat from * to end (11) · RS *k1, p1; repeat from * to last 3 sts, k1, dec (10)
Bind off 4 sts at beg of next row.
  > 10→6 Back/right side 4 WS bind off 4 sts, *k1, p1; repeat from * to end (6)
Work 1 row.
  > 6 Back/right side 5 RS *k1, p1; repeat from * to end
Bind off.
  > 6→0 Back/right side 6 WS bind off all sts in pattern (0)
Rejoin yarn to rem 18 sts, bo 6, k to end.
  > 18→12 Back/left side 1 RS bind off 6 sts, knit to end (12)
Complete to match first side.
  > 12→0 Back/left side 2 WS *k1, p1; repeat from * to last 2 sts, dec (11) · RS dec, *p1, k1; repeat from * to last st, p1 (10) · WS *k1, p1; repeat from * to end · RS bind off 4 sts, *k1, p1; repeat from * to end (6) · WS bind off all sts in pattern (0)
  > = Back, back, 1 to make, lines 3 4 5 6 7 8 9 10
  > =   body from {castOn 30}, RS: 2 rib in rib 1x1 4 mm; split
  > =   right side from {part body, stitches 12, edge right}, RS: 5 rib in rib 1x1 4 mm; bind off
  > =   left side from {part body, stitches 18, edge left}, RS: 5 rib in rib 1x1 4 mm; bind off

### in garter stitch
BACK
  > heading
Cast on 30 sts.
  > →30
Knit 4 rows.
  > 30 Back/body 1 RS knit · WS knit · RS knit · WS knit
Next row: k12, turn and leave rem 18 sts on a holder.
  > 30→12 Back/right side 1 RS k12
Next row: k2tog, k to end.
  > 12→11 Back/right side 2 WS k2tog, knit to end (11)
K 1 row.
  > 11 Back/right side 3 RS knit
Bind off.
  > 11→0 Back/right side 4 WS bind off all sts in pattern (0)
Complete other side to match.
  > →0 Back/left side 1 RS knit · WS knit to last 2 sts, ssk (17) · RS knit · WS bind off all sts in pattern (0)
  > = Back, back, 1 to make, lines 3 4 5 6 7 8
  > =   body from {castOn 30}, RS: 4 garter 4 mm; split
  > =   right side from {part body, stitches 12, edge right}, RS: 3 garter 4 mm; bind off
  > =   left side from {part body, stitches 18, edge left}, RS: 3 garter 4 mm; bind off

### with rows in her own words, and spread
BACK
  > heading
Cast on 30 sts.
  > →30
Next row: k12, turn and leave rem 18 sts on a holder.
  > 30→12 Back/right side 1 RS k12
Next row: wibble the 3 k sts (10 sts).
  > own words 12→10 says 10 Back/right side 2 WS [dec] 2 times, work in pattern to end 'Next row: wibble the 3 k sts (10 sts)' (10)
  > ✗ stitch or repeat expected @4:11 column 11
Inc 3 sts evenly across next row.
  > 10→13 Back/right side 3 RS k2, m1, [k3, m1] 2 times, k2 (13)
K 2 rows.
  > 13 Back/right side 4 WS knit · RS knit
Place sts on holder.
  > 13
Complete other side to match.
  > →19 Back/left side 1 RS knit · WS [dec] 2 times, work in pattern to end 'Next row: wibble the 3 k sts (10 sts)' (16) · RS k3, m1, [k5, m1] 2 times, k3 (19) · WS knit · RS knit
  > = Back, back, 1 to make, lines 3 4 5 6 8
  > =   body from {castOn 30}, RS: split
  > =   right side from {part body, stitches 12, edge right}, RS: 2 stocking 4 mm (own words 2); 3 pattern in stocking 4 mm; hold
  > =   left side from {part body, stitches 18, edge left}, RS: 2 stocking 4 mm (own words 2); 3 pattern in stocking 4 mm; hold

### while the first is on the needle
BACK
  > heading
Cast on 30 sts.
  > →30
Next row: k15, turn and leave rem 15 sts on a holder.
  > 30→15 Back/right side 1 RS k15
Dec 1 st at neck edge of next 2 rows.
  > 15→13 Back/right side 2 WS dec, purl to end (14) · RS knit to last 2 sts, dec (13)
Complete other side to match.
  > 13 Back/left side 1 WS purl · RS dec, knit to end (14) · WS purl to last 2 sts, dec (13)
  > = Back, back, 1 to make, lines 3 4 5
  > =   body from {castOn 30}, RS: split
  > =   right side from {part body, stitches 15, edge right}, RS: 3 stocking 4 mm; hold
  > =   left side from {part body, stitches 15, edge left}, WS: 3 stocking 4 mm; hold

### of nothing
BACK
  > heading
Cast on 30 sts.
  > →30
K 1 row.
  > 30 Back/body 1 RS knit
Complete other side to match.
  > 30
  > ✗ nothing rests @4:1
  > = Back, back, 1 to make, lines 3
  > =   body from {castOn 30}, RS: 1 stocking 4 mm; hold

### of a gap that was not worked
BACK
  > heading
Cast on 30 sts.
  > →30
Next row: k10, bo 10, k to end.
  > 30→20 Back/body 1 RS k10, bind off 10 sts, knit to end (20)
Complete other side to match.
  > 20→10
  > ✗ nothing to match @4:1
  > = Back, back, 1 to make, lines 3
  > =   body from {castOn 30}, RS: 1 stocking 4 mm; split
  > =   left side from {part body, stitches 10, edge left}, WS: hold
  > =   resting 1 from {part body, stitches 10, edge right}, WS: hold
`),
  )('comes out as $title', expectAnnotated);
});
