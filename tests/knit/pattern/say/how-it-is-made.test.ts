import { describe, it } from 'vitest';
import { table } from '../table.ts';
import { expectReading } from './said.ts';

/** How patterns are usually worded: common practice, no published source. */
describe('a sentence that says how something is made', () => {
  it.each(
    table(`
      To dec, k2tog → note: about aside
      {To dec:|To inc 1 st:|To decrease a st,|To increase -|To dec =} k2tog → note: about aside
      {To dec at beg of row, k2tog|To dec at the end, k2tog|To dec at the right edge, k2tog|To dec at right edge, k2tog} → note: about aside
      {All decreases|The increases|These decs|All shaping} {are made|are worked|is done|should be made|are always to be worked|is formed} 2 sts in from edge → note: about aside
      {Increase by working twice in one stitch|Increase by knitting 2 tog|Increase by making 1|Increase by k 2 tog|Dec by working twice in one stitch|Dec by knitting 2 tog|Dec by making 1|Dec by k 2 tog|Inc 1 st by working twice in one stitch|Inc 1 st by knitting 2 tog|Inc 1 st by making 1|Inc 1 st by k 2 tog|Decreasing a st by working twice in one stitch|Decreasing a st by knitting 2 tog|Decreasing a st by making 1|Decreasing a st by k 2 tog} → note: about aside
      {Work|Make} {decs|all the decreases} {as|thus|by} k2tog at beg → note: about aside
      {Use|Using} {the cable cast-on method|a long tail cast on|the stretchy bind off} → note: about aside
      Cast on loosely using two needles → note: about aside
      Cast-on {firmly by|with} the long tail → note: about aside
      {Work|Knit} {the first row|first row} {into the back|in back|in the backs} of the {sts|loop} → note: about aside
      {Work|K} {into the back|in backs} of the sts {on|in|of} the first row → note: about aside
      To make {a|each|the} buttonhole{,|:} bind off 2 sts → note: about hole
      To {work|form} buttonholes: bind off 2 sts → note: about hole
      Buttonholes are {worked as follows|made as foll}: bind off 2 sts → note: about hole
    `),
  )('is told, and works nothing: $line', expectReading);

  it.each(
    table(`
      To dec, k2tog every row → ✗ stitch or repeat expected @15
      To dec, k2tog on next row → ✗ stitch or repeat expected @15
      To dec 1 st at neck → ✗ stitch or repeat expected @13
      All decreases are made → ✗ stitch or repeat expected @1
      All decreases are made every other row → ✗ stitch or repeat expected @1
      All decreases are made once → ✗ stitch or repeat expected @1
      Increase by working to end → row: items 'inc, patt to {left 0}'
      Increase 1 st by 4 → ✗ stitch or repeat expected @18
      Use a knife → ✗ stitch or repeat expected @1
      Use the red yarn → ✗ stitch or repeat expected @1
      Using the cable cast-on method, cast on 20 sts → @33 cast on: stitches 20
      Cast on loosely using two needles, then k 1 row → ✗ stitch or repeat expected @1
      Cast on loosely → ✗ stitch or repeat expected @1
      Work the first row in A → ✗ stitch or repeat expected @1
      Knit into the back of the sts → row: items 'k tbl'
      Work the first row into the back of the sts and k 2 → ✗ stitch or repeat expected @1
    `),
  )('and is an order where it says when: $line', expectReading);
});
