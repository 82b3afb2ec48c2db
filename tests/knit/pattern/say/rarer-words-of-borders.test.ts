import { describe, it } from 'vitest';
import { table } from '../table.ts';
import { expectReading } from './said.ts';

/** As `rarer-words.test.ts`: what is kept at the edges. Common practice, no published source. */
describe('what is kept at the edges, in rarer words,', () => {
  it.each(
    table(`
      {Keep|With} first and last 5 sts in garter st, work 6 rows → borders: borders [{edge both, stitches 5, fabric {named, name garter}}] | @41 even: until {rows, n 6}
      Keeping first and last 5 sts in garter st, work 6 rows → borders: borders [{edge both, stitches 5, fabric {named, name garter}}] | @44 even: until {rows, n 6}
      Maintain first and last 5 sts in garter st, work 6 rows → borders: borders [{edge both, stitches 5, fabric {named, name garter}}] | @45 even: until {rows, n 6}
      Maintaining first and last 5 sts in garter st, work 6 rows → borders: borders [{edge both, stitches 5, fabric {named, name garter}}] | @48 even: until {rows, n 6}
      Having first and last 5 sts in garter st, work 6 rows → borders: borders [{edge both, stitches 5, fabric {named, name garter}}] | @43 even: until {rows, n 6}
      {And|But} keep first and last 5 sts in garter st, work 6 rows → @5 borders: borders [{edge both, stitches 5, fabric {named, name garter}}] | @45 even: until {rows, n 6}
      Always keep first and last 5 sts in garter st, work 6 rows → borders: borders [{edge both, stitches 5, fabric {named, name garter}}] | @48 even: until {rows, n 6}
      Always keeping first and last 5 sts in garter st, work 6 rows → borders: borders [{edge both, stitches 5, fabric {named, name garter}}] | @51 even: until {rows, n 6}
      Work even for 6 rows, {keeping|maintaining|having} first and last 5 sts in garter st → @23 borders: borders [{edge both, stitches 5, fabric {named, name garter}}] | even: until {rows, n 6}
      Work even for 6 rows, {but|and} keeping first and last 5 sts in garter st → @27 borders: borders [{edge both, stitches 5, fabric {named, name garter}}] | even: until {rows, n 6}
      Work even for 6 rows (keeping first and last 5 sts in garter st) → @22 borders: borders [{edge both, stitches 5, fabric {named, name garter}}] | even: until {rows, n 6}
      Work first and last 5 sts in garter {st, work|st; work|st. Work} 6 rows → borders: borders [{edge both, stitches 5, fabric {named, name garter}}] | @41 even: until {rows, n 6}
      {Work first and last 5 sts in garter st on every row|Work first and last 5 sts in garter st|Working first and last 5 sts in garter st on every row|Working first and last 5 sts in garter st} → borders: borders [{edge both, stitches 5, fabric {named, name garter}}]
      Working first and last 5 sts in garter {st, work|st; work|st. Work} 6 rows → borders: borders [{edge both, stitches 5, fabric {named, name garter}}] | @44 even: until {rows, n 6}
      K first and last 5 sts {of every row|on every row|in every row|on each row|on all rows|of all rows|every row|each row} → borders: borders [{edge both, stitches 5, fabric {named, name garter}}]
      K first and last 5 sts throughout → borders: borders [{edge both, stitches 5, fabric {named, name garter}}], throughout
      Keep {6 sts at each end|6 edge sts at each end|6 border sts at each end|6 outer sts at each end|6 band sts at each end|the 6 sts at each end} in garter st → borders: borders [{edge both, stitches 6, fabric {named, name garter}}]
      Keep 6 sts at each end {of row|of rows|of the row|of every row} in garter st → borders: borders [{edge both, stitches 6, fabric {named, name garter}}]
      Keep a 5-st garter st {border|band|edge} at each end → borders: borders [{edge both, stitches 5, fabric {named, name garter}}]
      Keep garter st {border|borders|band|bands|edge} {of|over|on} 5 sts at each end → borders: borders [{edge both, stitches 5, fabric {named, name garter}}]
      Keep {front|garter st|garter|moss st|moss|side|all|the} {border sts|edge sts|band sts|border|edge|band|borders|bands} {as set|as est|as before|correct|throughout|going} → borders: borders []
      Keep {borders|bands} in garter st → borders: borders []
      Keep garter st {borders|borders as before|borders throughout|borders correct} → borders: borders []
      Keep garter st {borders, k|borders; k|borders. K} 6 rows → borders: borders [] | @25 rows: n 6, items 'k to {left 'what follows'}'
      Keep garter st borders {until piece measures|for} 10 cm → borders: borders [] | ✗ stitch or repeat expected @24
      Keep first and last 5 sts in garter st {and the rest in st st|and rem sts in st st|, others in st st|, with other sts in st st|; remainder in st st|and work center 40 sts in st st|, working middle sts in st st|, k rest in st st|and work the rem of row in st st|and all other sts in st st|and rest of the row in st st} → borders: borders [{edge both, stitches 5, fabric {named, name garter}}], main {named, name stocking}
      Keep first and last 5 sts in garter st {as set|as est|as before|correct} → borders: borders [{edge both, stitches 5, fabric {named, name garter}}]
      Keep first and last 5 sts in garter st {for front band|for the front band|for button border|for buttonhole edge|for neck edging|for armhole bands|for band|for the border|for borders|for bands|for edge} → borders: borders [{edge both, stitches 5, fabric {named, name garter}}]
      Keep first 5 and last 7 sts in garter st → borders: borders [{edge beginning, stitches 5, fabric {named, name garter}}; {edge end, stitches 7, fabric {named, name garter}}]
      Keep first 5{, and| and} last 5 sts in garter st → borders: borders [{edge both, stitches 5, fabric {named, name garter}}]
    `),
  )('is read: $line', expectReading);
});
