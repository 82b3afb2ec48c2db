import { describe, it } from 'vitest';
import { table } from '../table.ts';
import { expectReading } from './said.ts';

/** How patterns word it: common practice, no published source. */
describe('stripes as prose', () => {
  it.each(
    table(`
      {Stripe pattern:|Stripe sequence:|Color sequence -|The stripe pattern:} 4 rows {A|in A|of A}, {2 rows B|and 2 rows B|then 2 rows in B} → stripes: of [{rows 4, yarn A}; {rows 2, yarn B}], listed anew
      {Stripe pattern|Stripe sequence|Color sequence|Stripes} → stripes: of [], listed anew
      Stripe pattern: With A, work 4 rows → stripes: of [{rows 4, yarn A}], listed anew
      2 rows {B|in B|yarn B} → stripes: of [{rows 2, yarn B}], listed on
      4 rows A, {work 2 rows B|2 rows B}{; rep these 6 rows|, repeating these 6 rows|; rep from *|} → stripes: of [{rows 4, yarn A}; {rows 2, yarn B}], listed on
      {Work|Work in|Alternating} 4 rows A, 2 rows B {throughout|alternately} → stripes: of [{rows 4, yarn A}; {rows 2, yarn B}]
      {Work|Working|Cont|Keeping} in {stripes|stripe pattern|the stripe sequence|stripe pattern as set|stripes throughout} → stripes
      {Keeping stripes correct|Keeping to the color sequence throughout|Keeping continuity of stripe pattern} → stripes
      Work in st st in stripes of 2 rows A, 4 rows B → even: fabric {named, name stocking} | @15 stripes: of [{rows 2, yarn A}; {rows 4, yarn B}]
      Work in st st in stripe pattern as follows: 2 rows A, 4 rows B → even: fabric {named, name stocking} | @15 stripes: of [{rows 2, yarn A}; {rows 4, yarn B}]
      Work in st st and stripe pattern of 2 rows A, 4 rows B → even: fabric {named, name stocking} | @19 stripes: of [{rows 2, yarn A}; {rows 4, yarn B}]
      Work in stripes of 2 rows each of A, B and C for 24 rows → stripes: of [{rows 2, yarn A}; {rows 2, yarn B}; {rows 2, yarn C}] | @46 even: until {rows, n 24}
      Work in striped pattern of 2 rows each of A, B and C for 24 rows → stripes: of [{rows 2, yarn A}; {rows 2, yarn B}; {rows 2, yarn C}] | @54 even: until {rows, n 24}
      Work 24 rows in st st in stripe pattern → @23 stripes | even: fabric {named, name stocking}, until {rows, n 24}
      Work 24 rows in st st, in stripe pattern → @24 stripes | even: fabric {named, name stocking}, until {rows, n 24}
      Work 12 rows in striped st st → even: fabric {named, name stocking}, until {rows, n 12}
      Work in stripes as follows: → note: about aside
      Work 4 rows in A → @13 yarn: name A | even: until {rows, n 4}
      Work 4 rows → even: until {rows, n 4}
    `),
  )('are read: $line', expectReading);
});
