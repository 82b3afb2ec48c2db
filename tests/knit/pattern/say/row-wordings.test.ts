import { describe, it } from 'vitest';
import { table } from '../table.ts';
import { expectReading } from './said.ts';

/** How patterns are usually worded: common practice, no published source. */
describe('row, in all its wordings,', () => {
  it.each(
    table(`
      Row 3: {as row 2|same as row 2|like row 2|rep row 2|work as row 2|work as for row 2|as for row 2|as the row 2|as 2nd row|as row 2nd} → row: label {rows [3]}, items '', like 2
      Row 3: {rep rows 2-4|rep rows 2 to 4|rep rows 2 through 4|as rows 2 and 4|rep 2nd to 4th rows|as rows 2 to row 4} → row: label {rows [3]}, items '', like 2, likeTo 4
      Row 3: work 2 sts in patt → row: label {rows [3]}, items 'patt ×2'
      Row 3: work {2|2 sts}, k to end → row: label {rows [3]}, items 'patt ×2, k to {left 0}'
      Next row: {dec 1 st at each end|dec 1 st each end|dec at both ends|dec 1 st at each side|dec 1 st at both edges|k, dec 1 st at each end|p dec at each end|work in patt, dec 1 st at each end|work even, dec 1 st at each end|k across, dec 1 st at each end|decreasing 1 st at each end|dec at each side|dec 1 st each side|dec at beg and end|dec in first and last st|dec at beg and end of row|dec 1 st at each end of row|dec 1 st at each end of needle|dec 1 st at each end.} → row: label {rows []}, items 'dec, patt to {left 'what follows'}, dec'
      Next row: {inc 1 st at each end|inc in first and last st|increasing at each end} → row: label {rows []}, items 'inc, patt to {left 'what follows'}, inc'
      Next row: dec 2 sts at each end → row: label {rows []}, items 'dec 2, patt to {left 'what follows'}, dec 2'
      Next row: inc 2 sts at each end → row: label {rows []}, items 'inc 2, patt to {left 'what follows'}, inc 2'
      Next row: dec 1 st at each end, k2 → row: label {rows []}, items 'dec, patt to {left 'what follows'}, dec'
      Next row: dec 1 st → row: label {rows []}, items dec
      Row 4: dec 1 st at each end of this and every 3rd row 14 times more → shape: change -1, edge both, beats [{first 1, every 1, times 1}; {every 3, counted, times 14, further}]
      Rows 7-9: work even in st st → even: fabric {named, name stocking}, until {rows, n 3}
      Rows 7-8: k → row: label {rows [7; 8]}, items 'k to {left 'what follows'}'
      Next 4 rows: work in st st → even: fabric {named, name stocking}, until {rows, n 4}
      Next row: work in st st → even: fabric {named, name stocking}, until {rows, n 1}
      Next row: work in st st for 6 rows → even: fabric {named, name stocking}, until {rows, n 6}
      Next row: bind off 5 sts at beg of next 2 rows → groups: work bo, edge beginning, groups [{stitches 5, rows 2, every 1}]
      Next row: work in st st; → even: fabric {named, name stocking}, until {rows, n 1}
      Next row (WS): work in pattern, inc 6 sts evenly → row: label {rows [], side WS}, items '{evenly, change 6}'
      Next row: k2 (24 sts) → row: label {rows []}, items 'k ×2' (24)
      Next row: dec 1 st at each end (24 sts) → row: label {rows []}, items 'dec, patt to {left 'what follows'}, dec' (24)
      Next row: work even in st st (24 sts) → even: fabric {named, name stocking}, until {rows, n 1} (24)
      K2, p2 (24 sts) → row: items 'k ×2, p ×2' (24)
      K2tog, k to end (2 sts dec) → row: items 'k2tog, k to {left 0}'
      Row 3: as 2nd and 3rd rows → row: label {rows [3]}, items '', like 2, likeTo 3
      Row 3: rep rows 2 through 4 rows → row: label {rows [3]}, items '', like 2, likeTo 4
      Next row: inc at each end → row: label {rows []}, items 'inc, patt to {left 'what follows'}, inc'
      Next row: work in patt, inc 1 st at each end → row: label {rows []}, items 'inc, patt to {left 'what follows'}, inc'
      Next row: k across, inc 2 sts at each side → row: label {rows []}, items 'inc 2, patt to {left 'what follows'}, inc 2'
      Next row: k, dec 2 sts at each end → row: label {rows []}, items 'dec 2, patt to {left 'what follows'}, dec 2'
    `),
  )('is read: $line', expectReading);

  it.each(
    table(`
      Row 3: work the same as row 2 → ✗ stitch or repeat expected @8
      Row 3: rep 2 from * → ✗ nothing before the repeat @12
      Next row: work in st st, k2 → ✗ stitch or repeat expected @11
      Next row: p, inc 1 st at both sides, → ✗ stitch or repeat expected @23
      Next row: wibble → ✗ stitch or repeat expected @11
      Wibble → ✗ stitch or repeat expected @1
      Wibble the sts (24 sts) → ✗ stitch or repeat expected @1
      K2, wibble → ✗ stitch or repeat expected @5
      Next row: dec 1 st at each end twice → shape: change -1, edge both, beats [{every 2, times 2}]
      Next row: work in patt, dec 1 st at each end k2 → ✗ stitch or repeat expected @34
    `),
  )('is not read for more than it says: $line', expectReading);
});
