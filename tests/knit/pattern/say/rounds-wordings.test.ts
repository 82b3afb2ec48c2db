import { describe, it } from 'vitest';
import { table } from '../table.ts';
import { expectReading } from './said.ts';

/** How patterns are usually worded: common practice, no published source. */
describe('rounds, in all their wordings,', () => {
  it.each(
    table(`
      {Rnd 1: k|Rnds 1–10: knit|Round 3: k2, p2|2nd round: k|Next round: k|Work 6 rnds in rib|K every round|Rep last rnd 5 times|Dec 6 sts evenly across rnd|Work in st st in the round until it measures 10 cm|Join to work in the round|Join, being careful not to twist|Place marker and join} → ✗ worked in rounds @1
    `),
  )('are said: $line', expectReading);

  it.each(
    table(`
      K1, yarn round needle, k1 → row: items 'k, yo, k'
      Join yarn and k 1 row → rejoin | @15 rows: n 1, items 'k to {left 'what follows'}'
      Gauge: 28 rnds = 10 cm → gauge: rows 28
      K all round → row: items 'k to {left 'what follows'}'
    `),
  )('are none where only the word is said: $line', expectReading);
});
