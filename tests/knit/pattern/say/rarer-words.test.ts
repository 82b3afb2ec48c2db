import { describe, it } from 'vitest';
import { table } from '../table.ts';
import { expectReading } from './said.ts';

/**
 * Every word and phrase that a construct takes and that the tables of the constructs do not come to: common practice, no
 * published source. A word that goes, or stands for another, turns a line red.
 */
const lines: Readonly<Record<string, string>> = {
  'as-for': `
    Work piece to {match|match to|match with|correspond to|correspond with} left front → as for: piece {words 'left front', name 'left front'}, reversing false
    Work as for back to armhole {measure|are} 10 cm → as for: piece {words back, name back}, reversing false, to {length, mm 100, from armhole}
    Work{| the} same as back to armhole → as for: piece {words back, name back}, reversing false, to {place, place armhole}
    Work {from beg to **|from start to **|from ** to **|from ** until **|up to **|to **|until **|as far as **} as given for back → as for: piece {words back, name back}, reversing false, to {place, place stars}
    Work to {match|match with|match to|correspond to|correspond with} left front → as for: piece {words 'left front', name 'left front'}, reversing false
    Work armhole {shaping|shapings} as for back → as for: piece {words back, name back}, reversing false, only armhole
    Work as for back {to armhole measures|until armhole is|until armhole measures} 10 cm → as for: piece {words back, name back}, reversing false, to {length, mm 100, from armhole}
    Work as for back to {the beg of armhole|the start of armhole|the end of armhole|the bottom of armhole|the top of armhole|beg of armhole|first row of armhole|the armhole} → as for: piece {words back, name back}, reversing false, to {place, place armhole}
    Work as for back to raglan armhole shaping → as for: piece {words back, name back}, reversing false, to {place, place raglan}
    Work as for back to shoulder armhole shaping → as for: piece {words back, name back}, reversing false, to {place, place shoulder}
  `,
  'bind-off': `
    Bind off all sts and {weave in ends|darn in ends|sew up|draw up} → bind off: rest | @22 note: about 'making up'
    Bind off all sts and {fasten off|break yarn|cut yarn} → bind off: rest | @22 note: about yarn
    Bind off all sts and finish off → bind off: rest | @22 ending
    Bind off 10 sts each shoulder → bind off: stitches 10
    Bind off{.|,|;|:|} → bind off
  `,
  'cast-on': `
    With yarn A, cast on 40 {new|extra} sts → yarn: name A | @14 cast on: stitches 40 | ✗ stitch or repeat expected @25
    With yarn A, cast on 40 sts on {each side|both sides} → yarn: name A | @14 cast on: stitches 40 | @29 work on: which 'both at once'
    Cast on {loosely|on|a} 40 sts → cast on: stitches 40
    Cast on 40 sts {using|by|with|in} the long tail method → cast on: stitches 40
    With yarn A, cast on {loosely|on|a} 40 sts → yarn: name A | @14 cast on: stitches 40
    With yarn A, cast on 40 sts at each side → yarn: name A | @14 groups: work co, edge both, groups [{stitches 40, rows 2, every 1}]
    With yarn A, cast on 40 sts at end → yarn: name A | @14 groups: work co, edge end, groups [{stitches 40, rows 1, every 2}]
  `,
  change: `
    {Change|Changing|Switch|Switching} to 4 mm needles → needle: mm 4
    {Change|Changing|Switch|Switching} back to yarn B → yarn: name B
    {Change to yarn B,|Change to yarn B;|Switch to yarn B,|Switch to yarn B;} k 6 rows → yarn: name B | @19 rows: n 6, items 'k to {left 'what follows'}'
    {Change to yarn B and|Switch to yarn B and|Switching to yarn B,|Switching to yarn B;} k 6 rows → yarn: name B | @22 rows: n 6, items 'k to {left 'what follows'}'
    Changing to yarn {B,|B;} k 6 rows → yarn: name B | @21 rows: n 6, items 'k to {left 'what follows'}'
    Changing to yarn B and k 6 rows → yarn: name B | @24 rows: n 6, items 'k to {left 'what follows'}'
    Switching to yarn B and k 6 rows → yarn: name B | @25 rows: n 6, items 'k to {left 'what follows'}'
    Change to {k 6 rows|p 6 rows|6 sts} → ✗ stitch or repeat expected @1
  `,
  even: `
    Beg working in garter st for 6 rows → even: fabric {named, name garter}, until {rows, n 6}
    {End|Ending|Finish|Finishing} with 6 rows in garter st → even: fabric {named, name garter}, until {rows, n 6}
    Cont to work in garter st for 6 rows → even: fabric {named, name garter}, until {rows, n 6}
    Rib for 10 cm → even: fabric {pattern, words rib, name rib, else rib}, until {length, mm 100, from here}
    Rib until 10 cm → even: fabric {pattern, words rib, name rib, else rib}, until {length, mm 100, from start}
    Rib to 10 cm → even: until {length, mm 100, from here}
    K 1, p 1 in rib to {end|last 4 sts} → ✗ stitch or repeat expected @10
    K 1, p 1 to last st → row: items '(k, p) to {left 1}'
    Work k every row for 6 rows → even: fabric {named, name garter}, until {rows, n 6}
    And k every row for 6 rows → @5 even: fabric {named, name garter}, until {rows, n 6}
    Work garter st ({k every row|k each row|every row k|each row k}) for 6 rows → even: fabric {named, name garter}, until {rows, n 6}
    Work st st ({k on RS, p on WS|k on right side, p on wrong side}) for 6 rows → even: fabric {named, name stocking}, until {rows, n 6}
    Work 6 rows {of|in} garter st → even: fabric {named, name garter}, until {rows, n 6}
    Work 6 ridges {of|in} garter st → even: fabric {named, name garter}, until {rows, n 12}
    Keeping pats correct, work 6 rows → note: about aside | @23 even: until {rows, n 6}
    Work in {this patt|est patt|same patt|main patt|patt as set|pats correct|patt correct|pats|pats as set|pats throughout|patt correct over all sts} for 6 rows → even: fabric {established}, until {rows, n 6}
    Work in st st for {another|a further|further|about|approx|total of|a total of} 10 cm → even: fabric {named, name stocking}, until {length, mm 100, from here}
    Work in garter st for {6 more rows|6 further rows|another 6 rows|6 rows more|6 rows} → even: fabric {named, name garter}, until {rows, n 6}
  `,
  gauge: `
    Gauge: 20 sts {and|,|;|.|x|to|-} 28 rows = 10 cm → gauge: stitches 20, rows 28
  `,
  groups: `
    Bind off {for armhole|for the armhole|for underarm|for shoulder|for neck|for raglan} 4 sts at beg of next 2 rows → groups: work bo, edge beginning, groups [{stitches 4, rows 2, every 1}]
    Bind off 4 sts {for armhole|for the armhole|for the underarm|for underarm|for shoulder|for neck|for raglan|for each shoulder|for first shoulder|for second shoulder|for back neck|for front of neck} at beg of next 2 rows → groups: work bo, edge beginning, groups [{stitches 4, rows 2, every 1}]
    Bind off 4 sts at beg of next 2 rows {for armhole|for the armhole|for the underarm|for underarm|for shoulder|for neck|for raglan|for each shoulder|for first shoulder|for second shoulder|for back neck|for front of neck} → groups: work bo, edge beginning, groups [{stitches 4, rows 2, every 1}]
    Bind off 4 sts {in patt|loosely|in rib} at beg of next 2 rows → groups: work bo, edge beginning, groups [{stitches 4, rows 2, every 1}]
    Bind off 4 sts each {side|sides|end|edge} → groups: work bo, edge both, groups [{stitches 4, rows 2, every 1}]
    Bind off 4 sts at each {side|end|edge} of next row → groups: work bo, edge both, groups [{stitches 4, rows 2, every 1}]
  `,
  hold: `
    Place first 10 sts on holder → hold: which first, stitches 10
    Place {next|these|those} 10 sts on holder → hold: which all, stitches 10
    Place rem on holder → hold: which rest
    Place {these|them} on holder → hold: which all
    Leave the rem on a holder → hold: which rest
    Leave {these|them} on a holder → hold: which all
  `,
  label: `
    Row 1 {:|-|.|=} K 4 → row: label {rows [1]}, items 'k ×4'
    Row 1 (RS) {:|-|} K 4 → row: label {rows [1], side RS}, items 'k ×4'
    Row 1 {wrong side|WS|(WS)|[WS]|, wrong side}: K 4 → row: label {rows [1], side WS}, items 'k ×4'
    Row 1 {right side|RS|(RS)|[RS]|, right side}: K 4 → row: label {rows [1], side RS}, items 'k ×4'
    Rows 1 (RS) {and|,} 3 : K 4 → row: label {rows [1; 3]}, items 'k ×4'
    Rows 1 (RS) - 3 : K 4 → row: label {rows [1; 2; 3]}, items 'k ×4'
    Row 1 and every {alt|other} row: K 4 → row: label {rows [1], everyOther}, items 'k ×4'
    2nd and every {alt|other} row: K 4 → row: label {rows [2], everyOther}, items 'k ×4'
    Rows 1 and rows 3: K 4 → row: label {rows [1; 3]}, items 'k ×4'
  `,
  multiple: `
    Basket pattern ({multiple|multiples|mult} of 8 plus 4) → multiple: of 8, plus 4, name basket
    Basket pattern (worked over a multiple of 8 plus 4) → multiple: of 8, plus 4, name basket
  `,
  'next-side': `
    Work 6 rows, first row is a RS row → @14 next side: side RS | even: until {rows, n 6}
    Work 6 rows {noting first row is|noting that first row is|noting first row will be} WS → @13 next side: side WS | even: until {rows, n 6}
    Cont in st st, noting that first row is {a WS row|the WS|on WS|WS|on wrong side row|a wrong side row} → @16 next side: side WS | even: fabric {named, name stocking}
    Cont in st st ({WS|a WS row|the WS row|on WS|WS side}) → @15 next side: side WS | even: fabric {named, name stocking}
  `,
  note: `
    Attach thread to first st, k 4 → rejoin | @28 row: items 'k ×4'
    Attach another ball to first st, k 4 → rejoin | @34 row: items 'k ×4'
    K 6 rows (24 sts {dec|decreased|inc|increased}) → rows: n 6, items 'k to {left 'what follows'}' | @10 note: about change
    Mark {each end|each edge of row|center st|both ends} → note: about marker
    Attach {yarn|wool|ball} to first st, k 4 → rejoin | @26 row: items 'k ×4'
    Attach {new ball|the yarn} to first st, k 4 → rejoin | @30 row: items 'k ×4'
    Finishing {with|on|after} a WS row → ending: end WS
    To {make|finish|fit} up, sew seams → note: about 'making up'
    These sts {form the pattern|are the center} → note: about 'making up'
  `,
  'other-side': `
    Complete other side to match {first side|other half|right shoulder} → other side: reversing false
    Work second side to match, {reversing all shaping|reversing shapings|reversing the shaping|reversing all shapings|shapings reversed|all shapings reversed|reversing} → other side: reversing
  `,
  own: `
    K until {the|you|are} 3 sts, xyzzy → even: fabric {knit on}, until {count, stitches 3} | ✗ stitch or repeat expected @20
    K until you have 3 sts, xyzzy → even: fabric {knit on}, until {count, stitches 3} | ✗ stitch or repeat expected @25
    K until only 3 sts, xyzzy → even: fabric {knit on}, until {count, stitches 3} | ✗ stitch or repeat expected @21
    K until {you reach|last|next|within} 3 sts, xyzzy → ✗ stitch or repeat expected @3
  `,
  'pick-up': `
    Pick up and k {the next 20 sts|the 20 sts|20 sts|next 20 sts} along neck edge → pick up: items 'pu ×20', edges [{stitches 20, along 'neck edge'}]
    Pick up and k 20 sts along neck edge, then pick up 10 from holder → pick up: items 'pu ×20, pu ×10', edges [{stitches 20, along 'neck edge'}; {stitches 10, along holder}]
    Pick up and k 20 sts along neck [edge] → pick up: items 'pu ×20', edges [{stitches 20, along neck}] | ✗ stitch or repeat expected @34
  `,
  rejoin: `
    {Tie|Rejoin|Join|Attach|Rejoining} {yarn|the yarn|a ball} {to|at|on} rem sts → rejoin
    Fasten yarn to rem sts → note: about yarn | @13 rejoin
    Rejoin {yarn|a ball|the yarn|the ball|a yarn|a new ball|new ball|second ball|a second ball|another ball|new yarn} to rem sts → rejoin
    {Sl|Place|Put} rem sts {from holder|from st holder|from the holder|off holder|off the holder|off st holder|onto needle|on needle|to needle|back on needle|back onto needle|back to needle} → rejoin
    Rejoin yarn to the inner end → rejoin | ✗ stitch or repeat expected @20
    Rejoin yarn to {neck end|inner edge|end|inside edge} → rejoin
  `,
  'repeat-rows': `
    K 1 row, p 1 row, {end|ending|finish|finishing} with a rep of row 1 → rows: n 1, items 'k to {left 'what follows'}' | @10 rows: n 1, items 'p to {left 'what follows'}' | @19 repeat rows: from 1, to 1, times 1
    Cont {rep|working|work|to rep|to working|to work} rows 1 to 4 twice → repeat rows: from 1, to 4, times 2
    Rep them 5 times → repeat rows: last 0, times 5
    Work 6 rows, ending with a rep of rows 2 to 4 → even: until {rows, n 6} | @14 repeat rows: from 2, to 4, times 1
    Work 6 rows, ending with 4 rows in garter st → even: until {rows, n 6} | @14 even: fabric {named, name garter}, until {rows, n 4}
  `,
  rounds: `
    {Place marker and join|PM and join|PM, join|Place marker, join} to work in the round → ✗ worked in rounds @1
    {Join|Joining} in a ring → ✗ worked in rounds @1
    {Rep dec rnd 5 times|Work in garter st for 6 rnds|Dec 6 sts evenly across rnd} → ✗ worked in rounds @1
  `,
  row: `
    Row 3: {Work as row 1|The same as row 1|As row 1|Like row 1|Rep row 1} → row: label {rows [3]}, items '', like 1
    Row 3: As 1 {sts|* k 2} → ✗ stitch or repeat expected @11
    Row 3: As row 1 from end → ✗ stitch or repeat expected @15
    Row 3: K 1 row, dec 4 sts {evenly across row|evenly across|evenly|across row|} → row: label {rows [3]}, items '{evenly, change -4, work k}'
    Row 3: P 1 row, inc 4 {evenly across row|sts} → row: label {rows [3]}, items '{evenly, change 4, work p}'
    Row 3: Dec 1 st {in first and last st|in first st and last st|at each end|at both ends|each end|each side|at beg and end}{| of row}{.|,|} → row: label {rows [3]}, items 'dec, patt to {left 'what follows'}, dec'
    Row 3: Work even in garter st{.|,|;|:|} → even: fabric {named, name garter}, until {rows, n 1}
  `,
  rows: `
    K 6 rows {in|of} garter st {for border|for the border|for the top border|for lower edge|to make the lower band|to make top band|to the hem|for the upper edge|for make band|for bottom hem|} → even: fabric {named, name garter}, until {rows, n 6}
    K 6 {rows|more rows|further rows} → rows: n 6, items 'k to {left 'what follows'}'
    K 6 {rows in garter|rows of garter st|more rows in garter|more rows of garter st|further rows in garter|further rows of garter st} → even: fabric {named, name garter}, until {rows, n 6}
    K back{.|,|;|} → rows: n 1, items 'k to {left 'what follows'}'
    K {next|1|a} row → rows: n 1, items 'k to {left 'what follows'}'
  `,
};

describe.each(Object.entries(lines))('%s, in rarer words,', (_name, text) => {
  it.each(table(text))('is read: $line', expectReading);
});
