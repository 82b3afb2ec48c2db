import { describe, it } from 'vitest';
import { annotatedIn, expectAnnotated } from './annotated.ts';

/** Wordings of our own after those that leaflets use: common practice, no published source. Rows and counts are reckoned by hand. */
describe('sizes by their names, how a hole is made, and what goes on behind mixed rows,', () => {
  it.each(
    annotatedIn(`
### further sizes by their names in brackets
Size 8 to 10 years.
  > talk
BACK
  > heading
Cast on 40 sts (size 10, 44 sts), K 1, P 1 across row.
  > 40 Back/body 1 RS *k1, p1; repeat from * to end
Dec 1 st each side of next row, 38 sts (42 sts, size 10).
  > 40→38 says 38 Back/body 2 WS dec, work in pattern to last 2 sts, dec (38)
Bind off.
  > 38→0 Back/body 3 RS bind off all sts in pattern (0)
  > = sizes 1, 2: 1
  > = Back, back, 1 to make, lines 3 4 5
  > =   body from {castOn 40}, RS: 1 rib in rib 1x1 4 mm; 1 pattern in stocking 4 mm; bind off

### further sizes by their names, for the other size {"size":1}
Size 8 to 10 years.
  > talk
BACK
  > heading
Cast on 40 sts (size 10, 44 sts), K 1, P 1 across row.
  > 44 Back/body 1 RS *k1, p1; repeat from * to end
Dec 1 st each side of next row, 38 sts (42 sts, size 10).
  > 44→42 says 42 Back/body 2 WS dec, work in pattern to last 2 sts, dec (42)
Bind off.
  > 42→0 Back/body 3 RS bind off all sts in pattern (0)
  > = sizes 1, 2: 2
  > = Back, back, 1 to make, lines 3 4 5
  > =   body from {castOn 44}, RS: 1 rib in rib 1x1 4 mm; 1 pattern in stocking 4 mm; bind off

### brackets that name no size
BACK
  > heading
Cast on 20 sts (see size note).
  > →20
Work 2 rows (see size 3, 4 rows are for boys) in st st. Bind off.
  > 20→0 Back/body 1 RS knit · WS purl · RS bind off all sts in pattern (0)
  > = Back, back, 1 to make, lines 3
  > =   body from {castOn 20}, RS: 2 stocking 4 mm; bind off

### inches with a dash before their fraction, in lists {"size":2}
Sizes: S (M, L, XL, XXL)
  > talk
Gauge: 20 sts and 20 rows = 4 inches
  > talk
BACK
  > heading
Cast on 40 (44, 48, 52, 56) sts.
  > →48
Work in k1, p1 rib until piece measures 1-1/2 (2, 2-1/2, 3, 3-1/2)". Bind off.
  > 48→0 long: 12 rows Back/body 1 RS *k1, p1; repeat from * to end · [WS *k1, p1; repeat from * to end · RS *k1, p1; repeat from * to end] ×5 · WS *k1, p1; repeat from * to end · RS bind off all sts in pattern (0)
  > = sizes S, M, L, XL, XXL: L
  > = gauge stitches 19.68503937007874, rows 19.68503937007874
  > = Back, back, 1 to make, lines 5
  > =   body from {castOn 48}, RS: 12 rib in rib 1x1 4 mm (length {id 'back/1', open false, mm 63.5, from start}); bind off

### what goes on behind a row of knit and purl, where nobody says in what
BACK
  > heading
Cast on 40 sts.
  > →40
K 1, P 1 across row.
  > 40 Back/body 1 RS *k1, p1; repeat from * to end
Work 2 rows. Dec 1 st at each end of next row.
  > 40→38 Back/body 2 WS work in pattern · RS work in pattern · WS dec, work in pattern to last 2 sts, dec (38)
FRONT
  > heading 38
Cast on 40 sts.
  > 38→40
K 1, P 1 across row.
  > 40 Front/body 1 RS *k1, p1; repeat from * to end
Bind off 2 sts at beg of next 2 rows. Work in garter st for 2 rows.
  > 40→36 Front/body 2 WS bind off 2 sts, work in pattern to end (38) · RS bind off 2 sts, work in pattern to end (36) · WS knit · RS knit
SLEEVE
  > heading 36
Cast on 40 sts.
  > 36→40
Next row: k2, inc, k to end.
  > 40→41 Sleeve/body 1 RS k2, inc, knit to end (41)
Work 2 rows.
  > 41 Sleeve/body 2 WS purl · RS knit
  > = Back, back, 1 to make, lines 3 4
  > =   body from {castOn 40}, RS: 1 rib in rib 1x1 4 mm; 3 pattern in stocking 4 mm; hold
  > = Front, front, 1 to make, lines 7 8
  > =   body from {castOn 40}, RS: 1 rib in rib 1x1 4 mm; 2 pattern in stocking 4 mm; 2 garter 4 mm; hold
  > = Sleeve, sleeve, 1 to make, lines 11 12
  > =   body from {castOn 40}, RS: 3 stocking 4 mm; hold

### how a buttonhole is made, behind where they lie
RIGHT FRONT
  > heading
Gauge: 20 sts and 20 rows = 10 cm
  > talk
Cast on 40 sts.
  > →40
Work in st st until piece measures 4 cm, making a buttonhole after the first 1 cm and every 2 cm thereafter until 2 in all are made—to make a buttonhole, on one row bind off 4 sts; on next row cast on 4 sts to replace those bound off.
  > 40 long: 8 rows Right front/body 1 RS knit · WS purl · RS knit 'Work in st st until piece measures 4 cm, making a buttonhole after the first 1 cm and every 2 cm thereafter until 2 in all are made—to make a buttonhole, on one row bind off 4 sts; on next row cast on 4 sts to replace those bound off' · WS purl · RS knit · WS purl · RS knit 'Work in st st until piece measures 4 cm, making a buttonhole after the first 1 cm and every 2 cm thereafter until 2 in all are made—to make a buttonhole, on one row bind off 4 sts; on next row cast on 4 sts to replace those bound off' · WS purl
On next row and every 4th row thereafter make a buttonhole 4 sts in from front edge, until 2 buttonholes in all are made (To make a buttonhole, on one row bind off 4 sts; then, on next row, cast on 4 sts), and work 6 rows in st st.
  > 40 Right front/body 9 RS knit 'On next row and every 4th row thereafter make a buttonhole 4 sts in from front edge, until 2 buttonholes in all are made (To make a buttonhole, on one row bind off 4 sts; then, on next row, cast on 4 sts), and work 6 rows in st st' · WS purl · RS knit · WS purl · RS knit 'On next row and every 4th row thereafter make a buttonhole 4 sts in from front edge, until 2 buttonholes in all are made (To make a buttonhole, on one row bind off 4 sts; then, on next row, cast on 4 sts), and work 6 rows in st st' · WS purl
  > = gauge stitches 20, rows 20
  > = Right front, right front, 1 to make, lines 4 5
  > =   body from {castOn 40}, RS: 8 stocking 4 mm (own words 3 7, length {id 'right front/1', open false, mm 40, from start}); 6 stocking 4 mm (own words 1 5); hold

### and where none was asked for
RIGHT FRONT
  > heading
Cast on 40 sts.
  > →40
K 2 rows.
  > 40 Right front/body 1 RS knit · WS knit
To make a buttonhole, k 2, bind off 2, k to end; on next row cast on 2.
  > talk 40
  > ✗ row not known @4:1 rowName buttonhole
K 2 rows.
  > 40 Right front/body 3 RS knit · WS knit
  > = Right front, right front, 1 to make, lines 3 5
  > =   body from {castOn 40}, RS: 4 garter 4 mm; hold

### buttonhole rows that are announced
RIGHT FRONT
  > heading
Cast on 40 sts.
  > →40
K 2 rows.
  > 40 Right front/body 1 RS knit · WS knit
Row 3: Make a button hole as follows: k2, yo, k2tog, k remainder of row.
  > 40 Right front/body 3 RS k2, yo, k2tog, knit to end
K 2 rows, then work buttonhole as follows:
  > 40 Right front/body 4 WS knit · RS knit
K 1, yo, k2tog, k to end.
  > 40 Right front/body 6 WS k1, yo, k2tog, knit to end
  > = Right front, right front, 1 to make, lines 3 4 5 6
  > =   body from {castOn 40}, RS: 6 garter 4 mm; hold

### the other half, with stitches cast on, as the first
FRONT
  > heading
Cast on 40 sts.
  > →40
Work 2 rows in st st.
  > 40 Front/body 1 RS knit · WS purl
Next row: k across first 16 sts, turn.
  > 40→16 Front/right side 1 RS k16
Work over these 16 sts for 2 rows, dec 1 st at neck edge every row. Bind off.
  > 16→0 Front/right side 2 WS dec, purl to end (15) · RS knit to last 2 sts, dec (14) · WS bind off all sts in pattern (0)
Cast on 4 sts and continue across remaining 24 sts and work to correspond.
  > 28→0 Front/left side 1 RS cast on 4 sts, knit to end (28) · WS purl to last 2 sts, dec (27) · RS dec, knit to end (26) · WS bind off all sts in pattern (0)
  > = Front, front, 1 to make, lines 3 4 5 6
  > =   body from {castOn 40}, RS: 2 stocking 4 mm; split
  > =   right side from {part body, stitches 16, edge right}, RS: 3 stocking 4 mm; bind off
  > =   left side from {part body, stitches 24, edge left}, RS: 3 stocking 4 mm; bind off

### pieces that are called otherwise
LEFT TAB
  > heading
Cast on 10 sts.
  > →10
K 2 rows. Dec 1 st at beg of next row. K 1 row. Bind off.
  > 10→0 Left tab/body 1 RS knit · WS knit · RS dec, knit to end (9) · WS knit · RS bind off all sts in pattern (0)
RIGHT TAB
  > heading
Work as for left tab, reversing shapings.
  > →0 Right tab/body 1 RS knit · WS knit · RS knit to last 2 sts, dec (9) · WS knit · RS bind off all sts in pattern (0)
FLAP
  > heading
Work as for strap.
  > ✗ piece not known @7:1 pieceName strap
  > = Left tab, other, 1 to make, lines 3
  > =   body from {castOn 10}, RS: 2 garter 4 mm; 1 stocking 4 mm; 1 garter 4 mm; bind off
  > = Right tab, other, 1 to make, lines 5
  > =   body from {castOn 10}, RS: 2 garter 4 mm; 1 stocking 4 mm; 1 garter 4 mm; bind off
    `),
  )('$title', expectAnnotated);
});
