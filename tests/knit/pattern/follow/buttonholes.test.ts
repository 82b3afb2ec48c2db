import { describe, it } from 'vitest';
import { annotatedIn, expectAnnotated } from './annotated.ts';

/** Wordings of magazines, leaflets and yarn companies since 1940, put into other words; counts reckoned by hand. */
describe('buttonholes at intervals, followed row by row,', () => {
  it.each(
    annotatedIn(`
### an eyelet that was spelled, every so many rows beside what is worked
Right front
  > heading
Cast on 30 sts.
  > →30
K 6 rows.
  > 30 Right front/body 1 RS knit · [WS knit · RS knit] ×2 · WS knit
Buttonhole row (RS): K2, yo, k2tog, k to end.
  > 30 Right front/body 7 RS k2, yo, k2tog, knit to end
K 5 rows.
  > 30 Right front/body 8 WS knit · [RS knit · WS knit] ×2
Work 20 rows in st st, making a buttonhole every 8th row.
  > 30 Right front/body 13 RS knit · WS purl · RS k2, yo, k2tog, knit to end · [WS purl · RS knit] ×3 · WS purl · RS k2, yo, k2tog, knit to end · [WS purl · RS knit] ×3 · WS purl · RS k2, yo, k2tog, knit to end · WS purl
Bind off.
  > 30→0 Right front/body 33 RS bind off all sts in pattern (0)
  > = Right front, right front, 1 to make, lines 3 4 5 6 7
  > =   body from {castOn 30}, RS: 6 garter 4 mm; 6 garter 4 mm; 20 stocking 4 mm; bind off

### a slot of two rows again and again, and none behind the neck
Right front
  > heading
Cast on 30 sts.
  > →30
K 8 rows.
  > 30 Right front/body 1 RS knit · [WS knit · RS knit] ×3 · WS knit
On next row make a buttonhole: k2, bind off 2 sts, k to end.
  > 30→28 Right front/body 9 RS k2, bind off 2 sts, knit to end (28)
On next row cast on 2 sts over those bound off.
  > 28→30 Right front/body 10 WS knit to last 2 sts, cast on 2 sts, k2 (30)
Repeat buttonholes every 12 rows.
  > 30
Work 26 rows in garter st.
  > 30 Right front/body 11 RS knit · [WS knit · RS knit] ×4 · WS knit · RS k2, bind off 2 sts, knit to end (28) · WS knit to last 2 sts, cast on 2 sts, k2 (30) · [RS knit · WS knit] ×5 · RS k2, bind off 2 sts, knit to end (28) · WS knit to last 2 sts, cast on 2 sts, k2 (30) · RS knit · WS knit
Bind off 6 sts at neck edge, k to end.
  > 30→24 Right front/body 37 RS bind off 6 sts, knit to end (24)
Knit 14 rows.
  > 24 Right front/body 38 WS knit · [RS knit · WS knit] ×6 · RS knit
  > = Right front, right front, 1 to make, lines 3 4 5 7 8 9
  > =   body from {castOn 30}, RS: 8 garter 4 mm; 43 garter 4 mm; hold

### one that nobody spelled is said on its row, in the rows that are named
Cast on 20 sts.
  > →20
Work 30 rows in garter st, working buttonholes on rows 5, 15 and 25.
  > 20 Piece/body 1 RS knit · WS knit · RS knit · WS knit · RS knit 'Work 30 rows in garter st, working buttonholes on rows 5, 15 and 25' · [WS knit · RS knit] ×4 · WS knit · RS knit 'Work 30 rows in garter st, working buttonholes on rows 5, 15 and 25' · [WS knit · RS knit] ×4 · WS knit · RS knit 'Work 30 rows in garter st, working buttonholes on rows 5, 15 and 25' · [WS knit · RS knit] ×2 · WS knit
Bind off.
  > 20→0 Piece/body 31 RS bind off all sts in pattern (0)
  > = Piece, other, 1 to make, lines 2 3
  > =   body from {castOn 20}, RS: 30 garter 4 mm (own words 5 15 25); bind off

### beside a row of its own, at the same time, and on the rows that are counted from here
Cast on 20 sts.
  > →20
Work 16 rows in garter st, at the same time make a buttonhole on 5th and every foll 6th row.
  > 20 Piece/body 1 RS knit · WS knit · RS knit · WS knit · RS knit 'Work 16 rows in garter st, at the same time make a buttonhole on 5th and every foll 6th row' · [WS knit · RS knit] ×2 · WS knit · RS knit 'Work 16 rows in garter st, at the same time make a buttonhole on 5th and every foll 6th row' · [WS knit · RS knit] ×2 · WS knit
  > = Piece, other, 1 to make, lines 2
  > =   body from {castOn 20}, RS: 16 garter 4 mm (own words 5 11); hold

### the length stands behind them
Cast on 20 sts.
  > →20
Work in garter st, making a buttonhole every 10 rows, for 24 rows.
  > 20 Piece/body 1 RS knit · [WS knit · RS knit] ×3 · WS knit · RS knit 'Work in garter st, making a buttonhole every 10 rows, for 24 rows' · [WS knit · RS knit] ×4 · WS knit · RS knit 'Work in garter st, making a buttonhole every 10 rows, for 24 rows' · [WS knit · RS knit] ×2 · WS knit
  > = Piece, other, 1 to make, lines 2
  > =   body from {castOn 20}, RS: 24 garter 4 mm (own words 9 19); hold

### until so many are made
Cast on 20 sts.
  > →20
Work a buttonhole on the 3rd and every foll 4th row until 3 in all are made.
  > 20
Work 14 rows in garter st.
  > 20 Piece/body 1 RS knit · WS knit · RS knit 'Work a buttonhole on the 3rd and every foll 4th row until 3 in all are made' · WS knit · RS knit · WS knit · RS knit 'Work a buttonhole on the 3rd and every foll 4th row until 3 in all are made' · WS knit · RS knit · WS knit · RS knit 'Work a buttonhole on the 3rd and every foll 4th row until 3 in all are made' · WS knit · RS knit · WS knit
  > = Piece, other, 1 to make, lines 3
  > =   body from {castOn 20}, RS: 14 garter 4 mm (own words 3 7 11); hold

### the row in brackets has a name
Cast on 20 sts.
  > →20
K 4 rows.
  > 20 Piece/body 1 RS knit · WS knit · RS knit · WS knit
Next row (buttonhole row): k2, yo, k2tog, k to end.
  > 20 Piece/body 5 RS k2, yo, k2tog, knit to end
Rep buttonhole row every 6th row twice more.
  > 20 Piece/body 6 WS knit · [RS knit · WS knit] ×2 · RS k2, yo, k2tog, knit to end · [WS knit · RS knit] ×2 · WS knit · RS k2, yo, k2tog, knit to end
  > = Piece, other, 1 to make, lines 2 3 4
  > =   body from {castOn 20}, RS: 4 garter 4 mm; 13 garter 4 mm; hold

### the other front has none, and is turned round
Right front
  > heading
Cast on 12 sts.
  > →12
K 4 rows.
  > 12 Right front/body 1 RS knit · WS knit · RS knit · WS knit
Buttonhole row (RS): K2, yo, k2tog, k to end.
  > 12 Right front/body 5 RS k2, yo, k2tog, knit to end
K 3 rows.
  > 12 Right front/body 6 WS knit · RS knit · WS knit
Bind off 4 sts at beg of next row. 8 sts.
  > 12→8 says 8 Right front/body 9 RS bind off 4 sts, knit to end (8)
Bind off.
  > 8→0 Right front/body 10 WS bind off all sts in pattern (0)
Left front. Work exactly as for right front, omitting buttonholes and reversing shapings.
  > →0 Left front/body 1 RS knit · [WS knit · RS knit] ×4 · WS bind off 4 sts, knit to end (8) · RS bind off all sts in pattern (0)
  > = Right front, right front, 1 to make, lines 3 4 5 6 7
  > =   body from {castOn 12}, RS: 4 garter 4 mm; 5 garter 4 mm; bind off
  > = Left front, left front, 1 to make, lines 8
  > =   body from {castOn 12}, RS: 4 garter 4 mm; 6 garter 4 mm; bind off

### the other front has some
Left front
  > heading
Cast on 12 sts.
  > →12
Work 12 rows in garter st.
  > 12 Left front/body 1 RS knit · [WS knit · RS knit] ×5 · WS knit
Bind off.
  > 12→0 Left front/body 13 RS bind off all sts in pattern (0)
Right front
  > heading
Work as for left front, making buttonholes on the 3rd and every foll 4th row.
  > →0 Right front/body 1 RS knit · WS knit · RS knit 'Work as for left front, making buttonholes on the 3rd and every foll 4th row' · WS knit · RS knit · WS knit · RS knit 'Work as for left front, making buttonholes on the 3rd and every foll 4th row' · WS knit · RS knit · WS knit · RS knit 'Work as for left front, making buttonholes on the 3rd and every foll 4th row' · WS knit · RS bind off all sts in pattern (0)
  > = Left front, left front, 1 to make, lines 3 4
  > =   body from {castOn 12}, RS: 12 garter 4 mm; bind off
  > = Right front, right front, 1 to make, lines 6
  > =   body from {castOn 12}, RS: 12 garter 4 mm (own words 3 7 11); bind off

### nobody says in which rows they lie
Cast on 20 sts.
  > →20
Work 8 rows in garter st, working 3 buttonholes evenly spaced.
  > 20 Piece/body 1 RS knit · [WS knit · RS knit] ×3 · WS knit
  > ✗ place not known @2:27
Make 5 buttonholes, the first 2 cm from lower edge, the rest spaced evenly.
  > 20
  > ✗ place not known @3:1
Following buttonholes are made 5 cm apart.
  > 20
K 2 rows.
  > 20 Piece/body 9 RS knit 'Following buttonholes are made 5 cm apart' · WS knit 'Following buttonholes are made 5 cm apart'
  > = Piece, other, 1 to make, lines 2 5
  > =   body from {castOn 20}, RS: 10 garter 4 mm (own words 9 10); hold

### more of them than there are rows for
Cast on 20 sts.
  > →20
Work 20 rows in garter st, working 4 buttonholes every 8 rows.
  > 20 Piece/body 1 RS knit · [WS knit · RS knit] ×2 · WS knit · RS knit 'Work 20 rows in garter st, working 4 buttonholes every 8 rows' · [WS knit · RS knit] ×3 · WS knit · RS knit 'Work 20 rows in garter st, working 4 buttonholes every 8 rows' · [WS knit · RS knit] ×2 · WS knit
  > ✗ place not known @2
  > = Piece, other, 1 to make, lines 2
  > =   body from {castOn 20}, RS: 20 garter 4 mm (own words 7 15); hold

### rows that may be buttonholes, and nobody calls them so
Right front
  > heading
Cast on 12 sts.
  > →12
K 4 rows.
  > 12 Right front/body 1 RS knit · WS knit · RS knit · WS knit
Next row: k2, yo, k2tog, k to end.
  > 12 Right front/body 5 RS k2, yo, k2tog, knit to end
K 3 rows.
  > 12 Right front/body 6 WS knit · RS knit · WS knit
Bind off.
  > 12→0 Right front/body 9 RS bind off all sts in pattern (0)
Left front
  > heading
Work as for right front, omitting buttonholes.
  > →0 Left front/body 1 RS knit · WS knit · RS knit · WS knit · RS k2, yo, k2tog, knit to end · WS knit · RS knit · WS knit · RS bind off all sts in pattern (0)
  > ✗ row not known @8:1 rowName buttonhole
  > = Right front, right front, 1 to make, lines 3 4 5 6
  > =   body from {castOn 12}, RS: 4 garter 4 mm; 4 garter 4 mm; bind off
  > = Left front, left front, 1 to make, lines 8
  > =   body from {castOn 12}, RS: 4 garter 4 mm; 4 garter 4 mm; bind off

### what is ordered behind them is worked
Right front
  > heading
Cast on 20 sts.
  > →20
Work in st st making 3 buttonholes evenly spaced, and dec 1 st at neck edge every 2nd row twice.
  > 20→18 Right front/body 1 RS dec, knit to end (19) · WS purl · RS dec, knit to end (18)
  > ✗ place not known @3:15
  > = Right front, right front, 1 to make, lines 3
  > =   body from {castOn 20}, RS: 3 stocking 4 mm; hold
    `),
  )('comes out as $title', expectAnnotated);
});
