import { describe, it } from 'vitest';
import { table } from '../table.ts';
import { expectReading } from './said.ts';

/** How patterns are usually worded: common practice, no published source. */
describe('as another piece, in further wordings,', () => {
  it.each(
    table(`
      Work as for back to {end|the end|completion} of armhole shaping → as for: piece {words back, name back}, reversing false, to {rows after, rows 0, from armhole, past}
      Shape armhole same as back {armhole|armholes} → as for: piece {words back, name back}, reversing false, only armhole
      {Bind|Cast} off shoulders {same as|as for} back → as for: piece {words back, name back}, reversing false, only shoulder
      Bind off for shoulders same as back shoulders → as for: piece {words back, name back}, reversing false, only shoulder
      {Bind off and decrease|Decrease} for armholes in same manner as {on|for|} back → as for: piece {words back, name back}, reversing false, only armhole
      Work as for back until {4 rows before|4 rows less than back to} shoulder shaping → as for: piece {words back, name back}, reversing false, to {rows before, rows 4, place shoulder}
      Work as for back until 6 rows {fewer|less} than back to shoulder {have been|are} worked → as for: piece {words back, name back}, reversing false, to {rows before, rows 6, place shoulder}
      Work as for back until piece measures 5 cm less than back to shoulder → as for: piece {words back, name back}, reversing false, to {less, mm 50, place shoulder}
      Work even until armhole measures same as back armhole → even: until {same length, piece {words back, name back}, to shoulder}
      Work even until armhole measures same as back armhole to shoulder → even: until {same length, piece {words back, name back}, to shoulder}
    `),
  )('is read: $line', expectReading);

  it.each(
    table(`
      Work as for back to armhole shaping → as for: piece {words back, name back}, reversing false, to {place, place armhole}
      Work as for back to end of rib → as for: piece {words back, name back}, reversing false, to {place, place rib}
      Bind off shoulders → ✗ stitch or repeat expected @10
    `),
  )('is not read for more than it says: $line', expectReading);
});
