import { describe, it } from 'vitest';
import { table } from '../table.ts';
import { expectReading } from './said.ts';

/** How patterns are usually worded: common practice, no published source. */
describe('multiple, in all its wordings,', () => {
  it.each(
    table(`
      {Basket pattern|Basket stitch pattern|Basket pattern stitch|Basket stitch|Basket patt|Basket pat|The basket|Basket is a|A basket|Basket st|Basket worked|Basket over|Basket on} (multiple of 8 sts) → multiple: of 8, plus 0, name basket
      Basket pattern{: multiple of 8| - multiples of 8| mult of 8| (multiple of a 8| (multiple of 8 st} → multiple: of 8, plus 0, name basket
      Basket pattern (multiple of 8 sts{ plus 4| + 4| and 4|, plus 4|, + 4| plus plus 4}) → multiple: of 8, plus 4, name basket
      Basket pattern (multiple of 8 plus 4 sts{| for edge| extra| over| end sts|, edge st| selvedge sts| balance| for end st}) → multiple: of 8, plus 4, name basket
      Basket pattern (multiple of 8 plus): k → multiple: of 8, plus 0, name basket | @38 row: items 'k to {left 'what follows'}'
      Basket pattern [multiple of 8]: k → multiple: of 8, plus 0, name basket | @33 row: items 'k to {left 'what follows'}'
      Multiple of 8 → multiple: of 8, plus 0, name ''
      Multiple of 8 plus 4. Turn → multiple: of 8, plus 4, name '' | @23 turn
      Basket pattern multiple of 8 plus 4 k2 → multiple: of 8, plus 4, name basket | @37 row: items 'k ×2'
      Basket pattern multiple of 8 k2 → multiple: of 8, plus 0, name basket | @30 row: items 'k ×2'
      Basket pattern multiple of 8 sts k2 → multiple: of 8, plus 0, name basket | @34 row: items 'k ×2'
      Basket pattern (multiple of 8 plus 4 sts) k2 → multiple: of 8, plus 4, name basket | @43 row: items 'k ×2'
      Basket pattern (multiple of 8 st plus 4) → multiple: of 8, plus 4, name basket
    `),
  )('is read: $line', expectReading);

  it.each(
    table(`
      Basket pattern (multiple of 8, plus 4): row 1 → multiple: of 8, plus 4, name basket | ✗ stitch or repeat expected @45
      Basket pattern multiple worked over 8 sts → ✗ stitch or repeat expected @1
      Basket pattern (multiple of 8 plus 4 sts over big) k2 → multiple: of 8, plus 4, name basket | ✗ stitch or repeat expected @47
      Multiple of sts → ✗ stitch or repeat expected @1
      One two three four five six seven eight nine ten eleven multiple of 8 → multiple: of 8, plus 0, name 'one two three four five six seven eight nine ten eleven'
    `),
  )('is not read for more than it says: $line', expectReading);
});
