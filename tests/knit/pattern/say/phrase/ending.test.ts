import { describe, it } from 'vitest';
import { table } from '../../table.ts';
import { expectReading } from '../said.ts';

/** How patterns are usually worded: common practice, no published source. */
describe('’ending with’, in all its wordings,', () => {
  it.each(
    table(`
      Work 6 rows in st st{, ending|; ending|, finishing|, finish|, ends|, ended} with a WS row → even: fabric {named, name stocking}, until {rows, n 6, end WS}
      Work 6 rows in st st (ending with a WS row → even: fabric {named, name stocking}, until {rows, n 6, end WS}
      Work 6 rows in st st - ending with a WS row → even: fabric {named, name stocking}, until {rows, n 6, end WS}
      Work 6 rows in st st{, and ending| then end} with a WS row → even: fabric {named, name stocking}, until {rows, n 6, end WS}
      Work even for 10 cm, ending {with|on|after|at|having|by} a WS row → even: until {length, mm 100, from here, end WS}
      Work even for 10 cm, ending {with a WS row|with an WS row|with the WS row|with last WS row|with WS row|so that WS row|by work WS row|by completing WS row|with p row|after WS row worked|with worked WS row|with just WS row|with a wrong side row|with WS row completed|with WS row just worked|with a WS|with WS row worked|with WS rows} → even: until {length, mm 100, from here, end WS}
      Work even for 10 cm, ending {so that a WS row|by working a WS row} → even: until {length, mm 100, from here, end WS}
      Work even for 10 cm, {ending with RS facing|ending with RS facing for next row|ready for RS row|ready to work RS row|ready for a RS row next|ending with RS facing for the next row|ending so that RS facing next|ending with RS facing)} → even: until {length, mm 100, from here, end WS}
      Work even for 10 cm, ending with WS facing → even: until {length, mm 100, from here, end RS}
      Work even for 10 cm, ending with a {RS|k|right side|knit} row → even: until {length, mm 100, from here, end RS}
      Work even for 10 cm, ending at {side edge|armhole edge|arm edge|seam edge|underarm edge|side seam|armhole seam} → even: until {length, mm 100, from here, endEdge armhole}
      Work even for 10 cm, ending at {front edge|neck edge|center edge|inner edge|center front edge|center front} → even: until {length, mm 100, from here, endEdge neck}
      Work even for 10 cm, ending with row 4 of pattern → even: until {length, mm 100, from here, endRow 4}
      Work even for 10 cm, ending with row 4, turn → even: until {length, mm 100, from here, endRow 4} | @41 turn
      Work even for 10 cm, turn → even: until {length, mm 100, from here} | @22 turn
      Dec 1 st at each end of next row, ending with a WS row → shape: change -1, edge both, beats [{first 1, every 1, times 1}] | @35 ending: end WS
      Work even for 10 cm{, working an|, working|, work an} odd number of rows → even: until {length, mm 100, from here, odd}
      Work even for 10 cm{, working an|, working|, work an} even number of rows → even: until {length, mm 100, from here, odd false}
      Work even for 10 cm, an odd number of rows → even: until {length, mm 100, from here, odd}
      Work even for 10 cm, ending with {a 4th patt row|4th patt row|4th row of patt|4th row of the patt|row 4 of the patt|a 4th row of patt} → even: until {length, mm 100, from here, endRow 4}
      Work even for 10 cm, ending with 4 patt → even: until {length, mm 100, from here}
      Work even for 10 cm, ending with 4 more rows → even: until {length, mm 100, from here} | ✗ stitch or repeat expected @34
      Work even for 10 cm, ending with 4 ridges → even: until {length, mm 100, from here} | ✗ stitch or repeat expected @34
      Work even for 10 cm, ending with a rep of rows 1 to 4 → even: until {length, mm 100, from here} | @22 repeat rows: from 1, to 4, times 1
      Work even for 10 cm, ending with rep of rows 1 to 4 → even: until {length, mm 100, from here} | ✗ nothing before the repeat @38
    `),
  )('is read: $line', expectReading);
});
