import { describe, it } from 'vitest';
import { table } from '../table.ts';
import { expectReading } from './said.ts';

/** How patterns are usually worded: common practice, no published source. */
describe('as for, in all its wordings,', () => {
  it.each(
    table(`
      {Work|K|Make|Complete|Finish|Follow|Cont|Begin|Working} as for back → as for: piece {words back, name back}, reversing false
      Do as for back → as for: piece {words back, name back}, reversing false
      Then work as for back → @6 as for: piece {words back, name back}, reversing false
      And work as for back → @5 as for: piece {words back, name back}, reversing false
      Cast on and work as for back → as for: piece {words back, name back}, reversing false
      Work {same as|same as for|the same as|the same as for|as given for|as directed for|as described for|as instructed for|in same manner as|in same way as|in same manner as for|in the same manner as|in the same way as for|as on|as in|as|to match|to correspond to|to match with|exactly as for|it as for|piece as for|as given for the} back → as for: piece {words back, name back}, reversing false
      Work to back → row: items 'patt to {left 'what follows'}'
      Cast on same number of sts and work as for back → as for: piece {words back, name back}, reversing false
      Follow {directions for|instructions for|directions of} back → as for: piece {words back, name back}, reversing false
      Make {it|this} {correspond to|match|to match} back → as for: piece {words back, name back}, reversing false
      Work to match back → as for: piece {words back, name back}, reversing false
      Work and match back → as for: piece {words back, name back}, reversing false
      Work as for back → as for: piece {words back, name back}, reversing false
      Work as for front → as for: piece {words front, name front}, reversing false
      Work as for sleeve → as for: piece {words sleeve, name sleeve}, reversing false
      Work as for left front → as for: piece {words 'left front', name 'left front'}, reversing false
      Work as for right front → as for: piece {words 'right front', name 'right front'}, reversing false
      Work as for first sleeve → as for: piece {words 'first sleeve', name sleeve}, reversing false
      Work as for first front → as for: piece {words 'first front', name front}, reversing false
      Work as for body → as for: piece {words body, name body}, reversing false
      {Shape armhole|Shape armholes|Armhole shaping|Shape armhole shaping} as for back → as for: piece {words back, name back}, reversing false, only armhole
      Work {armhole|armhole shaping} as for back → as for: piece {words back, name back}, reversing false, only armhole
      {Shape neck as for back|Neck shaping same as back|Shape neck in same way as back|Shape neck to match back} → as for: piece {words back, name back}, reversing false, only neck
      Shape shoulders as for back → as for: piece {words back, name back}, reversing false, only shoulder
      Work as for back{ to armhole|, to armhole| until armhole| up to armhole| as far as armhole| to beg of armhole| to start of armhole| to the armhole| to where armhole| to end of armhole| to where the armhole} → as for: piece {words back, name back}, reversing false, to {place, place armhole}
      Work as for back until armhole {is bound off|shaping is complete|shaping has been completed|decs are worked|shapings are done} → as for: piece {words back, name back}, reversing false, to {rows after, rows 0, from armhole, past}
      Work as for back to armhole shaping{| is reached| begins} → as for: piece {words back, name back}, reversing false, to {place, place armhole}
      Work as for back until armhole measures 10 cm → as for: piece {words back, name back}, reversing false, to {length, mm 100, from armhole}
      Work as for back until {there are 60 sts|60 sts remain} → as for: piece {words back, name back}, reversing false, to {count, stitches 60}
      Work as for back until piece measures 38 cm → as for: piece {words back, name back}, reversing false, to {length, mm 380, from start}
      Work as for back until 2 rows less than back to armhole → as for: piece {words back, name back}, reversing false, to {rows before, rows 2, place armhole}
      Work as for back until 2 rows less than back → as for: piece {words back, name back}, reversing false, to {rows before, rows 2}
      Work as for back, reversing shaping → as for: piece {words back, name back}, reversing
      Work as for back to armhole, reversing shaping → as for: piece {words back, name back}, reversing, to {place, place armhole}
      Work as for back, reversing shaping, to armhole → as for: piece {words back, name back}, reversing, to {place, place armhole}
      Shaping armhole as for back → as for: piece {words back, name back}, reversing false, only armhole
      Work as given for back → as for: piece {words back, name back}, reversing false
      Work as on back, reversing all shapings → as for: piece {words back, name back}, reversing
      Work as for back to {the end of armhole|where armhole|the armhole|far as armhole} → as for: piece {words back, name back}, reversing false, to {place, place armhole}
      Work left front to armhole as for right front → heading: title {words 'left front', pattern 'left front', divides false, half left}, sideOnly false, talk false, places [], piece {name 'left front', makes 1, half left} | @17 as for: piece {words 'right front', name 'right front'}, reversing false, to {place, place armhole}
      Work left front to {match|correspond to|match with|correspond with} right front, reversing shaping → heading: title {words 'left front', pattern 'left front', divides false, half left}, sideOnly false, talk false, places [], piece {name 'left front', makes 1, half left} | as for: piece {words 'right front', name 'right front'}, reversing
      Work second sleeve to match first sleeve → as for: piece {words 'first sleeve', name sleeve}, reversing false
      {Work|Knit|Make} right front to {match|correspond to} left front but reversing all shaping → heading: title {words 'right front', pattern 'right front', divides false, half right}, sideOnly false, talk false, places [], piece {name 'right front', makes 1, half right} | as for: piece {words 'left front', name 'left front'}, reversing
    `),
  )('is read: $line', expectReading);

  it.each(
    table(`
      Work with back → ✗ stitch or repeat expected @1
      Work as for back for 6 rows → ✗ stitch or repeat expected @18
      Cast on the same number of sts and work as for back → ✗ stitch or repeat expected @1
      Work as set → even: fabric {established}
      Work as for it → ✗ stitch or repeat expected @1
      As for back → as for: piece {words back, name back}, reversing false
      Work back → row: items 'patt to {left 'what follows'}'
      Back → heading: title {words back, pattern back, divides false}, sideOnly false, talk false, places [], piece {name back, makes 1}
      Shape armhole → heading: title {words 'shape armhole', pattern 'shape armhole', divides false}, sideOnly false, talk false, places [armhole]
      Work to match the first side → other side: reversing false
    `),
  )('is not read for more than it says: $line', expectReading);
});
