import { describe, it } from 'vitest';
import { table } from '../table.ts';
import { expectReading } from './said.ts';

/** As `rarer-words.test.ts`: shaping, lengths, counts. Common practice, no published source. */
const lines: Readonly<Record<string, string>> = {
  shape: `
    Dec 1 st each end every 9th ridge {(18th row)|(18 rows)|} → shape: change -1, edge both, beats [{every 18}]
    Dec 1 st each end every 2nd ridge {(4th row) 5|5} times → shape: change -1, edge both, beats [{every 4, counted, times 5}]
    Dec 1 st each end every 3rd ridge {(6th row) 5|5} times → shape: change -1, edge both, beats [{every 6, counted, times 5}]
    Dec 1 st each end every 1st ridge {(2nd row) 5|5} times → shape: change -1, edge both, beats [{every 2, counted, times 5}]
    Dec 1 st each end of {each 4th row|each every 4th row|ev 4th row} 5 times → shape: change -1, edge both, beats [{every 4, counted, times 5}]
    Dec 1 st at neck edge {each|every} 4th row 5 times → shape: change -1, edge neck, beats [{every 4, counted, times 5}]
    Dec 1 st each end every inch 4 times → shape: change -1, edge both, beats [{every 1, everyMm 25.4, counted, times 4}]
    Dec 1 st each end every cm 4 times → shape: change -1, edge both, beats [{every 1, everyMm 10, counted, times 4}]
    Dec 1 st each end every 2 cm 4 times → shape: change -1, edge both, beats [{every 1, everyMm 20, counted, times 4}]
    Dec 1 st each end every 2 in 4 times → shape: change -1, edge both, beats [{every 1, everyMm 50.8, counted, times 4}]
    Dec 1 st at neck edge of 3rd row and 4th row 5 times → shape: change -1, edge neck, beats [{first 3, every 3, times 1}; {first 4, every 4, times 5, counted}]
    Dec 1 st at neck edge of 3rd row foll 4th row 5 times → shape: change -1, edge neck, beats [{first 3, every 3, times 1}; {every 4, times 5, counted}]
    Dec 1 st at neck edge of 5th {and foll 6th rows|foll 6th row} → shape: change -1, edge neck, beats [{first 5, every 5, times 1}; {every 6, times 1}]
    Dec 1 st at each end of {foll|the foll} 5 rows → shape: change -1, edge both, beats [{every 1, times 5}]
    Dec 1 st at each end of foll alt row → shape: change -1, edge both, beats [{every 2, times 1}]
    Dec 1 st at each end of alt rows → shape: change -1, edge both, beats [{first 2, every 2, times 1}]
    Dec 1 st at each end of RS rows → shape: change -1, edge both, beats [{every 2, side RS}]
    Dec 1 st at each end of WS rows → shape: change -1, edge both, beats [{every 2, side WS}]
    Dec 1 st each end every 4th row {thereafter 5 times|5 times|for 20 rows|for the next 20 rows|for a further 20 rows} → shape: change -1, edge both, beats [{every 4, counted, times 5}]
    Dec 1 st each end of 3rd, {5th and 9th|5th, and 9th} rows → shape: change -1, edge both, beats [{first 3, every 3, times 1}; {every 2, times 1}; {every 4, times 1}]
    Dec 1 st each end of 3rd and 5th rows → shape: change -1, edge both, beats [{first 3, every 3, times 1}; {every 2, times 1}]
    Dec 1 st each end {of|on|in|at} 5th, 11th and 17th rows → shape: change -1, edge both, beats [{first 5, every 5, times 1}; {every 6, times 1}; {every 6, times 1}]
    Dec 1 st at each {armhole|arm|seam|underarm|outer|raglan|sleeve} {edge|side|} every row 4 times → shape: change -1, edge both, beats [{first 1, every 1, counted, times 4}]
    Dec 1 st at end of {the needle|needle} every row 4 times → shape: change -1, edge end, beats [{first 1, every 1, counted, times 4}]
    Dec 1 st at beg {of row|of the row|in row|in the row}{.|,|;|} → shape: change -1, edge beginning, beats []
    Dec 1 st 2 sts {in from edge|in|inside edge|from edge|in from the edge|inside} at each end of next row → shape: change -1, edge both, beats [{first 1, every 1, times 1}]
  `,
  stated: `
    K 6 rows (24 sts); k 2 rows → rows: n 6, items 'k to {left 'what follows'}' (24) | @20 rows: n 2, items 'k to {left 'what follows'}'
    K 6 rows. Now 24 {sts;|sts,} k 2 rows → rows: n 6, items 'k to {left 'what follows'}' (24) | @23 rows: n 2, items 'k to {left 'what follows'}'
    Row 3: K 4 ({24 sts|24|there are 24 sts|now 24 sts|= 24 sts|- 24 sts}) → row: label {rows [3]}, items 'k ×4' (24)
    Row 3: K 4 (24 sts {dec|decreased|inc|increased}) → row: label {rows [3]}, items 'k ×4'
    Row 3: K 4 [24 sts] → row: label {rows [3]}, items 'k ×4' (24)
    Row 3: K 4{ = 24 sts| - 24 sts| : 24 sts|. 24 sts remain|, 24 sts remain|; 24 sts remain|, leaving 24 sts} → row: label {rows [3]}, items 'k ×4' (24)
    K 6 rows{, 24 sts| (24 sts)| = 24 sts|; 24 sts|. 24 sts| - 24 sts.} → rows: n 6, items 'k to {left 'what follows'}' (24)
    K 6 rows (24 sts {remain|left|on needle|on the needle|total|altogether|are left|made}) → rows: n 6, items 'k to {left 'what follows'}' (24)
  `,
  turn: `
    Turn, work{, k 4|; k 4|} → turn | ✗ stitch or repeat expected @7
    K 14, turn and {work on|working on|cont on|work with|cont over} these 14 sts → row: items 'k ×14, {turn}' | @16 work on: which these, stitches 14
    K 14, turn and work on this side → row: items 'k ×14, {turn}' | @16 work on: which these
    K 14, turn and work over the last 14 sts → row: items 'k ×14, {turn}' | @16 work on: which last, stitches 14
    K 14, turn and {work on|working over the} first 14 sts → row: items 'k ×14, {turn}' | @16 work on: which first, stitches 14
  `,
  until: `
    Cont until piece measures 10 cm, ending with {a WS row|a row on the WS|row on WS|WS side|WS rows|a wrong side row} → even: until {length, mm 100, from start, end WS}
    Cont until piece measures 10 cm, ending {after row 4 of patt|after row 4 of the patt|with 4th row of patt|with 4th row of the patt|with 4th patt row|with row 4|with patt row 4} → even: until {length, mm 100, from start, endRow 4}
    Cont until piece measures 10 cm, ending with patt. → even: until {length, mm 100, from start}
    Cont until piece measures 10 cm, ending with {patt;|patt,} k 6 rows → even: until {length, mm 100, from start} | @52 rows: n 6, items 'k to {left 'what follows'}'
    Cont until piece measures 10 cm, ending with {right side facing|RS facing} for next row → even: until {length, mm 100, from start, end WS}
    Cont until piece measures 10 cm {straight up from beg|up from beg|from beg} → even: until {length, mm 100, from start}
    Cont until piece measures 10 cm from 1st row → ✗ stitch or repeat expected @33
    Cont until piece measures 10 cm from {1st row of rib|1st row of border|the top of the rib|top of first rib|beg of rib} → even: until {length, mm 100, from rib}
    Cont until piece measures 10 cm from the start → even: until {length, mm 100, from start}
    Cont until {work from beg measures|piece from start measures|work measures|piece measures} same as back → even: until {same length, piece {words back, name back}}
    Cont until {first|second|left|right} front measures same as back → even: until {same length, piece {words back, name back}}
    Cont until piece measures {same length to back|same length as back|the length of back|length of back|the same as back|equal to back|as long as back} to armhole → even: until {same length, piece {words back, name back}, to armhole}
    Cont until there are same number of rows as {on|to|for} back to armhole → even: until {same length, piece {words back, name back}, to armhole}
    Cont until same number of rows as {on|to|for|on the|for the} back → even: until {same length, piece {words back, name back}}
    Cont until piece measures same as back to armhole{, less 4 rows|, minus 4 rows| less 4 rows| minus 4 rows} → even: until {same length, piece {words back, name back}, to armhole, lessRows 4}
    Cont until piece measures same as back to armhole{, less 2 cm|, minus 2 cm} → even: until {same length, piece {words back, name back}, to armhole, lessMm 20}
    Work in garter st until {the piece|there|your piece|you|your work|work} measures 10 cm → even: fabric {named, name garter}, until {length, mm 100, from start}
    Work in garter st until the scarf is {the size you want|the size you like|the length you want|as long as you like|as long as you like it to be|the size desired|the length required} → even: fabric {named, name garter}, until {open}
    Work in garter st until you {like the length|like the size|want the width|want it to be|like it to be} → even: fabric {named, name garter}, until {open}
    Work in garter st until you like it → ✗ stitch or repeat expected @34
    Work in garter st until the scarf is the size needed → ✗ stitch or repeat expected @19
    Work in garter st until the scarf is as long as you want it → ✗ stitch or repeat expected @58
    Work in garter st until piece {from the beg|from start|from the beginning|from beg|from the start} measures 10 cm → even: fabric {named, name garter}, until {length, mm 100, from start}
    Work in garter st until piece measures 10 cm{, measured from the cast-on edge| measured from cast-on edge|, measuring from the cast on edge|, measuring from beg| measured from the start|, measured from the beg} → even: fabric {named, name garter}, until {length, mm 100, from start}
  `,
  'work-on': `
    Turn, at {the same|same} time {work|working} {both|each} {side|sides} → work on: which 'both at once'
    {Work|Working|K} {each|both} {side|sides|shoulder} {separately|singly} → work on: which 'each side'
    {Work|Working|Cont|Continuing} {on|with|over} these 10 sts → work on: which these, stitches 10
    {Work|Working|Cont} in patt on these 10 sts → work on: which these, stitches 10
    Work on both sides {at once|separately at the same time|separately at same time|at same time} → work on: which 'both at once'
    Work on both sides separately → work on: which 'each side'
    Work on these 10 sts {for right front|for left front|for right half|for left half|for first side|only} → work on: which these, stitches 10
    {Work|Working} {both|each} {side|sides} at once → work on: which 'both at once'
    {Work|Working} {both|each} {side|sides} {separately|} {at the|at} same time → work on: which 'both at once'
    Work both sides at once {with separate ball|with separate yarn|with 2 balls|using 2 balls of yarn|with separate ball of yarn|using separate ball of yarn|using separate ball of wool} → work on: which 'both at once'
  `,
  yarn: `
    With wrong side facing, k 6 rows → next side: side WS | @25 rows: n 6, items 'k to {left 'what follows'}'
    With right side facing, k 6 rows → next side: side RS | @25 rows: n 6, items 'k to {left 'what follows'}'
  `,
};

describe.each(Object.entries(lines))('%s, in rarer words,', (_name, text) => {
  it.each(table(text))('is read: $line', expectReading);
});
