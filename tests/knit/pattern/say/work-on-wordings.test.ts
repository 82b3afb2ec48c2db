import { describe, it } from 'vitest';
import { table } from '../table.ts';
import { expectReading } from './said.ts';

/** How patterns are usually worded: common practice, no published source. */
describe('work on, in all its wordings,', () => {
  it.each(
    table(`
      {Work each side separately|Working both sides separately|K each shoulder singly|Work both shoulder separately|Work each side singly|Each side is worked separately|Work each side of neck separately|Working each side of front separately|Work each side of back separately|Working each side of the neck separately|Work each side of the neck separately|Finish each side separately|Working each side separately|Work sides separately|Turn, work each side separately|Turn and work each side separately} → work on: which 'each side'
      And work each side separately → @5 work on: which 'each side'
      Then work each side separately → @6 work on: which 'each side'
      {Work on|Working on|Cont on|Continue on|Work in patt on|Cont in patt on|On} {both sides|each side} {at once|at the same time|at same time|} {with separate balls|with separate yarn|using separate balls|} → work on: which 'both at once'
      Work on both shoulders at once → work on: which 'both at once'
      Work on {both sides|each side} separately → work on: which 'each side'
      {Work|Working} both sides {at once|at the same time|at same time} {with separate balls of yarn|with separate ball|with separate yarn|with 2 balls|using 2 balls of yarn|} → work on: which 'both at once'
      Work on {last|second} 28 sts → work on: which last, stitches 28
      Work on {first|1st|the first} 28 sts → work on: which first, stitches 28
      Work on {these|this|those} 28 sts → work on: which these, stitches 28
      Work on 28 sts → work on: which these, stitches 28
      Work on {one side|1 side|one shoulder|these sts|this side|this shoulder} → work on: which these
      Work on {one side|one shoulder|these sts|this side} only → work on: which these
      Work on first {set of|side of} 28 sts → work on: which first, stitches 28
      Work on first 28 sts {only|for first side|for right side|for left front|for first shoulder only|for right front|for right half|of sts|for first shoulder} → work on: which first, stitches 28
      Work on 28 shoulder sts → work on: which these, stitches 28
      Turn, work on first 10 sts → work on: which first, stitches 10
    `),
  )('is read: $line', expectReading);

  it.each(
    table(`
      Work on one side of it → ✗ stitch or repeat expected @13
      Work on one shoulder of it → work on: which these | ✗ stitch or repeat expected @25
      Work on 4 mm needles → ✗ stitch or repeat expected @11
      Work on rem sts → ✗ stitch or repeat expected @1
      Work one row → even: until {rows, n 1}
      Work both sides → ✗ stitch or repeat expected @1
      Work on one sides → ✗ stitch or repeat expected @13
    `),
  )('is not read for more than it says: $line', expectReading);
});
