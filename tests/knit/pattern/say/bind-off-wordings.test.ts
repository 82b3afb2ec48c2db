import { describe, it } from 'vitest';
import { table } from '../table.ts';
import { expectReading } from './said.ts';

/** How patterns are usually worded: common practice, no published source. */
describe('bind off, in all its wordings,', () => {
  it.each(
    table(`
      {Bind off|Cast off|BO|Binding off|Loosely bind off} → bind off
      Bind off {loosely in patt|loosely in rib|in patt|in rib|in knitting|loosely|in garter st|in moss st|kwise|pwise|ribwise|as if to k|as if to p|in k|very loosely|firmly|on RS|on WS|in p} → bind off
      Bind off {all|rem|the|these|all rem|all the} sts → bind off: rest
      Bind off {all|rem|all rem|the rem} 24 sts {in rib|loosely|} → bind off: stitches 24, rest
      Bind off 24 sts → bind off: stitches 24
      Bind off 24 → bind off: stitches 24
      Bind off all sts {on each side|at each side} → bind off: rest
      {Bind off 24 sts for back of neck|Bind off 24 sts for back neck|Bind off 24 sts for front of neck|Bind off 24 sts for back|Bind off 24 sts for shoulder|Bind off 24 sts for each shoulder|Bind off 24 sts each shoulder} → bind off: stitches 24
      Bind off 24 sts each side → groups: work bo, edge both, groups [{stitches 24, rows 2, every 1}]
      Bind off 24 sts {on each side|at each side} → groups: work bo, edge both, groups [{stitches 24, rows 2, every 1}]
      Bind off all sts {at same gauge|in 1 row|on next row|in rib at same tension|in 1 row loosely|loosely in 1 row} → bind off: rest
      Bind off all sts, k the rest → bind off: rest | @19 row: items 'k to {left 'what follows'}'
      Bind off all sts, p the rest → bind off: rest | @19 row: items 'p to {left 'what follows'}'
      Bind off all sts, {work|rib} the rest → bind off: rest | @19 row: items 'patt to {left 'what follows'}'
      Bind off all sts, sl the rest → bind off: rest | @19 row: items 'sl to {left 'what follows'}'
      Bind off all sts, dec the rest → bind off: rest | @19 row: items 'dec to {left 'what follows'}'
      Bind off all sts, ssk the rest → bind off: rest | @19 row: items 'ssk to {left 'what follows'}'
      Bind off all sts, inc the rest → bind off: rest | @19 row: items 'inc to {left 'what follows'}'
      Bind off all sts{;|:} turn → bind off: rest | @19 turn
      Bind off all sts - turn → bind off: rest | @20 turn
      Bind off all sts (0 sts) → bind off: rest (0)
      Bind off, turn → bind off | @11 turn
      Bind off 24 loosely → bind off: stitches 24
    `),
  )('is read: $line', expectReading);

  it.each(
    table(`
      Bind off all sts [now] → bind off: rest | ✗ stitch expected @23
      Bind off 5 sts, k to end → row: items 'bo ×5, k to {left 0}'
      Bind off 5 sts, p to end → row: items 'bo ×5, p to {left 0}'
      Bind off 5 sts, work in patt to end → row: items 'bo ×5, patt to {left 0}'
      Bind off 5 sts, sl 1, k to end → row: items 'bo ×5, sl, k to {left 0}'
      Bind off 5 sts, dec, k to end → row: items 'bo ×5, dec, k to {left 0}'
      Bind off 5 sts, ssk, k to end → row: items 'bo ×5, ssk, k to {left 0}'
      Bind off 5 sts, inc, k to end → row: items 'bo ×5, inc, k to {left 0}'
      Bind off 5 sts, rib to end → row: items 'bo ×5, patt to {left 0}'
      Bind off 5 sts at beg of next 2 rows → groups: work bo, edge beginning, groups [{stitches 5, rows 2, every 1}]
      Bind off 5 sts k to end → row: items 'bo ×5, k to {left 0}'
      Bind off 5 sts, patt to end → row: items 'bo ×5, patt to {left 0}'
    `),
  )('is not read for more than it says: $line', expectReading);
});
