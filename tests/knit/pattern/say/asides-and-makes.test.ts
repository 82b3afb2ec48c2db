import { describe, it } from 'vitest';
import { table } from '../table.ts';
import { expectReading } from './said.ts';

/** How patterns are usually worded: common practice, no published source. */
describe('what makes no row,', () => {
  it.each(
    table(`
      Make another sleeve {the same|to match|to correspond|in the same way|in same manner|like first|as the first|as this|like it|as the 1st|as the first one|identical to the first|identical to this piece|alike|} → note: about another, makes 2
      {Work a second|Make the other} {piece|pocket} {the same|} → note: about another, makes 2
      Rep to make another sleeve → note: about another, makes 2
      {Make two|Make 2|Make both|Knit 2 alike|Work 2 pieces|Make 2 of these|Knit 2 the same} → note: about another, makes 2
      Make 4 pieces → note: about another, makes 4
      {Divide the work for fronts and back|Divide the work into fronts and back|Divide sts for fronts and back|Divide sts into fronts and back|Divide the sts for fronts and back|Divide the sts into fronts and back|Dividing the work for fronts and back|Dividing the work into fronts and back|Dividing sts for fronts and back|Dividing sts into fronts and back|Dividing the sts for fronts and back|Dividing the sts into fronts and back} → note: about divides
      {Now divide the work for fronts and back|Now divide the work into fronts and back|Now divide sts for fronts and back|Now divide sts into fronts and back|Now divide the sts for fronts and back|Now divide the sts into fronts and back} → @5 note: about divides
      Divide for fronts and back: Row 1: k → note: about divides | @29 row: label {rows [1]}, items 'k to {left 'what follows'}'
      Now work on the back and fronts separately → @5 note: about divides
      Continue working on front and back separately: → note: about divides
      {Break|Cut} {yarn|the wool|thread|off yarn|off} → note: about yarn
      Fasten off {yarn|} → note: about yarn
      Break off A → note: about yarn
      Cut {B and C|B, C} → note: about yarn
      Break yarn, leaving a {tail|long end} of 20 cm → note: about yarn
      Cut yarn (leave a length for sewing) → note: about yarn
      {Place a|Put the|Mark 1|Place|Put|Placing} marker at each end → note: about marker
      {Mark each end|Mark both ends|Mark centre st|Tie a marker|Mark this row} → note: about marker
      Mark 3rd, and 6th st → note: about marker
      Place marker, work 6 rows → note: about marker | @15 even: until {rows, n 6}
      Mark last row and work 6 rows → note: about marker | @19 even: until {rows, n 6}
      {To make a|To make the|To make each} {buttonhole,|buttonholes:} on one row bind off 4 sts; on next row cast on 4 sts → note: about hole
      (To make a buttonhole, on one row bind off 4 sts; on next row cast on 4 sts) → note: about hole
      {Work|Continue|Proceed} as follows: → note: about aside
      Work the following {dec|buttonhole|} rows: → note: about aside
      {As|Thus} follows: → note: about aside
      {Place chart as follows|Place pattern as follows|Place panels as follows|Position the chart as follows|Position the pattern as follows|Position the panels as follows} → note: about aside
      {Now set chart as follows|Now set pattern as follows|Now set panels as follows} → @5 note: about aside
      {Keeping the rib going|Keeping the rib correct|Keeping the rib continuous|Keeping border continuous} → note: about aside
      {Keeping patt going|Keeping patt correct|Keeping patt continuous} → note: about pattern
      {Keeping border going|Keeping border correct} → borders: borders []
      Keeping patt correct throughout → note: about pattern
      {Working|Taking} {incs|inc|dec} into pattern → note: about aside
      {Taking|Bringing|Incorporating} {increased|extra|new|inc} sts into patt as they occur → note: about aside
      Keep continuity of patt → note: about pattern
      {Being|Taking} {careful|care} to keep the patt correct → note: about aside
      {Keeping|Keep} {the neck|front|both} {edge|edges|side} {straight|even} → note: about aside
      {Keeping|Keep} armhole edge straight → note: about aside
      For a {ridge|turn line|fold ridge|foldline|hem|hem line} → note: about aside
      Work in rows back and forth on circular needle → note: about aside
      Starting with row 1 of patt, → note: about aside
      Start {neck shaping|shoulder shaping} → note: about aside
      {Start|Begin} {to shape the armhole|to shape neck} → note: about aside
      {The piece|Piece should now|Work now} {measures|measure} {about|} 40 cm → note: about aside
      Work measures 40 cm from beg → note: about aside
      Make neck hole as follows: → note: about aside
      Decrease the back with following pattern: → note: about aside
      Dec 1 st at each end 4 times, 6 inches, 82 sts → shape: change -1, edge both, beats [{every 2, times 4}] | @31 note: about aside (82)
      Rep last 2 rows 8 times more, or until the sleeve measures about 8 cm → repeat rows: last 2, times 8 | @31 note: about aside
      These 2 rows form the pattern → named rows: name '', rows 2
      These sts are the neck → note: about 'making up'
      This completes the armhole → note: about 'making up'
      This forms pattern → note: about 'making up'
      This is shaped as follows: bind off 4 sts at neck edge → note: about aside | @28 groups: work bo, edge neck, groups [{stitches 4, rows 1, every 2}]
      With RS facing, k 5 → next side: side RS | @17 row: items 'k ×5'
      With white, k 1 row → yarn: name white | @13 rows: n 1, items 'k to {left 'what follows'}'
      Sew seams → note: about 'making up'
      Press lightly → note: about 'making up'
      Finishing: sew side seams → heading: title {words finishing, pattern finishing, divides false}, sideOnly false, talk, places [] | @12 note: about 'making up'
      Join side seams → note: about 'making up'
      When knitting, hold yarn loosely → note: about 'making up'
      Do not press → note: about 'making up'
    `),
  )('is told for what it is: $line', expectReading);

  it.each(
    table(`
      Make 1 → row: items m1
      Make 20 → row: items 'm1 ×20'
      Work 2 → row: items 'patt ×2'
      Make another hat → ✗ stitch or repeat expected @1
      Make another sleeve with stripes → ✗ stitch or repeat expected @1
      Place marker, k 5 → row: items '{marker, does place}, k ×5'
      Do not turn → ✗ stitch or repeat expected @1
      Do not work 2 rows → ✗ stitch or repeat expected @1
      Join yarn → rejoin
      These are lovely → ✗ stitch or repeat expected @1
      When 20 cm, k 2 → even: until {length, mm 200, from start} | @13 row: items 'k ×2'
      Sizes S and M only: work 8 rows → ✗ stitch or repeat expected @1
      Attach yarn → rejoin
      Finishing with a WS row → ending: end WS
      Turn → turn
      Break → note: about yarn
    `),
  )('is not told for more than it is: $line', expectReading);
});
