import { describe, it } from 'vitest';
import { table } from '../table.ts';
import { expectReading } from './said.ts';

/** How things are made, told in words; common practice, no published source. */
describe('how something is made', () => {
  it.each(
    table(`
      {To dec,|To decrease:} k2tog at beg of row and ssk at end → note: about aside
      To decrease: k2, k2tog, k to last 4 sts, k2tog tbl, k2 → note: about aside
      To {inc,|inc 1 st:|increase –} k into front and back of st → note: about aside
      {All decs|All decreases|The decs|Decreases} are {made|worked} {2 sts in from edge|inside the edge st|as follows: k2, k2tog, work to last 4 sts, ssk, k2} → note: about aside
      {Increase|Inc 1 st} by {knitting into front and back of the stitch|working twice in one stitch} → note: about aside
      Dec by working k2tog 2 sts in from each edge → note: about aside
      Work {all decs|decs} as k2tog at beg and ssk at end of row → note: about aside
      {Use|Using} the cable cast-on method → note: about aside
      Cast on {using the thumb method|loosely using two needles|by the thumb method} → note: about aside
      {Work the first row|Knit first row} into {the back of sts|backs of the sts|back of sts} → note: about aside
      {To make a buttonhole:|To work a buttonhole,|Buttonholes are worked as follows:} work 3 sts, cast off 2 sts, work to end; next row cast on 2 sts over those cast off → note: about hole
      Cast off {loosely using a larger needle|loosely with larger needle|using a sewn bind-off|using the stretchy bind-off method} → bind off
      Bind off all sts using stretchy bind-off → bind off: rest
    `),
  )('is worked nowhere: $line', expectReading);

  it.each(
    table(`
      To dec, k2tog at each end of every row 5 times → ✗ stitch or repeat expected @15
      Inc by knitting into front and back of every 5th st → ✗ stitch or repeat expected @1
      Increases are made at each end of every 4th row → ✗ stitch or repeat expected @15
      Cast on loosely 40 sts → cast on: stitches 40
      Cast on 40 sts using the thumb method → cast on: stitches 40
      Cast off using larger needle 5 sts at beg of next 2 rows → ✗ stitch or repeat expected @10
    `),
  )('is not what says rows: $line', expectReading);
});
