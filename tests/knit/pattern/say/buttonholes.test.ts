import { describe, it } from 'vitest';
import { table } from '../table.ts';
import { expectReading } from './said.ts';

/** How patterns word it: common practice, no published source. */
describe('buttonholes in rows to come', () => {
  it.each(
    table(`
      {Work|Make|Working} {a|the} {buttonhole|button hole|button-hole} every 16 rows → buttonholes: beats [{every 16}]
      {Working|Making|Repeat|Repeating} buttonholes every {2 in|5.08 cm} → buttonholes: beats [{every 1, everyMm 50.8}]
      Following buttonholes are {made|worked} 2 in apart → buttonholes: beats [{every 1, everyMm 50.8}]
      {Making|Working} 3 {more|further|other} buttonholes {on right front|in the same way|at front edge|} every 12th row → buttonholes: beats [{every 12, times 3}]
      {Work|Continue working} a buttonhole {row|} on the 5th and every foll 16th row → buttonholes: beats [{first 5, every 5, times 1}; {every 16}]
      Make buttonholes on rows 5, 15 and 25 → buttonholes: beats [{first 5, every 5, times 1}; {every 10, times 1}; {every 10, times 1}]
      Make a buttonhole on the 3rd and every foll 4th row until 3 in all {are|have been} {made|worked} → buttonholes: beats [{first 3, every 3, times 1}; {every 4, times 2}]
      Make a buttonhole every 14th row{ as follows:| thus:|, as follows:|, thus,|:} k2, yo, k2tog, k to end → buttonholes: beats [{every 14}], items 'k ×2, yo, k2tog, k to {left 0}'
      Make 5 buttonholes{, the first 2 cm from edge, the rest spaced evenly| evenly spaced|} → buttonholes: beats []
      {Omitting|Omit|Without} {the |}{buttonholes|button-holes|button holes} → buttonholes: beats [], omitted
      {Buttonholes|The buttonholes|Following buttonholes} are {made|worked} after the first 1 cm and every 5 cm thereafter until 7 in all are made → buttonholes: beats [{every 1, everyMm 10, times 1}; {every 1, everyMm 50, times 6}]
      Rep buttonhole row every 6th row twice more → repeat named: name buttonhole, beats [{every 6, counted, times 2, further}]
      {Work|Make} buttonhole as follows: k2, bo 2, k to end → row: label {rows [], name buttonhole}, items 'k ×2, bo ×2, k to {left 0}'
      On next row make a buttonhole: k2, bo 2, k to end → row: label {rows [], name buttonhole}, items 'k ×2, bo ×2, k to {left 0}'
      Work 8 rows in st st, making a buttonhole every 4th row → @23 buttonholes: beats [{every 4}] | even: fabric {named, name stocking}, until {rows, n 8}
      Work 8 rows in st st and making a buttonhole every 4th row → @26 buttonholes: beats [{every 4}] | even: fabric {named, name stocking}, until {rows, n 8}
      Work 8 rows in st st, at the same time make a buttonhole every 4th row → @40 buttonholes: beats [{every 4}] | even: fabric {named, name stocking}, until {rows, n 8}
      Work as for back, omitting buttonholes and reversing shaping → @19 buttonholes: beats [], omitted | as for: piece {words back, name back}, reversing
      Work as for back, omitting buttonholes, reversing shapings → @19 buttonholes: beats [], omitted | as for: piece {words back, name back}, reversing
      Work as for back but omit buttonholes and reversing shaping → @22 buttonholes: beats [], omitted | as for: piece {words back, name back}, reversing
      Work as for back but omit buttonholes, reversing shapings → @22 buttonholes: beats [], omitted | as for: piece {words back, name back}, reversing
      Work as for back without buttonholes and reversing shaping → @18 buttonholes: beats [], omitted | as for: piece {words back, name back}, reversing
      Work as for back without buttonholes, reversing shapings → @18 buttonholes: beats [], omitted | as for: piece {words back, name back}, reversing
    `),
  )('are read: $line', expectReading);
});
