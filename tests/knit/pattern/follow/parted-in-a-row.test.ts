import { describe, it } from 'vitest';
import { annotatedIn, expectAnnotated } from './annotated.ts';

/** Wordings of our own after those that leaflets and pages use. */
describe('stitches that are parted in a row, and sides that go on, followed row by row,', () => {
  it.each(
    annotatedIn(`
### markers beside a bind-off
BACK
  > heading
Cast on 20 sts.
  > →20
Bind off, placing markers at 3rd and 8th st, to mark the shoulders and the back of the neck.
  > 20→0 Back/body 1 RS bind off all sts in pattern (0)
  > = Back, back, 1 to make, lines 3
  > =   body from {castOn 20}, RS: bind off

### rows that are parted
BODY
  > heading
Cast on 60 sts.
  > →60
Next row: k12 and place these sts on a holder, bind off 6 sts, knit until you have 24 sts on right needle then place these sts on a holder, bind off 6 sts, knit to end. 48 sts.
  > 60→48 says 48 Body/body 1 RS k12, bind off 6 sts, k24, bind off 6 sts, knit to end (48)
Work 3 rows.
  > 48→12 Body/left side 1 WS purl · RS knit · WS purl
Bind off 12 sts.
  > 12→0 Body/left side 4 RS bind off all sts in pattern (0)
FRONT
  > heading →0
Cast on 60 sts.
  > →60
Next row: k20, join new ball of yarn and k center 20 sts and place on a holder for neck, k rem sts.
  > 60 Front/body 1 RS k20, k20, knit to end
Work 3 rows.
  > 60→20 Front/left side 1 WS purl · RS knit · WS purl
Bind off 20 sts.
  > 20→0 Front/left side 4 RS bind off all sts in pattern (0)
BACK
  > heading →0
Cast on 60 sts.
  > →60
Next row: k10, k30 and place these 30 sts on a holder, k20.
  > 60 Back/body 1 RS k10, k30, k20
Work 1 row.
  > 60→20 Back/left side 1 WS purl
Bind off 20 sts.
  > 20→0 Back/left side 2 RS bind off all sts in pattern (0)
SLEEVE
  > heading →0
Cast on 10 sts.
  > →10
Next row: k2, p2, k2, place these sts on a holder, k4.
  > 10 Sleeve/body 1 RS k2, p2, k2, k4
Bind off 4 sts.
  > 10→0 Sleeve/left side 1 WS bind off all sts in pattern (0)
  > ✗ stitches wait @19:1 stitches 6
  > = Body, other, 1 to make, lines 3 4 5
  > =   body from {castOn 60}, RS: 1 stocking 4 mm; split
  > =   left side from {part body, stitches 12, edge left}, WS: 3 stocking 4 mm; bind off
  > =   resting 1 from {part body, stitches 12, edge right}, WS: hold
  > =   resting 2 from {part body, stitches 24, edge middle}, WS: hold
  > = Front, front, 1 to make, lines 8 9 10
  > =   body from {castOn 60}, RS: 1 stocking 4 mm; split
  > =   left side from {part body, stitches 20, edge left}, WS: 3 stocking 4 mm; bind off
  > =   resting 1 from {part body, stitches 20, edge right}, WS: hold
  > =   resting 2 from {part body, stitches 20, edge middle}, WS: hold
  > = Back, back, 1 to make, lines 13 14 15
  > =   body from {castOn 60}, RS: 1 stocking 4 mm; split
  > =   left side from {part body, stitches 20, edge left}, WS: 1 stocking 4 mm; bind off
  > =   resting 1 from {part body, stitches 10, edge right}, WS: hold
  > =   resting 2 from {part body, stitches 30, edge middle}, WS: hold
  > = Sleeve, sleeve, 1 to make, lines 18 19
  > =   body from {castOn 10}, RS: 1 stocking 4 mm; split
  > =   left side from {part body, stitches 4, edge left}, WS: bind off
  > =   resting 1 from {part body, stitches 6, edge right}, WS: hold

### rows once more up to a count and a side
BACK
  > heading
Cast on 60 sts.
  > →60
Row 1: k1, k2tog, k to last 3 sts, k2tog, k1.
  > 60→58 Back/body 1 RS k1, k2tog, knit to last 3 sts, k2tog, k1 (58)
Row 2: purl.
  > 58 Back/body 2 WS purl
Repeat these 2 rows until 56 sts remain, ending with a purl row.
  > 58→56 Back/body 3 RS k1, k2tog, knit to last 3 sts, k2tog, k1 (56) · WS purl
Repeat these 2 rows until 52 sts remain, ending with a RS row.
  > 56→52 Back/body 5 RS k1, k2tog, knit to last 3 sts, k2tog, k1 (54) · WS purl · RS k1, k2tog, knit to last 3 sts, k2tog, k1 (52)
Bind off 52 sts.
  > 52→0 Back/body 8 WS bind off all sts in pattern (0)
  > = Back, back, 1 to make, lines 3 4 5 6 7
  > =   body from {castOn 60}, RS: 7 stocking 4 mm; bind off

### another side
BACK
  > heading
Cast on 40 sts.
  > →40
Next row: k20, turn. Place last sts on a holder.
  > 40→20 Back/right side 1 RS k20
Work 3 rows.
  > 20 Back/right side 2 WS purl · RS knit · WS purl
Bind off 20 sts.
  > 20→0 Back/right side 5 RS bind off all sts in pattern (0)
Place held 20 sts of right shoulder on needle and reattach white with WS facing.
  > →20
Work in as for left shoulder.
  > 20→0 Back/left side 1 RS knit · WS purl · RS knit · WS purl · RS bind off all sts in pattern (0)
DIVIDE FOR V NECK Row 1 (RS) K2tog, k to end.
  > →0
  > ✗ nothing on the needle @8:19
FRONT
  > heading
Cast on 40 sts.
  > →40
DIVIDE FOR V NECK Row 1 (RS) K2tog, k18, turn.
  > 40→19 Front/right side 1 RS k2tog, k18 (19)
Cont on this group of sts for left side of neck only.
  > 19
Bind off 19 sts.
  > 19→0 Front/right side 2 WS bind off all sts in pattern (0)
  > = Back, back, 1 to make, lines 3 4 5 7
  > =   body from {castOn 40}, RS: split
  > =   right side from {part body, stitches 20, edge right}, RS: 4 stocking 4 mm; bind off
  > =   left side from {part body, stitches 20, edge left}, RS: 4 stocking 4 mm; bind off
  > = Front, front, 1 to make, lines 11 13
  > =   body from {castOn 40}, RS: split
  > =   right side from {part body, stitches 20, edge right}, RS: 1 'divide for v neck' in stocking 4 mm; bind off
  > =   resting 1 from {part body, stitches 20, edge left}, RS: hold

### for whom a row ends, how often, and where
BODY
  > heading
Cast on 60 sts.
  > →60
Next row: k12 and place these sts on a holder for right front, bind off 6 sts, knit until you have 24 sts on right needle then place these sts on a holder for back, bind off 6 sts, knit to end of row for left front - 12 sts remain on needle for left front.
  > 60→48 says 12 Body/body 1 RS k12, bind off 6 sts, k24, bind off 6 sts, knit to end (48)
Work 1 row.
  > 48→12 Body/left side 1 WS purl
  > ✗ stitches wait @4:1 stitches 12
  > ✗ stitches wait @4:1 stitches 24
Bind off 12 sts.
  > 12→0 Body/left side 2 RS bind off all sts in pattern (0)
POCKETS
  > heading →0
Pick up 15 sts at centre of each Front, 18 rows above K3, P3 rib lower border.
  > →15
Work 2 rows in garter st.
  > 15 Pockets/body 1 WS knit · RS knit
Bind off, placing markers at 3rd, and 6th st, to mark the fold.
  > 15→0 Pockets/body 3 WS bind off all sts in pattern (0)
  > = Body, other, 1 to make, lines 3 4 5
  > =   body from {castOn 60}, RS: 1 stocking 4 mm; split
  > =   left side from {part body, stitches 12, edge left}, WS: 1 stocking 4 mm; bind off
  > =   resting 1 from {part body, stitches 12, edge right}, WS: hold
  > =   resting 2 from {part body, stitches 24, edge middle}, WS: hold
  > = Pockets, other, 2 to make, lines 8 9
  > =   body from {pickUp [{stitches 15, along 'centre of each front'}]}, WS: 2 garter 4 mm; bind off

### how often, in a list of two sizes
Sizes: 36 (42)
  > talk
FRONT
  > heading
Cast on 47 (45) sts.
  > →47
Work 4 rows in st st.
  > 47 Front/body 1 RS knit · WS purl · RS knit · WS purl
Bind off at armhole edge 13 (8) sts twice (3 times).
  > 47→21 Front/body 5 RS bind off 13 sts, knit to end (34) · WS purl · RS bind off 13 sts, knit to end (21)
Bind off.
  > 21→0 Front/body 8 WS bind off all sts in pattern (0)
BACK
  > heading
Cast on 47 (45) sts.
  > →47
Bind off 2 sts at beg of next row, dec 1 st at each end twice (on RS rows).
  > own words 47→45 asks the count Back/body 1 RS bind off 2 sts, knit to end (45) · WS work in pattern 'dec 1 st at each end twice (on RS rows)'
  > ✗ stitch or repeat expected @9:64 column 64
  > = sizes 36, 42: 36
  > = Front, front, 1 to make, lines 4 5 6
  > =   body from {castOn 47}, RS: 7 stocking 4 mm; bind off
  > = Back, back, 1 to make, lines 9
  > =   body from {castOn 47}, RS: 2 stocking 4 mm (own words 2); hold

### what a shaping is for
FRONT
  > heading
Cast on 20 sts.
  > →20
Work 2 rows in garter st.
  > 20 Front/body 1 RS knit · WS knit
For V neck dec 1 st at neck edge every K row until 18 sts are left.
  > 20→18 Front/body 3 RS knit to last 2 sts, dec (19) · WS knit · RS knit to last 2 sts, dec (18)
Work 1 row for neck.
  > own words 18 asks the count Front/body 6 WS work in pattern 'Work 1 row for neck'
  > ✗ stitch expected @5:20 column 20
Bind off.
  > 18→0 Front/body 7 RS bind off all sts in pattern (0)
  > = Front, front, 1 to make, lines 3 4 5 6
  > =   body from {castOn 20}, RS: 6 garter 4 mm (own words 6); bind off

### rows by numbers from before a repeat
SCARF
  > heading
Cast on 20 sts.
  > →20
Row 1: k2, p16, k2.
  > 20 Scarf/body 1 RS k2, p16, k2
Row 2: knit.
  > 20 Scarf/body 2 WS knit
Rep rows 1 and 2 2 times.
  > 20 Scarf/body 3 RS k2, p16, k2 · WS knit · RS k2, p16, k2 · WS knit
Row 7: k1, p1, k to end.
  > 20 Scarf/body 7 RS k1, p1, knit to end
Row 8: purl.
  > 20 Scarf/body 8 WS purl
Rep rows 1 and 2 once.
  > 20 Scarf/body 9 RS k2, p16, k2 · WS knit
Rep rows 7 and 8 once.
  > 20 Scarf/body 11 RS k1, p1, knit to end · WS purl
Rep rows 3 and 4 once.
  > 20
  > ✗ no rows to repeat @10:1
Bind off.
  > 20→0 Scarf/body 13 RS bind off all sts in pattern (0)
  > = Scarf, other, 1 to make, lines 3 4 5 6 7 8 9 11
  > =   body from {castOn 20}, RS: 6 reverse stocking 4 mm; 2 pattern in stocking 4 mm; 2 reverse stocking 4 mm; 2 pattern in stocking 4 mm; bind off

    `),
  )('$title', expectAnnotated);
});
