import { describe, it } from 'vitest';
import { table } from '../table.ts';
import { expectReading } from './said.ts';

/** How patterns are usually worded: common practice, no published source. */
describe('other side, in all its wordings,', () => {
  it.each(
    table(`
      {Complete|Work|Finish|K|Completing|Make|Shape} other side to match → other side: reversing false
      Then complete other side to match → @6 other side: reversing false
      And complete other side to match → @5 other side: reversing false
      Complete {other|the other|second|2nd|opposite|left|right} side to match → other side: reversing false
      Complete other {side|shoulder|half|neck|edge|sts} to match → other side: reversing false
      Complete other side {to correspond|to correspond with first|to correspond to first|to match first|to match 1st|to match other|to match right|the same|in same manner|in same way|in the same manner|in the same way|same as first|same to first|same|likewise|as for first|as first|as 1st|as for|as|similarly|to match left} → other side: reversing false
      Complete to {match|correspond} {first|1st|the first|the other|right|left|with first|for first} side → other side: reversing false
      Complete to match first {side|shoulder|half} → other side: reversing false
      {Work to correspond|Complete to match|Finish to correspond} → other side: reversing false
      Complete other side to match{, reversing shaping| (reversing shaping)|, but reversing shaping| but reversing all shaping|; with shaping reversed| with reversing the shaping|, and reversing all shapings| reversing shape| reversing shaped shaping|, all shaping reversed|, all shapings reversed|, shaping reversed|, shaping at opposite edge|, shaping at opposite side|, rev the shaping} → other side: reversing
      Work second side as first, turn → other side: reversing false | @28 turn
      Complete other side to match, reversing {shapings|all shaping|the shapings|shaped|all} → other side: reversing
    `),
  )('is read: $line', expectReading);

  it.each(
    table(`
      Complete the rem side to match → ✗ stitch or repeat expected @1
      Work to correspond in length → ✗ stitch or repeat expected @1
      Complete to match first one → ✗ stitch or repeat expected @25
      Complete to match the other one → ✗ stitch or repeat expected @29
      Complete as for back → as for: piece {words back, name back}, reversing false
      Complete other side → ✗ stitch or repeat expected @1
      Other side to match → ✗ stitch or repeat expected @1
      Work as first → as for: piece {words first}, reversing false
    `),
  )('is not read for more than it says: $line', expectReading);
});
