import { describe, it } from 'vitest';
import { table } from '../table.ts';
import { expectReading } from './said.ts';

/** How patterns are usually worded: common practice, no published source. */
describe('a cast-on behind other words, in all its wordings,', () => {
  it.each(
    table(`
      Starting at lower edge, cast on 80 sts → @25 cast on: stitches 80
      Beginning at lower edge with 4 mm needles and yarn A, cast on 80 sts → @25 needle: mm 4 | @43 yarn: name A | @55 cast on: stitches 80
      Using a strand of each colour held together, loosely cast on 80 sts → yarn: name 'a strand of each colour held together', held | @46 cast on: stitches 80
      BACK—Using larger needles, CO 80 sts → heading: title {words back, pattern back, divides false}, sideOnly false, talk false, places [], piece {name back, makes 1} | @6 needle | @28 cast on: stitches 80
      LEFT FRONT With 4 mm needles, cast on 40 sts → heading: title {words 'left front', pattern 'left front', divides false, half left}, sideOnly false, talk false, places [], piece {name 'left front', makes 1, half left} | @12 needle: mm 4 | @31 cast on: stitches 40
      SLEEVES-Commence at top by casting on 80 stitches → heading: title {words sleeves, pattern sleeves, divides false}, sideOnly false, talk false, places [], piece {name sleeves, makes 2} | @28 cast on: stitches 80
    `),
  )('is read: $line', expectReading);

  it.each(
    table(`
      At each end cast on 5 more sts → groups: work co, edge both, groups [{stitches 5, rows 2, every 1}]
      K 6, cast on 4 sts, k to end → row: items 'k ×6, co ×4, k to {left 0}'
      On next row cast on 5 sts at beg of row → ✗ stitch or repeat expected @1
      Work Front Neck as before → ✗ stitch or repeat expected @1
    `),
  )('is not read for more than it says: $line', expectReading);
});
