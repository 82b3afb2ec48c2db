import { describe, it } from 'vitest';
import { table } from '../table.ts';
import { expectReading } from './said.ts';

/** How patterns are usually worded: common practice, no published source. */
describe('what is worked as another piece, in all wordings,', () => {
  it.each(
    table(`
      {Work|Make|Knit} {as for back|as given for back|same as back|the same as back|as directed for the back|like back|in the same way as back|in same manner as for back|exactly as for back|as on back|to match back|to correspond with back|same as for back|it as for back} → as for: piece {words back, name back}, reversing false
      Work as for back {to armhole|up to armhole|until armhole|as far as the armhole|to beg of armhole|to where armhole begins|to start of armhole shaping|until armhole is reached} → as for: piece {words back, name back}, reversing false, to {place, place armhole}
      Work as for back {until armhole is bound off|until armholes have been completed|to end of armhole shaping|until completion of armhole shaping} → as for: piece {words back, name back}, reversing false, to {rows after, rows 0, from armhole, past}
      Work as for back until rib is {completed|worked} → as for: piece {words back, name back}, reversing false, to {place, place rib}
      Work as for back until 15 rows have been {worked|completed} after armhole shaping → as for: piece {words back, name back}, reversing false, to {rows after, rows 15, from armhole, past}
      Work as for back to 15 rows past armhole shaping → as for: piece {words back, name back}, reversing false, to {rows after, rows 15, from armhole, past}
      Work as for back {until|to} 4 rows {before|below} shoulder shaping → as for: piece {words back, name back}, reversing false, to {rows before, rows 4, place shoulder}
      Work as for back until 4 rows less than back to shoulder → as for: piece {words back, name back}, reversing false, to {rows before, rows 4, place shoulder}
      Work as for back until it measures 4 cm less than back to shoulder → as for: piece {words back, name back}, reversing false, to {less, mm 40, place shoulder}
      Work as for back until 60 sts remain → as for: piece {words back, name back}, reversing false, to {count, stitches 60}
      Work as for back until 30 rows have been worked → as for: piece {words back, name back}, reversing false, to {rows after, rows 30, from start}
      Work as for back until piece measures 20 cm → as for: piece {words back, name back}, reversing false, to {length, mm 200, from start}
      {Work as for back, reversing shaping|Work as for back reversing all shapings} → as for: piece {words back, name back}, reversing
      {Work as for back, reversing shaping, to armhole|Work as for back to armhole, reversing shaping} → as for: piece {words back, name back}, reversing, to {place, place armhole}
      Work {from ** to ** as for back|as for back from ** to **|as for back to **|as for back up to **|as for back as far as **|to ** as for back|from beg to ** as for back} → as for: piece {words back, name back}, reversing false, to {place, place stars}
      Work to {armhole|the armhole} as for back → as for: piece {words back, name back}, reversing false, to {place, place armhole}
      {Shape armhole|Armhole shaping|Shape the armholes|Shaping armhole} {as for back|same as back} → as for: piece {words back, name back}, reversing false, only armhole
      Bind off and dec for armhole as for back → as for: piece {words back, name back}, reversing false, only armhole
      Bind off shoulder as for back → as for: piece {words back, name back}, reversing false, only shoulder
      Shape armhole same as back armhole → as for: piece {words back, name back}, reversing false, only armhole
      {Work|Make} sleeve {as for|as|same as|the same as|like} back → heading: title {words sleeve, pattern sleeve, divides false}, sideOnly false, talk false, places [], piece {name sleeve, makes 1} | @13 as for: piece {words back, name back}, reversing false
    `),
  )('is read: $line', expectReading);

  it.each(
    table(`
      Work as for hat → ✗ stitch or repeat expected @1
      Work as → ✗ stitch or repeat expected @1
      Shape hem as for back → ✗ stitch or repeat expected @1
      Work to 20 as for back → ✗ stitch or repeat expected @1
      Work as for back until 1½ rows before shoulder → ✗ stitch or repeat expected @32
      Work as for back until armhole measures 10 cm → as for: piece {words back, name back}, reversing false, to {length, mm 100, from armhole}
    `),
  )('is not read for more than it says: $line', expectReading);
});
