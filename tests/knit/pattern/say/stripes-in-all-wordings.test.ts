import { describe, it } from 'vitest';
import { table } from '../table.ts';
import { expectReading } from './said.ts';

/** How patterns are usually worded: common practice, no published source. */
describe('stripes, in all their wordings,', () => {
  it.each(
    table(`
      {Stripe|Stripes|Striped|Striping|Color|Colour} {pattern|sequence}: 4 rows A, 2 rows B → stripes: of [{rows 4, yarn A}; {rows 2, yarn B}], listed anew
      Stripe seq: 4 rows A, 2 rows B → stripes: of [{rows 4, yarn A}; {rows 2, yarn B}], listed anew
      {The stripe pattern|Pattern stripe sequence} - 4 rows A, 2 rows B → stripes: of [{rows 4, yarn A}; {rows 2, yarn B}], listed anew
      Stripes: 4 rows A, 2 rows B. → stripes: of [{rows 4, yarn A}; {rows 2, yarn B}], listed anew
      Stripes: 4 rows A{; 2| and 2|. 2|, then 2|, and 2} rows B; → stripes: of [{rows 4, yarn A}; {rows 2, yarn B}], listed anew
      Stripe pattern → stripes: of [], listed anew
      Stripe sequence. 3 rows A; 1 row B → stripes: of [{rows 3, yarn A}; {rows 1, yarn B}], listed anew
      Stripes: 2 rows {in A and 2 rows in B|of A and 2 rows of B|with A and 2 rows with B|yarn A and 2 rows yarn B|color A and 2 rows color B|in shade A and 2 rows in shade B} → stripes: of [{rows 2, yarn A}; {rows 2, yarn B}], listed anew
      Stripes: 2 rows each {A, B|A and B|in A, B|of A and B|of A, and B} → stripes: of [{rows 2, yarn A}; {rows 2, yarn B}], listed anew
      Stripes: 2 rows each of A, B and C → stripes: of [{rows 2, yarn A}; {rows 2, yarn B}; {rows 2, yarn C}], listed anew
      Stripes: *2 rows A, 2 rows B; rep from * → stripes: of [{rows 2, yarn A}; {rows 2, yarn B}], listed anew
      Stripes: *2 rows A, 2 rows B; rep from * throughout → stripes: of [{rows 2, yarn A}; {rows 2, yarn B}], listed anew
      Stripes: (2 rows A, 2 rows B) throughout → stripes: of [{rows 2, yarn A}; {rows 2, yarn B}], listed anew
      Stripes: 2 rows A, 2 rows B, repeating these 4 rows → stripes: of [{rows 2, yarn A}; {rows 2, yarn B}], listed anew
      Stripes: 2 rows A, 2 rows B; rep last 4 rows → stripes: of [{rows 2, yarn A}; {rows 2, yarn B}], listed anew
      Stripes: 2 rows A, 2 rows B; rep this {sequence|pattern} → stripes: of [{rows 2, yarn A}; {rows 2, yarn B}], listed anew
      Stripes: 2 rows A, 2 rows B, repeat throughout → stripes: of [{rows 2, yarn A}; {rows 2, yarn B}], listed anew
      With A, work 6 rows → yarn: name A | @9 even: until {rows, n 6}
      With A, k 6 rows; with B, k 2 rows → stripes: of [{rows 6, yarn A}; {rows 2, yarn B}], listed on
      {With A, work|With A work|Using A, work} 6 rows, {with B work|with B, work|and with B, work} 2 rows → stripes: of [{rows 6, yarn A}; {rows 2, yarn B}], listed on
      4 rows A, 2 rows B → stripes: of [{rows 4, yarn A}; {rows 2, yarn B}], listed on
      4 rows A → stripes: of [{rows 4, yarn A}], listed on
      {Work|Cont|Continue|Working|Keeping} in {the |this |same |}stripe {pattern|sequence} → stripes
      Work in stripes → stripes
      Keep continuity of stripes → stripes
      {Keep to|Continue with} stripe sequence → stripes
      {Work|Working} in stripes of 2 rows A and 2 rows B → stripes: of [{rows 2, yarn A}; {rows 2, yarn B}]
      Work in stripes {as follows:|as foll,|as follows -|:} 2 rows A and 2 rows B → stripes: of [{rows 2, yarn A}; {rows 2, yarn B}]
      Work {in |}4 rows A, 2 rows B {throughout|alternately} → stripes: of [{rows 4, yarn A}; {rows 2, yarn B}]
      {Working|Alternating} 4 rows A, 2 rows B throughout → stripes: of [{rows 4, yarn A}; {rows 2, yarn B}]
      Work in stripe pattern {as set|as established|as before|as above|correct|throughout} → stripes
      Work in stripes as follows → note: about aside
    `),
  )('are read: $line', expectReading);

  it.each(
    table(`
      Stripes: 4 rows A → stripes: of [{rows 4, yarn A}], listed anew
      Stripes: 0 rows A, 2 rows B → ✗ stitch or repeat expected @1
      Work 4 rows A, 2 rows B → stripes: of [{rows 4, yarn A}; {rows 2, yarn B}], listed on
      Work 4 rows in A → @13 yarn: name A | even: until {rows, n 4}
      Work in stripes of 4 rows A → ✗ stitch or repeat expected @1
      {Work in striped st st|Work in striped stocking st} → even: fabric {named, name stocking}
      Work in striped garter st → even: fabric {named, name garter}
      Work in stripes as for back → ✗ stitch or repeat expected @1
      Work in stripes in A → ✗ stitch or repeat expected @1
      Stripe pattern is lovely → stripes | ✗ stitch or repeat expected @19
      With A, work 6 sts → yarn: name A | @9 row: items 'patt ×6'
    `),
  )('are not read for more than they say: $line', expectReading);
});
