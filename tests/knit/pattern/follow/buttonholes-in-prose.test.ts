import { describe, it } from 'vitest';
import { annotatedIn, expectAnnotated } from './annotated.ts';

/** Wordings of leaflets: common practice, no published source. */
describe('buttonholes said in prose,', () => {
  it.each(
    annotatedIn(`
### buttonholes in prose
RIGHT FRONT
  > heading
Tension: 20 sts and 28 rows to 10 cm.
  > talk
Cast on 30 sts.
  > →30
Work in st st until piece measures 6 cm, making a buttonhole, 3 sts in from front edge, after the first 1 cm and every 2 cm thereafter until 2 buttonholes in all are made. (To make a buttonhole, on one row bind off 2 sts; on next row cast on 2 sts over those bound off.)
  > 30 long: 16 rows Right front/body 1 RS knit · WS purl · RS knit 'Work in st st until piece measures 6 cm, making a buttonhole, 3 sts in from front edge, after the first 1 cm and every 2 cm thereafter until 2 buttonholes in all are made' · [WS purl · RS knit] ×2 · WS purl · RS knit 'Work in st st until piece measures 6 cm, making a buttonhole, 3 sts in from front edge, after the first 1 cm and every 2 cm thereafter until 2 buttonholes in all are made' · [WS purl · RS knit] ×3 · WS purl
On next row and every 4th row thereafter make a buttonhole until 2 buttonholes have been made, and work 6 rows in st st.
  > 30 Right front/body 17 RS knit 'On next row and every 4th row thereafter make a buttonhole until 2 buttonholes have been made, and work 6 rows in st st' · WS purl · RS knit · WS purl · RS knit 'On next row and every 4th row thereafter make a buttonhole until 2 buttonholes have been made, and work 6 rows in st st' · WS purl
Next row (RS): Make buttonhole, k 2, yo, k2tog, k to end.
  > 30 Right front/body 23 RS k2, yo, k2tog, knit to end
P 1 row.
  > 30 Right front/body 24 WS purl
Repeat buttonhole row once more.
  > 30 Right front/body 25 RS k2, yo, k2tog, knit to end
Work buttonhole over next 2 rows as follows: K 3, cast off 2, k to end.
  > 30→28 Right front/body 26 WS k3, bind off 2 sts, knit to end (28)
Next row: P to last 3 sts, cast on 2, p 3.
  > 28→30 Right front/body 27 RS purl to last 3 sts, cast on 2 sts, p3 (30)
  > = gauge stitches 20, rows 28
  > = Right front, right front, 1 to make, lines 4 5 6 7 8 9 10
  > =   body from {castOn 30}, RS: 16 stocking 4 mm (own words 3 9, length {id 'right front/1', open false, mm 60, from start}); 9 stocking 4 mm (own words 1 5); 2 reverse stocking 4 mm; hold

### without a gauge they are measured as the stretch is
RIGHT FRONT
  > heading
Cast on 30 sts.
  > →30
Work in st st until piece measures 20 cm, making buttonholes every 4 cm.
  > 30 as long as she likes: 2 rows Right front/body 1 RS knit 'Work in st st until piece measures 20 cm, making buttonholes every 4 cm' · WS purl 'Work in st st until piece measures 20 cm, making buttonholes every 4 cm'
  > = Right front, right front, 1 to make, lines 3
  > =   body from {castOn 30}, RS: 2 stocking 4 mm (own words 1 2, length {id 'right front/1', open, mm 200, from start}); hold

### and in each row that they are said of where those are counted
RIGHT FRONT
  > heading
Cast on 30 sts.
  > →30
Knit 10 rows, making buttonholes every 4 cm.
  > 30 Right front/body 1 RS knit 'Knit 10 rows, making buttonholes every 4 cm' · [WS knit 'Knit 10 rows, making buttonholes every 4 cm' · RS knit 'Knit 10 rows, making buttonholes every 4 cm'] ×4 · WS knit 'Knit 10 rows, making buttonholes every 4 cm'
  > = Right front, right front, 1 to make, lines 3
  > =   body from {castOn 30}, RS: 10 garter 4 mm (own words 1 2 3 4 5 6 7 8 9 10); hold

### in which row is told where nobody says it
RIGHT FRONT
  > heading
Cast on 30 sts.
  > →30
Work buttonholes opposite markers.
  > 30
  > ✗ place not known @3:1
Knit 10 rows.
  > 30 Right front/body 1 RS knit · [WS knit · RS knit] ×4 · WS knit
  > = Right front, right front, 1 to make, lines 4
  > =   body from {castOn 30}, RS: 10 garter 4 mm; hold
    `),
  )('$title', expectAnnotated);
});
