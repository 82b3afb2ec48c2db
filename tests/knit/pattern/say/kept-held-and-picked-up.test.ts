import { describe, it } from 'vitest';
import { table } from '../table.ts';
import { expectReading } from './said.ts';

/** What is kept at the edges, rests, is taken or picked up, in which yarn and on which needle; what looks like it and is told has ✗. Common practice, no published source. */
const lines: Readonly<Record<string, string>> = {
  borders: `
    Keeping 6 sts at each end in garter st → borders: borders [{edge both, stitches 6, fabric {named, name garter}}]
    Keep 6 sts at each end in garter st throughout → borders: borders [{edge both, stitches 6, fabric {named, name garter}}], throughout
    With first and last 5 sts in moss st → borders: borders [{edge both, stitches 5, fabric {named, name moss}}]
    With the first and the last 5 sts in moss st → borders: borders [{edge both, stitches 5, fabric {named, name moss}}]
    With first 5 and last 7 sts in moss st → borders: borders [{edge beginning, stitches 5, fabric {named, name moss}}; {edge end, stitches 7, fabric {named, name moss}}]
    With first, and last 5 sts in moss st → note: about yarn | ✗ stitch or repeat expected @22
    Keeping first 5 sts in garter st → borders: borders [{edge beginning, stitches 5, fabric {named, name garter}}]
    Keeping last 5 sts in garter st → borders: borders [{edge end, stitches 5, fabric {named, name garter}}]
    Keeping first st in garter st → borders: borders [{edge beginning, stitches 1, fabric {named, name garter}}]
    Keeping first and last st in garter st → borders: borders [{edge both, stitches 1, fabric {named, name garter}}]
    Keeping 5 sts in garter st at front edge → borders: borders [{edge neck, stitches 5, fabric {named, name garter}}]
    Keeping the 5 border sts at front edge in garter st → borders: borders [{edge neck, stitches 5, fabric {named, name garter}}]
    Keeping the front 6 sts in garter st → borders: borders [{edge neck, stitches 6, fabric {named, name garter}}]
    Keeping 7 center front sts in garter st → borders: borders [{edge neck, stitches 7, fabric {named, name garter}}]
    Keeping 7 sts at the center front in garter st → ✗ stitch or repeat expected @15
    Keeping a 5-st garter st border at each end → borders: borders [{edge both, stitches 5, fabric {named, name garter}}]
    Keeping garter st borders of 5 sts at each edge → borders: borders [{edge both, stitches 5, fabric {named, name garter}}]
    Keeping 5 sts in garter st for the front border → borders: borders [{edge unsaid, stitches 5, fabric {named, name garter}}]
    Keeping 5 sts in garter st for buttonhole band → borders: borders [{edge unsaid, stitches 5, fabric {named, name garter}}]
    Keep garter st borders → borders: borders []
    Keep garter st border at neck edge → ✗ stitch or repeat expected @23
    Keeping borders in garter st → borders: borders []
    Keeping border sts in moss st as before → borders: borders []
    Except first and last 4 sts which are worked in garter st → borders: borders [{edge both, stitches 4, fabric {named, name garter}}]
    Except for the last 4 sts, which are kept in garter st → ✗ stitch or repeat expected @1
    Other than 4 sts at each end, work in st st → ✗ stitch or repeat expected @1
    Work first and last 3 sts in moss st → borders: borders [{edge both, stitches 3, fabric {named, name moss}}]
    Work first and last 3 sts in moss st, rem sts in st st → borders: borders [{edge both, stitches 3, fabric {named, name moss}}], main {named, name stocking}
    Work first 3 sts in moss st, k to last 3 sts → row: items 'patt ×3, k to {left 3}'
    Always work first and last 3 sts in moss st → borders: borders [{edge both, stitches 3, fabric {named, name moss}}]
    K the first and last 3 sts on every row → borders: borders [{edge both, stitches 3, fabric {named, name garter}}]
    K first and last 3 sts of all rows → borders: borders [{edge both, stitches 3, fabric {named, name garter}}]
    K the first and last 3 sts of WS rows → ✗ stitch or repeat expected @7
    K the first and last 3 sts → ✗ stitch or repeat expected @7
    Always k the first and last 3 sts → borders: borders [{edge both, stitches 3, fabric {named, name garter}}]
    Always knit the first st → slips: work k
    Always k 3 sts at each end → borders: borders [{edge both, stitches 3, fabric {named, name garter}}]
    Working 3 sts at each end in garter st and rem sts in st st → borders: borders [{edge both, stitches 3, fabric {named, name garter}}], main {named, name stocking}
    Work in st st with 3 sts at each end in garter st → @15 borders: borders [{edge both, stitches 3, fabric {named, name garter}}] | even: fabric {named, name stocking}
    Maintaining 3 sts at each end in garter st, cont in st st → borders: borders [{edge both, stitches 3, fabric {named, name garter}}] | @45 even: fabric {named, name stocking}
    Keeping 3 sts at each end in garter st, work 6 rows → borders: borders [{edge both, stitches 3, fabric {named, name garter}}] | @41 even: until {rows, n 6}
    (Keeping 3 sts at each end in garter st) → borders: borders [{edge both, stitches 3, fabric {named, name garter}}]
    Keeping 3.5 sts at each end in garter st → ✗ stitch or repeat expected @1
    Keeping 0 sts at each end in garter st → ✗ stitch or repeat expected @15
    Keeping 3 sts at armhole edge in garter st and 4 sts at neck edge in moss st → borders: borders [{edge armhole, stitches 3, fabric {named, name garter}}; {edge neck, stitches 4, fabric {named, name moss}}]
  `,
  'what rests and is taken up': `
    Place rem 24 sts on holder → hold: which rest, stitches 24
    Leave centre 17 sts on a holder → hold: which centre, stitches 17
    Place first 8 sts on a holder → hold: which first, stitches 8
    Place last 8 sts on a stitch holder → hold: which last, stitches 8
    Sl next 8 sts to a holder → hold: which all, stitches 8
    Put 8 sts on spare needle → hold: which all, stitches 8
    Leave rem sts → ✗ stitch or repeat expected @1
    Place sts on holder for the neck → hold: which all
    Leave 24 sts on a holder for back of neck → hold: which all, stitches 24
    Break yarn and leave sts on holder → note: about yarn | @16 hold: which all
    Rejoin yarn to rem 28 sts at neck edge → rejoin: stitches 28
    With RS facing rejoin yarn to rem 28 sts → rejoin: stitches 28, side RS
    With WS facing, join yarn to rem sts → rejoin: side WS
    Return to rem sts → rejoin
    Return to sts on holder → rejoin
    Go back to the other 12 sts → rejoin: stitches 12
    Sl sts from holder to needle → rejoin
    Place left front sts on needle → rejoin: edge left
    Transfer right front sts from holder → rejoin: edge right
    Put back sts on needle → rejoin: edge middle
    Attach a second ball of yarn to 28 sts → rejoin: stitches 28
    Join a new ball at neck edge → rejoin
    Rejoin yarn → rejoin
  `,
  'yarns and stripes': `
    Change to B → yarn: name B
    Change to yarn B and knit 2 rows → yarn: name B | @22 rows: n 2, items 'k to {left 'what follows'}'
    With B, knit 2 rows → yarn: name B | @9 rows: n 2, items 'k to {left 'what follows'}'
    Join B and knit 2 rows → yarn: name B | @12 rows: n 2, items 'k to {left 'what follows'}'
    Join in A → yarn: name A
    Using A, cast on 20 sts → yarn: name A | @10 cast on: stitches 20
    Work in stripes of 4 rows A, 2 rows B → stripes: of [{rows 4, yarn A}; {rows 2, yarn B}]
    Work in st st in stripes of 4 rows A, 2 rows B → even: fabric {named, name stocking} | @15 stripes: of [{rows 4, yarn A}; {rows 2, yarn B}]
    Stripe sequence: 4 rows A, 2 rows B → stripes: of [{rows 4, yarn A}; {rows 2, yarn B}], listed anew
    Stripe pattern: 2 rows A, 2 rows B, 4 rows C → stripes: of [{rows 2, yarn A}; {rows 2, yarn B}; {rows 4, yarn C}], listed anew
    Cont in stripe sequence → stripes
    Work 2 rows A, 4 rows B → stripes: of [{rows 2, yarn A}; {rows 4, yarn B}], listed on
    2 rows A, 4 rows B → stripes: of [{rows 2, yarn A}; {rows 4, yarn B}], listed on
    Break off A → note: about yarn
    K 2 rows A → @10 yarn: name A | rows: n 2, items 'k to {left 'what follows'}'
  `,
  'where one order ends and the next begins': `
    Work to correspond; bind off → other side: reversing false | @21 bind off
    Work to correspond, bind off → other side: reversing false | @21 bind off
    Work to correspond with → ✗ stitch or repeat expected @1
    These 2 rows form rib, repeat a further 4 times → named rows: name rib, rows 2 | @24 repeat rows: last 2, times 4
    These 2 rows form rib; repeat a further 4 times → named rows: name rib, rows 2 | @24 repeat rows: last 2, times 4
    These 2 rows are called moss → named rows: name moss, rows 2
    The last 4 rows set the pattern → named rows: name '', rows 4
    Dec 1 st at beg of armhole edge every row 3 times → shape: change -1, edge armhole, beats [{first 1, every 1, counted, times 3}]
    Dec 1 st at beg of row on armhole side every row 3 times → shape: change -1, edge armhole, beats [{first 1, every 1, counted, times 3}]
    Dec 1 st at beg of row at armhole edge every row 3 times → shape: change -1, edge armhole, beats [{first 1, every 1, counted, times 3}]
    On every RS row, dec 1 st at each end 3 times → shape: change -1, edge both, beats [{every 2, side RS, times 3, counted}]
    On every RS row, dec 1 st at each end until 20 sts rem → shape: change -1, edge both, beats [{every 2, side RS, toCount 20}]
    Sl the first st of every row → slips: work sl
    The first st of every row should be slipped → slips: work sl
    Always sl the first st → slips: work sl
    Make a buttonhole every 4th row until 3 in all → buttonholes: beats [{every 4, times 3}]
    Make a buttonhole on next row and every 4th row until 3 in all are made → buttonholes: beats [{first 1, every 1, times 1}; {every 4, times 2}]
    Make a buttonhole every 4th row until there are 3 buttonholes → buttonholes: beats [{every 4, times 3}]
    Then cast on 9 sts → @6 cast on: stitches 9
    To make flap, cast on 18 sts → @15 cast on: stitches 18
    And then cast on 9 sts → @10 cast on: stitches 9
    Using 4 mm needles and colour A, cast on 20 sts → needle: mm 4 | @20 yarn: name A | @34 cast on: stitches 20
    Pick up and k 80 sts along the neck edge, then work in rib → pick up: items 'pu ×80', edges [{stitches 80, along 'neck edge'}] | @48 even: fabric {pattern, words rib, name rib, else rib}
    Pick up and k 80 sts around neck and work 6 rows → pick up: items 'pu ×80', edges [{stitches 80, along neck}] | @38 even: until {rows, n 6}
    Pick up and k 80 sts from front neck (RS) → pick up: items 'pu ×80', edges [{stitches 80, along 'front neck'}] | @38 next side: side RS
  `,
  'picked up and multiples': `
    Pick up and knit 80 sts along neck edge → pick up: items 'pu ×80', edges [{stitches 80, along 'neck edge'}]
    Pick up and k 20 sts down left front, 14 sts from holder, 20 sts up right front → pick up: items 'pu ×20, pu ×14, pu ×20', edges [{stitches 20, along 'left front'}; {stitches 14, along holder, held}; {stitches 20, along 'right front'}]
    With RS facing, pick up and k 80 sts evenly around neck → pick up: items 'pu ×80', edges [{stitches 80, along neck}]
    Pick up 80 sts → pick up: items 'pu ×80', edges [{stitches 80, along ''}]
    Pick up and knit 3 sts for every 4 rows along front edge → ✗ stitch or repeat expected @1
    Pick up 1 st for each ridge → ✗ stitch or repeat expected @1
    Multiple of 4 sts plus 2 → multiple: of 4, plus 2, name ''
    Multiple of 4 → multiple: of 4, plus 0, name ''
    Worked over a multiple of 6 + 1 → multiple: of 6, plus 1, name ''
    (Multiple of 8 sts plus 3) → multiple: of 8, plus 3, name ''
    Over an even number of sts → ✗ stitch or repeat expected @6
    Over an odd number of sts → ✗ stitch or repeat expected @6
    20 sts and 28 rows = 10 cm → gauge: stitches 20, rows 28
    Gauge: 22 sts to 10 cm on 4 mm needles → gauge: stitches 22, needle 4
    With 4 mm needles → needle: mm 4
    Change to 4 mm needles → needle: mm 4
    Change to larger needles → needle
    Change to smaller needles and work in rib → needle | @31 even: fabric {pattern, words rib, name rib, else rib}
    Using size 8 needles, cast on 20 sts → needle | @23 cast on: stitches 20
    With No. 8 needles → needle
    With US 8 needles → needle
    Change to 4 mm needles and st st → needle: mm 4 | @28 even: fabric {named, name stocking}
  `,
};

describe.each(Object.entries(lines))('%s', (_, some) => {
  it.each(table(some))('$line', expectReading);
});
