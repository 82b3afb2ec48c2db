import { describe, it } from 'vitest';
import { table } from '../table.ts';
import { expectReading } from './said.ts';

/** How patterns are usually worded: common practice, no published source. */
describe('a length, in all wordings,', () => {
  it.each(
    table(`
      Work even for {15 cm|150 mm|about 15 cm|approx 15 cm|another 15 cm|a further 15 cm|a total of 15 cm|15 more cm|15-cm|15 cm (6 in)|15 cm, 6 in|15 cm [6 in]|15 cm/6 in|15 cm or 6 in|14-16 cm|14 to 16 cm|14 or 16 cm} → even: until {length, mm 150, from here}
      Work even for {15½|15 ½|15 1/2|15 and ½|15-½} cm → even: until {length, mm 155, from here}
      Work even for 3/4 cm → even: until {length, mm 7.5, from here}
      Work even for {2 in|2 inches|2"} → even: until {length, mm 50.8, from here}
    `),
  )('is read in mm: $line', expectReading);

  it.each(
    table(`
      Work even for 16-14 cm → ✗ stitch or repeat expected @11
      Work even for 15 mm needles → ✗ stitch or repeat expected @11
      Work even for 15 → ✗ stitch or repeat expected @11
      Work even for 15 cm (6 times → ✗ stitch or repeat expected @22
      Work even for 3/20 cm → ✗ stitch or repeat expected @11
      Work even for 3/2 cm → ✗ stitch or repeat expected @11
    `),
  )('is not read for more than it says: $line', expectReading);
});
