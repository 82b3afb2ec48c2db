import { describe, it } from 'vitest';
import { table } from '../table.ts';
import { expectReading } from './said.ts';

/** How patterns are usually worded: common practice, no published source. */
describe('ending, in all its wordings,', () => {
  it.each(
    table(`
      Rep last 2 rows 3 times more, {ending|ending with|finishing with|ending on|ending after} a WS row → repeat rows: last 2, times 3 | @31 ending: end WS
      Rep last 2 rows 3 times more, ending with RS facing for next row → repeat rows: last 2, times 3 | @31 ending: end WS
      Rep last 2 rows 3 times more, ending with WS facing for next row → repeat rows: last 2, times 3 | @31 ending: end RS
      Work 7 rows, {ending with WS facing for next row|ending with a RS row|ending on a k row} → even: until {rows, n 7, end RS}
      Work 7 rows in rib, {ending with RS facing for next row|ending with a WS row} → even: fabric {pattern, words rib, name rib, else rib}, until {rows, n 7, end WS}
      Cont in rib for a further 7 rows, ending at {armhole|side} edge → even: fabric {pattern, words rib, name rib, else rib}, until {rows, n 7, endEdge armhole}
    `),
  )('is read: $line', expectReading);
});
