import { describe, it } from 'vitest';
import { table } from '../table.ts';
import { expectReading } from './said.ts';

/** How patterns are usually worded: common practice, no published source. */
describe('a work that is parted', () => {
  it.each(
    table(`
      {Each side|Each shoulder} is {now|then|} worked separately → work on: which 'each side'
      {The two sides|The 2 sides|Both sides|The two shoulders} are {now|} worked separately → work on: which 'each side'
      Both sides are worked {at once|at the same time} → work on: which 'both at once'
      {Continue|Cont|Work|Working} on each side separately → work on: which 'each side'
      Work both shoulders at once, using separate balls → work on: which 'both at once'
      Work each {side|shoulder} with {a separate ball|its own ball|separate balls} of yarn → work on: which 'both at once'
      Proceed on first group of 20 sts as follows: → work on: which first, stitches 20
      Proceed on these 20 sts for left side → work on: which these, stitches 20
      Continue on this {last|second} {group|set} of sts for right side → work on: which these
      {Bind|Cast} off {centre|center|the center|middle|the middle} 12 sts {for neck|for back of neck|} → row: items 'bo ×12 in the middle'
      Bind off center 12 sts and work each side separately → row: items 'bo ×12 in the middle' | @28 work on: which 'each side'
      Bind off middle 12 sts, then dec 1 st at neck edge every row twice → row: items 'bo ×12 in the middle' | @30 shape: change -1, edge neck, beats [{first 1, every 1, counted, times 2}]
    `),
  )('is read: $line', expectReading);

  it.each(
    table(`
      Connect yarn to other side of V neck → rejoin
      Rejoin yarn to 44 sts for {back|the back} → rejoin: stitches 44
      Reattach the yarn to the other side → rejoin
      {Return|Go back} to the {sts left on a spare needle|sts on the holder|held sts|sts left on the holder|sts left} → rejoin
      {Pick up|Take up} {the other side|the remaining sts|the held sts|rem sts|sts left on holder} → rejoin
      {Pick up|Take up} the 20 sts left {for other shoulder|on holder|on spare needle} → rejoin: stitches 20
      {Place|Slip|Put} the {20 held|remaining 20|held 20|other 20} sts {back on|on to|onto|back onto} the needle → rejoin: stitches 20
    `),
  )('is taken up again: $line', expectReading);

  it.each(
    table(`
      Work in garter st for 3 cm{,|} for {bottom|lower|the lower} border → even: fabric {named, name garter}, until {length, mm 30, from here}
      Work 4 rows in garter st for {hem|the hem|lower edge} → even: fabric {named, name garter}, until {rows, n 4}
      Place remaining sts on {a st holder|a holder} and set aside {for later|} → hold: which rest
      Work across 12 sts, place next 10 sts on a holder for front {neck line|neck|neckline}, {join|tie in} another ball of yarn and work across remaining 12 sts → row: items 'patt ×12, hold ×10, patt ×12'
    `),
  )('says what it is for: $line', expectReading);

  it.each(
    table(`
      Rejoin yarn and {work|finish|complete} to {correspond|match} → rejoin | @17 other side: reversing false
      {Work|Finish|Complete} {this|second|the other|the second} side to {correspond|match} → other side: reversing false
      {Complete|Work|Finish} to {correspond|match} {to|} {other|first} side, reversing shaping → other side: reversing
      {Complete|Finish} as for first side, reversing shapings → other side: reversing
      {Complete|Work} second side in the same manner as {first|first side|for first side}, reversing all shapings → other side: reversing
      {Do|Work} the same {at|on|for} the other {side|shoulder} → other side: reversing false
      Repeat for {the|} other {side|shoulder} → other side: reversing false
      Repeat for other side, reversing shaping → other side: reversing
      Work the remaining {20 sts|sts} {in the same way|to match|to correspond|the same} → other side: reversing false
    `),
  )('has its other side told: $line', expectReading);

  it.each(
    table(`
      Work in garter st for the hem of it → ✗ stitch expected @36
      Bind off center 12 sts, k to end → row: items 'bo ×12 in the middle, k to {left 0}'
      K14, bind off center 12 sts, k14 → row: items 'k ×14, bo ×12 in the middle, k ×14'
      Slip the remaining 20 sts on a needle → hold: which rest, stitches 20
      Slip the remaining 20 sts on a spare needle → hold: which rest, stitches 20
      Pick up 20 sts along the other side → pick up: items 'pu ×20', edges [{stitches 20, along 'other side'}]
      Repeat for 10 cm → ✗ nothing before the repeat @8
      Work the same → ✗ stitch or repeat expected @1
      Work as for first sleeve → as for: piece {words 'first sleeve', name sleeve}, reversing false
    `),
  )('is not read for more than it says: $line', expectReading);
});
