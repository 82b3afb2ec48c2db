import { describe, it } from 'vitest';
import { table } from '../table.ts';
import { expectReading } from './said.ts';

/** How patterns are usually worded: common practice, no published source. */
describe('what stands before a cast-on,', () => {
  it.each(
    table(`
      Starting at lower edge, with 4 mm needles and yarn A, cast on 80 sts → @25 needle: mm 4 | @43 yarn: name A | @55 cast on: stitches 80
      To make flap, cast on 18 sts → @15 cast on: stitches 18
      Beginning at hem, cast on 18 sts → @19 cast on: stitches 18
      Starting at top, cast on 18 sts → @18 cast on: stitches 18
      Then cast on 9 sts → @6 cast on: stitches 9
      And cast on 9 sts → @5 cast on: stitches 9
      & then cast on 9 sts → @8 cast on: stitches 9
      Then, cast on 9 sts → @7 cast on: stitches 9
      {Cast 3 sts onto your needle|Cast 3 sts on your needle} → cast on: stitches 3
      Cast 20 sts onto your needle → cast on: stitches 20
      Cast 1 st onto your needle → cast on: stitches 1
      Cast 20 stitches {onto the needle|on a needle|on the needle|onto|on} → cast on: stitches 20
      Cast 20 sts {in the red wool on|with MC onto|using A on|in red onto} needle → cast on: stitches 20
      Loosely cast on 20 sts → cast on: stitches 20
      {Cast on loosely 20 sts|Cast on a total of 20 sts|Cast on 20 sts} → cast on: stitches 20
      {Cast on (20 sts|Cast on [20 sts} → ✗ stitch or repeat expected @1
      CO {20 sts|20} → cast on: stitches 20
      Cast - on 20 sts → cast on: stitches 20
      With 4 mm needles cast on 20 sts and k 1 row → needle: mm 4 | @19 cast on: stitches 20 | @38 rows: n 1, items 'k to {left 'what follows'}'
      With 4 mm needles cast on 20 sts and knit 3 rows → needle: mm 4 | @19 cast on: stitches 20 | @38 rows: n 3, items 'k to {left 'what follows'}'
      Using 5 mm needles and A cast on 20 sts → needle: mm 5 | @20 yarn: name A | @26 cast on: stitches 20
    `),
  )('is passed over, but for needles and yarn: $line', expectReading);

  it.each(
    table(`
      Knit 5 rows, cast on 20 sts → rows: n 5, items 'k to {left 'what follows'}' | @14 row: items 'co ×20'
      Cast on 20 more sts → row: items 'co ×20'
      {Cast on 20 sts at each end|Cast on 20 sts at both ends|Cast on 20 sts at either side} → groups: work co, edge both, groups [{stitches 20, rows 2, every 1}]
      Cast on 20 sts at beg of next 2 rows → groups: work co, edge beginning, groups [{stitches 20, rows 2, every 1}]
      Cast on 20 sts over those bound off → row: items 'co ×20'
      {Cast on 12 sts and continue across the remaining 80 sts|Cast on 12 sts and continue across next 80 sts|Cast on 12 sts and continue across other 80 sts|Cast on 12 sts and work across the remaining 80 sts|Cast on 12 sts and work across next 80 sts|Cast on 12 sts and work across other 80 sts|Cast on 12 sts, continue across the remaining 80 sts|Cast on 12 sts, continue across next 80 sts|Cast on 12 sts, continue across other 80 sts|Cast on 12 sts, work across the remaining 80 sts|Cast on 12 sts, work across next 80 sts|Cast on 12 sts, work across other 80 sts|Cast on 12 sts then continue across the remaining 80 sts|Cast on 12 sts then continue across next 80 sts|Cast on 12 sts then continue across other 80 sts|Cast on 12 sts then work across the remaining 80 sts|Cast on 12 sts then work across next 80 sts|Cast on 12 sts then work across other 80 sts} → row: items 'co ×12, patt ×80'
      {Cast on 12 sts and knit across the remaining 80 sts|Cast on 12 sts and knit across next 80 sts|Cast on 12 sts and knit across other 80 sts|Cast on 12 sts, knit across the remaining 80 sts|Cast on 12 sts, knit across next 80 sts|Cast on 12 sts, knit across other 80 sts|Cast on 12 sts then knit across the remaining 80 sts|Cast on 12 sts then knit across next 80 sts|Cast on 12 sts then knit across other 80 sts} → row: items 'co ×12, k ×80'
      {Cast on 12 sts and purl across the remaining 80 sts|Cast on 12 sts and purl across next 80 sts|Cast on 12 sts and purl across other 80 sts|Cast on 12 sts, purl across the remaining 80 sts|Cast on 12 sts, purl across next 80 sts|Cast on 12 sts, purl across other 80 sts|Cast on 12 sts then purl across the remaining 80 sts|Cast on 12 sts then purl across next 80 sts|Cast on 12 sts then purl across other 80 sts} → row: items 'co ×12, p ×80'
      Cast on 12 sts, k over rem 80 sts → row: items 'co ×12, k ×80'
      Cast on 1½ sts → ✗ stitch or repeat expected @1
      Cast 0 sts onto needle → ✗ stitch or repeat expected @1
      Cast 20 onto needle → ✗ stitch or repeat expected @1
    `),
  )('is not passed over where more is worked, or it casts on within a row: $line', expectReading);
});
