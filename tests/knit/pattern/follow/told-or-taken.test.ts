import { describe, it } from 'vitest';
import { annotatedIn, expectAnnotated } from './annotated.ts';

/** How patterns are usually worded: common practice, no published source. Rows and counts are worked out by hand. */
describe('what was taken for something else without a word', () => {
  it.each(
    annotatedIn(`
### numbered short rows below a neck leave nothing behind
COLLAR
  > heading
Cast on 24 sts.
  > →24
K 4 rows.
  > 24 Collar/body 1 RS knit · WS knit · RS knit · WS knit
Shape neck
  > heading 24
1st row: K 9, turn.
  > 24 Collar/body 5 RS k9, turn
2nd row: K to end.
  > 24 Collar/body 6 WS leave 15 sts unworked, knit to end
3rd row: K across all sts.
  > 24 Collar/body 7 RS knit
4th row: K 9, turn.
  > 24 Collar/body 8 WS k9, turn
5th row: K to end.
  > 24 Collar/body 9 RS leave 15 sts unworked, knit to end
6th row: K across all sts.
  > 24 Collar/body 10 WS knit
Bind off.
  > 24→0 Collar/body 11 RS bind off all sts in pattern (0)
  > = Collar, neckband, 1 to make, lines 3 5 6 7 8 9 10 11
  > =   body from {castOn 24}, RS: 4 garter 4 mm; 6 'shape neck' in garter 4 mm; bind off

### a neck that is divided by numbered rows is divided
BACK
  > heading
Cast on 24 sts.
  > →24
K 4 rows.
  > 24 Back/body 1 RS knit · WS knit · RS knit · WS knit
Shape neck
  > heading 24
1st row: K 9, turn.
  > 24→9 Back/right side 1 RS k9
  > ✗ stitches wait @5:1 stitches 15
2nd row: K2tog, k to end.
  > 9→8 Back/right side 2 WS k2tog, knit to end (8)
3rd row: K to end.
  > 8 Back/right side 3 RS knit
Bind off.
  > 8→0 Back/right side 4 WS bind off all sts in pattern (0)
  > = Back, back, 1 to make, lines 3 5 6 7 8
  > =   body from {castOn 24}, RS: 4 garter 4 mm; split
  > =   right side from {part body, stitches 9, edge right}, RS: 3 'shape neck' in garter 4 mm; bind off
  > =   resting 1 from {part body, stitches 15, edge left}, RS: hold

### linings and an underside are pieces of their own, as many as are said
BACK
  > heading
Cast on 30 sts. Knit 4 rows.
  > 30 Back/body 1 RS knit · WS knit · RS knit · WS knit
POCKET LININGS - Make 2: With MC cast on 12 sts. Knit 6 rows. Bind off.
  > 30→0 Pocket linings/body 1 RS knit · [WS knit · RS knit] ×2 · WS knit · RS bind off all sts in pattern (0)
Underside – With larger needle, cast on 16 sts. Knit 2 rows. Bind off.
  > 16→0 Underside/body 1 RS knit · WS knit · RS bind off all sts in pattern (0)
  > = Back, back, 1 to make, lines 2
  > =   body from {castOn 30}, RS: 4 garter 4 mm; hold
  > = Pocket linings, other, 2 to make, lines 3
  > =   body from {castOn 12}, RS: 6 garter 4 mm; bind off
  > = Underside, other, 1 to make, lines 4
  > =   body from {castOn 16}, RS: 2 stocking 4 mm; bind off

### a name that no list has, before a dash and what is cast on
LEG
  > heading
Cast on 20 sts. Knit 2 rows. Bind off.
  > 20→0 Leg/body 1 RS knit · WS knit · RS bind off all sts in pattern (0)
Shape toe
  > heading →0
Cast on 4 sts. Knit 2 rows. Bind off.
  > 4→0 Shape toe/body 1 RS knit · WS knit · RS bind off all sts in pattern (0)
Sole – With larger needle, cast on 16 sts. Knit 2 rows. Bind off.
  > 16→0 Sole/body 1 RS knit · WS knit · RS bind off all sts in pattern (0)
Using B – Cast on 6 sts. Knit 2 rows. Bind off.
  > 6→0 Sole/body 2 1 RS knit · WS knit · RS bind off all sts in pattern (0)
  > = Leg, other, 1 to make, lines 2
  > =   body from {castOn 20}, RS: 2 stocking 4 mm; bind off
  > = Shape toe, other, 1 to make, lines 4
  > =   body from {castOn 4}, RS: 2 stocking 4 mm; bind off
  > = Sole, other, 1 to make, lines 5 6
  > =   body from {castOn 16}, RS: 2 stocking 4 mm; bind off
  > =   body 2 from {castOn 6}, RS: 2 stocking 4 mm; bind off

### a hem picked up while stitches are on the needle is told
SKIRT
  > heading
Cast on 30 sts. Knit 8 rows.
  > 30 Skirt/body 1 RS knit · [WS knit · RS knit] ×3 · WS knit
HEM: With spare needle, pick up 30 sts from cast-on edge.
  > 30
  > ✗ place not known @3:25
Next row: Knit.
  > 30 Skirt/body 9 RS knit
  > = Skirt, other, 1 to make, lines 2 4
  > =   body from {castOn 30}, RS: 8 garter 4 mm; 1 hem in garter 4 mm; hold

### a band picked up along an edge when the rest is bound off
SKIRT
  > heading
Cast on 30 sts. Knit 8 rows. Bind off.
  > 30→0 Skirt/body 1 RS knit · [WS knit · RS knit] ×3 · WS knit · RS bind off all sts in pattern (0)
HEM: With RS facing, pick up and k 30 sts along cast-on edge.
  > →30
Next row: Knit.
  > 30 Hem/body 1 WS knit
  > = Skirt, other, 1 to make, lines 2
  > =   body from {castOn 30}, RS: 8 garter 4 mm; bind off
  > = Hem, other, 1 to make, lines 4
  > =   body from {pickUp [{stitches 30, along 'cast - on edge'}]}, WS: 1 hem in stocking 4 mm; hold

### slots to be made on the needle are told, a tassel makes no rows
BELT
  > heading
Cast on 14 sts. Knit 4 rows.
  > 14 Belt/body 1 RS knit · WS knit · RS knit · WS knit
To make slots: K7, turn, P7, repeat these 2 rows 3 times.
  > own words 14 asks the count Belt/body 5 RS work in pattern 'K7, turn, P7, repeat these 2 rows 3 times'
  > ✗ stitch or repeat expected @3:37 column 37
Knit 2 rows. Bind off.
  > 14→0 Belt/body 6 WS knit · RS knit · WS bind off all sts in pattern (0)
To make tassel: Wind yarn 30 times around 8 cm card, tie and cut.
  > heading →0
To make up: Press.
  > talk →0
  > = Belt, other, 1 to make, lines 2 3 4
  > =   body from {castOn 14}, RS: 4 garter 4 mm; 1 'to make slots' in garter 4 mm (own words 1); 2 'to make slots' in garter 4 mm; bind off

### in the same way as the back, as far as is said
BACK
  > heading
Cast on 30 sts. Work in st st for 14 rows. Bind off.
  > 30→0 Back/body 1 RS knit · [WS purl · RS knit] ×6 · WS purl · RS bind off all sts in pattern (0)
FRONTS
  > heading
Work fronts in the same way as the back. After 6 rows, bind off 4 sts at beg of next row. Work 3 rows. Bind off.
  > 15→0 Fronts/body 1 RS knit · [WS purl · RS knit] ×2 · WS purl · RS bind off 4 sts, knit to end (11) · WS purl · RS knit · WS purl · RS bind off all sts in pattern (0)
  > = Back, back, 1 to make, lines 2
  > =   body from {castOn 30}, RS: 14 stocking 4 mm; bind off
  > = Fronts, front, 2 to make, lines 4
  > =   body from {castOn 15}, RS: 10 stocking 4 mm; bind off

### in the same way as the back, and nobody knows how far
BACK
  > heading
Cast on 30 sts. Work in st st for 14 rows. Bind off.
  > 30→0 Back/body 1 RS knit · [WS purl · RS knit] ×6 · WS purl · RS bind off all sts in pattern (0)
FRONT
  > heading
Work in the same way as the back. Bind off 4 sts at beg of next row. Bind off.
  > 30→0 Front/body 1 RS knit · [WS purl · RS knit] ×6 · WS purl · RS bind off 4 sts, knit to end (26) · WS bind off all sts in pattern (0)
  > ✗ place not known @4:1
  > = Back, back, 1 to make, lines 2
  > =   body from {castOn 30}, RS: 14 stocking 4 mm; bind off
  > = Front, front, 1 to make, lines 4
  > =   body from {castOn 30}, RS: 15 stocking 4 mm; bind off
`),
  )('$title', expectAnnotated);
});
