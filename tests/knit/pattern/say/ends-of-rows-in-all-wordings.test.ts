import { describe, it } from 'vitest';
import { table } from '../table.ts';
import { expectReading } from './said.ts';

/** How patterns are usually worded: common practice, no published source. */
describe('after which row it ends, in all wordings,', () => {
  it.each(
    table(`
      Work 6 cm{, ending with| ending with| (ending with|, end with| - ending on|; ending after|, and ending with|, then end with|, finishing with|, finish with|, thus ending with|, working last row on} a WS row → even: until {length, mm 60, from here, end WS}
      {Work 6 cm, ending by working a RS row|Work 6 cm, ending having worked a RS row} → even: until {length, mm 60, from here, end RS}
      {Work 6 cm, ready for a RS row|Work 6 cm, ending with RS facing for next row|Work 6 cm, with RS facing for next row|Work 6 cm, with RS facing for the next row|Work 6 cm, with right side facing for next row} → even: until {length, mm 60, from here, end WS}
      Work 6 cm, with WS facing for next row → even: until {length, mm 60, from here, end RS}
      Work 6 cm, {ending on right side|end on right side of work|ending with a right side row of the work|ending with RS row completed|ending with RS row just worked} → even: until {length, mm 60, from here, end RS}
      Work 6 cm, {ending at armhole edge|ending at side edge|end at seam edge|ending at side seam|ending at underarm edge} → even: until {length, mm 60, from here, endEdge armhole}
      Work 6 cm, {ending at neck edge|ending at front edge|end at centre edge|ending at inner edge|ending at center front edge|ending at center front} → even: until {length, mm 60, from here, endEdge neck}
      Work 6 cm, {ending with row 4|ending with row 4 of patt|ending with 4th row of patt|ending with a 4th patt row|ending with fourth row|ending with a 4th rib row} → even: until {length, mm 60, from here, endRow 4}
      Work 6 cm, working an odd number of rows → even: until {length, mm 60, from here, odd}
      Work 6 cm, ending with a purl row → even: until {length, mm 60, from here, end WS}
      Work 6 cm, ending with a k row and inc 6 sts evenly → even: until {length, mm 60, from here, end RS} | @36 evenly: change 6, on unsaid
      Work 6 cm, ending on a 2nd row and inc 6 sts evenly → even: until {length, mm 60, from here} | @36 evenly: change 6, on unsaid
    `),
  )('is read: $line', expectReading);

  it.each(
    table(`
      Work 6 cm, ending with 4 rows in garter st → even: until {length, mm 60, from here} | @12 even: fabric {named, name garter}, until {rows, n 4}
      {Work 6 cm, ending with 4 ridges|Work 6 cm, ending with 4 more rows in garter st} → even: until {length, mm 60, from here} | ✗ stitch or repeat expected @24
      Work 6 cm, ending with a rep of row 2 → even: until {length, mm 60, from here} | @12 repeat rows: from 2, to 2, times 1
      Work 6 cm, ending with a rep of rows 2-4 → even: until {length, mm 60, from here} | @12 repeat rows: from 2, to 4, times 1
      Work 6 cm, with RS facing → even: until {length, mm 60, from here} | @12 note: about facing
      Work 6 cm, with RS facing, bind off → even: until {length, mm 60, from here} | @12 note: about facing | @28 bind off
    `),
  )('is not read for more than it says: $line', expectReading);
});
