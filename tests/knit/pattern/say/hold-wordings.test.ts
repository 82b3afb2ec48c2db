import { describe, it } from 'vitest';
import { table } from '../table.ts';
import { expectReading } from './said.ts';

/** How patterns are usually worded: common practice, no published source. */
describe('hold, in all its wordings,', () => {
  it.each(
    table(`
      {Place|Put|Sl|Slip|Leave|Transfer|Keep} rem 24 sts on holder → hold: which rest, stitches 24
      Place the sts on a holder → hold: which all
      Place {the rem|other|the other|all other} sts on a holder → hold: which rest
      Place {first|the first} 10 sts on holder → hold: which first, stitches 10
      Place {next|these|those} 10 sts on holder → hold: which all, stitches 10
      Place {last|the last} 10 sts on holder → hold: which last, stitches 10
      Place {center|centre|middle|the center} 10 sts on holder → hold: which centre, stitches 10
      Place 10 {center|centre} sts on holder → hold: which centre, stitches 10
      Place 10 first sts on holder → hold: which first, stitches 10
      Place 10 rem sts on holder → hold: which rest, stitches 10
      Place {sts|all sts|the sts} on holder → hold: which all
      Place 10 sts on holder → hold: which all, stitches 10
      {Place|Move|Slip} 10 sts {at center|from the middle|in centre} on holder → hold: which centre, stitches 10
      Divide {the sts|work} in {half|two} and {slip|place} one {side|half of the sts} on a holder → hold: which half
      Place 10 sts {for neck|for front|for back|for thumb|for hood|for shoulder|for collar|for back of|for front neck|} on holder → hold: which all, stitches 10
      Place 10 sts {on a holder|onto holder|onto a spare needle|on spare needle|onto st holder|on waste yarn} → hold: which all, stitches 10
      Place 10 sts on holder {for neck|for neckband|for collar|for later|for hood|for shoulder|for front|for back|for back of neck|for front of neck|for back neck|for front neck|to be worked later|and work on first sts|and cont on these sts|and work on rem sts} → hold: which all, stitches 10
      Place 10 sts on holder for back and turn → hold: which all, stitches 10 | @37 turn
      Place 1 st on holder → hold: which all, stitches 1
      Place the center 1 st on holder → hold: which centre, stitches 1
    `),
  )('is read: $line', expectReading);

  it.each(
    table(`
      Place all the sts on a holder → ✗ stitch or repeat expected @1
      Place 10 markers on holder → ✗ stitch or repeat expected @1
      Place 10 sts on the table → ✗ stitch or repeat expected @1
      Place marker → note: about marker
      Leave 10 → ✗ stitch or repeat expected @1
      Sl first st → row: items 'sl to {left 'what follows'}'
      Sl 10 on holder → row: items 'hold ×10'
      Place last on holder → ✗ stitch or repeat expected @1
    `),
  )('is not read for more than it says: $line', expectReading);
});
