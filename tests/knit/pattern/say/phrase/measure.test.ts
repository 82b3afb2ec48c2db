import { describe, it } from 'vitest';
import { table } from '../../table.ts';
import { expectReading } from '../said.ts';

/** How patterns are usually worded: common practice, no published source. */
describe('a length, in all its wordings,', () => {
  it.each(
    table(`
      Work even for {15 cm|150 mm|15 cms|15-cm|about 15 cm|approx 15 cm|another 15 cm|a 15 cm|further 15 cm|total 15 cm|a total of 15 cm} → even: until {length, mm 150, from here}
      Work even for {15½ cm|15 ½ cm|15 1/2 cm|15-1/2 cm|15 and 1/2 cm|15.5 cm|15 and ½ cm} → even: until {length, mm 155, from here}
      Work even for {1/2 in|½ in|1/2 inch|0.5 in} → even: until {length, mm 12.7, from here}
      Work even for {15 cm (6 in)|15 cm [6 in]|15 cm / 6 in|15 cm or 6 in|15 cm, 6 in|15 cm (150 mm)|15 cm (5 3/4 in)} → even: until {length, mm 150, from here}
      Work even for 3/16 in → even: until {length, mm 4.762499999999999, from here}
      Work even for {2-3 in|2 to 3 inches|2 or 3 in|about 2-3 inches} → even: until {length, mm 63.5, from here}
      Work even for {4"|4 inches|4 ins|4 in} → even: until {length, mm 101.6, from here}
    `),
  )('is read: $line', expectReading);

  it.each(
    table(`
      Work even for 15 → ✗ stitch or repeat expected @11
      Work even for 17/16 in → ✗ stitch or repeat expected @11
      Work even for 3/17 in → ✗ stitch or repeat expected @11
      Work even for 3/2 in → ✗ stitch or repeat expected @11
      Work even for 3/3 in → ✗ stitch or repeat expected @11
      Work even for 2 3/2 in → ✗ stitch or repeat expected @11
      Work even for 15 cm (6 sts) → even: until {length, mm 150, from here} (6)
      Work even for 15 cm, k 6 → even: until {length, mm 150, from here} | @22 row: items 'k ×6'
      Work even for 2 and 3 in → ✗ stitch or repeat expected @11
      Work even for 2 2/2 in → ✗ stitch or repeat expected @11
      Work even for 3 1/1 in → ✗ stitch or repeat expected @11
      Work even for 16/16 in → ✗ stitch or repeat expected @11
      Work even for 3-2 in → ✗ stitch or repeat expected @11
      Work even for 2-2 in → ✗ stitch or repeat expected @11
      Work even for 2-3 sts → ✗ stitch or repeat expected @11
    `),
  )('is not read for more than it says: $line', expectReading);
});
