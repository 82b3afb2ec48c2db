import { describe, it } from 'vitest';
import { annotatedIn, expectAnnotated } from './annotated.ts';

/** How patterns are usually worded: common practice, no published source. Rows and counts are worked out by hand. */
describe('what is said once and goes on, followed row by row,', () => {
  it.each(
    annotatedIn(`
### a row, or two, that stand alone are worked again
Cast on 14 sts.
  > →14
Knit 2 rows. Change to white.
  > 14 Piece/body 1 RS knit · WS knit
Next row: Knit.
  > 14 Piece/body 3 RS knit
Next row: K2, p to last 2 sts, k2.
  > 14 Piece/body 4 WS k2, purl to last 2 sts, k2
Repeat 2 more times
  > 14 Piece/body 5 RS knit · WS k2, purl to last 2 sts, k2 · RS knit · WS k2, purl to last 2 sts, k2
Change to red.
  > 14
Next row: Purl.
  > 14 Piece/body 9 RS purl
Repeat once more.
  > 14 Piece/body 10 WS purl
  > = Piece, other, 1 to make, lines 2 3 4 5 7 8
  > =   body from {castOn 14}, RS: 2 stocking 4 mm; 6 'stocking, white' in stocking 4 mm; 2 'pattern, red' in stocking 4 mm; hold

### of three nobody knows which are meant
Cast on 14 sts.
  > →14
Next row: Knit.
  > 14 Piece/body 1 RS knit
Next row: Purl.
  > 14 Piece/body 2 WS purl
Next row: K2, p to end.
  > 14 Piece/body 3 RS k2, purl to end
Repeat twice more.
  > 14
  > ✗ no rows to repeat @5:1
  > = Piece, other, 1 to make, lines 2 3 4
  > =   body from {castOn 14}, RS: 3 stocking 4 mm; hold

### rows are worked again by their numbers, whatever was repeated between
Cast on 12 sts.
  > →12
Row 1: K2, p to last 2 sts, k2.
  > 12 Piece/body 1 RS k2, purl to last 2 sts, k2
Row 2: Purl.
  > 12 Piece/body 2 WS purl
[Repeat rows 1 and 2] once more (4 rows)
  > 12 Piece/body 3 RS k2, purl to last 2 sts, k2 · WS purl
Row 5: K1, p1, k to end.
  > 12 Piece/body 5 RS k1, p1, knit to end
Row 6: K2, p to end.
  > 12 Piece/body 6 WS k2, purl to end
[Repeat rows 5 and 6] 2 times (10 rows)
  > 12 Piece/body 7 RS k1, p1, knit to end · WS k2, purl to end · RS k1, p1, knit to end · WS k2, purl to end
[Repeat rows 1 and 2] once (12 rows)
  > 12 Piece/body 11 RS k2, purl to last 2 sts, k2 · WS purl
Row 13: Knit.
  > 12 Piece/body 13 RS knit
Continue working rows 5 and 6 until the stole is about 3 inches shorter than required.
  > 12 as long as she likes: 3 rows Piece/body 14 WS k1, p1, knit to end · RS k2, purl to end · WS k1, p1, knit to end
  > = Piece, other, 1 to make, lines 2 3 4 5 6 7 8 9 10
  > =   body from {castOn 12}, RS: 4 garter 4 mm; 6 pattern in stocking 4 mm; 2 pattern in stocking 4 mm; 1 pattern in stocking 4 mm; 3 pattern in stocking 4 mm (length {id 'piece/1', open, from start}); hold

### numbered rows begin with a side and a stitch
Cast on 20 sts.
  > →20
Rows 1 to 4: Knit.
  > 20 Piece/body 1 RS knit · WS knit · RS knit · WS knit
Rows 5 to 8: Starting on a RS knit row work in st st.
  > 20 Piece/body 5 RS knit · WS purl · RS knit · WS purl
  > = Piece, other, 1 to make, lines 2 3
  > =   body from {castOn 20}, RS: 4 garter 4 mm; 4 stocking 4 mm; hold

### another yarn is tied in
Cast on 20 sts. Knit 2 rows.
  > 20 Piece/body 1 RS knit · WS knit
Tie in red yarn (with the right side of the work towards you).
  > 20
Knit 2 rows.
  > 20 Piece/body 3 RS knit · WS knit
  > = Piece, other, 1 to make, lines 1 3
  > =   body from {castOn 20}, RS: 2 garter 4 mm; 2 'stocking, red' in garter 4 mm; hold

### a pattern goes on from the row that is said
PATTERN STITCH
  > heading
Row 1: Knit.
Row 2: * K1, p1; rep from * to end.
Row 3: Purl.
Row 4: * P1, k1; rep from * to end.

BACK
  > heading
Cast on 20 sts. Knit 1 row.
  > 20 Back/body 1 RS knit
Work in pattern stitch, starting with row 2, for 4 rows.
  > 20 Back/body 2 WS *k1, p1; repeat from * to end · RS purl · WS *p1, k1; repeat from * to end · RS knit
Work in pattern stitch, beginning with row 7, for 2 rows.
  > 20
  > ✗ place not known @10:1
  > = pattern pattern of 2 plus 0 over 4: knit (4) · *k1, p1; repeat from * to end (4) · purl (4) · *p1, k1; repeat from * to end (4)
  > = Back, back, 1 to make, lines 7 8
  > =   body from {castOn 20}, RS: 1 stocking 4 mm; 4 pattern in stocking 4 mm; hold

### patterns are announced, each by its name
Cast on 16 sts.
  > →16
Proceed in pattern with moss stitch edges and a ridge as follows:
  > talk 16
Row 1: * K1, p1; rep from * to end.
  > 16 Piece/body 1 RS *k1, p1; repeat from * to end
Row 2: Knit.
  > 16 Piece/body 2 WS knit
Begin second rib pattern as follows:
  > talk 16
Row 1: * K2, p2; rep from * to end.
  > 16 Piece/body 3 RS *k2, p2; repeat from * to end
Row 2: As row 1.
  > 16 Piece/body 4 WS *k2, p2; repeat from * to end
Keeping second rib pattern as established, work 2 rows.
  > 16 Piece/body 5 RS *k2, p2; repeat from * to end · WS *k2, p2; repeat from * to end
  > = Piece, other, 1 to make, lines 3 4 6 7 8
  > =   body from {castOn 16}, RS: 1 rib in rib 1x1 4 mm; 1 stocking 4 mm; 2 rib in rib 2x2 4 mm; 2 pattern in stocking 4 mm; hold

### what is not announced is worked
Cast on 16 sts.
  > →16
Work first rib pattern for 2 rows.
  > 16 Piece/body 1 RS work in pattern · WS work in pattern
  > ✗ fabric not known @2:1 name 'first rib'
  > = Piece, other, 1 to make, lines 2
  > =   body from {castOn 16}, RS: 2 'first rib' in stocking 4 mm; hold

### the text's own pattern begins, and not what was there
Row 1 (RS): Knit.
Row 2: Purl.
Row 3: * K1, p1; rep from * to end.
Row 4: * P1, k1; rep from * to end.

FACE CLOTH
  > talk

Cast on 16 sts and work 3 rows in garter stitch. Begin pattern above, keeping 2 sts in garter stitch beginning and ending of rows.
  > 16 Face cloth/body 1 WS knit · RS knit · WS knit
Continue until cloth measures 6 inches, ending with row 2 of pattern. Bind off.
  > 16→0 as long as she likes: 2 rows Face cloth/body 4 RS knit · WS k2, purl to last 2 sts, k2 · RS bind off all sts in pattern (0)
  > = pattern pattern of 2 plus 0 over 4: knit (4) · purl (4) · *k1, p1; repeat from * to end (4) · *p1, k1; repeat from * to end (4)
  > = Face cloth, other, 1 to make, lines 6 7
  > =   body from {castOn 16}, WS: 3 garter 4 mm; 2 pattern in stocking 4 mm (length {id 'face cloth/1', open, mm 152.39999999999998, from start}); bind off

### groups go on behind a stop
Cast on 20 sts. Work in garter st, casting on 5 sts at end of each of the next 2 rows. 4 sts at end of next 2 rows. 3 sts on next 2 rows, then 1 st on next 2 rows (46 sts). *Dec 1 st each side on each of next 2 rows, work 1 row even (4 sts decreased in 3 rows), repeat from * once more.
  > 20→38 says 46 Piece/body 1 RS knit to end, cast on 5 sts (25) · WS knit to end, cast on 5 sts (30) · RS knit to end, cast on 4 sts (34) · WS knit to end, cast on 4 sts (38) · RS knit to end, cast on 3 sts (41) · WS knit to end, cast on 3 sts (44) · RS knit to end, cast on 1 st (45) · WS knit to end, cast on 1 st (46) · RS dec, knit to last 2 sts, dec (44) · WS dec, knit to last 2 sts, dec (42) · RS knit · WS dec, knit to last 2 sts, dec (40) · RS dec, knit to last 2 sts, dec (38) · WS knit
  > = Piece, other, 1 to make, lines 1
  > =   body from {castOn 20}, RS: 14 garter 4 mm; hold

### what stands behind rows for all sizes goes on
To fit sizes 32 (34, 36).
  > talk
Cast on 21 (23, 25) sts.
  > →21
1st row: K3 (4, 5) sts; on all sizes: * p1, k4. Repeat from * to end, ending with p1, k 2 (3, 4) sts.
  > 21 Piece/body 1 RS k3, *p1, k4; repeat from * to last 3 sts, p1, k2
2nd row: Purl.
  > 21 Piece/body 2 WS purl
The last 2 rows (first to 2nd rows incl) constitute pattern. Work 2 rows in pattern.
  > 21 Piece/body 3 RS k3, *p1, k4; repeat from * to last 3 sts, p1, k2 · WS purl
  > = sizes 32, 34, 36: 32
  > = Piece, other, 1 to make, lines 3 4 5
  > =   body from {castOn 21}, RS: 2 stocking 4 mm; 2 pattern in stocking 4 mm; hold

### stripes end with the yarn that is named
Cast on 20 sts. Knit 2 rows.
  > 20 Piece/body 1 RS knit · WS knit
With A, work 2 rows in st st. With B, work 4 rows in st st. Rep last 6 rows of stripe pattern until piece measures 10 cm, ending with 2 rows of A.
  > 20 as long as she likes: 2 rows Piece/body 3 RS knit · [WS purl · RS knit] ×3 · WS purl
Rep last 2 rows until piece measures 20 cm, ending with 2 rows of C.
  > 20
  > ✗ place not known @3:1
  > = Piece, other, 1 to make, lines 1 2
  > =   body from {castOn 20}, RS: 2 stocking 4 mm; 2 'stocking, A' in stocking 4 mm; 4 'stocking, B' in stocking 4 mm; 2 'stocking, A' in stocking 4 mm (length {id 'piece/1', open, mm 100, from start}); hold

### a garter border began on the other side
Cast on 20 sts.
  > →20
Knit 5 rows.
  > 20 Piece/body 1 WS knit · [RS knit · WS knit] ×2
Row 1 (RS): K3, p to end.
  > 20 Piece/body 6 RS k3, purl to end
Row 2: P to last 3 sts, k3.
  > 20 Piece/body 7 WS purl to last 3 sts, k3
  > = Piece, other, 1 to make, lines 2 3 4
  > =   body from {castOn 20}, WS: 5 garter 4 mm; 2 garter 4 mm; hold

### of which somebody said it began on this one
Cast on 20 sts.
  > →20
Row 1 (RS): Knit.
  > 20 Piece/body 1 RS knit
Rows 2 and 3: Knit.
  > 20 Piece/body 2 WS knit · RS knit
Next row (RS): K3, p to end.
  > 20 Piece/body 4 WS k3, purl to end
  > ✗ side differs @4:1 saidSide RS, foundSide WS
  > = Piece, other, 1 to make, lines 2 3 4
  > =   body from {castOn 20}, RS: 4 stocking 4 mm; hold

### a rib does not look alike whatever is on the needle
Cast on 21 sts.
  > →21
Work 5 rows in k1, p1 rib.
  > 21 Piece/body 1 RS *k1, p1; repeat from * to last st, k1 · [WS *p1, k1; repeat from * to last st, p1 · RS *k1, p1; repeat from * to last st, k1] ×2
Next row (RS): K3, p to end.
  > 21 Piece/body 6 WS k3, purl to end
  > ✗ side differs @3:1 saidSide RS, foundSide WS
  > = Piece, other, 1 to make, lines 2 3
  > =   body from {castOn 21}, RS: 6 rib in rib 1x1 4 mm; hold

### a scanned 1 is one
Cast on 20 sts.
  > →20
Row 1: * K l, p l; rep from * to end.
  > 20 Piece/body 1 RS *k1, p1; repeat from * to end
Row 2: K I, p to last st, k l.
  > 20 Piece/body 2 WS k1, purl to last st, k1
  > = Piece, other, 1 to make, lines 2 3
  > =   body from {castOn 20}, RS: 1 rib in rib 1x1 4 mm; 1 stocking 4 mm; hold
`),
  )('$title', expectAnnotated);
});
