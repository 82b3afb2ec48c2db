import { describe, it } from 'vitest';
import { table } from '../table.ts';
import { expectReading } from './said.ts';

/** How patterns are usually worded: common practice, no published source. */
describe('note, in all its wordings,', () => {
  it.each(
    table(`
      {Break yarn|Break wool|Cut thread|Fasten off yarn|Break off yarn|Cut the yarn|Cut off wool|Break|Cut|Fasten|Fasten off|Break the wool|Break the yarn|Break off|Cut off thread} → note: about yarn
      Fasten off {yarn|wool|the yarn} → note: about yarn
      Break off yarn, turn → note: about yarn | @17 turn
      {Place a marker|Put the marker|Place 1 marker|Mark each end|Place marker|Put marker|Mark center st|Mark both ends|Tie a marker in row|Mark this row|Place marker at each end of row} → note: about marker
      Mark each end, turn → note: about marker | @16 turn
      Mark each end; turn → note: about marker | @16 turn
      {Block|Press|Sew|Weave in ends|Steam|Fold in half|Seam|Wash|Attach button|Overcast edge|Darn in ends|Crochet around|Changes given|Run thread|Draw up|Gather edge|Allow to dry|Lay flat|Pin out|Cover with cloth|Dampen|Backstitch seam|Insert elastic|Do not press|You need it|Size used|Sizes used} → note: about 'making up'
      Finishing → heading: title {words finishing, pattern finishing, divides false}, sideOnly false, talk, places []
      Note this → heading: title {words 'note this', pattern 'note this', divides false}, sideOnly false, talk, places []
      Notes on it → heading: title {words 'notes on it', pattern 'notes on it', divides false}, sideOnly false, talk, places []
      Abbreviations used → heading: title {words 'abbreviations used', pattern 'abbreviations used', divides false}, sideOnly false, talk, places []
      Materials you need → heading: title {words 'materials you need', pattern 'materials you need', divides false}, sideOnly false, talk, places []
      Instructions given → heading: title {words 'instructions given', pattern 'instructions given', divides false}, sideOnly false, talk false, places []
      Directions given → heading: title {words 'directions given', pattern 'directions given', divides false}, sideOnly false, talk false, places []
      Needles used → heading: title {words 'needles used', pattern 'needles used', divides false}, sideOnly false, talk, places []
      Yarn used → heading: title {words 'yarn used', pattern 'yarn used', divides false}, sideOnly false, talk, places []
      Stitch down → note: about 'making up'
      {Join seam|Join shoulder|Join side|Join right side|Join left side|Join sleeve|Join back|Join front} → note: about 'making up'
      To make up → heading: title {words 'to make up', pattern 'to make up', divides false}, sideOnly false, talk, places []
      To finish → heading: title {words 'to finish', pattern 'to finish', divides false}, sideOnly false, talk, places []
      To fit chest 90 cm → note: about 'making up'
      When {knitting|working} the colour, hold it → note: about 'making up'
      These rows form it → named rows: name it
      These {2|4|6|8|10|12|16} form it → note: about 'making up'
      These {rows|sts} are it → note: about 'making up'
      These rows set the way → named rows: name way
      {This forms it|This completes it|This is it|These rows are the set} → note: about 'making up'
      With {RS|WS} facing → note: about facing
      On right side → note: about facing
      , ending with a WS row → @3 ending: end WS
      , ending with a RS row → @3 ending: end RS
      with white, → yarn: name white
      using MC, → yarn: name MC
      Place marker at each end, turn → note: about marker | @27 turn
      Sew seams and press → note: about 'making up'
      Sew seams and work neck → note: about 'making up'
    `),
  )('is read: $line', expectReading);

  it.each(
    table(`
      These sts establish it → ✗ stitch or repeat expected @1
      Place marker, k to end → row: items '{marker, does place}, k to {left 0}'
      Place marker, p to end → row: items '{marker, does place}, p to {left 0}'
      Mark, k to end → note: about marker | @7 row: items 'k to {left 0}'
      Join yarn → rejoin
      To 60 sts → stated: stitches 60 (60)
      When piece looks long → ✗ stitch or repeat expected @1
      These last rows → ✗ stitch or repeat expected @1
      These rows → ✗ stitch or repeat expected @1
      This row → ✗ stitch or repeat expected @1
      Measure it → ✗ stitch or repeat expected @1
      Put 1 → ✗ stitch or repeat expected @1
      Sew seams and work 6 rows → ✗ stitch or repeat expected @1
      Sew seams, then cast on 60 sts → ✗ stitch or repeat expected @1
      Sew seams, work 6 rows → ✗ stitch or repeat expected @1
      Sew seams and {k|inc|dec|bind off|pick up|cont in} 6 → ✗ stitch or repeat expected @1
    `),
  )('is not read for more than it says: $line', expectReading);
});
