import { describe, expect, it } from 'vitest';
import { kindsIn, saidIn } from '../say/said.ts';
import { annotatedIn, expectAnnotated } from './annotated.ts';

/** How a neck is parted in the prose of old leaflets: common practice, no published source. Counts are reckoned by hand. */
describe('stitches that are worked on alone', () => {
  it.each(
    annotatedIn(`
### what is left of the wraps is taken up where the neck is bound off
Cast on 40 sts. Work 4 rows in st st.
  > 40 Piece/body 1 RS knit · WS purl · RS knit · WS purl
Next row: P12, BO next 16 sts, p to end, working remaining wraps together with wrapped sts.
  > 40→24 Piece/body 5 RS p12, bind off 16 sts, purl to end, picking up each wrap (24)
  > = Piece, other, 1 to make, lines 1 2
  > =   body from {castOn 40}, RS: 5 stocking 4 mm; split
  > =   left side from {part body, stitches 12, edge left}, WS: hold
  > =   resting 1 from {part body, stitches 12, edge right}, WS: hold

### the others are worked across, and nothing else
Cast on 60 sts. Work 4 rows in st st.
  > 60 Piece/body 1 RS knit · WS purl · RS knit · WS purl
Work across 20 sts and slip them to a holder to be worked later.
  > 60 Piece/body 5 RS knit
Work across rem 40 sts only and dec 1 st at neck edge every 2nd row until 36 sts are left over.
  > 60→36 Piece/left side 1 WS purl · RS dec, knit to end (39) · WS purl · RS dec, knit to end (38) · WS purl · RS dec, knit to end (37) · WS purl · RS dec, knit to end (36)
  > = Piece, other, 1 to make, lines 1 2 3
  > =   body from {castOn 60}, RS: 5 stocking 4 mm; split
  > =   left side from {part body, stitches 40, edge left}, WS: 8 stocking 4 mm; hold
  > =   resting 1 from {part body, stitches 20, edge right}, WS: hold

### a shoulder is begun on the others
Cast on 60 sts. Work 4 rows in st st.
  > 60 Piece/body 1 RS knit · WS purl · RS knit · WS purl
Work over 20 sts. Place on st-holder. Bind off 20 sts for back of neck. On remaining sts start shoulder. K 12 rows.
  > 60→20 Piece/body 5 RS knit to last 40 sts, bind off 20 sts, k20 (40) · Piece/left side 1 WS knit · [RS knit · WS knit] ×5 · RS knit
  > = Piece, other, 1 to make, lines 1 2
  > =   body from {castOn 60}, RS: 5 stocking 4 mm; split
  > =   left side from {part body, stitches 20, edge left}, WS: 12 garter 4 mm; hold
  > =   resting 1 from {part body, stitches 20, edge right}, WS: hold
`),
  )('%s', expectAnnotated);

  it('are a row where nobody says that they are alone, or that another part begins', () => {
    expect(kindsIn('Work across rem 40 sts')).toEqual(['row']);
    expect(kindsIn('Work across rem 40 sts only')).toEqual(['work on']);
    expect(saidIn('On rem sts start shoulder')).toEqual([{ is: 'work on', which: 'these' }]);
    expect(kindsIn('On rem sts k 12')).not.toContain('work on');
  });
});
