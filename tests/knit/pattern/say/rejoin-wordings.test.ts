import { describe, it } from 'vitest';
import { table } from '../table.ts';
import { expectReading } from './said.ts';

/** How patterns are usually worded: common practice, no published source. */
describe('rejoin, in all its wordings,', () => {
  it.each(
    table(`
      {Rejoin|Join|Attach|Rejoining|Tie on} yarn to rem 28 sts → rejoin: stitches 28
      With RS facing, rejoin yarn to rem 28 sts → rejoin: stitches 28, side RS
      With WS facing, rejoin yarn to rem 28 sts → rejoin: stitches 28, side WS
      {On|From} wrong side, rejoin yarn to rem 28 sts → rejoin: stitches 28, side WS
      Rejoin {yarn|wool|thread|ball|a ball|another ball|new yarn|the yarn|second ball|yarns|another ball of yarn|a new ball|a second ball|a ball of wool} to rem sts → rejoin
      Rejoin {yarn|wool|thread|ball|a ball|another ball|new yarn|the yarn|second ball|yarns|another ball of yarn|a new ball|a second ball|a ball of wool} at rem sts → rejoin
      Join yarn and at neck edge → rejoin
      Join yarn to {the|inner|inside|neck} sts → rejoin
      Join yarn at {neck edge|inside edge|inner end} of rem 28 sts → rejoin: stitches 28
      Join yarn to {rem|other|first|next|last|these|second|held|center} 28 sts → rejoin: stitches 28
      Join yarn to {rem|other} 28 → rejoin: stitches 28
      Join yarn to 28 → rejoin
      Join yarn to 28 sts → rejoin: stitches 28
      Rejoin yarn to rem set of 28 sts → rejoin: stitches 28
      Rejoin yarn to 28 sts {at neck edge|at inner edge|at front edge|at inside edge|at armhole edge|at center|at beg|on holder|at neck|left on holder|for second side|for other shoulder|for left front|for right shoulder|for left side|and} → rejoin: stitches 28
      Rejoin yarn with WS facing to rem 28 sts → rejoin | @28 rejoin: stitches 28
      {Return to|Returning to|Go to|Go back to|Return back to|To} the rem 28 sts → rejoin: stitches 28
      To rem 28 sts rejoin yarn → rejoin: stitches 28 | @15 rejoin
      To other 28 sts rejoin yarn → rejoin: stitches 28 | @17 rejoin
      {Sl sts|Place sts|Put sts|Sl rem sts|Place the sts|Put these sts|Sl other sts|Place held sts} from holder → rejoin
      Return sts from holder → row: items 'take to {left 'what follows'}'
      {Sl sts|Place sts|Put sts|Sl rem sts|Place the sts|Put these sts|Sl other sts|Place held sts} off the holder → rejoin
      {Sl sts|Place sts|Put sts|Sl rem sts|Place the sts|Put these sts|Sl other sts|Place held sts} off st holder → rejoin
      {Sl sts|Place sts|Put sts|Sl rem sts|Place the sts|Put these sts|Sl other sts|Place held sts} back onto needle → rejoin
      {Sl sts|Place sts|Put sts|Sl rem sts|Place the sts|Put these sts|Sl other sts|Place held sts} onto needle → rejoin
      {Sl sts|Place sts|Put sts|Sl rem sts|Place the sts|Put these sts|Sl other sts|Place held sts} on needle → rejoin
      {Sl sts|Place sts|Put sts|Sl rem sts|Place the sts|Put these sts|Sl other sts|Place held sts} to needle → rejoin
      {Sl sts|Place sts|Put sts|Sl rem sts|Place the sts|Put these sts|Sl other sts|Place held sts} held → rejoin
      Sl sts from holder {back on needle|back onto needle|back to needle|onto needle|on needle|to needle|onto the needle|on the needle|to a needle}{, rejoin yarn|, and rejoin yarn| and join yarn| attach yarn|} → rejoin
      Sl sts to needle and turn → rejoin | @22 turn
      Join yarn to 28 sts and turn → rejoin: stitches 28 | @25 turn
      Tie in yarn to rem 28 sts → rejoin: stitches 28
    `),
  )('is read: $line', expectReading);

  it.each(
    table(`
      Fasten in yarn to rem 28 sts → note: about yarn | ✗ stitch or repeat expected @8
      Rejoin 2nd ball to rem sts → rejoin
      Rejoin 2nd ball at rem sts → rejoin
      Join yarn to sts side of 28 → rejoin | ✗ stitch or repeat expected @18
      Join yarn to sts set aside → rejoin
      Rejoin yarn, RS facing, to rem 28 sts → rejoin | ✗ stitch or repeat expected @14
      Return sts off the holder → ✗ stitch or repeat expected @1
      Return sts off st holder → ✗ stitch or repeat expected @1
      Return sts back onto needle → ✗ stitch or repeat expected @1
      Return sts onto needle → ✗ stitch or repeat expected @1
      Return sts on needle → ✗ stitch or repeat expected @1
      Return sts to needle → ✗ stitch or repeat expected @1
      Return sts held → ✗ stitch or repeat expected @1
      Rejoin MC 2½ sts → rejoin | ✗ stitch or repeat expected @8
      Return 28 sts → ✗ stitch or repeat expected @1
      Sl 1 → row: items sl
      Sl sts onto holder → hold: which all
      Sl rem sts → row: items 'sl to {left 'what follows'}'
      Place marker to needle → note: about marker
    `),
  )('is not read for more than it says: $line', expectReading);
});
