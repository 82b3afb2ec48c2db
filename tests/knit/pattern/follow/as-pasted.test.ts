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
  > =   body from {castOn 20}, RS: 6 garter 4 mm; 1 stocking 4 mm; hold

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
  > =   body from {castOn 20}, RS: 4 garter 4 mm; 2 stocking 4 mm; 3 'stocking, B' in stocking 4 mm; hold

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
  > =   body from {castOn 20}, RS: 6 garter 4 mm; 3 stocking 4 mm (own words 1 2 3); hold

### rows of a chart are not in the text
Cast on 20 sts. Knit 2 rows.
  > 20 Piece/body 1 RS knit · WS knit
Work rows 1-3 of chart.
  > own words 20 asks the count Piece/body 3 RS work in pattern 'Work rows 1-3 of chart' · WS work in pattern 'Work rows 1-3 of chart' · RS work in pattern 'Work rows 1-3 of chart'
  > ✗ stitch or repeat expected @2:1 column 1
K 1 row.
  > 20 Piece/body 6 WS knit
  > = Piece, other, 1 to make, lines 1 2 3
  > =   body from {castOn 20}, RS: 2 garter 4 mm; 3 stocking 4 mm (own words 1 2 3); 1 garter 4 mm; hold

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
  > =   body from {castOn 21}, RS: 2 rib in rib 1x1 matched 4 mm; 7 stocking 4 mm (length {id 'piece/1', open false, mm 20, from here}); hold

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
  > =   body from {castOn 40}, RS: 2 garter 4 mm; 2 stocking 4 mm (own words 2); hold

### a list of sizes with brackets around the smallest and the largest {"size":3}
Cast on (34) 37-44-48-52 (55-62) sts.
  > →48
K (2) 4-4-4-6 (6-8) rows.
  > 48 Piece/body 1 RS knit · WS knit · RS knit · WS knit
  > = sizes 1, 2, 3, 4, 5, 6, 7: 4
  > = Piece, other, 1 to make, lines 2
  > =   body from {castOn 48}, RS: 4 garter 4 mm; hold

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
  > =   body from {castOn 40}, RS: 4 garter 4 mm; bind off
  > = Left front, left front, 1 to make, lines 2
  > =   body from {castOn 20}, RS: 4 garter 4 mm; 1 'shape neck' in garter 4 mm; hold
    `),
  )('$title', expectAnnotated);
});
