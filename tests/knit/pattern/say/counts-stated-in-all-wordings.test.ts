import { describe, it } from 'vitest';
import { table } from '../table.ts';
import { expectReading } from './said.ts';

/** How patterns are usually worded: common practice, no published source. */
describe('a count that is stated, in all wordings,', () => {
  it.each(
    table(`
      K to end {(24 sts)|[24 sts]|(24)|- 24 sts|: 24 sts|= 24 sts|; 24 sts|. 24 sts|, 24 sts remain|, 24 sts rem|(there are now 24 sts)|(now 24 sts)|(= 24 sts)|(24 sts, 12 each side)|(increased by 1 st, 24 sts total)|(inc by 2 sts, 24 sts)|(dec 2 sts, 24 sts)|, 24 sts on needle|- 24 sts in all|; there are 24 sts|, leaving 24 sts|, making 24 sts|. Total 24 sts} → row: items 'k to {left 0}' (24)
      K to end (24 sts). → row: items 'k to {left 0}' (24)
      K2, ssk, k to end (2 sts decreased) → row: items 'k ×2, ssk, k to {left 0}'
      K2, ssk, k to end - 2 sts dec'd → row: items 'k ×2, ssk, k to {left 0}'
      K2, m1, k to end [2 sts increased] → row: items 'k ×2, m1, k to {left 0}'
      K2, m1, k to end, 2 sts inc'd. → row: items 'k ×2, m1, k to {left 0}'
    `),
  )('is read and no stitch of the row: $line', expectReading);

  it.each(
    table(`
      K to end (24 sts dec) → row: items 'k to {left 0}'
      K to end (24 sts in A) → ✗ stitch or repeat expected @11
      K to end (1st row = RS) → ✗ stitch or repeat expected @11
      K to last (24½) → ✗ stitch or repeat expected @12
      K to last 24 sts → row: items 'k to {left 24}'
      K 10, k 24 sts → row: items 'k ×10, k ×24'
      K to end (24 rows) → ✗ stitch or repeat expected @11
      K 2 (2 sts increased k 2 → ✗ stitch or repeat expected @6
    `),
  )('is not read for more than it says: $line', expectReading);
});
