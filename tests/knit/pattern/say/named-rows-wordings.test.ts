import { describe, it } from 'vitest';
import { table } from '../table.ts';
import { expectReading } from './said.ts';

/** How patterns are usually worded: common practice, no published source. */
describe('named rows, in all its wordings,', () => {
  it.each(
    table(`
      {These|Last|Above|The|This|These last|The above|The last} 2 rows {form|set|establish|complete} rib → named rows: name rib, rows 2
      This row {forms|sets} rib → named rows: name rib
      These rows form the lace pattern → named rows: name lace
      These 2 rows form {the|a|patt|pattern|st|stitch|in|as} rib → named rows: name rib, rows 2
      These 2 rows form one two three red white blue green black → named rows: name 'red white blue green', rows 2
      These 2 rows form → named rows: name '', rows 2
      These 2 rows {are called|are now called|are known as|will now be referred to as} rib → named rows: name rib, rows 2
      These rows are worked loosely → note: about 'making up'
      These 2 rows, form (rib) → note: about 'making up'
    `),
  )('is read: $line', expectReading);

  it.each(
    table(`
      Last 2 rows → ✗ stitch or repeat expected @6
      Two rows form rib → even: fabric {pattern, words 'form rib', name 'form rib'}, until {rows, n 2}
      These 2 forms → ✗ stitch or repeat expected @1
      These 2 rows of rib → ✗ stitch or repeat expected @1
    `),
  )('is not read for more than it says: $line', expectReading);
});
