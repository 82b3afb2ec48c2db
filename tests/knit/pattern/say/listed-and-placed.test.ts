import { describe, it } from 'vitest';
import { table } from '../table.ts';
import { expectReading } from './said.ts';

/** Groups one after the other, places by all their names, rhythms by all their ends; what looks like them and is told has ✗. Common practice, no published source. */
const lines: Readonly<Record<string, string>> = {
  'groups that are listed': `
    At armhole edge bind off 3, 2, 1, 1 sts → groups: work bo, edge armhole, groups [{stitches 3, rows 1, every 2}; {stitches 2, rows 1, every 2}; {stitches 1, rows 1, every 2}; {stitches 1, rows 1, every 2}]
    Bind off 3, 2, 1 sts at beg of next 6 rows → groups: work bo, edge beginning, groups [{stitches 3, rows 2, every 1}; {stitches 2, rows 2, every 1}; {stitches 1, rows 2, every 1}]
    Bind off 3, 2, 1 sts at beg of next 7 rows → ✗ stitch or repeat expected @13
    Bind off 3, 2, 1 and 1 sts at neck edge every other row → groups: work bo, edge neck, groups [{stitches 3, rows 1, every 2}; {stitches 2, rows 1, every 2}; {stitches 1, rows 1, every 2}; {stitches 1, rows 1, every 2}]
    Bind off 3-2-1 sts at neck edge every other row → groups: work bo, edge neck, groups [{stitches 3, rows 1, every 2}; {stitches 2, rows 1, every 2}; {stitches 1, rows 1, every 2}]
    Bind off 3/2/1 sts at neck edge on alt rows → ✗ stitch or repeat expected @12
    Bind off 3, 5 sts at neck edge every other row → ✗ stitch or repeat expected @13
    At neck edge bind off 2 x 3 sts, 1 x 2 sts → groups: work bo, edge neck, groups [{stitches 3, rows 2, every 2}; {stitches 2, rows 1, every 2}]
    At neck edge bind off 4 sts once, 3 sts twice → groups: work bo, edge neck, groups [{stitches 4, rows 1, every 2}; {stitches 3, rows 2, every 2}]
    At neck edge bind off 4 sts once, 3 sts twice, then 2 sts every other row 3 times → groups: work bo, edge neck, groups [{stitches 4, rows 1, every 2}; {stitches 3, rows 2, every 2}; {stitches 2, rows 3, every 2}]
    At each side every other row bind off 3 sts once, 2 sts twice → groups: work bo, edge both, groups [{stitches 3, rows 2, every 1}; {stitches 2, rows 4, every 1}]
    Bind off at each side every other row: 3 sts once, 2 sts twice → groups: work bo, edge both, groups [{stitches 3, rows 2, every 1}; {stitches 2, rows 4, every 1}]
    Bind off 4 sts at beg of each row 3 times each side → groups: work bo, edge beginning, groups [{stitches 4, rows 6, every 1}]
    Bind off 4 sts at beg of every row at both sides → groups: work bo, edge both, groups [{stitches 4, rows 2, every 1}]
    Bind off 4 sts, at the beg of next 2 rows → groups: work bo, edge beginning, groups [{stitches 4, rows 2, every 1}]
    Bind off 6 sts 3 times from armhole side → groups: work bo, edge armhole, groups [{stitches 6, rows 3, every 2}]
    Bind off 6 sts 3 times at armhole edge → groups: work bo, edge armhole, groups [{stitches 6, rows 3, every 2}]
    Bind off 6 sts at armhole edge 3 times → groups: work bo, edge armhole, groups [{stitches 6, rows 3, every 2}]
    Bind off 6 sts at armhole edge once and 3 sts once → groups: work bo, edge armhole, groups [{stitches 6, rows 1, every 2}; {stitches 3, rows 1, every 2}]
    Bind off 6 sts at armhole edge, at the beg of next row → groups: work bo, edge armhole, groups [{stitches 6, rows 1, every 2}] | ✗ stitch or repeat expected @33
    Bind off 5 sts at beg of next row, and 1 st on the next 3 alt rows → groups: work bo, edge beginning, groups [{stitches 5, rows 1, every 1}; {stitches 1, rows 3, every 2}]
    Bind off 8 sts at beg of next 6 rows (24 sts for each shoulder) → groups: work bo, edge beginning, groups [{stitches 8, rows 6, every 1}]
    Bind off 8 sts at beg of next 6 rows (24 sts on each shoulder) → groups: work bo, edge beginning, groups [{stitches 8, rows 6, every 1}]
    Bind off 8 sts at beg of next 6 rows for shoulders, rem sts for neck → groups: work bo, edge beginning, groups [{stitches 8, rows 6, every 1}] | ✗ stitch or repeat expected @53
    Bind off the next 5 sts at neck edge → groups: work bo, edge neck, groups [{stitches 5, rows 1, every 2}]
    Bind off the rem 5 sts at neck edge → groups: work bo, edge neck, groups [{stitches 5, rows 1, every 2}]
    Bind off 5 sts in pattern at beg of next 2 rows → groups: work bo, edge beginning, groups [{stitches 5, rows 2, every 1}]
    Bind off 5 sts loosely at beg of next 2 rows → groups: work bo, edge beginning, groups [{stitches 5, rows 2, every 1}]
    Bind off 5 sts at each armhole edge → groups: work bo, edge both, groups [{stitches 5, rows 2, every 1}]
    Bind off 5 sts each end → groups: work bo, edge both, groups [{stitches 5, rows 2, every 1}]
    Bind off 5 sts each side of next 2 rows → groups: work bo, edge both, groups [{stitches 5, rows 2, every 1}]
    Cast on 4 more sts at end of next row → groups: work co, edge end, groups [{stitches 4, rows 1, every 1}]
    Cast on 4 sts at beg of next 2 rows for sleeves → groups: work co, edge beginning, groups [{stitches 4, rows 2, every 1}]
    Cast on at beg of next 4 rows 6 sts → groups: work co, edge beginning, groups [{stitches 6, rows 4, every 1}]
    Bind off at beg of next 4 rows 6 sts, bind off 20 sts → groups: work bo, edge beginning, groups [{stitches 6, rows 4, every 1}] | @39 bind off: stitches 20
    At neck edge, bind off 5 sts, work to end of row → groups: work bo, edge neck, groups [{stitches 5, rows 1, every 2}]
    At neck edge, bind off 5 sts, and work across the row → groups: work bo, edge neck, groups [{stitches 5, rows 1, every 2}]
    At neck edge, bind off 5 sts, work in pattern to the end → groups: work bo, edge neck, groups [{stitches 5, rows 1, every 2}]
    At neck edge, bind off 5 sts, work to marker → groups: work bo, edge neck, groups [{stitches 5, rows 1, every 2}] | @31 row: items 'patt to {marker 0}'
    At neck edge bind off 5 sts for back of neck → groups: work bo, edge neck, groups [{stitches 5, rows 1, every 2}]
    Bind off 5.5 sts at neck edge → ✗ stitch or repeat expected @10
    Bind off sts at neck edge → ✗ stitch or repeat expected @14
    Bind off 4 sts at beg of every 2 cm → ✗ stitch or repeat expected @16
  `,
  places: `
    Work even until piece measures 10 cm from cast-on edge → even: until {length, mm 100, from start}
    Work even until piece measures 10 cm from beg of armhole → even: until {length, mm 100, from armhole}
    Work even until piece measures 10 cm above ribbing → even: until {length, mm 100, from rib}
    Work even until piece measures 10 cm above top of ribbing → even: until {length, mm 100, from rib}
    Work even until piece measures 10 cm after last bind-off → even: until {length, mm 100, from armhole}
    Work even until piece measures 10 cm after the armhole bind off → even: until {length, mm 100, from armhole}
    Work even until piece measures 10 cm from first row → ✗ stitch or repeat expected @38
    Work even until piece measures 10 cm from the first row of armhole shaping → ✗ stitch or repeat expected @38
    Work even until piece measures 10 cm from marker → even: until {length, mm 100, from marker}
    Work even until piece measures 10 cm from where sts were picked up → ✗ stitch or repeat expected @38
    Work even until piece measures 10 cm from last dec → even: until {length, mm 100, from heading}
    Work even until piece measures 10 cm from neck division → ✗ stitch or repeat expected @48
    Work even until piece measures 10 cm from the turn → even: until {length, mm 100, from rib}
    Work even until piece measures 10 cm from here → even: until {length, mm 100, from heading}
    Work even until piece measures 10 cm from beg → even: until {length, mm 100, from start}
    Work even until piece measures 10 cm from lower edge → even: until {length, mm 100, from start}
    Work even until piece measures 10 cm from bottom of welt → ✗ stitch or repeat expected @53
    Work even until piece measures 10 cm straight up from armhole → even: until {length, mm 100, from armhole}
    Work even until piece measures 10 cm in all → even: until {length, mm 100, from start}
    Work even until piece measures 10 cm altogether → even: until {length, mm 100, from start}
    Work even until piece measures 10 cm total → even: until {length, mm 100, from start}
    Work even until piece measures 10 cm from hem, bind off 5 sts at beg of next 2 rows → even: until {length, mm 100, from rib} | @48 groups: work bo, edge beginning, groups [{stitches 5, rows 2, every 1}]
    Work as for back to armhole → as for: piece {words back, name back}, reversing false, to {place, place armhole}
    Work as for back to armhole shaping → as for: piece {words back, name back}, reversing false, to {place, place armhole}
    Work as for back to the beg of armhole → as for: piece {words back, name back}, reversing false, to {place, place armhole}
    Work as for back to 1st shoulder bind-off → as for: piece {words back, name back}, reversing false, to {place, place shoulder}
    Work as for back to end of ribbing → as for: piece {words back, name back}, reversing false, to {place, place rib}
    Work as for back to bottom of neck opening → as for: piece {words back, name back}, reversing false, to {place, place neck}
    Work as for back to start of raglan → as for: piece {words back, name back}, reversing false, to {place, place raglan}
    Work as for back to underarm → as for: piece {words back, name back}, reversing false, to {place, place armhole}
    Work as for back to shape cap → as for: piece {words back, name back}, reversing false, to {place, place cap}
    Work as for back to waist → as for: piece {words back, name back}, reversing false, to {place, place waist}
    Work as for back to front neck → as for: piece {words back, name back}, reversing false, to {place, place neck}
    Work as for the other sleeve → as for: piece {words 'other sleeve', name sleeve}, reversing false
    Work as for first sleeve → as for: piece {words 'first sleeve', name sleeve}, reversing false
    Work as for second side → as for: piece {words 'second side'}, reversing false
    Work as for 1st front → as for: piece {words 'first front', name front}, reversing false
    Work as for left front → as for: piece {words 'left front', name 'left front'}, reversing false
    Work as for tab → as for: piece {words tab, name tab}, reversing false
    Work as for right pocket → as for: piece {words 'right pocket', name 'right pocket'}, reversing false
    Work as for one sleeve → ✗ stitch or repeat expected @1
    Work as for piece → as for: piece {words piece}, reversing false
  `,
  'rhythms that end': `
    Dec 1 st at neck edge every row for 6 rows → shape: change -1, edge neck, beats [{first 1, every 1, counted, times 6}]
    Dec 1 st at neck edge every other row for 6 rows → shape: change -1, edge neck, beats [{every 2, counted, times 3}]
    Dec 1 st at neck edge every other row for the next 6 rows → shape: change -1, edge neck, beats [{every 2, counted, times 3}]
    Dec 1 st at neck edge every other row for a further 6 rows → shape: change -1, edge neck, beats [{every 2, counted, times 3}]
    Dec 1 st at neck edge every other row for 5 rows → ✗ stitch or repeat expected @39
    Dec 1 st at each end for 3 ridges → shape: change -1, edge both, beats [{every 2, times 3, counted}]
    Dec 1 st at each end of foll 3 alt rows → shape: change -1, edge both, beats [{every 2, times 3}]
    Dec 1 st at each end of following 5 rows → shape: change -1, edge both, beats [{every 1, times 5}]
    Dec 1 st at each end of 3 foll alt rows → shape: change -1, edge both, beats [{every 2, times 3}]
    Dec 1 st at each end of foll rows until 60 sts remain → shape: change -1, edge both, beats [{first 1, every 1, toCount 60}]
    Dec 1 st at each end of foll row → shape: change -1, edge both, beats [{first 1, every 1, times 1}]
    Dec 1 st at each end of k rows → shape: change -1, edge both, beats [{every 2, side RS}]
    Dec 1 st at each end of p rows 4 times → shape: change -1, edge both, beats [{every 2, side WS, counted, times 4}]
    Dec 1 st at each end of alternate rows to 60 sts → shape: change -1, edge both, beats [{first 2, every 2, toCount 60}]
    Dec 1 st at each end of first row, until work measures 8 cm → shape: change -1, edge both, beats [{first 1, every 1, times 1}] | ✗ stitch or repeat expected @36
    Dec 1 st at each end of every row until work measures 8 cm → shape: change -1, edge both, beats [{first 1, every 1, until {length, mm 80, from start}}]
    Dec 1 st at each end of every 4th row, 13 inches → shape: change -1, edge both, beats [{every 4}] | @40 note: about aside
    Dec 1 st at each end of every 4th row 8 times, until 60 sts remain → shape: change -1, edge both, beats [{every 4, counted, times 8, toCount 60}]
    Dec 1 st at each end of every 4th row 8 times - 60 sts → shape: change -1, edge both, beats [{every 4, counted, times 8}] (60)
    Dec 1 st at each end of next 4 rows twice → shape: change -1, edge both, beats [{first 1, every 1, times 8, counted}]
    Dec 1 st at each end of next 4 alt rows → shape: change -1, edge both, beats [{first 2, every 2, times 4}]
    Dec 1 st at each end of next 3 RS rows → shape: change -1, edge both, beats [{side RS, first 1, every 2, times 3}]
    Dec 1 st at each end of next alt row → shape: change -1, edge both, beats [{first 2, every 2, times 1}]
    Dec 1 st at each end of next RS row → shape: change -1, edge both, beats [{side RS, first 1, every 2, times 1}]
    Dec 1 st at each end of this row → shape: change -1, edge both, beats [{first 1, every 1, times 1}]
    Dec 1 st at each end of this and every foll 4th row → shape: change -1, edge both, beats [{first 1, every 1, times 1}; {every 4}]
    Dec 1 st at each end of this and foll → shape: change -1, edge both, beats [{first 1, every 1, times 1}] | ✗ stitch expected @38
    Dec 1 st at each end of row 5 → shape: change -1, edge both, beats [{first 5, every 5, times 1}]
    Dec 1 st at each end of first row → shape: change -1, edge both, beats [{first 1, every 1, times 1}]
    Dec 1 st at each end of first → ✗ stitch or repeat expected @25
    Dec 1 st at each end of 5th and foll 6th rows → shape: change -1, edge both, beats [{first 5, every 5, times 1}; {every 6, times 1}]
    Dec 1 st at each end of 3rd row, then 5th row → shape: change -1, edge both, beats [{first 3, every 3, times 1}; {every 2, times 1}]
    Dec 1 st at each end of 3rd row and 9th row → shape: change -1, edge both, beats [{first 3, every 3, times 1}; {every 6, times 1}]
    Dec 1 st at each end of 9th row and 3rd row → shape: change -1, edge both, beats [{first 9, every 9, times 1}; {first 3, every 3, times 1}]
    Dec 1 st at each end of 3rd, 5th and 4th rows → ✗ stitch or repeat expected @25
    Dec 1 st at each end 10 times on every 2nd row → shape: change -1, edge both, beats [{every 2, times 10, counted}]
    Dec 1 st at each end 10 times → shape: change -1, edge both, beats [{every 2, times 10}]
    Dec 1 st at each end once → shape: change -1, edge both, beats [{every 2, times 1}]
    Dec 1 st at each end (5 times) → ✗ stitch or repeat expected @23
    Dec 1 st at each end of every row (5 times → ✗ stitch or repeat expected @36
    Dec 1 st at each end of every row thereafter → shape: change -1, edge both, beats [{first 1, every 1}]
    Dec 1 st at each end every other row 5 times, then every row 3 times → shape: change -1, edge both, beats [{every 2, counted, times 5}; {first 1, every 1, counted, times 3}]
    Dec 1 st at each end every other row 5 times, again every row 3 times → shape: change -1, edge both, beats [{every 2, counted, times 5}; {first 1, every 1, counted, times 3}]
    Dec 1 st at each end every other row 5 times followed by every row 3 times → shape: change -1, edge both, beats [{every 2, counted, times 5}; {first 1, every 1, counted, times 3}]
    Dec 1 st at each end of next row, then every 4th row 8 times → shape: change -1, edge both, beats [{first 1, every 1, times 1}; {every 4, counted, times 8}]
    Dec 1 st at each end of next and every foll 4th row 8 times → shape: change -1, edge both, beats [{first 1, every 1, times 1}; {every 4, counted, times 7}]
    Dec 1 st at each end of next and every foll 4th row to 60 sts → shape: change -1, edge both, beats [{first 1, every 1, times 1}; {every 4, toCount 60}]
    Each end of every row dec 1 st → shape: change -1, edge both, beats [{first 1, every 1}]
    On the RS rows dec 1 st at each end → shape: change -1, edge both, beats [{every 2, side RS}]
    On this row dec 1 st at each end → shape: change -1, edge both, beats [{first 1, every 1, times 1}]
    In the next row dec 1 st at each end → shape: change -1, edge both, beats [{first 1, every 1, times 1}]
    At each end dec 1 st every row twice → shape: change -1, edge both, beats [{first 1, every 1, counted, times 2}]
  `,
};

describe.each(Object.entries(lines))('%s', (_, some) => {
  it.each(table(some))('$line', expectReading);
});
