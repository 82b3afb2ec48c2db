import { describe, it } from 'vitest';
import { annotatedIn, expectAnnotated } from './annotated.ts';

/** Wordings of our own after those that leaflets use: common practice, no published source. Rows and counts are reckoned by hand. */
describe('what is held in a row, how many are made, and the pattern of the piece before,', () => {
  it.each(
    annotatedIn(`
### a row that is held and goes on behind a stop
BACK
  > heading
Cast on 32 sts.
  > →32
Knit 2 rows.
  > 32 Back/body 1 RS knit · WS knit
K 12 sts and place on holder. Knit to end.
  > 32 Back/body 3 RS k12, knit to end
Knit 2 rows. Bind off.
  > 32→0 Back/left side 1 WS knit · RS knit · WS bind off all sts in pattern (0)
FRONT
  > heading →0
Cast on 32 sts.
  > →32
Knit 2 rows.
  > 32 Front/body 1 RS knit · WS knit
K 12 sts and place on a holder. Attach yarn and bind off center 8 sts, k 12.
  > 32→24 Front/body 3 RS k12, bind off 8 sts, k12 (24)
Knit 2 rows. Bind off.
  > 24→0 Front/left side 1 WS knit · RS knit · WS bind off all sts in pattern (0)
UPPER BACK
  > heading →0
Cast on 32 sts.
  > →32
Knit 2 rows.
  > 32 Upper back/body 1 RS knit · WS knit
K 12 sts and place on holder. Join second ball and k 20.
  > 32 Upper back/body 3 RS k12, k20
Knit 2 rows. Bind off.
  > 32→0 Upper back/left side 1 WS knit · RS knit · WS bind off all sts in pattern (0)
  > ✗ stitches wait @15:1 stitches 12
  > = Back, back, 1 to make, lines 3 4 5
  > =   body from {castOn 32}, RS: 3 stocking 4 mm; split
  > =   left side from {part body, stitches 20, edge left}, WS: 2 stocking 4 mm; bind off
  > =   resting 1 from {part body, stitches 12, edge right}, WS: hold
  > = Front, front, 1 to make, lines 8 9 10
  > =   body from {castOn 32}, RS: 3 stocking 4 mm; split
  > =   left side from {part body, stitches 12, edge left}, WS: 2 stocking 4 mm; bind off
  > =   resting 1 from {part body, stitches 12, edge right}, WS: hold
  > = Upper back, back, 1 to make, lines 13 14 15
  > =   body from {castOn 32}, RS: 3 stocking 4 mm; split
  > =   left side from {part body, stitches 20, edge left}, WS: 2 stocking 4 mm; bind off
  > =   resting 1 from {part body, stitches 12, edge right}, WS: hold

### rows of their own behind such a stop
BACK
  > heading
Cast on 32 sts.
  > →32
Knit 2 rows.
  > 32 Back/body 1 RS knit · WS knit
K 12 sts and place on holder. K 4 rows. Bind off.
  > 32→0 Back/body 3 RS knit · Back/left side 1 WS knit · RS knit · WS knit · RS knit · WS bind off all sts in pattern (0)
FRONT
  > heading →0
Cast on 32 sts.
  > →32
Knit 2 rows.
  > 32 Front/body 1 RS knit · WS knit
K 12 sts and place on holder. Work rem 20 sts in garter st for 2 rows. Bind off.
  > 32→0 Front/body 3 RS knit · Front/left side 1 WS knit · RS knit · WS bind off all sts in pattern (0)
  > ✗ stitches wait @8:31 stitches 12
  > = Back, back, 1 to make, lines 3 4
  > =   body from {castOn 32}, RS: 3 stocking 4 mm; split
  > =   left side from {part body, stitches 20, edge left}, WS: 4 garter 4 mm; bind off
  > =   resting 1 from {part body, stitches 12, edge right}, WS: hold
  > = Front, front, 1 to make, lines 7 8
  > =   body from {castOn 32}, RS: 3 stocking 4 mm; split
  > =   left side from {part body, stitches 20, edge left}, WS: 2 garter 4 mm; bind off
  > =   resting 1 from {part body, stitches 12, edge right}, WS: hold

### how many are made, in brackets behind a name and in words below it
SLEEVES (both alike). These are begun at the cuff. Cast on 10 sts.
  > →10
Knit 2 rows. Bind off.
  > 10→0 Sleeves/body 1 RS knit · WS knit · RS bind off all sts in pattern (0)
POCKET
  > heading
Make 3 pieces.
  > talk
Cast on 8 sts.
  > →8
Knit 2 rows. Bind off.
  > 8→0 Pocket/body 1 RS knit · WS knit · RS bind off all sts in pattern (0)
FRONTS (right one first). Cast on 12 sts.
  > →12
Knit 2 rows. Bind off.
  > 12→0 Fronts/body 1 RS knit · WS knit · RS bind off all sts in pattern (0)
CUFF. Cast on 14 sts. Knit 2 rows. Bind off. Knit two alike.
  > 14→0 Cuff/body 1 RS knit · WS knit · RS bind off all sts in pattern (0)
  > = Sleeves, sleeve, 2 to make, lines 2
  > =   body from {castOn 10}, RS: 2 stocking 4 mm; bind off
  > = Pocket, other, 3 to make, lines 6
  > =   body from {castOn 8}, RS: 2 stocking 4 mm; bind off
  > = Fronts, front, 2 to make, lines 8
  > =   body from {castOn 12}, RS: 2 stocking 4 mm; bind off
  > = Cuff, other, 2 to make, lines 9
  > =   body from {castOn 14}, RS: 2 stocking 4 mm; bind off

### numbers that make no pieces
BACK
  > heading
Cast on 2 sts.
  > →2
Make 2.
  > talk 2
Knit 2. Bind off.
  > 2→0 Back/body 1 RS k2 · WS bind off all sts in pattern (0)
  > = Back, back, 1 to make, lines 4
  > =   body from {castOn 2}, RS: 1 stocking 4 mm; bind off

### the pattern of the piece before, where it has but one
BACK
  > heading
Cast on 12 sts.
  > →12
Row 1: K1, p1 across.
  > 12 Back/body 1 RS *k1, p1; repeat from * to end
Row 2: P1, k1 across.
  > 12 Back/body 2 WS *p1, k1; repeat from * to end
Repeat rows 1 and 2 for pattern.
  > 12
Work 2 rows. Bind off.
  > 12→0 Back/body 3 RS *k1, p1; repeat from * to end · WS *p1, k1; repeat from * to end · RS bind off all sts in pattern (0)
SLEEVE
  > heading
Cast on 8 sts.
  > →8
Work in pattern for 3 rows. Bind off.
  > 8→0 Sleeve/body 1 RS *k1, p1; repeat from * to end · WS *p1, k1; repeat from * to end · RS *k1, p1; repeat from * to end · WS bind off all sts in pattern (0)
COLLAR
  > heading
Cast on 9 sts.
  > →9
K 2 rows.
  > 9 Collar/body 1 RS knit · WS knit
Change to pattern and work 2 rows. Bind off.
  > 9→0 Collar/body 3 RS *k1, p1; repeat from * to last st, k1 · WS *k1, p1; repeat from * to last st, k1 · RS bind off all sts in pattern (0)
  > = Back, back, 1 to make, lines 3 4 6
  > =   body from {castOn 12}, RS: 2 moss 4 mm; 2 pattern in stocking 4 mm; bind off
  > = Sleeve, sleeve, 1 to make, lines 9
  > =   body from {castOn 8}, RS: 3 pattern in stocking 4 mm; bind off
  > = Collar, neckband, 1 to make, lines 12 13
  > =   body from {castOn 9}, RS: 2 stocking 4 mm; 2 pattern in stocking 4 mm; bind off

### the pattern of the piece before, where it has two
BACK
  > heading
Cast on 12 sts.
  > →12
Row 1: K2, p2 across.
  > 12 Back/body 1 RS *k2, p2; repeat from * to end
Row 2: P2, k2 across.
  > 12 Back/body 2 WS *p2, k2; repeat from * to end
Rep rows 1 and 2 once.
  > 12 Back/body 3 RS *k2, p2; repeat from * to end · WS *p2, k2; repeat from * to end
Row 1: K1, p1 across.
  > 12 Back/body 5 RS *k1, p1; repeat from * to end
Row 2: Purl.
  > 12 Back/body 6 WS purl
Rep rows 1 and 2 once. Bind off.
  > 12→0 Back/body 7 RS *k1, p1; repeat from * to end · WS purl · RS bind off all sts in pattern (0)
SLEEVE
  > heading
Cast on 8 sts.
  > →8
Work in pattern for 2 rows. Bind off.
  > 8→0 Sleeve/body 1 RS work in pattern · WS work in pattern · RS bind off all sts in pattern (0)
  > ✗ fabric not known @11:1 name pattern
  > = Back, back, 1 to make, lines 3 4 5 6 7 8
  > =   body from {castOn 12}, RS: 4 moss 4 mm; 1 rib in rib 1x1 4 mm; 1 pattern in stocking 4 mm; 1 rib in rib 1x1 4 mm; 1 pattern in stocking 4 mm; bind off
  > = Sleeve, sleeve, 1 to make, lines 11
  > =   body from {castOn 8}, RS: 2 pattern in stocking 4 mm; bind off
    `),
  )('$title', expectAnnotated);
});
