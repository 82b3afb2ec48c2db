import { describe, it } from 'vitest';
import { table } from '../table.ts';
import { expectReading } from './said.ts';

/** How patterns are usually worded: common practice, no published source. */
describe('needle, in all its wordings,', () => {
  it.each(
    table(`
      {Change to|Changing to|Switch to|Go to|Change back to|With|Using|Use|On} 4 mm needles → needle: mm 4
      Change to {larger|smaller|No. 8|US 6} needles → needle
      Change to {4 mm (US 6) needles|size 6 (4 mm) needles|needles (US 6 - 4 mm)|needles (4 mm)|needles ( 4 mm), |needles (4 mm) and|needles (4 mm):} → needle: mm 4
      Change to 4 mm needles{,|:} k 1 row → needle: mm 4 | @25 rows: n 1, items 'k to {left 'what follows'}'
      Change to 4 mm needles and k 1 row → needle: mm 4 | @28 rows: n 1, items 'k to {left 'what follows'}'
      Change to 4 mm needles, and k 1 row → needle: mm 4 | @29 rows: n 1, items 'k to {left 'what follows'}'
      With 4 mm needles, cast on 92 sts → needle: mm 4 | @20 cast on: stitches 92
      With 4 mm pins, cast on 92 sts → needle: mm 4 | @17 cast on: stitches 92
      With 4 mm ns, cast on 92 sts → needle: mm 4 | @15 cast on: stitches 92
      Change to needles (size [US] 6, 4 mm) k 1 row → needle: mm 4 | @39 rows: n 1, items 'k to {left 'what follows'}'
      Change to 4 mm and 5 mm needles → needle: mm 5
      Change to 4 mm needles k 1 row → needle: mm 4 | @24 rows: n 1, items 'k to {left 'what follows'}'
      Change to needles (4 mm) k 1 row → needle: mm 4 | @26 rows: n 1, items 'k to {left 'what follows'}'
      With one two three four five six seven eight nine ten eleven 12 needles k 1 row → needle | @73 rows: n 1, items 'k to {left 'what follows'}'
      With 4 mm needles (size 6 x) cast on 8 sts → needle: mm 4 | @30 cast on: stitches 8
      With 4 mm needles (size 6 x) k 1 row → needle: mm 4 | @30 rows: n 1, items 'k to {left 'what follows'}'
      With A and 4 mm needles, cast on 92 sts → needle: mm 4, yarn A | @26 cast on: stitches 92
    `),
  )('is read: $line', expectReading);

  it.each(
    table(`
      Using yarn, white, red, blue, green, black, old, new and one pair of needles → note: about yarn | ✗ stitch or repeat expected @13
      With a {cast|pick|bind} 4 mm needle → note: about yarn | ✗ stitch or repeat expected @8
      With a work 4 mm needle → note: about yarn | ✗ stitch or repeat expected @15
      With a rejoin 4 mm needle → ✗ stitch or repeat expected @6
      With co 4 mm needle → ✗ stitch or repeat expected @11
      With 4 mm until needle → ✗ stitch or repeat expected @6
      With 4 mm facing needle → ✗ stitch or repeat expected @6
      With yarn → ✗ stitch expected @10
      Change colour → ✗ stitch or repeat expected @1
      Needle 4 mm → ✗ stitch or repeat expected @1
      With k p needles → note: about facing | ✗ stitch or repeat expected @10
      With p 1 needle → note: about facing | ✗ stitch or repeat expected @8
      With one two three four five six seven eight nine ten eleven 12 13 14 needles k 1 row → ✗ stitch or repeat expected @6
    `),
  )('is not read for more than it says: $line', expectReading);
});
