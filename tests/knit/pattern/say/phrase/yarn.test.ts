import { describe, it } from 'vitest';
import { table } from '../../table.ts';
import { expectReading } from '../said.ts';

/** How patterns are usually worded: common practice, no published source. */
describe('a yarn, in all its wordings,', () => {
  it.each(
    table(`
      With white, k 1 row → yarn: name white | @13 rows: n 1, items 'k to {left 'what follows'}'
      Using white, k 1 row → yarn: name white | @14 rows: n 1, items 'k to {left 'what follows'}'
      Holding white, k 1 row → note: about yarn | @16 rows: n 1, items 'k to {left 'what follows'}'
      In white, k 1 row → yarn: name white | @11 rows: n 1, items 'k to {left 'what follows'}'
      With 2 strands of yarn, k 1 row → yarn: name '2 strands of yarn', held | @25 rows: n 1, items 'k to {left 'what follows'}'
      With 2 strands held together, k 1 row → yarn: name '2 strands held together', held | @31 rows: n 1, items 'k to {left 'what follows'}'
      With 2 strand held together, k 1 row → yarn: name '2 strand held together', held | @30 rows: n 1, items 'k to {left 'what follows'}'
      With 2 ply held together, k 1 row → note: about yarn | @27 rows: n 1, items 'k to {left 'what follows'}'
      With 2 balls held together, k 1 row → note: about yarn | @29 rows: n 1, items 'k to {left 'what follows'}'
      With white cast on 20 sts → yarn: name white | @12 cast on: stitches 20
      With white k 3 rows → yarn: name white | @12 rows: n 3, items 'k to {left 'what follows'}'
      With white work 6 rows in st st → yarn: name white | @12 even: fabric {named, name stocking}, until {rows, n 6}
      With white bind off → yarn: name white | @12 bind off
      With white p 3 rows → yarn: name white | @12 rows: n 3, items 'p to {left 'what follows'}'
      With white pick up 5 sts → yarn: name white | @12 pick up: items 'pu ×5', edges [{stitches 5, along ''}]
      With red old new blue green white, k 1 row → note: about yarn | @36 rows: n 1, items 'k to {left 'what follows'}'
      In red old new blue green white, k 1 row → note: about yarn | @34 rows: n 1, items 'k to {left 'what follows'}'
      Holding red old new blue green white, k 1 row → note: about yarn | @39 rows: n 1, items 'k to {left 'what follows'}'
    `),
  )('is read: $line', expectReading);

  it.each(
    table(`
      With white, rs → yarn: name white | ✗ stitch or repeat expected @13
      With 2 red, k 1 row → ✗ stitch or repeat expected @6
      With red old new blue green white black grey, k 1 row → ✗ stitch or repeat expected @10
      With ws k 1 row → note: about facing | @9 rows: n 1, items 'k to {left 'what follows'}'
      With white right k 1 row → ✗ stitch or repeat expected @12
      With k 1 row → note: about facing | ✗ stitch or repeat expected @8
      With 3 strands k 1 row → yarn: name '3 strands', held | @16 rows: n 1, items 'k to {left 'what follows'}'
      With red old new blue green white black, k 1 row → ✗ stitch or repeat expected @10
      Holding red old new blue green white black, k 1 row → ✗ stitch or repeat expected @1
    `),
  )('is not read for more than it says: $line', expectReading);
});
