import { describe, it } from 'vitest';
import { table } from '../table.ts';
import { expectReading } from './said.ts';

/** How patterns are usually worded: common practice, no published source. */
describe('stitches that are laid aside and taken up, in all wordings,', () => {
  it.each(
    table(`
      {Place|Put|Slip|Leave|Transfer|Keep|Move} {rem|the remaining|the other} 24 sts on {a holder|holder|a stitch holder} → hold: which rest, stitches 24
      {Leave|Place} {first|the first} 28 sts on a holder → hold: which first, stitches 28
      {Leave|Place} {next|the next|these} 28 sts on a holder → hold: which all, stitches 28
      Place {last|the last} 28 sts on a holder → hold: which last, stitches 28
      Leave {centre|the middle|center} 17 sts on a holder → hold: which centre, stitches 17
      Leave 17 sts {at centre|in the middle|from center} on a holder → hold: which centre, stitches 17
      Leave 17 sts on a holder → hold: which all, stitches 17
      Leave 17 rem sts on a holder → hold: which rest, stitches 17
      Leave rem sts on a holder → hold: which rest
      Leave {on a spare needle|on a holder} → hold: which all
      Place {these|all|the} sts on a holder → hold: which all
      Place them on a holder → hold: which all
      Place sts from {spare|left} needle on a holder → hold: which all
      Slip 26 sts {off on an extra needle|onto a spare needle|on an extra needle|onto the spare pin} → hold: which all, stitches 26
      Place 24 sts on a holder {to be worked later|and work on first sts|and cont on rem sts|for the neck|and leave} → hold: which all, stitches 24
      {Divide sts in half, and place first half on a holder|Divide sts in half and place one half on a holder|Divide the sts in half, and place one side on a holder|Divide the sts in half and place one set on a holder|Part sts in half, and place one set on a holder|Part sts in half and place one set on a holder|Part the sts in half, and place one set on a holder|Part the sts in half and place one set on a holder|Dividing sts in half, and place one set on a holder|Dividing the sts in half, and place one half on a holder|Dividing the sts in half and place one side on a holder} → hold: which half
      {Divide sts in half and place first half on a holder|Divide sts in half and place the first set of sts on a holder|Divide the sts in half and place first half on a holder|Divide the sts in half and place the first set of sts on a holder|Dividing sts in half and place first half on a holder|Dividing sts in half and place the first set of sts on a holder|Dividing the sts in half and place first half on a holder|Dividing the sts in half and place the first set of sts on a holder} → note: about divides
      {Divide sts in half, place first half on a holder|Divide sts in half, place the first set of sts on a holder|Divide the sts in half, place one half on a holder|Divide the sts in half, place one set on a holder|Part sts in half, place one side on a holder|Part the sts in half, place first half on a holder|Part the sts in half, place the first set of sts on a holder|Dividing sts in half, place one half on a holder|Dividing sts in half, place one set on a holder|Dividing the sts in half, place one side on a holder} → ✗ stitch or repeat expected @1
    `),
  )('are read: $line', expectReading);

  it.each(
    table(`
      {Rejoin yarn to rem 28 sts|Rejoin another ball to rem 28 sts|Join the yarn to rem 28 sts|Join new yarn to rem 28 sts|Attach wool to rem 28 sts|Attach a second ball to rem 28 sts|Reattach a ball of yarn to rem 28 sts|Tie yarn to rem 28 sts|Tie another ball to rem 28 sts|Connect the yarn to rem 28 sts|Connect new yarn to rem 28 sts} → rejoin: stitches 28
      {Rejoin|Join} {in the|in} yarn to rem sts at neck edge → rejoin
      Rejoin yarn to neck edge of rem 28 sts → rejoin: stitches 28
      Rejoin yarn to {other|second|the other} {side|shoulder|half} → rejoin
      Rejoin yarn to the other side of {the neck|work|the v neck} → rejoin
      {With RS facing rejoin yarn to rem 28 sts at neck edge|With RS facing rejoin yarn to rem 28 sts at inner edge|With RS facing rejoin yarn to rem 28 sts at front edge|With RS facing rejoin yarn to rem 28 sts at armhole edge|With RS facing rejoin yarn to rem 28 sts at inside edge|With RS facing rejoin yarn to rem 28 sts at center|With RS facing rejoin yarn to rem 28 sts at beg} → rejoin: stitches 28, side RS
      {With WS facing rejoin yarn to rem 28 sts at neck edge|With WS facing rejoin yarn to rem 28 sts at inner edge|With WS facing rejoin yarn to rem 28 sts at front edge|With WS facing rejoin yarn to rem 28 sts at armhole edge|With WS facing rejoin yarn to rem 28 sts at inside edge|With WS facing rejoin yarn to rem 28 sts at center|With WS facing rejoin yarn to rem 28 sts at beg} → rejoin: stitches 28, side WS
      {Return|Go back|Return back|Returning} to {rem|the rem|other} sts → rejoin
      {Slip|Place|Return|Transfer} {holder|held} sts {to needle|onto the needle|on working needle} → rejoin
      {Slip rem sts from holder to needle|Slip rem sts back onto needle|Slip the rem sts back to needle|Place rem sts from holder onto needle|Place the rem sts from holder to needle|Place the rem sts back onto needle|Return the rem sts back to needle|Transfer rem sts from holder onto needle|Transfer the rem sts from holder to needle|Transfer the rem sts back onto needle|Replace rem sts back to needle|Replace the rem sts from holder onto needle} → rejoin
      Slip sts from holder to needle and {rejoin|join|attach} yarn → rejoin
      {Transfer left front sts from holder to needle|Place left front sts from holder to needle} → rejoin: edge left
      {Transfer right front sts from holder to needle|Transfer the right front sts from holder to needle|Place right front sts from holder to needle|Place the right front sts from holder to needle} → rejoin: edge right
      Place back sts on needle → rejoin: edge middle
      Place {these|other} sts on needle → rejoin
      {Place held 8 sts of right shoulder on needle and reattach yarn|Place held 8 sts of left front on needle and reattach yarn|Place held 8 sts of other side on needle and reattach yarn} → rejoin: stitches 8
      {Place held 20 sts of right shoulder on needle and reattach yarn|Place held 20 sts of left front on needle and reattach yarn|Place held 20 sts of other side on needle and reattach yarn} → rejoin: stitches 20
      Place rem 8 sts for the left shoulder back onto the needle → rejoin: stitches 8
      {Pick|Take} up the other side → rejoin
      {Pick|Take} up the 20 sts left {for other shoulder|on spare needle|on a holder|for the second side|} → rejoin: stitches 20
      Slip the remaining 20 sts on to the needle → rejoin: stitches 20
      Pick up the held 20 sts → rejoin: stitches 20
      Take up rem sts and join yarn → rejoin
      {Rejoin yarn to|Rejoin yarn at} rem 28 sts {on holder|from the holder|left on holder|for second side|for other shoulder|for left shoulder|for right side|for the back|for front} → rejoin: stitches 28
    `),
  )('are taken up: $line', expectReading);

  it.each(
    table(`
      {Work on these 28 sts only|Work on rem 28 sts only|Working on these 28 sts only|Working on rem 28 sts only|Cont on these 28 sts only|Cont on rem 28 sts only|Continuing on these 28 sts only|Continuing on rem 28 sts only|Proceed on these 28 sts only|Proceed on rem 28 sts only} → work on: which these, stitches 28
      {Work on the first 28 sts only|Work on first 28 sts only|Working on the first 28 sts only|Working on first 28 sts only|Cont on the first 28 sts only|Cont on first 28 sts only|Continuing on the first 28 sts only|Continuing on first 28 sts only|Proceed on the first 28 sts only|Proceed on first 28 sts only} → work on: which first, stitches 28
      {Work on last 28 sts only|Work on the last 28 sts only|Working on last 28 sts only|Working on the last 28 sts only|Cont on last 28 sts only|Cont on the last 28 sts only|Continuing on last 28 sts only|Continuing on the last 28 sts only|Proceed on last 28 sts only|Proceed on the last 28 sts only} → work on: which last, stitches 28
      {Work|Cont} {with|over} these 28 sts only → work on: which these, stitches 28
      {Cont to work|Continue working|Working in patt} on these 28 sts → work on: which these, stitches 28
      On these 28 sts only → work on: which these, stitches 28
      On the first 28 sts only → work on: which first, stitches 28
      Work on {this|the one} side only → work on: which these
      Work back and forth on these 28 sts → work on: which these, stitches 28
      {Start|Begin} front on these 28 sts → work on: which these, stitches 28
      {Start|Begin} {the other|back} side over rem 28 sts → work on: which these, stitches 28
      On other side dec 1 st at neck edge every row 3 times → work on: which these | @15 shape: change -1, edge neck, beats [{first 1, every 1, counted, times 3}]
      {Work|Working|Finish|K} {each side|both sides|each shoulder|both sides of the neck} {separately|singly} → work on: which 'each side'
      {Each side|Each shoulder} is {now |then |}worked separately → work on: which 'each side'
      {2|Both|The two|The 2} {sides|shoulders} are {now |}worked separately → work on: which 'each side'
      {Cont|Continue|Working} on each side separately → work on: which 'each side'
      Work sides separately → work on: which 'each side'
      {Work|Working} both sides at {once|the same time|same time} → work on: which 'both at once'
      Work each side separately at the same time → work on: which 'both at once'
      Both sides are worked at {once|the same time|same time} → work on: which 'both at once'
      Work each {side|shoulder} with {a separate ball|separate balls of yarn|its own ball|its own ball of wool} → work on: which 'both at once'
      {Work both sides with separate balls|Work both sides using 2 balls of yarn} → work on: which 'both at once'
      {Work on both sides at once|Work on both sides at the same time|Work on both sides separately at same time|Work on each side at once|Work on each side at the same time|Work on both shoulder at once|Work on both shoulder at the same time|Work on both shoulder separately at same time} → work on: which 'both at once'
      Work on both sides separately → work on: which 'each side'
      {Work on this last set of 30 sts|Work on this last group of 30 sts|Work on this second set of 30 sts|Work on this second group of 30 sts} → work on: which these, stitches 30
      {Work on this first set of 30 sts|Work on this first group of 30 sts} → work on: which first, stitches 30
      Work on these 30 sts as before → work on: which these, stitches 30
      Work on these 28 sts {as follows:|thus:|as foll} → work on: which these, stitches 28
      With these 66 sts, work even for 6 rows → stated: stitches 66 (66) | @20 even: until {rows, n 6}
      With these 66 sts left, work even for 6 rows → stated: stitches 66 (66) | @25 even: until {rows, n 6}
      With these 66 sts rem, work even for 6 rows → stated: stitches 66 (66) | @24 even: until {rows, n 6}
      With 66 sts, work even for 6 rows → stated: stitches 66 (66) | @14 even: until {rows, n 6}
      With 66 sts left, work even for 6 rows → stated: stitches 66 (66) | @19 even: until {rows, n 6}
      With 66 sts rem, work even for 6 rows → stated: stitches 66 (66) | @18 even: until {rows, n 6}
      Having 66 sts, k 1 row → stated: stitches 66 (66) | @16 rows: n 1, items 'k to {left 'what follows'}'
      Turn and work on these 28 sts → work on: which these, stitches 28
    `),
  )('are worked on: $line', expectReading);

  it.each(
    table(`
      Leave 24 rows on a holder → ✗ stitch or repeat expected @1
      Leave the sts → ✗ stitch or repeat expected @1
      Slip 3 sts onto extra needle, k 3 → ✗ stitch or repeat expected @12
      Divide sts in 3, place first on a holder → ✗ stitch or repeat expected @1
      Divide sts in half, place a marker → ✗ stitch or repeat expected @1
      Place 24 sts → ✗ stitch or repeat expected @1
      Pick up 20 sts along the edge → pick up: items 'pu ×20', edges [{stitches 20, along edge}]
      Pick up sts → ✗ stitch or repeat expected @1
      Slip 20 sts to the needle → hold: which all, stitches 20
      Take up the 20 rows → ✗ stitch or repeat expected @1
      Rejoin → rejoin
      Return 28 sts → ✗ stitch or repeat expected @1
      Place sts from holder → rejoin
      Place held 1½ sts on needle → ✗ stitch or repeat expected @1
      Work on sts → ✗ stitch or repeat expected @1
      Work on needles → ✗ stitch or repeat expected @1
      Work over 25 sts, bind off next 12 sts → row: items 'patt ×25, bo ×12'
      Work across 25 sts and slip them to a holder → row: items 'patt ×25, {parting}'
      Work on these rows → ✗ stitch or repeat expected @1
      With 66 sts → ✗ stitch or repeat expected @6
      With 66 sts, turn → ✗ stitch or repeat expected @6
      With 66, work → ✗ stitch or repeat expected @6
      Work both sides → ✗ stitch or repeat expected @1
    `),
  )('are not read for more than they say: $line', expectReading);
});
