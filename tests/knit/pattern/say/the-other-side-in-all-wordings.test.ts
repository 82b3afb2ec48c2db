import { describe, it } from 'vitest';
import { table } from '../table.ts';
import { expectReading } from './said.ts';

/** How patterns are usually worded: common practice, no published source. */
describe('the other side, in all wordings,', () => {
  it.each(
    table(`
      {Complete|Work|Finish|Make|Shape} {other|the other|second|the opposite|2nd} side {to match|to correspond|the same|in the same manner|same as first|similarly|likewise|accordingly|as first side} → other side: reversing false
      {Complete|Work} {other shoulder|other half|left shoulder|right neck|other front|other edge} to match → other side: reversing false
      Complete other side of {neck|the front|work} to match → other side: reversing false
      {Work other side to match|Complete other side to match}{, reversing shaping|, reversing all shaping| (reversing shapings|, but reversing the shaping|, with shaping reversed|, all shapings reversed|; rev shape shaping| and reversing|, shaping at opposite edge} → other side: reversing
      Work other side to match first side → other side: reversing false
      Work other side as for {first|right} side → other side: reversing false
      Work left side to match right side → other side: reversing false
      {Do|Work} the same {at|on|for} the {other side|second shoulder|other half} → other side: reversing false
      Rep {for|on} {the other|second} {side|shoulder} → other side: reversing false
      {Complete|Finish} {as for first|as first} {side|shoulder} → other side: reversing false
      {Complete|Work|Finish} to {match|correspond to} {the other|first} {side|shoulder} → other side: reversing false
      Do the same at the other side of the {neck|neckline}, reversing shaping → other side: reversing
      Work the {remaining|other|held} 20 sts {in the same way|to match|the same|likewise} → other side: reversing false
      Complete rem sts to correspond → other side: reversing false
      Work to {correspond|match} → other side: reversing false
      {Work|Knit} in reverse → other side: reversing
      Rejoin yarn to rem 16 sts and work to correspond → rejoin: stitches 16 | @31 other side: reversing false
      Join yarn to other side and work to match → rejoin | @29 other side: reversing false
    `),
  )('is read: $line', expectReading);

  it.each(
    table(`
      Work other side → ✗ stitch or repeat expected @1
      Other side to match → ✗ stitch or repeat expected @1
      Work 20 sts in the same way → ✗ stitch or repeat expected @1
      Do the same → ✗ stitch or repeat expected @1
      Rep for the other sleeve → ✗ nothing before the repeat @5
      Work to match the colours → ✗ stitch or repeat expected @1
      Work in reverse stocking st → even: fabric {named, name 'reverse stocking'}
      Knit 2 rows, work to correspond → rows: n 2, items 'k to {left 'what follows'}' | ✗ stitch or repeat expected @14
      Complete as for second side of hem → ✗ stitch or repeat expected @32
    `),
  )('is not read for more than it says: $line', expectReading);
});
