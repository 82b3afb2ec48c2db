import { describe, it } from 'vitest';
import { annotatedIn, expectAnnotated } from './annotated.ts';

/** Patterns as they are pasted from pages and printed sheets: common practice, no published source. The counts are reckoned by hand. */
describe('as it was pasted,', () => {
  it.each(
    annotatedIn(`
### a row by its bare number, and rows as others, begin again with the first of them
Cast on 20 sts.
  > →20
1: K2, p to last 2 sts, k2.
  > 20 Piece/body 1 RS k2, purl to last 2 sts, k2
2: Purl.
  > 20 Piece/body 2 WS purl
3: K1, (yo, k2tog) to last st, k1.
  > 20 Piece/body 3 RS k1, *yo, k2tog; repeat from * to last st, k1
4-6: As rows 1-2.
  > 20 Piece/body 4 WS k2, purl to last 2 sts, k2 · RS purl · WS k2, purl to last 2 sts, k2
7: K2tog, k to end.
  > 20→19 Piece/body 7 RS k2tog, knit to end (19)
  > = Piece, other, 1 to make, lines 2 3 4 5 6
  > =   body from {castOn 20}, RS: 7 stocking 4 mm; hold

### a step with its number is no row
Cast on 20 sts.
  > →20
2: Knit 4 rows.
  > own words 20 asks the count Piece/body 1 RS work in pattern '2: Knit 4 rows' · WS work in pattern '2: Knit 4 rows' · RS work in pattern '2: Knit 4 rows' · WS work in pattern '2: Knit 4 rows'
  > ✗ stitch or repeat expected @2:1 column 1
3: Knit until piece measures 5 cm.
  > own words 20 asks the count as long as she likes: 1 rows Piece/body 5 RS work in pattern '3: Knit until piece measures 5 cm'
  > ✗ stitch or repeat expected @3:1 column 1
  > = Piece, other, 1 to make, lines 2 3
  > =   body from {castOn 20}, RS: 4 stocking 4 mm (own words 1 2 3 4); 1 pattern in stocking 4 mm (own words 1, length {id 'piece/1', open, from here}); hold

### rows that are named with a fabric are worked in it, whatever was knitted before
Cast on 20 sts. Knit 4 rows.
  > 20 Piece/body 1 RS knit · WS knit · RS knit · WS knit
Rows 5-6: Work in st st.
  > 20 Piece/body 5 RS knit · WS purl
Rows 7-8: Using B, work in stocking stitch, ending with a WS row.
  > 20 Piece/body 7 RS knit · WS purl
Row 9: work in patt.
  > 20 Piece/body 9 RS knit
  > = Piece, other, 1 to make, lines 1 2 3 4
  > =   body from {castOn 20}, RS: 4 stocking 4 mm; 2 stocking 4 mm; 3 'stocking, B' in stocking 4 mm; hold

### rows that repeat the last ones, as many as they say
Cast on 20 sts.
  > →20
Row 1: K.
  > 20 Piece/body 1 RS knit
Row 2: Kfb, k to end. (21 sts)
  > 20→21 says 21 Piece/body 2 WS kfb, knit to end (21)
Rows 3-6: Repeat last 2 rows 2 more times. (23 sts)
  > 21→23 says 23 Piece/body 3 RS knit · WS kfb, knit to end (22) · RS knit · WS kfb, knit to end (23)
Rows 7-9: Repeat last 2 rows once more.
  > own words 23 asks the count Piece/body 7 RS work in pattern 'Rows 7-9: Repeat last 2 rows once more' · WS work in pattern 'Rows 7-9: Repeat last 2 rows once more' · RS work in pattern 'Rows 7-9: Repeat last 2 rows once more'
  > ✗ nothing before the repeat @5:18 column 18
  > = Piece, other, 1 to make, lines 2 3 4 5
  > =   body from {castOn 20}, RS: 9 stocking 4 mm (own words 7 8 9); hold

### rows of a chart are not in the text
Cast on 20 sts. Knit 2 rows.
  > 20 Piece/body 1 RS knit · WS knit
Work rows 1-3 of chart.
  > own words 20 asks the count Piece/body 3 RS work in pattern 'Work rows 1-3 of chart' · WS work in pattern 'Work rows 1-3 of chart' · RS work in pattern 'Work rows 1-3 of chart'
  > ✗ stitch or repeat expected @2:1 column 1
K 1 row.
  > 20 Piece/body 6 WS knit
  > = Piece, other, 1 to make, lines 1 2 3
  > =   body from {castOn 20}, RS: 5 stocking 4 mm (own words 3 4 5); 1 pattern in stocking 4 mm; hold

### rows of which some were not understood are not repeated as if the others were all
Cast on 20 sts.
  > →20
Row 1: k.
  > 20 Piece/body 1 RS knit
Row 2: p.
  > 20 Piece/body 2 WS purl
Row 3: wibble 3 sts over.
  > own words 20 asks the count Piece/body 3 RS work in pattern 'Row 3: wibble 3 sts over'
  > ✗ stitch or repeat expected @4:8 column 8
Row 5: k.
  > 20 Piece/body 4 WS knit
Rep rows 3-5 twice.
  > 20
  > ✗ row not known @6:1 rowName 3-5
  > = Piece, other, 1 to make, lines 2 3 4 5
  > =   body from {castOn 20}, RS: 3 stocking 4 mm (own words 3); 1 pattern in stocking 4 mm; hold

### more than two are not worked together
Cast on 40 sts.
  > →40
Row 1: dec 3 sts each end.
  > 40→34 Piece/body 1 RS [dec] 3 times, knit to last 6 sts, [dec] 3 times (34)
Row 2: dec 2 sts at each end.
  > 34→30 Piece/body 2 WS dec 2 at once, purl to last 3 sts, dec 2 at once (30)
  > = Piece, other, 1 to make, lines 2 3
  > =   body from {castOn 40}, RS: 2 stocking 4 mm; hold

### what is bound off and the rest of its row are one row
Cast on 40 sts.
  > →40
K 1 row.
  > 40 Piece/body 1 RS knit
At neck edge, bind off 5 sts, work to end of row.
  > 40→35 Piece/body 2 WS bind off 5 sts, purl to end (35)
Cast off 3 sts at beg of next row, k to end.
  > 35→32 Piece/body 3 RS bind off 3 sts, knit to end (32)
  > = Piece, other, 1 to make, lines 2 3 4
  > =   body from {castOn 40}, RS: 3 stocking 4 mm; hold

### a row to end with is kept
Gauge: 20 sts and 40 rows = 10 cm.
  > talk
Cast on 21 sts.
  > →21
1st row: K1, (p1, k1) to end.
  > 21 Piece/body 1 RS k1, *p1, k1; repeat from * to end
2nd row: P1, (k1, p1) to end.
  > 21 Piece/body 2 WS p1, *k1, p1; repeat from * to end
Repeat the last 2 rows for 2 cm finishing on a first row.
  > 21 long: 7 rows Piece/body 3 RS k1, *p1, k1; repeat from * to end · [WS p1, *k1, p1; repeat from * to end · RS k1, *p1, k1; repeat from * to end] ×3
  > = gauge stitches 20, rows 40
  > = Piece, other, 1 to make, lines 3 4 5
  > =   body from {castOn 21}, RS: 2 stocking 4 mm; 7 stocking 4 mm (length {id 'piece/1', open false, mm 20, from here}); hold

### 'this is shaped so' tells nothing but where it stands
Cast on 40 sts. K 2 rows.
  > 40 Piece/body 1 RS knit · WS knit
This is shaped as follows: cast off 4 sts at beginning of next 2 rows.
  > 40→32 Piece/body 3 RS bind off 4 sts, knit to end (36) · WS bind off 4 sts, purl to end (32)
These 4 rows form the hem.
  > 32
  > = Piece, other, 1 to make, lines 1 2
  > =   body from {castOn 40}, RS: 4 stocking 4 mm; hold

### a size that nobody named is told, one of two by its order is known
Cast on 40 (44) sts. Knit 2 (4) rows.
  > 40 Piece/body 1 RS knit · WS knit
For smaller size only dec 1 st each end.
  > 40→38 Piece/body 3 RS dec, knit to last 2 sts, dec (38)
For medium size only dec 1 st each end.
  > own words 38 asks the count Piece/body 4 WS work in pattern 'For medium size only dec 1 st each end'
  > ✗ stitch or repeat expected @3:1 column 1
Larger size only: k 1 row.
  > talk
  > = sizes 1, 2: 1
  > = Piece, other, 1 to make, lines 1 2 3
  > =   body from {castOn 40}, RS: 4 stocking 4 mm (own words 4); hold

### a list of sizes with brackets around the smallest and the largest {"size":3}
Cast on (34) 37-44-48-52 (55-62) sts.
  > →48
K (2) 4-4-4-6 (6-8) rows.
  > 48 Piece/body 1 RS knit · WS knit · RS knit · WS knit
  > = sizes 1, 2, 3, 4, 5, 6, 7: 4
  > = Piece, other, 1 to make, lines 2
  > =   body from {castOn 48}, RS: 4 stocking 4 mm; hold

### the rows of a length stand behind it
Cast on 38 sts.
  > →38
Work in 2/2 rib for 3 cm, 10 rows.
  > 38 Piece/body 1 RS *k2, p2; repeat from * to last 2 sts, k2 · [WS *p2, k2; repeat from * to last 2 sts, p2 · RS *k2, p2; repeat from * to last 2 sts, k2] ×4 · WS *p2, k2; repeat from * to last 2 sts, p2
Cont in st st until work measures 6 cm, 20 rows total.
  > 38 Piece/body 11 RS knit · [WS purl · RS knit] ×4 · WS purl
Work in garter st for 2 cm (approx 8 rows).
  > 38 Piece/body 21 RS knit · [WS knit · RS knit] ×3 · WS knit
  > = Piece, other, 1 to make, lines 2 3 4
  > =   body from {castOn 38}, RS: 10 rib in rib 2x2 4 mm; 10 stocking 4 mm; 8 garter 4 mm; hold

### a name goes on in small letters before what is cast on
BACK Using 4 mm needles cast on 40 sts. Knit 4 rows. Cast off.
  > 40→0 Back/body 1 RS knit · WS knit · RS knit · WS knit · RS bind off all sts in pattern (0)
Left front Using 4 mm needles and thumb method cast on 20 sts. Knit 4 rows. Shape neck Next row. K to last 10 sts, k2tog (neck edge), k to end.
  > 20→19 Left front/body 1 RS knit · WS knit · RS knit · WS knit · RS knit to last 10 sts, k2tog, knit to end (19)
  > = Back, back, 1 to make, lines 1
  > =   body from {castOn 40}, RS: 4 stocking 4 mm; bind off
  > = Left front, left front, 1 to make, lines 2
  > =   body from {castOn 20}, RS: 4 stocking 4 mm; 1 'shape neck' in garter 4 mm; hold

### rows with numbers of their own are known by them further on
Cast on 20 sts.
  > →20
Row 1: K.
  > 20 Piece/body 1 RS knit
Row 2: Kfb, k to end. (21 sts)
  > 20→21 says 21 Piece/body 2 WS kfb, knit to end (21)
Rows 3-6: Repeat last 2 rows 2 more times. (23 sts)
  > 21→23 says 23 Piece/body 3 RS knit · WS kfb, knit to end (22) · RS knit · WS kfb, knit to end (23)
Row 7: P.
  > 23 Piece/body 7 RS purl
Rows 8-11: Repeat rows 4-7. (25 sts)
  > 23→25 says 25 Piece/body 8 WS kfb, knit to end (24) · RS knit · WS kfb, knit to end (25) · RS purl
Rows 12-15: Repeat rows 10-13.
  > 25→27 Piece/body 12 WS kfb, knit to end (26) · RS purl · WS kfb, knit to end (27) · RS purl
  > = Piece, other, 1 to make, lines 2 3 4 5 6 7
  > =   body from {castOn 20}, RS: 15 stocking 4 mm; hold

### as another piece, so many rows past a shaping, from its last row
BACK
  > heading
Cast on 40 sts. Work 8 rows in st st.
  > 40 Back/body 1 RS knit · [WS purl · RS knit] ×3 · WS purl
Shape armholes
  > heading 40
Bind off 2 sts at beg of next 2 rows. Dec 1 st at each end of next and foll alt row.
  > 40→32 Back/body 9 RS bind off 2 sts, knit to end (38) · WS bind off 2 sts, purl to end (36) · RS dec, knit to last 2 sts, dec (34) · WS purl · RS dec, knit to last 2 sts, dec (32)
Work 10 rows straight.
  > 32 Back/body 14 WS purl · [RS knit · WS purl] ×4 · RS knit
Shape shoulders
  > heading 32
Bind off 8 sts at beg of next 2 rows. Bind off.
  > 32→0 Back/body 24 WS bind off 8 sts, purl to end (24) · RS bind off 8 sts, knit to end (16) · WS bind off all sts in pattern (0)
FRONT
  > heading
Work as for back until 3 rows have been worked after armhole shaping.
  > →32 Front/body 1 RS knit · [WS purl · RS knit] ×3 · WS purl · RS bind off 2 sts, knit to end (38) · WS bind off 2 sts, purl to end (36) · RS dec, knit to last 2 sts, dec (34) · WS purl · RS dec, knit to last 2 sts, dec (32) · WS purl · RS knit · WS purl
Bind off.
  > 32→0 Front/body 17 RS bind off all sts in pattern (0)
  > = Back, back, 1 to make, lines 2 4 5 7
  > =   body from {castOn 40}, RS: 8 stocking 4 mm; 15 'shape armholes' in stocking 4 mm; 2 'shape shoulders' in stocking 4 mm; bind off
  > = Front, front, 1 to make, lines 9 10
  > =   body from {castOn 40}, RS: 16 stocking 4 mm; bind off

### rows whose stitches, sides and turns are parted by stops
BACK
  > heading
With smaller needles cast on 90 sts.
  > →90
1st row: (RS). *K2. P2. Rep from * to
last 2 sts. K2.
  > lines 3 to 4 90 Back/body 1 RS *k2, p2; repeat from * to last 2 sts, k2
2nd row: *P2. K2. Rep from * to last 2 sts. P2.
  > 90 Back/body 2 WS *p2, k2; repeat from * to last 2 sts, p2
Rep last 2 rows twice more. 90 sts.
  > 90 says 90 Back/body 3 RS *k2, p2; repeat from * to last 2 sts, k2 · WS *p2, k2; repeat from * to last 2 sts, p2 · RS *k2, p2; repeat from * to last 2 sts, k2 · WS *p2, k2; repeat from * to last 2 sts, p2
Shape armholes: Cast off 5 sts beg next 2 rows. 80 sts.
  > 90→80 says 80 Back/body 7 RS bind off 5 sts, k1, *p2, k2; repeat from * to end (85) · WS bind off 5 sts, p1, *k2, p2; repeat from * to last 3 sts, k2, p1 (80)
Next row: (RS). K2. K2tog. Knit to last 4 sts. ssk. K2.
  > 80→78 Back/body 9 RS k2, k2tog, knit to last 4 sts, ssk, k2 (78)
Next row: Purl.
  > 78 Back/body 10 WS purl
Rep last 2 rows twice more. 74 sts.
  > 78→74 says 74 Back/body 11 RS k2, k2tog, knit to last 4 sts, ssk, k2 (76) · WS purl · RS k2, k2tog, knit to last 4 sts, ssk, k2 (74) · WS purl
Next row: (RS). K30 (neck edge). Turn. Leave rem sts on a spare needle.
  > 74→30 Back/right side 1 RS k30
Next row: Purl.
  > 30 Back/right side 2 WS purl
Next row: Knit to last 3 sts. K2tog. K1. 29 sts.
  > 30→29 says 29 Back/right side 3 RS knit to last 3 sts, k2tog, k1 (29)
Shape shoulder: Next row: (WS). Purl.
  > 29 Back/right side 4 WS purl
Cast off 29 sts.
  > 29→0 Back/right side 5 RS bind off all sts in pattern (0)
With RS facing, slip next 14 sts from spare needle onto a st holder. Join yarn to rem 30 sts and knit to end of row.
  > 30 Back/left side 1 RS knit
  > = Back, back, 1 to make, lines 3 4 5 6 7 8 9 10 11 12 13 14 15
  > =   body from {castOn 90}, RS: 6 stocking 4 mm; 8 'shape armholes' in stocking 4 mm; split
  > =   right side from {part body, stitches 30, edge right}, RS: 3 'shape armholes' in stocking 4 mm; 1 'shape shoulder' in stocking 4 mm; bind off
  > =   middle from {part body, stitches 14, edge middle}, RS: hold
  > =   left side from {part body, stitches 30, edge left}, RS: 1 'shape shoulder' in stocking 4 mm; hold

### what works a garment is told where nothing is on the needle, also without a label
Shape neck
  > heading
With RS facing, cast off centre 6 sts, work to end.
  > ✗ nothing on the needle @2:17

### the same again on another side is told where nothing is left of it
Cast on 20 sts. K 2 rows. Bind off.
  > 20→0 Piece/body 1 RS knit · WS knit · RS bind off all sts in pattern (0)
Work the same on the other side of the neck.
  > own words →0
  > ✗ stitch or repeat expected @2:1 column 1
  > = Piece, other, 1 to make, lines 1
  > =   body from {castOn 20}, RS: 2 stocking 4 mm; bind off

### the first row of a pattern is known by others
Cast on 13 sts.
  > →13
1st row of pattern: * K 4, p 2, repeat from *, ending with k 1.
  > 13 Piece/body 1 RS *k4, p2; repeat from * to last st, k1
2nd row: Purl.
  > 13 Piece/body 2 WS purl
3rd row: Same as 1st row.
  > 13 Piece/body 3 RS *k4, p2; repeat from * to last st, k1
Row 4 AND EVERY EVEN ROW: P
  > 13 Piece/body 4 WS purl
Row 5: K.
  > 13 Piece/body 5 RS knit
Row 7: K.
  > 13 Piece/body 6 WS purl · RS knit
  > = Piece, other, 1 to make, lines 2 3 4 5 6 7
  > =   body from {castOn 13}, RS: 7 stocking 4 mm; hold
    `),
  )('$title', expectAnnotated);
});
