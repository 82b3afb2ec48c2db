import { describe, it } from 'vitest';
import { table } from '../table.ts';
import { expectReading } from './said.ts';

/** How patterns are usually worded: common practice, no published source. */
describe('buttonholes, in all wordings,', () => {
  it.each(
    table(`
      {Work a buttonhole every 6th row|Working a buttonhole every 6th row|Make a buttonhole every 6th row|Making a buttonhole every 6th row|Cont a buttonhole every 6th row|Continuing making a buttonhole every 6th row} → buttonholes: beats [{every 6}]
      Continue to make a buttonhole every 6th row → ✗ stitch or repeat expected @1
      {Make another buttonholes every 6th row|Make another buttonhole rows every 6th row|Make the button-holes every 6th row|Make all button holes every 6th row|Work another buttonholes every 6th row|Work another buttonhole rows every 6th row|Work the button-holes every 6th row|Work all button holes every 6th row} → buttonholes: beats [{every 6}]
      {Make 3 buttonholes every 6th row|Make 3 more buttonholes every 6th row|Make 3 further buttonholes every 6th row|Make 3 other buttonholes every 6th row|Work 3 buttonholes every 6th row|Work 3 more buttonholes every 6th row|Work 3 further buttonholes every 6th row|Work 3 other buttonholes every 6th row} → buttonholes: beats [{every 6, times 3}]
      {Omit|Omitting|Omit the|Without|With no|Leave out the} {buttonholes|button holes} → buttonholes: beats [], omitted
      (omitting buttonholes) → buttonholes: beats [], omitted
      But omitting buttonholes → @5 buttonholes: beats [], omitted
      {Rep|Repeating} buttonhole every 6th row → buttonholes: beats [{every 6}]
      Following buttonholes are {made|worked|spaced} every 6th row → buttonholes: beats [{every 6}]
      The buttonholes are made every 6th row → buttonholes: beats [{every 6}]
      On next row and every 6th row thereafter make a buttonhole → buttonholes: beats [{first 1, every 1, times 1}; {every 6}]
      On next row, make a buttonhole → buttonholes: beats [{first 1, every 1, times 1}]
      Make a buttonhole {in same way|in the same manner|as before|as above|as given|as set} every 6th row → buttonholes: beats [{every 6}]
      Make a buttonhole {on right front edge|at left front band|along the front border|in button band|on the buttonhole border|at front|on right front} every 6th row → buttonholes: beats [{every 6}]
      Make a buttonhole, 3 sts in from front edge, every 6th row → buttonholes: beats [{every 6}]
      Make a buttonhole 3 sts from the same edge on next row → buttonholes: beats [{first 1, every 1, times 1}]
      Make 4 buttonholes 5 cm apart → buttonholes: beats [{every 1, everyMm 50, times 4}]
      Make a buttonhole after the first 2 cm and every 5 cm → buttonholes: beats [{every 1, everyMm 20, times 1}; {every 1, everyMm 50}]
      Make a buttonhole after the 1st 2 cm, then every 5 cm → buttonholes: beats [{every 1, everyMm 20, times 1}; {every 1, everyMm 50}]
      Make a buttonhole on rows 5, 15 and 25 → buttonholes: beats [{first 5, every 5, times 1}; {every 10, times 1}; {every 10, times 1}]
      Make buttonholes in rows 5 and 15 → buttonholes: beats [{first 5, every 5, times 1}; {every 10, times 1}]
      Make a buttonhole every 6th row until {7 are made|there are 7 buttonholes|7 buttonholes have been made|7 in all are worked|7 in all} → buttonholes: beats [{every 6, times 7}]
      Make a buttonhole every 6th row, until 7 have been worked → buttonholes: beats [{every 6, times 7}]
      Make 5 buttonholes, the rest spaced evenly → buttonholes: beats []
      Make 5 buttonholes evenly spaced, and dec 1 st at neck edge every row → buttonholes: beats [] | @39 shape: change -1, edge neck, beats [{first 1, every 1}]
      Make 5 buttonholes evenly until piece measures 10 cm → buttonholes: beats [] | ✗ stitch or repeat expected @27
      Make a buttonhole on next row as follows: k2, yo, k2tog, k to end → row: label {rows [], name buttonhole}, items 'k ×2, yo, k2tog, k to {left 0}'
      Make a buttonhole on next row thus, k2, yo, k2tog, k to end → row: label {rows [], name buttonhole}, items 'k ×2, yo, k2tog, k to {left 0}'
    `),
  )('are laid beside what is worked: $line', expectReading);

  it.each(
    table(`
      Make a buttonhole as follows → note: about aside
      Rep buttonhole row every 6th row → repeat named: name buttonhole, beats [{every 6}]
      Omit the collar → ✗ stitch or repeat expected @1
      Make a buttonhole every 6th row until 7 cm → buttonholes: beats [{every 6, until {length, mm 70, from start}}]
      Make 3 pockets every 6th row → ✗ stitch or repeat expected @8
    `),
  )('are not read for more than they say: $line', expectReading);
});
