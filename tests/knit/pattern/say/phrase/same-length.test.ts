import { describe, it } from 'vitest';
import { table } from '../../table.ts';
import { expectReading } from '../said.ts';

/** How patterns are usually worded: common practice, no published source. */
describe('’same length as’, in all its wordings,', () => {
  it.each(
    table(`
      Work even until {piece measures same as|it is same length as|same length as|it matches|piece corresponds to|armhole equals|sleeves are as long as|work is same depth as|same number of rows as|piece is length as|it is the length of|it is equal to|piece is to match|piece measures to|it is as|number of rows as|it measures same|there are same number of rows as|same as|piece measure same as on|same as for|same as the} back → even: until {same length, piece {words back, name back}}
      Work even until same length as back {to armhole|up to armhole|at armhole|before armhole|until armhole} → even: until {same length, piece {words back, name back}, to armhole}
      Work even until same length as back, ending with a WS row → even: until {same length, piece {words back, name back}, end WS}
      Work even until piece measures {2 cm less than|2 cm shorter than|2 cm below|2 cm before|2 cm less than the} back → even: until {same length, piece {words back, name back}, lessMm 20}
      Work even until {2 rows less than|2 rows fewer than|2 rows shorter than|there are 2 rows less than} back → even: until {same length, piece {words back, name back}, lessRows 2}
      Work even until 2 rows {less|fewer} {have been worked than|been worked than|are worked than|have been completed than|than} on back → even: until {same length, piece {words back, name back}, lessRows 2}
      Work even until 2 rows less than back to armhole, ending with a RS row → even: until {same length, piece {words back, name back}, to armhole, end RS, lessRows 2}
    `),
  )('is read: $line', expectReading);

  it.each(
    table(`
      Work even until {length of|same length to} back → ✗ stitch or repeat expected @11
      Work even until piece measures 2 cm less than same as back → ✗ stitch or repeat expected @37
      Work even until 2 rows are less back → ✗ stitch or repeat expected @28
      Work even until 2 rows have less back → ✗ stitch or repeat expected @24
      Work even until 2 rows more than back → ✗ stitch or repeat expected @24
      Work even until same as red → ✗ stitch or repeat expected @11
      Work even until piece measures 2 cm back → ✗ stitch expected @41
    `),
  )('is not read for more than it says: $line', expectReading);
});
