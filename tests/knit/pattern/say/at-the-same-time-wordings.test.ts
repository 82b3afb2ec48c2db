import { describe, it } from 'vitest';
import { table } from '../table.ts';
import { expectReading } from './said.ts';

/** How patterns are usually worded: common practice, no published source. */
describe('at the same time, in all its wordings,', () => {
  it.each(
    table(`
      {At the same time|At same time|Meanwhile|Simultaneously|(At the same time|[At the same time} → at the same time
      While at the same time → @7 at the same time
      And at the same time → @5 at the same time
      At the same time{,|:|)} dec 1 st at each end of next row → at the same time | @19 shape: change -1, edge both, beats [{first 1, every 1, times 1}]
      At the same time{ -|,,} dec 1 st at each end of next row → at the same time | @20 shape: change -1, edge both, beats [{first 1, every 1, times 1}]
      At the same time, {when|once} armhole measures 5 cm, dec 1 st at neck edge every row → at the same time: after {length, mm 50, from armhole} | @47 shape: change -1, edge neck, beats [{first 1, every 1}]
      At the same time, after armhole measures 5 cm, dec 1 st at neck edge every row → at the same time: after {length, mm 50, from armhole} | @48 shape: change -1, edge neck, beats [{first 1, every 1}]
      At the same time, beg dec 1 st at each end of next row → at the same time | @23 shape: change -1, edge both, beats [{first 1, every 1, times 1}]
      At the same time, starting dec 1 st at each end of next row → at the same time | @28 shape: change -1, edge both, beats [{first 1, every 1, times 1}]
      At the same time when there are 60 sts, dec 1 st at each end of next row → at the same time: after {count, stitches 60} | @41 shape: change -1, edge both, beats [{first 1, every 1, times 1}]
      At the same time{, when|: when|) when} armhole measures 5 cm, dec 1 st at neck edge every row → at the same time: after {length, mm 50, from armhole} | @47 shape: change -1, edge neck, beats [{first 1, every 1}]
      At the same time - when armhole measures 5 cm, dec 1 st at neck edge every row → at the same time: after {length, mm 50, from armhole} | @48 shape: change -1, edge neck, beats [{first 1, every 1}]
    `),
  )('is read: $line', expectReading);

  it.each(
    table(`
      At the same {end|edge} dec 1 st → shape: change -1, edge same, beats []
      While k to end → @7 row: items 'k to {left 0}'
      At the same time as it → at the same time | ✗ stitch or repeat expected @21
    `),
  )('is not read for more than it says: $line', expectReading);
});
