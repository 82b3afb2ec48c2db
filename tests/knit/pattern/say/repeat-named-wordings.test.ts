import { describe, it } from 'vitest';
import { table } from '../table.ts';
import { expectReading } from './said.ts';

/** How patterns are usually worded: common practice, no published source. */
describe('repeat named, in all its wordings,', () => {
  it.each(
    table(`
      {Rep|Work|Working} {dec row|the dec row|this dec row|last decrease row|decreasing row} every other row 3 times → repeat named: name dec, beats [{every 2, counted, times 3}]
      Rep inc row every 6th row until there are 60 sts → repeat named: name inc, beats [{every 6, toCount 60}]
      Rep {increase row|increases row}, every 4th row 3 times more → repeat named: name inc, beats [{every 4, counted, times 3, further}]
      Rep dec row every 4 cm 3 times → repeat named: name dec, beats [{every 1, everyMm 40, counted, times 3}]
      {Rep|Repeat} {incs|inc|this inc|increases} every 4 cm 3 times → repeat named: name '', beats [{every 1, everyMm 40, counted, times 3}]
      Rep cable row every 8th row 3 times → repeat named: name cable, beats [{every 8, counted, times 3}]
    `),
  )('is read: $line', expectReading);

  it.each(
    table(`
      Rep {next|every|each|even|in} row every 4th row 3 times → ✗ nothing before the repeat @5
      Rep {dec|this dec|last row|this row|the dec} every 4th row 3 times → repeat named: name '', beats [{every 4, counted, times 3}]
      Rep incs every 4 cm → ✗ nothing before the repeat @5
      Rep {last|this} row every 4th row → ✗ stitch or repeat expected @14
      Rep these row every 4th row 3 times → ✗ stitch or repeat expected @15
      Rep from row every 4th row 3 times → ✗ nothing before the repeat @10
      Rep {row|rows} every 4th row 3 times → ✗ nothing before the repeat @5
      Work RS row every 4th row 3 times → ✗ stitch or repeat expected @1
      Work WS row every 4th row 3 times → ✗ stitch or repeat expected @1
      Work k row every 4th row 3 times → ✗ stitch or repeat expected @1
      Work p row every 4th row 3 times → ✗ stitch or repeat expected @1
      Rep dec row → ✗ nothing before the repeat @5
      Rep 5 row every 4th row 3 times → ✗ stitch or repeat expected @11
    `),
  )('is not read for more than it says: $line', expectReading);
});
