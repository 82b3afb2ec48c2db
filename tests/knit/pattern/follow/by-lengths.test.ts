import { describe, it } from 'vitest';
import { annotatedIn, expectAnnotated } from './annotated.ts';

/** Old leaflets give no row gauge: common practice, no published source. Counts reckoned by hand; 25.4 rows to 10 cm are 6.45 to an inch. */
describe('a rhythm said in lengths,', () => {
  it.each(
    annotatedIn(`
### without a row gauge each is a stretch that she measures, and then one row of shaping
FRONT
  > heading
Cast on 40 sts. Work in st st for 2 inches.
  > 40 as long as she likes: 2 rows Front/body 1 RS knit · WS purl
Dec 1 st at each end every 2 inches 3 times. 34 sts.
  > 40→34 says 34 as long as she likes: 2 rows as long as she likes: 3 rows as long as she likes: 3 rows Front/body 3 RS knit · WS purl · RS dec, knit to last 2 sts, dec (38) · WS purl · RS knit · WS purl · RS dec, knit to last 2 sts, dec (36) · WS purl · RS knit · WS purl · RS dec, knit to last 2 sts, dec (34)
Inc 1 st at each end of next row; repeat incs every 1/2 inch 4 times; 44 sts.
  > 34→44 says 44 as long as she likes: 2 rows as long as she likes: 3 rows as long as she likes: 3 rows as long as she likes: 3 rows Front/body 14 WS inc, purl to last st, inc (36) · RS knit · WS purl · RS inc, knit to last st, inc (38) · WS purl · RS knit · WS purl · RS inc, knit to last st, inc (40) · WS purl · RS knit · WS purl · RS inc, knit to last st, inc (42) · WS purl · RS knit · WS purl · RS inc, knit to last st, inc (44)
Inc 1 st each side every inch until there are 48 sts.
  > 44→48 as long as she likes: 3 rows as long as she likes: 3 rows Front/body 30 WS purl · RS knit · WS purl · RS inc, knit to last st, inc (46) · WS purl · RS knit · WS purl · RS inc, knit to last st, inc (48)
K 1 row.
  > 48 Front/body 38 WS knit
Dec row: P5, p2tog, p to last 7 sts, p2tog, p5. Rep dec row every 2 inches twice more. 42 sts.
  > 48→42 says 42 as long as she likes: 3 rows as long as she likes: 3 rows Front/body 39 RS p5, p2tog, purl to last 7 sts, p2tog, p5 (46) · WS purl · RS knit · WS purl · RS p5, p2tog, purl to last 7 sts, p2tog, p5 (44) · WS purl · RS knit · WS purl · RS p5, p2tog, purl to last 7 sts, p2tog, p5 (42)
  > = Front, front, 1 to make, lines 2 3 4 5 6 7
  > =   body from {castOn 40}, RS: 2 stocking 4 mm (length {id 'front/1', open, mm 50.8, from here}); 2 stocking 4 mm (length {id 'front/2', open, mm 50.8, from here}); 1 stocking 4 mm; 3 stocking 4 mm (length {id 'front/3', open, mm 50.8, from here}); 1 stocking 4 mm; 3 stocking 4 mm (length {id 'front/4', open, mm 50.8, from here}); 2 stocking 4 mm; 2 stocking 4 mm (length {id 'front/5', open, mm 12.7, from here}); 1 stocking 4 mm; 3 stocking 4 mm (length {id 'front/6', open, mm 12.7, from here}); 1 stocking 4 mm; 3 stocking 4 mm (length {id 'front/7', open, mm 12.7, from here}); 1 stocking 4 mm; 3 stocking 4 mm (length {id 'front/8', open, mm 12.7, from here}); 1 stocking 4 mm; 3 stocking 4 mm (length {id 'front/9', open, mm 25.4, from here}); 1 stocking 4 mm; 3 stocking 4 mm (length {id 'front/10', open, mm 25.4, from here}); 1 stocking 4 mm; 2 reverse stocking 4 mm; 3 stocking 4 mm (length {id 'front/11', open, mm 50.8, from here}); 1 stocking 4 mm; 3 stocking 4 mm (length {id 'front/12', open, mm 50.8, from here}); 1 stocking 4 mm; hold

### an end that only rows would tell, and shaping beside other rows, are told
FRONT
  > heading
Cast on 40 sts. Work in st st for 2 inches.
  > 40 as long as she likes: 2 rows Front/body 1 RS knit · WS purl
Dec 1 st each side every inch until work measures 10 inches.
  > 40
  > ✗ place not known @3:1
Work in st st until piece measures 12 inches, at the same time dec 1 st at each end every 2 inches 3 times. 34 sts.
  > 40 says 34 as long as she likes: 2 rows Front/body 3 RS knit · WS purl
  > ✗ place not known @4:64
  > ✗ count contradicts @4:109 statedStitches 34, foundStitches 40
  > = Front, front, 1 to make, lines 2 4
  > =   body from {castOn 40}, RS: 2 stocking 4 mm (length {id 'front/1', open, mm 50.8, from here}); 2 stocking 4 mm (length {id 'front/2', open, mm 304.79999999999995, from start}); hold

### with a row gauge it is rows {"gauge":{"stitches":20,"rows":25.4,"stitchesMm":100,"rowsMm":100}}
FRONT
  > heading
Cast on 40 sts. Work in st st for 2 inches.
  > 40 long: 12 rows Front/body 1 RS knit · [WS purl · RS knit] ×5 · WS purl
Inc 1 st at each end of next row; repeat incs every 1 inch 4 times; 50 sts.
  > 40→50 says 50 Front/body 13 RS inc, knit to last st, inc (42) · [WS purl · RS knit] ×2 · WS purl · RS inc, knit to last st, inc (44) · [WS purl · RS knit] ×2 · WS purl · RS inc, knit to last st, inc (46) · [WS purl · RS knit] ×2 · WS purl · RS inc, knit to last st, inc (48) · [WS purl · RS knit] ×2 · WS purl · RS inc, knit to last st, inc (50)
Dec 1 st at each end of next row. Repeat this dec every 1 inch 2 times. 44 sts.
  > 50→44 says 44 Front/body 38 WS dec, purl to last 2 sts, dec (48) · [RS knit · WS purl] ×2 · RS dec, knit to last 2 sts, dec (46) · [WS purl · RS knit] ×2 · WS purl · RS dec, knit to last 2 sts, dec (44)
  > = gauge stitches 20, rows 25.4, stitchesMm 100, rowsMm 100
  > = Front, front, 1 to make, lines 2 3 4
  > =   body from {castOn 40}, RS: 12 stocking 4 mm (length {id 'front/1', open false, mm 50.8, from here}); 37 stocking 4 mm; hold
    `),
  )('$title', expectAnnotated);
});
