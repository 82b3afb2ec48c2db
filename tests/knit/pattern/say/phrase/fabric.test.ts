import { describe, it } from 'vitest';
import { table } from '../../table.ts';
import { expectReading } from '../said.ts';

/** How patterns are usually worded: common practice, no published source. */
describe('a fabric, in all its wordings,', () => {
  it.each(
    table(`
      Work in {st st|stocking st|stockinette stitch|stocks st|stock st|stocking sts|stocking|stst|ss|with st st|a st st|these st st|this st st} for 6 rows → even: fabric {named, name stocking}, until {rows, n 6}
      Work in {rev st st|reverse stocking st|rev stocking sts|rev stst|rev ss|rev stocking|p side stocking|reverse stockinette st} for 6 rows → even: fabric {named, name 'reverse stocking'}, until {rows, n 6}
      Work in {garter st|gst|g st|garter|garter sts|g sts|garter ridge|garter st patt|garter border|gst patt} for 6 rows → even: fabric {named, name garter}, until {rows, n 6}
      Work in {moss st|seed st|rice st|moss|moss patt|moss st border|rice sts} for 6 rows → even: fabric {named, name moss}, until {rows, n 6}
      Work in {dbl moss st|double moss st|dbl moss} for 6 rows → even: fabric {pattern, words 'double moss', name 'double moss', else 'double moss'}, until {rows, n 6}
      {Work in k1, p1 rib for 6 rows|Work in k1 p1 rib for 6 rows|Work in rib of k1, p1 for 6 rows|Work in rib (k1, p1) for 6 rows|Work in (k1, p1) rib for 6 rows|Work in k1, p1 ribbing for 6 rows|Work in k1, p1 ribs for 6 rows|Work in single rib for 6 rows|Work in 1 x 1 rib for 6 rows|Work in 1/1 rib for 6 rows|Work in 1 by 1 rib for 6 rows|Work in 1-1 rib for 6 rows|Work in k1 and p1 rib for 6 rows|Work in k1 x p1 rib for 6 rows|Work in k1/p1 rib for 6 rows|Work in k1, p1 ribs patt for 6 rows|Work in rib k1, p1 for 6 rows|Work in k1, p1 ribbed for 6 rows|Work in [k1, p1] rib for 6 rows|Work in rib (k1, p1) rib for 6 rows} → even: fabric {rib, face kp}, until {rows, n 6}
      Work in rib, as follows: k1, p1 for 6 rows → even: fabric {rib, face kp}, until {rows, n 6}
      Work in k1, p1 rib patt for 6 rows → even: fabric {rib, face kp} | @20 even: fabric {established}, until {rows, n 6}
      Work in {k2, p2 rib|2 x 2 rib|dbl rib|double rib|2 by 2 rib} for 6 rows → even: fabric {rib, face kkpp}, until {rows, n 6}
      Work in {k3, p2 rib|3 x 2 rib} for 6 rows → even: fabric {rib, face kkkpp}, until {rows, n 6}
      Work in {rib|rib patt} for 6 rows → even: fabric {pattern, words rib, name rib, else rib}, until {rows, n 6}
      Work in 19 x 1 rib for 6 rows → even: fabric {rib, face kkkkkkkkkkkkkkkkkkkp}, until {rows, n 6}
      Work in k40, p1 rib for 6 rows → even: fabric {rib, face kkkkkkkkkkkkkkkkkkkkkkkkkkkkkkkkkkkkkkkkp}, until {rows, n 6}
      Work {in patt as set|in pats as set|in patt as est|in manner as set|in patt as before|in patt correct|keeping patt correct|keeping to patt|keep patt|in pattern|as set|as est|as before|in est patt|in same patt|in this patt|in main patt|keeping continuity of patt|in patt throughout|in patt correct throughout|in patt over all sts|in patt over these sts|in patt over rem sts|in same manner} for 6 rows → even: fabric {established}, until {rows, n 6}
      Work in {lace patt|lace pattern|lace stitch|lace st|lace panel|lace chart} for 6 rows → even: fabric {pattern, words lace, name lace}, until {rows, n 6}
      Work in lace rib for 6 rows → even: fabric {pattern, words 'lace rib', name 'lace rib'}, until {rows, n 6}
      Work in old shale lace patt for 6 rows → even: fabric {pattern, words 'old shale lace', name 'old shale lace'}, until {rows, n 6}
      Work in lace 2 patt for 6 rows → even: fabric {pattern, words 'lace 2', name 'lace 2'}, until {rows, n 6}
      Work in pattern stitch for 6 rows → even: fabric {pattern, words pattern, name '', else 'the pattern'}, until {rows, n 6}
      Work in main pattern stitch for 6 rows → even: fabric {pattern, words pattern, name '', else 'the pattern'}, until {rows, n 6}
      Work in body st for 6 rows → even: fabric {pattern, words body, name body, else 'the pattern'}, until {rows, n 6}
      Work in border st for 6 rows → even: fabric {pattern, words border, name border, else 'the pattern'}, until {rows, n 6}
      Work in band patt for 6 rows → even: fabric {pattern, words band, name band, else 'the pattern'}, until {rows, n 6}
      Work in it patt for 6 rows → even: fabric {pattern, words it, name it, else 'the pattern'}, until {rows, n 6}
      Work in the same stitch for 6 rows → even: fabric {pattern, words same, name same, else 'the pattern'}, until {rows, n 6}
      Work in k2, p2, k2 rib for 6 rows → even: fabric {rib, face kkppkk}, until {rows, n 6}
      K1, p1 rib patt for 6 rows → even: fabric {rib, face kp} | @12 even: fabric {established}, until {rows, n 6}
      Work in main st st for 6 rows → even: fabric {named, name stocking}, until {rows, n 6}
      Work with a k1, p1 rib for 6 rows → even: fabric {rib, face kp}, until {rows, n 6}
      Work in (k1, p1 rib) for 6 rows → even: fabric {rib, face kp}, until {rows, n 6}
    `),
  )('is read: $line', expectReading);

  it.each(
    table(`
      Work in stss for 6 rows → ✗ stitch or repeat expected @1
      Work in the main st st for 6 rows → ✗ stitch or repeat expected @24
      Work in {20 x 1 rib|1 x 20 rib} for 6 rows → ✗ stitch or repeat expected @1
      Work in one two three four five patt for 6 rows → ✗ stitch or repeat expected @1
      Work in k1, p1 for 6 rows → even: fabric {rib, face kp}, until {rows, n 6}
      K2, k2 rib for 6 rows → ✗ stitch or repeat expected @8
      K2 tog, p2 rib → ✗ stitch or repeat expected @12
      K41, p1 rib for 6 rows → ✗ stitch or repeat expected @9
      Work in p 2 row, k 2 row rib → ✗ stitch or repeat expected @1
      Work in until patt for 6 rows → ✗ stitch or repeat expected @1
      Work in lace until patt for 6 rows → ✗ stitch or repeat expected @1
      Work in lace for patt for 6 rows → ✗ stitch or repeat expected @1
      Work in lace to patt for 6 rows → ✗ stitch or repeat expected @1
      Work in lace and patt for 6 rows → ✗ stitch or repeat expected @1
      Work in lace row patt for 6 rows → ✗ stitch or repeat expected @1
      Work in lace rows patt for 6 rows → ✗ stitch or repeat expected @1
      Work in lace even patt for 6 rows → ✗ stitch or repeat expected @1
      Work in lace from patt for 6 rows → ✗ stitch or repeat expected @1
      Work in lace at patt for 6 rows → ✗ stitch or repeat expected @1
      Work in lace on patt for 6 rows → ✗ stitch or repeat expected @1
      Work in lace dec patt for 6 rows → ✗ stitch or repeat expected @1
      Work in lace inc patt for 6 rows → ✗ stitch or repeat expected @1
      Work in lace decreasing patt for 6 rows → ✗ stitch or repeat expected @1
      Work in lace increasing patt for 6 rows → ✗ stitch or repeat expected @1
      Work in lace k patt for 6 rows → ✗ stitch or repeat expected @1
      Work in lace p patt for 6 rows → ✗ stitch or repeat expected @1
      Work in lace bo patt for 6 rows → ✗ stitch or repeat expected @1
      Work in lace bind patt for 6 rows → ✗ stitch or repeat expected @1
      Work in lace cast patt for 6 rows → ✗ stitch or repeat expected @1
      Work in lace co patt for 6 rows → ✗ stitch or repeat expected @1
      Work in lace sl patt for 6 rows → ✗ stitch or repeat expected @1
      Work in lace yo patt for 6 rows → ✗ stitch or repeat expected @1
      Work in lace next patt for 6 rows → ✗ stitch or repeat expected @1
      Work in lace last patt for 6 rows → ✗ stitch or repeat expected @1
      Work in lace each patt for 6 rows → ✗ stitch or repeat expected @1
      Work in lace every patt for 6 rows → ✗ stitch or repeat expected @1
      Work in lace place patt for 6 rows → ✗ stitch or repeat expected @1
      Work in lace rep patt for 6 rows → ✗ stitch or repeat expected @1
      Work in lace end patt for 6 rows → ✗ stitch or repeat expected @1
      Work in lace ending patt for 6 rows → ✗ stitch or repeat expected @1
      Work in lace beg patt for 6 rows → ✗ stitch or repeat expected @1
      Work in lace left patt for 6 rows → ✗ stitch or repeat expected @1
      Work in lace right patt for 6 rows → ✗ stitch or repeat expected @1
      Work in lace shape patt for 6 rows → ✗ stitch or repeat expected @1
      Work in lace working patt for 6 rows → ✗ stitch or repeat expected @1
      Work in lace then patt for 6 rows → ✗ stitch or repeat expected @1
      Work in lace when patt for 6 rows → ✗ stitch or repeat expected @1
      Work in lace of patt for 6 rows → ✗ stitch or repeat expected @1
      Work in k2 sts, p2 rib for 6 rows → ✗ stitch or repeat expected @1
      Work in k2 times, p2 rib for 6 rows → ✗ stitch or repeat expected @1
    `),
  )('is not read for more than it says: $line', expectReading);
});
