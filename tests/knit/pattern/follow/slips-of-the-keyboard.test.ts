import { describe, it } from 'vitest';
import { annotatedIn, expectAnnotated } from './annotated.ts';

/** What a typed page has: common practice, no published source. */
describe('slips of the keyboard,', () => {
  it.each(
    annotatedIn(`
### slips of the keyboard
BACK
  > heading
Cast on 40 sts.
  > →40
Wokr 4 rows in garter stitch.
  > 40 Back/body 1 RS knit · WS knit · RS knit · WS knit
Increace 1 st at each end of next row.
  > 40→42 Back/body 5 RS inc, knit to last st, inc (42)
Dec 1 st at each end of every row unitl 36 sts remain.
  > 42→36 Back/body 6 WS dec, knit to last 2 sts, dec (40) · RS dec, knit to last 2 sts, dec (38) · WS dec, knit to last 2 sts, dec (36)
  > = Back, back, 1 to make, lines 3 4 5
  > =   body from {castOn 40}, RS: 8 garter 4 mm; hold

### what is near two words, or none, is told
BACK
  > heading
Cast on 40 sts.
  > →40
Knit 4 toes.
  > own words 40 asks the count Back/body 1 RS work in pattern 'Knit 4 toes'
  > ✗ stitch or repeat expected @3:8 column 8
Dec 1 st at each emd of next 2 rwos.
  > own words 40 asks the count Back/body 2 WS work in pattern 'Dec 1 st at each emd of next 2 rwos'
  > ✗ stitch or repeat expected @4:10 column 10
  > = Back, back, 1 to make, lines 3 4
  > =   body from {castOn 40}, RS: 1 stocking 4 mm (own words 1); 1 pattern in stocking 4 mm (own words 1); hold

### a name is not put right
MIAN PART
  > talk
Cast on 40 sts.
  > →40
Knit 2 rows.
  > 40 Mian part/body 1 RS knit · WS knit
  > = Mian part, other, 1 to make, lines 3
  > =   body from {castOn 40}, RS: 2 stocking 4 mm; hold
    `),
  )('$title', expectAnnotated);
});
