import { describe, it } from 'vitest';
import { table } from '../table.ts';
import { expectReading } from './said.ts';

/** How patterns are usually worded: common practice, no published source. */
describe('a shaping within rows, in all its wordings,', () => {
  it.each(
    table(`
      Work 6 rows, {decreasing|dec} 1 st at neck edge {in|on|of} every row → even: until {rows, n 6} | @14 at the same time | @14 shape: change -1, edge neck, beats [{first 1, every 1, times 6}]
      Work 6 rows dec 1 st at neck edge every row → even: until {rows, n 6} | @13 at the same time | @13 shape: change -1, edge neck, beats [{first 1, every 1, times 6}]
      {Knit 6 rows, decreasing 1 st at neck edge every row|Knit 6 rows, dec 1 st at neck edge every row} → even: fabric {named, name garter}, until {rows, n 6} | @14 at the same time | @14 shape: change -1, edge neck, beats [{first 1, every 1, times 6}]
      {K 6 rows, decreasing 1 st at neck edge every row|K 6 rows, dec 1 st at neck edge every row} → even: fabric {named, name garter}, until {rows, n 6} | @11 at the same time | @11 shape: change -1, edge neck, beats [{first 1, every 1, times 6}]
      Work 7 rows, dec 1 st at each end of 3rd and every foll 4th row → even: until {rows, n 7} | @14 at the same time | @14 shape: change -1, edge both, beats [{first 3, every 3, times 1}; {every 4, times 1}]
      Work 10 rows, at the same time dec 1 st at armhole edge on every alt row → even: until {rows, n 10} | @15 at the same time | @32 shape: change -1, edge armhole, beats [{every 2, times 5}]
      Work 13 rows in st st, inc 1 st at each end of every 4th row → even: fabric {named, name stocking}, until {rows, n 13} | @24 at the same time | @24 shape: change 1, edge both, beats [{every 4, times 3}]
      Inc 1 st at each side every {4 cm|40 mm} 5 times → shape: change 1, edge both, beats [{every 1, everyMm 40, counted, times 5}]
      Inc 1 st at each side every cm until there are 60 sts → shape: change 1, edge both, beats [{every 1, everyMm 10, toCount 60}]
      Inc 1 st at {beg|start} of {row|the row} → shape: change 1, edge beginning, beats []
      Inc 1 st {each end|at each end} of needle every 4 cm 6 times → shape: change 1, edge both, beats [{every 1, everyMm 40, counted, times 6}]
      Dec 1 st at each end of 5th, 11th and 17th rows → shape: change -1, edge both, beats [{first 5, every 5, times 1}; {every 6, times 1}; {every 6, times 1}]
      Row 1: {K|Knit} 1 row, dec 4{| sts| sts evenly} → row: label {rows [1]}, items '{evenly, change -4, work k}'
      Next (dec) row (RS): k1, ssk, k to end → row: label {name dec, rows [], side RS}, items 'k, ssk, k to {left 0}'
      Next row: K14, turn and work on these sts only → row: label {rows []}, items 'k ×14, {turn}' | @25 work on: which these
      Next row: K14, turn and work on these 14 sts only → row: label {rows []}, items 'k ×14, {turn}' | @25 work on: which these, stitches 14
      Next row: K14, turn and work on first 14 sts only → row: label {rows []}, items 'k ×14, {turn}' | @25 work on: which first, stitches 14
      Next row: K14, turn , work on these sts only → row: label {rows []}, items 'k ×14, {turn}' | @23 work on: which these
      Next row: K14, turn , work on these 14 sts only → row: label {rows []}, items 'k ×14, {turn}' | @23 work on: which these, stitches 14
      Next row: K14, turn , work on first 14 sts only → row: label {rows []}, items 'k ×14, {turn}' | @23 work on: which first, stitches 14
      Work on rem 8 sts until it measures 12 cm → work on: which these, stitches 8 | @19 even: fabric {established}, until {length, mm 120, from start}
      Divide for neck as follows: k20, turn → heading: title {words 'divide for neck', pattern 'divide for neck', divides}, sideOnly false, talk false, places [neck] | @29 row: items 'k ×20, {turn}'
      Divide for neck as foll: k20, turn → heading: title {words 'divide for neck', pattern 'divide for neck', divides}, sideOnly false, talk false, places [neck] | @26 row: items 'k ×20, {turn}'
      Join 2nd ball of yarn and bind off centre 20 sts, k to end → rejoin | @27 row: items 'bo ×20 in the middle, k to {left 0}'
      Join second ball of yarn and bind off centre 20 sts, k to end → rejoin | @30 row: items 'bo ×20 in the middle, k to {left 0}'
      Join a second ball of yarn and bind off centre 20 sts, k to end → rejoin | @32 row: items 'bo ×20 in the middle, k to {left 0}'
      {Working|Work} {each side|both sides} at the same time with separate balls of yarn → work on: which 'both at once'
      Work until same length as back less 3 rows → even: until {same length, piece {words back, name back}, lessRows 3}
      Work in patt until piece measures 12 cm, ending with {row 4 of patt|a 4th patt row|4th row of pattern} → even: fabric {established}, until {length, mm 120, from start, endRow 4}
      Work in garter st until piece measures 12 cm, working an odd number of rows → even: fabric {named, name garter}, until {length, mm 120, from start, odd}
      Work in garter st until piece measures 12 cm, working an even number of rows → even: fabric {named, name garter}, until {length, mm 120, from start, odd false}
    `),
  )('is read: $line', expectReading);

  it.each(
    table(`
      Work 6 rows, then dec 1 st at neck edge on every row → even: until {rows, n 6} | @19 shape: change -1, edge neck, beats [{first 1, every 1}]
      Work 6 rows, dec 1 st at neck edge on every row until 20 sts rem → even: until {rows, n 6} | @14 shape: change -1, edge neck, beats [{first 1, every 1, toCount 20}]
      Work 5 rows, dec 1 st at neck edge on every alt row → ✗ stitch or repeat expected @52
      Dec 1 st at each end of 5th, 3rd and 17th rows → ✗ stitch or repeat expected @25
      Bind off 3 sts at each side every 4 cm → ✗ stitch or repeat expected @16
      Next row: k14, turn and p back → row: label {rows []}, items 'k ×14, {turn}, p to {left 'what follows'}'
      P 6 rows, dec 1 st at neck edge every row → ✗ stitch or repeat expected @42
      Work on rem sts → ✗ stitch or repeat expected @1
      Inc 1 st at beg of row 5 → shape: change 1, edge beginning, beats [{first 5, every 5, times 1}]
      Work even for 10 cm, ending with row 4 → even: until {length, mm 100, from here, endRow 4}
    `),
  )('is not read for more than it says: $line', expectReading);
});
